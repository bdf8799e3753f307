import { bankModel } from '../../core/battery/bank.ts'
import { predictRuntime, runtimeOfModel } from '../../core/battery/runtime.ts'
import { batteryAnswer } from '../../core/battery-side/battery-answer.ts'
import { fedBy } from '../../core/battery-side/fed-inverter.ts'
import { planFor, sizeFor } from '../../core/sizing.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { rangeOf } from './core.ts'
import { type Timing, timeCall } from './timing.ts'

/** Microseconds that run-time predictions take. */
export interface RuntimeCost {
  /** Model of the bank and a curve of 60 points. */
  readonly perCurveUs: number
  /** The same with the model at hand and no curve but its ends. */
  readonly perHoursUs: number
}

/**
 * Measures what a run-time prediction costs on this machine, over all chemistries and a spread of loads.
 *
 * @param rounds - How often the set of questions is asked
 * @param now - Clock in milliseconds
 * @returns Mean cost
 */
export function runtimeCost(rounds: number, now: () => number): RuntimeCost {
  const questions = (['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const).flatMap((chemistry) =>
    [20, 150, 600, 1100].map((dcPowerW) => ({
      bank: { nominalV: 12, chemistry, capacityAh: 200, temperatureC: 15 } as const,
      dcPowerW,
      cutOffV: 10.5,
      cableResistanceOhm: 0.001,
    })),
  )
  const models = questions.map((question) => bankModel(question.bank))
  // Warm rounds let the engine compile; the sum keeps the work from being thrown away.
  let hours = 0
  for (let round = 0; round < 200; round++)
    for (const question of questions) hours += predictRuntime(question).hours
  const start = now()
  for (let round = 0; round < rounds; round++) {
    for (const question of questions) hours += predictRuntime(question).hours
  }
  const middle = now()
  for (let round = 0; round < rounds; round++) {
    for (const [index, question] of questions.entries()) {
      const model = models[index]
      if (model) hours += runtimeOfModel(model, { ...question, curvePoints: 2 }).hours
    }
  }
  const end = now()
  if (!Number.isFinite(hours)) throw new Error('a run time is not finite')
  const runs = rounds * questions.length
  return { perCurveUs: (1000 * (middle - start)) / runs, perHoursUs: (1000 * (end - middle)) / runs }
}

/**
 * Measures the whole battery side of the example plan of the API document: run time with its curve, day, recharge,
 * verdicts and findings, its bank described anew each time as each request does.
 *
 * @returns Percentiles. [microseconds]
 */
export function batterySideCost(): Timing {
  const range = rangeOf(20)
  const input = { ...sizingRequestExample, preferences: { inStockOnly: true } }
  const planned = planFor(range, input)
  const unit = planned.ok ? sizeFor(range, planned.plan).recommended : undefined
  if (!planned.ok || unit === undefined) throw new Error('the example has no answer')
  const { demand, need } = planned.plan
  const question = { demand, supply: need.supply, inverter: fedBy(unit.inverter), cableResistanceOhm: 0.001 }
  const { battery, nominalV } = input.supply
  return timeCall(() => batteryAnswer(question, { ...battery, nominalV }))
}
