import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { isEquivalent } from './equivalents.ts'
import { comparisonMutants, figureMutants, type Mutant } from './places.ts'

/** Changes that belong together; shares are told for each, as their numbers differ by far. */
export interface MutantGroup {
  readonly name: string
  readonly mutants: readonly Mutant[]
}

/** Files of the checks whose comparisons are changed; a folder stands for the files in it. */
const CHECKS = [
  'core/inverters/checks.ts',
  'core/inverters/connection.ts',
  'core/wiring',
  'core/battery/stress.ts',
  'core/range/check-range.ts',
]

/** Sources are texts and their years, no figures. */
const NO_FIGURES = /sources?\.ts$/

/**
 * Every change of the core that some test should notice: those that are known to change no answer are left out.
 *
 * @param root - Folder of the project
 * @returns The appliance list, the other tables, and the comparisons of the checks
 */
export function mutantGroups(root: string): readonly MutantGroup[] {
  const read = (file: string) => readFileSync(join(root, file), 'utf8')
  const figures = filesIn(root, 'core/tables')
    .filter((file) => !NO_FIGURES.test(file))
    .flatMap((file) => figureMutants(file, read(file)))
  const comparisons = CHECKS.flatMap((path) => filesIn(root, path)).flatMap((file) =>
    comparisonMutants(file, read(file)).filter((mutant) => !isEquivalent(mutant, read(file))),
  )
  const listed = ({ file }: Mutant) => file.startsWith('core/tables/appliances/')
  return [
    { name: 'figures of the appliance list', mutants: figures.filter(listed) },
    { name: 'figures of the other tables', mutants: figures.filter((mutant) => !listed(mutant)) },
    { name: 'outcomes of comparisons', mutants: comparisons.filter(({ kind }) => kind === 'outcome') },
    { name: 'bounds of comparisons', mutants: comparisons.filter(({ kind }) => kind === 'bound') },
  ]
}

/**
 * A sample of a group, the same for the same seed.
 *
 * @param mutants - The group
 * @param count - How many are wanted
 * @param seed - Any whole number
 * @returns At most that many, in the order of the files
 */
export function sampled(mutants: readonly Mutant[], count: number, seed: number): readonly Mutant[] {
  const random = numbersFrom(seed)
  const drawn = mutants.map((mutant, index) => ({ mutant, index, key: random() }))
  return drawn
    .sort((a, b) => a.key - b.key)
    .slice(0, count)
    .sort((a, b) => a.index - b.index)
    .map(({ mutant }) => mutant)
}

function filesIn(root: string, path: string): readonly string[] {
  if (path.endsWith('.ts')) return [path]
  return readdirSync(join(root, path), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(path, name))
    .sort()
}

/** A small generator with a seed ("mulberry32"): the sample must be the same everywhere. 0..1 */
function numbersFrom(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
