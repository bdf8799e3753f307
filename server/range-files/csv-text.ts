/** A cell with where it begins. */
export interface Cell {
  readonly text: string
  /** Line of the file, from 1. */
  readonly line: number
}

/** A row of a CSV file; its cells stand in columns 1, 2, 3, ... */
export interface Row {
  readonly line: number
  readonly cells: readonly Cell[]
}

/** A CSV file taken apart. */
export interface CsvTable {
  readonly separator: Separator
  readonly rows: readonly Row[]
  /** Line on which a quotation mark opens that is never closed. */
  readonly unclosedQuoteLine: number | undefined
}

const SEPARATORS = [',', ';', '\t'] as const
export type Separator = (typeof SEPARATORS)[number]

/**
 * The text of a file: UTF-8, with or without a byte order mark; UTF-16 with one, as spreadsheets write "Unicode
 * text"; and Windows-1252 where the bytes are no UTF-8.
 *
 * @param bytes - The file
 * @returns Its text, without a byte order mark
 */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return windows1252(bytes)
  }
}

/**
 * Characters 0x80 to 0x9f of Windows-1252 (WHATWG Encoding Standard, index-windows-1252). Node 20's own decoder
 * of that name reads ISO 8859-1, which has control characters there and no euro sign.
 */
const WINDOWS_1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

function windows1252(bytes: Uint8Array): string {
  const text = Buffer.from(bytes).toString('latin1')
  return text.replaceAll(/[\u0080-\u009f]/g, (letter) => WINDOWS_1252[letter.charCodeAt(0) - 0x80] ?? letter)
}

/**
 * Takes a CSV file apart (RFC 4180): comma, semicolon or tab between cells, told from the first row; any line
 * end; a first line `sep=;` as spreadsheets write it is obeyed and skipped. Rows without content are left out.
 *
 * @param text - The file's text
 * @returns Its rows with line numbers of the file
 */
export function readCsv(text: string): CsvTable {
  const told = /^sep=([,;\t])[ \t]*(\r\n|\n|\r|$)/i.exec(text)
  const start = told === null ? 0 : told[0].length
  const separator = (told?.[1] as Separator | undefined) ?? separatorOf(text)
  const rows: Row[] = []
  let cells: Cell[] = []
  let line = told === null ? 1 : 2
  let at = start
  let unclosedQuoteLine: number | undefined

  function endRow(): void {
    const first = cells[0]
    if (first !== undefined && cells.some((cell) => cell.text.trim() !== ''))
      rows.push({ line: first.line, cells })
    cells = []
  }

  while (at < text.length) {
    const cellLine = line
    let content = ''
    let end = at
    if (text[at] === '"') {
      let from = at + 1
      for (;;) {
        const quote = text.indexOf('"', from)
        if (quote === -1) {
          content += text.slice(from)
          end = text.length
          unclosedQuoteLine ??= cellLine
          break
        }
        content += text.slice(from, quote)
        end = quote + 1
        if (text[end] !== '"') break
        content += '"'
        from = end + 1
      }
      line += lineEndsIn(text.slice(at, end))
    }
    const rest = end
    while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1
    content += text.slice(rest, end)
    cells.push({ text: content, line: cellLine })
    if (text[end] === separator) {
      at = end + 1
      // A separator at the very end stands before one more, empty cell.
      if (at === text.length) cells.push({ text: '', line })
      continue
    }
    at = end + (text[end] === '\r' && text[end + 1] === '\n' ? 2 : 1)
    line += 1
    endRow()
  }
  endRow()
  return { separator, rows, unclosedQuoteLine }
}

function lineEndsIn(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0
}

/** The separator that the first line with content has most of, outside quotation marks. */
function separatorOf(text: string): Separator {
  const firstLine = /[^\r\n]+/.exec(text)?.[0] ?? ''
  const bare = firstLine.replaceAll(/"[^"]*"/g, '')
  let best: Separator = ','
  for (const separator of SEPARATORS) {
    if (bare.split(separator).length > bare.split(best).length) best = separator
  }
  return best
}
