import type { Separator } from './csv-text.ts'

/** The sign before the decimals in a file; undefined where no cell tells. */
export type DecimalSign = '.' | ',' | undefined

/** A cell as a number in plain notation, such as "1234.5", or why it is none. */
export type NumberReading =
  | { readonly ok: true; readonly plain: string }
  | { readonly ok: false; readonly message: string }

const COMMA_SURE =
  /^[+-]?(\d+,\d{1,2}|\d+,\d{4,}|0\d*,\d+|\d{4,},\d+|\d{1,3}(\.\d{3})+,\d+|\d{1,3}(\.\d{3}){2,})$/
const POINT_SURE =
  /^[+-]?(\d+\.\d{1,2}|\d+\.\d{4,}|0\d*\.\d+|\d{4,}\.\d+|\d{1,3}(,\d{3})+\.\d+|\d{1,3}(,\d{3}){2,})$/

/**
 * Tells a file's decimal sign from the cells in which only one reading makes sense.
 *
 * @param cells - All cells of number columns
 * @returns The sign; undefined where no cell tells or where they disagree
 */
export function decimalSignOf(cells: readonly string[]): DecimalSign {
  let comma = false
  let point = false
  for (const cell of cells) {
    const text = withoutSpaces(cell)
    if (COMMA_SURE.test(text)) comma = true
    else if (POINT_SURE.test(text)) point = true
  }
  if (comma === point) return undefined
  return comma ? ',' : '.'
}

/**
 * Reads a number as a spreadsheet writes it: decimal comma or point, thousands in groups.
 *
 * @param cell - The cell's text
 * @param file - The file's decimal sign, and what stands between its cells
 * @returns The number in plain notation; a fault where there are two readings, for a wrong one could hurt
 */
export function readNumber(
  cell: string,
  file: { readonly decimal: DecimalSign; readonly separator: Separator },
): NumberReading {
  const text = withoutSpaces(cell)
  if (/^[+-]?\d+$/.test(text)) return { ok: true, plain: text.replace(/^\+/, '') }
  if (/^[+-]?\d{1,3}[.,]\d{3}$/.test(text) && !/^[+-]?0/.test(text)) {
    const sign = text.includes(',') ? ',' : '.'
    // A point in a comma-separated file that nothing speaks against is a decimal point.
    const plainPoint = sign === '.' && file.decimal === undefined && file.separator === ','
    const decimal = file.decimal ?? (plainPoint ? '.' : undefined)
    if (decimal === undefined) return { ok: false, message: ambiguous(text, sign) }
    return { ok: true, plain: decimal === sign ? text.replace(',', '.') : text.replace(sign, '') }
  }
  if (COMMA_SURE.test(text)) return { ok: true, plain: text.replaceAll('.', '').replace(',', '.') }
  if (POINT_SURE.test(text)) return { ok: true, plain: text.replaceAll(',', '') }
  const scientific = /^([+-]?\d+(?:[.,]\d+)?)[eE]([+-]?\d{1,3})$/.exec(text)
  if (scientific !== null) {
    const value = Number(`${scientific[1]?.replace(',', '.')}e${scientific[2]}`)
    return { ok: true, plain: String(value) }
  }
  return {
    ok: false,
    message: `"${shortened(cell)}" is not a number; write only the figure, without its unit.`,
  }
}

function ambiguous(text: string, sign: string): string {
  const whole = text.replace(sign, '')
  const fraction = text.replace(sign, '.')
  return `"${text}" can be read as ${whole} or as ${fraction}; write ${whole} or ${fraction}0.`
}

/** Spaces, also the narrow and unbreakable ones, and apostrophes group thousands in several languages. */
function withoutSpaces(cell: string): string {
  return cell.trim().replaceAll(/(?<=\d)[\s\u00a0\u202f\u2009'’](?=\d{3}(?!\d))/g, '')
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text
}
