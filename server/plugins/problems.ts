import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { z } from 'zod/v3'
import { PROBLEMS, type Problem, type ProblemCode } from '../../shared/contract/problem.ts'
import { type DocumentFault, explainFaults } from '../../shared/explain.ts'
import { StoreUnavailableError } from '../store/store.ts'
import { SECURITY_HEADERS } from './headers.ts'
import { CHARSET_REFUSED, JSON_REFUSED } from './json-body.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** What the body must be, to explain a refusal in words. */
    bodySchema?: z.ZodTypeAny
  }
  interface FastifyInstance {
    /** Where callers reach the service, without a closing slash; empty where it isn't known. */
    publicUrl: string
  }
}

/** What a problem may say beside its code. */
export interface ProblemDetails {
  readonly detail?: string
  readonly errors?: NonNullable<Readonly<Problem['errors']>>
  /** Names of the quotas that are used up. */
  readonly violatedPolicies?: readonly string[]
  /** What others have changed in the meantime. */
  readonly changes?: NonNullable<Problem['changes']>
}

/** When to come back after the store did not answer. [s] */
const STORE_RETRY_S = 2

/** Faults listed in one problem, so that no reply is many times as large as its request. */
export const FAULTS_LISTED = 500

/** The type of a quota that is used up (RateLimit header fields for HTTP, IETF draft; from memory). */
const QUOTA_TYPE = 'https://iana.org/assignments/http-problem-types#quota-exceeded'

export const PROBLEM_TYPE = 'application/problem+json; charset=utf-8'

/**
 * An RFC 9457 problem.
 *
 * @param of.code - The problem's code; status and title go by it
 * @param of.id - Id of the request
 * @param of.publicUrl - Where callers reach the service; links are relative where it isn't known
 * @param details - What there is to say beside
 * @returns The problem
 */
export function problemOf(
  { code, id, publicUrl }: { readonly code: ProblemCode; readonly id: string; readonly publicUrl: string },
  { detail, errors, violatedPolicies, changes }: ProblemDetails = {},
): Problem {
  const { status, title } = PROBLEMS[code]
  return {
    type: code === 'rate-limited' ? QUOTA_TYPE : `${publicUrl}/docs#problem-${code}`,
    title,
    status,
    code,
    instance: id,
    ...(detail === undefined ? {} : { detail }),
    ...(errors === undefined ? {} : { errors: errors.slice(0, FAULTS_LISTED) }),
    ...(violatedPolicies === undefined ? {} : { 'violated-policies': [...violatedPolicies] }),
    ...(changes === undefined ? {} : { changes }),
  }
}

/**
 * Answers with an RFC 9457 problem.
 *
 * @param reply - The reply to send on
 * @param code - The problem's code; status and title go by it
 * @param details - What there is to say beside
 * @returns The reply, sent
 */
export function sendProblem(
  reply: FastifyReply,
  code: ProblemCode,
  details: ProblemDetails = {},
): FastifyReply {
  // As text, so that no serialiser of a route's own replies touches it.
  return reply
    .code(PROBLEMS[code].status)
    .type(PROBLEM_TYPE)
    .send(problemText(reply, code, details))
}

/**
 * A problem as the text of a reply, for those who can't send one.
 *
 * @param reply - The reply that it goes on
 * @param code - The problem's code
 * @param details - What there is to say beside
 * @returns JSON
 */
export function problemText(reply: FastifyReply, code: ProblemCode, details: ProblemDetails = {}): string {
  const { publicUrl = '' } = reply.server
  return JSON.stringify(problemOf({ code, id: reply.request.id, publicUrl }, details))
}

/**
 * Makes every failure of the service a problem: unreadable and refused bodies with all faults at once,
 * unknown addresses, wrong methods, and our own mistakes with a fixed text.
 *
 * @param app - The service
 * @param publicUrl - Where callers reach it
 */
export function registerProblems(app: FastifyInstance, publicUrl = ''): void {
  app.decorate('publicUrl', publicUrl)
  app.setErrorHandler((error: FastifyError, request, reply) => problemFor(error, request, reply))
  app.setNotFoundHandler((request, reply) => {
    const url = request.url.split('?', 1)[0] ?? '/'
    const allowed = METHODS.filter((method) => app.findRoute({ url, method }) !== null)
    if (allowed.length === 0) return sendProblem(reply, 'not-found')
    return sendProblem(reply.header('allow', allowed.join(', ')), 'method-not-allowed', {
      detail: `Allowed here: ${allowed.join(', ')}.`,
    })
  })
}

/**
 * Answers what goes wrong before there is a route: an address that can't be decoded, or a part of it too long.
 *
 * @param error - What Fastify says of it
 * @param request - The request
 * @param reply - Receives the problem; hooks have not run for it
 */
export function answerFrameworkError(
  error: FastifyError,
  request: FastifyRequest,
  reply: FastifyReply,
): void {
  reply.headers(SECURITY_HEADERS).header('x-request-id', request.id).header('vary', 'Origin')
  if (error.code === 'FST_ERR_MAX_PARAM_LENGTH') sendProblem(reply, 'not-found')
  else sendProblem(reply, 'bad-request', { errors: [atRoot('The address cannot be decoded.')] })
}

const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'DELETE'] as const

function problemFor(error: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  if (error instanceof StoreUnavailableError) {
    request.log.error({ err: error }, 'the store is unavailable')
    return sendProblem(reply.header('retry-after', String(STORE_RETRY_S)), 'store-unavailable')
  }
  if (error.validation !== undefined && error.validationContext === 'querystring') {
    return sendProblem(reply, 'bad-request', { errors: refusedQuery(error) })
  }
  if (error.validation !== undefined) {
    return sendProblem(reply, 'contract-broken', { errors: refusedBody(error, request) })
  }
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return sendProblem(reply, 'body-too-large', { errors: [atRoot('Send less in one request.')] })
    case CHARSET_REFUSED:
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return sendProblem(reply, 'unsupported-media-type', {
        errors: [atRoot('Set the header content-type: application/json.')],
      })
    case 'FST_ERR_HANDLER_TIMEOUT':
      request.log.error({ err: error }, 'a handler took too long')
      return sendProblem(reply.header('retry-after', String(STORE_RETRY_S)), 'timed-out')
    case JSON_REFUSED:
      return sendProblem(reply, 'unreadable-json', { errors: [atRoot(error.message)] })
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
    case 'FST_ERR_CTP_INVALID_JSON_BODY':
    case 'FST_ERR_CTP_INVALID_CONTENT_LENGTH':
      return sendProblem(reply, 'unreadable-json', { errors: [atRoot('This is not readable JSON.')] })
  }
  if (error.statusCode !== undefined && error.statusCode < 500) {
    return sendProblem(reply, 'bad-request', { errors: [atRoot('The request could not be read.')] })
  }
  request.log.error({ err: error }, 'request failed')
  return sendProblem(reply, 'internal-error')
}

function refusedBody(error: FastifyError, request: FastifyRequest): readonly DocumentFault[] {
  const schema = request.routeOptions.config.bodySchema
  const explained = schema === undefined ? [] : explainFaults(schema, request.body)
  if (explained.length > 0) return explained
  return (error.validation ?? []).map((fault) => ({
    pointer: fault.instancePath,
    message: `${fault.message ?? 'is not allowed'}.`,
  }))
}

function refusedQuery(error: FastifyError): readonly DocumentFault[] {
  return (error.validation ?? []).map((fault) => {
    const unknown = fault.params.additionalProperty
    const name = typeof unknown === 'string' ? unknown : fault.instancePath.slice(1)
    return { pointer: '', message: `Query parameter "${name}" ${fault.message ?? 'is not allowed'}.` }
  })
}

function atRoot(message: string): DocumentFault {
  return { pointer: '', message }
}
