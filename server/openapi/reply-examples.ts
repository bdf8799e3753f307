import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { FastifyInstance } from 'fastify'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { KEY_SCOPES } from '../../shared/contract/range-admin.ts'
import { buildApp } from '../app.ts'
import { hashOf, makeKeyId, makeSecret } from '../store/key-secret.ts'
import { openLive } from '../store/live.ts'
import { openStore } from '../store/open.ts'
import { seedDemoShops } from '../store/seed.ts'

/** Entries of a list or record that an example keeps; more would hide its shape. */
const KEPT = 3
/** Replies longer than this are cut to {@link KEPT}. [characters of JSON] */
const LONG = 8000
/** Stands for every moment, so that examples are the same whenever they are made. */
const MOMENT = '2026-01-05T09:00:00.000Z'

/**
 * Asks a service of its own, with the demo shops, for a reply to the example of each operation.
 *
 * @returns Replies by operation id
 */
export async function replyExamples(): Promise<Readonly<Record<string, unknown>>> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-examples-'))
  const store = await openStore(`sqlite:${join(folder, 'shops.db')}`, 5)
  await seedDemoShops(store)
  const secret = makeSecret()
  await store.addKey({
    id: makeKeyId(),
    shopId: 'kingcup',
    name: 'Front desk',
    secretHash: hashOf(secret),
    scopes: KEY_SCOPES,
    createdAt: MOMENT,
    expiresAt: null,
    revokedAt: null,
    lastUsedAt: null,
  })
  const live = await openLive({ store })
  const app = await buildApp({ ranges: live.ranges, services: { store, live } })
  try {
    const examples: Record<string, unknown> = {}
    for (const operation of Object.values<Operation>(operations)) {
      examples[operation.id] = FIXED[operation.id] ?? (await ask(app, operation, secret))
    }
    return examples
  } finally {
    await app.close()
    await live.close()
    await store.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Replies that differ from moment to moment, or are the document itself. */
const FIXED: Readonly<Record<string, unknown>> = {
  readMetrics: [
    '# HELP http_server_active_requests Requests in flight.',
    '# TYPE http_server_active_requests gauge',
    'http_server_active_requests 1',
    '',
  ].join('\n'),
  readContract: { openapi: '3.1.0' },
}

async function ask(app: FastifyInstance, operation: Operation, secret: string): Promise<unknown> {
  const path = operation.path.replace('{shopId}', 'kingcup').replace('{version}', '1')
  const isWrite = operation.headers?.some(({ name }) => name === 'If-Match') === true
  const reply = await app.inject({
    method: operation.method,
    url: `${path}${operation.id === 'writeRange' ? '?dryRun=true' : ''}`,
    headers: {
      ...(operation.scope === undefined ? {} : { authorization: `Bearer ${secret}` }),
      ...(isWrite ? { 'if-match': '*' } : {}),
    },
    ...(operation.body === undefined ? {} : { payload: operation.body.example as object }),
  })
  if (reply.statusCode !== 200) throw new Error(`${operation.id} answered ${reply.body}`)
  const long = reply.body.length > LONG
  return settled(reply.json(), long)
}

/** A reply with every moment the same, and shortened where it is long. */
function settled(value: unknown, long: boolean): unknown {
  if (Array.isArray(value)) return value.slice(0, long ? KEPT : undefined).map((part) => settled(part, long))
  if (typeof value === 'string') return MOMENT_PATTERN.test(value) ? MOMENT : value
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).map(([key, part]) => {
    if (key === 'storeAgeS') return [key, 0] as const
    const isRecord = key === 'sources' && long
    const kept = isRecord ? Object.fromEntries(Object.entries(part).slice(0, KEPT)) : part
    return [key, settled(kept, long)] as const
  })
  return Object.fromEntries(entries)
}

const MOMENT_PATTERN = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/
