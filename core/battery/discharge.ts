import type { BankModel } from './bank.ts'
import { loadCurrentA } from './operating-point.ts'
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

/**
 * State of charge at which a steady load ends.
 *
 * @param model - The bank
 * @param load - The load
 * @returns The lowest state of charge at which the load still runs, from the start down to the lowest allowed,
 * and what ends it there; the start itself when it does not run at all
 * @remarks Voltage falls and current rises as the battery empties, so one search finds the bound.
 */
export function runEnd(model: BankModel, load: SteadyLoad): RunEnd {
  const { minSocFraction, startSocFraction } = model
  const lowest = Math.min(minSocFraction, startSocFraction)
  const atLowest = breaks(model, lowest, load)
  if (atLowest === undefined) return { socFraction: lowest, limitedBy: 'state-of-charge' }
  const atStart = breaks(model, startSocFraction, load)
  if (atStart !== undefined) return { socFraction: startSocFraction, limitedBy: atStart }
  const runs = (socFraction: number) => breaks(model, socFraction, load) === undefined
  const socFraction = lowestThatHolds(lowest, startSocFraction, runs)
  const justBelow = Math.max(lowest, socFraction - 1e-9)
  return { socFraction, limitedBy: breaks(model, justBelow, load) ?? atLowest }
}

/** A point of a discharge, before the temperature's effect on lead-acid time. */
export interface DischargePoint {
  readonly hours: number
  readonly socFraction: number
  readonly currentA: number
}

/** Least number of steps over a discharge: keeps the integral within 1e-6 (tests/reference). */
const LEAST_STEPS = 40

/**
 * The discharge of a bank by a steady load.
 *
 * @param model - The bank
 * @param load - A load that runs at `endSoc`
 * @param endSoc - State of charge at the end. 0..start
 * @param points - Number of points. 2 or more
 * @returns Points at even steps of charge, time from 0
 * @remarks `dt = -dz Q(I) / I` has no time on its right side, so it is an integral over z: Simpson's rule
 * between points, split where the open-circuit table of a lithium cell bends.
 * @source battery-model-fit
 */
export function discharge(
  model: BankModel,
  load: SteadyLoad,
  endSoc: number,
  points: number,
): readonly DischargePoint[] {
  const { startSocFraction: startSoc } = model
  const steps = points - 1
  const width = (startSoc - endSoc) / steps
  const parts = Math.max(1, Math.ceil(LEAST_STEPS / steps))
  let currentA = loadCurrentA(model, startSoc, load.powerW, load.cableOhm)
  let slope = hoursPerSoc(model, currentA)
  let hours = 0
  let soc = startSoc
  const curve: DischargePoint[] = [{ hours, socFraction: soc, currentA }]
  for (let step = 1; step <= steps; step++) {
    const target = step === steps ? endSoc : startSoc - step * width
    for (let part = parts; part >= 1; part--) {
      const next = part === 1 ? target : soc - (soc - target) / part
      while (soc > next) {
        const stop = Math.max(next, bendBelow(model, soc))
        const middleA = loadCurrentA(model, (soc + stop) / 2, load.powerW, load.cableOhm)
        currentA = loadCurrentA(model, stop, load.powerW, load.cableOhm)
        const middleSlope = hoursPerSoc(model, middleA)
        const stopSlope = hoursPerSoc(model, currentA)
        hours += ((soc - stop) * (slope + 4 * middleSlope + stopSlope)) / 6
        slope = stopSlope
        soc = stop
      }
    }
    curve.push({ hours, socFraction: soc, currentA })
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

function bendBelow(model: BankModel, soc: number): number {
  if (model.figures.kind.family !== 'lithium') return 0
  const { openCircuitCellV } = model.figures
  for (let index = openCircuitCellV.length - 1; index >= 0; index--) {
    const bend = openCircuitCellV[index]?.[0] ?? 0
    if (bend < soc) return bend
  }
  return 0
}
