/** When a call is made again. */
export interface RetryPolicy {
  /** Tries after the first; 0 for none. */
  readonly retries: number
  /** Pause before the second try where the service names none; doubles each time. [ms] */
  readonly firstPauseMs: number
  /** Longest pause; a service that asks for more is not waited for. [ms] */
  readonly longestPauseMs: number
}

/** Three tries in all, within a few seconds. */
export const DEFAULT_RETRIES: RetryPolicy = { retries: 2, firstPauseMs: 200, longestPauseMs: 10_000 }

/**
 * How long to wait before the next try. The service's own word is kept to, and a little chance added, so that many
 * clients don't come back at once.
 *
 * @param policy - When a call is made again
 * @param tried - Tries made, from 1
 * @param retryAfterS - What the service asked for. [s]
 * @returns The pause [ms], or undefined where the call should fail now
 */
export function pauseBefore(
  policy: RetryPolicy,
  tried: number,
  retryAfterS: number | undefined,
): number | undefined {
  if (tried > policy.retries) return undefined
  const asked = (retryAfterS ?? 0) * 1000
  if (asked > policy.longestPauseMs) return undefined
  const own = Math.min(policy.longestPauseMs, policy.firstPauseMs * 2 ** (tried - 1))
  return Math.max(asked, own / 2) + (Math.random() * own) / 2
}

/**
 * Seconds of a Retry-After header (RFC 9110, 10.2.3).
 *
 * @param header - Its value: seconds or a date
 * @param nowMs - The moment to count a date from. [ms since 1970]
 * @returns Seconds, or undefined where there is none to read
 */
export function secondsOf(header: string | undefined, nowMs: number): number | undefined {
  if (header === undefined) return undefined
  if (/^\d+$/.test(header)) return Number(header)
  const date = Date.parse(header)
  return Number.isNaN(date) ? undefined : Math.max(0, (date - nowMs) / 1000)
}
