/** Upper bounds of the buckets of request durations (OpenTelemetry semantic conventions, HTTP metrics). [s] */
export const DURATION_BOUNDS_S = [0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10]

/** Counts durations into buckets. */
export interface Histogram {
  /** @param seconds - A duration. [s] */
  observe(seconds: number): void
  /** Counts for each bound, each with those below it, and for no bound at all last. */
  cumulative(): readonly number[]
  sum(): number
}

/**
 * A histogram of durations.
 *
 * @returns An empty one
 */
export function histogram(): Histogram {
  const counts = new Array<number>(DURATION_BOUNDS_S.length + 1).fill(0)
  let total = 0
  return {
    observe(seconds) {
      let bucket = 0
      while (bucket < DURATION_BOUNDS_S.length && seconds > (DURATION_BOUNDS_S[bucket] ?? 0)) bucket += 1
      counts[bucket] = (counts[bucket] ?? 0) + 1
      total += seconds
    },
    cumulative: () => {
      let sum = 0
      return counts.map((count) => {
        sum += count
        return sum
      })
    },
    sum: () => total,
  }
}
