import type { FastifyInstance } from 'fastify'
import { runtimeFor } from '../../core/index.ts'
import { operations } from '../../shared/contract/operations.ts'
import type { RuntimeRequest } from '../../shared/contract/plan.ts'
import { routeOf } from '../plugins/contract.ts'
import { runtimeAnswer } from '../replies/battery-parts.ts'
import type { Ranges } from '../store/ranges.ts'
import { findShop, sendFaults } from './plans.ts'

/**
 * Adds POST runtime.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerRuntime(app: FastifyInstance, ranges: Ranges): void {
  app.route<{ Params: { shopId: string }; Body: RuntimeRequest }>({
    ...routeOf(operations.predictRuntime),
    handler: (request, reply) => {
      const shop = findShop(ranges, request.params.shopId, request.body.locale, reply)
      if (shop === undefined) return reply
      const result = runtimeFor(shop.range, request.body)
      if (!result.ok) return sendFaults(reply, result.faults, shop.writer)
      return reply.send(runtimeAnswer(result.answer, shop.writer))
    },
  })
}
