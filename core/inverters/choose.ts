import type { Finding } from '../advice/findings.ts'
import type { PreparedInverter } from '../range/prepare-range.ts'
import { checkInverter, fits } from './checks.ts'
import type { Need } from './need.ts'

/** One inverter of the range with what was found about it. */
export interface Verdict {
  readonly inverter: PreparedInverter
  readonly fits: boolean
  readonly findings: readonly Finding[]
}

/** The whole range judged, in the order of choice. */
export interface Choice {
  readonly verdicts: readonly Verdict[]
  /** Index in `verdicts` of the smallest that fits, or of the one asked for; -1 where none fits. */
  readonly chosen: number
}

/**
 * Judges one inverter.
 *
 * @param inverter - The inverter
 * @param need - What is asked of it
 * @returns Its findings and whether it fits
 */
export function judge(inverter: PreparedInverter, need: Need): Verdict {
  const findings = checkInverter(inverter, need)
  return { inverter, fits: fits(findings), findings }
}

/**
 * Chooses the smallest inverter that fits: the first without a failing finding in the order of choice
 * (continuous power, price, idle draw, SKU), so neither the order of the range nor that of the loads counts.
 *
 * @param inverters - A prepared range's inverters, in the order of choice
 * @param need - What is asked
 * @returns Every unit's verdict and which is chosen
 */
export function chooseInverter(inverters: readonly PreparedInverter[], need: Need): Choice {
  const verdicts = inverters.map((inverter) => judge(inverter, need))
  return { verdicts, chosen: verdicts.findIndex((verdict) => verdict.fits) }
}
