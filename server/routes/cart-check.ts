import type { FastifyInstance } from 'fastify'
import { checkCart } from '../../core/index.ts'
import type { CartRequest } from '../../shared/contract/cart.ts'
import { operations } from '../../shared/contract/operations.ts'
import { routeOf } from '../plugins/contract.ts'
import { cartAnswer } from '../replies/cart-answer.ts'
import type { Ranges } from '../store/ranges.ts'
import { findShop, sendFaults } from './plans.ts'

/**
 * Adds POST cart-check.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerCartCheck(app: FastifyInstance, ranges: Ranges): void {
  app.route<{ Params: { shopId: string }; Body: CartRequest }>({
    ...routeOf(operations.checkCart),
    handler: (request, reply) => {
      const shop = findShop(ranges, request.params.shopId, request.body.locale, reply)
      if (shop === undefined) return reply
      const result = checkCart(shop.range, request.body)
      if (!result.ok) return sendFaults(reply, result.faults, shop.writer)
      return reply.send(cartAnswer(shop.range, result.answer, shop.writer))
    },
  })
}
