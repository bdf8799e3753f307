import type { SourceId } from './sources.ts'

/** A figure by which a rating is converted, with where it comes from. */
export interface RatingFigure {
  readonly value: number
  readonly sourceIds: readonly SourceId[]
}

/** Power factor where neither plate nor appliance list gives one. 0..1 */
export const DEFAULT_POWER_FACTOR: RatingFigure = { value: 0.9, sourceIds: ['rating-judgement'] }

/** Electronic supplies above this are corrected, to the power factor below. [W] */
export const CORRECTED_SUPPLY_W: RatingFigure = { value: 75, sourceIds: ['iec-61000-3-2'] }

/** Least power factor of a corrected supply. 0..1 */
export const CORRECTED_POWER_FACTOR: RatingFigure = { value: 0.9, sourceIds: ['iec-61000-3-2'] }

/** Input powers that a rating may come to. [W] Outside lie misreadings: milliwatts, megawatts. */
export const INPUT_POWER_BOUNDS_W = { low: 0.1, high: 100_000 } as const
