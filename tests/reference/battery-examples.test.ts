import { describe, expect, it } from 'vitest'
import { bankFor, blocksFor } from '../../core/battery/bank-size.ts'
import { inverterInputW } from '../../core/battery/inverter-input.ts'
import { lithiumRate } from '../../core/battery/rate-capacity.ts'
import { rechargeFor } from '../../core/battery/recharge.ts'
import { CHEMISTRIES } from '../../core/tables/chemistries.ts'

describe("Peukert's law from two printed run times", () => {
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
