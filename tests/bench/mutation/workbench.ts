import { spawn } from 'node:child_process'
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { type Mutant, mutated } from './places.ts'

/** What the tests said of a change. */
export type Verdict =
  | { readonly noticed: true /** The test file, or that it took too long. */; readonly by: string }
  | { readonly noticed: false }

interface Report {
  readonly testResults: readonly { readonly name: string; readonly status: string }[]
}

/** Of the tests of the service only those that ask for answers; they are tried where all others pass. */
const ANSWER_TESTS = ['sizing', 'runtime', 'range', 'cart-check', 'coverage', 'demo-ranges']

/** The rule about imports reads files, not figures; the page of figures holds what we compute, not what is right. */
const NOT_ABOUT_FIGURES = ['tests/core/boundaries.test.ts', 'tests/reference/page.test.ts']

/** A change that makes a loop endless must not hold up the rest. [ms] */
const LONGEST_RUN_MS = 600_000

/** Without a change everything is run once, on a machine that may be busy. [ms] */
const LONGEST_FIRST_RUN_MS = 900_000

/** A copy of the project in which sources may be changed and tests run. */
export class Workbench {
  readonly root = mkdtempSync(join(tmpdir(), 'tallywatt-mutation-'))
  readonly #files: { readonly core: readonly string[]; readonly answers: readonly string[] }
  readonly #leftOut: readonly string[]
  #faulty: readonly string[] = []

  /**
   * @param project - Folder of the project
   * @param without - Test files that are not to notice anything, paths from the project
   */
  constructor(project: string, without: readonly string[]) {
    this.#leftOut = [...NOT_ABOUT_FIGURES, ...without]
    for (const part of [
      'core',
      'shared',
      'server',
      'openapi',
      'widget',
      'tests',
      'package.json',
      'tsconfig.json',
    ]) {
      cpSync(join(project, part), join(this.root, part), { recursive: true })
    }
    symlinkSync(join(project, 'node_modules'), join(this.root, 'node_modules'), 'dir')
    writeFileSync(
      join(this.root, 'mutation.config.mjs'),
      `export default ${JSON.stringify({
        root: this.root,
        cacheDir: join(this.root, '.cache'),
        test: {
          include: ['tests/**/*.test.ts'],
          // A slow machine must not pass for a test that has noticed something.
          testTimeout: 300_000,
          setupFiles: ['tests/support/seed.ts'],
          maxWorkers: 1,
          isolate: false,
          reporters: ['json'],
          outputFile: 'report.json',
        },
      })}`,
    )
    this.#files = {
      core: ['tests/core', 'tests/reference'],
      answers: ANSWER_TESTS.map((name) => `tests/server/${name}.test.ts`),
    }
  }

  /**
   * Runs everything without a change. What fails then can't tell a change, and is left out.
   *
   * @returns Paths of the test files left out
   */
  async prepare(): Promise<readonly string[]> {
    await this.#passes([...this.#files.core, ...this.#files.answers], [], LONGEST_FIRST_RUN_MS)
    const report = this.#report()
    if (report.testResults.length === 0) throw new Error('no test was run')
    this.#faulty = failedFiles(report)
    if (this.#faulty.length === report.testResults.length)
      throw new Error('every test fails without a change')
    return this.#faulty
  }

  /**
   * Runs the tests against one change: those nearest to it first, then the core's, then the service's.
   *
   * @param mutant - The change
   * @returns Whether some test noticed
   */
  async judge(mutant: Mutant): Promise<Verdict> {
    const path = join(this.root, mutant.file)
    const text = readFileSync(path, 'utf8')
    writeFileSync(path, mutated(text, mutant))
    try {
      for (const filters of [nearestTests(mutant.file), this.#files.core, this.#files.answers]) {
        const passed = await this.#passes(filters, ['--bail', '1'])
        if (passed === undefined) return { noticed: true, by: 'time-out' }
        if (passed) continue
        const [by] = failedFiles(this.#report())
        // A runner that breaks down without naming a test has noticed nothing.
        if (by !== undefined) return { noticed: true, by }
      }
      return { noticed: false }
    } finally {
      writeFileSync(path, text)
    }
  }

  /** Takes the copy away. */
  close(): void {
    rmSync(this.root, { recursive: true, force: true })
  }

  #report(): Report {
    const file = join(this.root, 'report.json')
    return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Report) : { testResults: [] }
  }

  /** Whether the tests pass; undefined where they took too long. */
  #passes(
    filters: readonly string[],
    options: readonly string[],
    longestMs = LONGEST_RUN_MS,
  ): Promise<boolean | undefined> {
    const left = [...this.#leftOut, ...this.#faulty].flatMap((file) => ['--exclude', file])
    rmSync(join(this.root, 'report.json'), { force: true })
    const runner = join(this.root, 'node_modules/vitest/vitest.mjs')
    const child = spawn(
      process.execPath,
      [runner, 'run', '--config', 'mutation.config.mjs', ...options, ...left, ...filters],
      { cwd: this.root, stdio: 'ignore' },
    )
    return new Promise((resolve, reject) => {
      let late = false
      const timer = setTimeout(() => {
        late = true
        child.kill('SIGKILL')
      }, longestMs)
      child.once('error', reject)
      child.once('exit', (code) => {
        clearTimeout(timer)
        resolve(late ? undefined : code === 0)
      })
    })
  }
}

function failedFiles({ testResults }: Report): readonly string[] {
  return testResults
    .filter(({ status }) => status !== 'passed')
    .map(({ name }) => name.slice(name.lastIndexOf('/tests/') + 1))
}

/** Tests whose names say that they are about the file, so that most changes are noticed soon. */
function nearestTests(file: string): readonly string[] {
  const name = basename(file, '.ts')
  if (file.includes('/appliances/')) return ['tests/reference/appliance', 'tests/core/appliance']
  if (/^(ampacity|conductors|fuses|preferred-numbers)$/.test(name) || file.startsWith('core/wiring/')) {
    return ['tests/reference/wiring', 'tests/core/wiring', 'tests/core/limits']
  }
  if (/^(chemistries|inverter-losses)$/.test(name) || file.startsWith('core/battery/')) {
    return ['tests/reference/battery', 'tests/core/battery']
  }
  if (/^(motors|rating-figures|supply-voltages)$/.test(name)) {
    return ['tests/reference/motors', 'tests/reference/ratings', 'tests/core/rate-load']
  }
  return ['tests/core/choose', 'tests/core/limits', 'tests/core/demand']
}
