import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { EQUIVALENTS } from './mutation/equivalents.ts'
import { mutantGroups, sampled } from './mutation/groups.ts'
import type { Mutant } from './mutation/places.ts'
import { Workbench } from './mutation/workbench.ts'

/*
 * Changes the core a little, again and again, and tells whether some test notices.
 *
 *   npm run mutation -- [--sample N] [--seed S] [--workers W] [--only PATTERN] [--kind KIND]... [--without FILE]... [--at-least SHARE]
 *
 * --sample N    N changes, shared out evenly among the groups; 0 for all of them (many hours)
 * --only        only changes of files whose path this regular expression matches
 * --kind        only changes of this kind: figure, bound (what holds at a limit) or outcome (a check turned round)
 * --without     a test file that is not to notice anything, to see what the others do
 * --at-least    exit with 1 where a smaller share of the changes tried is noticed, 0..1
 */
const { values } = parseArgs({
  options: {
    sample: { type: 'string', default: '80' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
    kind: { type: 'string', multiple: true, default: ['figure', 'bound', 'outcome'] },
    without: { type: 'string', multiple: true, default: [] },
    'at-least': { type: 'string', default: '0' },
  },
})
const root = fileURLToPath(new URL('../..', import.meta.url))
const only = new RegExp(values.only)
const groups = mutantGroups(root)
  .map(({ name, mutants }) => ({
    name,
    mutants: mutants.filter(({ file, kind }) => only.test(file) && values.kind.includes(kind)),
  }))
  .filter(({ mutants }) => mutants.length > 0)
const wanted = Number(values.sample)
const share = wanted === 0 ? Number.POSITIVE_INFINITY : Math.ceil(wanted / groups.length)
const chosen = groups.map((group) => ({
  ...group,
  tried: sampled(group.mutants, share, Number(values.seed)),
}))
const queue = chosen.flatMap(({ tried }) => tried)
console.log(
  `${queue.length} of ${groups.reduce((sum, { mutants }) => sum + mutants.length, 0)} changes, seed ${values.seed}`,
)

for (const { file, code, after, why } of EQUIVALENTS) {
  if (!readFileSync(`${root}${file}`, 'utf8').includes(code)) throw new Error(`no longer in ${file}: ${code}`)
  console.log(`left out, changes no answer: ${file}  ${after} in "${code}": ${why}`)
}

const survivors = new Set<Mutant>()
const next = queue.values()
await Promise.all(Array.from({ length: Number(values.workers) }, work))
report()

async function work(): Promise<void> {
  const bench = new Workbench(root, values.without)
  try {
    for (const file of await bench.prepare()) console.log(`left out, fails without a change: ${file}`)
    for (const mutant of next) {
      const verdict = await bench.judge(mutant)
      if (!verdict.noticed) survivors.add(mutant)
      const { file, line, before, after } = mutant
      const outcome = verdict.noticed ? `  (${verdict.by})` : ''
      console.log(
        `${verdict.noticed ? 'noticed ' : 'SURVIVED'} ${file}:${line}  ${before} -> ${after}${outcome}`,
      )
    }
  } finally {
    bench.close()
  }
}

function report(): void {
  console.log('\ngroup                              changes   tried  noticed   share')
  let expected = 0
  for (const { name, mutants, tried } of chosen) {
    const noticed = tried.filter((mutant) => !survivors.has(mutant)).length
    const part = tried.length === 0 ? 0 : noticed / tried.length
    expected += part * mutants.length
    const figures = [mutants.length, tried.length, noticed].map((count) => String(count).padStart(8))
    console.log(`${name.padEnd(34)}${figures.join('')}  ${percent(part)}`)
  }
  const all = chosen.reduce((sum, { mutants }) => sum + mutants.length, 0)
  const tried = (queue.length - survivors.size) / queue.length
  console.log(`noticed of those tried: ${percent(tried)}`)
  console.log(`estimated for all ${all}, each group weighed by its size: ${percent(expected / all)}`)
  if (tried < Number(values['at-least'])) process.exitCode = 1
}

function percent(value: number): string {
  return `${(value * 100).toFixed(1)} %`.padStart(7)
}
