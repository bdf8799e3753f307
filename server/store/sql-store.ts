import type { Transaction } from 'kysely'
import type { KeyScope } from '../../shared/contract/range-admin.ts'
import type { Backend } from './backend.ts'
import { sqlDemand } from './demand-sql.ts'
import { migrateToLatest } from './migrations/index.ts'
import {
  type NewVersion,
  type Store,
  type StoredKey,
  type StoredVersion,
  StoreUnavailableError,
  VERSIONS_KEPT,
  type VersionEntry,
  type VersionOrigin,
} from './store.ts'
import type { Tables } from './tables.ts'

/**
 * A store in a database that speaks SQL.
 *
 * @param backend - The database and what is particular to it
 * @returns The store
 */
export function sqlStore(backend: Backend): Store {
  const { db } = backend

  async function guarded<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work()
    } catch (error) {
      if (backend.isUnavailable(error)) throw new StoreUnavailableError(error)
      throw error
    }
  }

  const inForce = () =>
    db
      .selectFrom('shops')
      .innerJoin('range_versions', (join) =>
        join
          .onRef('range_versions.shop_id', '=', 'shops.id')
          .onRef('range_versions.version', '=', 'shops.version'),
      )

  const changing = <T>(
    counter: 'ranges' | 'keys',
    work: (trx: Transaction<Tables>) => Promise<T | undefined>,
  ) =>
    guarded(() =>
      db.transaction().execute(async (trx) => {
        const result = await work(trx)
        if (result === undefined) return undefined
        await trx
          .updateTable('revisions')
          .set((eb) => ({ value: eb('value', '+', 1) }))
          .where('name', '=', counter)
          .execute()
        await backend.announce(trx)
        return result
      }),
    )

  return {
    ...sqlDemand(db, guarded),
    kind: backend.kind,
    migrate: () => guarded(() => migrateToLatest(db as never)),
    revisions: () =>
      guarded(async () => {
        const rows = await db.selectFrom('revisions').selectAll().execute()
        const of = (name: string) => Number(rows.find((row) => row.name === name)?.value ?? 0)
        return { ranges: of('ranges'), keys: of('keys') }
      }),
    heads: () =>
      guarded(async () => (await inForce().select(ENTRY_COLUMNS).orderBy('shop_id').execute()).map(entryOf)),
    head: (shopId) =>
      guarded(async () => {
        const row = await inForce().select(ENTRY_COLUMNS).where('shops.id', '=', shopId).executeTakeFirst()
        return row === undefined ? undefined : entryOf(row)
      }),
    documents: (shopIds) =>
      guarded(async () => {
        if (shopIds.length === 0) return []
        const rows = await inForce()
          .select([...ENTRY_COLUMNS, 'range_versions.document'])
          .where('shops.id', 'in', [...shopIds])
          .execute()
        return rows.map((row) => ({ ...entryOf(row), text: row.document }))
      }),
    version: (shopId, version) =>
      guarded(async () => {
        const rows = await db
          .selectFrom('shops')
          .innerJoin('range_versions', 'range_versions.shop_id', 'shops.id')
          .select([...ENTRY_COLUMNS, 'range_versions.document'])
          .where('shops.id', '=', shopId)
          .where((eb) =>
            version === undefined
              ? eb('range_versions.version', '=', eb.ref('shops.version'))
              : eb('range_versions.version', '=', version),
          )
          .execute()
        const row = rows[0]
        return row === undefined ? undefined : { ...entryOf(row), text: row.document }
      }),
    versions: (shopId, { limit, before }) =>
      guarded(async () => {
        let query = db.selectFrom('range_versions').select(ENTRY_COLUMNS).where('shop_id', '=', shopId)
        if (before !== undefined) query = query.where('version', '<', before)
        return (await query.orderBy('version', 'desc').limit(limit).execute()).map(entryOf)
      }),
    createShop: async (version) => {
      const created = await changing('ranges', async (trx) => {
        const { numInsertedOrUpdatedRows } = await trx
          .insertInto('shops')
          .values({ id: version.shopId, version: 1, created_at: version.createdAt })
          .onConflict((conflict) => conflict.column('id').doNothing())
          .executeTakeFirst()
        if (numInsertedOrUpdatedRows !== 1n) return undefined
        await insertVersion(trx, version, 1)
        return true
      })
      return created ?? false
    },
    writeRange: async (version, expectedVersion) => {
      const next = expectedVersion + 1
      const stored = await changing('ranges', async (trx): Promise<StoredVersion | undefined> => {
        // The update comes first: it takes the row's lock, so of two writers with one expectation one finds 0 rows.
        const { numUpdatedRows } = await trx
          .updateTable('shops')
          .set({ version: next })
          .where('id', '=', version.shopId)
          .where('version', '=', expectedVersion)
          .executeTakeFirst()
        if (numUpdatedRows !== 1n) return undefined
        await insertVersion(trx, version, next)
        await trx
          .deleteFrom('range_versions')
          .where('shop_id', '=', version.shopId)
          .where('version', '<=', next - VERSIONS_KEPT)
          .execute()
        return { ...version, version: next }
      })
      if (stored !== undefined) return { ok: true, stored }
      const shop = await guarded(() =>
        db.selectFrom('shops').select('id').where('id', '=', version.shopId).executeTakeFirst(),
      )
      return { ok: false, reason: shop === undefined ? 'unknown-shop' : 'stale' }
    },
    keys: () => guarded(async () => (await db.selectFrom('keys').selectAll().execute()).map(keyOf)),
    addKey: async (key) => {
      await changing('keys', async (trx) => {
        await trx.insertInto('keys').values(rowOf(key)).execute()
        return true
      })
    },
    revokeKey: async (keyId, at) => {
      const revoked = await changing('keys', async (trx) => {
        const { numUpdatedRows } = await trx
          .updateTable('keys')
          .set({ revoked_at: at })
          .where('id', '=', keyId)
          .where('revoked_at', 'is', null)
          .executeTakeFirst()
        return numUpdatedRows === 1n ? true : undefined
      })
      return revoked ?? false
    },
    noteKeyUse: (uses) =>
      guarded(async () => {
        for (const [keyId, at] of uses) {
          await db.updateTable('keys').set({ last_used_at: at }).where('id', '=', keyId).execute()
        }
      }),
    onChange: (listener) => backend.listen(listener),
    close: () => backend.close(),
  }
}

const ENTRY_COLUMNS = [
  'range_versions.shop_id',
  'range_versions.version',
  'range_versions.digest',
  'range_versions.author',
  'range_versions.created_at',
  'range_versions.origin',
  'range_versions.restored_from',
] as const

type EntryRow = Omit<Tables['range_versions'], 'document'>

function entryOf(row: EntryRow): VersionEntry {
  return {
    shopId: row.shop_id,
    version: row.version,
    digest: row.digest,
    author: row.author,
    createdAt: row.created_at,
    origin: row.origin as VersionOrigin,
    restoredFrom: row.restored_from,
  }
}

async function insertVersion(trx: Transaction<Tables>, version: NewVersion, number: number): Promise<void> {
  await trx
    .insertInto('range_versions')
    .values({
      shop_id: version.shopId,
      version: number,
      document: version.text,
      digest: version.digest,
      author: version.author,
      created_at: version.createdAt,
      origin: version.origin,
      restored_from: version.restoredFrom,
    })
    .execute()
}

function keyOf(row: Tables['keys']): StoredKey {
  return {
    id: row.id,
    shopId: row.shop_id,
    name: row.name,
    secretHash: row.secret_hash,
    scopes: row.scopes.split(' ') as KeyScope[],
    createdAt: row.created_at,
    expiresAt: row.expires_at,
    revokedAt: row.revoked_at,
    lastUsedAt: row.last_used_at,
  }
}

function rowOf(key: StoredKey): Tables['keys'] {
  return {
    id: key.id,
    shop_id: key.shopId,
    name: key.name,
    secret_hash: key.secretHash,
    scopes: key.scopes.join(' '),
    created_at: key.createdAt,
    expires_at: key.expiresAt,
    revoked_at: key.revokedAt,
    last_used_at: key.lastUsedAt,
  }
}
