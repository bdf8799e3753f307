import cors from '@fastify/cors'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import type { Ranges } from '../store/ranges.ts'
import { sendProblem } from './problems.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** A file that pages of any origin may load. */
    anyOrigin?: boolean
  }
}

/** How long a browser may keep the answer to a preflight. [s] Longer is cut to this by some. */
const PREFLIGHT_MAX_AGE_S = 7200
const EXPOSED_HEADERS = 'ETag, RateLimit, RateLimit-Policy, Retry-After, X-Request-Id'
const ALLOWED = {
  methods: 'GET, POST',
  allowedHeaders: 'Content-Type, If-None-Match, X-Request-Id',
  exposedHeaders: EXPOSED_HEADERS,
  maxAge: PREFLIGHT_MAX_AGE_S,
}

/**
 * Lets pages read a shop's answers only from the origins that the shop lists, letter by letter (Fetch standard,
 * CORS protocol). A shop that is not served lists none: its 404 may be read from anywhere, so that a page with a
 * mistyped shop id can say so instead of "can't reach". Everything is answered from memory.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export async function registerCors(app: FastifyInstance, ranges: Ranges): Promise<void> {
  // The plugin tells its function of the origin alone. These three hooks run in one turn, so what the first
  // finds is still of the same request in the others.
  let readableBy: string | false = false
  app.addHook('onRequest', (request, _reply, done) => {
    readableBy = readableFrom(ranges, request)
    done()
  })
  // Sets Vary on every reply too: a cache must never give one origin's answer to another.
  await app.register(cors, {
    ...ALLOWED,
    origin: (_origin, decide) => decide(null, readableBy),
    // Other OPTIONS than preflights are readable by nobody, and so not answered as one.
    strictPreflight: false,
  })
  app.addHook('onRequest', (request, reply, done) => {
    const shopId = shopAskedFor(request)
    if (shopId === undefined) return done()
    // Answered here, so that nothing but this 404 can ever be read from any origin.
    if (isUnknown(ranges, request)) return sendProblem(reply, 'unknown-shop')
    // A request with a key is refused with its own reason.
    if (readableBy !== false || request.headers.authorization !== undefined || isOtherOptions(request)) {
      return done()
    }
    request.log.warn({ event: 'origin refused', shopId }, 'not let in')
    sendProblem(reply, 'origin-not-allowed', { detail: ADVICE })
  })
}

/** The origin that may read the reply to a request: the asker's, any, or none but the service's own pages. */
function readableFrom(ranges: Ranges, request: FastifyRequest): string | false {
  const { origin } = request.headers
  if (origin === undefined || isOtherOptions(request)) return false
  if (request.routeOptions.config.anyOrigin === true) return '*'
  const shopId = shopAskedFor(request)
  if (shopId === undefined) return false
  if (isUnknown(ranges, request)) return '*'
  return isListed(ranges, shopId, origin) && origin
}

/** The shop that a page of another origin asks about. */
function shopAskedFor(request: FastifyRequest): string | undefined {
  const { origin } = request.headers
  if (origin === undefined || isOwnPage(request, origin)) return undefined
  return request.routeOptions.config.anyOrigin === true ? undefined : shopIdOf(request.url)
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
  if (shopId === undefined || !isListed(ranges, shopId, origin)) return {}
  return { 'access-control-allow-origin': origin, 'access-control-expose-headers': EXPOSED_HEADERS }
}

function isListed(ranges: Ranges, shopId: string, origin: string): boolean {
  return ranges.current(shopId)?.document.shop.allowedOrigins.includes(origin) ?? false
}

const ADVICE = 'Add the origin of the page to allowedOrigins of the shop’s range, as the browser sends it.'

/** An OPTIONS that is no preflight. */
function isOtherOptions({ method, headers }: FastifyRequest): boolean {
  return method === 'OPTIONS' && headers['access-control-request-method'] === undefined
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
