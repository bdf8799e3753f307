import type { FastifyReply, FastifyRequest } from 'fastify'
import { sendProblem } from '../plugins/problems.ts'
import type { VersionEntry } from '../store/store.ts'
import { etagOf } from '../store/versions.ts'

/** A body with the validator that goes with it. */
export interface Tagged {
  readonly etag: string
  readonly type: string
  readonly text: string
}

/**
 * Answers a read, with 304 where the caller holds it already (RFC 9110, 13.1.2).
 *
 * @param request - The request
 * @param reply - Receives the answer
 * @param body - What there is to send
 * @returns The reply, sent
 */
export function sendTagged(request: FastifyRequest, reply: FastifyReply, body: Tagged): FastifyReply {
  reply.header('etag', body.etag).header('cache-control', 'private, no-cache').header('vary', 'authorization')
  const known = tagsOf(request.headers['if-none-match']).map((tag) => tag.replace(/^W\//, ''))
  if (known.includes(body.etag) || known.includes('*')) return reply.code(304).send()
  return reply.type(body.type).send(body.text)
}

/**
 * Holds a write to the version that its caller has seen (RFC 9110, 13.1.1; RFC 6585, 3): 428 without If-Match,
 * 412 where another version is in force by now.
 *
 * @param request - The request
 * @param reply - Receives the problem where there is one
 * @param write.inForce - The version in force
 * @param write.required - Whether If-Match must be there
 * @returns True where the write may go on; false where the problem has been sent
 */
export function mayReplace(
  request: FastifyRequest,
  reply: FastifyReply,
  write: { readonly inForce: VersionEntry; readonly required: boolean },
): boolean {
  const { inForce } = write
  const header = request.headers['if-match']
  if (header === undefined) {
    if (!write.required) return true
    sendProblem(reply, 'precondition-required', {
      detail: 'Send the ETag of the range that you have changed in the header If-Match.',
    })
    return false
  }
  const tags = tagsOf(header)
  // A weak tag never matches: it is no promise that the bytes are the same.
  if (tags.includes('*') || tags.includes(etagOf(inForce))) return true
  sendStale(reply, inForce)
  return false
}

/**
 * Answers that another version is in force, and whose.
 *
 * @param reply - The reply to send on
 * @param inForce - The version in force
 * @returns The reply, sent
 */
export function sendStale(reply: FastifyReply, inForce: VersionEntry): FastifyReply {
  return sendProblem(reply.header('etag', etagOf(inForce)), 'precondition-failed', {
    detail: `Version ${inForce.version} of "${inForce.author}" is in force since ${inForce.createdAt}; read it, make your change in it and send that.`,
  })
}

function tagsOf(header: string | undefined): readonly string[] {
  return header?.split(',').map((tag) => tag.trim()) ?? []
}
