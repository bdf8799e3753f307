import { requireInRange } from '../errors.ts'
import { FUSE_STYLES, type FuseStyle } from '../range/vocabulary.ts'
import { FUSE_OVER_CURRENT_FACTOR, FUSE_RATINGS_A, FUSE_STYLE_FIGURES } from '../tables/fuses.ts'
import { type FusedBank, requiredBreakingCapacityA, requiredFuseVoltageV } from './breaking-capacity.ts'

/** What a fuse must do in its place. */
export interface FuseDemand {
  /** 1.25 x the steady current: below it the fuse opens in ordinary use or ages. [A] */
  readonly minA: number
  /** What the conductor may carry: above it the fuse does not protect it. [A] */
  readonly maxA: number
  /** [V] d.c. */
  readonly requiredVoltageV: number
  /** [A] d.c. */
  readonly requiredBreakingCapacityA: number
}

/** Why no fuse can be named. */
export type NoFuseReason =
  /** The conductor may carry less than 1.25 x the current. */
  | 'conductor-too-thin'
  /** The wanted style is rated for less voltage than the bank has. */
  | 'voltage-rating-too-low'
  /** The wanted style cannot break the bank's short-circuit current. */
  | 'breaking-capacity-too-low'
  /** No style has a rating as large as that. */
  | 'above-every-standard-rating'
  /** The next standard rating is more than the conductor may carry. */
  | 'no-standard-rating-in-window'

/** The answer of {@link fuseWindow}. */
export type FuseWindow = SafeFuse | NoFuse

/** A fuse that protects the conductor and carries the current. */
export interface SafeFuse extends FuseDemand {
  readonly ok: true
  /** The next standard rating at or above `minA`. [A] */
  readonly ratingA: number
  /** The largest standard rating of the style that still protects the conductor. [A] */
  readonly largestA: number
  readonly style: FuseStyle
}

/** No standard fuse is safe here, and why. */
export interface NoFuse extends FuseDemand {
  readonly ok: false
  readonly reason: NoFuseReason
}

/** A circuit that wants a fuse. */
export interface FuseQuestion extends FusedBank {
  /** Steady current of the circuit at its worst. [A] 0..100000 */
  readonly currentA: number
  /** What the conductor, or all parallel ones together, may carry. [A] 0 or more */
  readonly conductorAmpacityA: number
  /** Style wanted; left out: any that suits the bank. */
  readonly style?: FuseStyle | undefined
}

/**
 * The fuse of a battery circuit.
 *
 * @param question - Current, conductor, bank and, where it matters, the style
 * @returns The rating with its window, or the reason why no standard fuse is safe
 * @throws CoreError `out_of_range`
 * @remarks From 1.25 x the current up to the conductor's ampacity; the 150 % that some rules allow for the
 * next larger size is not used. Without a style every one counts whose usual voltage and breaking capacity
 * suit; of those with the same next rating the plainest is named.
 * @source nec-125-percent, conductor-protection, nec-240-6, iso8820-ratings, iso8820-scopes
 * @example
 * fuseWindow({ currentA: 130, conductorAmpacityA: 210, nominalV: 12, chemistry: 'lifepo4' })
 * //=> { ok: true, ratingA: 175, largestA: 200, style: 'class-t', minA: 162.5, maxA: 210, ... }
 */
export function fuseWindow(question: FuseQuestion): FuseWindow {
  const demand = fuseDemand(question)
  const { minA, maxA } = demand
  if (maxA < minA) return { ok: false, reason: 'conductor-too-thin', ...demand }
  const suiting = suitingStyles(demand, question.style)
  if (typeof suiting === 'string') return { ok: false, reason: suiting, ...demand }
  const next = nextRating(suiting, minA)
  if (next === undefined) return { ok: false, reason: 'above-every-standard-rating', ...demand }
  if (next.ratingA > maxA) return { ok: false, reason: 'no-standard-rating-in-window', ...demand }
  const largestA = FUSE_RATINGS_A[next.style].findLast((rating) => rating <= maxA) ?? next.ratingA
  return { ok: true, ...next, largestA, ...demand }
}

/**
 * The rating that a conductor will have to carry: the next standard one at or above 1.25 x the current.
 *
 * @param question - As {@link fuseWindow}, before the conductor is known
 * @returns Rating and style, or undefined where no style suits or reaches it
 * @throws CoreError `out_of_range`
 */
export function nextFuse(
  question: Omit<FuseQuestion, 'conductorAmpacityA'>,
): { readonly ratingA: number; readonly style: FuseStyle } | undefined {
  const demand = fuseDemand({ ...question, conductorAmpacityA: Number.POSITIVE_INFINITY })
  const suiting = suitingStyles(demand, question.style)
  return typeof suiting === 'string' ? undefined : nextRating(suiting, demand.minA)
}

/**
 * Standard ratings of a style.
 *
 * @param style - The fuse's body
 * @returns Ratings, smallest first. [A]
 * @source iso8820-ratings, nec-240-6
 */
export function standardFuseRatingsA(style: FuseStyle): readonly number[] {
  return FUSE_RATINGS_A[style]
}

function fuseDemand(question: FuseQuestion): FuseDemand {
  requireInRange('currentA', question.currentA, 0, 100_000)
  requireInRange('conductorAmpacityA', question.conductorAmpacityA, 0, Number.POSITIVE_INFINITY)
  return {
    minA: question.currentA * FUSE_OVER_CURRENT_FACTOR,
    maxA: question.conductorAmpacityA,
    requiredVoltageV: requiredFuseVoltageV(question.nominalV),
    requiredBreakingCapacityA: requiredBreakingCapacityA(question),
  }
}

function suitingStyles(
  demand: FuseDemand,
  wanted: FuseStyle | undefined,
): readonly FuseStyle[] | NoFuseReason {
  const styles = wanted === undefined ? FUSE_STYLES : [wanted]
  const forVoltage = styles.filter((style) => FUSE_STYLE_FIGURES[style].voltageV >= demand.requiredVoltageV)
  if (forVoltage.length === 0) return 'voltage-rating-too-low'
  const suiting = forVoltage.filter(
    (style) => FUSE_STYLE_FIGURES[style].breakingCapacityA >= demand.requiredBreakingCapacityA,
  )
  return suiting.length === 0 ? 'breaking-capacity-too-low' : suiting
}

/** The smallest rating that reaches `minA`; of two styles that have it the plainer one. */
function nextRating(styles: readonly FuseStyle[], minA: number) {
  let next: { readonly ratingA: number; readonly style: FuseStyle } | undefined
  for (const style of styles) {
    const ratingA = FUSE_RATINGS_A[style].find((rating) => rating >= minA)
    if (ratingA !== undefined && ratingA < (next?.ratingA ?? Number.POSITIVE_INFINITY))
      next = { ratingA, style }
  }
  return next
}
