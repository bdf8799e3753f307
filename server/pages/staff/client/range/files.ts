import { letters, readCell } from '../../../../range-files/cells.ts'
import { COLUMNS, type Column } from '../../../../range-files/columns.ts'
import { type CsvTable, readCsv } from '../../../../range-files/csv-text.ts'
import { decimalSignOf } from '../../../../range-files/numbers.ts'
import {
  cellsOf,
  type Draft,
  type DraftRow,
  PART_LISTS,
  type PartList,
  partsOf,
  textOf,
  withList,
} from './draft.ts'

/**
 * The text of a file as spreadsheets write it: UTF-8, UTF-16 with a byte order mark, else Windows-1252.
 *
 * @param bytes - The file
 * @returns Its text, without a byte order mark
 */
export function fileText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}

/**
 * A CSV file's rows in place of a list of the draft. A cell that reads is shown as the table writes it; one that
 * doesn't stays as it stands in the file, to be mended.
 *
 * @param draft - The draft
 * @param base - The range in force: a row of a known SKU stays that row
 * @param file.list - The list that the file holds
 * @param file.text - The file's text
 * @returns The draft with the file's rows; columns that there are not are left out
 */
export function withCsv(
  draft: Draft,
  base: Draft,
  { list, text }: { readonly list: PartList; readonly text: string },
): Draft {
  const table = readCsv(text)
  const [headerRow, ...rows] = table.rows
  const headers = (headerRow?.cells ?? []).map(({ text: name }) =>
    COLUMNS[list].find((column) => letters(column.name) === letters(name)),
  )
  const style = { decimal: decimalSignOf(numericCells(table, headers)), separator: table.separator }
  const read = rows.map(({ cells }) => {
    const made: Record<string, string> = {}
    for (const [at, column] of headers.entries()) {
      const cell = cells[at]?.text
      if (column === undefined || cell === undefined || made[column.name] !== undefined) continue
      const reading = readCell(column, cell, style)
      made[column.name] = reading.ok ? textOf(column, reading.value) : cell.trim()
    }
    return made
  })
  return withRows(draft, base, { list, cells: read })
}

function numericCells(table: CsvTable, headers: readonly (Column | undefined)[]): readonly string[] {
  return table.rows
    .slice(1)
    .flatMap(({ cells }) =>
      cells.filter((_, at) => ['number', 'money'].includes(headers[at]?.kind ?? '')).map(({ text }) => text),
    )
}

/**
 * A JSON file in place of the draft, or of one of its lists.
 *
 * @param draft - The draft
 * @param base - The range in force
 * @param file.list - The list that an array stands for
 * @param file.value - The parsed file: a whole range document, or an array of parts
 * @returns The draft; undefined where the file is neither
 */
export function withJson(
  draft: Draft,
  base: Draft,
  { list, value }: { readonly list: PartList; readonly value: unknown },
): Draft | undefined {
  if (Array.isArray(value)) return withParts(draft, base, { list, value })
  if (typeof value !== 'object' || value === null) return undefined
  const document = value as Readonly<Record<string, unknown>>
  if (!PART_LISTS.some((name) => Array.isArray(document[name]))) return undefined
  const start: Draft = document.shop === undefined ? draft : { ...draft, shop: document.shop }
  return PART_LISTS.reduce(
    (made, name) =>
      document[name] === undefined ? made : withParts(made, base, { list: name, value: document[name] }),
    start,
  )
}

function withParts(
  draft: Draft,
  base: Draft,
  { list, value }: { readonly list: PartList; readonly value: unknown },
): Draft {
  return withRows(draft, base, { list, cells: partsOf(value).map((part) => cellsOf(list, part)) })
}

function withRows(
  draft: Draft,
  base: Draft,
  { list, cells }: { readonly list: PartList; readonly cells: readonly DraftRow['cells'][] },
): Draft {
  const known = new Map(base.lists[list].map((row) => [row.cells.sku, row]))
  const taken = new Set<string>()
  let { made } = draft
  const rows = cells.map((own) => {
    const old = known.get(own.sku)
    if (old === undefined || taken.has(old.key)) {
      made += 1
      return { key: `new:${made - 1}`, cells: own }
    }
    taken.add(old.key)
    return { key: old.key, cells: keepingPrice(own, old) }
  })
  return withList({ ...draft, made }, list, rows)
}

/** A price that a spreadsheet has only written otherwise (74.9 for 74.90) stays as it was. */
function keepingPrice(cells: DraftRow['cells'], old: DraftRow): DraftRow['cells'] {
  const [price, before] = [cells.price ?? '', old.cells.price ?? '']
  const same = price !== '' && before !== '' && Number(price) === Number(before)
  return same ? { ...cells, price: before } : cells
}
