import * as fc from 'fast-check'
import type { Sheet } from '../../server/range-files/write-csv-list.ts'
import { hostileText } from './hostile.ts'

/** How a file is written: each of these is a way in which spreadsheets and people do. */
export const fileStyle = fc.record({
  separator: fc.constantFrom(',', ';', '\t'),
  lineEnd: fc.constantFrom('\r\n', '\n', '\r'),
  quotes: fc.constantFrom('always', 'where needed'),
  mark: fc.constantFrom('none', 'utf-8', 'utf-16le'),
  separatorLine: fc.boolean(),
})
export type FileStyle = typeof fileStyle extends fc.Arbitrary<infer T> ? T : never

/**
 * A sheet as a file.
 *
 * @param sheet - Its rows
 * @param style - How it is written
 * @returns The file
 */
export function fileOf(sheet: Sheet, style: FileStyle): Buffer {
  const { separator, lineEnd, quotes, mark, separatorLine } = style
  const cell = (text: string) =>
    quotes === 'always' || /["\r\n\t,;]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
  const lines = sheet.map((row) => row.map(cell).join(separator))
  const text = [...(separatorLine ? [`sep=${separator}`] : []), ...lines, ''].join(lineEnd)
  if (mark === 'utf-16le') return Buffer.from(`\ufeff${text}`, 'utf16le')
  return Buffer.from(mark === 'utf-8' && !separatorLine ? `\ufeff${text}` : text)
}

/** What stands in a cell that somebody has meddled with. */
const cellText = fc.oneof(
  hostileText,
  fc.constantFrom(
    ...['', ' ', '=1+1', "=cmd|' /C calc'!A0", '@SUM(A1)', '+5', '-5', '#REF!', '1.234.567,89', '1,234'],
    ...['12 V', '1E+15', '0012', '="0012"', "'=x", 'a\0b', '"', '""', '\r', '\n', 'yes | no', '5 h 85 Ah |'],
    ...['x'.repeat(20_000), ' '.repeat(20_000), '1'.repeat(400), '|'.repeat(3000), '5 h=1 Ah|'.repeat(500)],
  ),
)

/**
 * Sheets with one thing changed: a cell, a row that is longer, shorter, doubled or blank, a header that is
 * misspelt, doubled or gone.
 *
 * @param sheets - Sheets that are right
 * @returns Sheets of which most are wrong
 */
export function meddledSheets(sheets: fc.Arbitrary<Sheet>): fc.Arbitrary<Sheet> {
  return fc
    .tuple(sheets, fc.nat(), fc.nat(), cellText, fc.integer({ min: 0, max: 7 }))
    .map(([sheet, rowNumber, columnNumber, text, how]) => {
      const at = rowNumber % sheet.length
      const column = columnNumber % (sheet[0]?.length ?? 1)
      const row = sheet[at] ?? []
      const withRow = (...rows: readonly (readonly string[])[]) => [
        ...sheet.slice(0, at),
        ...rows,
        ...sheet.slice(at + 1),
      ]
      switch (how) {
        case 0:
          return withRow([...row, text])
        case 1:
          return withRow(row.slice(0, column))
        case 2:
          return withRow(row, row)
        case 3:
          return withRow(row, [text], [])
        case 4:
          return sheet.map((cells) => cells.filter((_, index) => index !== column))
        default:
          return withRow(row.map((cell, index) => (index === column ? text : cell)))
      }
    })
}

/**
 * Files that are no sheets at all, or no whole ones: bytes, quotation marks that stay open, text cut anywhere.
 *
 * @param files - Files that are right
 * @returns Files of which most are not
 */
export function brokenFiles(files: fc.Arbitrary<Buffer>): fc.Arbitrary<Buffer> {
  const pieces = fc.constantFrom(
    ...['"', '""', ',', ';', '\t', '\r', '\n', '\r\n', 'sku', '\0', 'sep=;', '\ufeff', "'", '=', '|'],
    ...['price', 'yes', '1,5', '1.5', ' ', 'é', '\u202e'],
  )
  return fc.oneof(
    fc.uint8Array({ maxLength: 300 }).map((bytes) => Buffer.from(bytes)),
    fc.array(pieces, { maxLength: 60 }).map((parts) => Buffer.from(parts.join(''))),
    fc.tuple(files, fc.nat()).map(([file, cut]) => file.subarray(0, cut % (file.length + 1))),
    fc.tuple(files, fc.nat(), fc.nat(255)).map(([file, at, byte]) => {
      const copy = Buffer.from(file)
      if (copy.length > 0) copy[at % copy.length] = byte
      return copy
    }),
    fc.tuple(files, files).map((two) => Buffer.concat(two)),
  )
}
