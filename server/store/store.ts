import type { KeyScope } from '../../shared/contract/range-admin.ts'
import type { DemandStore } from './demand.ts'

/** How a version of a range came about. */
export const VERSION_ORIGINS = ['seed', 'written', 'restored', 'imported', 'pulled'] as const
export type VersionOrigin = (typeof VERSION_ORIGINS)[number]

/** Who made a version, when and how. Times are ISO 8601 in UTC. */
export interface VersionEntry {
  readonly shopId: string
  readonly version: number
  /** SHA-256 of the document's text, base64url. */
  readonly digest: string
  /** Name of the key, or of the command, that made it. */
  readonly author: string
  readonly createdAt: string
  readonly origin: VersionOrigin
  /** The version that was restored. */
  readonly restoredFrom: number | null
}

/** A version with its document as JSON text. */
export interface StoredVersion extends VersionEntry {
  readonly text: string
}

/** What a new version is made of; its number is the store's to give. */
export type NewVersion = Omit<StoredVersion, 'version'>

/** A key as it is kept: never the secret, only its SHA-256. */
export interface StoredKey {
  readonly id: string
  readonly shopId: string
  readonly name: string
  /** SHA-256 of the whole key, hexadecimal. */
  readonly secretHash: string
  readonly scopes: readonly KeyScope[]
  readonly createdAt: string
  readonly expiresAt: string | null
  readonly revokedAt: string | null
  readonly lastUsedAt: string | null
}

/** What became of a write. */
export type WriteOutcome =
  | { readonly ok: true; readonly stored: StoredVersion }
  | { readonly ok: false; readonly reason: 'stale' | 'unknown-shop' }

/** Counters that rise with every change: what an instance polls. */
export interface Revisions {
  readonly ranges: number
  readonly keys: number
}

/**
 * Where shops, versions of their ranges, keys and demand are kept.
 *
 * Every method rejects with {@link StoreUnavailableError} where the database can't be reached or can't write;
 * the call may then be made again later. A write has either happened whole or not at all.
 */
export interface Store extends DemandStore {
  readonly kind: 'sqlite' | 'postgres'
  /** Brings the tables up to date; safe to call from several instances at once. */
  migrate(): Promise<void>
  /** The counters of changes. */
  revisions(): Promise<Revisions>
  /** The version in force of every shop, without documents. */
  heads(): Promise<readonly VersionEntry[]>
  /** The version in force of one shop, without its document. */
  head(shopId: string): Promise<VersionEntry | undefined>
  /** The versions in force of these shops, with their documents, in any order. */
  documents(shopIds: readonly string[]): Promise<readonly StoredVersion[]>
  /** One version of a shop's range, or the one in force where no number is given. */
  version(shopId: string, version?: number): Promise<StoredVersion | undefined>
  /** Versions of a shop's range, newest first, below `before` where it is given. */
  versions(shopId: string, page: VersionPage): Promise<readonly VersionEntry[]>
  /** Adds a shop with version 1 of its range; false where the shop exists. */
  createShop(version: NewVersion): Promise<boolean>
  /** Puts a new version in force, if `expectedVersion` still is. */
  writeRange(version: NewVersion, expectedVersion: number): Promise<WriteOutcome>
  /** All keys, revoked ones too. */
  keys(): Promise<readonly StoredKey[]>
  addKey(key: StoredKey): Promise<void>
  /** Revokes a key for good; false where there is no such key or it is revoked. */
  revokeKey(keyId: string, at: string): Promise<boolean>
  /** Notes when keys were last used. */
  noteKeyUse(uses: ReadonlyMap<string, string>): Promise<void>
  /** Calls `listener` soon after a change by any instance; a hint that may be missed, so poll as well. */
  onChange(listener: () => void): void
  close(): Promise<void>
}

/** Which versions to list. */
export interface VersionPage {
  readonly limit: number
  readonly before?: number | undefined
}

/** Versions kept for each shop; older ones go. */
export const VERSIONS_KEPT = 500

/** Thrown where the database can't be reached or can't write. Its message is for the log, never for a caller. */
export class StoreUnavailableError extends Error {
  constructor(cause: unknown) {
    super(`The store is unavailable: ${cause instanceof Error ? cause.message : String(cause)}`, { cause })
    this.name = 'StoreUnavailableError'
  }
}
