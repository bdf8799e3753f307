import type { FastifyInstance } from 'fastify'
import type { Settings } from '../settings.ts'
import { sendProblem } from './problems.ts'

/** Largest body of a request that isn't a range file. [bytes] */
export const BODY_LIMIT_BYTES = 32 * 1024
/** Largest head of a request. [bytes] */
const HEAD_LIMIT_BYTES = 16 * 1024
/** Longest part of a path. */
const PATH_PART_LIMIT = 100
/** How long an idle connection is kept: longer than proxies keep theirs, so that they close first. [ms] */
const KEEP_ALIVE_MS = 72_000

/**
 * The bounds on size and time that the server itself holds, all of them: Node's own time-outs are off or lax.
 *
 * @param settings - The time-outs
 * @returns Options of Fastify
 */
export function serverLimits(settings: Settings) {
  return {
    bodyLimit: BODY_LIMIT_BYTES,
    requestTimeout: settings.requestTimeoutMs,
    keepAliveTimeout: KEEP_ALIVE_MS,
    http: {
      maxHeaderSize: HEAD_LIMIT_BYTES,
      headersTimeout: settings.headersTimeoutMs,
      requestTimeout: settings.requestTimeoutMs,
      // Checked by a hook, so that the refusal is a problem like any other.
      requireHostHeader: false,
      connectionsCheckingInterval: settings.timeoutCheckMs,
    },
    routerOptions: { maxParamLength: PATH_PART_LIMIT },
  }
}

/**
 * Bounds the time of every route that asks the store; the others compute and return at once, and a clock would
 * only cost them time.
 *
 * @param app - The service, before its routes
 * @param settings - The time
 */
export function registerHandlerTimeout(app: FastifyInstance, settings: Settings): void {
  app.addHook('onRoute', (route) => {
    if (route.config?.keyScope !== undefined) route.handlerTimeout ??= settings.handlerTimeoutMs
  })
}

/**
 * Refuses requests that don't say which host they are for (RFC 9112, 3.2).
 *
 * @param app - The service
 */
export function registerHostCheck(app: FastifyInstance): void {
  app.addHook('onRequest', (request, reply, done) => {
    if (request.headers.host !== undefined || request.raw.httpVersion === '1.0') return done()
    sendProblem(reply.header('connection', 'close'), 'malformed-request', {
      detail: 'The header Host is missing.',
    })
  })
}

/** What those who watch the service ask for: answered however busy it is. */
export const UNLIMITED_PATHS: ReadonlySet<string> = new Set(['/healthz', '/readyz', '/metrics'])

/**
 * Exempts the addresses of those who watch the service from quotas and from being turned away.
 *
 * @param app - The service, before its routes
 */
export function registerUnlimitedPaths(app: FastifyInstance): void {
  app.addHook('onRoute', (route) => {
    if (UNLIMITED_PATHS.has(route.url)) route.config = { ...route.config, unlimited: true }
  })
}
