import type { FastifyInstance } from 'fastify'
import { BUILT_IN_APPLIANCES, compareCoverage, prepareRange } from '../../core/index.ts'
import { operations } from '../../shared/contract/operations.ts'
import { type PartList, RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { coverages } from '../coverage/coverages.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { DraftBody } from '../range-files/draft.ts'
import { coveragePreview, coverageReply } from '../replies/coverage-answer.ts'
import type { Live } from '../store/live.ts'
import { etagOf } from '../store/versions.ts'
import { sendTagged } from './conditional.ts'
import { readDraftOr, registerDraftBodies } from './range-draft.ts'

type Stock = 'in-stock' | 'all'

interface CoverageRoute {
  readonly Params: { readonly shopId: string }
  readonly Querystring: { readonly stock?: Stock }
}

interface PreviewRoute {
  readonly Params: { readonly shopId: string }
  readonly Querystring: { readonly stock?: Stock; readonly part?: PartList }
  readonly Body: DraftBody | undefined
}

/**
 * Adds GET coverage and POST coverage/preview.
 *
 * @param app - The service
 * @param live - Ranges in memory with their versions
 */
export async function registerCoverage(app: FastifyInstance, live: Live): Promise<void> {
  const known = coverages()

  app.route<CoverageRoute>({
    ...routeOf(operations.readCoverage),
    handler: async (request, reply) => {
      const held = live.held(request.params.shopId)
      if (held === undefined) return sendProblem(reply, 'unknown-shop')
      const { stock = 'in-stock' } = request.query
      const coverage = await known.of(held.range, optionsOf(stock))
      const text = JSON.stringify(coverageReply(held.range, coverage, stock))
      const etag = etagOf(held.entry).replace(/"$/, `-${stock}"`)
      return sendTagged(request, reply, { etag, type: 'application/json; charset=utf-8', text })
    },
  })

  // A scope of its own, as for writing a range: only here is CSV, or a body this large, read.
  await app.register(async (scope) => {
    registerDraftBodies(scope)
    scope.route<PreviewRoute>({
      ...routeOf(operations.previewCoverage),
      bodyLimit: RANGE_BODY_LIMIT_BYTES,
      handler: async (request, reply) => {
        const { shopId } = request.params
        const held = live.held(shopId)
        if (held === undefined) return sendProblem(reply, 'unknown-shop')
        const { stock = 'in-stock', part } = request.query
        const base = JSON.stringify(held.range.document)
        const read = await readDraftOr(live, reply, { shopId, body: request.body, part, base })
        if (read === undefined) return reply
        const draft = prepareRange(JSON.parse(read.text), BUILT_IN_APPLIANCES, held.range.version)
        const before = await known.of(held.range, optionsOf(stock))
        const after = await known.ofDraft(draft, optionsOf(stock))
        reply.header('cache-control', 'no-store')
        return reply.send(coveragePreview(held.range, compareCoverage(before, after), stock))
      },
    })
  })
}

function optionsOf(stock: Stock): { readonly inStockOnly: boolean } {
  return { inStockOnly: stock === 'in-stock' }
}
