import { describe, expect, it } from 'vitest'
import { bankFor, blocksFor } from '../../core/battery/bank-size.ts'
import { inverterInputW } from '../../core/battery/inverter-input.ts'
import { capacityAtCurrentAh, lithiumRate, type RateCapacity } from '../../core/battery/rate-capacity.ts'
import { rechargeFor } from '../../core/battery/recharge.ts'
import { CHEMISTRIES } from '../../core/tables/chemistries.ts'

/** Peukert's law at a stated hour rate. */
const peukert = (capacityAh: number, hourRateH: number, k: number): RateCapacity => ({
  law: 'peukert',
  chargeAh: capacityAh,
  scaleA: capacityAh / hourRateH,
  exponent: k - 1,
  basis: 'typical-shape',
})

const hoursAt = (rate: RateCapacity, currentA: number): number =>
  capacityAtCurrentAh(rate, currentA) / currentA

describe("Peukert's law in printed examples", () => {
  it('100 Ah at 1 A, k 1.2, at 5 A: 14.5 h (electrotechnik.net, Peukert law, January 2010)', () => {
    expect(Math.abs(hoursAt(peukert(100, 100, 1.2), 5) / 14.5 - 1)).toBeLessThan(0.005)
  })
  it('100 Ah at the 20 h rate, k 1.2, at 10 A: 8.7 h (Wikipedia, from memory)', () => {
    expect(Math.abs(hoursAt(peukert(100, 20, 1.2), 10) / 8.7 - 1)).toBeLessThan(0.005)
  })
  it('70 Ah without loss: 20 h at 3.5 A, 1 h at 70 A (Kuphaldt, Lessons in Electric Circuits, vol. I, ch. 11)', () => {
    expect(hoursAt(peukert(70, 20, 1), 3.5)).toBeCloseTo(20, 9)
    expect(hoursAt(peukert(70, 20, 1), 70)).toBeCloseTo(1, 9)
  })
  it('400 Ah without loss at 100 A: 4 h (US Navy ordnance publication OD 16338)', () => {
    expect(hoursAt(peukert(400, 20, 1), 100)).toBeCloseTo(4, 9)
  })
  it('a 45 Ah LiFePO4 block: 10.4 h at 0.1C and 29 min at 2C make k 1.02 (chart of its maker, 5 %)', () => {
    const { kind } = CHEMISTRIES.lifepo4
    if (kind.family !== 'lithium') throw new Error('not lithium')
    const rate = lithiumRate(kind, { hourRateH: 5.2, capacityAh: 46.8 }, [
      { hourRateH: 0.484, capacityAh: 43.56 },
    ])
    expect(rate.exponent + 1).toBeGreaterThan(1.02)
    expect(rate.exponent + 1).toBeLessThan(1.04)
  })
})

describe('bankFor in printed examples', () => {
  it('300 Wh a day for two days at 80 % of 12 V: 62.5 Ah (open hardware project, power system design)', () => {
    const size = bankFor({
      energyWhPerDay: 300,
      days: 2,
      chemistry: 'lifepo4',
      nominalV: 12,
      minSocFraction: 0.2,
    })
    expect(size.capacityAh).toBeCloseTo(62.5, 9)
  })
  it('1000 Wh a day, 2.5 days at half depth, 12 V: 416.66 Ah (solar article, simplified IEEE-style method)', () => {
    const size = bankFor({
      energyWhPerDay: 1000,
      days: 2.5,
      chemistry: 'flooded',
      nominalV: 12,
      minSocFraction: 0.5,
    })
    expect(Math.abs(size.capacityAh / 416.66 - 1)).toBeLessThan(0.001)
  })
  it('margin and end of life multiply as in the worksheet of IEEE Std 1013 (logic from memory)', () => {
    // 60 Ah a day, 5 days, 80 % deep, margin 1.15, end of life 0.8: 60 x 5 / 0.8 x 1.15 / 0.8 = 539.0625 Ah.
    const size = bankFor({
      energyWhPerDay: 720,
      days: 5,
      chemistry: 'flooded',
      nominalV: 12,
      minSocFraction: 0.2,
      marginFraction: 0.15,
      endOfLifeFraction: 0.8,
    })
    expect(size.byEnergyAh).toBeCloseTo(539.0625, 6)
  })
  // IEEE Std 485-1997, Table 1, cell size correction (from memory; 70, 60, 50, 40 F read in a solar article).
  it.each([
    [77, 1],
    [70, 1.04],
    [60, 1.11],
    [50, 1.19],
    [40, 1.3],
  ])('at %d F asks for %d times the capacity within 14 %', (fahrenheit, multiplier) => {
    const at = (temperatureC: number) =>
      bankFor({ energyWhPerDay: 500, days: 1, chemistry: 'flooded', nominalV: 12, temperatureC }).byEnergyAh
    expect(Math.abs(at((fahrenheit - 32) / 1.8) / at(25) / multiplier - 1)).toBeLessThan(0.14)
  })
})

describe('blocksFor in a printed example', () => {
  it('6 V 225 Ah blocks, four in series, three strings: 24 V, 675 Ah (magazine article on a stand-alone system)', () => {
    const blocks = blocksFor({ block: { nominalV: 6, capacityAh: 225 }, nominalV: 24, capacityAh: 675 })
    expect(blocks).toEqual({ ok: true, inSeries: 4, inParallel: 3, blocks: 12, capacityAh: 675 })
  })
})

describe('rechargeFor in printed examples', () => {
  it('70 Ah at 7 A: 10 h before the charge factor (Kuphaldt, vol. I, ch. 11)', () => {
    const { chargerHours } = rechargeFor({
      bank: { chemistry: 'flooded', nominalV: 12, capacityAh: 70 },
      energyWh: 70 * 12,
      chargerA: 7,
    })
    expect(chargerHours).toBeCloseTo(10 * 1.15, 9)
  })
  it('a valve-regulated battery takes about 110 % of what was drawn (user guidance sheet)', () => {
    const { chargeAh } = rechargeFor({
      bank: { chemistry: 'agm', nominalV: 12, capacityAh: 100 },
      energyWh: 600,
    })
    expect(chargeAh).toBeCloseTo(55, 9)
  })
})

describe('inverterInputW against rules of thumb', () => {
  it('240 W at 12 V is about 20 A (training presentation): within 13 % with losses of a 300 W unit', () => {
    const inputA = inverterInputW({ outputW: 240, continuousW: 300 }) / 12
    expect(inputA).toBeGreaterThan(20)
    expect(inputA / 20 - 1).toBeLessThan(0.13)
  })
  it('1000 W: at most 100 A at 12 V by the tenth rule (training presentation)', () => {
    expect(inverterInputW({ outputW: 1000, continuousW: 1500 }) / 12).toBeLessThan(100)
  })
  it('90 % typical with peaks of 92 to 95 % (magazine article): the default peaks between 91 and 93 %', () => {
    const efficiencies = [0.2, 0.3, 0.4, 0.5, 0.6, 0.75, 1].map(
      (load) => load / (inverterInputW({ outputW: 1000 * load, continuousW: 1000 }) / 1000),
    )
    expect(Math.max(...efficiencies)).toBeGreaterThan(0.91)
    expect(Math.max(...efficiencies)).toBeLessThan(0.93)
  })
})
