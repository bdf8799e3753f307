import type { FastifyInstance } from 'fastify'
import type { Readiness } from '../../shared/contract/health.ts'
import { operations } from '../../shared/contract/operations.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { Live } from '../store/live.ts'

/**
 * Adds GET /readyz. A service that has lost its store still answers shoppers, so it stays ready: taking it out
 * of use would turn a store's outage into everybody's.
 *
 * @param app - The service
 * @param live - The memory
 */
export function registerReadiness(app: FastifyInstance, live: Live): void {
  app.route({
    ...routeOf(operations.readReadiness),
    handler: (_request, reply) => {
      const { available, ageMs, faulty } = live.state()
      const shops = live.ranges.shopIds().length
      reply.header('cache-control', 'no-store')
      if (shops === 0) return sendProblem(reply.header('retry-after', '2'), 'not-ready')
      const readiness: Readiness = {
        status: available && faulty.size === 0 ? 'ready' : 'degraded',
        store: available ? 'available' : 'unavailable',
        storeAgeS: Math.round(ageMs / 1000),
        shops,
        faultyShops: [...faulty.keys()],
      }
      return reply.send(readiness)
    },
  })
}
