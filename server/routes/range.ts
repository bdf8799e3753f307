import type { FastifyInstance } from 'fastify'
import { operations } from '../../shared/contract/operations.ts'
import { type PartList, RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { DraftBody } from '../range-files/draft.ts'
import { writeCsvList } from '../range-files/write-csv-list.ts'
import { etagOf } from '../store/versions.ts'
import { mayReplace, sendTagged } from './conditional.ts'
import { readDraftOr, registerDraftBodies } from './range-draft.ts'
import { putInForce, type RangeServices } from './range-writing.ts'

interface RangeRoute {
  readonly Params: { readonly shopId: string }
  readonly Querystring: { readonly part?: PartList; readonly dryRun?: 'true' | 'false' }
}

/**
 * Adds GET and PUT range.
 *
 * @param app - The service
 * @param services - The store and the memory
 */
export async function registerRange(app: FastifyInstance, services: RangeServices): Promise<void> {
  app.route<RangeRoute>({
    ...routeOf(operations.readRange),
    handler: (request, reply) => {
      const held = services.live.held(request.params.shopId)
      if (held === undefined) return sendProblem(reply, 'unknown-shop')
      const { document } = held.range
      const { part } = request.query
      const etag = etagOf(held.entry)
      return part === undefined
        ? sendTagged(request, reply, { etag, type: JSON_TYPE, text: JSON.stringify(document) })
        : sendTagged(request, reply, { etag, type: CSV_TYPE, text: writeCsvList(document, part) })
    },
  })
  // A scope of its own: only here is a body other than JSON, or one this large, read at all.
  await app.register(async (scope) => {
    registerDraftBodies(scope)
    scope.route<RangeRoute & { Body: DraftBody | undefined }>({
      ...routeOf(operations.writeRange),
      bodyLimit: RANGE_BODY_LIMIT_BYTES,
      handler: async (request, reply) => {
        const { shopId } = request.params
        const { part } = request.query
        const dryRun = request.query.dryRun === 'true'
        const inForce = await services.store.version(shopId)
        if (inForce === undefined) return sendProblem(reply, 'unknown-shop')
        const { store } = services
        if (!(await mayReplace(request, reply, { store, inForce, required: !dryRun }))) return reply
        const draft = { shopId, body: request.body, part, base: inForce.text }
        const range = await readDraftOr(services.live, reply, draft)
        if (range === undefined) return reply
        const making = { author: request.secretKey?.name ?? 'unknown', origin: 'written' } as const
        return putInForce(services, reply, { inForce, range, making, dryRun })
      },
    })
  })
}

const JSON_TYPE = 'application/json; charset=utf-8'
const CSV_TYPE = 'text/csv; charset=utf-8; header=present'
