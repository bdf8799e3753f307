import { type Finding, finding } from '../advice/findings.ts'
import { typicalCutOffV } from '../battery/inverter-input.ts'
import type { Inverter } from '../range/range-document.ts'

/** The figures that a range may leave out, filled in. */
export interface InverterFigures {
  /** [VA] */
  readonly continuousVA: number
  readonly efficiencyFullFraction: number
  /** [W] */
  readonly idleW: number
  /** [V] */
  readonly cutOffV: number
  /** What was filled in, as findings of severity `note`. */
  readonly assumed: readonly Finding[]
}

/**
 * What is taken for a figure that a shop leaves out; each on the safe side.
 *
 * Efficiency 0.85: the figure of the published worked example for battery inverters (46 CFR / NEC style
 * cable sizing, 2500 W, 24 V, 85 %). Idle draw 2 % of continuous power: common practice, no published source.
 */
export const ASSUMED_FIGURES = {
  efficiencyFullFraction: 0.85,
  idleFraction: 0.02,
} as const

/**
 * An inverter's figures with the gaps filled, and which those were.
 *
 * @param unit - An inverter of a range
 * @returns All figures, each within physics
 * @source common-practice
 */
export function assumedFigures(unit: Inverter): InverterFigures {
  const assumed: Finding[] = []
  const orAssume = (
    figure: 'continuousVA' | 'efficiencyFullFraction' | 'idleW' | 'cutOffV',
    stated: number | undefined,
    value: number,
  ) => {
    if (stated !== undefined) return stated
    assumed.push(finding('figure-assumed', 'note', { figure, value }))
    return value
  }
  return {
    continuousVA: orAssume('continuousVA', unit.continuousVA, unit.continuousW),
    efficiencyFullFraction: orAssume(
      'efficiencyFullFraction',
      unit.efficiencyFullFraction,
      ASSUMED_FIGURES.efficiencyFullFraction,
    ),
    idleW: orAssume('idleW', unit.idleW, ASSUMED_FIGURES.idleFraction * unit.continuousW),
    cutOffV: orAssume('cutOffV', unit.cutOffV, typicalCutOffV(unit.inputNominalV)),
    assumed,
  }
}
