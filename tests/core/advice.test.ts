import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chooseInverter } from '../../core/inverters/choose.ts'
import type { Supply } from '../../core/inverters/need.ts'
import { maximumCoverage } from '../../core/range/advice/maximum-coverage.ts'
import { leastSizeW, newSizes, surgeMultipleOf, type UnmetNeed } from '../../core/range/advice/new-sizes.ts'
import { type ServedNeed, unitsToDrop } from '../../core/range/advice/units-to-drop.ts'
import { unmetRequestOf } from '../../core/range/advice/unmet.ts'
import { wattsBucket } from '../../core/range/advice/watts-bucket.ts'
import { makeInverter, makeLoad, makeNeed, makeRange } from '../support/make.ts'

/** Every choice of `count` of these. */
function choices<T>(from: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]]
  return from.flatMap((first, index) =>
    choices(from.slice(index + 1), count - 1).map((rest) => [first, ...rest]),
  )
}

const problemArb = fc.record({
  weights: fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 8, maxLength: 8 }),
  candidates: fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 7 })), { minLength: 1, maxLength: 8 }),
  most: fc.integer({ min: 1, max: 4 }),
})

function coveredBy(chosen: readonly (readonly number[])[], weights: readonly number[]): number {
  return [...new Set(chosen.flat())].reduce((sum, index) => sum + (weights[index] ?? 0), 0)
}

describe('maximum coverage', () => {
  it('covers as much as the best of all choices', () => {
    fc.assert(
      fc.property(problemArb, ({ weights, candidates, most }) => {
        const { chosen, covered, method } = maximumCoverage(candidates, weights, { most })
        const best = Math.max(
          ...choices(candidates, Math.min(most, candidates.length)).map((each) => coveredBy(each, weights)),
        )
        expect(covered).toBe(best)
        expect(
          coveredBy(
            chosen.map((index) => candidates[index] ?? []),
            weights,
          ),
        ).toBe(covered)
        expect(chosen.length).toBeLessThanOrEqual(most)
        expect(method).toEqual({ name: 'exact', guaranteeFraction: 1, source: 'maximum-coverage-exact' })
      }),
      { numRuns: 500 },
    )
  })

  it('keeps the greedy choice, within 1 - 1/e of the best, where the search may take no steps', () => {
    fc.assert(
      fc.property(problemArb, ({ weights, candidates, most }) => {
        const { covered, method } = maximumCoverage(candidates, weights, { most, mostSteps: -1 })
        const exact = maximumCoverage(candidates, weights, { most })
        expect(method).toMatchObject({ name: 'greedy', source: 'maximum-coverage-greedy' })
        expect(covered).toBeLessThanOrEqual(exact.covered)
        expect(covered).toBeGreaterThanOrEqual(method.guaranteeFraction * exact.covered)
      }),
    )
  })

  it('beats the greedy choice where that goes wrong', () => {
    // Greedy takes the middle one (6) and then one of the sides (3); the sides alone cover 10.
    const candidates = [
      [0, 1],
      [1, 2],
      [2, 3],
    ]
    const weights = [2, 3, 3, 2]
    expect(maximumCoverage(candidates, weights, { most: 2 })).toMatchObject({ chosen: [0, 2], covered: 10 })
    expect(maximumCoverage(candidates, weights, { most: 2, mostSteps: -1 }).covered).toBe(8)
  })

  it('refuses an index without a weight and more than a hundred places', () => {
    expect(() => maximumCoverage([[1]], [1], { most: 1 })).toThrow(/index 1/)
    expect(() => maximumCoverage([[0]], [1], { most: 101 })).toThrow(/between 0 and 100/)
  })
})

const needArb: fc.Arbitrary<UnmetNeed> = fc
  .record({
    nominalV: fc.constantFrom(12 as const, 24 as const),
    continuousW: fc.constantFrom(100, 125, 200, 400, 630, 800, 1000, 1600, 3150),
    surgeMultiple: fc.constantFrom(1, 2, 4),
    waveform: fc.constantFrom('either' as const, 'pure-sine-advised' as const, 'pure-sine-required' as const),
    count: fc.integer({ min: 1, max: 40 }),
  })
  .map(({ surgeMultiple, ...need }) => ({ ...need, surgeW: need.continuousW * surgeMultiple }))

describe('new sizes', () => {
  it('serve as many as any choice of as many sizes, whatever their watts', () => {
    fc.assert(
      fc.property(
        fc.array(needArb, { minLength: 1, maxLength: 7 }),
        fc.integer({ min: 1, max: 3 }),
        (needs, most) => {
          const surgeMultiple = 2
          const found = newSizes(needs, { most, surgeMultiple })
          const leasts = needs.map((need) => leastSizeW(need, surgeMultiple))
          // Between these figures nothing changes.
          const watts = [...new Set(leasts.flatMap((each) => [each, each + 1, 2 * each]))]
          const sizes = ([12, 24] as const).flatMap((nominalV) =>
            watts.map((continuousW) => ({ nominalV, continuousW })),
          )
          const servedBy = (chosen: readonly Pick<UnmetNeed, 'nominalV' | 'continuousW'>[]) =>
            needs.reduce((sum, need, index) => {
              const least = leasts[index] ?? 0
              const served = chosen.some(
                (size) =>
                  size.nominalV === need.nominalV &&
                  size.continuousW >= least &&
                  size.continuousW <= 2 * least,
              )
              return served ? sum + need.count : sum
            }, 0)
          // Three of forty sizes are too many to try all: a size at a time on top of every pair.
          const pairs = choices(sizes, Math.min(most, 2))
          const best = Math.max(...pairs.map((pair) => servedBy(pair)))
          if (most <= 2) expect(found.served).toBe(best)
          else expect(found.served).toBeGreaterThanOrEqual(best)
          expect(found.served).toBe(servedBy(found.sizes))
          expect(found.served).toBe(found.sizes.reduce((sum, { served }) => sum + served, 0))
          expect(found.sizes.length).toBeLessThanOrEqual(most)
          expect(found.unmet).toBe(needs.reduce((sum, { count }) => sum + count, 0))
          expect(found.method.name).toBe('exact')
        },
      ),
      { numRuns: 60 },
    )
  })

  const need: UnmetNeed = {
    nominalV: 12,
    continuousW: 2000,
    surgeW: 2000,
    waveform: 'either',
    count: 10,
  }

  it('ask for no more surge and no better wave form than what they serve', () => {
    const plain = newSizes([need], { most: 1, surgeMultiple: 3 })
    expect(plain.sizes).toEqual([
      { nominalV: 12, continuousW: 2000, surgeW: 2000, waveform: 'modified-sine', served: 10 },
    ])
    const hard = newSizes([need, { ...need, surgeW: 5000, waveform: 'pure-sine-advised', count: 2 }], {
      most: 1,
      surgeMultiple: 3,
    })
    expect(hard.sizes).toMatchObject([{ surgeW: 5000, waveform: 'pure-sine', served: 12 }])
  })

  it('grow where a start calls for more than new units give', () => {
    expect(leastSizeW({ continuousW: 500, surgeW: 3000 }, 2)).toBe(1500)
    const { sizes } = newSizes([{ ...need, continuousW: 500, surgeW: 3000 }], { most: 1, surgeMultiple: 2 })
    expect(sizes).toMatchObject([{ continuousW: 1500, surgeW: 3000 }])
  })

  it('are not one giant for all: over twice the need serves nobody', () => {
    const needs = [need, { ...need, continuousW: 400, surgeW: 400, count: 4 }]
    expect(newSizes(needs, { most: 1, surgeMultiple: 2 })).toMatchObject({ served: 10, unmet: 14 })
    expect(newSizes(needs, { most: 2, surgeMultiple: 2 }).served).toBe(14)
  })

  it('are none where nothing is unmet', () => {
    expect(newSizes([], { most: 3, surgeMultiple: 2 })).toMatchObject({ sizes: [], served: 0, unmet: 0 })
  })

  it('take the surge that the range has at most', () => {
    const units = [makeInverter({ sku: 'A', surgeW: 3000 }), makeInverter({ sku: 'B', surgeW: 1500 })]
    expect(surgeMultipleOf(makeRange(units))).toBe(3)
  })
})

describe('units to drop', () => {
  const SKUS = ['A', 'B', 'C', 'D', 'E']
  const servedArb: fc.Arbitrary<ServedNeed> = fc.record({
    skus: fc.shuffledSubarray(SKUS, { minLength: 1 }),
    count: fc.integer({ min: 1, max: 30 }),
  })

  function lossOf(needs: readonly ServedNeed[], dropped: readonly string[]) {
    let [lost, moved] = [0, 0]
    for (const { skus, count } of needs) {
      if (skus.every((sku) => dropped.includes(sku))) lost += count
      else if (dropped.includes(skus[0] ?? '')) moved += count
    }
    return { lost, moved }
  }

  it('lose as little as the best of all choices', () => {
    fc.assert(
      fc.property(fc.array(servedArb, { maxLength: 10 }), fc.integer({ min: 1, max: 4 }), (needs, count) => {
        const found = unitsToDrop(needs, SKUS, { count })
        const all = choices(SKUS, count).map((dropped) => lossOf(needs, dropped))
        const [best] = all.sort((a, b) => a.lost - b.lost || a.moved - b.moved)
        expect(found).toMatchObject({ ...best, method: 'exact' })
        expect(lossOf(needs, found?.skus ?? [])).toEqual(best)
        expect(new Set(found?.skus).size).toBe(count)
      }),
      { numRuns: 300 },
    )
  })

  it('tell the true loss of the greedy choice where the search may take no steps', () => {
    fc.assert(
      fc.property(fc.array(servedArb, { maxLength: 10 }), fc.integer({ min: 1, max: 4 }), (needs, count) => {
        const found = unitsToDrop(needs, SKUS, { count, mostSteps: -1 })
        expect(found?.method).toBe('greedy')
        expect(found).toMatchObject(lossOf(needs, found?.skus ?? []))
      }),
    )
  })

  it('are none where the range has fewer', () => {
    expect(unitsToDrop([], ['A'], { count: 2 })).toBeUndefined()
    expect(unitsToDrop([], ['A'], { count: 1 })).toMatchObject({ skus: ['A'], lost: 0, moved: 0 })
  })
})

describe('buckets of watts', () => {
  // ISO 3:1973, basic series R10, from memory: 1.00 1.25 1.60 2.00 2.50 3.15 4.00 5.00 6.30 8.00.
  it.each([
    [0, 10],
    [10, 10],
    [10.1, 13],
    [99, 100],
    [100, 100],
    [101, 125],
    [1000, 1000],
    [1001, 1250],
    [2600, 3150],
    [8001, 10_000],
    [2e6, 1_000_000],
  ])('%d W are counted up to %d W', (watts, upTo) => {
    expect(wattsBucket(watts)).toBe(upTo)
  })

  it('end at or above the power, less than a third over it', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 1e6, noNaN: true }), (watts) => {
        expect(wattsBucket(watts)).toBeGreaterThanOrEqual(watts)
        expect(wattsBucket(watts)).toBeLessThan(watts * 1.34)
        expect(wattsBucket(wattsBucket(watts))).toBe(wattsBucket(watts))
      }),
    )
  })
})

describe('an unmet request', () => {
  const load = makeLoad({ id: 'a', runningW: 1000, startingW: 3000, startingS: 1, startKind: 'motor' })

  function unmet(units: Parameters<typeof makeInverter>[0][], changes: Parameters<typeof makeNeed>[1] = {}) {
    const need = makeNeed([load], changes)
    const choice = chooseInverter(makeRange(units.map((unit) => makeInverter(unit))).inverters, need)
    expect(choice.chosen).toBe(-1)
    return unmetRequestOf(need, choice.verdicts)
  }

  it('is told in buckets: power with headroom, surge, wave form, voltage', () => {
    expect(unmet([{ sku: 'A', continuousW: 300 }])).toEqual({
      nominalV: 12,
      continuousW: 1250,
      surgeW: 3150,
      waveform: 'either',
      cause: 'size',
    })
  })

  it('counts apparent power where that is what it takes', () => {
    const need = makeNeed([makeLoad({ id: 'a', runningW: 100, runningVA: 900 })])
    expect(unmetRequestOf(need, []).continuousW).toBe(1000)
  })

  it('is for want of stock where a unit would do that is out of stock', () => {
    expect(unmet([{ sku: 'A', continuousW: 3000, inStock: false }]).cause).toBe('stock')
  })

  it('is for the buyer’s wishes where a unit would do but for its price', () => {
    const preferences = { inStockOnly: true, maxPrice: '1.00' }
    expect(unmet([{ sku: 'A', continuousW: 3000 }], { preferences }).cause).toBe('wishes')
  })

  it('is for the connection where the buyer’s socket lets no unit have current enough', () => {
    const supply: Supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } }
    expect(unmet([{ sku: 'A', continuousW: 3000 }], { supply }).cause).toBe('connection')
  })

  it('is for want of a size where the voltage is not served at all', () => {
    expect(unmet([{ sku: 'A', continuousW: 3000 }], { supply: { nominalV: 48 } }).cause).toBe('size')
  })
})
