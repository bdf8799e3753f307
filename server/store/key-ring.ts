import { timingSafeEqual } from 'node:crypto'
import { hashOf, isWellFormedSecret } from './key-secret.ts'
import type { StoredKey } from './store.ts'

/** Keys in memory: no caller waits for the database to be let in. */
export interface KeyRing {
  /** The live key that a secret opens, or undefined: unknown, revoked and expired look alike. */
  find(secret: string): StoredKey | undefined
  /** Replaces all keys. */
  replace(keys: readonly StoredKey[]): void
  /** Uses since the last call, by key id. */
  takeUses(): ReadonlyMap<string, string>
}

/**
 * Makes an empty key ring.
 *
 * @param now - The clock. [ms since 1970]
 * @returns The ring
 */
export function keyRing(now: () => number = Date.now): KeyRing {
  let byHash: ReadonlyMap<string, StoredKey> = new Map()
  let uses = new Map<string, string>()
  return {
    find(secret) {
      if (!isWellFormedSecret(secret)) return undefined
      const hash = hashOf(secret)
      const key = byHash.get(hash)
      if (key === undefined || !timingSafeEqual(Buffer.from(key.secretHash), Buffer.from(hash)))
        return undefined
      const at = now()
      if (key.revokedAt !== null) return undefined
      if (key.expiresAt !== null && Date.parse(key.expiresAt) <= at) return undefined
      uses.set(key.id, new Date(at).toISOString())
      return key
    },
    replace(keys) {
      byHash = new Map(keys.map((key) => [key.secretHash, key]))
    },
    takeUses() {
      const taken = uses
      uses = new Map()
      return taken
    },
  }
}
