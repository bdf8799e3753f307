import { requireInRange } from '../../errors.ts'

/** Requests with the same units that fit them. */
export interface ServedNeed {
  /** Units that fit, in the order of choice: the first is recommended. */
  readonly skus: readonly string[]
  readonly count: number
}

/** Units that could go, and what would be lost. */
export interface UnitsToDrop {
  readonly skus: readonly string[]
  /** Requests that no unit would serve any more. */
  readonly lost: number
  /** Requests for which a larger or dearer unit would be recommended. */
  readonly moved: number
  /** `exact`: no other choice of as many units loses less. `greedy`: one after the other; no bound is known. */
  readonly method: 'exact' | 'greedy'
}

/** Steps of the exact search after which units are chosen one after the other. */
const MOST_STEPS = 100_000

/**
 * Chooses units whose going costs least: fewest requests lost, then fewest moved to another unit.
 *
 * Depth first over every choice of that many units; a branch ends as soon as it has lost more than the best
 * choice so far, which holds because more units gone never lose less. Starts from the greedy choice, which stays
 * where the search grows too long.
 *
 * @param needs - Requests by the units that fit them; each list complete, or longer than `count`
 * @param skus - Units that may go
 * @param question.count - How many are to go. 1..10
 * @returns The choice; undefined where there are fewer units than that
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source exhaustive-search
 */
export function unitsToDrop(
  needs: readonly ServedNeed[],
  skus: readonly string[],
  { count, mostSteps = MOST_STEPS }: { readonly count: number; readonly mostSteps?: number },
): UnitsToDrop | undefined {
  requireInRange('count', count, 1, 10)
  if (skus.length < count) return undefined
  const search = new Search(needs, skus, mostSteps)
  const greedy = search.greedy(count)
  const exact = search.exact(count, greedy)
  return exact === undefined ? { ...greedy, method: 'greedy' } : { ...exact, method: 'exact' }
}

type Dropped = Omit<UnitsToDrop, 'method'>

class Search {
  readonly #needsOf: ReadonlyMap<string, readonly ServedNeed[]>
  readonly #skus: readonly string[]
  readonly #gone = new Set<string>()
  #stepsLeft: number
  #best: Dropped | undefined

  constructor(needs: readonly ServedNeed[], skus: readonly string[], mostSteps: number) {
    const needsOf = new Map<string, ServedNeed[]>(skus.map((sku) => [sku, []]))
    for (const need of needs) for (const sku of new Set(need.skus)) needsOf.get(sku)?.push(need)
    this.#needsOf = needsOf
    // Units that few ask for first, so that a good choice is found soon.
    const asked = (sku: string) => (needsOf.get(sku) ?? []).reduce((sum, need) => sum + need.count, 0)
    this.#skus = [...skus].sort((a, b) => asked(a) - asked(b) || (a < b ? -1 : 1))
    this.#stepsLeft = mostSteps
  }

  greedy(count: number): Dropped {
    let dropped: Dropped = { skus: [], lost: 0, moved: 0 }
    for (let gone = 0; gone < count; gone += 1) {
      let next: Dropped | undefined
      for (const sku of this.#skus) {
        if (this.#gone.has(sku)) continue
        const tried = this.#with(dropped, sku)
        if (next === undefined || losesLess(tried, next)) next = tried
      }
      if (next === undefined) break
      dropped = next
      const last = dropped.skus.at(-1)
      if (last !== undefined) this.#gone.add(last)
    }
    this.#gone.clear()
    return dropped
  }

  exact(count: number, start: Dropped): Dropped | undefined {
    this.#best = start
    this.#branch({ skus: [], lost: 0, moved: 0 }, 0, count)
    return this.#stepsLeft < 0 ? undefined : this.#best
  }

  #branch(dropped: Dropped, from: number, left: number): void {
    if (this.#best !== undefined && dropped.lost > this.#best.lost) return
    if (left === 0) {
      if (this.#best === undefined || losesLess(dropped, this.#best)) this.#best = dropped
      return
    }
    for (let at = from; at <= this.#skus.length - left; at += 1) {
      const sku = this.#skus[at]
      if (sku === undefined) return
      this.#stepsLeft -= 1
      if (this.#stepsLeft < 0) return
      const next = this.#with(dropped, sku)
      this.#gone.add(sku)
      this.#branch(next, at + 1, left - 1)
      this.#gone.delete(sku)
    }
  }

  /** What is lost and moved once one more unit is gone. */
  #with({ skus, lost, moved }: Dropped, sku: string): Dropped {
    let [nowLost, nowMoved] = [lost, moved]
    for (const need of this.#needsOf.get(sku) ?? []) {
      const others = need.skus.filter((each) => each !== sku && !this.#gone.has(each))
      const wasMoved = need.skus[0] !== undefined && this.#gone.has(need.skus[0])
      if (others.length === 0) {
        nowLost += need.count
        if (wasMoved) nowMoved -= need.count
      } else if (!wasMoved && need.skus[0] === sku) nowMoved += need.count
    }
    return { skus: [...skus, sku], lost: nowLost, moved: nowMoved }
  }
}

function losesLess(a: Dropped, b: Dropped): boolean {
  return a.lost < b.lost || (a.lost === b.lost && a.moved < b.moved)
}
