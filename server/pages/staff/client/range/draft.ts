import { readCell, writeCell } from '../../../../range-files/cells.ts'
import { COLUMNS, type Column } from '../../../../range-files/columns.ts'

/** One of the lists of parts of a range. */
export type PartList = keyof typeof COLUMNS

/** The lists of parts, in the order of a range document. */
export const PART_LISTS = Object.keys(COLUMNS) as readonly PartList[]

/** A part as the table holds it: the text of each cell by the name of its column. */
export interface DraftRow {
  /** Stays with the row whatever is edited; rows of the range in force are told by it. */
  readonly key: string
  readonly cells: Readonly<Record<string, string>>
}

/** A range that somebody is working on. Nothing in it needs to be right yet. */
export interface Draft {
  /** The shop's own part, which the tables leave alone. */
  readonly shop: unknown
  readonly lists: Readonly<Record<PartList, readonly DraftRow[]>>
  /** Rows made so far: the number in the next new row's key. */
  readonly made: number
}

/** A fault that the page itself finds in a cell. */
export interface CellFault {
  readonly list: PartList
  readonly key: string
  readonly column: string
  /** Undefined: the cell is empty and must not be. */
  readonly message: string | undefined
  /** Where the cell's value would stand in the document. */
  readonly path: readonly (string | number)[]
}

/** How cells are read once they stand in the table. */
const TABLE_STYLE = { decimal: '.', separator: ',' } as const

/**
 * The range in force as a draft.
 *
 * @param document - A range document that keeps the contract
 * @returns The draft; keys tell its rows by SKU
 */
export function draftOf(document: object): Draft {
  const source = document as Readonly<Record<string, unknown>>
  const lists = Object.fromEntries(
    PART_LISTS.map((list) => [
      list,
      partsOf(source[list]).map((part) => ({ key: `sku:${String(part.sku)}`, cells: cellsOf(list, part) })),
    ]),
  ) as unknown as Draft['lists']
  return { shop: source.shop, lists, made: 0 }
}

/** The objects in a list, whatever else stands there. */
export function partsOf(list: unknown): readonly Readonly<Record<string, unknown>>[] {
  return Array.isArray(list) ? list.filter((part) => typeof part === 'object' && part !== null) : []
}

/**
 * A part's cells.
 *
 * @param list - The list that it stands in
 * @param part - The part; values of a wrong kind are shown as they are
 * @returns The text of every column
 */
export function cellsOf(list: PartList, part: Readonly<Record<string, unknown>>): DraftRow['cells'] {
  return Object.fromEntries(COLUMNS[list].map((column) => [column.name, cellOf(column, part)]))
}

function cellOf(column: Column, part: Readonly<Record<string, unknown>>): string {
  let value: unknown = part
  for (const name of column.path) value = (value as Record<string, unknown> | null | undefined)?.[name]
  return textOf(column, value)
}

/**
 * A value as a cell of the table shows it.
 *
 * @param column - Its column
 * @param value - Any value
 * @returns Text that reads back as that value where it is of the right kind
 */
export function textOf(column: Column, value: unknown): string {
  if (value === undefined || value === null) return ''
  if (typeof value === 'string') return value
  const fits =
    (column.kind === 'number' && typeof value === 'number') ||
    (column.kind === 'yes-no' && typeof value === 'boolean') ||
    (column.kind === 'rates' && partsOf(value).every(isRate)) ||
    ((column.kind === 'words' || column.kind === 'texts') && Array.isArray(value))
  return fits ? writeCell(column, value) : JSON.stringify(value)
}

function isRate(part: Readonly<Record<string, unknown>>): boolean {
  return typeof part.hourRateH === 'number' && typeof part.capacityAh === 'number'
}

/**
 * The document that a draft makes.
 *
 * @param draft - The draft
 * @returns The document without the cells that can't be read, and those cells
 */
export function documentOf(draft: Draft): {
  readonly document: Readonly<Record<string, unknown>>
  readonly faults: readonly CellFault[]
} {
  const faults: CellFault[] = []
  const lists = PART_LISTS.map((list) => [
    list,
    draft.lists[list].map((row, index) => partOf({ list, row, index }, faults)),
  ])
  return { document: { shop: draft.shop, ...Object.fromEntries(lists) }, faults }
}

function partOf(
  at: { readonly list: PartList; readonly row: DraftRow; readonly index: number },
  faults: CellFault[],
): object {
  const { list, row, index } = at
  const part: Record<string, unknown> = list === 'inverters' ? { features: [], connection: {} } : {}
  for (const column of COLUMNS[list]) {
    const reading = readCell(column, row.cells[column.name] ?? '', TABLE_STYLE)
    if (reading.ok && !(reading.value === undefined && column.required)) {
      if (reading.value !== undefined) put(part, column.path, reading.value)
      continue
    }
    faults.push({
      list,
      key: row.key,
      column: column.name,
      message: reading.ok ? undefined : reading.message,
      path: [list, index, ...column.path],
    })
  }
  return part
}

function put(part: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [first = '', second] = path
  if (second === undefined) part[first] = value
  else part[first] = { ...(part[first] as object | undefined), [second]: value }
}

/** A cell of a draft. */
export interface CellPlace {
  readonly list: PartList
  readonly key: string
  readonly column: string
}

/** The draft with another text in one cell. */
export function withCell(draft: Draft, { list, key, column }: CellPlace, text: string): Draft {
  return withList(
    draft,
    list,
    draft.lists[list].map((row) =>
      row.key === key ? { key, cells: { ...row.cells, [column]: text } } : row,
    ),
  )
}

/** The draft with a row at the end of a list that says no more than that the part is in stock. */
export function withNewRow(draft: Draft, list: PartList): Draft {
  const row: DraftRow = { key: `new:${draft.made}`, cells: { inStock: 'yes' } }
  return withList({ ...draft, made: draft.made + 1 }, list, [...draft.lists[list], row])
}

/** The draft without a row. */
export function withoutRow(draft: Draft, list: PartList, key: string): Draft {
  return withList(
    draft,
    list,
    draft.lists[list].filter((row) => row.key !== key),
  )
}

/** The draft with another list in place of one of its own. */
export function withList(draft: Draft, list: PartList, rows: readonly DraftRow[]): Draft {
  return { ...draft, lists: { ...draft.lists, [list]: rows } }
}

/** Whether two drafts say the same, cell by cell and in the same order. */
export function saysTheSame(one: Draft, other: Draft): boolean {
  if (one === other) return true
  if (JSON.stringify(one.shop) !== JSON.stringify(other.shop)) return false
  return PART_LISTS.every((list) => {
    const [rows, others] = [one.lists[list], other.lists[list]]
    if (rows === others) return true
    return (
      rows.length === others.length &&
      rows.every((row, index) => row.key === others[index]?.key && sameCells(list, row, others[index]))
    )
  })
}

/** Whether two rows say the same. */
export function sameCells(list: PartList, one: DraftRow, other: DraftRow | undefined): boolean {
  return COLUMNS[list].every(({ name }) => (one.cells[name] ?? '') === (other?.cells[name] ?? ''))
}
