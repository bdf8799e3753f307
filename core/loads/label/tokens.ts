import { fold, fractionOf, isDigit, isLetter, isLineEnd, isSpace, isThinSpace } from './characters.ts'
import { type PrintedNumber, readPrintedNumber } from './numbers.ts'
import { isIdentityWord, isKnownWord, mayTouchNumber } from './words.ts'

interface Place {
  readonly start: number
  readonly end: number
  /** What stands before it on its line. */
  readonly gap: 'none' | 'space' | 'thin'
}

/** One token of a plate. A `code` (model, serial, date, protection class) measures nothing. */
export type LabelToken =
  | (Place & { readonly kind: 'number'; readonly number: PrintedNumber; readonly mended: boolean })
  | (Place & { readonly kind: 'word'; readonly raw: string; readonly folded: string })
  | (Place & { readonly kind: 'mark'; readonly mark: string })
  | (Place & { readonly kind: 'code' | 'line' })

export interface LabelTokens {
  readonly tokens: readonly LabelToken[]
  /** How often a character was looked at: the measure of the work, in proportion to the text. */
  readonly steps: number
}

/** More digits than any rating has: a serial number. */
const LONGEST_NUMBER = 9

/** The longest run that is searched for a model or serial number; keeps the work linear. */
const LONGEST_CODE = 40

/** Units that may touch the number after them, as in "230V50Hz". */
const UNITS_TOUCHING_NUMBERS: ReadonlySet<string> = new Set(['v', 'vac', 'hz', 'x'])

/**
 * Splits the text of a plate, left to right, into numbers, words, marks, codes and line ends. Letters that
 * a scanner takes for digits (O for 0, l and I for 1) are read as digits inside a number.
 *
 * @param text - Any text.
 * @returns The tokens, and the count of characters looked at; never throws.
 * @remarks Looks at each character a bounded number of times, so the work is linear in the length.
 */
export function tokenizeLabel(text: string): LabelTokens {
  const scanner = new Scanner(text)
  return { tokens: scanner.scan(), steps: scanner.steps }
}

class Scanner {
  steps = 0
  private readonly text: string
  private readonly tokens: LabelToken[] = []
  private gap: Place['gap'] = 'none'

  constructor(text: string) {
    this.text = text
  }

  scan(): readonly LabelToken[] {
    let at = 0
    while (at < this.text.length) {
      const character = this.at(at)
      if (isLineEnd(character)) {
        at = this.push({ kind: 'line', ...this.place(at, at + 1) })
      } else if (isSpace(character)) {
        this.gap = isThinSpace(character) ? 'thin' : 'space'
        at += 1
      } else if (this.startsNumber(at, character)) {
        at = this.number(at)
      } else if (isLetter(character)) {
        at = this.word(at)
      } else {
        at = this.push({ kind: 'mark', mark: character, ...this.place(at, at + 1) })
      }
    }
    return this.tokens
  }

  private at(index: number): string {
    this.steps += 1
    return this.text[index] ?? ''
  }

  private place(start: number, end: number): Place {
    return { start, end, gap: this.gap }
  }

  private push(token: LabelToken): number {
    this.tokens.push(token)
    this.gap = 'none'
    return token.end
  }

  private startsNumber(at: number, character: string): boolean {
    if (isDigit(character) || fractionOf(character) !== undefined) return true
    if (character !== 'O' && character !== 'I' && character !== 'l') return false
    const next = this.at(at + 1)
    if (isDigit(next)) return true
    return (
      (character === 'O' && (next === '.' || next === ',') && isDigit(this.at(at + 2))) ||
      (character !== 'O' && next === 'O' && isDigit(this.at(at + 2)))
    )
  }

  private number(start: number): number {
    let printed = ''
    let fraction = 0
    let mended = false
    let at = start
    for (; at < this.text.length; at += 1) {
      const character = this.at(at)
      const part = fractionOf(character)
      if (part !== undefined) {
        fraction = part
        at += 1
        break
      }
      const digit = this.digitAt(at, character, printed)
      if (digit === '') break
      mended ||= digit !== character && digit !== "'"
      printed += digit
    }
    const lettersEnd = this.skipLetters(at)
    const unit = lettersEnd - at <= 3 ? fold(this.text.slice(at, lettersEnd)) : ''
    const touching = lettersEnd > at && isDigit(this.at(lettersEnd)) && !UNITS_TOUCHING_NUMBERS.has(unit)
    if (touching || printed.length > LONGEST_NUMBER + 4) return this.code(start, at)
    const number = readPrintedNumber(printed === '' ? '0' : printed)
    const whole = fraction > 0 ? { decimal: number.decimal + fraction } : number
    return this.push({ kind: 'number', number: whole, mended, ...this.place(start, at) })
  }

  /** The digit or separator a character stands for inside a number, or nothing. */
  private digitAt(at: number, character: string, printed: string): string {
    if (isDigit(character)) return character
    const next = this.at(at + 1)
    const digitNext = isDigit(next) || next === 'O'
    if (character === 'O') return printed !== '' || digitNext || next === '.' || next === ',' ? '0' : ''
    if (character === 'o') return printed !== '' && isDigit(next) ? '0' : ''
    if (character === 'l' || character === 'I') return digitNext ? '1' : ''
    const separates = character === '.' || character === ',' || character === "'" || character === '’'
    if (!separates || printed === '' || !digitNext) return ''
    return character === '’' ? "'" : character
  }

  private word(start: number): number {
    let end = this.skipLetters(start)
    const raw = this.text.slice(start, end)
    let folded = fold(raw)
    const next = this.at(end)
    const index = next === '1' || next === '₁' ? 1 : next === '2' || next === '₂' ? 2 : 0
    if (folded === 'p' && index > 0 && !this.continuesCode(end + 1)) {
      end += 1
      folded = `p${index}`
    } else if (isDigit(next) && !mayTouchNumber(folded) && !this.isTouchingUnit(folded)) {
      return this.code(start, end)
    } else if ((next === '-' || next === '_') && isDigit(this.at(end + 1)) && !isKnownWord(folded)) {
      return this.code(start, end)
    }
    this.push({ kind: 'word', raw, folded, ...this.place(start, end) })
    const identity = isIdentityWord(folded) || ((folded === 's' || folded === 'p') && this.isSlashN(end))
    return identity ? this.identity(end) : end
  }

  /** "230V50Hz": a unit right after a number may touch the next number. */
  private isTouchingUnit(folded: string): boolean {
    const before = this.tokens.at(-1)
    return before?.kind === 'number' && this.gap === 'none' && UNITS_TOUCHING_NUMBERS.has(folded)
  }

  private isSlashN(at: number): boolean {
    return this.at(at) === '/' && this.at(at + 1).toLowerCase() === 'n' && !isLetter(this.at(at + 2))
  }

  private continuesCode(at: number): boolean {
    const character = this.at(at)
    const decimal = (character === '.' || character === ',') && isDigit(this.at(at + 1))
    return decimal || isDigit(character) || isLetter(character)
  }

  /** After "Model", "S/N" and the like: the next run is a code when it holds a digit. */
  private identity(from: number): number {
    let start = this.isSlashN(from) ? from + 2 : from
    const limit = Math.min(this.text.length, from + LONGEST_CODE)
    while (start < limit && (isSpace(this.at(start)) || '.:#-°º'.includes(this.at(start)))) start += 1
    let end = start
    let digits = false
    for (; end < limit; end += 1) {
      const character = this.at(end)
      if (isSpace(character) || isLineEnd(character)) break
      digits ||= isDigit(character)
    }
    return digits ? this.push({ kind: 'code', ...this.place(start, end) }) : from
  }

  private code(start: number, from: number): number {
    let end = from
    for (; end < this.text.length; end += 1) {
      const character = this.at(end)
      if (!isDigit(character) && !isLetter(character) && !'-._'.includes(character)) break
    }
    return this.push({ kind: 'code', ...this.place(start, end) })
  }

  private skipLetters(from: number): number {
    let end = from
    while (end < this.text.length && isLetter(this.at(end))) end += 1
    return end
  }
}
