import type { RangeDocument } from '../../core/index.ts'
import { LIMITS } from '../../shared/contract/primitives.ts'
import type { PartList } from '../../shared/contract/range-admin.ts'
import type { DocumentFault } from '../../shared/explain.ts'
import { pointerOf } from '../../shared/pointer.ts'
import { readRange } from '../../shared/range-reading.ts'
import { letters, readCell } from './cells.ts'
import { COLUMNS, type Column } from './columns.ts'
import { type CsvTable, decodeText, type Row, readCsv } from './csv-text.ts'
import { decimalSignOf } from './numbers.ts'

/** A place in a CSV file. */
export interface FilePlace {
  /** Line of the file, from 1. */
  readonly line: number
  /** Column of the file, from 1. */
  readonly column?: number
  /** The header over that column. */
  readonly header?: string
}

/** A fault of a range file: in the document that it would make and, for CSV, in the file. */
export type FileFault = DocumentFault & Partial<FilePlace>

/** A range that keeps the contract, or every fault of the file that was to make it. */
export type FileReading =
  | { readonly ok: true; readonly range: RangeDocument }
  | { readonly ok: false; readonly faults: readonly FileFault[] }

/**
 * Reads a CSV file of one part list into a range: the list is replaced, the rest stays.
 *
 * @param file.bytes - The file
 * @param file.list - The list that it holds
 * @param file.base - The range that the rest comes from
 * @returns The new range, or all faults in the order of the file
 */
export function readCsvList(file: {
  readonly bytes: Uint8Array
  readonly list: PartList
  readonly base: RangeDocument
}): FileReading {
  const { list, base } = file
  const table = readCsv(decodeText(file.bytes))
  const [headerRow, ...rows] = table.rows
  if (headerRow === undefined) {
    return { ok: false, faults: [{ pointer: pointerOf([list]), message: 'The file is empty.', line: 1 }] }
  }
  const tooLarge = sizeFaults(list, headerRow, rows)
  if (tooLarge.length > 0) return { ok: false, faults: tooLarge }
  const faults: FileFault[] = []
  if (table.unclosedQuoteLine !== undefined) {
    faults.push({
      pointer: pointerOf([list]),
      message: 'A quotation mark opens here and is never closed.',
      line: table.unclosedQuoteLine,
    })
  }
  const headers = readHeaders(list, headerRow, rows, faults)
  const { parts, refused } = readRows({ list, table, headers, rows, faults })
  const reading = readRange({ ...base, [list]: keepingPrices(parts, base[list]) })
  if (!reading.ok) {
    for (const fault of reading.faults) {
      if (isTold(fault.pointer, refused)) continue
      faults.push({ ...fault, ...placeOf(fault.pointer, { list, headers, rows }) })
    }
  }
  if (reading.ok && faults.length === 0) return { ok: true, range: reading.range }
  return { ok: false, faults: faults.sort(byPlace) }
}

/** Columns that are looked at, ours and such as spreadsheets leave empty. */
const COLUMN_LIMIT = 200

/** More rows than a list may hold, or columns beyond any list: told by themselves, and nothing else is read. */
function sizeFaults(list: PartList, headerRow: Row, rows: readonly Row[]): readonly FileFault[] {
  const pointer = pointerOf([list])
  const most = LIMITS.partsPerList
  const faults: FileFault[] = []
  if (headerRow.cells.length > COLUMN_LIMIT) {
    const message = `This row has ${headerRow.cells.length} cells; at most ${COLUMN_LIMIT} columns are read.`
    faults.push({ pointer, message, line: headerRow.line, column: COLUMN_LIMIT + 1 })
  }
  const firstOver = rows[most]
  if (firstOver !== undefined) {
    const message = `Must hold at most ${most} entries; this file has ${rows.length}.`
    faults.push({ pointer, message, line: firstOver.line })
  }
  return faults
}

interface Header {
  readonly column: Column
  readonly at: number
  readonly text: string
}

function readHeaders(list: PartList, row: Row, rows: readonly Row[], faults: FileFault[]): readonly Header[] {
  const headers: Header[] = []
  const fault = (at: number, header: string, message: string) =>
    faults.push({ pointer: pointerOf([list]), message, line: row.line, column: at + 1, header })
  const known = COLUMNS[list]
  for (const [at, cell] of row.cells.entries()) {
    const text = cell.text.trim()
    if (text === '') {
      const used = rows.some((other) => (other.cells[at]?.text.trim() ?? '') !== '')
      if (used) fault(at, text, 'This column has cells but no header.')
      continue
    }
    const column = known.find(({ name }) => letters(name) === letters(text))
    if (column === undefined) {
      fault(at, text, `There is no column "${text.slice(0, 40)}"; the columns are ${namesOf(known)}.`)
    } else if (headers.some((header) => header.column === column)) {
      fault(at, text, `The column "${column.name}" stands twice.`)
    } else {
      headers.push({ column, at, text })
    }
  }
  for (const column of known) {
    if (!column.required || headers.some((header) => header.column === column)) continue
    faults.push({
      pointer: pointerOf([list]),
      message: `The column "${column.name}" is missing.`,
      line: row.line,
      header: column.name,
    })
  }
  return headers
}

interface Rows {
  readonly list: PartList
  readonly table: CsvTable
  readonly headers: readonly Header[]
  readonly rows: readonly Row[]
  readonly faults: FileFault[]
}

function readRows({ list, table, headers, rows, faults }: Rows) {
  const numeric = headers.filter(({ column }) => column.kind === 'number' || column.kind === 'money')
  const cells = rows.flatMap((row) => numeric.map(({ at }) => row.cells[at]?.text ?? ''))
  const style = { decimal: decimalSignOf(cells), separator: table.separator }
  const absent = COLUMNS[list].filter(
    (column) => column.required && !headers.some((header) => header.column === column),
  )
  /** Pointers whose fault is told already, by the cell or by the missing column. */
  const refused = new Set<string>()
  const width = table.rows[0]?.cells.length ?? 0
  const parts = rows.map((row, index) => {
    const part: Record<string, unknown> = {}
    if (list === 'inverters') Object.assign(part, { features: [], connection: {} })
    for (const { path } of absent) refused.add(pointerOf([list, index, ...path]))
    for (const header of headers) {
      const { column } = header
      const reading = readCell(column, row.cells[header.at]?.text ?? '', style)
      const empty = reading.ok && reading.value === undefined
      if (reading.ok && !(empty && column.required)) {
        if (!empty) put(part, column.path, reading.value)
        continue
      }
      const message = reading.ok ? `This cell is empty; it needs a value. ${column.about}` : reading.message
      const pointer = pointerOf([list, index, ...column.path])
      refused.add(pointer)
      faults.push({ pointer, message, ...cellPlace(row, header) })
    }
    const extra = row.cells.findIndex((cell, at) => at >= width && cell.text.trim() !== '')
    if (extra >= 0) {
      faults.push({
        pointer: pointerOf([list, index]),
        message: 'This row has more cells than there are headers; is a separator or a quotation mark amiss?',
        line: row.line,
        column: extra + 1,
      })
    }
    return part
  })
  return { parts, refused }
}

function cellPlace(row: Row, { at, text }: Header): FilePlace {
  return { line: row.cells[at]?.line ?? row.line, column: at + 1, header: text }
}

function put(part: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [first, second] = path
  if (first === undefined) return
  if (second === undefined) part[first] = value
  else part[first] = { ...(part[first] as object | undefined), [second]: value }
}

/** A price that a spreadsheet has only written otherwise (74.9 for 74.90) stays as it was. */
function keepingPrices(
  parts: readonly Record<string, unknown>[],
  before: readonly { readonly sku: string; readonly price: string }[],
): readonly Record<string, unknown>[] {
  const prices = new Map(before.map(({ sku, price }) => [sku, price]))
  return parts.map((part) => {
    const price = prices.get(String(part.sku))
    return price !== undefined && price !== part.price && Number(price) === Number(part.price)
      ? { ...part, price }
      : part
  })
}

/** Whether the fault at a pointer, or of what holds it, is told already. */
function isTold(pointer: string, refused: ReadonlySet<string>): boolean {
  for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
    if (refused.has(at)) return true
  }
  return false
}

/** Where in the file a pointer's value stands; nothing for what another list or the shop's part holds. */
function placeOf(
  pointer: string,
  file: { readonly list: PartList; readonly headers: readonly Header[]; readonly rows: readonly Row[] },
): FilePlace | undefined {
  const [, list, index, ...path] = pointer.split('/')
  const row = list === file.list ? file.rows[Number(index)] : undefined
  if (row === undefined) return undefined
  const header = file.headers.find(({ column }) => column.path.every((step, at) => step === path[at]))
  return header === undefined ? { line: row.line } : cellPlace(row, header)
}

function byPlace(a: FileFault, b: FileFault): number {
  const last = Number.MAX_SAFE_INTEGER
  return (a.line ?? last) - (b.line ?? last) || (a.column ?? 0) - (b.column ?? 0)
}

function namesOf(columns: readonly Column[]): string {
  return columns.map(({ name }) => name).join(', ')
}
