import type { FindingCode } from '../advice/findings.ts'
import { type BatteryBank, bankModel } from '../battery/bank.ts'
import { runtimeOutlook } from '../battery/runtime.ts'
import { batteryStress } from '../battery/stress.ts'
import { isTooLong } from '../battery/use-verdict.ts'
import { dcPower } from './fed-inverter.ts'
import { addSteadyCares } from './findings.ts'
import { dayOutlookOf, drawnHours, drawnW, heaviestLoad } from './plan-day.ts'
import type { BatteryQuestion, SteadyQuestion } from './question.ts'

/** What a battery's answer comes to, as far as one answer is held against another. */
export interface BatteryOutlook extends SteadyOutlook {
  /** State of charge when the day is at its end; the lowest allowed where it is not carried. */
  readonly socLeftFraction: number
}

/** The same for a steady power. */
export interface SteadyOutlook {
  /** Run time with everything on. [h] */
  readonly hours: number
  /** Codes of the findings of severity `fail` or `care`. */
  readonly cares: ReadonlySet<FindingCode>
}

/**
 * Run time and codes of findings as the answer about a battery has them, for a fraction of its work: no curve, no
 * low and high, no words, and no search for the battery that a load too long would take.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @param isOfUse - Asked with the codes found so far, to which more may come: false ends the work
 * @returns The outlook; undefined where it was of no use before it was complete
 * @source battery-model-fit
 */
export function batteryOutlook(
  question: BatteryQuestion,
  bank: BatteryBank,
  isOfUse: (cares: ReadonlySet<FindingCode>) => boolean,
): BatteryOutlook | undefined {
  const { demand, inverter, cableResistanceOhm } = question
  const wire = { cutOffV: inverter.cutOffV, cableResistanceOhm }
  const asked = {
    bank,
    dcPowerW: dcPower(inverter, demand.typicalRunningW),
    dcPowerRunningW: dcPower(inverter, demand.runningW),
    dcPowerStartingW: dcPower(inverter, demand.startingW),
    ...wire,
  }
  const cares = new Set<FindingCode>()
  addSteadyCares(batteryStress(asked).faults, [], cares)
  if (!isOfUse(cares)) return undefined
  const model = bankModel(bank)
  const run = runtimeOutlook(model, asked)
  addSteadyCares([], run.warnings, cares)
  if (!isOfUse(cares)) return undefined
  const heaviest = heaviestLoad(demand)
  if (heaviest !== undefined) {
    const dcPowerW = dcPower(inverter, drawnW(heaviest))
    const { hours } = dcPowerW === asked.dcPowerW ? run : runtimeOutlook(model, { dcPowerW, ...wire })
    if (isTooLong(hours, drawnHours(heaviest))) cares.add('runs-too-long')
    if (!isOfUse(cares)) return undefined
  }
  const day = dayOutlookOf(question, bank)
  if (!day.ok) cares.add('day-not-carried')
  return { hours: run.hours, cares, socLeftFraction: day.socLeftFraction }
}

/**
 * As {@link batteryOutlook}, of a steady power at the inverter's input.
 *
 * @param question - Bank, power to last with, largest running and starting power, cut-off, cable
 * @returns Run time and codes of findings
 * @source battery-model-fit
 */
export function steadyOutlook(question: SteadyQuestion): SteadyOutlook {
  const run = runtimeOutlook(bankModel(question.bank), question)
  const cares = new Set<FindingCode>()
  addSteadyCares(batteryStress(question).faults, run.warnings, cares)
  return { hours: run.hours, cares }
}
