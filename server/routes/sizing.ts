import type { FastifyInstance } from 'fastify'
import { fitFor, sizeFor } from '../../core/index.ts'
import { operations } from '../../shared/contract/operations.ts'
import type { FitRequest, SizingRequest } from '../../shared/contract/plan.ts'
import type { DemandRecorder } from '../demand/recorder.ts'
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
 * @param recorder - Counts what is asked for; left out: nothing is counted
 */
export function registerSizing(
  app: FastifyInstance,
  ranges: Ranges,
  recorder?: Pick<DemandRecorder, 'record'>,
): void {
  app.route<{ Params: ShopParams; Body: SizingRequest }>({
    ...routeOf(operations.sizeShop),
    handler: (request, reply) => {
      const context = readPlan(ranges, request.params.shopId, request.body, reply)
      if (context === undefined) return reply
      const { range, plan, writer } = context
      const sizing = sizeFor(range, plan)
      recorder?.record(range, { call: 'sizing', plan, choice: sizing.choice, outcome: sizing.outcome })
      return reply.send(sizingAnswer(range, sizing, request.body, writer))
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
        const { sku } = request.body
        const message = writer.fault({ path: ['sku'], code: 'unknown-unit', sku })
        return sendProblem(reply, 'unknown-sku', { errors: [{ pointer: '/sku', message }] })
      }
      const { choice, outcome } = fit.own
      recorder?.record(range, { call: 'fit', plan, choice, outcome, asked: fit.verdict })
      return reply.send(fitAnswer(range, fit, writer))
    },
  })
}
