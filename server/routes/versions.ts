import type { FastifyInstance } from 'fastify'
import { operations } from '../../shared/contract/operations.ts'
import type { RangeVersions } from '../../shared/contract/range-admin.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import { etagOf } from '../store/versions.ts'
import { mayReplace, sendTagged } from './conditional.ts'
import { readDraftOr } from './range-draft.ts'
import { putInForce, type RangeServices } from './range-writing.ts'

interface VersionRoute {
  readonly Params: { readonly shopId: string; readonly version: string }
}

/** Versions on a page where the caller names no number. */
const DEFAULT_LIMIT = 50

/**
 * Adds the list of versions, one version, and its restoring.
 *
 * @param app - The service
 * @param services - The store and the memory
 */
export function registerVersions(app: FastifyInstance, services: RangeServices): void {
  const { store, live } = services

  app.route<{ Params: { shopId: string }; Querystring: { limit?: string; before?: string } }>({
    ...routeOf(operations.listRangeVersions),
    handler: async (request, reply) => {
      const { shopId } = request.params
      const limit = Number(request.query.limit ?? DEFAULT_LIMIT)
      const before = request.query.before === undefined ? undefined : Number(request.query.before)
      const inForce = await store.head(shopId)
      if (inForce === undefined) return sendProblem(reply, 'unknown-shop')
      const found = await store.versions(shopId, { limit: limit + 1, before })
      const page = found.slice(0, limit)
      const answer: RangeVersions = {
        versions: page.map(({ version, author, createdAt, origin, restoredFrom }) => ({
          version,
          author,
          createdAt,
          origin,
          restoredFrom,
          inForce: version === inForce.version,
        })),
        nextBefore: found.length > limit ? (page.at(-1)?.version ?? null) : null,
      }
      return reply.header('cache-control', 'no-store').send(answer)
    },
  })

  app.route<VersionRoute>({
    ...routeOf(operations.readRangeVersion),
    handler: async (request, reply) => {
      const version = versionNumber(request.params.version)
      const stored = version === undefined ? undefined : await store.version(request.params.shopId, version)
      if (stored === undefined) return sendProblem(reply, 'unknown-version')
      const type = 'application/json; charset=utf-8'
      return sendTagged(request, reply, { etag: etagOf(stored), type, text: stored.text })
    },
  })

  app.route<VersionRoute>({
    ...routeOf(operations.restoreRangeVersion),
    handler: async (request, reply) => {
      const { shopId } = request.params
      const version = versionNumber(request.params.version)
      const inForce = await store.version(shopId)
      if (inForce === undefined) return sendProblem(reply, 'unknown-shop')
      const old = version === undefined ? undefined : await store.version(shopId, version)
      if (old === undefined) return sendProblem(reply, 'unknown-version')
      if (!(await mayReplace(request, reply, { store, inForce, required: true }))) return reply
      // An old version may break a contract that has grown stricter since.
      const body = { kind: 'json', bytes: Buffer.from(old.text), contentType: 'application/json' } as const
      const range = await readDraftOr(live, reply, { shopId, body, part: undefined, base: inForce.text })
      if (range === undefined) return reply
      return putInForce(services, reply, {
        inForce,
        range,
        making: {
          author: request.secretKey?.name ?? 'unknown',
          origin: 'restored',
          restoredFrom: old.version,
        },
        dryRun: false,
      })
    },
  })
}

/** A version number as it stands in an address; undefined where it can't be one. */
function versionNumber(text: string): number | undefined {
  return /^[1-9]\d{0,8}$/.test(text) ? Number(text) : undefined
}
