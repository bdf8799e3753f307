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
  const columns = COLUMNS[list]
  const rows = range[list].map((part) =>
    columns.map((column) => {
      let value: unknown = part
      for (const name of column.path) value = (value as Record<string, unknown> | undefined)?.[name]
      return writeCell(column, value)
    }),
  )
  const lines = [columns.map(({ name }) => name), ...rows].map((cells) => cells.map(quoted).join(','))
  return `\uFEFF${lines.join('\r\n')}\r\n`
}

function quoted(text: string): string {
  return /[",;\t\r\n\0']|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
