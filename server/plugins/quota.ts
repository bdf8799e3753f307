/** What a quota has left for a caller after a call. */
export interface QuotaState {
  /** Whether the call was within the quota. */
  readonly allowed: boolean
  /** Calls left right now. */
  readonly remaining: number
  /** Until the quota is whole again, or, where none is left, until one call is. [s, rounded up] */
  readonly resetS: number
}

/** A quota that refills steadily, for many callers. */
export interface Quota {
  /** Calls for each window. */
  readonly limit: number
  /** [s] */
  readonly windowS: number
  /** Spends one call of a caller's quota, if there is one. */
  spend(caller: string, nowMs: number): QuotaState
  /** Callers remembered. */
  size(): number
}

/** What a {@link quota} is made of. */
export interface QuotaOptions {
  readonly limit: number
  readonly windowS: number
  /** Callers remembered at most; beyond, the least recently seen begin afresh. */
  readonly maxCallers: number
}

/**
 * A token bucket for each caller, kept as one number: the moment at which the bucket will be full again.
 * A bucket that is full need not be remembered, so callers seen in neither this window nor the last are dropped.
 *
 * @param options - Calls a window, its length, and how many callers to remember
 * @returns The quota; all callers begin with a full one
 */
export function quota({ limit, windowS, maxCallers }: QuotaOptions): Quota {
  const windowMs = windowS * 1000
  const perCallMs = windowMs / limit
  const perGeneration = Math.max(1, Math.floor(maxCallers / 2))
  let recent = new Map<string, number>()
  let older = new Map<string, number>()
  let turnsAt = Number.NEGATIVE_INFINITY

  function turn(nowMs: number): void {
    older = recent
    recent = new Map()
    turnsAt = nowMs + windowMs
  }

  return {
    limit,
    windowS,
    spend(caller, nowMs) {
      if (nowMs >= turnsAt || recent.size >= perGeneration) turn(nowMs)
      const known = recent.get(caller) ?? older.get(caller) ?? nowMs
      const fullAt = Math.max(known, nowMs) + perCallMs
      const missingMs = fullAt - nowMs
      const allowed = missingMs <= windowMs + 1e-6
      recent.set(caller, allowed ? fullAt : known)
      if (!allowed) return { allowed, remaining: 0, resetS: Math.ceil((missingMs - windowMs) / 1000) }
      const remaining = Math.floor((windowMs - missingMs) / perCallMs + 1e-6)
      const waitMs = remaining === 0 ? missingMs - windowMs + perCallMs : missingMs
      return { allowed, remaining, resetS: Math.ceil(waitMs / 1000) }
    },
    size: () => recent.size + older.size,
  }
}
