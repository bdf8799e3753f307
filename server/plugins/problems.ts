import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { z } from 'zod/v3'
import { PROBLEMS, type Problem, type ProblemCode } from '../../shared/contract/problem.ts'
import { type DocumentFault, explainFaults } from '../../shared/explain.ts'
import { StoreUnavailableError } from '../store/store.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** What the body must be, to explain a refusal in words. */
    bodySchema?: z.ZodTypeAny
  }
}

/** What a problem may say beside its code. */
export interface ProblemDetails {
  readonly detail?: string
  readonly errors?: NonNullable<Readonly<Problem['errors']>>
}

/** When to come back after the store did not answer. [s] */
const STORE_RETRY_S = 2

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
  const { status, title } = PROBLEMS[code]
  const problem: Problem = {
    type: `/docs#problem-${code}`,
    title,
    status,
    code,
    instance: reply.request.id,
    ...(details.detail === undefined ? {} : { detail: details.detail }),
    ...(details.errors === undefined ? {} : { errors: [...details.errors] }),
  }
  return reply
    .code(status)
    .header('content-type', 'application/problem+json; charset=utf-8')
    .serializer((payload: unknown) => JSON.stringify(payload))
    .send(problem)
}

/**
 * Makes every failure of the service a problem: unreadable and refused bodies with all faults at once,
 * unknown addresses, wrong methods, and our own mistakes with a fixed text.
 *
 * @param app - The service
 */
export function registerProblems(app: FastifyInstance): void {
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
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return sendProblem(reply, 'unsupported-media-type', {
        errors: [atRoot('Set the header content-type: application/json.')],
      })
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
