import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { FastifyInstance } from 'fastify'
import { buildApp } from '../../server/app.ts'
import { LOG_SERIALIZERS } from '../../server/plugins/request-log.ts'
import type { RangeReader } from '../../server/range-files/range-reader.ts'
import type { Settings } from '../../server/settings.ts'
import { hashOf, makeKeyId, makeSecret } from '../../server/store/key-secret.ts'
import { type Live, openLive } from '../../server/store/live.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import type { Store, StoredKey } from '../../server/store/store.ts'
import type { KeyScope } from '../../shared/contract/range-admin.ts'
import { checkedReplies } from './checked-replies.ts'

/** A service with a store, as it runs for shops. */
export interface StaffService {
  readonly app: FastifyInstance
  readonly store: Store
  readonly live: Live
  /** Lines that the service has logged. */
  readonly logged: string[]
  /** Issues a key and returns its secret. */
  issue(shopId: string, scopes: readonly KeyScope[], change?: Partial<StoredKey>): Promise<string>
  close(): Promise<void>
}

/**
 * Opens a service on a store with the demo shops in it.
 *
 * @param url - Address of the store; a SQLite file in a temporary folder where left out
 * @param settings - How it guards itself, where that differs from a service that nobody has configured
 * @param reader - What reads ranges, where that is not the service's own
 * @returns The service; it doesn't listen
 */
export async function openStaffService(
  url?: string,
  settings: Partial<Settings> = {},
  reader?: RangeReader,
): Promise<StaffService> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-store-'))
  const store = await openStore(url ?? `sqlite:${join(folder, 'shops.db')}`, 5)
  await seedDemoShops(store)
  const logged: string[] = []
  const live = await openLive({
    store,
    log: (level, message) => logged.push(`${level} ${message}`),
    ...(reader && { reader }),
  })
  const app = checkedReplies(
    await buildApp({
      ranges: live.ranges,
      services: { store, live },
      settings,
      logger: {
        level: 'info',
        serializers: LOG_SERIALIZERS,
        stream: { write: (line: string) => void logged.push(line) },
      },
    }),
  )
  return {
    app,
    store,
    live,
    logged,
    issue: async (shopId, scopes, change) => {
      const secret = makeSecret()
      await store.addKey(storedKey(secret, { shopId, scopes, ...change }))
      await live.refresh()
      return secret
    },
    close: async () => {
      await app.close()
      await live.close()
      await store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/**
 * A key as the store keeps it.
 *
 * @param secret - The key itself
 * @param change - What differs from a live key of `kingcup` that may read
 * @returns The key to be stored
 */
export function storedKey(secret: string, change: Partial<StoredKey>): StoredKey {
  return {
    id: makeKeyId(),
    shopId: 'kingcup',
    name: 'Front desk',
    secretHash: hashOf(secret),
    scopes: ['read'],
    createdAt: new Date().toISOString(),
    expiresAt: null,
    revokedAt: null,
    lastUsedAt: null,
    ...change,
  }
}
