import { LEAD_ACID_CELL } from '../tables/chemistries.ts'
import type { BankModel } from './bank.ts'
import { interpolate } from './table-lookup.ts'

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
  const emptyV = cells * (kind.emptyCellV - LEAD_ACID_CELL.polarisationV)
  const lineV = emptyV + cells * (kind.fullCellV - kind.emptyCellV) * socFraction
  const kneeV = emptyV - cells * LEAD_ACID_CELL.ratedEndV
  const knee = Math.exp(-socFraction / LEAD_ACID_CELL.kneeSocFraction)
  const kneeA = constantPowerCurrentA(lineV - kneeV * knee, resistanceOhm * (1 - knee) + cableOhm, powerW)
  if (kneeA * resistanceOhm <= kneeV) return kneeA
  const plainA = constantPowerCurrentA(lineV, resistanceOhm + cableOhm, powerW)
  return plainA * resistanceOhm >= kneeV ? plainA : Number.POSITIVE_INFINITY
}

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
  const currentA = loadCurrentA(model, socFraction, powerW, cableOhm)
  if (!Number.isFinite(currentA)) return undefined
  // Power over current loses its digits when both are next to nothing.
  if (currentA < 1e-9) {
    const restingV = model.cells * interpolate(model.figures.openCircuitCellV, socFraction)
    return { currentA, terminalV: restingV, inverterV: restingV }
  }
  const inverterV = powerW / currentA
  return { currentA, inverterV, terminalV: inverterV + currentA * cableOhm }
}
