import type { Problem } from '../shared/contract/problem.ts'

/** Why the service gave no answer, in the words that decide what the shopper is told. */
export type Failure =
  | { readonly kind: 'offline' | 'slow' | 'unreachable' | 'down' | 'unknown-shop' | 'unknown-unit' }
  | { readonly kind: 'refused'; readonly messages: readonly string[] }
  | { readonly kind: 'busy'; readonly retryAfterS: number }

/** An answer of the service, why there is none, or undefined where the caller took the question back. */
export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly failure: Failure }
  | undefined

/** Longest wait for one answer. [ms] */
export const TIME_OUT_MS = 8000

/** Wait before asking again where a busy service names none. [s] */
const RETRY_AFTER_S = 10

/**
 * Asks the service. Never rejects.
 *
 * @param url - The question
 * @param stop - Takes the question back
 * @param request - Body of a POST; a GET without
 * @returns The answer or why there is none
 */
export async function ask<T>(url: string, stop: AbortController, request?: unknown): Promise<Reply<T>> {
  let late = false
  const giveUp = setTimeout(() => {
    late = true
    stop.abort()
  }, TIME_OUT_MS)
  let failure: Failure = lost()
  try {
    const response = await fetch(url, {
      signal: stop.signal,
      credentials: 'omit',
      ...(request === undefined ? {} : posting(request)),
    })
    const body: unknown = await response.json().catch(() => undefined)
    const object = typeof body === 'object' && body !== null ? body : undefined
    if (response.ok && object !== undefined) return { ok: true, value: object as T }
    failure = failureOf(response, object ?? {})
  } catch {
    failure = lost()
  } finally {
    clearTimeout(giveUp)
  }
  if (late) failure = { kind: 'slow' }
  else if (stop.signal.aborted) return undefined
  return { ok: false, failure }
}

/** The failure of a request that came to nothing. */
export function lost(): Failure {
  return { kind: navigator.onLine ? 'unreachable' : 'offline' }
}

function posting(request: unknown): RequestInit {
  return { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(request) }
}

function failureOf({ status, headers }: Response, { code, errors }: Partial<Problem>): Failure {
  if (status === 429) {
    const seconds = Number(headers.get('retry-after'))
    return { kind: 'busy', retryAfterS: seconds > 0 ? Math.ceil(seconds) : RETRY_AFTER_S }
  }
  if (code === 'unknown-sku') return { kind: 'unknown-unit' }
  if (status === 404) return { kind: 'unknown-shop' }
  if (status < 400 || status >= 500) return { kind: 'down' }
  return { kind: 'refused', messages: Array.isArray(errors) ? errors.map(({ message }) => message) : [] }
}
