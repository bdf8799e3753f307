import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { mutantGroups, sampled } from '../bench/mutation/groups.ts'
import { comparisonMutants, figureMutants, mutated } from '../bench/mutation/places.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const changes = (mutants: readonly { before: string; after: string; line: number }[]) =>
  mutants.map(({ before, after, line }) => `${line}: ${before} -> ${after}`)

describe('figureMutants', () => {
  it('changes each figure by a tenth up and down, but for noughts', () => {
    const text = 'const A = 20_000\nconst B = [0, 0.5] // 7 of 9\n'
    expect(changes(figureMutants('a.ts', text))).toEqual([
      '1: 20_000 -> 22000',
      '1: 20_000 -> 18000',
      '2: 0.5 -> 0.55',
      '2: 0.5 -> 0.45',
    ])
  })

  it('leaves texts, names and comments alone', () => {
    const text = "/** 1 of 2 */ const at120V = 'table 310' + `x 4` + value2 // 5"
    expect(figureMutants('a.ts', text)).toEqual([])
  })
})

describe('comparisonMutants', () => {
  it('moves the bound and turns the outcome round of each comparison, and takes no arrow or type for one', () => {
    const text = "const f = (a: Map<string, number>) => a.size >= 3 && a !== b // x < y\n  || 'x > y' === c"
    expect(changes(comparisonMutants('a.ts', text))).toEqual([
      '1: >= -> >',
      '1: >= -> <',
      '1: !== -> ===',
      '2: === -> !==',
    ])
  })
})

describe('mutated', () => {
  it('changes one place and nothing else', () => {
    const text = 'const A = 10\nconst B = 10\n'
    const second = figureMutants('a.ts', text)[2]
    if (second === undefined) throw new Error('no such change')
    expect(mutated(text, second)).toBe('const A = 10\nconst B = 11\n')
    expect(() => mutated('const C = 1', second)).toThrow('another one')
  })
})

describe('mutantGroups', () => {
  const groups = mutantGroups(root)

  it('finds figures of the tables and comparisons of the checks', () => {
    expect(groups.map(({ name }) => name)).toHaveLength(4)
    for (const { mutants } of groups) expect(mutants.length).toBeGreaterThan(30)
    const files = new Set(groups.flatMap(({ mutants }) => mutants.map(({ file }) => file)))
    for (const file of ['core/tables/fuses.ts', 'core/inverters/checks.ts', 'core/wiring/fuse.ts']) {
      expect([...files]).toContain(file)
    }
  })

  it('gives the same sample for the same seed and another for another', () => {
    const { mutants } = groups[1] ?? { mutants: [] }
    const first = sampled(mutants, 20, 1)
    expect(first).toHaveLength(20)
    expect(sampled(mutants, 20, 1)).toEqual(first)
    expect(sampled(mutants, 20, 2)).not.toEqual(first)
    expect(sampled(mutants, mutants.length + 5, 3)).toHaveLength(mutants.length)
  })
})
