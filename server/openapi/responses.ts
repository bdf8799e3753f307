import type { Operation } from '../../shared/contract/operations.ts'
import { PROBLEMS, type ProblemCode } from '../../shared/contract/problem.ts'
import { problemOf } from '../plugins/problems.ts'

const ref = (name: string) => ({ $ref: `#/components/headers/${name}` })

/** Headers of replies, by the name that responses refer to. */
export const RESPONSE_HEADERS = {
  RequestId: {
    description: 'Id of the request: the caller’s own where it was sound.',
    schema: { type: 'string' },
  },
  ETag: { description: 'Strong validator of what was sent (RFC 9110, 8.8.3).', schema: { type: 'string' } },
  RateLimit: {
    description: 'Calls left and the seconds until the quota is whole again, such as `"address";r=299;t=1`.',
    schema: { type: 'string' },
  },
  RateLimitPolicy: {
    description: 'The quota: calls and the seconds they are for, such as `"address";q=300;w=60`.',
    schema: { type: 'string' },
  },
  RetryAfter: { description: 'Seconds to wait before another try.', schema: { type: 'integer' } },
} as const

/** Problems that any address may answer with, before it is known which it is. */
const ANYWHERE = [
  'malformed-request',
  'bad-request',
  'key-in-address',
  'unauthorised',
  'key-in-browser',
  'request-timeout',
  'headers-too-large',
  'internal-error',
] as const satisfies readonly ProblemCode[]

const WATCHED = new Set(['/healthz', '/readyz', '/metrics'])

/**
 * Every problem that an operation may answer with: its own and those of the guards before it.
 *
 * @param operation - The operation
 * @returns Codes, each once, by rising status
 */
export function problemsOf(operation: Operation): readonly ProblemCode[] {
  const codes = new Set<ProblemCode>([...operation.problems, ...ANYWHERE])
  if (!WATCHED.has(operation.path)) codes.add('rate-limited').add('overloaded')
  if (operation.path.includes('{shopId}')) codes.add('origin-not-allowed').add('not-found')
  if (operation.scope !== undefined) codes.add('timed-out')
  if (operation.scope !== undefined) codes.add('rate-limited')
  const order = Object.keys(PROBLEMS)
  return [...codes].sort(
    (a, b) => PROBLEMS[a].status - PROBLEMS[b].status || order.indexOf(a) - order.indexOf(b),
  )
}

/** Whether a reply of an operation carries a validator. */
export function isTagged(operation: Operation): boolean {
  return operation.headers?.some(({ name }) => name === 'If-None-Match' || name === 'If-Match') ?? false
}

/**
 * Headers of an operation's good replies.
 *
 * @param operation - The operation
 * @returns References into {@link RESPONSE_HEADERS}
 */
export function replyHeaders(operation: Operation): Readonly<Record<string, unknown>> {
  return {
    'X-Request-Id': ref('RequestId'),
    ...(isTagged(operation) ? { ETag: ref('ETag') } : {}),
    ...(WATCHED.has(operation.path)
      ? {}
      : { RateLimit: ref('RateLimit'), 'RateLimit-Policy': ref('RateLimitPolicy') }),
  }
}

/** Responses of problems, made once for each set of codes. */
export interface ProblemResponses {
  /** References by status, for one operation. */
  of(operation: Operation): Readonly<Record<string, unknown>>
  /** What they refer to. */
  readonly components: Readonly<Record<string, unknown>>
}

/**
 * Collects the responses that problems make.
 *
 * @returns Empty; asking for an operation's fills it
 */
export function problemResponses(): ProblemResponses {
  const components: Record<string, unknown> = {}
  return {
    components,
    of: (operation) => {
      const byStatus = new Map<number, ProblemCode[]>()
      for (const code of problemsOf(operation)) {
        const { status } = PROBLEMS[code]
        byStatus.set(status, [...(byStatus.get(status) ?? []), code])
      }
      const entries = [...byStatus].map(([status, codes]) => {
        const name = `${status}.${codes.join('.')}`
        components[name] ??= problemResponse(codes)
        return [String(status), { $ref: `#/components/responses/${name}` }] as const
      })
      return Object.fromEntries(entries)
    },
  }
}

function problemResponse(codes: readonly ProblemCode[]): Readonly<Record<string, unknown>> {
  const mayRetry = codes.some((code) => [429, 503].includes(PROBLEMS[code].status))
  const examples = codes.map((code) => [code, { value: exampleOf(code) }] as const)
  return {
    description: codes.map((code) => `\`${code}\`: ${PROBLEMS[code].title}.`).join(' '),
    headers: { 'X-Request-Id': ref('RequestId'), ...(mayRetry ? { 'Retry-After': ref('RetryAfter') } : {}) },
    content: {
      'application/problem+json': {
        schema: { $ref: '#/components/schemas/Problem' },
        examples: Object.fromEntries(examples),
      },
    },
  }
}

/**
 * A problem as it would be sent.
 *
 * @param code - Its code
 * @returns The problem, with links relative to the service
 */
export function exampleOf(code: ProblemCode) {
  const details = code === 'rate-limited' ? { violatedPolicies: ['address'] } : {}
  return problemOf({ code, id: 'r5f2c9a1b7d04-1', publicUrl: '' }, details)
}
