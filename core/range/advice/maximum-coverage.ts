import { CoreError, requireInRange } from '../../errors.ts'
import type { SourceId } from '../../tables/sources.ts'

/** A choice of candidates, and how sure it is the best. */
export interface CoverageChoice {
  /** Indexes of the chosen candidates, in their order. */
  readonly chosen: readonly number[]
  /** Weight that the chosen ones cover together. */
  readonly covered: number
  readonly method: ChoiceMethod
}

/** How a choice was made. `guaranteeFraction`: it covers at least this share of what the best choice covers. */
export interface ChoiceMethod {
  readonly name: 'exact' | 'greedy'
  readonly guaranteeFraction: number
  readonly source: SourceId
}

/** Steps of the exact search after which the greedy choice is taken: some tens of milliseconds. */
const MOST_STEPS = 100_000

const EXACT: ChoiceMethod = { name: 'exact', guaranteeFraction: 1, source: 'maximum-coverage-exact' }
const GREEDY: ChoiceMethod = {
  name: 'greedy',
  guaranteeFraction: 1 - 1 / Math.E,
  source: 'maximum-coverage-greedy',
}

/**
 * Chooses candidates that cover the most weight together.
 *
 * Branch and bound: candidates are taken or passed over in turn; a branch ends where what is covered and the
 * largest single gains that are left can't beat the best choice so far, which holds because a candidate never
 * gains more once others are chosen (submodularity). Starts from the greedy choice. Where the search grows too
 * long, the greedy choice stays, which covers at least 1 - 1/e of the best.
 *
 * @param candidates - For each candidate the indexes of what it covers
 * @param weights - Weight of everything that can be covered. 0 or more
 * @param most - Candidates that may be chosen. 0..100
 * @param mostSteps - Steps of the exact search at most
 * @returns The choice; fewer than `most` where more would gain nothing
 * @throws CoreError `out_of_range` for `most`, `inconsistent` where an index has no weight
 * @source maximum-coverage-greedy, maximum-coverage-exact
 */
export function maximumCoverage(
  candidates: readonly (readonly number[])[],
  weights: readonly number[],
  { most, mostSteps = MOST_STEPS }: { readonly most: number; readonly mostSteps?: number },
): CoverageChoice {
  requireInRange('most', most, 0, 100)
  for (const index of candidates.flat()) {
    if (weights[index] === undefined) {
      throw new CoreError('inconsistent', 'candidates', `nothing with the index ${index} has a weight`)
    }
  }
  const greedy = greedyChoice(candidates, weights, most)
  const exact = new Search(candidates, weights, { most, mostSteps }).best(greedy)
  return exact === undefined ? { ...greedy, method: GREEDY } : { ...exact, method: EXACT }
}

type Chosen = Omit<CoverageChoice, 'method'>

function greedyChoice(
  candidates: readonly (readonly number[])[],
  weights: readonly number[],
  most: number,
): Chosen {
  const taken = new Set<number>()
  const chosen: number[] = []
  let covered = 0
  while (chosen.length < most) {
    let best = { gain: 0, index: -1 }
    for (const [index, covers] of candidates.entries()) {
      const gain = covers.reduce((sum, each) => sum + (taken.has(each) ? 0 : (weights[each] ?? 0)), 0)
      if (gain > best.gain) best = { gain, index }
    }
    if (best.index < 0) break
    chosen.push(best.index)
    covered += best.gain
    for (const each of candidates[best.index] ?? []) taken.add(each)
  }
  return { chosen: chosen.sort((a, b) => a - b), covered }
}

class Search {
  readonly #candidates: readonly (readonly number[])[]
  readonly #weights: readonly number[]
  readonly #most: number
  /** How many of the chosen ones cover each thing. */
  readonly #times: number[]
  #stepsLeft: number
  #best: Chosen = { chosen: [], covered: 0 }

  constructor(
    candidates: readonly (readonly number[])[],
    weights: readonly number[],
    { most, mostSteps }: { readonly most: number; readonly mostSteps: number },
  ) {
    this.#candidates = candidates
    this.#weights = weights
    this.#most = most
    this.#times = new Array<number>(weights.length).fill(0)
    this.#stepsLeft = mostSteps
  }

  /** The best choice, or undefined where it takes too many steps to be sure. */
  best(start: Chosen): Chosen | undefined {
    this.#best = start
    const all = this.#candidates.map((_, index) => index)
    this.#branch([], 0, all)
    return this.#stepsLeft < 0 ? undefined : this.#best
  }

  #branch(chosen: readonly number[], covered: number, left: readonly number[]): void {
    if (covered > this.#best.covered) {
      this.#best = { chosen: [...chosen].sort((a, b) => a - b), covered }
    }
    const places = this.#most - chosen.length
    if (places === 0) return
    const gains = left
      .map((index) => ({ index, gain: this.#gainOf(index) }))
      .filter(({ gain }) => gain > 0)
      .sort((a, b) => b.gain - a.gain || a.index - b.index)
    for (const [at, { index, gain }] of gains.entries()) {
      this.#stepsLeft -= 1
      if (this.#stepsLeft < 0) return
      const bound = gains.slice(at, at + places).reduce((sum, each) => sum + each.gain, covered)
      if (bound <= this.#best.covered) return
      const covers = this.#candidates[index] ?? []
      for (const each of covers) this.#times[each] = (this.#times[each] ?? 0) + 1
      const rest = gains.slice(at + 1).map((later) => later.index)
      this.#branch([...chosen, index], covered + gain, rest)
      for (const each of covers) this.#times[each] = (this.#times[each] ?? 0) - 1
    }
  }

  #gainOf(index: number): number {
    let gain = 0
    for (const each of this.#candidates[index] ?? []) {
      if (this.#times[each] === 0) gain += this.#weights[each] ?? 0
    }
    return gain
  }
}
