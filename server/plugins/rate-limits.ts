import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { Settings } from '../settings.ts'
import type { Ranges } from '../store/ranges.ts'
import { callerOf } from './callers.ts'
import { problemText, sendProblem } from './problems.ts'
import { type Quota, type QuotaState, quota } from './quota.ts'

const WINDOW_S = 60
/** Callers remembered for each quota, about 10 MB. */
const MAX_CALLERS = 100_000

/** A quota and what its fields say of it (RateLimit header fields for HTTP, IETF draft, sections 3 and 4). */
interface Policy {
  readonly name: 'address' | 'key' | 'refused-key'
  readonly quota: Quota
  readonly field: string
}

/**
 * Holds callers to their quotas, in memory: one for each address and shop, a higher one for each secret key, and
 * a small one for keys that are refused. Each reply says what is left.
 *
 * @param app - The service, with keys registered where it has them
 * @param ranges - The ranges in force
 * @param settings - The quotas
 */
export function registerRateLimits(app: FastifyInstance, ranges: Ranges, settings: Settings): void {
  const address = policy('address', settings.addressQuota)
  const key = policy('key', settings.keyQuota)
  const refusedKey = policy('refused-key', settings.refusedKeyQuota)

  if (address !== undefined || key !== undefined) {
    app.addHook('onRequest', (request, reply, done) => {
      if (request.routeOptions.config.unlimited === true) return done()
      const { secretKey } = request
      const applied = secretKey === undefined ? address : key
      if (applied === undefined) return done()
      const caller = secretKey === undefined ? addressAndShop(request, ranges) : secretKey.id
      const state = applied.quota.spend(caller, performance.now())
      sayWhatIsLeft(reply, applied, state)
      if (state.allowed) return done()
      refuse(request, reply, applied, state)
    })
  }

  if (refusedKey !== undefined) {
    app.addHook('onSend', (request, reply, payload, done) => {
      if (reply.statusCode !== 401) return done(null, payload)
      const state = refusedKey.quota.spend(callerOf(request.ip), performance.now())
      if (state.allowed) return done(null, payload)
      reply.code(429).removeHeader('www-authenticate').removeHeader('content-length')
      reply.header('retry-after', retryAfter(state))
      sayWhatIsLeft(reply, refusedKey, state)
      done(null, problemText(reply, 'rate-limited', { violatedPolicies: [refusedKey.name] }))
    })
  }
}

function policy(name: Policy['name'], limit: number): Policy | undefined {
  if (limit === 0) return undefined
  return {
    name,
    quota: quota({ limit, windowS: WINDOW_S, maxCallers: MAX_CALLERS }),
    field: `"${name}";q=${limit};w=${WINDOW_S}`,
  }
}

function sayWhatIsLeft(reply: FastifyReply, { name, field }: Policy, state: QuotaState): void {
  reply.header('ratelimit-policy', field)
  reply.header('ratelimit', `"${name}";r=${state.remaining};t=${state.resetS}`)
}

function refuse(request: FastifyRequest, reply: FastifyReply, { name }: Policy, state: QuotaState): void {
  request.log.warn({ event: 'quota used up', policy: name, keyId: request.secretKey?.id }, 'slowed')
  sendProblem(reply.header('retry-after', retryAfter(state)), 'rate-limited', { violatedPolicies: [name] })
}

/** Spread, so that callers who were refused together don't come back together. */
function retryAfter({ resetS }: QuotaState): string {
  return String(Math.max(1, resetS) + Math.floor(Math.random() * 3))
}

/** Shops that don't exist share one quota: inventing ids buys nothing. */
function addressAndShop(request: FastifyRequest, ranges: Ranges): string {
  const { shopId } = request.params as { readonly shopId?: string }
  const shop = shopId === undefined || ranges.current(shopId) === undefined ? '' : shopId
  return `${callerOf(request.ip)} ${shop}`
}
