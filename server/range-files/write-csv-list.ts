import type { RangeDocument } from '../../core/index.ts'
import type { PartList } from '../../shared/contract/range-admin.ts'
import { writeCell } from './cells.ts'
import { COLUMNS } from './columns.ts'

/**
 * Writes one part list as CSV: comma-separated, CRLF, with a byte order mark, so that spreadsheets read it as
 * UTF-8. Reading it again gives the same list.
 *
 * @param range - The range
 * @param list - Which of its lists
 * @returns The file's text; of an empty list the headers alone, which make a template
 */
export function writeCsvList(range: RangeDocument, list: PartList): string {
  const lines = sheetOf(range, list).map((cells) => cells.map(quoted).join(','))
  return `\uFEFF${lines.join('\r\n')}\r\n`
}

/** Rows of cells, the headers first. */
export type Sheet = readonly (readonly string[])[]

/**
 * A list of parts as rows of cells.
 *
 * @param range - The range
 * @param list - Which of its lists
 * @returns Headers and cells
 */
export function sheetOf(range: RangeDocument, list: PartList): Sheet {
  const columns = COLUMNS[list]
  const rows = range[list].map((part) =>
    columns.map((column) => {
      let value: unknown = part
      for (const name of column.path) value = (value as Record<string, unknown> | undefined)?.[name]
      return writeCell(column, value)
    }),
  )
  return [columns.map(({ name }) => name), ...rows]
}

function quoted(text: string): string {
  return /[",;\t\r\n\0']|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
