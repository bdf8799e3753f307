import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { CompiledQuery, sql } from 'kysely'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { hashOf, makeSecret } from '../../server/store/key-secret.ts'
import { openLive } from '../../server/store/live.ts'
import { openStore } from '../../server/store/open.ts'
import { postgresBackend } from '../../server/store/postgres.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { sqlStore } from '../../server/store/sql-store.ts'
import { isSqliteUnavailable, sqliteBackend } from '../../server/store/sqlite.ts'
import { openConnection } from '../../server/store/sqlite-connection.ts'
import {
  type NewVersion,
  type Store,
  StoreUnavailableError,
  VERSIONS_KEPT,
} from '../../server/store/store.ts'
import { newVersion } from '../../server/store/versions.ts'
import { readRange } from '../../shared/range-reading.ts'
import { startPostgres, type TestPostgres } from '../support/postgres.ts'
import { storedKey } from '../support/staff-service.ts'

let postgres: TestPostgres
const folder = mkdtempSync(join(tmpdir(), 'tallywatt-store-'))
let files = 0

beforeAll(async () => {
  postgres = await startPostgres()
}, 60_000)

afterAll(async () => {
  await postgres.close()
  rmSync(folder, { recursive: true, force: true })
})

function newFile(): string {
  files += 1
  return join(folder, `shops-${files}.db`)
}

function version(name: string, change: Partial<NewVersion> = {}): NewVersion {
  const reading = readRange({ ...kingcup, shop: { ...kingcup.shop, name } })
  if (!reading.ok) throw new Error('the demo range is faulty')
  return { ...newVersion(reading.range, { author: 'tests', origin: 'written' }), ...change }
}

describe.each(['sqlite', 'postgres'] as const)('a store in %s', (kind) => {
  let url: string
  let store: Store

  beforeEach(async () => {
    url = kind === 'sqlite' ? `sqlite:${newFile()}` : await postgres.newDatabase()
    store = await openStore(url, 5)
  })
  afterEach(() => store.close())

  it('says which database it is', () => {
    expect(store.kind).toBe(kind)
  })

  it('gives a created shop version 1, byte for byte, and creates no shop twice', async () => {
    const first = version('Kingcup')
    expect(await store.createShop(first)).toBe(true)
    expect(await store.createShop(version('Another'))).toBe(false)
    expect(await store.version('kingcup')).toEqual({ ...first, version: 1 })
    expect(await store.version('kingcup', 2)).toBeUndefined()
    expect(await store.version('nowhere')).toBeUndefined()
  })

  it('puts a version in force only over the one that its writer has seen', async () => {
    await store.createShop(version('one'))
    const written = await store.writeRange(version('two'), 1)
    expect(written).toMatchObject({ ok: true, stored: { version: 2, author: 'tests' } })
    expect(await store.writeRange(version('three'), 1)).toEqual({ ok: false, reason: 'stale' })
    expect(await store.writeRange(version('x', { shopId: 'nowhere' }), 1)).toEqual({
      ok: false,
      reason: 'unknown-shop',
    })
    expect((await store.version('kingcup'))?.version).toBe(2)
  })

  it('lets exactly one of 20 writers with one expectation through', async () => {
    await store.createShop(version('one'))
    const outcomes = await Promise.all(
      Array.from({ length: 20 }, (_, index) => store.writeRange(version(`writer ${index}`), 1)),
    )
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1)
    expect(await store.versions('kingcup', { limit: 10 })).toHaveLength(2)
  })

  it('lists versions newest first, a page at a time', async () => {
    await store.createShop(version('1'))
    for (let number = 1; number < 5; number += 1) await store.writeRange(version(`${number + 1}`), number)
    const numbers = async (page: { limit: number; before?: number }) =>
      (await store.versions('kingcup', page)).map((entry) => entry.version)
    expect(await numbers({ limit: 2 })).toEqual([5, 4])
    expect(await numbers({ limit: 2, before: 4 })).toEqual([3, 2])
    expect(await numbers({ limit: 2, before: 2 })).toEqual([1])
  })

  it(`keeps the newest ${VERSIONS_KEPT} versions`, async () => {
    await store.createShop(version('1', { text: '{}' }))
    for (let number = 1; number <= VERSIONS_KEPT; number += 1) {
      await store.writeRange(version('x', { text: `{"n":${number}}` }), number)
    }
    const entries = await store.versions('kingcup', { limit: 1000 })
    expect(entries).toHaveLength(VERSIONS_KEPT)
    expect(entries.at(-1)?.version).toBe(2)
  }, 60_000)

  it('counts every change of ranges and keys, and nothing else', async () => {
    const start = await store.revisions()
    await store.createShop(version('1'))
    await store.createShop(version('1'))
    await store.writeRange(version('2'), 1)
    await store.writeRange(version('3'), 1)
    const key = storedKey(makeSecret(), {})
    await store.addKey(key)
    await store.noteKeyUse(new Map([[key.id, '2026-01-01T00:00:00.000Z']]))
    expect(await store.revokeKey(key.id, '2026-01-02T00:00:00.000Z')).toBe(true)
    expect(await store.revokeKey(key.id, '2026-01-03T00:00:00.000Z')).toBe(false)
    expect(await store.revisions()).toEqual({ ranges: start.ranges + 2, keys: start.keys + 2 })
    expect(await store.keys()).toEqual([
      { ...key, lastUsedAt: '2026-01-01T00:00:00.000Z', revokedAt: '2026-01-02T00:00:00.000Z' },
    ])
  })

  it('holds texts with quotes, line ends, NUL escapes and any script as they are', async () => {
    const text = JSON.stringify({ name: 'O\'Neill; drop table "shops" --\n\u0000 雪 \ud800' })
    await store.createShop(version('1', { text, author: "'; delete from keys; --" }))
    expect((await store.version('kingcup'))?.text).toBe(text)
    expect((await store.heads())[0]?.author).toBe("'; delete from keys; --")
  })

  it('keeps what it holds when it is opened again', async () => {
    await store.createShop(version('1'))
    const again = await openStore(url, 0)
    expect(await again.heads()).toEqual(await store.heads())
    await again.close()
  })

  it('lets an unchanged demo shop follow a new release, and leaves an edited one alone', async () => {
    const { shop } = kingcup
    await store.createShop(version('an old release', { origin: 'seed' }))
    await seedDemoShops(store)
    expect(await store.version('kingcup')).toMatchObject({ version: 2, origin: 'seed' })
    await store.writeRange(version('edited'), 2)
    await seedDemoShops(store)
    const inForce = await store.version('kingcup')
    expect(inForce?.version).toBe(3)
    expect(JSON.parse(inForce?.text ?? '{}').shop).toEqual({ ...shop, name: 'edited' })
  })

  it('seeds nothing into a store that has a shop of its own', async () => {
    await store.createShop(version('1', { shopId: 'own-shop' }))
    await seedDemoShops(store)
    expect((await store.heads()).map(({ shopId }) => shopId)).toEqual(['own-shop'])
  })

  it('contains no usable key, whoever gets hold of all of it', async () => {
    await store.createShop(version('1'))
    const secret = makeSecret()
    await store.addKey(storedKey(secret, {}))
    const everything = JSON.stringify([await store.keys(), await store.version('kingcup')])
    expect(everything).not.toContain(secret.slice(-39))
    expect(everything).toContain(hashOf(secret))
    if (kind === 'sqlite') {
      const file = url.slice('sqlite:'.length)
      const bytes = Buffer.concat([readFileSync(file), readFileSync(`${file}-wal`)])
      expect(bytes.includes(secret)).toBe(false)
    }
  })

  it('keeps the last good range in memory when the newest one in the store is garbage', async () => {
    await store.createShop(version('good'))
    const lines: string[] = []
    const live = await openLive({ store, log: (_level, message) => lines.push(message) })
    for (const [index, text] of ['{"shop":', '[]', 'null', '{"shop":{},"inverters":[]}'].entries()) {
      await store.writeRange(version('x', { text, digest: text }), index + 1)
      await live.refresh()
      expect(live.ranges.current('kingcup')?.document.shop.name).toBe('good')
      expect(live.state().faulty.get('kingcup')).toContain(`version ${index + 2}`)
    }
    expect(lines).toHaveLength(4)
    await store.writeRange(version('good again'), 5)
    await live.refresh()
    expect(live.ranges.current('kingcup')?.document.shop.name).toBe('good again')
    expect(live.state().faulty.size).toBe(0)
    await live.close()
  })

  it('serves what a backup holds once it stands in the place of the store', async () => {
    await store.createShop(version('old'))
    const backup = {
      heads: await store.heads(),
      inForce: await store.version('kingcup'),
      at: await store.revisions(),
    }
    await store.writeRange(version('new'), 1)
    const live = await openLive({ store })
    const restored: Partial<Store> = {
      revisions: async () => backup.at,
      heads: async () => backup.heads,
      version: async () => backup.inForce,
    }
    Object.assign(store, restored)
    await live.refresh()
    expect(live.ranges.current('kingcup')).toMatchObject({ version: 1, document: { shop: { name: 'old' } } })
    await live.close()
  })

  it('refuses a store that a newer release has migrated, in plain words', async () => {
    const backend = kind === 'sqlite' ? sqliteBackend(url.slice('sqlite:'.length)) : postgresBackend(url)
    await sql`insert into kysely_migration (name, timestamp) values ('999-of-tomorrow', '2030-01-01')`.execute(
      backend.db,
    )
    await backend.close()
    await expect(openStore(url, 0)).rejects.toThrow('A newer release has migrated this store.')
  })

  it('prepares a range once for each version, however often it is looked for', async () => {
    await store.createShop(version('1'))
    const live = await openLive({ store })
    const before = live.ranges.current('kingcup')
    await store.addKey(storedKey(makeSecret(), {}))
    for (let times = 0; times < 5; times += 1) await live.refresh()
    expect(live.ranges.current('kingcup')).toBe(before)
    await live.close()
  })
})

describe('two instances on one PostgreSQL', () => {
  it('comes up with the demo shops once, from two instances that start at the same moment', async () => {
    const fresh = await postgres.newDatabase()
    const instances = await Promise.all([openStore(fresh, 5), openStore(fresh, 5)])
    await Promise.all(instances.map(seedDemoShops))
    const heads = (await instances[0].heads()).map((head) => [head.shopId, head.version, head.author])
    expect(heads).toEqual([
      ['bentcreek', 1, 'demo'],
      ['kingcup', 1, 'demo'],
    ])
    await Promise.all(instances.map((instance) => instance.close()))
  })
})

describe('a SQLite file that can not be used', () => {
  it('commits with synchronous = FULL in WAL mode', async () => {
    const file = newFile()
    const store = await openStore(`sqlite:${file}`, 0)
    const database = new Database(file, { readonly: true })
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal')
    database.close()
    await store.close()
    expect(readFileSync(new URL('../../server/store/sqlite-thread.ts', import.meta.url), 'utf8')).toContain(
      "pragma('synchronous = FULL')",
    )
  })

  it('is unavailable, not a crash, while another process holds its lock; and works afterwards', async () => {
    const file = newFile()
    const store = await openStore(`sqlite:${file}`, 0)
    await store.createShop(version('1'))
    const other = new Database(file)
    other.exec('begin immediate')
    await expect(store.writeRange(version('2'), 1)).rejects.toBeInstanceOf(StoreUnavailableError)
    expect((await store.version('kingcup'))?.version).toBe(1)
    other.exec('rollback')
    other.close()
    expect(await store.writeRange(version('2'), 1)).toMatchObject({ ok: true })
    await store.close()
  })

  it('keeps nobody waiting while it waits for the lock of another process', async () => {
    const file = newFile()
    const store = await openStore(`sqlite:${file}`, 0)
    await store.createShop(version('1'))
    const other = new Database(file)
    other.exec('begin immediate')
    const order: string[] = []
    const write = store.writeRange(version('2'), 1).catch(() => order.push('write given up'))
    await new Promise((resolve) => setTimeout(resolve, 20))
    order.push('shopper answered')
    await write
    expect(order).toEqual(['shopper answered', 'write given up'])
    other.close()
    await store.close()
  })

  it('says that it is unavailable once its thread has ended', async () => {
    const connection = await openConnection(newFile())
    const select = CompiledQuery.raw('select 1 as one')
    expect(await connection.executeQuery(select)).toEqual({ rows: [{ one: 1 }] })
    await connection.close()
    const error = await connection.executeQuery(select).catch((reason: unknown) => reason)
    expect(isSqliteUnavailable(error)).toBe(true)
  })

  it('is unavailable when the disk is full, keeps its range, and recovers when there is room', async () => {
    const file = newFile()
    const store = await openStore(`sqlite:${file}`, 0)
    await store.createShop(version('1'))
    const limiter = new Database(file)
    const pages = Number(limiter.pragma('page_count', { simple: true }))
    limiter.close()
    const backend = sqliteBackend(file)
    await sql.raw(`pragma max_page_count = ${pages}`).execute(backend.db)
    const full = sqlStore(backend)
    await expect(full.writeRange(version('2'), 1)).rejects.toBeInstanceOf(StoreUnavailableError)
    expect((await full.version('kingcup'))?.version).toBe(1)
    await sql.raw('pragma max_page_count = 1000000').execute(backend.db)
    expect(await full.writeRange(version('2'), 1)).toMatchObject({ ok: true })
    await full.close()
    await store.close()
  })

  it('names a file that is no database as unavailable', async () => {
    const file = newFile()
    writeFileSync(file, 'this is no database, and it is long enough to be looked at as one'.repeat(40))
    await expect(openStore(`sqlite:${file}`, 0)).rejects.toBeInstanceOf(StoreUnavailableError)
  })

  it('names a folder that it may not write to', async () => {
    const file = join(folder, 'not-a-folder')
    writeFileSync(file, '')
    chmodSync(file, 0o444)
    await expect(openStore(`sqlite:${join(file, 'shops.db')}`, 0)).rejects.toThrow(/ENOTDIR|EEXIST/)
  })
})
