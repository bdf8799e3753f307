import type { FastifyInstance, FastifyReply } from 'fastify'

/** What a reply that is no page may load, and who may frame it: nothing and nobody. */
const API_POLICY = "default-src 'none'; frame-ancestors 'none'"

/** Two years. [s] */
const HSTS = 'max-age=63072000; includeSubDomains'

/** Headers that every answer carries, malformed requests' too. */
export const SECURITY_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': API_POLICY,
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
}

/**
 * The security headers of a service at an address.
 *
 * @param publicUrl - Where callers reach it; `https:` adds Strict-Transport-Security
 * @returns Headers by name
 */
export function securityHeaders(publicUrl: string): Readonly<Record<string, string>> {
  return publicUrl.startsWith('https:')
    ? { ...SECURITY_HEADERS, 'strict-transport-security': HSTS }
    : SECURITY_HEADERS
}

/** What the service's own pages carry beside. */
const PAGE_HEADERS: Readonly<Record<string, string>> = {
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy':
    'accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), usb=()',
}

/**
 * Puts the security headers and the request id on every reply; a page replaces the content policy by its own.
 *
 * @param app - The service
 * @param publicUrl - Where callers reach it; `https:` adds Strict-Transport-Security
 */
export function registerHeaders(app: FastifyInstance, publicUrl: string): void {
  const headers = securityHeaders(publicUrl)
  app.addHook('onRequest', (request, reply, done) => {
    reply.headers(headers)
    reply.header('x-request-id', request.id)
    // A key's answers are nobody else's; routes that may be kept say so themselves.
    const isKeyed =
      request.headers.authorization !== undefined || request.routeOptions.config.keyScope !== undefined
    if (isKeyed) reply.header('cache-control', 'no-store')
    done()
  })
}

/**
 * Puts the headers of a page on a reply: scripts and styles from files of this service, nothing else, and no
 * device of the visitor's.
 *
 * @param reply - The reply
 * @param policy - What the page's content policy allows beside nothing
 * @returns The reply, not yet sent
 */
export function asPage(reply: FastifyReply, policy: string): FastifyReply {
  return reply
    .headers(PAGE_HEADERS)
    .header(
      'content-security-policy',
      `default-src 'none'; ${policy}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
    )
    .type('text/html; charset=utf-8')
}
