import { setImmediate as nextTurn } from 'node:timers/promises'
import { type Coverage, type CoverageOptions, coverageSteps, type PreparedRange } from '../../core/index.ts'

/** Time that a coverage may take before shoppers have their turn. [ms] */
const SLICE_MS = 8

/** Coverages, worked out once a range and never in a shopper's way. */
export interface Coverages {
  /** The coverage of a range in force, kept as long as the range is. */
  of(range: PreparedRange, options: CoverageOptions): Promise<Coverage>
  /** The coverage of a range that is not in force. */
  ofDraft(range: PreparedRange, options: CoverageOptions): Promise<Coverage>
}

/**
 * Makes the coverages of a service. They are worked out one after the other, in slices of some milliseconds.
 *
 * @returns The coverages, none worked out yet
 */
export function coverages(): Coverages {
  const known = { inStock: new WeakMap<PreparedRange, Promise<Coverage>>(), all: new WeakMap() }
  let last: Promise<unknown> = Promise.resolve()

  function inTurn(range: PreparedRange, options: CoverageOptions): Promise<Coverage> {
    const mine = last.then(() => inSlices(range, options))
    last = mine.catch(() => {})
    return mine
  }

  return {
    of(range, options) {
      const cache: WeakMap<PreparedRange, Promise<Coverage>> = options.inStockOnly ? known.inStock : known.all
      const made = cache.get(range) ?? inTurn(range, options)
      cache.set(range, made)
      return made
    },
    ofDraft: inTurn,
  }
}

async function inSlices(range: PreparedRange, options: CoverageOptions): Promise<Coverage> {
  const steps = coverageSteps(range, options)
  for (;;) {
    const until = performance.now() + SLICE_MS
    do {
      const step = steps.next()
      if (step.done) return step.value
    } while (performance.now() < until)
    await nextTurn()
  }
}
