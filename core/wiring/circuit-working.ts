import { FUSE_OVER_CURRENT_FACTOR } from '../tables/fuses.ts'
import type { WorkingStep } from '../working.ts'
import type { LoadedPairs } from './choose-conductor.ts'
import type { CircuitConductor, CircuitInput, ConnectionFigures } from './circuit-types.ts'
import type { FuseWindow } from './fuse.ts'

/**
 * Steps from the inverter's power to its worst-case battery current.
 *
 * @param input - The circuit asked for
 * @param lowestV - Lowest working voltage. [V]
 * @param worstCaseA - Current at full power and that voltage. [A]
 * @returns The steps, in order
 */
export function currentSteps(input: CircuitInput, lowestV: number, worstCaseA: number): WorkingStep[] {
  const { continuousW, efficiencyFullFraction, nominalV, cutOffV } = input
  return [
    cutOffV === undefined
      ? { step: 'lowest-working-voltage', values: { nominalV, lowestV }, source: 'lead-acid-end-voltage' }
      : { step: 'lowest-working-voltage', values: { nominalV, cutOffV, lowestV }, source: 'shop-stated' },
    {
      step: 'worst-case-current',
      values: { continuousW, efficiencyFullFraction, lowestV, currentA: worstCaseA },
    },
  ]
}

/**
 * Step of the fuse.
 *
 * @param window - The fuse chosen, or why there is none
 * @param currentA - Current that it was asked for. [A]
 * @returns The step
 */
export function fuseStep(window: FuseWindow, currentA: number): WorkingStep {
  const { minA, maxA, requiredVoltageV, requiredBreakingCapacityA } = window
  const asked = { currentA, factor: FUSE_OVER_CURRENT_FACTOR, minA, maxA }
  const required = { requiredVoltageV, requiredBreakingCapacityA }
  const values = window.ok
    ? { ...asked, ...required, ratingA: window.ratingA, style: window.style }
    : { ...asked, ...required, reason: window.reason }
  return { step: 'fuse-window', values, source: 'nec-125-percent' }
}

/**
 * Steps of the conductor: what it may carry and what it loses.
 *
 * @param loaded - The conductor at the circuit's current
 * @param conductor - Its figures
 * @param circuit - Current [A], one-way length [m] and the limit of the drop
 * @returns The steps, in order
 */
export function conductorSteps(
  loaded: LoadedPairs,
  conductor: CircuitConductor,
  circuit: { readonly currentA: number; readonly lengthM: number; readonly dropLimitFraction: number },
): WorkingStep[] {
  const { each, parallelPairs, ampacityA } = loaded
  const { label, conductorTempC, resistanceOhm, dropV, dropFraction } = conductor
  const { tableA, columnC, ambientC, ambientFactor, bundlingFactor, source } = each
  return [
    {
      step: 'ampacity',
      values: {
        label,
        tableA,
        insulationC: columnC,
        ambientC,
        ambientFactor,
        bundlingFactor,
        parallelPairs,
        ampacityA,
      },
      source,
    },
    {
      step: 'voltage-drop',
      values: { ...circuit, conductorTempC, resistanceOhm, dropV, dropFraction },
      source: 'abyc-e11-drop',
    },
  ]
}

/**
 * Step of what the connection lets through.
 *
 * @param connection - The connection with its limit
 * @param lowestV - Lowest working voltage. [V]
 * @param efficiencyFullFraction - Efficiency at full load. 0.1..1
 * @returns One step; none where the connection does not limit
 */
export function connectionSteps(
  { kind, limitA, limitW }: ConnectionFigures,
  lowestV: number,
  efficiencyFullFraction: number,
): WorkingStep[] {
  if (limitA === undefined || limitW === undefined) return []
  return [{ step: 'connection-limit', values: { kind, limitA, lowestV, efficiencyFullFraction, limitW } }]
}
