import { createHash } from 'node:crypto'
import type { RangeDocument } from '../../core/index.ts'
import type { PartList, RangeChanges } from '../../shared/contract/range-admin.ts'
import { type RangeReading, readRange } from '../../shared/range-reading.ts'
import { RefusedBodyError, readJson } from '../plugins/json-body.ts'
import { FAULTS_LISTED } from '../plugins/problems.ts'
import { rangeChanges } from './diff.ts'
import { type FileFault, type FileReading, readCsvList } from './read-csv-list.ts'

/** A body that is to become a range, as it came. */
export interface DraftBody {
  readonly kind: 'json' | 'csv'
  readonly bytes: Uint8Array
  /** The header Content-Type, for its character set. */
  readonly contentType: string
}

/** What there is to read: a body, and the range in force that it is to change. */
export interface Draft {
  /** Left out where nothing was sent. */
  readonly body?: DraftBody | undefined
  /** The list that the body holds; left out: it is the whole document. */
  readonly part?: PartList | undefined
  /** JSON text of the range in force, for all other lists and to compare with; left out for a new shop's. */
  readonly base?: string | undefined
}

/** A range that keeps the contract, as text, for that is what is stored and goes between threads. */
export interface ReadRange {
  readonly kind: 'range'
  readonly shopId: string
  readonly text: string
  /** SHA-256 of the text, base64url. */
  readonly digest: string
  /** What differs from the range in force. */
  readonly changes: RangeChanges
}

/** What became of a draft. */
export type DraftReading =
  | ReadRange
  | { readonly kind: 'faults'; readonly faults: readonly FileFault[]; readonly count: number }
  | { readonly kind: 'part-missing' }
  | {
      readonly kind: 'refused'
      readonly message: string
      readonly code: string
      readonly statusCode: number
    }

/** What became of a text from the store: as this release writes it, or why it can't be used. */
export type StoredReading =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string }

/**
 * Reads the range that a body makes of the one in force. Takes long for a large one: see `rangeReader`.
 *
 * @param draft - Body and range in force
 * @returns The range with what changes, its faults, or why the body isn't read at all
 */
export function readDraft({ body, part, base }: Draft): DraftReading {
  try {
    const before: RangeDocument | undefined = base === undefined ? undefined : JSON.parse(base)
    const reading = readBody(body, part, before)
    if (reading === 'part-missing') return { kind: 'part-missing' }
    if (!reading.ok) {
      const { faults } = reading
      return { kind: 'faults', faults: faults.slice(0, FAULTS_LISTED), count: faults.length }
    }
    const text = JSON.stringify(reading.range)
    const digest = createHash('sha256').update(text).digest('base64url')
    const changes = rangeChanges(before ?? reading.range, reading.range)
    return { kind: 'range', shopId: reading.range.shop.id, text, digest, changes }
  } catch (error) {
    if (!(error instanceof RefusedBodyError)) throw error
    const { message, code, statusCode } = error
    return { kind: 'refused', message, code, statusCode }
  }
}

function readBody(
  body: DraftBody | undefined,
  part: PartList | undefined,
  base: RangeDocument | undefined,
): FileReading | RangeReading | 'part-missing' {
  if (body?.kind === 'csv') {
    return part === undefined || base === undefined
      ? 'part-missing'
      : readCsvList({ bytes: body.bytes, list: part, base })
  }
  const value = body === undefined ? undefined : readJson(Buffer.from(body.bytes), body.contentType)
  return readRange(part === undefined ? value : { ...base, [part]: value })
}

/**
 * Holds a text from the store to the contract, which may have grown since it was stored.
 *
 * @param text - JSON text of a range
 * @returns The text as this release writes it, or the first fault
 */
export function checkStored(text: string): StoredReading {
  const reading = readRange(parsed(text))
  if (reading.ok) return { ok: true, text: JSON.stringify(reading.range) }
  const [fault] = reading.faults
  return { ok: false, reason: `${fault?.pointer ?? ''}: ${fault?.message ?? 'unreadable'}` }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
