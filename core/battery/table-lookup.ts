import type { Points } from '../tables/chemistries.ts'

/**
 * Value of a straight-line table, end values held outside.
 *
 * @param points - `[x, y]` with x rising; at least one
 * @param x - Where to read it, in the table's unit
 * @returns y at x, in the table's unit
 */
export function interpolate(points: Points, x: number): number {
  // By index: this is the innermost loop of a run-time prediction, and taking tuples apart by pattern is slow.
  let low = points[0]
  if (low === undefined) return 0
  for (let index = 1; index < points.length; index++) {
    const high = points[index]
    if (high === undefined || x <= low[0]) break
    if (x <= high[0]) return low[1] + ((high[1] - low[1]) * (x - low[0])) / (high[0] - low[0])
    low = high
  }
  return low[1]
}

/**
 * Smallest x of a stretch at which a condition holds that, once true, stays true for every larger x.
 *
 * @param low - Where it does not hold
 * @param high - Where it holds
 * @param holds - The condition
 * @returns The bound, to one part in 2^45 of the stretch, on the side where it holds
 */
export function lowestThatHolds(low: number, high: number, holds: (x: number) => boolean): number {
  let fails = low
  let good = high
  for (let step = 0; step < 45; step++) {
    const middle = (fails + good) / 2
    if (holds(middle)) good = middle
    else fails = middle
  }
  return good
}
