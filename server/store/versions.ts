import { createHash } from 'node:crypto'
import type { RangeDocument } from '../../core/index.ts'
import type { NewVersion, VersionEntry, VersionOrigin } from './store.ts'

/** Who makes a version, and how. */
export interface Making {
  readonly author: string
  readonly origin: VersionOrigin
  readonly restoredFrom?: number
}

/**
 * A range document as a version to be stored.
 *
 * @param document - A range that keeps the contract
 * @param making - Who makes it and how
 * @returns The version, dated now
 */
export function newVersion(document: RangeDocument, making: Making): NewVersion {
  const text = JSON.stringify(document)
  const digest = createHash('sha256').update(text).digest('base64url')
  return versionOf({ shopId: document.shop.id, text, digest }, making)
}

/**
 * A range that has been read as a version to be stored.
 *
 * @param range - The text of a range that keeps the contract, its digest, and its shop
 * @param making - Who makes it and how
 * @returns The version, dated now
 */
export function versionOf(range: Pick<NewVersion, 'shopId' | 'text' | 'digest'>, making: Making): NewVersion {
  return {
    shopId: range.shopId,
    text: range.text,
    digest: range.digest,
    author: making.author,
    createdAt: new Date().toISOString(),
    origin: making.origin,
    restoredFrom: making.restoredFrom ?? null,
  }
}

/**
 * The strong validator of a version.
 *
 * @param entry - Number and digest of the version
 * @returns An entity tag with its quotes
 */
export function etagOf(entry: Pick<VersionEntry, 'version' | 'digest'>): string {
  return `"${entry.version}-${entry.digest.slice(0, 16)}"`
}
