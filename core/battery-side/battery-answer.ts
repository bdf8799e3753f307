import { type Finding, finding } from '../advice/findings.ts'
import { type BatteryBank, bankModel } from '../battery/bank.ts'
import type { DayPlan } from '../battery/day-plan.ts'
import { type Recharge, rechargeFor } from '../battery/recharge.ts'
import { predictRuntime, type RuntimePrediction, runtimeOutlook } from '../battery/runtime.ts'
import { batteryStress } from '../battery/stress.ts'
import { isTooLong } from '../battery/use-verdict.ts'
import { dcPower } from './fed-inverter.ts'
import { dayFindings, rechargeFinding, runtimeFinding, stressFinding, useFindings } from './findings.ts'
import { dayOf, drawnHours, drawnW, heaviestLoad, hoursSwitchedOn } from './plan-day.ts'
import type { BatteryQuestion, SteadyQuestion } from './question.ts'

/** How long a battery carries a steady power, and whether it bears it. */
export interface SteadyAnswer {
  readonly runtime: RuntimePrediction
  /** Severity `fail` here is about the battery: a larger unit would not help. */
  readonly findings: readonly Finding[]
}

/** The same for a plan, with its day and how the battery is filled again. */
export interface BatteryAnswer extends SteadyAnswer {
  readonly day: DayPlan
  readonly recharge: Recharge
}

/** Hours of full sun and charger that a recharge is told for: a fair summer day, a small alternator charger. */
export const RECHARGE_WITH = { sunHours: 4, chargerA: 30 } as const

/**
 * How long the buyer's battery lasts with a plan and a unit, and whether it bears it.
 *
 * Running time is told for everything that may run together at its typical power; the day runs each load
 * its minutes, heavy ones first, with the unit switched on as long as any load is.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @returns Run time, day, recharge and findings
 * @source battery-model-fit
 */
export function batteryAnswer(question: BatteryQuestion, bank: BatteryBank): BatteryAnswer {
  const { demand, inverter, cableResistanceOhm } = question
  const steady = steadyAnswer({
    bank,
    dcPowerW: dcPower(inverter, demand.typicalRunningW),
    dcPowerRunningW: dcPower(inverter, demand.runningW),
    dcPowerStartingW: dcPower(inverter, demand.startingW),
    cutOffV: inverter.cutOffV,
    cableResistanceOhm,
  })
  const hoursOn = hoursSwitchedOn(demand)
  const day = dayOf(question, bank)
  const recharge = rechargeFor({ bank, energyWh: day.energyWh, ...RECHARGE_WITH })
  return {
    runtime: steady.runtime,
    day,
    recharge,
    findings: [
      ...steady.findings,
      ...recharge.warnings.flatMap(rechargeFinding),
      ...dayFindings(question, bank, day),
      ...useFindings(question, bank),
      finding('inverter-off-between', 'note', { hoursOn }),
    ],
  }
}

/**
 * How long a battery carries a steady power at the inverter's input, and whether it bears it.
 *
 * @param question - Bank, power to last with, largest running and starting power, cut-off, cable
 * @returns Run time and findings
 * @source battery-model-fit
 */
export function steadyAnswer(question: SteadyQuestion): SteadyAnswer {
  const runtime = predictRuntime(question)
  const stress = batteryStress(question)
  return {
    runtime,
    findings: [
      ...stress.faults.map(stressFinding),
      ...runtime.warnings.flatMap(runtimeFinding),
      ...runtime.assumed
        .filter(({ field }) => field !== 'cellsInSeries')
        .map(({ field, value }) => finding('battery-figure-assumed', 'note', { field, value })),
    ],
  }
}

/**
 * Whether an answer holds nothing against the battery: it bears the plan and lasts it.
 *
 * @param answer - Run time, day and findings
 * @returns True where nothing fails, the day is carried and the heaviest load lasts its minutes
 */
export function carriesPlan({ findings }: BatteryAnswer): boolean {
  return !findings.some(
    ({ severity, code }) => severity === 'fail' || code === 'day-not-carried' || code === 'runs-too-long',
  )
}

/**
 * As {@link carriesPlan} of {@link batteryAnswer}, for less.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @returns True where currents and voltages hold, the day is carried and the heaviest load lasts its minutes
 * @source battery-model-fit
 */
export function bankCarries(question: BatteryQuestion, bank: BatteryBank): boolean {
  const { demand, inverter, cableResistanceOhm } = question
  const wire = { cutOffV: inverter.cutOffV, cableResistanceOhm }
  const stress = batteryStress({
    bank,
    dcPowerRunningW: dcPower(inverter, demand.runningW),
    dcPowerStartingW: dcPower(inverter, demand.startingW),
    ...wire,
  })
  if (stress.faults.some(({ code }) => code !== 'sag')) return false
  const heaviest = heaviestLoad(demand)
  if (heaviest !== undefined) {
    const dcPowerW = dcPower(inverter, drawnW(heaviest))
    const { hours } = runtimeOutlook(bankModel(bank), { dcPowerW, ...wire })
    if (hours === 0 || isTooLong(hours, drawnHours(heaviest))) return false
  }
  return dayOf(question, bank).ok
}
