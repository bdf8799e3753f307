import type { WorkingStep } from '../working.ts'
import { LABEL_NOTES, LABEL_REFUSALS, type LabelFigure } from './label/reading.ts'
import type { ListedAppliance } from './listed-appliance.ts'

/** What was assumed while a rating was converted; the sentence stands in the message catalogue. */
export const RATING_NOTES = [
  ...LABEL_NOTES,
  'power-factor-assumed',
  'volts-differ-from-mains',
  'efficiency-assumed',
] as const
export type RatingNoteCode = (typeof RATING_NOTES)[number]

export interface RatingNote {
  readonly code: RatingNoteCode
  readonly values: Readonly<Record<string, number | string>>
}

/** Why a rating gives no input power: as a plate's text, or for the two reasons of its own. */
export const RATING_REFUSALS = [...LABEL_REFUSALS, 'cooking-watts-needs-microwave', 'nothing-stated'] as const
export type RatingRefusalCode = (typeof RATING_REFUSALS)[number]

/** A rating in the terms that sizing and energy need. */
export interface RatedPower {
  readonly ok: true
  /** Input power to size for. [W] */
  readonly inputW: number
  /** Input power to reckon energy with. [W] */
  readonly typicalW: number
  /** Apparent power to size for, never below `inputW`. [VA] */
  readonly apparentVA: number
  /** `inputW` over `apparentVA`. 0..1 */
  readonly powerFactor: number
  readonly notes: readonly RatingNote[]
  readonly working: readonly WorkingStep[]
}

/** Why a rating gives no input power. */
export interface RatingRefusal {
  readonly ok: false
  readonly refusal: RatingRefusalCode
  /** The figures of the plate, where its text was read. */
  readonly seen?: readonly LabelFigure[]
}

/** What a rating needs to know of the appliance it belongs to. */
export type RatedAppliance = Pick<ListedAppliance, 'powerFactor' | 'startKind' | 'ratedByCookingPower'>
