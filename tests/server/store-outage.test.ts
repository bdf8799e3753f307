import { sql } from 'kysely'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { postgresBackend } from '../../server/store/postgres.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { startPostgres, type TestPostgres } from '../support/postgres.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

/** The longest that another instance may take to see a change, and an instance to heal. [ms] */
const SEEN_WITHIN = { timeout: 2000, interval: 20 }
const HEALED_WITHIN = { timeout: 5000, interval: 50 }

let postgres: TestPostgres
let url: string
let one: StaffService
let two: StaffService
let secret: string
/** What stops the loads of a test, also of one that has failed. */
const loads: (() => Promise<unknown>)[] = []

beforeAll(async () => {
  postgres = await startPostgres()
}, 60_000)
afterAll(() => postgres.close())

beforeEach(async () => {
  url = await postgres.newDatabase()
  one = await openStaffService(url)
  two = await openStaffService(url)
  secret = await one.issue('kingcup', ['read', 'range'])
})
afterEach(async () => {
  for (const stop of loads.splice(0)) await stop()
  await one.close()
  await two.close()
})

async function push(service: StaffService, name: string): Promise<number> {
  const response = await service.app.inject({
    method: 'PUT',
    url: '/v1/shops/kingcup/range',
    headers: { authorization: `Bearer ${secret}`, 'if-match': '*' },
    payload: { ...kingcup, shop: { ...kingcup.shop, name } },
  })
  if (response.statusCode >= 500) {
    expect(response.json().code).toBe('store-unavailable')
    expect(Number(response.headers['retry-after'])).toBeLessThanOrEqual(2)
  }
  return response.statusCode
}

const nameAt = async (service: StaffService) =>
  (await service.app.inject('/v1/shops/kingcup/setup')).json().shop.name

const readiness = async (service: StaffService) => {
  const response = await service.app.inject('/readyz')
  expect(response.statusCode).toBe(200)
  return response.json().status
}

/** Asks for sizings without a pause until it is told to stop; counts the answers by status. */
function load(service: StaffService) {
  const statuses = new Map<number, number>()
  let going = true
  const running = (async () => {
    while (going) {
      const { statusCode } = await service.app.inject({
        method: 'POST',
        url: '/v1/shops/kingcup/sizing',
        payload: sizingRequestExample,
      })
      statuses.set(statusCode, (statuses.get(statusCode) ?? 0) + 1)
      await new Promise((resolve) => setImmediate(resolve))
    }
  })()
  const stop = async () => {
    going = false
    await running
    return statuses
  }
  loads.push(stop)
  return stop
}

async function administer(statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: url })
  await client.connect()
  await client.query(statement)
  await client.end()
}

describe('two instances on one PostgreSQL', () => {
  it('answer from a range within 2 seconds of its being pushed to either', async () => {
    for (const [index, [from, to]] of [
      [one, two] as const,
      [two, one] as const,
      [one, two] as const,
    ].entries()) {
      await expect.poll(() => push(from, `push ${index}`), SEEN_WITHIN).toBe(200)
      await expect.poll(() => nameAt(to), SEEN_WITHIN).toBe(`push ${index}`)
    }
  })

  it('do so, too, when the connection that listens has been cut', async () => {
    await administer(
      "select pg_terminate_backend(pid) from pg_stat_activity where application_name = 'tallywatt listener'",
    )
    expect(await push(one, 'unheard')).toBe(200)
    await expect.poll(() => nameAt(two), SEEN_WITHIN).toBe('unheard')
  })

  it('let a key in on both, and revoke it on both', async () => {
    const status = async () =>
      (
        await two.app.inject({
          url: '/v1/shops/kingcup/range',
          headers: { authorization: `Bearer ${secret}` },
        })
      ).statusCode
    await expect.poll(status, SEEN_WITHIN).toBe(200)
    const [key] = await one.store.keys()
    await one.store.revokeKey(key?.id ?? '', new Date().toISOString())
    await expect.poll(status, SEEN_WITHIN).toBe(401)
  })

  it('let exactly one of 20 writers, 10 at each, through', async () => {
    await expect.poll(() => push(two, 'start'), SEEN_WITHIN).toBe(200)
    const tag = (
      await two.app.inject({ url: '/v1/shops/kingcup/range', headers: { authorization: `Bearer ${secret}` } })
    ).headers.etag
    const responses = await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        (index % 2 === 0 ? one : two).app.inject({
          method: 'PUT',
          url: '/v1/shops/kingcup/range',
          headers: { authorization: `Bearer ${secret}`, 'if-match': String(tag) },
          payload: { ...kingcup, shop: { ...kingcup.shop, name: `writer ${index}` } },
        }),
      ),
    )
    const codes = responses.map(({ statusCode }) => statusCode).sort()
    expect(codes.filter((code) => code === 200)).toHaveLength(1)
    // On a slow machine a writer may wait too long for a connection: refused as well, and told to come again.
    expect(codes.filter((code) => code !== 200 && code !== 412 && code !== 503)).toEqual([])
    expect(codes).toContain(412)
    const [latest] = await one.store.versions('kingcup', { limit: 1 })
    expect(latest?.version).toBe(Number(/^"(\d+)-/.exec(String(tag))?.[1]) + 1)
  })
})

describe('a database that is', () => {
  it('stopped under load fails no sizing, refuses writes, and heals by itself', async () => {
    expect(await push(one, 'before')).toBe(200)
    await expect.poll(() => nameAt(two), SEEN_WITHIN).toBe('before')
    const stops = [load(one), load(two)]
    await postgres.stop()
    expect(await push(one, 'during')).toBe(503)
    await expect.poll(() => readiness(one), HEALED_WITHIN).toBe('degraded')
    await expect.poll(() => readiness(two), HEALED_WITHIN).toBe('degraded')
    await new Promise((resolve) => setTimeout(resolve, 2000))
    expect(await push(two, 'during')).toBe(503)
    expect(await nameAt(one)).toBe('before')
    await postgres.start()
    await expect.poll(() => readiness(one), HEALED_WITHIN).toBe('ready')
    await expect.poll(() => readiness(two), HEALED_WITHIN).toBe('ready')
    expect(await push(one, 'after')).toBe(200)
    await expect.poll(() => nameAt(two), SEEN_WITHIN).toBe('after')
    for (const stop of stops) {
      const statuses = await stop()
      expect([...statuses.keys()]).toEqual([200])
      expect(statuses.get(200)).toBeGreaterThan(10)
    }
  }, 40_000)

  it('frozen, so that it neither answers nor breaks off, fails no sizing either', async () => {
    const stop = load(one)
    const thaw = await postgres.freeze()
    try {
      expect(await push(one, 'during')).toBe(503)
      await expect.poll(() => readiness(one), { timeout: 8000, interval: 50 }).toBe('degraded')
    } finally {
      thaw()
    }
    await expect.poll(() => readiness(one), HEALED_WITHIN).toBe('ready')
    await expect.poll(() => push(one, 'after'), HEALED_WITHIN).toBe(200)
    expect([...(await stop()).keys()]).toEqual([200])
  }, 40_000)

  it('cut off in the middle of a transaction fails that write alone, not the process', async () => {
    const backend = postgresBackend(url)
    const writing = backend.db.transaction().execute(async (transaction) => {
      const mine = await sql<{ pid: number }>`select pg_backend_pid() as pid`.execute(transaction)
      await administer(`select pg_terminate_backend(${mine.rows[0]?.pid})`)
      await new Promise((resolve) => setTimeout(resolve, 100))
      await sql`select 1`.execute(transaction)
    })
    const error = await writing.catch((reason: unknown) => reason)
    expect(error).toBeInstanceOf(Error)
    expect(backend.isUnavailable(error)).toBe(true)
    expect((await sql`select 1`.execute(backend.db)).rows).toHaveLength(1)
    await backend.close()
  })

  it('read-only after a failover takes no writes, says so with 503, and takes them again', async () => {
    await setReadOnly('on')
    await expect.poll(() => readiness(one), HEALED_WITHIN).toBe('ready')
    expect(await push(one, 'during')).toBe(503)
    expect(await nameAt(one)).toBe(kingcup.shop.name)
    await setReadOnly('off')
    await expect.poll(() => push(one, 'after'), HEALED_WITHIN).toBe(200)
  }, 40_000)

  it('locked by somebody, with every connection of the pool in use, answers 503 and recovers', async () => {
    const locker = new pg.Client({ connectionString: url })
    await locker.connect()
    await locker.query('begin')
    await locker.query('lock table shops in access exclusive mode')
    const stop = load(one)
    const statuses = await Promise.all(Array.from({ length: 8 }, (_, index) => push(one, `stuck ${index}`)))
    expect(new Set(statuses)).toEqual(new Set([503]))
    await locker.query('rollback')
    await locker.end()
    await expect.poll(() => push(one, 'free'), HEALED_WITHIN).toBe(200)
    expect([...(await stop()).keys()]).toEqual([200])
  }, 40_000)
})

/** Makes the database read-only, or writable again, and cuts the connections that don't know yet. */
async function setReadOnly(mode: 'on' | 'off'): Promise<void> {
  const client = new pg.Client({ connectionString: url, options: '-c default_transaction_read_only=off' })
  await client.connect()
  await client.query(`do $$ begin
    execute format('alter database %I set default_transaction_read_only = ${mode}', current_database());
    perform pg_terminate_backend(pid) from pg_stat_activity
      where datname = current_database() and pid <> pg_backend_pid(); end $$`)
  await client.end()
}
