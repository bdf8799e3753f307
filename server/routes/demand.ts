import type { FastifyInstance, FastifyReply } from 'fastify'
import { DEMAND_DAYS_MAX } from '../../shared/contract/demand.ts'
import { operations } from '../../shared/contract/operations.ts'
import { demandReply } from '../demand/answer.ts'
import { addDays, dayOf, daysIn, isDay, type Period } from '../demand/period.ts'
import type { DemandRecorder } from '../demand/recorder.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { RangeServices } from './range-writing.ts'

interface DemandRoute {
  readonly Params: { readonly shopId: string }
  readonly Querystring: { readonly from?: string; readonly to?: string; readonly newSizes?: string }
}

/** Days of an answer where the caller names none. */
const DEFAULT_DAYS = 30
const DEFAULT_NEW_SIZES = 3

/**
 * Adds GET demand.
 *
 * @param app - The service
 * @param services - The store, the memory and the recorder, whose own counts are written first
 */
export function registerDemand(
  app: FastifyInstance,
  { store, live, recorder }: RangeServices & { readonly recorder: DemandRecorder },
): void {
  app.route<DemandRoute>({
    ...routeOf(operations.readDemand),
    handler: async (request, reply) => {
      const { shopId } = request.params
      const held = live.held(shopId)
      if (held === undefined) return sendProblem(reply, 'unknown-shop')
      const period = periodOf(request.query)
      if (!isPeriod(period)) return sendNoPeriod(reply)
      await recorder.flush()
      const totals = await store.demand(shopId, period)
      const sizes = Number(request.query.newSizes ?? DEFAULT_NEW_SIZES)
      reply.header('cache-control', 'no-store')
      return reply.send(demandReply({ range: held.range, period, totals, sizes }))
    },
  })
}

function periodOf({ from, to }: DemandRoute['Querystring']): Period {
  const last = to ?? dayOf(Date.now())
  return { from: from ?? (isDay(last) ? addDays(last, 1 - DEFAULT_DAYS) : last), to: last }
}

function isPeriod(period: Period): boolean {
  if (!isDay(period.from) || !isDay(period.to)) return false
  const days = daysIn(period)
  return days >= 1 && days <= DEMAND_DAYS_MAX
}

function sendNoPeriod(reply: FastifyReply): FastifyReply {
  return sendProblem(reply, 'bad-request', {
    errors: [
      {
        pointer: '',
        message: `"from" and "to" must be days, "to" not before "from", at most ${DEMAND_DAYS_MAX} days in all.`,
      },
    ],
  })
}
