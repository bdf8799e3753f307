import type { PreparedRange } from '../range/prepare-range.ts'
import type { Sizing } from '../sizing.ts'
import { COOKING_EFFICIENCY_LOW, INPUT_POWER_BOUNDS_W } from '../tables/rating-figures.ts'
import { capabilityOf } from './capability.ts'
import { judge } from './choose.ts'
import { largestRatingW, ratingRoomOf } from './rating-room.ts'
import { changedPlan } from './what-ifs/plan-change.ts'

/** The largest label rating of a load at which the chosen unit still fits everything. */
export interface LabelLimit {
  readonly loadId: string
  /** Input power of one item, rounded down. [W] */
  readonly limitW: number
  /** For a microwave oven: the cooking power that it roughly means, rounded down. [W] */
  readonly cookingW?: number
}

/** So near to a step the closed form's last bits could decide; the checks decide instead. [W] */
const NEAR_STEP_W = 1e-3

/**
 * What to look for on the label of each load: the largest rating with which the chosen unit still fits all.
 *
 * Limits are rounded down to whole watts, below 10 W to tenths, so that one step more does not fit.
 *
 * @param range - The range that was sized from
 * @param sizing - The engine's answer
 * @returns One limit a load; none where no unit is recommended, nor for a load that no rating is small enough for
 * @source common-practice (cooking power at the low efficiency, as a rating by cooking power is read)
 */
export function labelLimitsFor(range: PreparedRange, { plan, recommended }: Sizing): readonly LabelLimit[] {
  if (recommended === undefined) return []
  const { inverter } = recommended
  const capability = capabilityOf(inverter, plan.need)
  const limits: LabelLimit[] = []
  for (const [index, load] of plan.demand.loads.entries()) {
    const room = ratingRoomOf(range, plan, index)
    if (room === undefined) continue
    const fitsAt = (watts: number) => {
      const changed = changedPlan(range, plan, { rating: { loadId: load.id, watts } })
      return judge(inverter, changed.need).fits
    }
    const limitW = roundedDown(Math.min(largestRatingW(room, capability), INPUT_POWER_BOUNDS_W.high), fitsAt)
    if (limitW < INPUT_POWER_BOUNDS_W.low) continue
    const { id: loadId, applianceId } = load
    const cooks = applianceId !== undefined && range.appliances.get(applianceId)?.ratedByCookingPower === true
    limits.push(
      cooks
        ? { loadId, limitW, cookingW: Math.floor(limitW * COOKING_EFFICIENCY_LOW.value) }
        : { loadId, limitW },
    )
  }
  return limits
}

/**
 * A rating as a label limit tells it.
 *
 * @param watts - A rating. [W]
 * @param fitsAt - Whether the unit carries a rating; asked only where the last bits would decide
 * @returns The next whole watt below, or tenth of a watt below 10 W
 */
export function roundedDown(watts: number, fitsAt: (watts: number) => boolean): number {
  const perWatt = watts < 10 ? 10 : 1
  const nearest = Math.round(watts * perWatt) / perWatt
  if (Math.abs(watts - nearest) < NEAR_STEP_W && nearest > 0) {
    return fitsAt(nearest) ? nearest : (Math.round(nearest * perWatt) - 1) / perWatt
  }
  return Math.floor(watts * perWatt) / perWatt
}
