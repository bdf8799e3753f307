import { describe, expect, it } from 'vitest'
import { type BatteryBank, bankModel, openCircuitV } from '../../core/battery/bank.ts'
import { runtimeWorking } from '../../core/battery/battery-working.ts'
import { capacityAtCurrentAh } from '../../core/battery/rate-capacity.ts'
import { predictRuntime, runtimeOfModel } from '../../core/battery/runtime.ts'
import { CoreError } from '../../core/errors.ts'
import { SOURCES } from '../../core/tables/sources.ts'

const agm: BatteryBank = { nominalV: 12, chemistry: 'agm', capacityAh: 100 }
const lfp: BatteryBank = { nominalV: 12, chemistry: 'lifepo4', capacityAh: 100 }

describe('predictRuntime', () => {
  it('ends a light load at the lowest allowed charge', () => {
    const run = predictRuntime({ bank: agm, dcPowerW: 60, cutOffV: 10.5 })
    expect(run.limitedBy).toBe('state-of-charge')
    expect(run.endSocFraction).toBe(0.5)
  })

  it('ends a heavy load at the cut-off voltage, earlier still behind a long cable', () => {
    const bank = { ...agm, minSocFraction: 0 }
    const near = predictRuntime({ bank, dcPowerW: 900, cutOffV: 11 })
    const far = predictRuntime({ bank, dcPowerW: 900, cutOffV: 11, cableResistanceOhm: 0.004 })
    expect(near.limitedBy).toBe('cut-off-voltage')
    expect(far.limitedBy).toBe('cut-off-voltage')
    expect(far.hours).toBeLessThan(near.hours)
    const last = near.curve.at(-1)
    expect(last?.terminalV).toBeCloseTo(11, 5)
  })

  it('meets the cut-off at the inverter, not at the battery: the cable drop is between them', () => {
    const run = predictRuntime({
      bank: { ...agm, minSocFraction: 0 },
      dcPowerW: 600,
      cutOffV: 11,
      cableResistanceOhm: 0.005,
    })
    const last = run.curve.at(-1)
    expect((last?.terminalV ?? 0) - 0.005 * (last?.currentA ?? 0)).toBeCloseTo(11, 5)
  })

  it('lets the protection board of a lithium battery open at its own terminals', () => {
    // 10 V at four cells is the board's bound; a cable changes what the inverter sees, not what the board does.
    const cold = { ...lfp, minSocFraction: 0, temperatureC: -20 }
    const at = (cableResistanceOhm: number) =>
      predictRuntime({ bank: cold, dcPowerW: 900, cutOffV: 8, cableResistanceOhm })
    expect(at(0).limitedBy).toBe('cut-off-voltage')
    expect(at(0).curve.at(-1)?.terminalV).toBeCloseTo(10, 5)
    expect(at(0.004).curve.at(-1)?.terminalV).toBeCloseTo(10, 5)
  })

  it('gives no time beyond the discharge limit, and says so', () => {
    const run = predictRuntime({ bank: { ...lfp, maxDischargeA: 50 }, dcPowerW: 1000, cutOffV: 10.5 })
    expect(run).toMatchObject({
      hours: 0,
      hoursLow: 0,
      hoursHigh: 0,
      limitedBy: 'discharge-limit',
      curve: [],
    })
    expect(run.warnings).toContain('discharge-limit-exceeded')
  })

  it('ends where the rising current meets the discharge limit', () => {
    const run = predictRuntime({ bank: { ...agm, minSocFraction: 0, maxDischargeA: 50 }, dcPowerW: 590 })
    expect(run.limitedBy).toBe('discharge-limit')
    expect(run.hours).toBeGreaterThan(0)
    expect(run.curve.at(-1)?.currentA).toBeCloseTo(50, 4)
  })

  it('runs exactly at the limit, not a hair beyond', () => {
    const bank = { ...agm, startSocFraction: 1, minSocFraction: 0.99 }
    const startA = predictRuntime({ bank, dcPowerW: 600 }).curve.at(-1)?.currentA ?? 0
    expect(predictRuntime({ bank: { ...bank, maxDischargeA: startA }, dcPowerW: 600 }).limitedBy).toBe(
      'state-of-charge',
    )
    expect(
      predictRuntime({ bank: { ...bank, maxDischargeA: startA * 0.999 }, dcPowerW: 600 }).limitedBy,
    ).toBe('discharge-limit')
  })

  it('tells a collapse of the voltage', () => {
    const run = predictRuntime({ bank: { ...agm, capacityAh: 7 }, dcPowerW: 3000, cutOffV: 10.5 })
    expect(run.hours).toBe(0)
    expect(run.warnings).toEqual(
      expect.arrayContaining(['voltage-collapse', 'cut-off-at-once', 'under-20-minutes']),
    )
  })

  it('gives no firm time below 20 minutes: it warns and the band is wide', () => {
    const run = predictRuntime({ bank: { ...agm, minSocFraction: 0 }, dcPowerW: 1900, cutOffV: 10 })
    expect(run.hours).toBeLessThan(1 / 3)
    expect(run.hours).toBeGreaterThan(0)
    expect(run.warnings).toContain('under-20-minutes')
    expect(run.hoursHigh / run.hoursLow).toBeGreaterThan(2)
  })

  it('tells a load of 0 W as a year with a warning, a flat curve and the energy at hand', () => {
    const run = predictRuntime({ bank: agm, dcPowerW: 0 })
    expect(run).toMatchObject({
      hours: 8760,
      hoursLow: 8760,
      hoursHigh: 8760,
      averageA: 0,
      limitedBy: 'state-of-charge',
    })
    expect(run.warnings).toContain('longer-than-a-year')
    expect(run.curve.map(({ hours, socFraction }) => [hours, socFraction])).toEqual([
      [0, 1],
      [8760, 1],
    ])
    expect(run.usableWh).toBeGreaterThan(600)
  })

  it('cuts the curve of a longer run at a year, charge still falling', () => {
    const run = predictRuntime({ bank: { ...agm, capacityAh: 10_000 }, dcPowerW: 4 })
    expect(run.hours).toBe(8760)
    expect(run.curve.at(-1)?.hours).toBeCloseTo(8760, 6)
    expect(run.curve.at(-1)?.socFraction).toBeGreaterThan(0.5)
    expect(run.curve.at(-1)?.socFraction).toBeLessThan(1)
  })

  it('gives nothing from a battery that stands at its lowest allowed charge', () => {
    const run = predictRuntime({ bank: { ...agm, startSocFraction: 0.5 }, dcPowerW: 50 })
    expect(run.hours).toBe(0)
    expect(run.warnings).toContain('nothing-usable')
  })

  it('warns that a cold lithium battery must not be charged, and a lead-acid one not', () => {
    const warned = (bank: BatteryBank) =>
      predictRuntime({ bank, dcPowerW: 50 }).warnings.includes('cold-lithium-charge')
    expect(warned({ ...lfp, temperatureC: -0.1 })).toBe(true)
    expect(warned({ ...lfp, temperatureC: 0 })).toBe(false)
    expect(warned({ ...agm, temperatureC: -5 })).toBe(false)
  })

  it('says what it took for granted, with a source that exists', () => {
    const fields = predictRuntime({ bank: lfp, dcPowerW: 50 }).assumed
    expect(fields.map(({ field }) => field)).toEqual([
      'minSocFraction',
      'internalResistanceOhm',
      'maxDischargeA',
    ])
    expect(fields.every(({ source }) => source in SOURCES)).toBe(true)
    const stated = predictRuntime({
      bank: {
        ...agm,
        minSocFraction: 0.4,
        internalResistanceOhm: 0.005,
        otherRates: [{ hourRateH: 5, capacityAh: 85 }],
      },
      dcPowerW: 50,
    })
    expect(stated.assumed).toEqual([])
  })

  it('narrows the band with short-rate capacities and widens it in the cold and with age', () => {
    const width = (bank: BatteryBank) => {
      const run = predictRuntime({ bank: { ...bank, minSocFraction: 0.2 }, dcPowerW: 300 })
      return run.hoursHigh / run.hoursLow
    }
    const c5 = { hourRateH: 5, capacityAh: 85 }
    const known = { ...agm, otherRates: [c5, { hourRateH: 1, capacityAh: 60 }] }
    expect(width(known)).toBeLessThan(width({ ...agm, otherRates: [c5] }))
    expect(width({ ...agm, otherRates: [c5] })).toBeLessThan(width(agm))
    expect(width({ ...known, temperatureC: 0 })).toBeGreaterThan(width(known))
    const shares = (temperatureC: number) => {
      const run = predictRuntime({ bank: { ...known, minSocFraction: 0.4, temperatureC }, dcPowerW: 60 })
      return { low: run.hoursLow / run.hours, high: run.hoursHigh / run.hours }
    }
    expect(shares(0).low).toBeLessThan(shares(25).low)
    expect(shares(0).high).toBeGreaterThan(shares(25).high)
    expect(width({ ...known, healthFraction: 0.8 })).toBeGreaterThan(width(known))
  })

  it('comes to the same time with 2 points as with 60, within 1e-5', () => {
    for (const bank of [
      { ...agm, minSocFraction: 0 },
      { ...lfp, minSocFraction: 0 },
    ]) {
      const few = predictRuntime({ bank, dcPowerW: 200, curvePoints: 2 })
      const many = predictRuntime({ bank, dcPowerW: 200, curvePoints: 60 })
      expect(few.curve).toHaveLength(2)
      expect(many.curve).toHaveLength(60)
      expect(Math.abs(few.hours / many.hours - 1)).toBeLessThan(1e-5)
    }
  })

  it('answers the same from a model at hand', () => {
    const question = { bank: agm, dcPowerW: 123, cutOffV: 10.5 }
    expect(runtimeOfModel(bankModel(agm), question)).toEqual(predictRuntime(question))
  })

  it.each([
    ['dcPowerW', { bank: agm, dcPowerW: -1 }],
    ['dcPowerW', { bank: agm, dcPowerW: 1e9 + 1 }],
    ['dcPowerW', { bank: agm, dcPowerW: Number.NaN }],
    ['cutOffV', { bank: agm, dcPowerW: 1, cutOffV: 101 }],
    ['cableResistanceOhm', { bank: agm, dcPowerW: 1, cableResistanceOhm: 11 }],
    ['curvePoints', { bank: agm, dcPowerW: 1, curvePoints: 61 }],
    ['curvePoints', { bank: agm, dcPowerW: 1, curvePoints: 1 }],
    ['capacityAh', { bank: { ...agm, capacityAh: 0.4 }, dcPowerW: 1 }],
    ['healthFraction', { bank: { ...agm, healthFraction: 0.29 }, dcPowerW: 1 }],
    ['startSocFraction', { bank: { ...agm, startSocFraction: 1.01 }, dcPowerW: 1 }],
    ['temperatureC', { bank: { ...agm, temperatureC: 81 }, dcPowerW: 1 }],
    [
      'otherRates.hourRateH',
      { bank: { ...agm, otherRates: [{ hourRateH: 0, capacityAh: 5 }] }, dcPowerW: 1 },
    ],
  ] as const)('refuses %s out of its bounds', (field, question) => {
    expect(() => predictRuntime(question)).toThrow(CoreError)
    expect(() => predictRuntime(question)).toThrow(field)
  })
})

describe('bankModel', () => {
  const rated = { hourRateH: 20, capacityAh: 100 }
  const rateOf = (otherRates: BatteryBank['otherRates']) => bankModel({ ...agm, ...rated, otherRates }).rate

  it('gives the rated capacity at the rated current', () => {
    for (const chemistry of ['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const) {
      const { rate } = bankModel({ nominalV: 24, chemistry, capacityAh: 80, hourRateH: 10 })
      expect(Math.abs(capacityAtCurrentAh(rate, 8) / 80 - 1)).toBeLessThan(1e-9)
    }
  })

  it('goes through every stated short-rate capacity', () => {
    const c5 = { hourRateH: 5, capacityAh: 85 }
    const c1 = { hourRateH: 1, capacityAh: 60 }
    expect(capacityAtCurrentAh(rateOf([c5]), 17)).toBeCloseTo(85, 6)
    const both = rateOf([c1, c5])
    expect(both.basis).toBe('two-short-rates')
    expect(capacityAtCurrentAh(both, 17)).toBeCloseTo(85, 5)
    expect(capacityAtCurrentAh(both, 60)).toBeCloseTo(60, 5)
    expect(capacityAtCurrentAh(both, 5)).toBeCloseTo(100, 6)
  })

  it('does not learn from a 10 h capacity beside a 20 h one: they lie too close together', () => {
    expect(rateOf([{ hourRateH: 10, capacityAh: 94 }])).toEqual(rateOf([]))
  })

  it('keeps the typical shape where stated capacities contradict each other', () => {
    expect(rateOf([{ hourRateH: 5, capacityAh: 120 }]).basis).toBe('typical-shape')
    expect(rateOf([{ hourRateH: 5, capacityAh: 20 }]).basis).toBe('typical-shape')
  })

  it('takes a 20 h capacity as the base where the rated one is of 10 h', () => {
    const tenHour = bankModel({ ...agm, capacityAh: 94, hourRateH: 10, otherRates: [rated] }).rate
    expect(capacityAtCurrentAh(tenHour, 5)).toBeCloseTo(100, 9)
  })

  it('takes more resistance from an old battery', () => {
    const ohm = (healthFraction: number) => bankModel({ ...agm, healthFraction }).resistanceOhm
    expect(ohm(0.5)).toBeCloseTo(2 * ohm(1), 12)
  })
})

describe('openCircuitV', () => {
  it('rises with charge for every chemistry and voltage', () => {
    for (const chemistry of ['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const) {
      for (const nominalV of [12, 24, 36, 48] as const) {
        let last = 0
        for (let percent = 0; percent <= 100; percent++) {
          const volts = openCircuitV({ chemistry, nominalV, socFraction: percent / 100 })
          expect(volts).toBeGreaterThan(last)
          last = volts
        }
      }
    }
  })
  it('refuses a charge outside 0..1', () => {
    expect(() => openCircuitV({ chemistry: 'agm', nominalV: 12, socFraction: 1.1 })).toThrow('socFraction')
  })
})

describe('runtimeWorking', () => {
  it('can be followed by hand: volts times amps is the power, mean amps times hours the charge', () => {
    const question = { bank: agm, dcPowerW: 240, cutOffV: 10.5 }
    const answer = predictRuntime(question)
    const steps = runtimeWorking(question, answer)
    const start = steps.find(({ step }) => step === 'battery-current-at-start')?.values
    expect(Number(start?.currentA) * Number(start?.inverterV)).toBeCloseTo(240, 6)
    const capacity = steps.find(({ step }) => step === 'battery-capacity-at-current')?.values
    const used = Number(capacity?.capacityAh) * (1 - answer.endSocFraction)
    expect(Math.abs((answer.averageA * answer.hours) / used - 1)).toBeLessThan(0.001)
    expect(steps.every(({ source }) => source === undefined || source in SOURCES)).toBe(true)
  })
})
