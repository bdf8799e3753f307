import { createHash } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { makeSecret } from '../../server/store/key-secret.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { VERSIONS_KEPT } from '../../server/store/store.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { type OwnProcess, startProcess } from '../support/own-process.ts'
import { startPostgres, type TestPostgres } from '../support/postgres.ts'
import { storedKey } from '../support/staff-service.ts'

const KILLS = 3
const SHOPPERS = 4
const DEMO = { kingcup, bentcreek }
const SHOP_IDS = ['kingcup', 'bentcreek'] as const
type ShopId = (typeof SHOP_IDS)[number]

/** The longest that a database may take to come back, and the service after it. */
const EVENTUALLY = { timeout: 60_000, interval: 50 }

let postgres: TestPostgres
let storeUrl: string
let service: OwnProcess
const secrets = new Map<ShopId, string>()
/** What stops the loads of a test, also of one that has failed. */
const loads: (() => Promise<unknown>)[] = []

beforeAll(async () => {
  postgres = await startPostgres()
})
afterAll(() => postgres.close())

beforeEach(async () => {
  storeUrl = await postgres.newDatabase()
  const store = await openStore(storeUrl, 10)
  await seedDemoShops(store)
  for (const shopId of SHOP_IDS) {
    const secret = makeSecret()
    secrets.set(shopId, secret)
    await store.addKey(storedKey(secret, { shopId, scopes: ['read', 'range'] }))
  }
  await store.close()
  service = await startProcess({ STORE_URL: storeUrl, CALLS_PER_KEY: '0', DRAIN_SECONDS: '0' })
})
afterEach(async () => {
  try {
    await Promise.all(loads.splice(0).map((stop) => stop()))
  } finally {
    service.child.kill('SIGKILL')
    await service.exited
  }
})

const documentOf = (shopId: ShopId, name: string) => ({
  ...DEMO[shopId],
  shop: { ...DEMO[shopId].shop, name },
})

interface Push {
  readonly name: string
  readonly status: number
  /** Of an acknowledged write. */
  readonly version: number | undefined
}

/** Writes a version of a range whose shop has this name; whatever is refused must be refused as it should. */
async function push(shopId: ShopId, name: string, ifMatch = '*'): Promise<Push> {
  const reply = await fetch(`${service.url}/v1/shops/${shopId}/range`, {
    method: 'PUT',
    headers: {
      authorization: `Bearer ${secrets.get(shopId)}`,
      'if-match': ifMatch,
      'content-type': 'application/json',
    },
    body: JSON.stringify(documentOf(shopId, name)),
  })
  const body = (await reply.json()) as { readonly version?: number; readonly code?: string }
  if (reply.status === 503) {
    expect(reply.headers.get('content-type')).toContain('application/problem+json')
    expect(body.code).toBe('store-unavailable')
    expect(reply.headers.get('retry-after')).toMatch(/^[1-9]\d*$/)
  }
  return { name, status: reply.status, version: reply.status === 200 ? body.version : undefined }
}

/** Writes it, again where the service says to come again: on a busy machine a connection may take too long. */
async function pushAgain(...call: Parameters<typeof push>): Promise<Push> {
  for (;;) {
    const made = await push(...call)
    if (made.status !== 503) return made
    await pause(100)
  }
}

async function size(): Promise<number> {
  const reply = await fetch(`${service.url}/v1/shops/kingcup/sizing`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(sizingRequestExample),
  })
  await reply.arrayBuffer()
  return reply.status
}

async function servedName(shopId: ShopId): Promise<string> {
  const setup = await fetch(`${service.url}/v1/shops/${shopId}/setup`).then((reply) => reply.json())
  return setup.shop.name
}

async function readiness(): Promise<string> {
  const reply = await fetch(`${service.url}/readyz`)
  expect(reply.status).toBe(200)
  return (await reply.json()).status
}

async function tagInForce(shopId: ShopId): Promise<string> {
  const reply = await fetch(`${service.url}/v1/shops/${shopId}/range`, {
    headers: { authorization: `Bearer ${secrets.get(shopId)}` },
  })
  await reply.arrayBuffer()
  return reply.headers.get('etag') ?? ''
}

/** Does something again and again until it is told to stop; what it throws comes out there. */
function again(work: () => Promise<void>, pauseMs: number): () => Promise<void> {
  let going = true
  const running = (async () => {
    while (going) {
      await work()
      await pause(pauseMs)
    }
  })()
  running.catch(() => {})
  const stop = () => {
    going = false
    return running
  }
  loads.push(stop)
  return stop
}

/** Writes one version after the other. */
function startDesk(shopId: ShopId) {
  const pushes: Push[] = []
  const stop = again(async () => {
    pushes.push(await push(shopId, `import ${pushes.length + 1}`))
  }, 50)
  const count = (status: number) => pushes.filter((made) => made.status === status).length
  return { shopId, pushes, count, stop }
}

async function administer<Row extends pg.QueryResultRow>(statement: string): Promise<readonly Row[]> {
  const client = new pg.Client({ connectionString: storeUrl })
  await client.connect()
  try {
    return (await client.query<Row>(statement)).rows
  } finally {
    await client.end()
  }
}

/** Waits until a connection of the service is held up in the database for this reason. */
const heldUpBy = (condition: string) =>
  expect
    .poll(
      () =>
        administer(`select pid from pg_stat_activity where application_name = 'tallywatt' and ${condition}`),
      { timeout: 10_000, interval: 20 },
    )
    .toHaveLength(1)

/** Kills the database, and waits until the service has noticed. */
async function kill(): Promise<void> {
  await postgres.kill()
  await expect.poll(readiness, EVENTUALLY).toBe('degraded')
}

/** Starts the database again, and waits until the service has noticed by itself. */
async function heal(): Promise<void> {
  await postgres.start()
  await expect.poll(readiness, EVENTUALLY).toBe('ready')
}

/** Holds a shop's versions to what was written: each acknowledged one is there, and each that is there is whole. */
async function expectWhole(shopId: ShopId, pushes: readonly Push[]): Promise<readonly string[]> {
  const store = await openStore(storeUrl, 10)
  try {
    const entries = await store.versions(shopId, { limit: VERSIONS_KEPT })
    const inForce = await store.head(shopId)
    expect(entries.map(({ version }) => version)).toEqual(
      Array.from({ length: inForce?.version ?? 0 }, (_, index) => (inForce?.version ?? 0) - index),
    )
    const names: string[] = []
    for (const { version, digest } of entries.toReversed()) {
      const text = (await store.version(shopId, version))?.text ?? ''
      expect(createHash('sha256').update(text).digest('base64url')).toBe(digest)
      const { shop, ...rest } = JSON.parse(text)
      expect({ shop, ...rest }).toEqual(documentOf(shopId, shop.name))
      names.push(shop.name)
    }
    const written = names.slice(1)
    expect(new Set(written).size).toBe(written.length)
    expect(pushes.map(({ name }) => name)).toEqual(expect.arrayContaining(written))
    for (const { name, version } of pushes) if (version !== undefined) expect(names[version - 1]).toBe(name)
    return names
  } finally {
    await store.close()
  }
}

describe('a PostgreSQL killed with SIGKILL', () => {
  it('under load, three times, fails no sizing, loses no acknowledged range and leaves no half of one', async () => {
    const sizings = new Map<number, number>()
    const shoppers = Array.from({ length: SHOPPERS }, () =>
      again(async () => {
        const status = await size()
        sizings.set(status, (sizings.get(status) ?? 0) + 1)
      }, 5),
    )
    const sized = () => sizings.get(200) ?? 0
    const desks = SHOP_IDS.map(startDesk)
    const more = (status: number, than: readonly number[]) =>
      expect
        .poll(
          () => Math.min(...desks.map(({ count }, index) => count(status) - (than[index] ?? 0))),
          EVENTUALLY,
        )
        .toBeGreaterThanOrEqual(5)
    const counts = (status: number) => desks.map(({ count }) => count(status))

    for (let round = 0; round < KILLS; round += 1) {
      await more(200, counts(200))
      // PostgreSQL empties an unlogged table where it has to recover, and there alone.
      await administer('drop table if exists unlogged; create unlogged table unlogged as select 1 as one')
      await kill()
      await more(503, counts(503))
      const acknowledged = counts(200)
      const sizedBefore = sized()
      await more(503, counts(503))
      await expect.poll(sized, EVENTUALLY).toBeGreaterThan(sizedBefore + 20)
      expect(counts(200)).toEqual(acknowledged)
      await heal()
      await more(200, counts(200))
      expect(await administer('select one from unlogged')).toEqual([])
    }

    for (const stop of shoppers) await stop()
    expect([...sizings.keys()]).toEqual([200])
    for (const { shopId, pushes, stop } of desks) {
      await stop()
      expect(new Set(pushes.map(({ status }) => status))).toEqual(new Set([200, 503]))
      const names = await expectWhole(shopId, pushes)
      // At each kill one write was in flight at the most: of the refused ones no more may be in.
      const refused = new Set(pushes.filter(({ status }) => status === 503).map(({ name }) => name))
      expect(names.filter((name) => refused.has(name)).length).toBeLessThanOrEqual(KILLS)
      expect(await servedName(shopId)).toBe(names.at(-1))
      expect(await pushAgain(shopId, 'next')).toEqual({
        name: 'next',
        status: 200,
        version: names.length + 1,
      })
      expect(await servedName(shopId)).toBe('next')
    }
    service.child.kill('SIGTERM')
    expect(await service.exited).toBe(0)
  }, 240_000)

  it('in the middle of a write leaves nothing of it, and the same write goes through afterwards', async () => {
    const before = await pushAgain('kingcup', 'before')
    expect(before).toMatchObject({ status: 200, version: 2 })
    const tag = await tagInForce('kingcup')
    // The write has put the new version into its tables when it comes to the counter of changes.
    const locker = new pg.Client({ connectionString: storeUrl })
    locker.on('error', () => {})
    await locker.connect()
    await locker.query('begin')
    await locker.query('lock table revisions in exclusive mode')
    const writing = push('kingcup', 'in flight', tag)
    await heldUpBy("wait_event_type = 'Lock'")
    await kill()
    expect(await writing).toMatchObject({ status: 503 })
    expect(await size()).toBe(200)
    await heal()
    expect(await expectWhole('kingcup', [before])).toEqual([kingcup.shop.name, 'before'])
    expect(await servedName('kingcup')).toBe('before')
    expect(await pushAgain('kingcup', 'in flight', tag)).toMatchObject({ status: 200, version: 3 })
  }, 120_000)

  it('between a commit and its acknowledgement leaves the whole of it, which the service then serves', async () => {
    const before = await pushAgain('kingcup', 'before')
    const tag = await tagInForce('kingcup')
    // A commit waits, once it is on the disk, for a copy that nobody makes; the next start knows nothing of that.
    await administer("alter system set synchronous_standby_names = 'nobody'")
    await administer('select pg_reload_conf()')
    await expect
      .poll(() => administer('show synchronous_standby_names'))
      .toEqual([{ synchronous_standby_names: 'nobody' }])
    await administer('alter system reset synchronous_standby_names')
    const writing = push('kingcup', 'in flight', tag)
    await heldUpBy("wait_event = 'SyncRep'")
    await kill()
    const inFlight = await writing
    expect(inFlight).toMatchObject({ status: 503 })
    expect(await servedName('kingcup')).toBe('before')
    await heal()
    expect(await expectWhole('kingcup', [before, inFlight])).toEqual([
      kingcup.shop.name,
      'before',
      'in flight',
    ])
    await expect.poll(() => servedName('kingcup'), EVENTUALLY).toBe('in flight')
    expect(await pushAgain('kingcup', 'blind', tag)).toMatchObject({ status: 412 })
    expect(await pushAgain('kingcup', 'after', await tagInForce('kingcup'))).toMatchObject({
      status: 200,
      version: 4,
    })
  }, 120_000)
})
