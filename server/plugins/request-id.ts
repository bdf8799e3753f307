import { randomBytes } from 'node:crypto'
import type { IncomingMessage } from 'node:http'

/** What may come in as a request id: nothing that could break a line, a header or a query of a log. */
const ACCEPTED_ID = /^[A-Za-z0-9][A-Za-z0-9._-]{7,63}$/

/** W3C Trace Context, version 00. */
const TRACE_PARENT = /^00-([0-9a-f]{32})-[0-9a-f]{16}-[0-9a-f]{2}$/

/**
 * Makes ids for requests: the caller's own where it is sound, else one that no other instance makes.
 *
 * @returns A maker of ids
 */
export function requestIds(): (message: Pick<IncomingMessage, 'headers'>) => string {
  const prefix = `r${randomBytes(6).toString('hex')}-`
  let count = 0
  return ({ headers }) => {
    const given = headers['x-request-id']
    if (typeof given === 'string' && ACCEPTED_ID.test(given)) return given
    count += 1
    return prefix + count.toString(36)
  }
}

/**
 * The trace that a request belongs to.
 *
 * @param traceparent - The header of that name (W3C Trace Context, 3.2)
 * @returns The trace id, or undefined where there is none or it is malformed
 */
export function traceIdOf(traceparent: unknown): string | undefined {
  return typeof traceparent === 'string' ? TRACE_PARENT.exec(traceparent)?.[1] : undefined
}
