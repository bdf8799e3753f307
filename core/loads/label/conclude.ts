import {
  COOKING_EFFICIENCY_HIGH,
  COOKING_EFFICIENCY_LOW,
  COOKING_EFFICIENCY_TYPICAL,
  COOLING_EER_LOW,
  COOLING_EER_TYPICAL,
  DEFAULT_POWER_FACTOR,
  INPUT_POWER_BOUNDS_W,
  SMALLEST_MICROWAVE_INPUT_W,
} from '../../tables/rating-figures.ts'
import { WATTS_PER_BTU_PER_HOUR } from '../../units.ts'
import { motorInputFor } from '../motors.ts'
import type { CollectedLabel } from './collect.ts'
import type { DraftFigure } from './figures.ts'
import { type PlatePower, type PlatePowers, sortPowers } from './powers.ts'
import type {
  LabelBasis,
  LabelContext,
  LabelFigure,
  LabelNote,
  LabelNoteCode,
  LabelReading,
  LabelRefusalCode,
} from './reading.ts'
import { isSupplyVoltage, suitsMains } from './supply.ts'

/** Watts over volt-amperes that one plate can state: below, the current is no running current. */
const PLAUSIBLE_POWER_FACTOR = { low: 0.2, high: 1.05 }

/** Watts up to this multiple of the shaft power are the shaft power itself, stated twice. */
const SAME_AS_SHAFT = 1.03

/** Figures that an answer repeats; a longer plate is no plate. */
const MOST_SEEN = 60

interface Conclusion {
  readonly basis: LabelBasis
  readonly inputW: number
  readonly typicalW: number
  readonly apparentVA: number
  readonly powerFactor?: number
  readonly figures: readonly DraftFigure[]
  readonly notes: readonly LabelNote[]
}

/**
 * Concludes the input power from the figures of a plate: stated input watts first, then volt-amperes, then
 * what has to be converted (shaft, cooking and cooling power). Watts far below the volt-amperes
 * belong to a lamp or the like, and don't count.
 *
 * @param collected - What the plate says.
 * @param context - Mains voltage [V] 100..240, and whether it is a microwave oven.
 * @returns The power with all that was assumed, or why there is none; never throws.
 */
export function concludeLabel(collected: CollectedLabel, context: LabelContext): LabelReading {
  const microwave = context.ratedByCookingPower === true || collected.microwaveNamed
  const figures = collected.figures.map((figure) => withMicrowaveRole(figure, microwave))
  const seen = figures.slice(0, MOST_SEEN).map(toSeen)
  const refuse = (refusal: LabelRefusalCode): LabelReading => ({ ok: false, refusal, seen })
  const unfit = unfitness(figures, collected, context.mainsV)
  if (unfit !== undefined) return refuse(unfit)

  const powers = sortPowers(figures, context.mainsV)
  const concluded = microwave ? concludeMicrowave(powers, context) : concludePlate(powers, context)
  if (concluded === undefined) return refuse(powers.output ? 'output-only' : 'no-power-found')
  const { figures: used, ...power } = concluded
  if (!withinBounds(power.inputW) || !withinBounds(power.typicalW)) return refuse('out-of-bounds')
  const notes = [...used.flatMap(figureNotes), ...powers.notes, ...power.notes]
  return { ok: true, ...power, seen, notes }
}

function withinBounds(watts: number): boolean {
  return watts >= INPUT_POWER_BOUNDS_W.low && watts <= INPUT_POWER_BOUNDS_W.high
}

/** What a microwave oven gives out is cooking power; nothing else has any. */
function withMicrowaveRole(figure: DraftFigure, microwave: boolean): DraftFigure {
  if (microwave && figure.role === 'output' && figure.quantity === 'power')
    return { ...figure, role: 'cooking' }
  if (!microwave && figure.role === 'cooking') return { ...figure, role: 'unknown' }
  return figure
}

function toSeen({ quantity, values, unit, role, text }: DraftFigure): LabelFigure {
  return { quantity, values, unit, role, text }
}

/** Why a plate can't be one of a load on this mains, whatever power it states. */
function unfitness(
  figures: readonly DraftFigure[],
  { threePhase }: CollectedLabel,
  mainsV: number,
): LabelRefusalCode | undefined {
  if (figures.length === 0) return 'nothing-read'
  const states = ({ quantity, role }: DraftFigure): boolean =>
    quantity !== 'number' && quantity !== 'frequency' && role !== 'output' && role !== 'other'
  if (figures.some((figure) => figure.malformed && states(figure))) return 'ambiguous'
  if (threePhase) return 'three-phase'
  const supply = figures.filter(isSupplyVoltage)
  const alternating = supply.filter(({ direct }) => !direct)
  if (supply.length > 0 && alternating.length === 0) return 'direct-current-only'
  if (supply.length > 0 && !alternating.some((voltage) => suitsMains(voltage, mainsV)))
    return 'voltage-mismatch'
  return undefined
}

function concludePlate(powers: PlatePowers, { mainsV }: LabelContext): Conclusion | undefined {
  const stated = larger(powers.input, powers.unlabelled)
  const { shaft } = powers
  const isShaft = stated !== undefined && shaft !== undefined && stated.watts <= shaft.watts * SAME_AS_SHAFT
  const apparent = fromVoltAmperes(powers)
  if (stated !== undefined && !isShaft) {
    const { watts } = stated
    const lowVA = Math.max(powers.statedVA?.watts ?? 0, powers.voltAmperes?.lowVA ?? 0)
    const tooSmall = watts < lowVA * PLAUSIBLE_POWER_FACTOR.low
    if (!tooSmall || apparent === undefined) return fromWatts(stated, powers)
    return { ...apparent, notes: [note('watts-not-used', { watts }), ...apparent.notes] }
  }
  if (apparent !== undefined && apparent.inputW > (shaft?.watts ?? 0)) return apparent
  if (shaft !== undefined) {
    const assumed = isShaft ? [note('shaft-power-assumed', { shaftW: shaft.watts })] : []
    return fromShaft(shaft, assumed, mainsV)
  }
  return powers.cooling === undefined ? undefined : fromCooling(powers.cooling)
}

/**
 * A microwave oven's two powers. Unlabelled watts too small for an input are taken for cooking power, which
 * keeps the sizing on the safe side; an input that does not exceed the cooking power is none.
 */
function concludeMicrowave(powers: PlatePowers, context: LabelContext): Conclusion | undefined {
  const { input, unlabelled } = powers
  const assumed =
    input === undefined &&
    powers.cooking === undefined &&
    unlabelled !== undefined &&
    unlabelled.watts < SMALLEST_MICROWAVE_INPUT_W.value
  const cooking = assumed ? unlabelled : powers.cooking
  if (cooking === undefined) return concludePlate(powers, context)
  const stated = assumed ? undefined : larger(input, unlabelled)
  // Unlabelled watts that would make too good an oven belong to its grill.
  const leastW = input === undefined ? cooking.watts / COOKING_EFFICIENCY_HIGH.value : cooking.watts
  if (stated !== undefined && stated.watts > leastW) return fromWatts(stated, powers)
  const notes = [
    ...(assumed ? [note('cooking-power-assumed', { cookingW: cooking.watts })] : []),
    ...(input === undefined
      ? []
      : [note('input-below-output', { inputW: input.watts, outputW: cooking.watts })]),
  ]
  const apparent = fromVoltAmperes(powers)
  if (apparent !== undefined && apparent.inputW > cooking.watts) {
    return { ...apparent, notes: [...notes, ...apparent.notes] }
  }
  return fromCooking(cooking, notes)
}

function larger(one: PlatePower | undefined, other: PlatePower | undefined): PlatePower | undefined {
  return one === undefined || (other !== undefined && other.watts > one.watts) ? other : one
}

function fromWatts({ watts, figure }: PlatePower, powers: PlatePowers): Conclusion {
  const base = { basis: 'watts', inputW: watts, typicalW: watts, figures: [figure] } as const
  const { statedVA, voltAmperes } = powers
  const wattsFitLow = voltAmperes !== undefined && watts <= voltAmperes.lowVA * PLAUSIBLE_POWER_FACTOR.high
  const plateVA = statedVA?.watts ?? (wattsFitLow ? voltAmperes.lowVA : voltAmperes?.highVA)
  const ratio = plateVA === undefined ? undefined : watts / plateVA
  if (
    plateVA !== undefined &&
    ratio !== undefined &&
    ratio >= PLAUSIBLE_POWER_FACTOR.low &&
    ratio <= PLAUSIBLE_POWER_FACTOR.high
  ) {
    return { ...base, apparentVA: Math.max(plateVA, watts), powerFactor: Math.min(1, ratio), notes: [] }
  }
  const notes = plateVA === undefined ? [] : [note('volt-amperes-not-used', { voltAmperes: plateVA, watts })]
  if (powers.powerFactor !== undefined) {
    return { ...base, apparentVA: watts / powers.powerFactor, powerFactor: powers.powerFactor, notes }
  }
  return { ...base, apparentVA: watts / DEFAULT_POWER_FACTOR.value, notes }
}

function fromVoltAmperes(powers: PlatePowers): Conclusion | undefined {
  const { statedVA, voltAmperes, powerFactor } = powers
  const byCurrent = voltAmperes !== undefined && voltAmperes.highVA > (statedVA?.watts ?? 0)
  const highVA = byCurrent ? voltAmperes.highVA : statedVA?.watts
  if (highVA === undefined) return undefined
  const lowVA = byCurrent ? voltAmperes.lowVA : highVA
  const factor = powerFactor ?? 1
  const notes: LabelNote[] = []
  if (byCurrent && voltAmperes.wideRange) notes.push(note('wide-range-current', { highVA, lowVA }))
  if (byCurrent && voltAmperes.voltageAssumed)
    notes.push(note('mains-voltage-assumed', { apparentVA: highVA }))
  if (powerFactor === undefined) notes.push(note('power-factor-assumed-one', { apparentVA: highVA }))
  return {
    basis: byCurrent ? 'volts-amps' : 'volt-amperes',
    inputW: highVA * factor,
    typicalW: lowVA * factor,
    apparentVA: highVA,
    ...(powerFactor === undefined ? {} : { powerFactor }),
    figures: statedVA === undefined || byCurrent ? [] : [statedVA.figure],
    notes,
  }
}

function fromShaft(
  { watts, figure }: PlatePower,
  assumed: readonly LabelNote[],
  mainsV: number,
): Conclusion | undefined {
  const basis = figure.quantity === 'horsepower' ? 'horsepower' : 'shaft-watts'
  // Out of bounds is told by the caller; the motor function takes no shaft beyond them.
  const shaftW = Math.min(watts, INPUT_POWER_BOUNDS_W.high)
  const { inputW, apparentVA, powerFactor } = motorInputFor({ shaftW, mainsV })
  const converted = note('shaft-power-converted', { shaftW: watts, inputW })
  const notes = [...assumed, converted]
  return { basis, inputW, typicalW: inputW, apparentVA, powerFactor, figures: [figure], notes }
}

function fromCooking({ watts, figure }: PlatePower, assumed: readonly LabelNote[]): Conclusion {
  const inputW = watts / COOKING_EFFICIENCY_LOW.value
  return {
    basis: 'cooking-watts',
    inputW,
    typicalW: watts / COOKING_EFFICIENCY_TYPICAL.value,
    apparentVA: inputW / DEFAULT_POWER_FACTOR.value,
    figures: [figure],
    notes: [...assumed, note('cooking-power-converted', { cookingW: watts, inputW })],
  }
}

function fromCooling({ watts, figure }: PlatePower): Conclusion {
  const btuPerHour = watts / WATTS_PER_BTU_PER_HOUR
  const inputW = btuPerHour / COOLING_EER_LOW.value
  return {
    basis: figure.quantity === 'cooling-capacity' ? 'btu' : 'cooling-watts',
    inputW,
    typicalW: btuPerHour / COOLING_EER_TYPICAL.value,
    apparentVA: inputW / DEFAULT_POWER_FACTOR.value,
    figures: [figure],
    notes: [note('cooling-capacity-converted', { btuPerHour, eer: COOLING_EER_LOW.value, inputW })],
  }
}

function figureNotes({ notes, values }: DraftFigure): readonly LabelNote[] {
  return values.length > 1 ? [...notes, note('range-high-used', { count: values.length })] : notes
}

function note(code: LabelNoteCode, values: LabelNote['values']): LabelNote {
  return { code, values }
}
