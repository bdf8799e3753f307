import type { LightMyRequestResponse } from 'fastify'
import { jsonFault } from '../../server/plugins/json-faults.ts'
import { type Problem, type ProblemCode, problemSchema } from '../../shared/contract/problem.ts'
import { faultOf } from '../support/checked-replies.ts'
import type { DescribedOperation } from './operations.ts'
import type { FuzzRequest } from './requests.ts'
import type { Schemas } from './schema.ts'

/** Problems that say by pointers what of the body or the query is at fault. */
const WITH_POINTERS: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'unreadable-json',
  'bad-request',
  'contract-broken',
  'body-too-large',
  'unsupported-media-type',
  'unknown-sku',
])

/** What a valid request may be told beside an answer: the shop, the unit, the version or the plan is not so. */
const OF_VALID: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'bad-request',
  'contract-broken',
  'unknown-shop',
  'unknown-sku',
  'unknown-version',
  'not-found',
  'precondition-failed',
])

/**
 * What a reply to a fuzzed request has against the contract.
 *
 * @param schemas - The document
 * @param operation - The operation that the request was made for
 * @param request - The request
 * @param reply - What came back
 * @returns A sentence, or undefined where nothing is wrong
 */
export function verdictOn(
  { schemas, operation }: { readonly schemas: Schemas; readonly operation: DescribedOperation },
  request: FuzzRequest,
  reply: Pick<LightMyRequestResponse, 'statusCode' | 'headers' | 'body'>,
): string | undefined {
  const { statusCode, headers, body } = reply
  if (statusCode >= 500) return `answers ${statusCode}: ${body.slice(0, 300)}`
  const fault = faultOf(request.method, request.url, reply)
  if (fault !== undefined) return fault
  if (headers['x-request-id'] === undefined) return 'has no request id'
  if (headers['x-content-type-options'] !== 'nosniff') return 'has no security headers'
  if (request.method === 'HEAD') return body === '' ? undefined : 'answers HEAD with a body'
  if (statusCode === 200 && body === '') return 'answers 200 without a body'
  if (statusCode < 400) return acceptedFault(schemas, operation, request)
  return problemFault(schemas, { operation, request, problem: problemSchema.parse(JSON.parse(body)) })
}

/** An answer to a body that the document does not allow. */
function acceptedFault(
  schemas: Schemas,
  operation: DescribedOperation,
  request: FuzzRequest,
): string | undefined {
  if (operation.isKeyed && request.key !== 'whole' && request.key !== 'reading') {
    return `lets in the key "${request.key}"`
  }
  if (operation.method === 'PUT' && request.method === 'PUT' && request.key !== 'whole') {
    return `lets the key "${request.key}" write`
  }
  const sent = sentJson(operation, request)
  if (sent === undefined) return undefined
  if (!sent.readable) return 'answers a body that is no sound JSON'
  return sent.keeps(schemas) ? undefined : 'answers a body that breaks the contract'
}

function problemFault(
  schemas: Schemas,
  {
    operation,
    request,
    problem,
  }: { readonly operation: DescribedOperation; readonly request: FuzzRequest; readonly problem: Problem },
): string | undefined {
  const told = JSON.stringify(problem).slice(0, 400)
  if (request.grade === 'valid' && !OF_VALID.has(problem.code)) return `refuses what is valid: ${told}`
  if (!WITH_POINTERS.has(problem.code)) return undefined
  const { errors = [] } = problem
  if (errors.length === 0) return `points at nothing: ${told}`
  for (const { pointer, message } of errors) {
    if (!/^(\/([^~/]|~[01])*)*$/su.test(pointer)) return `has a pointer that is none: ${pointer}`
    if (message.trim().length < 5) return `says nothing: ${told}`
  }
  if (problem.code !== 'contract-broken') return undefined
  const sent = sentJson(operation, request)
  if (sent === undefined || !sent.readable) return undefined
  const astray = errors.find(({ pointer }) => !pointsInto(sent.value, pointer))
  if (astray !== undefined) return `points past the body: ${astray.pointer}`
  const { brokenAt } = request
  if (brokenAt === undefined || sent.keeps(schemas)) return undefined
  if (errors.some(({ pointer }) => areRelated(pointer, brokenAt))) return undefined
  return `does not point at ${brokenAt}: ${told}`
}

interface SentJson {
  readonly readable: boolean
  readonly value: unknown
  keeps(schemas: Schemas): boolean
}

/** The body of a request where the operation takes it as one JSON document. */
function sentJson(operation: DescribedOperation, request: FuzzRequest): SentJson | undefined {
  const schema = operation.bodies['application/json']
  const { method, payload, headers, url } = request
  if (schema === undefined || payload === undefined || method !== operation.method) return undefined
  if (/[?&]part=/.test(url) || !/^application\/json\b/i.test(headers['content-type'] ?? '')) return undefined
  const text = payload.toString()
  try {
    const value: unknown = JSON.parse(text)
    return {
      readable: jsonFault(text) === undefined,
      value,
      keeps: (schemas) => schemas.holds(schema, value),
    }
  } catch {
    return { readable: false, value: undefined, keeps: () => false }
  }
}

/** Whether a pointer names a value of the body, or a member that is missing from one. */
function pointsInto(value: unknown, pointer: string): boolean {
  let node = value
  const steps = pointer.split('/').slice(1)
  for (const [at, step] of steps.entries()) {
    const name = step.replaceAll('~1', '/').replaceAll('~0', '~')
    if (typeof node !== 'object' || node === null) return false
    if (!Object.hasOwn(node, name)) return at === steps.length - 1
    node = (node as Readonly<Record<string, unknown>>)[name]
  }
  return true
}

/** Whether one place holds the other, or is it: a change may be told at what holds it or at what it lacks. */
function areRelated(one: string, other: string): boolean {
  return one === other || `${one}/`.startsWith(`${other}/`) || `${other}/`.startsWith(`${one}/`)
}
