import { type ChildProcess, spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openStore } from '../../server/store/open.ts'
import { readRange } from '../../shared/range-reading.ts'
import { startPostgres, type TestPostgres } from '../support/postgres.ts'

const WRITES = 200
/** A kill after each of these many acknowledged writes, so that 200 are passed in 8 lives of the writer. */
const WRITES_A_LIFE = 25

let postgres: TestPostgres
const folder = mkdtempSync(join(tmpdir(), 'tallywatt-crash-'))

beforeAll(async () => {
  postgres = await startPostgres()
}, 60_000)

afterAll(async () => {
  await postgres.close()
  rmSync(folder, { recursive: true, force: true })
})

function startWriter(mode: 'seed' | 'write', url: string): ChildProcess {
  const script = fileURLToPath(new URL('../support/store-writer.ts', import.meta.url))
  return spawn(process.execPath, ['--import', 'tsx', script, mode, url], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
}

/** Lets a writer write, kills it in the middle and returns the last version that it said was acknowledged. */
async function liveAndDie(url: string, writes: number): Promise<number> {
  const writer = startWriter('write', url)
  let said = ''
  let count = 0
  await new Promise<void>((resolve, reject) => {
    writer.once('exit', () => resolve())
    writer.once('error', reject)
    writer.stdout?.on('data', (chunk: Buffer) => {
      said += chunk.toString()
      count = said.split('\n').filter((line) => /^\d+$/.test(line)).length
      if (count >= writes) writer.kill('SIGKILL')
    })
  })
  expect(writer.signalCode).toBe('SIGKILL')
  // The last line may be cut off by the kill: then it was not acknowledged to anybody.
  const lines = said.slice(0, said.lastIndexOf('\n')).split('\n')
  return Number(lines.at(-1))
}

describe.each(['sqlite', 'postgres'] as const)('kill -9 during 200 range writes in %s', (kind) => {
  it('loses no acknowledged write and leaves no half version', async () => {
    const file = join(folder, 'shops.db')
    const url = kind === 'sqlite' ? `sqlite:${file}` : await postgres.newDatabase()
    let acknowledged = 0
    while (acknowledged < WRITES) {
      acknowledged = await liveAndDie(url, WRITES_A_LIFE)
      const store = await openStore(url, 10)
      const inForce = await store.version('kingcup')
      const entries = await store.versions('kingcup', { limit: 1000 })
      // One write more than was heard of may be in: its acknowledgement died with the writer.
      expect(inForce?.version).toBeGreaterThanOrEqual(acknowledged)
      expect(entries.map(({ version }) => version)).toEqual(
        Array.from({ length: inForce?.version ?? 0 }, (_, index) => (inForce?.version ?? 0) - index),
      )
      for (const { version, digest, author } of entries.slice(0, WRITES_A_LIFE + 2)) {
        const stored = await store.version('kingcup', version)
        expect(
          createHash('sha256')
            .update(stored?.text ?? '')
            .digest('base64url'),
        ).toBe(digest)
        const reading = readRange(JSON.parse(stored?.text ?? ''))
        expect(reading.ok).toBe(true)
        if (version > 1 && reading.ok) {
          expect(reading.range.shop.name).toBe(`version ${version}`)
          expect(author).toBe(`writer ${version}`)
        }
      }
      await store.close()
      if (kind === 'sqlite') {
        const database = new Database(file)
        expect(database.pragma('integrity_check', { simple: true })).toBe('ok')
        database.close()
      }
    }
    expect(acknowledged).toBeGreaterThanOrEqual(WRITES)
  }, 120_000)
})

describe('the first start', () => {
  it('gives two processes that start at once on one SQLite file the demo shops once', async () => {
    const url = `sqlite:${join(folder, 'first-start.db')}`
    const codes = await Promise.all(
      [startWriter('seed', url), startWriter('seed', url)].map(
        (child) => new Promise((resolve) => child.once('exit', resolve)),
      ),
    )
    expect(codes).toEqual([0, 0])
    const store = await openStore(url, 0)
    expect((await store.heads()).map(({ shopId, version }) => [shopId, version])).toEqual([
      ['bentcreek', 1],
      ['kingcup', 1],
    ])
    await store.close()
  }, 60_000)

  it('finds a store whole, or empty, after a kill at any moment of it', async () => {
    for (const delayMs of [200, 350, 450, 550, 650, 800]) {
      const url = `sqlite:${join(folder, `killed-${delayMs}.db`)}`
      const child = startWriter('seed', url)
      const ended = new Promise((resolve) => child.once('exit', resolve))
      const timer = setTimeout(() => child.kill('SIGKILL'), delayMs)
      await ended
      clearTimeout(timer)
      const again = startWriter('seed', url)
      expect(await new Promise((resolve) => again.once('exit', resolve))).toBe(0)
      const store = await openStore(url, 0)
      expect((await store.heads()).map(({ shopId }) => shopId)).toEqual(['bentcreek', 'kingcup'])
      await store.close()
    }
  }, 60_000)
})
