import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { Ranges } from '../store/ranges.ts'
import { sendProblem } from './problems.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** A file that pages of any origin may load. */
    anyOrigin?: boolean
  }
}

/** How long a browser may keep the answer to a preflight. [s] Longer is cut to this by some. */
const PREFLIGHT_MAX_AGE_S = '7200'
const ALLOWED_METHODS = 'GET, POST'
const ALLOWED_HEADERS = 'Content-Type, If-None-Match, X-Request-Id'
const EXPOSED_HEADERS = 'ETag, RateLimit, RateLimit-Policy, Retry-After, X-Request-Id'

/**
 * Lets pages read a shop's answers only from the origins that the shop lists, letter by letter (Fetch standard,
 * CORS protocol). Everything is answered from memory.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerCors(app: FastifyInstance, ranges: Ranges): void {
  app.addHook('onRequest', (request, reply, done) => {
    // On every reply: a cache must never give one origin's answer to another.
    reply.header('vary', 'Origin')
    const { origin } = request.headers
    if (origin === undefined) return done()
    if (request.routeOptions.config.anyOrigin === true) {
      reply.header('access-control-allow-origin', '*')
      return done()
    }
    const shopId = shopIdOf(request.url)
    if (shopId === undefined || isOwnPage(request, origin)) return done()
    const listed = ranges.current(shopId)?.document.shop.allowedOrigins.includes(origin) ?? false
    if (listed) {
      reply.header('access-control-allow-origin', origin)
      reply.header('access-control-expose-headers', EXPOSED_HEADERS)
    }
    if (isPreflight(request)) return answerPreflight(reply, listed)
    // A request with a key is refused with its own reason.
    if (listed || request.headers.authorization !== undefined) return done()
    request.log.warn({ event: 'origin refused', shopId }, 'not let in')
    sendProblem(reply, 'origin-not-allowed', { detail: ADVICE })
  })
}

const ADVICE = 'Add the origin of the page to allowedOrigins of the shop’s range, as the browser sends it.'

function answerPreflight(reply: FastifyReply, listed: boolean): FastifyReply {
  if (!listed) return sendProblem(reply, 'origin-not-allowed', { detail: ADVICE })
  return reply
    .code(204)
    .header('access-control-allow-methods', ALLOWED_METHODS)
    .header('access-control-allow-headers', ALLOWED_HEADERS)
    .header('access-control-max-age', PREFLIGHT_MAX_AGE_S)
    .header('vary', 'Origin, Access-Control-Request-Method, Access-Control-Request-Headers')
    .send()
}

function isPreflight(request: FastifyRequest): boolean {
  return request.method === 'OPTIONS' && request.headers['access-control-request-method'] !== undefined
}

/** Whether a page of this service itself asks; the browser then wants no leave. */
function isOwnPage({ headers }: FastifyRequest, origin: string): boolean {
  return origin === `http://${headers.host}` || origin === `https://${headers.host}`
}

/** The shop that an address names; from the raw address, for preflights have no route. */
function shopIdOf(url: string): string | undefined {
  if (!url.startsWith(SHOPS)) return undefined
  return /^[a-z0-9-]+(?=[/?]|$)/.exec(url.slice(SHOPS.length))?.[0] ?? ''
}

const SHOPS = '/v1/shops/'
