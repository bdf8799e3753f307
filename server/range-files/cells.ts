import type { CellKind, Column } from './columns.ts'
import type { Separator } from './csv-text.ts'
import { type DecimalSign, readNumber } from './numbers.ts'

/** A cell's value, nothing where the cell is empty, or what is wrong with it. */
export type CellReading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly message: string }

/** What a file tells about its numbers. */
export interface FileStyle {
  readonly decimal: DecimalSign
  readonly separator: Separator
}

/**
 * Reads a cell.
 *
 * @param column - The column that it stands in
 * @param cell - Its text
 * @param style - What the file tells about its numbers
 * @returns The value; `undefined` for an empty cell
 */
export function readCell(column: Column, cell: string, style: FileStyle): CellReading {
  const text = contentOf(cell)
  if (text === '') return { ok: true, value: undefined }
  if (/^#(REF!|N\/A|VALUE!|NAME\?|DIV\/0!|NUM!|NULL!)$/i.test(text)) {
    return { ok: false, message: `The spreadsheet shows the error ${text} here; write the value itself.` }
  }
  return READERS[column.kind](text, column, style)
}

/**
 * Writes a value as a cell's text, before any quotation marks.
 *
 * @param column - The column that it stands in
 * @param value - A value of a part that keeps the contract, or undefined
 * @returns The text; never one that a spreadsheet would run as a formula
 */
export function writeCell(column: Column, value: unknown): string {
  if (value === undefined) return ''
  switch (column.kind) {
    case 'yes-no':
      return value === true ? 'yes' : 'no'
    case 'words':
    case 'texts':
      return guarded((value as readonly string[]).join(' | '))
    case 'rates':
      return (value as readonly Rate[]).map((rate) => `${rate.hourRateH} h ${rate.capacityAh} Ah`).join(' | ')
    case 'number':
      return plainNumber(value as number)
    default:
      return guarded(String(value))
  }
}

interface Rate {
  readonly hourRateH: number
  readonly capacityAh: number
}

/** A spreadsheet takes a cell that begins like this for a formula, or is confused by it. */
const FORMULA_START = /^[=+\-@\t\r\0']/

/** An apostrophe before such a text: spreadsheets show the text as it is; {@link contentOf} takes it away. */
function guarded(text: string): string {
  return FORMULA_START.test(text) ? `'${text}` : text
}

function contentOf(cell: string): string {
  const trimmed = trimmedOf(cell)
  const asFormula = /^="([^"]*)"$/.exec(trimmed)
  if (asFormula !== null) return asFormula[1] ?? ''
  return trimmed.startsWith("'") && FORMULA_START.test(trimmed.slice(1)) ? trimmed.slice(1) : trimmed
}

/**
 * Without blanks around it, and line ends after it. A pattern for the end would look for it from each blank of a
 * run: a cell of a million of them would take hours.
 */
function trimmedOf(cell: string): string {
  let start = 0
  let end = cell.length
  while (start < end && ' \u00a0\u202f'.includes(cell.charAt(start))) start += 1
  while (end > start && ' \u00a0\u202f\r\n'.includes(cell.charAt(end - 1))) end -= 1
  return cell.slice(start, end)
}

function plainNumber(value: number): string {
  const text = String(value)
  const plain = text.includes('e') ? value.toFixed(20).replace(/0+$/, '') : text
  return Number(plain) === value ? plain : text
}

/** Longest rate that is read: two figures with their units. */
const RATE_CHARACTERS = 100

type Reader = (text: string, column: Column, style: FileStyle) => CellReading

const READERS: Readonly<Record<CellKind, Reader>> = {
  text: (text, column) => {
    if (column.name === 'sku' && /^\d+([.,]\d+)?E\+\d+$/i.test(text)) {
      return {
        ok: false,
        message: `The spreadsheet has made a number of this SKU: "${text.slice(0, 40)}". Format it as text.`,
      }
    }
    if (column.name === 'awg') return { ok: true, value: text.replace(/awg$/i, '').trimEnd() }
    return { ok: true, value: text }
  },
  money: (text, _column, style) => {
    const bare = text.replace(/^[A-Z]{3}\s|^[£$€¥]\s*/, '').replace(/[£$€¥]$|\s[A-Z]{3}$/, '')
    const number = readNumber(bare, style)
    return number.ok ? { ok: true, value: number.plain } : number
  },
  number: (text, _column, style) => {
    const number = readNumber(text, style)
    return number.ok ? { ok: true, value: Number(number.plain) } : number
  },
  'yes-no': (text) => {
    const word = text.toLowerCase()
    if (YES.has(word)) return { ok: true, value: true }
    if (NO.has(word)) return { ok: true, value: false }
    return { ok: false, message: `"${text.slice(0, 40)}" is neither yes nor no.` }
  },
  word: (text, column) => readWord(text, column.words ?? []),
  words: (text, column) => {
    const values: unknown[] = []
    for (const part of listOf(text)) {
      const reading = readWord(part, column.words ?? [])
      if (!reading.ok) return reading
      values.push(reading.value)
    }
    return { ok: true, value: values }
  },
  texts: (text) => ({ ok: true, value: listOf(text) }),
  rates: (text, _column, style) => {
    const rates: Rate[] = []
    for (const part of listOf(text)) {
      const match = part.length > RATE_CHARACTERS ? null : /^(\S+) ?h[ :=]+(\S+) ?Ah$/i.exec(part)
      const hours = match === null ? undefined : readNumber(match[1] ?? '', style)
      const capacity = match === null ? undefined : readNumber(match[2] ?? '', style)
      if (!hours?.ok || !capacity?.ok) {
        return { ok: false, message: `"${part.slice(0, 40)}" is no rate; write it like "5 h 85 Ah".` }
      }
      rates.push({ hourRateH: Number(hours.plain), capacityAh: Number(capacity.plain) })
    }
    return { ok: true, value: rates }
  },
}

/** What spreadsheets and people write in English, German, French and Spanish. */
const YES = new Set([
  'yes',
  'y',
  'true',
  '1',
  'x',
  'ja',
  'j',
  'wahr',
  'oui',
  'o',
  'vrai',
  'si',
  'sí',
  's',
  'verdadero',
])
const NO = new Set(['no', 'n', 'false', '0', '-', 'nein', 'falsch', 'non', 'faux', 'falso'])

function readWord(text: string, words: readonly string[]): CellReading {
  const plain = words.includes(text) ? undefined : letters(text)
  const word = plain === undefined ? text : words.find((candidate) => letters(candidate) === plain)
  if (word !== undefined) return { ok: true, value: word }
  return { ok: false, message: `"${text.slice(0, 40)}" must be one of ${words.join(', ')}.` }
}

/** Letters and digits alone, in lower case: headers and words are compared by these. */
export function letters(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '')
}

function listOf(text: string): readonly string[] {
  return text
    .split('|')
    .map((part) => part.trim())
    .filter((part) => part !== '')
}
