import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { FastifyInstance } from 'fastify'
import type { RangeDocument } from '../../core/range/range-document.ts'
import { buildApp } from '../../server/app.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { LOG_SERIALIZERS } from '../../server/plugins/request-log.ts'
import { makeSecret } from '../../server/store/key-secret.ts'
import { openLive } from '../../server/store/live.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { newVersion } from '../../server/store/versions.ts'
import type { KeyScope } from '../../shared/contract/range-admin.ts'
import { readRange } from '../../shared/range-reading.ts'
import { storedKey } from '../support/staff-service.ts'

/** The shop that requests may write to; the demo shops beside it must come to no harm. */
export const FUZZED_SHOP = 'fuzzed'
/** Shops that no key of a run may write to. */
export const BYSTANDERS = ['kingcup', 'bentcreek'] as const

/** Keys that requests are made with. */
export interface FuzzKeys {
  /** All scopes of {@link FUZZED_SHOP}. */
  readonly whole: string
  /** Of {@link FUZZED_SHOP}, but only to read. */
  readonly reading: string
  /** To read, of another shop. */
  readonly foreign: string
}

/** A service on a store of its own, as shops have it, without quotas. */
export interface FuzzService {
  readonly app: FastifyInstance
  readonly keys: FuzzKeys
  /** Log lines at error level, and lines that are no JSON object. */
  readonly loggedErrors: string[]
  /** Puts a range of {@link FUZZED_SHOP} in force; rejects where it is refused. */
  putInForce(range: RangeDocument): Promise<void>
  close(): Promise<void>
}

/**
 * Opens a service with both demo shops and a third one, a copy of the first.
 *
 * @returns The service; it doesn't listen
 */
export async function openFuzzService(): Promise<FuzzService> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-fuzz-'))
  const store = await openStore(`sqlite:${join(folder, 'shops.db')}`, 5)
  await seedDemoShops(store)
  const reading = readRange({ ...kingcup, shop: { ...kingcup.shop, id: FUZZED_SHOP } })
  if (!reading.ok) throw new Error('the demo range is faulty')
  await store.createShop(newVersion(reading.range, { author: 'demo', origin: 'written' }))
  const issue = async (shopId: string, scopes: readonly KeyScope[]) => {
    const secret = makeSecret()
    await store.addKey(storedKey(secret, { shopId, scopes }))
    return secret
  }
  const keys = {
    whole: await issue(FUZZED_SHOP, ['read', 'range', 'demand']),
    reading: await issue(FUZZED_SHOP, ['read']),
    foreign: await issue('kingcup', ['read']),
  }
  const loggedErrors: string[] = []
  const live = await openLive({
    store,
    log: (level, message) => {
      if (level === 'error') loggedErrors.push(message)
    },
  })
  const app = await buildApp({
    ranges: live.ranges,
    services: { store, live },
    settings: { metricsPassword: undefined },
    logger: {
      level: 'info',
      serializers: LOG_SERIALIZERS,
      stream: {
        write: (line: string) => {
          const { level } = JSON.parse(line) as { readonly level?: number }
          if (level === undefined || level >= 50) loggedErrors.push(line)
        },
      },
    },
  })
  return {
    app,
    keys,
    loggedErrors,
    putInForce: async (range) => {
      const reply = await app.inject({
        method: 'PUT',
        url: `/v1/shops/${FUZZED_SHOP}/range`,
        headers: { authorization: `Bearer ${keys.whole}`, 'if-match': '*' },
        payload: range,
      })
      if (reply.statusCode !== 200) throw new Error(`A sound range is refused: ${reply.body}`)
    },
    close: async () => {
      await app.close()
      await live.close()
      await store.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
