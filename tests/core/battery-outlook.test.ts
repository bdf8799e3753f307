import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding, FindingCode } from '../../core/advice/findings.ts'
import { bankModel } from '../../core/battery/bank.ts'
import { breaks, runEnd } from '../../core/battery/discharge.ts'
import { predictRuntime, runtimeOutlook } from '../../core/battery/runtime.ts'
import {
  bankCarries,
  batteryAnswer,
  carriesPlan,
  steadyAnswer,
} from '../../core/battery-side/battery-answer.ts'
import { batteryOutlook, steadyOutlook } from '../../core/battery-side/outlook.ts'
import { makeLoad, makeNeed } from '../support/make.ts'

const bankArbitrary = fc.record({
  nominalV: fc.constantFrom(12, 24),
  chemistry: fc.constantFrom('agm', 'flooded', 'gel', 'lifepo4', 'nmc'),
  capacityAh: fc.integer({ min: 5, max: 600 }),
  minSocFraction: fc.constantFrom(undefined, 0, 0.2, 0.4),
  startSocFraction: fc.constantFrom(undefined, 0.6),
  temperatureC: fc.constantFrom(undefined, -15, 5, 40),
  maxDischargeA: fc.constantFrom(undefined, undefined, 60),
} as const)

const loadArbitrary = fc.record({
  runningW: fc.integer({ min: 5, max: 1800 }),
  typicalShare: fc.constantFrom(0.5, 1),
  startFactor: fc.constantFrom(1, 1, 3),
  quantity: fc.constantFrom(1, 2),
  minutesPerDay: fc.constantFrom(3, 20, 120, 700, 1440),
  dutyFraction: fc.constantFrom(1, 0.4),
})

const questionArbitrary = fc
  .record({
    bank: bankArbitrary,
    loads: fc.array(loadArbitrary, { minLength: 1, maxLength: 5 }),
    continuousW: fc.integer({ min: 300, max: 4000 }),
    cutOff: fc.constantFrom(0.7, 0.875, 0.95),
    cableResistanceOhm: fc.constantFrom(0, 0.001, 0.008),
  })
  .map(({ bank, loads, continuousW, cutOff, cableResistanceOhm }) => {
    const { demand, supply } = makeNeed(
      loads.map(({ typicalShare, startFactor, ...load }, index) =>
        makeLoad({
          ...load,
          id: `l${index}`,
          typicalW: load.runningW * typicalShare,
          startingW: load.runningW * startFactor,
          startingS: startFactor > 1 ? 1 : 0,
        }),
      ),
    )
    const inverter = { continuousW, efficiencyFullFraction: 0.88, idleW: 10, cutOffV: cutOff * bank.nominalV }
    return { bank, question: { demand, supply, inverter, cableResistanceOhm } }
  })

const caresOf = (findings: readonly Finding[]): readonly FindingCode[] =>
  [...new Set(findings.flatMap(({ severity, code }) => (severity === 'note' ? [] : [code])))].sort()

describe('batteryOutlook', () => {
  it('comes to what the answer comes to: the same hours, the same codes, the same charge left', () => {
    const seen = new Set<FindingCode>()
    let carried = 0
    fc.assert(
      fc.property(questionArbitrary, ({ question, bank }) => {
        const answer = batteryAnswer(question, bank)
        const outlook = batteryOutlook(question, bank, () => true)
        expect(outlook?.hours).toBe(answer.runtime.hours)
        expect([...(outlook?.cares ?? [])].sort()).toEqual(caresOf(answer.findings))
        for (const code of outlook?.cares ?? []) seen.add(code)
        if (!answer.day.ok) return
        carried += 1
        expect(outlook?.socLeftFraction).toBe(answer.day.socLeftFraction)
      }),
      { numRuns: 1500 },
    )
    expect(seen.size).toBeGreaterThan(7)
    expect(carried).toBeGreaterThan(100)
  })

  it('stops as soon as it is of no use', () => {
    fc.assert(
      fc.property(questionArbitrary, ({ question, bank }) => {
        const asked: number[] = []
        const outlook = batteryOutlook(question, bank, (cares) => {
          asked.push(cares.size)
          return cares.size === 0
        })
        if (outlook === undefined) expect(asked.at(-1)).toBeGreaterThan(0)
        expect(asked.slice(0, -1).every((size) => size === 0)).toBe(true)
      }),
    )
  })

  it('agrees on a steady power too', () => {
    fc.assert(
      fc.property(bankArbitrary, fc.integer({ min: 1, max: 4000 }), (bank, watts) => {
        const question = { bank, dcPowerW: watts, dcPowerRunningW: watts, dcPowerStartingW: 1.5 * watts }
        const answer = steadyAnswer(question)
        const outlook = steadyOutlook(question)
        expect(outlook.hours).toBe(answer.runtime.hours)
        expect([...outlook.cares].sort()).toEqual(caresOf(answer.findings))
      }),
      { numRuns: 500 },
    )
  })
})

describe('bankCarries', () => {
  it('is what the answer says of the plan', () => {
    fc.assert(
      fc.property(questionArbitrary, ({ question, bank }) => {
        expect(bankCarries(question, bank)).toBe(carriesPlan(batteryAnswer(question, bank)))
      }),
      { numRuns: 500 },
    )
  })
})

describe('runEnd', () => {
  it('is where the load still runs and just below does not, whatever ends it', () => {
    let byVoltage = 0
    fc.assert(
      fc.property(questionArbitrary, fc.integer({ min: 20, max: 4000 }), ({ bank, question }, powerW) => {
        const model = bankModel(bank)
        const load = { powerW, cutOffV: question.inverter.cutOffV, cableOhm: question.cableResistanceOhm }
        const end = runEnd(model, load)
        if (end.limitedBy === 'state-of-charge') return
        if (end.socFraction === model.startSocFraction) return
        byVoltage += 1
        expect(breaks(model, end.socFraction, load)).toBeUndefined()
        expect(breaks(model, Math.max(0, end.socFraction - 2e-9), load)).toBe(end.limitedBy)
      }),
      { numRuns: 1500 },
    )
    expect(byVoltage).toBeGreaterThan(50)
  })

  it('gives a run time the same length whether it is asked in full or as an outlook', () => {
    fc.assert(
      fc.property(bankArbitrary, fc.integer({ min: 0, max: 3000 }), (bank, dcPowerW) => {
        const { hours, warnings } = predictRuntime({ bank, dcPowerW })
        expect(runtimeOutlook(bankModel(bank), { dcPowerW })).toEqual({ hours, warnings })
      }),
      { numRuns: 500 },
    )
  })
})
