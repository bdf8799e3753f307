import { isAscii, isUtf8 } from 'node:buffer'
import type { FastifyInstance } from 'fastify'
import { jsonFault } from './json-faults.ts'

/** Code of the error for JSON that we don't take, whose message may be shown. */
export const JSON_REFUSED = 'JSON_REFUSED'
/** Code of the error for text in another encoding than UTF-8. */
export const CHARSET_REFUSED = 'CHARSET_REFUSED'

/** Thrown for a body that is not read; its message may be shown. */
export class RefusedBodyError extends Error {
  readonly statusCode: number
  readonly code: string
  constructor(message: string, code: string, statusCode: number) {
    super(message)
    this.code = code
    this.statusCode = statusCode
  }
}

/**
 * Makes JSON in UTF-8 the only body that is read, and takes only JSON that every reader reads alike.
 *
 * @param app - The service
 */
export function registerJsonBody(app: FastifyInstance): void {
  app.removeAllContentTypeParsers()
  app.addContentTypeParser<Buffer>('application/json', { parseAs: 'buffer' }, (request, bytes, done) => {
    try {
      done(null, readJson(bytes, request.headers['content-type'] ?? ''))
    } catch (error) {
      done(error as Error)
    }
  })
}

/**
 * Reads JSON that every reader reads alike.
 *
 * @param bytes - A body
 * @param contentType - The header that came with it
 * @returns The value
 * @throws RefusedBodyError where it is no JSON in UTF-8, or readers would not agree on it
 */
export function readJson(bytes: Buffer, contentType: string): unknown {
  if (!isUtf8Labelled(contentType)) {
    throw new RefusedBodyError('Send JSON in UTF-8.', CHARSET_REFUSED, 415)
  }
  if (!isUtf8(bytes)) throw refused('The body is not in UTF-8.')
  const text = bytes.toString(isAscii(bytes) ? 'latin1' : 'utf8')
  const value = parse(text)
  const fault = jsonFault(text)
  if (fault !== undefined) throw refused(fault)
  return value
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw refused('This is not readable JSON.')
  }
}

function refused(message: string): RefusedBodyError {
  return new RefusedBodyError(message, JSON_REFUSED, 400)
}

function isUtf8Labelled(contentType: string): boolean {
  const charset = /;\s*charset\s*=\s*"?([^\s;"]*)/i.exec(contentType)?.[1]
  return charset === undefined || /^utf-?8$/i.test(charset)
}
