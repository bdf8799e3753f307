import type { FitAnswer, SizingAnswer } from '../shared/contract/answers.ts'
import type { FitRequest, SizingRequest } from '../shared/contract/plan.ts'
import type { Problem } from '../shared/contract/problem.ts'
import type { Setup } from '../shared/contract/setup.ts'

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

/** The calls that a page makes. */
export interface Api {
  setup(locale: string, signal: AbortSignal): Promise<Reply<Setup>>
  sizing(request: SizingRequest, signal: AbortSignal): Promise<Reply<SizingAnswer>>
  fit(request: FitRequest, signal: AbortSignal): Promise<Reply<FitAnswer>>
}

/** Longest wait for one answer. [ms] */
export const TIME_OUT_MS = 8000

/** Wait before asking again where a busy service names none. [s] */
const RETRY_AFTER_S = 10

/**
 * The service of one shop. No call ever rejects.
 *
 * @param base - Where the service runs, such as `https://api.example`
 * @param shop - Id of the shop
 * @returns Its calls
 */
export function apiOf(base: string, shop: string): Api {
  const root = `${base.replace(/\/+$/, '')}/v1/shops/${encodeURIComponent(shop)}`
  const post = (body: unknown): RequestInit => ({
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
  return {
    setup: (locale, signal) => ask(`${root}/setup?locale=${encodeURIComponent(locale)}`, {}, signal),
    sizing: (request, signal) => ask(`${root}/sizing`, post(request), signal),
    fit: (request, signal) => ask(`${root}/fit`, post(request), signal),
  }
}

async function ask<T>(url: string, init: RequestInit, signal: AbortSignal): Promise<Reply<T>> {
  const stop = new AbortController()
  let late = false
  const giveUp = setTimeout(() => {
    late = true
    stop.abort()
  }, TIME_OUT_MS)
  const takeBack = () => stop.abort()
  signal.addEventListener('abort', takeBack)
  try {
    const response = await fetch(url, { ...init, signal: stop.signal, credentials: 'omit' })
    const body: unknown = await response.json().catch(() => undefined)
    if (signal.aborted) return undefined
    if (late) return { ok: false, failure: { kind: 'slow' } }
    if (response.ok && typeof body === 'object' && body !== null) return { ok: true, value: body as T }
    return { ok: false, failure: failureOf(response, body) }
  } catch {
    if (signal.aborted) return undefined
    if (late) return { ok: false, failure: { kind: 'slow' } }
    return { ok: false, failure: { kind: navigator.onLine ? 'unreachable' : 'offline' } }
  } finally {
    clearTimeout(giveUp)
    signal.removeEventListener('abort', takeBack)
  }
}

function failureOf(response: Response, body: unknown): Failure {
  const { status } = response
  const problem = (typeof body === 'object' && body !== null ? body : {}) as Partial<Problem>
  if (status === 429) {
    const seconds = Number(response.headers.get('retry-after'))
    return { kind: 'busy', retryAfterS: seconds > 0 ? Math.ceil(seconds) : RETRY_AFTER_S }
  }
  if (problem.code === 'unknown-sku') return { kind: 'unknown-unit' }
  if (status === 404) return { kind: 'unknown-shop' }
  if (status < 400 || status >= 500) return { kind: 'down' }
  const messages = Array.isArray(problem.errors) ? problem.errors.map(({ message }) => String(message)) : []
  return { kind: 'refused', messages }
}
