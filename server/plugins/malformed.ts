import type { ServerResponse } from 'node:http'
import { STATUS_CODES } from 'node:http'
import type { Socket } from 'node:net'
import type { FastifyServerOptions } from 'fastify'
import { PROBLEMS, type ProblemCode } from '../../shared/contract/problem.ts'
import { SECURITY_HEADERS } from './headers.ts'
import { problemOf } from './problems.ts'

/** What Node's parser calls the faults that have a status of their own. */
const CODES: Readonly<Record<string, ProblemCode>> = {
  HPE_HEADER_OVERFLOW: 'headers-too-large',
  ERR_HTTP_REQUEST_TIMEOUT: 'request-timeout',
  HPE_CHUNK_EXTENSIONS_OVERFLOW: 'body-too-large',
}

/**
 * Answers what is not HTTP, or is not so in time, with a problem like any other.
 *
 * @param nextId - Makes the id that the problem carries
 * @param publicUrl - What links begin with
 * @returns Fastify's `clientErrorHandler`
 */
export function malformedHandler(
  nextId: () => string,
  publicUrl: string,
): NonNullable<FastifyServerOptions['clientErrorHandler']> {
  return (error, socket) => {
    // The caller has gone, or part of a reply has: there is nobody to answer, or no place for it.
    const underWay = (socket as Socket & { _httpMessage?: ServerResponse })._httpMessage
    if (error.code === 'ECONNRESET' || underWay?.headersSent === true) {
      socket.destroy()
      return
    }
    cutOff(socket, { code: CODES[error.code ?? ''] ?? 'malformed-request', id: nextId(), publicUrl })
  }
}

/**
 * Answers a problem past Fastify, and closes the connection.
 *
 * @param socket - The connection; no reply may have begun on it
 * @param problem.code - The problem's code
 * @param problem.id - Id of the request
 * @param problem.publicUrl - What links begin with
 */
export function cutOff(
  socket: Socket,
  problem: { readonly code: ProblemCode; readonly id: string; readonly publicUrl: string },
): void {
  if (!socket.writable) {
    socket.destroy()
    return
  }
  const { status } = PROBLEMS[problem.code]
  const body = JSON.stringify(problemOf(problem))
  const headers = {
    ...SECURITY_HEADERS,
    'content-type': 'application/problem+json; charset=utf-8',
    'content-length': String(Buffer.byteLength(body)),
    'x-request-id': problem.id,
    vary: 'Origin',
    connection: 'close',
  }
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}`)
  socket.write([`HTTP/1.1 ${status} ${STATUS_CODES[status]}`, ...lines, '', body].join('\r\n'))
  socket.destroySoon()
}
