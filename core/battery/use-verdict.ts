import { requireInRange } from '../errors.ts'
import { capacityForRunAh } from './bank-size.ts'
import { predictRuntime, type RuntimeQuestion } from './runtime.ts'

/**
 * How a load's wanted time goes with a bank. `occasional`: it runs for that long and the bank has most of its
 * charge left, though it could not run it for hours; `all-day`: the bank surely runs it that long and for hours;
 * `too-long`: it can't run it that long; `too-heavy`: it can't run it at all.
 */
export type UseVerdict = 'occasional' | 'all-day' | 'too-long' | 'too-heavy'

/** Verdict on one load. */
export interface UseAnswer {
  readonly verdict: UseVerdict
  readonly wantedHours: number
  /** Running without a break, as predicted. */
  readonly continuousHours: number
  /** Least capacity of the same kind of bank that does it; undefined when this one does or none up to 10,000 Ah. */
  readonly neededCapacityAh: number | undefined
}

/** A load that the bank carries for at least this long is no occasional one. [h] Our own bound. */
const ALL_DAY_HOURS = 4

/**
 * Whether a bank is right for the time that a load is wanted for: a heavy load for a few minutes on a small
 * bank is fine, the same load for hours is not.
 *
 * @param question - Bank, power at the inverter's input, cut-off, cable
 * @param wantedHours - Time that the load draws its power in a day. [h] 0..24
 * @returns The verdict, and the bank that it takes where this one does not do
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source battery-model-fit
 */
export function judgeUse(question: RuntimeQuestion, wantedHours: number): UseAnswer {
  requireInRange('wantedHours', wantedHours, 0, 24)
  const run = predictRuntime({ ...question, curvePoints: 2 })
  const verdict = verdictOf(run.hours, run.hoursLow, wantedHours)
  const fails = verdict === 'too-long' || verdict === 'too-heavy'
  return {
    verdict,
    wantedHours,
    continuousHours: run.hours,
    neededCapacityAh: fails ? capacityForRunAh(question, Math.max(wantedHours, 0.01)) : undefined,
  }
}

/**
 * Whether a load is wanted for longer than a run lasts: as the verdict `too-long`.
 *
 * @param hours - Length of the run. [h] 0 or more
 * @param wantedHours - Time that the load draws its power in a day. [h] 0..24
 * @returns False where it does not run at all
 */
export function isTooLong(hours: number, wantedHours: number): boolean {
  return hours > 0 && wantedHours > hours
}

function verdictOf(hours: number, hoursLow: number, wantedHours: number): UseVerdict {
  if (hours === 0) return 'too-heavy'
  if (isTooLong(hours, wantedHours)) return 'too-long'
  return hoursLow >= ALL_DAY_HOURS ? 'all-day' : 'occasional'
}
