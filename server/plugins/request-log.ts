import type { FastifyInstance, FastifyReply, FastifyRequest, FastifyServerOptions } from 'fastify'
import { callerOf } from './callers.ts'
import { loggedError } from './redaction.ts'
import { traceIdOf } from './request-id.ts'

/** Statuses that somebody who looks after the service wants to know the address of. */
const REFUSALS = new Set([401, 403, 429])

/** How the log writes what is handed to it: nothing of a request or reply but what a line names itself. */
export const LOG_SERIALIZERS = {
  err: loggedError,
  req: () => ({}),
  res: () => ({}),
}

/**
 * Hands every request the service's own logger: a child for each costs more than the line that it writes.
 *
 * @returns Fastify's `childLoggerFactory`
 */
export const sharedLogger: FastifyServerOptions['childLoggerFactory'] = (logger) => logger

/**
 * Writes one line for each request, once it has been answered. Addresses are logged as route templates, so that
 * nothing of a query or a path comes in; headers and bodies never are.
 *
 * @param app - The service
 */
export function registerRequestLog(app: FastifyInstance): void {
  app.addHook('onResponse', (request, reply, done) => {
    const line = lineOf(request, reply)
    if (reply.statusCode >= 500) request.log.error(line, 'failed')
    else if (request.routeOptions.config.unlimited === true) request.log.debug(line, 'answered')
    else request.log.info(line, 'answered')
    done()
  })
}

function lineOf(request: FastifyRequest, reply: FastifyReply): Readonly<Record<string, unknown>> {
  const { shopId } = request.params as { readonly shopId?: string }
  return {
    requestId: request.id,
    method: request.method,
    route: request.routeOptions.url,
    // A shop id is a word of the caller's as long as it isn't found.
    shopId: reply.statusCode === 404 ? undefined : shopId,
    keyId: request.secretKey?.id,
    status: reply.statusCode,
    milliseconds: Math.round(reply.elapsedTime * 100) / 100,
    traceId: traceIdOf(request.headers.traceparent),
    caller: REFUSALS.has(reply.statusCode) ? callerOf(request.ip) : undefined,
  }
}
