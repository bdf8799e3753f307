import type { BankModel } from './bank.ts'
import { constantPowerCurrentA, kneeEndSoc, loadCurrentA, socAtCurrent } from './operating-point.ts'
import { capacityAtCurrentAh } from './rate-capacity.ts'
import { lowestThatHolds } from './table-lookup.ts'
import { hoursAtTemperature } from './temperature.ts'

/** What ends a run. */
export type RunLimit = 'state-of-charge' | 'cut-off-voltage' | 'discharge-limit'

/** A steady load on a bank. */
export interface SteadyLoad {
  /** At the inverter's input. [W] above 0 */
  readonly powerW: number
  /** Lowest voltage at the inverter's input. [V] */
  readonly cutOffV: number
  /** Both ways. [ohm] */
  readonly cableOhm: number
}

/** Slack for voltages that meet a bound exactly, as 1.75 V per cell at empty does. [V] */
const VOLTAGE_SLACK_V = 1e-9

/**
 * What stops a load at a state of charge.
 *
 * @param model - The bank
 * @param socFraction - State of charge. 0..1
 * @param load - The load
 * @returns The limit that it breaks; undefined when the load runs
 */
export function breaks(model: BankModel, socFraction: number, load: SteadyLoad): RunLimit | undefined {
  const currentA = loadCurrentA(model, socFraction, load.powerW, load.cableOhm)
  if (!Number.isFinite(currentA)) return 'cut-off-voltage'
  if (currentA > model.limitA) return 'discharge-limit'
  const inverterV = load.powerW / currentA
  if (inverterV < load.cutOffV - VOLTAGE_SLACK_V) return 'cut-off-voltage'
  const terminalV = inverterV + currentA * load.cableOhm
  return terminalV < model.lowestV - VOLTAGE_SLACK_V ? 'cut-off-voltage' : undefined
}

/** Where a run ends and why. */
export interface RunEnd {
  readonly socFraction: number
  readonly limitedBy: RunLimit
}

/** Room for the last bits on the way from a current back to its charge. */
const END_PRECISION = 1e-13

/**
 * State of charge at which a steady load ends.
 *
 * @param model - The bank
 * @param load - The load
 * @param fromSoc - State of charge at which it starts. 0..1, default the bank's
 * @returns The lowest state of charge at which the load still runs, from the start down to the lowest allowed,
 * and what ends it there; the start itself when it does not run at all
 * @remarks Voltage falls and current rises as the battery empties, so the run ends at the charge
 * at which the current meets the first bound.
 */
export function runEnd(model: BankModel, load: SteadyLoad, fromSoc = model.startSocFraction): RunEnd {
  const lowest = Math.min(model.minSocFraction, fromSoc)
  const atLowest = breaks(model, lowest, load)
  if (atLowest === undefined) return { socFraction: lowest, limitedBy: 'state-of-charge' }
  const atStart = breaks(model, fromSoc, load)
  if (atStart !== undefined) return { socFraction: fromSoc, limitedBy: atStart }
  const runs = (soc: number) => breaks(model, soc, load) === undefined
  const mostA = mostCurrentA(model, load)
  const reached = socAtCurrent(model, mostA, load) + END_PRECISION
  const justReached = Math.max(lowest, reached - JUST_BELOW)
  const isEnd = reached > lowest && reached <= fromSoc && runs(reached) && !runs(justReached)
  // No current has a place of its own where the voltage collapses before a bound is met.
  const socFraction = isEnd ? reached : lowestThatHolds(lowest, fromSoc, runs)
  const justBelow = Math.max(lowest, socFraction - JUST_BELOW)
  return { socFraction, limitedBy: breaks(model, justBelow, load) ?? atLowest }
}

/** What ends a run is asked so far below its end. */
const JUST_BELOW = 1e-9

/** The current at which a load meets the first of its bounds: limit, cut-off or the board's lowest voltage. */
function mostCurrentA({ limitA, lowestV }: BankModel, { powerW, cutOffV, cableOhm }: SteadyLoad): number {
  return Math.min(limitA, powerW / cutOffV, constantPowerCurrentA(lowestV, cableOhm, powerW))
}

/** What a discharge comes to, before the temperature's effect on lead-acid time. */
export interface Discharge {
  readonly hours: number
  /** Time-weighted mean current. [A] */
  readonly averageA: number
}

/** Nodes and weights of Gauss's rule of five points on 0..1. */
const GAUSS_NODES = [0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842, 0.953089922969332] as const
const GAUSS_WEIGHTS = [
  0.118463442528095, 0.239314335249683, 0.284444444444444, 0.239314335249683, 0.118463442528095,
] as const

/** Where the knee of a lead-acid discharge is cut into stretches that the rule takes to ten digits. */
const KNEE_CUTS = [0.12, 0.3, 0.55] as const

/**
 * The discharge of a bank by a steady load.
 *
 * @param model - The bank
 * @param load - A load that runs at `endSoc`
 * @param endSoc - State of charge at the end. 0..start
 * @returns Time and mean current from the start down to there
 * @remarks `dt = -dz Q(I) / I` has no time on its right side, so it is an integral over z: Gauss's rule on
 * stretches without a bend. The open-circuit table of a lithium cell bends at its points, a lead-acid discharge
 * where its current is so large that the knee is gone.
 * @source battery-model-fit
 */
export function discharge(model: BankModel, load: SteadyLoad, endSoc: number): Discharge {
  const kneeEnd = kneeEndSoc(model, load.powerW, load.cableOhm)
  let hours = 0
  let ampereHours = 0
  let soc = model.startSocFraction
  while (soc > endSoc) {
    const stop = Math.max(endSoc, bendBelow(model, soc, kneeEnd))
    const width = soc - stop
    for (let index = 0; index < GAUSS_NODES.length; index++) {
      const at = stop + width * (GAUSS_NODES[index] ?? 0)
      const currentA = loadCurrentA(model, at, load.powerW, load.cableOhm)
      const part = width * (GAUSS_WEIGHTS[index] ?? 0) * hoursPerSoc(model, currentA)
      hours += part
      ampereHours += part * currentA
    }
    soc = stop
  }
  return { hours, averageA: hours === 0 ? 0 : ampereHours / hours }
}

/** A point on the way of a discharge. */
export interface DischargePoint {
  /** Share of the discharge's time. 0..1 */
  readonly timeShare: number
  readonly socFraction: number
  readonly currentA: number
}

/** Least number of steps of a curve: keeps its times within 1e-6 of the discharge (tests/reference). */
const LEAST_STEPS = 40

/**
 * The way of a discharge.
 *
 * @param model - The bank
 * @param load - A load that runs at `endSoc`
 * @param endSoc - State of charge at the end. 0..start
 * @param points - Number of points. 2 or more
 * @returns Points at even steps of charge, as shares of the time that {@link discharge} gives
 * @remarks The integral as in {@link discharge}, between neighbouring points of a cubic through four.
 * @source battery-model-fit
 */
export function dischargeCurve(
  model: BankModel,
  load: SteadyLoad,
  endSoc: number,
  points: number,
): readonly DischargePoint[] {
  // The ends alone need no way between them.
  const parts = points === 2 ? 1 : Math.ceil(LEAST_STEPS / (points - 1))
  const steps = parts * (points - 1)
  const width = (model.startSocFraction - endSoc) / steps
  const socAt = (step: number) => (step === steps ? endSoc : model.startSocFraction - step * width)
  const currentsA: number[] = []
  const slopes: number[] = []
  for (let step = 0; step <= steps; step++) {
    const currentA = loadCurrentA(model, socAt(step), load.powerW, load.cableOhm)
    currentsA.push(currentA)
    slopes.push(hoursPerSoc(model, currentA))
  }
  const slope = (step: number) => slopes[step] ?? 0
  const times = [0]
  let time = 0
  for (let step = 1; step <= steps; step++) {
    if (step === 1) time += 9 * slope(0) + 19 * slope(1) - 5 * slope(2) + slope(3)
    else if (step === steps)
      time += 9 * slope(steps) + 19 * slope(steps - 1) - 5 * slope(steps - 2) + slope(steps - 3)
    else time += 13 * (slope(step - 1) + slope(step)) - slope(step - 2) - slope(step + 1)
    times.push(time)
  }
  const curve: DischargePoint[] = []
  for (let step = 0; step <= steps; step += parts) {
    const timeShare = step === steps ? 1 : (times[step] ?? 0) / time
    curve.push({ timeShare, socFraction: socAt(step), currentA: currentsA[step] ?? 0 })
  }
  return curve
}

/**
 * Run time of a discharge with the temperature's effect: lead-acid capacity depends on the time it lasts.
 *
 * @param model - The bank
 * @param hoursAt25 - Time found by {@link discharge}. [h] 0 or more
 * @returns Time at the bank's temperature. [h]
 * @source king-knight-2003
 */
export function hoursAtBankTemperature(model: BankModel, hoursAt25: number): number {
  if (model.timeShares === undefined || hoursAt25 === 0) return hoursAt25
  return hoursAtTemperature(model.timeShares, hoursAt25)
}

function hoursPerSoc(model: BankModel, currentA: number): number {
  return (model.capacityShare * capacityAtCurrentAh(model.rate, currentA)) / currentA
}

function bendBelow(model: BankModel, soc: number, kneeEnd: number): number {
  if (model.figures.kind.family === 'lead-acid') {
    let below = kneeEnd < soc ? kneeEnd : 0
    for (const cut of KNEE_CUTS) if (cut < soc && cut > below) below = cut
    return below
  }
  const { openCircuitCellV } = model.figures
  for (let index = openCircuitCellV.length - 1; index >= 0; index--) {
    const bend = openCircuitCellV[index]?.[0] ?? 0
    if (bend < soc) return bend
  }
  return 0
}
