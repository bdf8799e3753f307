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
 * Where a rising straight-line table comes to a value.
 *
 * @param points - `[x, y]` with x and y rising; at least one
 * @param y - The value, in the table's unit
 * @returns x at which the table is y; infinite, with its sign, beyond its ends
 */
export function whereReached(points: Points, y: number): number {
  let low: Points[number] | undefined
  for (const high of points) {
    if (y <= high[1]) {
      if (low === undefined) return y < high[1] ? Number.NEGATIVE_INFINITY : high[0]
      return low[0] + ((high[0] - low[0]) * (y - low[1])) / (high[1] - low[1])
    }
    low = high
  }
  return Number.POSITIVE_INFINITY
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

/** A rising function and the stretch in which it passes zero. */
export interface Crossing {
  /** Where it is below zero. */
  readonly low: number
  /** Where it is not. */
  readonly high: number
  /** The function; minus infinity is allowed. */
  readonly value: (x: number) => number
  /** How near the crossing is found. */
  readonly within: number
}

/**
 * Where a rising function stops being below zero.
 *
 * Regula falsi with the Illinois halving, and plain halving where the function has no finite value or the
 * secant gets nowhere: a smooth function takes a handful of calls, any function an end.
 *
 * @param crossing - The function and its stretch
 * @returns A place at most `within` above the crossing, on the side where it is not below zero
 */
export function firstNotBelow({ low, high, value, within }: Crossing): number {
  let [below, notBelow] = [low, high]
  let [valueBelow, valueNotBelow] = [value(low), value(high)]
  let sameSide = 0
  for (let count = 0; count < 100 && notBelow - below > within; count += 1) {
    const share = valueBelow / (valueBelow - valueNotBelow)
    const secant = Number.isFinite(share) && count % 3 !== 2 ? share : 0.5
    // A step inside the stretch by at least half the wanted width, so that both ends close in.
    const width = notBelow - below
    const least = Math.min(0.5, within / 2 / width)
    const x = below + width * Math.min(1 - least, Math.max(least, secant))
    const found = value(x)
    if (found < 0) {
      ;[below, valueBelow] = [x, found]
      if (sameSide < 0) valueNotBelow /= 2
      sameSide = -1
    } else {
      ;[notBelow, valueNotBelow] = [x, found]
      if (sameSide > 0) valueBelow /= 2
      sameSide = 1
    }
  }
  return notBelow
}
