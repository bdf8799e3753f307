/** A printed number under both conventions of its separators. */
export interface PrintedNumber {
  /** Its value with the last separator as the decimal mark. NaN where the separators make no number. */
  readonly decimal: number
  /** Its value with the separator between thousands, where it can be read that way too. */
  readonly thousands?: number
}

/**
 * Reads digits with "." "," and "'" between them. "4,2" and "4.2" are decimals; "1,200.5" and "1.200,5"
 * show their convention; a lone separator before exactly three digits ("1,200", "1.200") can be either,
 * and both values come back: the unit decides.
 *
 * @param printed - Digits and separators, beginning and ending with a digit, at most 24 characters.
 * @returns The value or values; never throws.
 */
export function readPrintedNumber(printed: string): PrintedNumber {
  const groups: string[] = ['']
  let marks = ''
  for (const character of printed) {
    if (character === '.' || character === ',' || character === "'") {
      marks += character
      groups.push('')
    } else {
      groups[groups.length - 1] += character
    }
  }
  if (marks.length === 0) return { decimal: Number(printed) }

  const head = groups[0] ?? ''
  const last = groups.at(-1) ?? ''
  const grouped = groups.slice(1).every((group) => group.length === 3) && head.length <= 3 && head !== '0'
  const oneKind = [...marks].every((mark) => mark === marks[0])
  if (oneKind && marks[0] !== "'" && marks.length === 1) {
    const decimal = Number(`${head}.${last}`)
    return grouped ? { decimal, thousands: Number(groups.join('')) } : { decimal }
  }
  if (oneKind) return { decimal: grouped ? Number(groups.join('')) : Number.NaN }

  const mixedWell =
    [...marks.slice(0, -1)].every((mark) => mark === marks[0]) &&
    marks.at(-1) !== "'" &&
    head.length <= 3 &&
    groups.slice(1, -1).every((group) => group.length === 3)
  return { decimal: mixedWell ? Number(`${groups.slice(0, -1).join('')}.${last}`) : Number.NaN }
}
