import type { FastifyInstance } from 'fastify'
import { fitFor, sizeFor } from '../../core/sizing.ts'
import { operations } from '../../shared/contract/operations.ts'
import type { FitRequest, SizingRequest } from '../../shared/contract/plan.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import { fitAnswer, sizingAnswer } from '../replies/sizing-answer.ts'
import type { Ranges } from '../store/ranges.ts'
import { readPlan } from './plans.ts'

interface ShopParams {
  readonly shopId: string
}

/**
 * Adds POST sizing and POST fit.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerSizing(app: FastifyInstance, ranges: Ranges): void {
  app.route<{ Params: ShopParams; Body: SizingRequest }>({
    ...routeOf(operations.sizeShop),
    handler: (request, reply) => {
      const context = readPlan(ranges, request.params.shopId, request.body, reply)
      if (context === undefined) return reply
      const { range, plan, writer } = context
      return reply.send(sizingAnswer(range, sizeFor(range, plan), request.body.detail, writer))
    },
  })

  app.route<{ Params: ShopParams; Body: FitRequest }>({
    ...routeOf(operations.fitUnit),
    handler: (request, reply) => {
      const context = readPlan(ranges, request.params.shopId, request.body, reply)
      if (context === undefined) return reply
      const { range, plan, writer } = context
      const fit = fitFor(range, plan, request.body.sku)
      if (fit === undefined) {
        return sendProblem(reply, 'unknown-sku', {
          errors: [{ pointer: '/sku', message: `The range has no inverter "${request.body.sku}".` }],
        })
      }
      return reply.send(fitAnswer(range, fit, writer))
    },
  })
}
