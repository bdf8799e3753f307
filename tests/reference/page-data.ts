import type {
  Computed,
  FigureRow,
  FigureSource,
  Figures,
  FigureTable,
  Misprint,
} from '../../server/pages/docs/figures/figures-data.ts'
import { DOCUMENTS, type DocumentId, type ReferenceDocument } from './values/documents.ts'
import { TOPICS } from './values/index.ts'
import {
  type Band,
  differenceFrom,
  isWithin,
  type PublishedTable,
  type Tolerance,
  type Trap,
} from './values/published.ts'

/** Rows that are quoted of a longer table whose document is not free to copy. */
const QUOTED_ROWS = 12

/**
 * What the page of figures shows, computed now.
 *
 * @returns Every topic with its tables
 */
export function pageData(): Figures {
  const topics = TOPICS.map(({ id, title, about, tables, traps }) => ({
    id,
    title,
    about,
    tables: tables.map(tableOf),
    misprints: traps.map(misprintOf),
  }))
  const sources: Record<string, FigureSource> = {}
  for (const [id, document] of Object.entries<ReferenceDocument>(DOCUMENTS)) {
    const own = topics.flatMap(({ tables }) => tables.filter(({ source }) => source === id))
    sources[id] = { ...document, count: own.reduce((sum, { count }) => sum + count, 0) }
  }
  return { sources, topics }
}

/**
 * The text of the file that the page reads: indented, each row on a line of its own.
 *
 * @param figures - What the page shows
 * @returns JSON with a closing newline
 */
export function pageText(figures: Figures): string {
  const lines: string[] = []
  const marked = JSON.stringify(
    figures,
    (key, value: unknown) => {
      if (key !== 'rows' || !Array.isArray(value)) return value
      return value.map((row) => `row ${lines.push(JSON.stringify(row)) - 1}`)
    },
    2,
  )
  return `${marked.replaceAll(/"row (\d+)"/g, (_whole, line: string) => lines[Number(line)] ?? '')}\n`
}

function tableOf(table: PublishedTable): FigureTable {
  const document: ReferenceDocument = DOCUMENTS[table.document]
  const compared = table.rows.map(([what, printed, compute]) => {
    const computed = compute()
    return { printed, computed, row: rowOf(what, printed, computed) }
  })
  const within = compared.filter(({ printed, computed }) => isWithin(printed, computed, table.tolerance))
  return {
    source: table.document,
    table: table.table,
    quantity: table.quantity,
    unit: table.unit,
    how: table.how,
    standing: table.standing ?? document.standing,
    tolerance: toleranceText(table.tolerance, table.unit),
    because: table.because,
    count: compared.length,
    within: within.length,
    rows: quoted(
      compared.map(({ row }) => row),
      document.shown,
    ),
  }
}

/** All rows, or some spread over the table with the one that lies farthest off among them. */
function quoted(rows: readonly FigureRow[], shown: 'all' | 'some'): readonly FigureRow[] {
  if (shown === 'all' || rows.length <= QUOTED_ROWS) return rows
  const chosen = new Set<number>()
  for (let step = 0; step < QUOTED_ROWS; step += 1) {
    chosen.add(Math.round((step * (rows.length - 1)) / (QUOTED_ROWS - 1)))
  }
  const shares = rows.map(([, , , , share]) => Math.abs(share))
  const farthest = Math.max(...shares)
  if (farthest > 0) chosen.add(shares.indexOf(farthest))
  return rows.filter((_row, index) => chosen.has(index))
}

function rowOf(what: string, printed: number, computed: number | Band): FigureRow {
  const difference = settled(differenceFrom(printed, computed), printed)
  const share = printed === 0 ? 0 : significant(difference / printed, 3)
  return [what, printed, rounded(computed), difference, share]
}

function misprintOf({ document, table, what, unit, printed, why, compute }: Trap): Misprint {
  return {
    source: document satisfies DocumentId,
    table,
    what,
    unit,
    printed,
    computed: rounded(compute()),
    why,
  }
}

function rounded(computed: number | Band): Computed {
  if (typeof computed === 'number') return significant(computed, 6)
  return [significant(computed.low, 6), significant(computed.high, 6)]
}

/** The last bits of a figure are no difference. */
function settled(difference: number, printed: number): number {
  return Math.abs(difference) < 1e-9 * Math.max(1, Math.abs(printed)) ? 0 : significant(difference, 3)
}

function significant(value: number, digits: number): number {
  return Number(value.toPrecision(digits))
}

function toleranceText(tolerance: Tolerance, unit: string): string {
  if ('relative' in tolerance && tolerance.relative > 0) {
    const percent = significant(tolerance.relative * 100, 6)
    return percent < 0.001 ? `${significant(tolerance.relative * 1e6, 6)} in a million` : `${percent} %`
  }
  const absolute = 'absolute' in tolerance ? tolerance.absolute : 0
  if (absolute === 0) return 'none'
  return unit === '1' ? String(absolute) : `${absolute} ${unit}`
}
