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
 * CORS protocol). A shop that is not served lists none: its 404 may be read from anywhere, so that a page with a
 * mistyped shop id can say so instead of "can't reach". Everything is answered from memory.
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
    if (isUnknown(ranges, request)) return answerUnknown(request, reply)
    const listed = isListed(ranges, shopId, origin)
    if (listed) reply.headers(leaveFor(origin))
    if (isPreflight(request)) return answerPreflight(reply, listed)
    // A request with a key is refused with its own reason.
    if (listed || request.headers.authorization !== undefined) return done()
    request.log.warn({ event: 'origin refused', shopId }, 'not let in')
    sendProblem(reply, 'origin-not-allowed', { detail: ADVICE })
  })
}

/**
 * What lets a page read a reply that no route has made.
 *
 * @param ranges - The ranges in force
 * @param origin - Of the page
 * @param url - What it asked for
 * @returns Headers; none where the shop doesn't list the origin
 */
export function headersForOrigin(
  ranges: Ranges,
  origin: string,
  url: string,
): Readonly<Record<string, string>> {
  const shopId = shopIdOf(url)
  return shopId !== undefined && isListed(ranges, shopId, origin) ? leaveFor(origin) : {}
}

function isListed(ranges: Ranges, shopId: string, origin: string): boolean {
  return ranges.current(shopId)?.document.shop.allowedOrigins.includes(origin) ?? false
}

function leaveFor(origin: string): Readonly<Record<string, string>> {
  return {
    'access-control-allow-origin': origin,
    'access-control-expose-headers': EXPOSED_HEADERS,
  }
}

const ADVICE = 'Add the origin of the page to allowedOrigins of the shop’s range, as the browser sends it.'

function answerPreflight(reply: FastifyReply, listed: boolean): FastifyReply {
  return listed ? allow(reply) : sendProblem(reply, 'origin-not-allowed', { detail: ADVICE })
}

/** Answered here, so that nothing but this 404 can ever be read from any origin. */
function answerUnknown(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  reply.header('access-control-allow-origin', '*')
  return isPreflight(request) ? allow(reply) : sendProblem(reply, 'unknown-shop')
}

function allow(reply: FastifyReply): FastifyReply {
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

/** Whether the address names a shop, however it is encoded, that is not served. A key is refused elsewhere. */
function isUnknown(ranges: Ranges, { url, headers }: FastifyRequest): boolean {
  const name = decoded(/^[^/?]*/.exec(url.slice(SHOPS.length))?.[0] ?? '')
  return name !== '' && headers.authorization === undefined && ranges.current(name) === undefined
}

/** Empty where it can't be decoded. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return ''
  }
}

/** The shop that an address names; from the raw address, for preflights have no route. */
function shopIdOf(url: string): string | undefined {
  if (!url.startsWith(SHOPS)) return undefined
  return /^[a-z0-9-]+(?=[/?]|$)/.exec(url.slice(SHOPS.length))?.[0] ?? ''
}

const SHOPS = '/v1/shops/'
