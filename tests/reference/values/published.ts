import type { DocumentId } from './documents.ts'

/** A low and a high between which a value may lie, as core gives them where no single figure is right. */
export interface Band {
  readonly low: number
  readonly high: number
}

/** How far what core computes may lie from what is printed. */
export type Tolerance = { readonly absolute: number } | { readonly relative: number }

/** One figure of a published table: what it is of, what is printed, and what core makes of it. */
export type Row = readonly [what: string, printed: number, compute: () => number | Band]

/**
 * Figures of one table, paragraph or example of one document. What is printed is typed from the document; what is
 * computed comes from core each time, and never stands here.
 */
export interface PublishedTable {
  readonly document: DocumentId
  readonly table: string
  /** What the figures are, with their condition. */
  readonly quantity: string
  /** Unit of what is printed and computed; '1' for a ratio. */
  readonly unit: string
  /** Whether core holds these very figures, or reckons them by a law or model of its own. */
  readonly how: 'held' | 'computed'
  /** Where the figures are less well known than their document, or better. */
  readonly standing?: 'read' | 'memory' | 'derived'
  readonly tolerance: Tolerance
  /** Why the tolerance is as wide as it is. */
  readonly because: string
  readonly rows: readonly Row[]
}

/** A figure that is printed wrong: a right routine disagrees with it. */
export interface Trap {
  readonly document: DocumentId
  readonly table: string
  readonly what: string
  readonly unit: string
  readonly printed: number
  /** How we know that it is wrong. */
  readonly why: string
  readonly compute: () => number | Band
}

/** What belongs together on the page. */
export interface Topic {
  readonly id: string
  readonly title: string
  /** What in core is put to the test. */
  readonly about: string
  readonly tables: readonly PublishedTable[]
  readonly traps: readonly Trap[]
}

/**
 * What core computes less what is printed; nought where the printed figure lies within a band.
 *
 * @param printed - The figure of the document
 * @param computed - What core makes of it
 * @returns The difference, in the unit of both
 */
export function differenceFrom(printed: number, computed: number | Band): number {
  if (typeof computed === 'number') return computed - printed
  if (printed < computed.low) return computed.low - printed
  return printed > computed.high ? computed.high - printed : 0
}

/** Room for the last bits of a floating-point figure. */
const LAST_BITS = 1e-9

/**
 * Whether a computed figure is as near to the printed one as its table asks.
 *
 * @param printed - The figure of the document
 * @param computed - What core makes of it
 * @param tolerance - How far it may lie from that
 * @returns True within the tolerance, its end included
 */
export function isWithin(printed: number, computed: number | Band, tolerance: Tolerance): boolean {
  const allowed = 'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(printed)
  return Math.abs(differenceFrom(printed, computed)) <= allowed + LAST_BITS * Math.max(1, Math.abs(printed))
}
