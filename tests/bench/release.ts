import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { serverBuild } from '../../server/bundle.ts'

const FOLDER = fileURLToPath(new URL('../../dist/bench', import.meta.url))

/** A service as an operator runs it, in a process of its own. */
export interface Release {
  readonly url: string
  readonly child: ChildProcess
  stop(): Promise<void>
}

/** Builds the service as a release is built. */
export async function buildRelease(): Promise<void> {
  await buildAsReleased('release', {
    main: '../../server/main.ts',
    'range-worker': '../../server/range-files/range-worker.ts',
    'sqlite-thread': '../../server/store/sqlite-thread.ts',
  })
}

/**
 * Builds a server of a bench with the options of a release: how code is put together changes its speed.
 *
 * @param name - Of the bench
 * @param entryPoints - Files by name, seen from here
 * @returns The folder with the built files
 */
export async function buildAsReleased(
  name: string,
  entryPoints: Readonly<Record<string, string>>,
): Promise<string> {
  const folder = join(FOLDER, name)
  const sources = Object.entries(entryPoints).map(
    ([entry, path]) => [entry, fileURLToPath(new URL(path, import.meta.url))] as const,
  )
  await build(serverBuild(Object.fromEntries(sources), folder))
  return folder
}

/**
 * Starts what {@link buildRelease} has built.
 *
 * @param environment - Settings beside a free port, no quotas and no log
 * @param nodeOptions - Options of Node itself
 * @returns The process, once it listens
 */
export async function startRelease(
  environment: Readonly<Record<string, string>>,
  nodeOptions: readonly string[] = [],
): Promise<Release> {
  const child = spawn(process.execPath, [...nodeOptions, join(FOLDER, 'release', 'main.js')], {
    env: {
      PATH: process.env.PATH,
      PORT: '0',
      CALLS_PER_ADDRESS: '0',
      CALLS_PER_KEY: '0',
      LOG_LEVEL: 'silent',
      DRAIN_SECONDS: '0',
      ...environment,
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const exited = new Promise<void>((resolve) => child.once('exit', () => resolve()))
  const url = await new Promise<string>((resolve, reject) => {
    let output = ''
    child.stdout?.on('data', (data: Buffer) => {
      output += data.toString('utf8')
      const found = /Tallywatt runs at (\S+)/.exec(output)?.[1]
      if (found !== undefined) resolve(found)
    })
    void exited.then(() => reject(new Error(`the service ended: ${output}`)))
  })
  return {
    url,
    child,
    stop: async () => {
      child.kill('SIGTERM')
      await exited
    },
  }
}

/** Runs with the path of a folder that is deleted afterwards. */
export async function inFolder<T>(run: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-bench-'))
  try {
    return await run(folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The value that this share of the others stays below. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
}
