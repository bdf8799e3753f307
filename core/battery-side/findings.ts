import { type Finding, type FindingCode, finding } from '../advice/findings.ts'
import type { BatteryBank } from '../battery/bank.ts'
import type { DayPlan } from '../battery/day-plan.ts'
import type { RechargeWarning } from '../battery/recharge.ts'
import type { RuntimeWarning } from '../battery/runtime-warnings.ts'
import type { StressFault } from '../battery/stress.ts'
import { judgeUse } from '../battery/use-verdict.ts'
import { dcPower } from './fed-inverter.ts'
import { neededBank } from './needed-bank.ts'
import { drawnHours, drawnW, heaviestLoad } from './plan-day.ts'
import type { BatteryQuestion } from './question.ts'

/** A bank that gave this much of a day's energy shows how much more of it the day takes. */
const TELLING_SHARE = 0.25

/**
 * A day that a battery does not carry, and the capacity that it takes.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @param day - The day run down on it
 * @returns At most one finding
 */
export function dayFindings(question: BatteryQuestion, bank: BatteryBank, day: DayPlan): readonly Finding[] {
  if (day.ok) return []
  const { size } = neededBank(question)
  // What the energy alone calls for can be less than a tired or cold bank that just failed: never name less. A
  // bank that gives out at the start tells nothing of its size by the energy that it gave.
  const byThisBankAh = (bank.capacityAh * day.wantedWh) / day.energyWh
  const tells = day.energyWh >= TELLING_SHARE * day.wantedWh
  const neededCapacityAh = tells ? Math.max(size.capacityAh, byThisBankAh) : size.capacityAh
  return [
    finding('day-not-carried', 'care', {
      neededCapacityAh,
      capacityAh: bank.capacityAh,
      atH: day.stopped?.atH ?? 0,
    }),
  ]
}

/**
 * A verdict on the heaviest load: fine for its minutes, or too long for this battery.
 *
 * @param question - Demand, supply, unit and cable
 * @param bank - The battery
 * @returns At most one finding
 */
export function useFindings(question: BatteryQuestion, bank: BatteryBank): readonly Finding[] {
  const { demand, inverter, cableResistanceOhm } = question
  const heaviest = heaviestLoad(demand)
  if (heaviest === undefined) return []
  const hours = drawnHours(heaviest)
  const minutes = hours * 60
  const dcPowerW = dcPower(inverter, drawnW(heaviest))
  const use = judgeUse({ bank, dcPowerW, cutOffV: inverter.cutOffV, cableResistanceOhm }, hours)
  const continuousMinutes = use.continuousHours * 60
  const ids = [heaviest.id]
  if (use.verdict === 'occasional') {
    return [finding('occasional-use', 'note', { minutes, continuousMinutes }, ids)]
  }
  if (use.verdict !== 'too-long') return []
  const { neededCapacityAh } = use
  const values =
    neededCapacityAh === undefined
      ? { minutes, continuousMinutes }
      : { minutes, continuousMinutes, neededCapacityAh }
  return [finding('runs-too-long', 'care', values, ids)]
}

/**
 * What loads ask too much of. Severity `fail` is about the battery: a larger unit would not help.
 *
 * @param fault - From the stress on the battery
 * @returns The finding
 */
export function stressFinding(fault: StressFault): Finding {
  switch (fault.code) {
    case 'discharge-limit-running':
    case 'discharge-limit-starting':
      return finding(fault.code, 'fail', fault.values)
    case 'cut-off-while-running':
    case 'cut-off-while-starting':
      return finding(fault.code, 'fail', fault.values)
    case 'sag':
      return finding('voltage-sag', 'care', fault.values)
  }
}

/**
 * A warning that goes with a run time; those that a stress finding tells already are left to it.
 *
 * @param warning - The warning
 * @returns At most one finding
 */
export function runtimeFinding(warning: RuntimeWarning): readonly Finding[] {
  switch (warning) {
    case 'voltage-collapse':
    case 'cut-off-at-once':
    case 'discharge-limit-exceeded':
      return []
    case 'nothing-usable':
      return [finding(warning, 'fail', {})]
    case 'under-20-minutes':
    case 'heavier-than-advised':
    case 'cold-lithium-charge':
      return [finding(warning, 'care', {})]
    default:
      return [finding(warning, 'note', {})]
  }
}

/**
 * Codes of the findings of severity `fail` or `care` that stress and run time lead to.
 *
 * @param faults - From the stress on the battery
 * @param warnings - From the run time
 * @param cares - Receives the codes of {@link stressFinding} and {@link runtimeFinding}, without their values
 */
export function addSteadyCares(
  faults: readonly StressFault[],
  warnings: readonly RuntimeWarning[],
  cares: Set<FindingCode>,
): void {
  for (const { code } of faults) cares.add(code === 'sag' ? 'voltage-sag' : code)
  for (const warning of warnings) {
    switch (warning) {
      case 'nothing-usable':
      case 'under-20-minutes':
      case 'heavier-than-advised':
      case 'cold-lithium-charge':
        cares.add(warning)
    }
  }
}

/**
 * Of the recharge's warnings, those that the run time's do not tell.
 *
 * @param warning - The warning
 * @returns At most one finding
 */
export function rechargeFinding(warning: RechargeWarning): readonly Finding[] {
  return warning === 'charge-temperature-outside-range' ? [finding(warning, 'note', {})] : []
}
