import type { FastifyInstance } from 'fastify'
import { sendProblem } from './problems.ts'

/** A service that can be told to send its callers elsewhere. */
export interface Draining {
  /** From now on, says that it isn't ready and closes each connection with the reply on it. */
  begin(): void
  /** Whether that has been said. */
  isOn(): boolean
}

/**
 * Lets a service go out of use without breaking anything off: it goes on answering, while those in front of it
 * see that it isn't ready.
 *
 * @param app - The service
 * @returns The switch
 */
export function registerDraining(app: FastifyInstance): Draining {
  let draining = false
  app.addHook('onRequest', (request, reply, done) => {
    if (!draining || request.routeOptions.url !== '/readyz') return done()
    sendProblem(reply.header('retry-after', '2').header('cache-control', 'no-store'), 'not-ready', {
      detail: 'This instance is being shut down.',
    })
  })
  // With the reply, so that requests that came before count too.
  app.addHook('onSend', (_request, reply, payload, done) => {
    if (draining) reply.header('connection', 'close')
    done(null, payload)
  })
  return {
    begin: () => {
      draining = true
    },
    isOn: () => draining,
  }
}
