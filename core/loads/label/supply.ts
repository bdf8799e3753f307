import type { DraftFigure } from './figures.ts'

/** Apparent power that a plate's volts and amperes come to. [VA] */
export interface PlateVoltAmperes {
  /** To size for. */
  readonly highVA: number
  /** To expect. */
  readonly lowVA: number
  /** One current for a wide range of voltages: where it flows is not said. */
  readonly wideRange: boolean
  /** The plate gives a current but no voltage. */
  readonly voltageAssumed: boolean
}

/** How far mains and rated voltage may lie apart, as a share of the rated voltage: 110 V on 127 V, 240 V on 208 V. */
const VOLTAGE_TOLERANCE_FRACTION = 0.16

/** Highest over lowest voltage above which a supply is one for any country. 220-240 V is not. */
const WIDE_RANGE_RATIO = 1.25

/**
 * Whether an appliance of this rated voltage belongs on the shop's mains.
 *
 * @param rated - Rated voltage or range. [V]
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns true within 16 % of the rated voltage or range
 */
export function isNearMains(
  { lowV, highV }: { readonly lowV: number; readonly highV: number },
  mainsV: number,
): boolean {
  return (
    mainsV >= lowV * (1 - VOLTAGE_TOLERANCE_FRACTION) && mainsV <= highV * (1 + VOLTAGE_TOLERANCE_FRACTION)
  )
}

/** @returns true for a voltage figure that {@link isNearMains}; two values are a range */
export function suitsMains({ values }: DraftFigure, mainsV: number): boolean {
  return isNearMains({ lowV: smallest(values), highV: largest(values) }, mainsV)
}

/** @returns true for a voltage that feeds the appliance: not one it gives out, nor a fuse's */
export function isSupplyVoltage({ quantity, role, values }: DraftFigure): boolean {
  return quantity === 'voltage' && role !== 'output' && role !== 'other' && values.length > 0
}

/**
 * Apparent power of the currents on the mains side of a plate; the largest where there are several.
 *
 * @param figures - All figures, in the order of the plate.
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns Volt-amperes, or undefined where no mains current is given
 * @remarks A current belongs to the voltage before it; beside a voltage that is not the mains it belongs to
 * the other side. Two currents on a wide range go the other way round than the voltages, since such a
 * supply takes the same power at each: 100-240 V, 1.8-0.9 A is 180 VA to 216 VA, and the larger is taken. One
 * current on a wide range ("100-240 V, 1.8 A") is most often that at the lowest voltage (180 VA, to expect),
 * but the plate does not say so: sized for is the current at the mains voltage (230 V: 414 VA).
 */
export function plateVoltAmperes(
  figures: readonly DraftFigure[],
  mainsV: number,
): PlateVoltAmperes | undefined {
  const supplyV = figures.find((figure) => isSupplyVoltage(figure) && suitsMains(figure, mainsV))
  let beside: DraftFigure | undefined
  let most: PlateVoltAmperes | undefined
  for (const figure of figures) {
    if (figure.quantity === 'voltage' && figure.values.length > 0) beside = figure
    const mainsSide = figure.role !== 'output' && figure.role !== 'other'
    if (figure.quantity !== 'current' || !mainsSide || figure.values.length === 0) continue
    if (beside !== undefined && (beside.direct || !suitsMains(beside, mainsV))) continue
    const found = multiply(beside ?? supplyV, figure, mainsV)
    if (most === undefined || found.highVA > most.highVA) most = found
  }
  return most
}

function multiply(voltage: DraftFigure | undefined, current: DraftFigure, mainsV: number): PlateVoltAmperes {
  const lowV = voltage === undefined ? mainsV : smallest(voltage.values)
  const highV = voltage === undefined ? mainsV : largest(voltage.values)
  const highA = largest(current.values)
  const workingV = Math.min(Math.max(mainsV, lowV), highV)
  const wide = highV / lowV > WIDE_RANGE_RATIO
  const voltageAssumed = voltage === undefined
  if (wide && current.values.length > 1) {
    const both = Math.max(lowV * highA, highV * smallest(current.values))
    return { highVA: both, lowVA: both, wideRange: false, voltageAssumed }
  }
  const highVA = workingV * highA
  return { highVA, lowVA: wide ? lowV * highA : highVA, wideRange: wide, voltageAssumed }
}

/** @returns the largest of some values, 0 of none */
export function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), 0)
}

function smallest(values: readonly number[]): number {
  return values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY)
}
