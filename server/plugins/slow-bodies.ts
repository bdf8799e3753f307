import type { FastifyInstance, FastifyReply } from 'fastify'
import type { Settings } from '../settings.ts'
import type { InFlight } from './in-flight.ts'
import { BODY_LIMIT_BYTES } from './limits.ts'
import { cutOff } from './malformed.ts'

/**
 * Cuts off senders who trickle a body. Large files have the time that any request has.
 *
 * @param app - The service
 * @param inFlight - The requests in flight
 * @param settings - The time-outs
 */
export function registerSlowBodies(app: FastifyInstance, { replies }: InFlight, settings: Settings): void {
  const timer = setInterval(() => {
    for (const reply of replies) {
      if (isTooSlow(reply, settings)) {
        const { id, raw } = reply.request
        cutOff(raw.socket, { code: 'request-timeout', id, publicUrl: settings.publicUrl })
      }
    }
  }, settings.timeoutCheckMs)
  timer.unref()
  app.addHook('onClose', async () => clearInterval(timer))
}

function isTooSlow(reply: FastifyReply, { bodyTimeoutMs }: Settings): boolean {
  const { raw, routeOptions } = reply.request
  if (raw.complete || reply.sent) return false
  return reply.elapsedTime > bodyTimeoutMs && (routeOptions.bodyLimit ?? 0) <= BODY_LIMIT_BYTES
}
