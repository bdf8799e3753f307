import { LEAD_ACID_CELL, type LeadAcidFigures } from '../tables/chemistries.ts'
import type { BankModel } from './bank.ts'
import { interpolate, whereReached } from './table-lookup.ts'

/**
 * Current at which a source gives a power through its resistance.
 *
 * @param emfV - Voltage at no current. [V] above 0
 * @param resistanceOhm - Resistance of source and cable. [ohm] 0 or more
 * @param powerW - Power at the far end. [W] 0 or more
 * @returns The smaller root of `P = I (E - I R)`, written so that it holds at R = 0. [A] Infinite when no
 * current gives that power: the voltage collapses.
 * @source elementary-circuits
 */
export function constantPowerCurrentA(emfV: number, resistanceOhm: number, powerW: number): number {
  const discriminant = emfV * emfV - 4 * resistanceOhm * powerW
  if (discriminant < 0) return Number.POSITIVE_INFINITY
  return (2 * powerW) / (emfV + Math.sqrt(discriminant))
}

/**
 * Current that a bank gives for a power at the inverter's input.
 *
 * @param model - The bank
 * @param socFraction - State of charge. 0..1
 * @param powerW - Power at the inverter's input. [W] 0 or more
 * @param cableOhm - Resistance of the battery cable, both ways. [ohm] 0 or more
 * @returns Current. [A] Infinite when the voltage collapses
 * @remarks Lead-acid: `E(z) = n (U0 + (U1 - U0) z - eta) - K exp(-z / 0.06)`, with K such that the battery
 * comes to 1.75 V per cell at z = 0. K falls by I R; put into the voltage it leaves a straight line of I, so
 * that the quadratic needs no iteration: one line while K is above 0, another beyond.
 * @source battery-model-fit
 */
export function loadCurrentA(
  model: BankModel,
  socFraction: number,
  powerW: number,
  cableOhm: number,
): number {
  const { kind } = model.figures
  const { resistanceOhm, cells } = model
  if (kind.family === 'lithium') {
    const emfV = cells * interpolate(model.figures.openCircuitCellV, socFraction)
    return constantPowerCurrentA(emfV, resistanceOhm + cableOhm, powerW)
  }
  const { lineV, kneeV, knee } = leadAcidLine(model, kind, socFraction)
  const kneeA = constantPowerCurrentA(lineV - kneeV * knee, resistanceOhm * (1 - knee) + cableOhm, powerW)
  if (kneeA * resistanceOhm <= kneeV) return kneeA
  const plainA = constantPowerCurrentA(lineV, resistanceOhm + cableOhm, powerW)
  return plainA * resistanceOhm >= kneeV ? plainA : Number.POSITIVE_INFINITY
}

/**
 * State of charge at which a lead-acid bank's discharge passes from the knee's line to the plain one.
 *
 * @param model - The bank
 * @param powerW - Power at the inverter's input. [W] above 0
 * @param cableOhm - Resistance of the battery cable, both ways. [ohm] 0 or more
 * @returns Where the current is just so large that the knee is gone; 0 or less where there is no such place, or
 * for lithium
 * @source battery-model-fit
 */
export function kneeEndSoc(model: BankModel, powerW: number, cableOhm: number): number {
  const { kind } = model.figures
  const { resistanceOhm, cells } = model
  if (kind.family === 'lithium' || resistanceOhm === 0) return 0
  const { lineV: emptyV, kneeV } = leadAcidLine(model, kind, 0)
  const currentA = kneeV / resistanceOhm
  const lineV = powerW / currentA + currentA * (resistanceOhm + cableOhm)
  return (lineV - emptyV) / (cells * (kind.fullCellV - kind.emptyCellV))
}

/**
 * State of charge at which a power takes a current from a bank.
 *
 * @param model - The bank
 * @param currentA - The current. [A] above 0
 * @param load - Power at the inverter's input [W] above 0 and resistance of the cable, both ways [ohm]
 * @returns State of charge, beyond 0..1 or infinite where the current is none of this bank's
 * @remarks The current given, the voltage is a line of the charge with one exponential: Newton's rule from below,
 * where each step falls short of the place.
 * @source battery-model-fit
 */
export function socAtCurrent(
  model: BankModel,
  currentA: number,
  load: { readonly powerW: number; readonly cableOhm: number },
): number {
  const { kind } = model.figures
  const { resistanceOhm, cells } = model
  const emfV = load.powerW / currentA + currentA * (resistanceOhm + load.cableOhm)
  if (kind.family === 'lithium') return whereReached(model.figures.openCircuitCellV, emfV / cells)
  const { lineV: emptyV, kneeV } = leadAcidLine(model, kind, 0)
  const perSocV = cells * (kind.fullCellV - kind.emptyCellV)
  const leftV = Math.max(0, kneeV - currentA * resistanceOhm)
  let soc = Math.max(0, (emfV - emptyV) / perSocV)
  for (let pass = 0; pass < NEWTON_PASSES; pass++) {
    const fallV = leftV * Math.exp(-soc / LEAD_ACID_CELL.kneeSocFraction)
    const step = (emfV - emptyV - perSocV * soc + fallV) / (perSocV + fallV / LEAD_ACID_CELL.kneeSocFraction)
    soc += step
    if (Math.abs(step) < NEWTON_PRECISION) break
  }
  return soc
}

const NEWTON_PASSES = 20
const NEWTON_PRECISION = 1e-15

/** Current and voltages of a bank under a load. */
export interface OperatingPoint {
  readonly currentA: number
  /** At the battery's terminals. [V] */
  readonly terminalV: number
  /** At the inverter's input, behind the cable. [V] */
  readonly inverterV: number
}

/**
 * Current and voltages of a bank at a power at the inverter's input.
 *
 * @param model - The bank
 * @param socFraction - State of charge. 0..1
 * @param powerW - Power at the inverter's input. [W] 0 or more
 * @param cableOhm - Resistance of the battery cable, both ways. [ohm] 0 or more
 * @returns The operating point; undefined when the voltage collapses
 * @source elementary-circuits
 */
export function operatingPoint(
  model: BankModel,
  socFraction: number,
  powerW: number,
  cableOhm: number,
): OperatingPoint | undefined {
  return asPoint(model, socFraction, {
    powerW,
    cableOhm,
    currentA: loadCurrentA(model, socFraction, powerW, cableOhm),
  })
}

/** A load of a moment on top of a steady one. */
export interface Surge {
  /** Steady power at the inverter's input. [W] 0 or more */
  readonly runningW: number
  /** Power of the moment, the steady one included. [W] 0 or more */
  readonly startingW: number
  /** Resistance of the battery cable, both ways. [ohm] 0 or more */
  readonly cableOhm: number
}

/**
 * Current and voltages of a bank while a load starts. The moment is too short to exhaust the cells: the fall of
 * voltage at the end of a discharge is that of the steady current, and the surge only meets the resistance.
 *
 * @param model - The bank
 * @param socFraction - State of charge. 0..1
 * @param surge - Powers and cable
 * @returns The operating point of the moment; undefined when the voltage collapses
 * @source elementary-circuits
 */
export function surgePoint(model: BankModel, socFraction: number, surge: Surge): OperatingPoint | undefined {
  const { startingW, runningW, cableOhm } = surge
  const { kind } = model.figures
  if (kind.family === 'lithium') return operatingPoint(model, socFraction, startingW, cableOhm)
  const runningA = loadCurrentA(model, socFraction, runningW, cableOhm)
  if (!Number.isFinite(runningA)) return undefined
  const { lineV, kneeV, knee } = leadAcidLine(model, kind, socFraction)
  const emfV = lineV - Math.max(0, kneeV - runningA * model.resistanceOhm) * knee
  const currentA = constantPowerCurrentA(emfV, model.resistanceOhm + cableOhm, startingW)
  return asPoint(model, socFraction, { powerW: startingW, cableOhm, currentA })
}

interface LeadAcidLine {
  /** Working voltage at no current. [V] */
  readonly lineV: number
  /** What the end of a discharge takes from it at no current. [V] */
  readonly kneeV: number
  /** Share of that which has set in. 0..1 */
  readonly knee: number
}

function leadAcidLine({ cells }: BankModel, kind: LeadAcidFigures, socFraction: number): LeadAcidLine {
  const emptyV = cells * (kind.emptyCellV - LEAD_ACID_CELL.polarisationV)
  return {
    lineV: emptyV + cells * (kind.fullCellV - kind.emptyCellV) * socFraction,
    kneeV: emptyV - cells * LEAD_ACID_CELL.ratedEndV,
    knee: Math.exp(-socFraction / LEAD_ACID_CELL.kneeSocFraction),
  }
}

interface Drawn {
  readonly powerW: number
  readonly cableOhm: number
  readonly currentA: number
}

function asPoint(model: BankModel, socFraction: number, drawn: Drawn): OperatingPoint | undefined {
  const { powerW, cableOhm, currentA } = drawn
  if (!Number.isFinite(currentA)) return undefined
  // Power over current loses its digits when both are next to nothing.
  if (currentA < 1e-9) {
    const restingV = model.cells * interpolate(model.figures.openCircuitCellV, socFraction)
    return { currentA, terminalV: restingV, inverterV: restingV }
  }
  const inverterV = powerW / currentA
  return { currentA, inverterV, terminalV: inverterV + currentA * cableOhm }
}
