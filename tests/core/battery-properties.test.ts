import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BatteryBank, openCircuitV } from '../../core/battery/bank.ts'
import { joinedBank } from '../../core/battery/bank-size.ts'
import { planDay } from '../../core/battery/day-plan.ts'
import { predictRuntime, type RuntimeQuestion } from '../../core/battery/runtime.ts'
import { batteryStress } from '../../core/battery/stress.ts'
import { BATTERY_CHEMISTRIES, SUPPLY_VOLTAGES } from '../../core/range/vocabulary.ts'

/** A step in the last digits, for times that are found by iteration. */
const SLACK = 1 + 1e-6

/** Even over the bounds, both of them among the values: a plain double favours numbers next to zero. */
const fraction = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((share) => min + ((max - min) * share) / 1_000_000)
const option = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined })

/** Mostly charges between which something is left to use, at times any two. */
const anyCharges = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      minSocFraction: option(fraction(0, 0.5)),
      startSocFraction: option(fraction(0.5, 1)),
    }),
  },
  { weight: 1, arbitrary: fc.record({ minSocFraction: fraction(0, 1), startSocFraction: fraction(0, 1) }) },
)

const anyBank: fc.Arbitrary<BatteryBank> = fc
  .record({
    plain: fc.record({
      nominalV: fc.constantFrom(...SUPPLY_VOLTAGES),
      chemistry: fc.constantFrom(...BATTERY_CHEMISTRIES),
      capacityAh: fraction(0, 4).map((power) => 10 ** power),
      hourRateH: option(fc.constantFrom(5, 10, 20, 100)),
      temperatureC: option(fraction(-20, 60)),
      healthFraction: option(fraction(0.3, 1)),
    }),
    charges: anyCharges,
    limitPerHour: option(fraction(0.05, 3)),
    ohmAh: option(fraction(0, 1.5)),
  })
  .map(({ plain, charges, limitPerHour, ohmAh }) => ({
    ...plain,
    ...charges,
    maxDischargeA: limitPerHour === undefined ? undefined : limitPerHour * plain.capacityAh,
    internalResistanceOhm: ohmAh === undefined ? undefined : ohmAh / plain.capacityAh,
  }))

const anyRates = fc.array(fc.record({ hourRateH: fraction(0.1, 100), ofRated: fraction(0.3, 1.2) }), {
  maxLength: 4,
})

/** Loads of every size beside the bank, small ones more often: up to 4 times its capacity per hour. */
const anyQuestion: fc.Arbitrary<RuntimeQuestion> = fc
  .record({
    bank: anyBank,
    perHour: fraction(0, 1).map((share) => 4 * share ** 4),
    bareW: fc.option(fraction(0, 50_000), { nil: undefined, freq: 9 }),
    cutOff: option(fc.oneof(fraction(0.8, 1), fraction(0, 1.2))),
    cableOhmAh: option(fraction(0, 0.3)),
  })
  .map(({ bank, perHour, bareW, cutOff, cableOhmAh }) => ({
    bank,
    dcPowerW:
      bareW !== undefined && bank.capacityAh > 500
        ? bareW
        : Math.min(50_000, perHour * bank.capacityAh * bank.nominalV),
    cutOffV: cutOff === undefined ? undefined : cutOff * bank.nominalV,
    cableResistanceOhm: cableOhmAh === undefined ? undefined : cableOhmAh / bank.capacityAh,
  }))

const hoursOf = (question: RuntimeQuestion): number => predictRuntime({ ...question, curvePoints: 2 }).hours

describe('the questions asked below', () => {
  it('run in more than half of all cases, and end in each of the three ways', () => {
    const runs = fc
      .sample(anyQuestion, { numRuns: 2000, seed: 1 })
      .map((question) => predictRuntime(question))
    const running = runs.filter(({ hours }) => hours > 0)
    expect(running.length).toBeGreaterThan(1000)
    for (const limit of ['state-of-charge', 'cut-off-voltage', 'discharge-limit']) {
      expect(running.filter(({ limitedBy }) => limitedBy === limit).length).toBeGreaterThan(2)
    }
  })
})

describe('predictRuntime, for any bank and load', () => {
  it('runs no longer with more load', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(1, 3), (question, factor) => {
        const more = { ...question, dcPowerW: Math.min(100_000, question.dcPowerW * factor) }
        expect(hoursOf(more)).toBeLessThanOrEqual(hoursOf(question) * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('runs no longer in the cold', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(-20, 60), fraction(-20, 60), (question, one, other) => {
        const at = (temperatureC: number) =>
          hoursOf({ ...question, bank: { ...question.bank, temperatureC } })
        expect(at(Math.min(one, other))).toBeLessThanOrEqual(at(Math.max(one, other)) * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('runs no longer with age', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(0.3, 1), fraction(0.3, 1), (question, one, other) => {
        const at = (healthFraction: number) =>
          hoursOf({ ...question, bank: { ...question.bank, healthFraction } })
        expect(at(Math.min(one, other))).toBeLessThanOrEqual(at(Math.max(one, other)) * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('runs no longer from a lower charge, nor to a higher least charge', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(0, 1), fraction(0, 1), (question, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)]
        const from = (startSocFraction: number) =>
          hoursOf({ ...question, bank: { ...question.bank, startSocFraction } })
        const to = (minSocFraction: number) =>
          hoursOf({ ...question, bank: { ...question.bank, minSocFraction } })
        expect(from(low)).toBeLessThanOrEqual(from(high) * SLACK)
        expect(to(high)).toBeLessThanOrEqual(to(low) * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('runs no longer with a higher cut-off, a longer cable or a lower discharge limit', () => {
    fc.assert(
      fc.property(
        anyQuestion,
        fraction(0, 60),
        fraction(0, 60),
        fraction(0, 0.05),
        (question, one, other, ohm) => {
          const [low, high] = [Math.min(one, other), Math.max(one, other)]
          const cutOff = (cutOffV: number) => hoursOf({ ...question, cutOffV })
          expect(cutOff(high)).toBeLessThanOrEqual(cutOff(low) * SLACK)
          const cable = (cableResistanceOhm: number) => hoursOf({ ...question, cableResistanceOhm })
          expect(cable(ohm)).toBeLessThanOrEqual(cable(ohm / 2) * SLACK)
          const limit = (maxDischargeA: number) =>
            hoursOf({ ...question, bank: { ...question.bank, maxDischargeA } })
          expect(limit(10 * low + 1)).toBeLessThanOrEqual(limit(10 * high + 1) * SLACK)
        },
      ),
      { numRuns: 600 },
    )
  })

  it('runs no shorter with more capacity', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(1, 5), (question, factor) => {
        const larger = { ...question.bank, capacityAh: Math.min(10_000, question.bank.capacityAh * factor) }
        expect(hoursOf(question)).toBeLessThanOrEqual(hoursOf({ ...question, bank: larger }) * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('never gives more energy than the bank stores: what it holds at no current, at its resting voltage', () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const { bank } = question
        const run = predictRuntime(question)
        // Lead-acid holds more at no current than over its rated time: 1.45 times at a 5 h rating, 1.13 at 20 h.
        const leadAcid = ['flooded', 'agm', 'gel'].includes(bank.chemistry)
        const slow = leadAcid ? 1 + (1 / ((bank.hourRateH ?? 20) * 0.46)) ** 0.83 : 1
        const warm = 1.05
        const fullV = openCircuitV({ ...bank, socFraction: bank.startSocFraction ?? 1 })
        const storedWh = bank.capacityAh * slow * warm * (bank.startSocFraction ?? 1) * fullV
        expect(run.usableWh).toBeLessThanOrEqual(storedWh * (bank.healthFraction ?? 1) * SLACK)
        expect(run.hours * question.dcPowerW).toBeLessThanOrEqual(run.usableWh * SLACK)
      }),
      { numRuns: 600 },
    )
  })

  it('keeps low <= hours <= high, and warns below 20 minutes', () => {
    fc.assert(
      fc.property(anyQuestion, (question) => {
        const run = predictRuntime({ ...question, curvePoints: 2 })
        expect(run.hoursLow).toBeLessThanOrEqual(run.hours)
        expect(run.hours).toBeLessThanOrEqual(run.hoursHigh)
        expect(run.warnings.includes('under-20-minutes')).toBe(run.hours < 1 / 3)
      }),
      { numRuns: 600 },
    )
  })

  it('gives a curve of 60 points or fewer on which time rises and charge falls, ending with the run', () => {
    fc.assert(
      fc.property(anyQuestion, fc.integer({ min: 2, max: 60 }), (question, curvePoints) => {
        const run = predictRuntime({ ...question, curvePoints })
        const { curve } = run
        expect(curve.length).toBeLessThanOrEqual(curvePoints)
        expect(curve.length > 0).toBe(run.hours > 0)
        for (const [index, point] of curve.slice(1).entries()) {
          const before = curve[index]
          expect(point.hours).toBeGreaterThan(before?.hours ?? Number.POSITIVE_INFINITY)
          expect(point.socFraction).toBeLessThanOrEqual(before?.socFraction ?? -1)
          expect(point.terminalV).toBeLessThanOrEqual((before?.terminalV ?? 0) * SLACK)
          expect(point.currentA * SLACK).toBeGreaterThanOrEqual(before?.currentA ?? Number.POSITIVE_INFINITY)
        }
        if (run.hours > 0) {
          expect(curve[0]?.hours).toBe(0)
          expect(Math.abs((curve.at(-1)?.hours ?? 0) / run.hours - 1)).toBeLessThan(1e-9)
        }
      }),
      { numRuns: 400 },
    )
  })

  const anyShare = fc.double({ min: 0, max: 1, noNaN: true })
  it('gives finite numbers within bounds for the least of loads and charges, and any other rates', () => {
    fc.assert(
      fc.property(anyQuestion, anyRates, option(anyShare), option(anyShare), (asked, rates, share, soc) => {
        const otherRates = rates.map(({ hourRateH, ofRated }) => ({
          hourRateH,
          capacityAh: ofRated * asked.bank.capacityAh,
        }))
        const question = share === undefined ? asked : { ...asked, dcPowerW: asked.dcPowerW * share }
        const run = predictRuntime({
          ...question,
          bank: { ...question.bank, otherRates, startSocFraction: soc ?? question.bank.startSocFraction },
        })
        const numbers = [
          run.hours,
          run.hoursLow,
          run.hoursHigh,
          run.usableWh,
          run.averageA,
          run.endSocFraction,
        ]
        numbers.push(...run.curve.flatMap((point) => Object.values(point)))
        numbers.push(...run.assumed.map(({ value }) => value))
        for (const number of numbers) {
          expect(Number.isFinite(number)).toBe(true)
          expect(number).toBeGreaterThanOrEqual(0)
        }
        expect(run.hoursHigh).toBeLessThanOrEqual(8760)
        expect(run.endSocFraction).toBeLessThanOrEqual(1)
      }),
      { numRuns: 1500 },
    )
  })

  it('runs two blocks in series at twice the power, or side by side at twice the power, as long as one', () => {
    const blocks = anyBank
      .filter(({ chemistry }) => chemistry !== 'nmc')
      .map((bank) => ({ ...bank, nominalV: 12 as const }))
    fc.assert(
      fc.property(blocks, fraction(0.02, 1), fraction(0.8, 0.95), (bank, perHour, cutOff) => {
        const dcPowerW = perHour * bank.capacityAh * 12
        fc.pre(dcPowerW <= 50_000 && bank.capacityAh <= 5000)
        const one = hoursOf({ bank, dcPowerW, cutOffV: 12 * cutOff })
        const series = joinedBank(bank, { inSeries: 2, inParallel: 1 })
        const parallel = joinedBank(bank, { inSeries: 1, inParallel: 2 })
        expect(series.nominalV).toBe(24)
        const inSeries = hoursOf({ bank: series, dcPowerW: 2 * dcPowerW, cutOffV: 24 * cutOff })
        const inParallel = hoursOf({ bank: parallel, dcPowerW: 2 * dcPowerW, cutOffV: 12 * cutOff })
        expect(inSeries).toBeCloseTo(one, 6)
        expect(inParallel).toBeCloseTo(one, 6)
      }),
      { numRuns: 300 },
    )
  })
})

describe('batteryStress, for any bank and load', () => {
  it('draws no less and sags no less with more power, and gives finite numbers', () => {
    fc.assert(
      fc.property(anyQuestion, fraction(1, 5), ({ bank, dcPowerW, cutOffV, cableResistanceOhm }, factor) => {
        const at = (dcPowerStartingW: number) =>
          batteryStress({ bank, dcPowerRunningW: dcPowerW, dcPowerStartingW, cutOffV, cableResistanceOhm })
        const one = at(dcPowerW)
        const more = at(dcPowerW * factor)
        expect(more.sagFraction * SLACK + 1e-12).toBeGreaterThanOrEqual(one.sagFraction)
        expect(more.faults.length).toBeGreaterThanOrEqual(
          one.faults.filter(({ code }) => code !== 'discharge-limit-starting').length,
        )
        for (const number of [
          more.runningA,
          more.startingA,
          more.startingTerminalV,
          more.startingInverterV,
        ]) {
          expect(Number.isFinite(number)).toBe(true)
        }
        expect(more.sagFraction).toBeLessThanOrEqual(1)
      }),
      { numRuns: 500 },
    )
  })
})

describe('planDay, for any bank and plan', () => {
  const anyLoads = fc.array(
    fc.record({
      powerW: fraction(0, 3000),
      minutes: fraction(0, 1440),
      dutyFraction: option(fraction(0, 1)),
    }),
    { maxLength: 12 },
  )
  it('ends within the day, leaves a charge between 0 and the start, and gives finite numbers', () => {
    fc.assert(
      fc.property(anyBank, anyLoads, option(fraction(0, 24)), (bank, loads, idleHours) => {
        const plan = planDay({
          bank,
          inverter: { continuousW: 3000 },
          loads: loads.map((load, index) => ({ ...load, id: `load-${index}` })),
          idleHours,
        })
        const last = plan.stretches.at(-1)
        expect((last?.fromH ?? 0) + (last?.hours ?? 0)).toBeLessThanOrEqual(24 * SLACK)
        expect(plan.socLeftFraction).toBeGreaterThanOrEqual(0)
        expect(plan.socLeftFraction).toBeLessThanOrEqual(bank.startSocFraction ?? 1)
        expect(plan.energyWh).toBeLessThanOrEqual(plan.wantedWh * SLACK)
        expect(plan.ok).toBe(plan.stopped === undefined)
        expect(plan.daysOfAutonomy >= 1 || !plan.ok).toBe(true)
        for (const { socFraction, hours } of plan.stretches) {
          expect([socFraction, hours].every((value) => Number.isFinite(value) && value >= 0)).toBe(true)
        }
      }),
      { numRuns: 500 },
    )
  })
})
