import { setTimeout as pause } from 'node:timers/promises'
import { type Dispatcher, request } from 'undici'
import type { Problem } from '../../openapi/client-types.ts'
import { ConnectionError, ProblemError } from './errors.ts'
import { pauseBefore, type RetryPolicy, secondsOf } from './retries.ts'

/** One call as it goes out. */
export interface Outgoing {
  readonly url: string
  readonly method: 'GET' | 'POST' | 'PUT'
  readonly headers: Readonly<Record<string, string>>
  readonly body: string | undefined
}

/** How a call is carried out. */
export interface CallSettings {
  /** Time for one try. [ms] */
  readonly timeoutMs: number
  readonly retry: RetryPolicy
  readonly signal: AbortSignal | undefined
  readonly dispatcher: Dispatcher | undefined
}

/** A good reply as it came in. */
export interface Incoming {
  readonly status: number
  readonly headers: Readonly<Record<string, string | undefined>>
  readonly text: string
}

/** Replies that ask to come back later; nothing has been done then. */
const COME_BACK = new Set([429, 503])
/** Methods that may be sent again where it is unknown whether they arrived. */
const REPEATABLE = new Set(['GET'])

/**
 * Makes a call, and makes it again where the service asks for that or can't be reached.
 *
 * @param outgoing - What is sent
 * @param settings - Time-outs, tries and the caller's signal
 * @returns The reply, of status 200 or 304
 * @throws ProblemError where the service says that something is wrong
 * @throws ConnectionError where there is no reply, or one that can't be the service's
 */
export async function call(outgoing: Outgoing, settings: CallSettings): Promise<Incoming> {
  for (let tried = 1; ; tried += 1) {
    const result = await tryOnce(outgoing, settings)
    if (!(result instanceof Error)) return result
    const wait = mayRetry(result, outgoing)
      ? pauseBefore(settings.retry, tried, retryAfterOf(result))
      : undefined
    if (wait === undefined) throw result
    await pause(wait, undefined, settings.signal === undefined ? {} : { signal: settings.signal }).catch(
      () => {
        throw aborted()
      },
    )
  }
}

async function tryOnce(
  { url, method, headers, body }: Outgoing,
  { timeoutMs, signal, dispatcher }: CallSettings,
): Promise<Incoming | ProblemError | ConnectionError> {
  const timeout = AbortSignal.timeout(timeoutMs)
  try {
    const response = await request(url, {
      method,
      headers,
      signal: signal === undefined ? timeout : AbortSignal.any([signal, timeout]),
      ...(body === undefined ? {} : { body }),
      ...(dispatcher === undefined ? {} : { dispatcher }),
    })
    const text = await response.body.text()
    const { statusCode: status } = response
    const incoming = { status, headers: single(response.headers), text }
    return status === 200 || status === 304 ? incoming : failureOf(incoming)
  } catch (error) {
    if (signal?.aborted === true) return aborted(error)
    if (timeout.aborted) {
      return new ConnectionError('timed-out', `${url} did not answer within ${timeoutMs} ms.`, error)
    }
    return new ConnectionError('unreachable', `${url} can't be reached.`, error)
  }
}

function failureOf({ status, headers, text }: Incoming): ProblemError | ConnectionError {
  if (headers['content-type']?.startsWith('application/problem+json') === true) {
    const problem = parsed(text) as Problem | undefined
    if (problem !== undefined) return new ProblemError(problem, secondsOf(headers['retry-after'], Date.now()))
  }
  return new ConnectionError('unexpected-reply', `Something answered ${status} that is not the service.`)
}

function mayRetry(error: ProblemError | ConnectionError, { method }: Outgoing): boolean {
  if (error instanceof ProblemError) return COME_BACK.has(error.status)
  return (error.code === 'unreachable' || error.code === 'timed-out') && REPEATABLE.has(method)
}

function retryAfterOf(error: ProblemError | ConnectionError): number | undefined {
  return error instanceof ProblemError ? error.retryAfterS : undefined
}

function aborted(cause?: unknown): ConnectionError {
  return new ConnectionError('aborted', 'The call was aborted.', cause)
}

function single(headers: Readonly<Record<string, string | string[] | undefined>>) {
  return Object.fromEntries(
    Object.entries(headers).map(([name, value]) => [name, Array.isArray(value) ? value.join(', ') : value]),
  )
}

/**
 * JSON that may not be any.
 *
 * @param text - Any text
 * @returns Its value, or undefined
 */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
