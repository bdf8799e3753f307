import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { KeyScope } from '../../shared/contract/range-admin.ts'
import { KEY_PREFIX } from '../store/key-secret.ts'
import type { Live } from '../store/live.ts'
import type { StoredKey } from '../store/store.ts'
import { sendProblem } from './problems.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Scope that a caller's key must have; without it the address is public. */
    keyScope?: KeyScope
  }
  interface FastifyRequest {
    /** The caller's live key, where one was sent. */
    secretKey: StoredKey | undefined
  }
}

/** How long keys in memory are trusted while the store, which may have revoked one, doesn't answer. [ms] */
const TRUST_MS = 5 * 60_000

/** Query parameters that people put keys into. */
const KEY_PARAMETERS = new Set(['key', 'apikey', 'api_key', 'api-key', 'access_token', 'token', 'secret'])

/**
 * Lets callers in by their secret key, before anything of a body is read: 400 for a key in the address, 403 for
 * a key from a page that isn't this service's own, one and the same 401 for every key that isn't live, 404 for
 * another shop's.
 *
 * @param app - The service
 * @param live - Keys in memory, and whether they are fresh
 */
export function registerKeys(app: FastifyInstance, live: Live): void {
  app.decorateRequest('secretKey', undefined)
  app.addHook('onRequest', async (request, reply) => {
    if (hasKeyInAddress(request)) return refuse(request, reply, 'key-in-address')
    const scope = request.routeOptions.config.keyScope
    const header = request.headers.authorization
    const secret = /^Bearer +(\S+) *$/i.exec(header ?? '')?.[1]
    // Schemes of a proxy in front are its own affair, where this service asks for no key.
    if (scope === undefined && !/^Bearer\b/i.test(header ?? '')) return
    if (header !== undefined && isOtherPage(request)) {
      return refuse(request, reply, 'key-in-browser')
    }
    const key = secret === undefined ? undefined : live.keys.find(secret)
    if (key === undefined) {
      return refuse(request, reply.header('www-authenticate', 'Bearer realm="tallywatt"'), 'unauthorised')
    }
    request.secretKey = key
    if (scope !== undefined) return letIn(request, reply, { key, scope, live })
  })
}

function letIn(
  request: FastifyRequest,
  reply: FastifyReply,
  { key, scope, live }: { readonly key: StoredKey; readonly scope: KeyScope; readonly live: Live },
): FastifyReply | undefined {
  const { shopId } = request.params as { readonly shopId?: string }
  if (shopId !== key.shopId) return refuse(request, reply, 'unknown-shop')
  const { available, ageMs } = live.state()
  if (!available && ageMs > TRUST_MS) {
    return sendProblem(reply.header('retry-after', '10'), 'store-unavailable')
  }
  if (!key.scopes.includes(scope)) {
    const challenge = `Bearer realm="tallywatt", error="insufficient_scope", scope="${scope}"`
    return refuse(request, reply.header('www-authenticate', challenge), 'scope-too-small')
  }
  request.log.info({ event: 'key used', shopId: key.shopId, keyId: key.id }, 'let in')
  return undefined
}

function refuse(
  request: FastifyRequest,
  reply: FastifyReply,
  code: 'key-in-address' | 'key-in-browser' | 'unauthorised' | 'unknown-shop' | 'scope-too-small',
): FastifyReply {
  const { secretKey } = request
  request.log.warn(
    {
      event: 'key refused',
      code,
      route: request.routeOptions.url,
      shopId: secretKey?.shopId,
      keyId: secretKey?.id,
    },
    'not let in',
  )
  reply.header('cache-control', 'no-store')
  return sendProblem(reply, code, code === 'key-in-address' ? { detail: ADVICE } : {})
}

/**
 * Whether a page of another origin asks. The staff page of this service holds a key in its memory; no other page
 * may. A browser sends the origin by itself (Fetch standard, Origin header), a page can't feign it.
 */
function isOtherPage(request: FastifyRequest): boolean {
  const { origin } = request.headers
  if (origin === undefined || origin === `${request.protocol}://${request.host}`) return false
  // Behind a proxy that isn't believed, the service knows its own address only from its settings.
  const { publicUrl = '' } = request.server
  return publicUrl === '' || origin !== new URL(publicUrl).origin
}

const ADVICE =
  'Send the key in the header "Authorization: Bearer ..." and revoke this one: addresses are logged.'

function hasKeyInAddress(request: FastifyRequest): boolean {
  const { url } = request
  if (url.includes(KEY_PREFIX)) return true
  const start = url.indexOf('?')
  if (start === -1) return false
  for (const name of new URLSearchParams(url.slice(start)).keys()) {
    if (KEY_PARAMETERS.has(name.toLowerCase())) return true
  }
  return false
}
