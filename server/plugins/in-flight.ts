import type { FastifyInstance, FastifyReply } from 'fastify'

/** Requests whose reply has not gone out. */
export interface InFlight {
  readonly replies: ReadonlySet<FastifyReply>
}

/**
 * Keeps count of the requests in flight, broken off ones included until their connection closes.
 *
 * @param app - The service
 * @returns The replies still to go out
 */
export function registerInFlight(app: FastifyInstance): InFlight {
  const replies = new Set<FastifyReply>()
  app.addHook('onRequest', (_request, reply, done) => {
    replies.add(reply)
    reply.raw.once('close', () => replies.delete(reply))
    done()
  })
  return { replies }
}
