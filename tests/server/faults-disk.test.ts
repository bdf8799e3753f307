import { execFileSync } from 'node:child_process'
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { makeKeyId, makeSecret } from '../../server/store/key-secret.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { startProcess } from '../support/own-process.ts'
import { storedKey } from '../support/staff-service.ts'

const folder = mkdtempSync(join(tmpdir(), 'tallywatt-disk-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Lets a process write nothing more to any file, as a full disk does, or whatever it likes again. */
const setRoom = (pid: number | undefined, room: 'none' | 'plenty') =>
  execFileSync('prlimit', ['--pid', String(pid), `--fsize=${room === 'none' ? '0:' : 'unlimited'}`])

async function size(url: string): Promise<number> {
  const reply = await fetch(`${url}/v1/shops/kingcup/sizing`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(sizingRequestExample),
  })
  await reply.arrayBuffer()
  return reply.status
}

describe.runIf(process.platform === 'linux')('a disk that fills up under a service', () => {
  it('loses no acknowledged range, refuses writes with 503, answers shoppers, and heals', async () => {
    const storeUrl = `sqlite:${join(folder, 'shops.db')}`
    const secret = makeSecret()
    const store = await openStore(storeUrl, 5)
    await seedDemoShops(store)
    await store.addKey(storedKey(secret, { id: makeKeyId(), scopes: ['read', 'range'] }))
    await store.close()
    const { url, child, exited } = await startProcess({ STORE_URL: storeUrl, DRAIN_SECONDS: '0' })
    let version = 1
    const push = async (name: string) => {
      const reply = await fetch(`${url}/v1/shops/kingcup/range`, {
        method: 'PUT',
        headers: {
          authorization: `Bearer ${secret}`,
          'if-match': '*',
          'content-type': 'application/json',
        },
        body: JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, name } }),
      })
      const body = (await reply.json()) as { readonly version?: number; readonly code?: string }
      if (reply.status === 200) version = body.version ?? 0
      return { status: reply.status, code: body.code, retry: reply.headers.get('retry-after') }
    }
    for (let count = 0; count < 5; count += 1)
      expect(await push(`before ${count}`)).toMatchObject({ status: 200 })
    setRoom(child.pid, 'none')
    for (let count = 0; count < 5; count += 1) {
      expect(await push(`while full ${count}`)).toEqual({
        status: 503,
        code: 'store-unavailable',
        retry: '2',
      })
      expect(await size(url)).toBe(200)
      const setup = await fetch(`${url}/v1/shops/kingcup/setup`).then((reply) => reply.json())
      expect(setup.shop.name).toBe('before 4')
    }
    expect((await fetch(`${url}/readyz`)).status).toBe(200)
    setRoom(child.pid, 'plenty')
    expect(await push('after')).toMatchObject({ status: 200 })
    child.kill('SIGKILL')
    await exited
    const database = new Database(join(folder, 'shops.db'))
    expect(database.pragma('integrity_check', { simple: true })).toBe('ok')
    database.close()
    const again = await openStore(storeUrl, 5)
    const inForce = await again.version('kingcup')
    expect(inForce?.version).toBe(version)
    expect(JSON.parse(inForce?.text ?? '{}').shop.name).toBe('after')
    await again.close()
  }, 120_000)

  it('stops no answer where only the log lies on it, and the log goes on when there is room', async () => {
    const file = join(folder, 'log')
    const log = openSync(file, 'w')
    const { url, child, exited } = await startProcess({ DRAIN_SECONDS: '0', LOG_LEVEL: 'info' }, log)
    closeSync(log)
    const lines = () => readFileSync(file, 'utf8').trim().split('\n')
    expect(await size(url)).toBe(200)
    await expect.poll(() => lines().some((line) => line.includes('answered'))).toBe(true)
    setRoom(child.pid, 'none')
    for (let count = 0; count < 50; count += 1) expect(await size(url)).toBe(200)
    const before = lines().length
    setRoom(child.pid, 'plenty')
    await expect
      .poll(async () => {
        expect(await size(url)).toBe(200)
        return lines().length
      })
      .toBeGreaterThan(before)
    child.kill('SIGTERM')
    expect(await exited).toBe(0)
  }, 120_000)

  it('does so from the first line on', async () => {
    const log = openSync('/dev/full', 'w')
    const { url, child, exited } = await startProcess({ DRAIN_SECONDS: '0', LOG_LEVEL: 'info' }, log)
    closeSync(log)
    for (let count = 0; count < 20; count += 1) expect(await size(url)).toBe(200)
    child.kill('SIGTERM')
    expect(await exited).toBe(0)
  }, 120_000)
})
