import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { freePort } from './postgres.ts'

/** A service in a process of its own, on a store of its own. */
export interface OwnProcess {
  readonly url: string
  readonly child: ChildProcess
  /** What it has written to its output and error so far. */
  output(): string
  /** Resolves with the exit code. */
  readonly exited: Promise<number | null>
}

const MAIN = fileURLToPath(new URL('../../server/main.ts', import.meta.url))

/**
 * Starts the service as an operator would, from its sources.
 *
 * @param environment - Settings beside a free port and a store in a temporary folder
 * @param log - An open file that it writes its output to; then its port is chosen beforehand
 * @returns The process, once it listens
 */
export async function startProcess(
  environment: Readonly<Record<string, string>> = {},
  log?: number,
): Promise<OwnProcess> {
  const port = log === undefined ? '0' : String(await freePort())
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-process-'))
  const child = spawn(process.execPath, ['--import', 'tsx', MAIN], {
    env: {
      PATH: process.env.PATH,
      PORT: port,
      STORE_URL: `sqlite:${join(folder, 'shops.db')}`,
      CALLS_PER_ADDRESS: '0',
      // Other tests beside this one slow the machine down.
      SHED_AFTER_MILLISECONDS: '10000',
      ...environment,
    },
    stdio: ['ignore', log ?? 'pipe', 'pipe'],
  })
  let output = ''
  const exited = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => {
      rmSync(folder, { recursive: true, force: true })
      resolve(code)
    })
  })
  if (log !== undefined) return { url: await reached(port, exited), child, output: () => output, exited }
  const url = await new Promise<string>((resolve, reject) => {
    const read = (data: Buffer) => {
      output += data.toString('utf8')
      const found = /Tallywatt runs at (\S+)/.exec(output)?.[1]
      if (found !== undefined) resolve(found)
    }
    child.stdout?.on('data', read)
    child.stderr?.on('data', read)
    void exited.then((code) => reject(new Error(`ended with ${code}: ${output}`)))
  })
  return { url, child, output: () => output, exited }
}

/** The address of a service that can't say that it listens, once it answers. */
async function reached(port: string, exited: Promise<number | null>): Promise<string> {
  const url = `http://127.0.0.1:${port}`
  let code: number | null | undefined
  void exited.then((ended) => {
    code = ended
  })
  for (;;) {
    if (code !== undefined) throw new Error(`ended with ${code}`)
    const answered = await fetch(`${url}/healthz`).then(
      ({ ok }) => ok,
      () => false,
    )
    if (answered) return url
    await pause(100)
  }
}
