import { requireInRange } from '../errors.ts'
import type { FuseStyle } from '../range/vocabulary.ts'
import { FUSE_STYLE_FIGURES } from '../tables/fuses.ts'
import type { FuseDemand } from './fuse.ts'

/** A fuse as a range states it. */
export interface StatedFuse {
  /** [A] above 0 */
  readonly ratingA: number
  readonly style: FuseStyle
  /** Left out: that of the style's standard. [A] d.c. */
  readonly breakingCapacityA?: number | undefined
  /** Left out: that of the style's standard. [V] d.c. */
  readonly voltageV?: number | undefined
}

/** What is wrong with a fuse in its place; `assumed` where the figure is the style's and not the shop's. */
export type FuseFault =
  | { readonly fault: 'rating-below-current'; readonly ratingA: number; readonly minA: number }
  | { readonly fault: 'rating-above-conductor'; readonly ratingA: number; readonly maxA: number }
  | {
      readonly fault: 'voltage-rating-too-low'
      readonly voltageV: number
      readonly requiredVoltageV: number
      readonly assumed: boolean
    }
  | {
      readonly fault: 'breaking-capacity-too-low'
      readonly breakingCapacityA: number
      readonly requiredBreakingCapacityA: number
      readonly assumed: boolean
    }

/**
 * What is wrong with a fuse in a circuit.
 *
 * @param fuse - A fuse of a range
 * @param demand - What its place asks of it, as {@link fuseWindow} gives it
 * @returns Every fault; empty where it suits
 * @throws CoreError `out_of_range` for a figure that is not above 0
 * @remarks Not stated: blade 32 V, 1000 A; bolted strip 32 V, 2000 A; terminal post 58 V, 2000 A; class T
 * 125 V, 20 000 A.
 * @source iso8820-scopes, battery-fuse-dc-rating
 */
export function fuseSuits(fuse: StatedFuse, demand: FuseDemand): readonly FuseFault[] {
  const { ratingA, style } = fuse
  const usual = FUSE_STYLE_FIGURES[style]
  const voltageV = fuse.voltageV ?? usual.voltageV
  const breakingCapacityA = fuse.breakingCapacityA ?? usual.breakingCapacityA
  requireInRange('ratingA', ratingA, Number.MIN_VALUE, 1_000_000)
  requireInRange('voltageV', voltageV, Number.MIN_VALUE, 1_000_000)
  requireInRange('breakingCapacityA', breakingCapacityA, Number.MIN_VALUE, 10_000_000)
  const { minA, maxA, requiredVoltageV, requiredBreakingCapacityA } = demand
  const faults: FuseFault[] = []
  if (ratingA < minA) faults.push({ fault: 'rating-below-current', ratingA, minA })
  if (ratingA > maxA) faults.push({ fault: 'rating-above-conductor', ratingA, maxA })
  if (voltageV < requiredVoltageV) {
    const assumed = fuse.voltageV === undefined
    faults.push({ fault: 'voltage-rating-too-low', voltageV, requiredVoltageV, assumed })
  }
  if (breakingCapacityA < requiredBreakingCapacityA) {
    const assumed = fuse.breakingCapacityA === undefined
    faults.push({ fault: 'breaking-capacity-too-low', breakingCapacityA, requiredBreakingCapacityA, assumed })
  }
  return faults
}
