import { KEY_PREFIX } from '../store/key-secret.ts'

const SECRET = new RegExp(`${KEY_PREFIX}[A-Za-z0-9_-]+`, 'g')
/** The user part of an address, where databases have their password. */
const CREDENTIALS = /\/\/[^\s/@]+@/g
const BEARER = /\b(Bearer|Basic)\s+\S+/gi
const PASSWORD = /\b(password|pwd|secret|token)(["']?\s*[:=]\s*)["']?[^\s"',;]+/gi

/**
 * Takes secrets out of a text that goes into the log, such as the message of an error.
 *
 * @param text - Any text
 * @returns The text with keys, passwords and users of addresses blotted out
 */
export function redacted(text: string): string {
  return text
    .replace(SECRET, '[key]')
    .replace(CREDENTIALS, '//[user]@')
    .replace(BEARER, '$1 [secret]')
    .replace(PASSWORD, '$1$2[secret]')
}

/** What the log says of an error. */
export interface LoggedError {
  readonly type: string
  readonly message: string
  readonly stack: string
  readonly code: string | undefined
  // Fastify's type of a serialised error allows more.
  readonly [more: string]: unknown
}

/** How errors are written into the log: without secrets, and without the fields that libraries hang on them. */
export function loggedError(error: Error): LoggedError {
  return {
    type: error.name,
    message: redacted(error.message),
    stack: redacted(error.stack ?? ''),
    code: 'code' in error ? String(error.code) : undefined,
  }
}
