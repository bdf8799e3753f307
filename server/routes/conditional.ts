import type { FastifyReply, FastifyRequest } from 'fastify'
import { sendProblem } from '../plugins/problems.ts'
import { rangeChanges } from '../range-files/diff.ts'
import type { Store, StoredVersion } from '../store/store.ts'
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
  reply.header('etag', body.etag).header('cache-control', 'private, no-cache')
  const known = tagsOf(request.headers['if-none-match']).map((tag) => tag.replace(/^W\//, ''))
  if (known.includes(body.etag) || known.includes('*')) return reply.code(304).send()
  return reply.type(body.type).send(body.text)
}

/**
 * Holds a write to the version that its caller has seen (RFC 9110, 13.1.1; RFC 6585, 3): 428 without If-Match,
 * 412 where another version is in force by now, with what changed since the caller's.
 *
 * @param request - The request
 * @param reply - Receives the problem where there is one
 * @param write.store - Where the caller's version is looked up
 * @param write.inForce - The version in force
 * @param write.required - Whether If-Match must be there
 * @returns True where the write may go on; false where the problem has been sent
 */
export async function mayReplace(
  request: FastifyRequest,
  reply: FastifyReply,
  write: { readonly store: Store; readonly inForce: StoredVersion; readonly required: boolean },
): Promise<boolean> {
  const { store, inForce } = write
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
  sendStale(reply, inForce, await seenVersion(store, inForce.shopId, tags[0]))
  return false
}

/**
 * Answers that another version is in force, whose, and what it changed.
 *
 * @param reply - The reply to send on
 * @param inForce - The version in force
 * @param seen - The version that the caller has seen, where it is still kept
 * @returns The reply, sent
 */
export function sendStale(
  reply: FastifyReply,
  inForce: StoredVersion,
  seen: StoredVersion | undefined,
): FastifyReply {
  return sendProblem(reply.header('etag', etagOf(inForce)), 'precondition-failed', {
    detail: `Version ${inForce.version} of "${inForce.author}" is in force since ${inForce.createdAt}; read it, make your change in it and send that.`,
    ...(seen === undefined ? {} : { changes: rangeChanges(JSON.parse(seen.text), JSON.parse(inForce.text)) }),
  })
}

/** The version that a tag names, if it is one of ours and still kept. */
async function seenVersion(
  store: Store,
  shopId: string,
  tag: string | undefined,
): Promise<StoredVersion | undefined> {
  const number = /^"([1-9]\d{0,8})-/.exec(tag ?? '')?.[1]
  const stored = number === undefined ? undefined : await store.version(shopId, Number(number))
  return stored !== undefined && etagOf(stored) === tag ? stored : undefined
}

function tagsOf(header: string | undefined): readonly string[] {
  return header?.split(',').map((tag) => tag.trim()) ?? []
}
