import { requireInRange } from '../errors.ts'
import { TYPICAL_CUT_OFF_FRACTION, TYPICAL_INVERTER_LOSS } from '../tables/inverter-losses.ts'

/** What is known of an inverter's losses. */
export interface InverterLosses {
  /** [W] 1..100,000 */
  readonly continuousW: number
  /** Efficiency at the continuous power. 0.5..1 */
  readonly efficiencyFullFraction?: number | undefined
  /** Draw with nothing switched on. [W] 0..half of the continuous power */
  readonly idleW?: number | undefined
}

/**
 * Power that an inverter takes from its battery.
 *
 * @param inverter - Continuous power, and its efficiency at full load and idle draw where stated
 * @param inverter.outputW - Power given. [W] 0..10 times the continuous power
 * @returns Power at the inverter's input. [W] The idle draw at 0 W
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks `P_dc = P_ac + P_r (a + b y + c y^2)`, y = P_ac / P_r. A stated idle draw and a stated efficiency at
 * full load are both met exactly; what is not stated takes the medians of nine tested units.
 * @source cec-inverter-tests
 * @example inverterInputW({ outputW: 500, continuousW: 1000, idleW: 10, efficiencyFullFraction: 0.9 }) //=> 539.3
 */
export function inverterInputW(inverter: InverterLosses & { readonly outputW: number }): number {
  const { continuousW, outputW } = inverter
  requireInRange('continuousW', continuousW, 1, 100_000)
  requireInRange('outputW', outputW, 0, 10 * continuousW)
  const { a, b, c } = lossCoefficients(inverter)
  // A loss that falls with load (a unit that idles on more than it loses) is not carried on past full load.
  const load = b < 0 ? Math.min(outputW / continuousW, 1) : outputW / continuousW
  return outputW + continuousW * (a + b * load + c * load * load)
}

/**
 * Cut-off voltage taken for an inverter that states none.
 *
 * @param nominalV - Nominal voltage of its input. [V]
 * @returns Low-voltage cut-off, 10.5 V of 12 V. [V]
 * @source common-practice
 */
export function typicalCutOffV(nominalV: number): number {
  return nominalV * TYPICAL_CUT_OFF_FRACTION
}

interface Loss {
  readonly a: number
  readonly b: number
  readonly c: number
}

function lossCoefficients(inverter: InverterLosses): Loss {
  const { continuousW, efficiencyFullFraction, idleW } = inverter
  if (efficiencyFullFraction !== undefined) {
    requireInRange('efficiencyFullFraction', efficiencyFullFraction, 0.5, 1)
  }
  if (idleW !== undefined) requireInRange('idleW', idleW, 0, continuousW / 2)
  const { a, b, c } = TYPICAL_INVERTER_LOSS
  const idle = idleW === undefined ? undefined : idleW / continuousW
  if (efficiencyFullFraction === undefined) return { a: idle ?? a, b, c }
  const full = 1 / efficiencyFullFraction - 1
  if (idle === undefined) {
    const scale = full / (a + b + c)
    return { a: a * scale, b: b * scale, c: c * scale }
  }
  // A unit that idles on more than it loses at full load: the loss falls on a straight line between the two.
  if (full <= idle) return { a: idle, b: full - idle, c: 0 }
  const scale = (full - idle) / (b + c)
  return { a: idle, b: b * scale, c: c * scale }
}
