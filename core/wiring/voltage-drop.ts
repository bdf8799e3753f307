import { requireInRange } from '../errors.ts'
import { type Conductor, conductorResistanceOhmPerM } from './conductor.ts'

/** A run of two conductors, out and back, each laid `parallelPairs` times. */
export interface CableRun {
  /** Resistance is worked out for this conductor. */
  readonly conductor: Conductor
  /** Current of the whole circuit. [A] 0..100000 */
  readonly currentA: number
  /** One-way length; the way back is added here. [m] 0..1000 */
  readonly lengthM: number
  /** Temperature of the copper under load, not of the air. [degC] -60..250 */
  readonly conductorTempC: number
  /** Pairs of conductors in parallel. 1..10 */
  readonly parallelPairs: number
}

/**
 * Voltage lost in a battery cable, out and back.
 *
 * @param run - The cable and its current
 * @returns Drop between battery and load. [V] 0 or more
 * @throws CoreError `out_of_range`
 * @remarks I x 2 L x R(T) / pairs. Leaves out lugs, fuse, switch and connector.
 * @source iec60228, astm-b258, faa-ac43-13
 */
export function voltageDropV(run: CableRun): number {
  requireInRange('parallelPairs', run.parallelPairs, 1, 10)
  return resistiveDropV({
    currentA: run.currentA,
    loopLengthM: 2 * run.lengthM,
    resistanceOhmPerM: conductorResistanceOhmPerM(run.conductor, run.conductorTempC) / run.parallelPairs,
  })
}

/**
 * Voltage lost along a conductor.
 *
 * @param path.currentA - Current. [A] 0..100000
 * @param path.loopLengthM - Length of conductor that the current passes, the way back included. [m] 0 or more
 * @param path.resistanceOhmPerM - Resistance per metre of that conductor. [ohm/m] 0 or more
 * @returns Drop. [V] 0 or more
 * @throws CoreError `out_of_range`
 */
export function resistiveDropV(path: {
  readonly currentA: number
  readonly loopLengthM: number
  readonly resistanceOhmPerM: number
}): number {
  requireInRange('currentA', path.currentA, 0, 100_000)
  requireInRange('loopLengthM', path.loopLengthM, 0, 1_000_000)
  requireInRange('resistanceOhmPerM', path.resistanceOhmPerM, 0, 1000)
  return path.currentA * path.loopLengthM * path.resistanceOhmPerM
}

/**
 * Temperature that the copper of a loaded conductor settles at.
 *
 * @param load.currentA - Current in the conductor. [A] 0 or more
 * @param load.ampacityA - Current that it may carry. [A] 0 or more
 * @param load.insulationC - Temperature that it has at that current. [degC]
 * @param load.ambientC - Temperature of the air. [degC]
 * @returns Temperature, never above that of the insulation's rating or below the air's. [degC]
 * @remarks Heat grows with the square of the current: ambient + (insulation - ambient) x (I / ampacity)^2.
 * @source bs7671-appendix-4
 * @example conductorTemperatureC({ currentA: 100, ampacityA: 200, insulationC: 90, ambientC: 30 }) //=> 45
 */
export function conductorTemperatureC(load: {
  readonly currentA: number
  readonly ampacityA: number
  readonly insulationC: number
  readonly ambientC: number
}): number {
  const share = load.currentA < load.ampacityA ? load.currentA / load.ampacityA : 1
  return load.ambientC + Math.max(0, load.insulationC - load.ambientC) * share ** 2
}
