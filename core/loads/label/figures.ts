import { WATTS_PER_METRIC_HORSEPOWER } from '../../tables/rating-figures.ts'
import { WATTS_PER_HORSEPOWER } from '../../units.ts'
import type { LabelFigure, LabelNote, LabelQuantity, LabelRole } from './reading.ts'
import type { LabelToken } from './tokens.ts'
import { type PrintedUnit, unitOf } from './words.ts'

/** A figure while its role is still being found. */
export interface DraftFigure {
  readonly quantity: LabelQuantity
  readonly values: readonly number[]
  readonly unit: LabelFigure['unit']
  readonly text: string
  readonly notes: readonly LabelNote[]
  /** True when its separators make no number. */
  readonly malformed: boolean
  readonly direct: boolean
  role: LabelRole
}

/** A plate's text with its tokens. */
export interface LabelText {
  readonly text: string
  readonly tokens: readonly LabelToken[]
}

/** What stands at a number: a figure, phases, or something this reader has no use for. */
export type NumberReading =
  | { readonly kind: 'figure'; readonly figure: DraftFigure; readonly next: number }
  | { readonly kind: 'phases'; readonly count: number; readonly next: number }
  | { readonly kind: 'useless'; readonly next: number }

type NumberToken = Extract<LabelToken, { kind: 'number' }>
type Separator = 'range' | 'list' | 'times'

interface UnitAt {
  /** Undefined for a unit without use here, such as mm or kg. */
  readonly unit: PrintedUnit | undefined
  readonly glued: boolean
  readonly next: number
}

interface NumberList {
  readonly numbers: readonly NumberToken[]
  readonly separators: readonly Separator[]
  readonly unit: UnitAt | undefined
  readonly next: number
}

/**
 * Reads the figure that begins at a number token: one number, a range ("220-240 V") or a list
 * ("50/60 Hz", "1.8 A/0.9 A"), with the unit after it, or the unit that a word before it announced.
 *
 * @param label - The plate.
 * @param at - Index of a number token.
 * @param announced - The unit named just before, as in "AMPS 9.8", if any.
 * @returns The reading, and the index after it.
 */
export function readNumberAt(
  label: LabelText,
  at: number,
  announced: PrintedUnit | undefined,
): NumberReading {
  const { tokens } = label
  const list = readList(tokens, at)
  const phases = phasesAt(tokens, list, announced)
  if (phases !== undefined) return { kind: 'phases', count: phases, next: list.next }
  const after = list.unit
  // "VOLTS 115 AMPS 9.8": the unit before wins, unless the one after says the same or touches the number.
  const useAfter =
    after !== undefined &&
    (announced === undefined || after.glued || after.unit?.quantity === announced.quantity)
  if (useAfter && after.unit === undefined) return { kind: 'useless', next: list.next }
  const next = after !== undefined && !useAfter ? list.next - unitLength(tokens, list) : list.next
  const unit = useAfter ? after.unit : announced
  return { kind: 'figure', figure: draft(label, { ...list, next }, { at, unit }), next }
}

function unitLength(tokens: readonly LabelToken[], list: NumberList): number {
  let length = 0
  while (tokens[list.next - 1 - length]?.kind !== 'number') length += 1
  return length
}

function readList(tokens: readonly LabelToken[], at: number): NumberList {
  const numbers: NumberToken[] = []
  const separators: Separator[] = []
  let unit: UnitAt | undefined
  let index = at
  let next = at
  for (;;) {
    const token = tokens[index]
    if (token?.kind !== 'number') break
    const unitHere = rangeWordAt(tokens, index) ? undefined : unitAt(tokens, index + 1)
    if (unit !== undefined && unitHere?.unit !== unit.unit) break
    numbers.push(token)
    unit = unitHere ?? unit
    next = unitHere?.next ?? index + 1
    const separator = separatorAt(tokens, next)
    if (separator === undefined || !joins({ tokens, from: token, separator, unit })) break
    const following = tokens[separator.next]
    const ownUnit = unitAt(tokens, separator.next + 1)
    if (following === undefined) break
    separators.push(separator.kind)
    if (unit !== undefined && separator.kind === 'times' && isCount(following) && ownUnit === undefined) {
      numbers.push(following)
      return { numbers, separators, unit, next: separator.next + 1 }
    }
    if (unit !== undefined && ownUnit?.unit !== unit.unit) break
    index = separator.next
  }
  return { numbers, separators: separators.slice(0, numbers.length - 1), unit, next }
}

/** A count of like things, as in "10 W x 4". */
function isCount(token: LabelToken): token is NumberToken {
  return token.kind === 'number' && Number.isInteger(token.number.decimal) && token.number.decimal <= 100
}

interface SeparatorAt {
  readonly kind: Separator
  readonly mark: string
  readonly next: number
}

/** A mark or word that joins two numbers, when a number follows it. */
function separatorAt(tokens: readonly LabelToken[], at: number): SeparatorAt | undefined {
  const token = tokens[at]
  let kind: Separator | undefined
  let next = at + 1
  let mark = ''
  if (token?.kind === 'mark') {
    mark = token.mark
    if ('-–—−‑~÷…'.includes(mark)) kind = 'range'
    else if (mark === '/') kind = 'list'
    else if (mark === '×' || mark === '*') kind = 'times'
    else if (mark === '.' && isMark(tokens[next], '.')) {
      kind = 'range'
      next += isMark(tokens[next + 1], '.') ? 2 : 1
    }
  } else if (token?.kind === 'word') {
    mark = token.folded
    if (mark === 'to' || mark === 'bis' || mark === 'a') kind = 'range'
    else if (mark === 'x') kind = 'times'
  }
  return kind !== undefined && tokens[next]?.kind === 'number' ? { kind, mark, next } : undefined
}

/**
 * Whether two numbers with a joining mark belong together. "1~ 230 V" and "3 - 400 V" are no ranges: a
 * tilde also marks alternating current, a dash also separates.
 */
function joins(pair: {
  tokens: readonly LabelToken[]
  from: NumberToken
  separator: SeparatorAt
  unit: UnitAt | undefined
}): boolean {
  const to = pair.tokens[pair.separator.next]
  if (to?.kind !== 'number') return false
  if (pair.separator.kind !== 'range' || pair.unit !== undefined) return true
  const ratio = to.number.decimal / pair.from.number.decimal
  return ratio < (pair.separator.mark === '~' ? 3 : 20)
}

/** True where "a" or "à" after a number means "to": "220 a 240 V", but not "4 A 230 V". */
function rangeWordAt(tokens: readonly LabelToken[], at: number): boolean {
  const word = tokens[at + 1]
  const from = tokens[at]
  const to = tokens[at + 2]
  if (word?.kind !== 'word' || word.folded !== 'a' || word.raw === 'A') return false
  if (from?.kind !== 'number' || to?.kind !== 'number') return false
  const ratio = to.number.decimal / from.number.decimal
  return word.raw !== 'a' || (ratio >= 1 && ratio < 3)
}

/** "1000-W", "3-phase": a hyphen that only ties a unit to its number. */
function isHyphenated(tokens: readonly LabelToken[], at: number): boolean {
  const hyphen = tokens[at]
  const word = tokens[at + 1]
  if (hyphen?.kind !== 'mark' || hyphen.mark !== '-' || hyphen.gap !== 'none') return false
  return word?.kind === 'word' && word.gap === 'none' && unitOf(word.raw, word.folded) !== undefined
}

/** The unit at a token, with the compounds "V.A", "Btu/h" and "W/h". */
function unitAt(tokens: readonly LabelToken[], from: number): UnitAt | undefined {
  const at = isHyphenated(tokens, from) ? from + 1 : from
  const word = tokens[at]
  if (word?.kind !== 'word') return undefined
  const glued = word.gap === 'none'
  const unit = unitOf(word.raw, word.folded)
  if (unit === undefined || unit.quantity === 'power-factor') {
    return glued && word.folded !== 'x' && unit === undefined
      ? { unit: undefined, glued, next: at + 1 }
      : undefined
  }
  const mark = tokens[at + 1]
  const second = tokens[at + 2]
  if (mark?.kind === 'mark' && second?.kind === 'word' && mark.gap === 'none' && second.gap === 'none') {
    if ('.·•⋅*'.includes(mark.mark) && unit.quantity === 'voltage' && second.folded === 'a') {
      return { unit: unitOf(`${word.raw}A`, `${word.folded}a`), glued, next: at + 3 }
    }
    if (mark.mark === '/' && (unit.quantity === 'power' || unit.quantity === 'cooling-capacity')) {
      const hourly = second.folded === 'h' || second.folded === 'hr' || second.folded === 'hour'
      if (hourly) return { unit, glued, next: at + 3 }
      if (second.gap === 'none' && second.folded.length <= 2) return { unit: undefined, glued, next: at + 3 }
    }
  }
  return { unit, glued, next: at + 1 }
}

/** The count of phases in "3~", "3N~", "3 ph", "PH 1", "3-phase", or undefined. */
function phasesAt(
  tokens: readonly LabelToken[],
  list: NumberList,
  announced: PrintedUnit | undefined,
): number | undefined {
  const count = list.numbers[0]?.number.decimal
  if (count !== 1 && count !== 3) return undefined
  if (list.numbers.length > 1) return undefined
  if (list.unit?.unit?.quantity === 'phases' || announced?.quantity === 'phases') return count
  if (list.unit !== undefined && list.unit.unit !== undefined) return undefined
  const glued = tokens[list.next - 1]
  const neutral = glued?.kind === 'word' && glued.folded === 'n'
  const after = tokens[list.next]
  const dashed = tokens[list.next + 1]
  if (isMark(after, '~') && (neutral || list.unit === undefined)) return count
  const phaseNext = dashed?.kind === 'word' && unitOf(dashed.raw, dashed.folded)?.quantity === 'phases'
  return isMark(after, '-') && phaseNext ? count : undefined
}

export function isMark(token: LabelToken | undefined, mark: string): boolean {
  return token?.kind === 'mark' && token.mark === mark
}

function draft(
  label: LabelText,
  list: NumberList,
  place: { readonly at: number; readonly unit: PrintedUnit | undefined },
): DraftFigure {
  const { unit, at } = place
  const text = label.text.slice(label.tokens[at]?.start, label.tokens[list.next - 1]?.end)
  const notes: LabelNote[] = []
  const read = list.numbers.map(({ number }) => {
    if (unit?.grouped === true && number.thousands !== undefined) {
      notes.push({ code: 'separator-read-as-thousands', values: { read: number.thousands } })
      return number.thousands
    }
    return number.decimal
  })
  if (list.numbers.some((number) => number.mended)) {
    notes.push({ code: 'letters-read-as-digits', values: { read: read[0] ?? 0 } })
  }
  const malformed = read.some((value) => !Number.isFinite(value))
  const quantity = figureQuantity(unit, read)
  return {
    quantity,
    values: malformed ? [] : scaled({ read, list, unit, notes, quantity }),
    unit: quantity === 'number' ? '' : (unit?.unit ?? ''),
    text,
    notes,
    malformed,
    direct: quantity === 'voltage' && (unit?.direct === true || isDirect(label.tokens, at, list.next)),
    role: 'unknown',
  }
}

function figureQuantity(unit: PrintedUnit | undefined, read: readonly number[]): LabelQuantity {
  if (unit === undefined || unit.quantity === 'phases' || unit.quantity === 'none') return 'number'
  const isFactor = read.length === 1 && (read[0] ?? 0) >= 0.1 && (read[0] ?? 0) <= 1
  return unit.quantity === 'power-factor' && !isFactor ? 'number' : unit.quantity
}

/** Values in the figure's own unit, with "2 x 1000 W" multiplied and "1-1/2 HP" added up. */
function scaled(figure: {
  read: readonly number[]
  list: NumberList
  unit: PrintedUnit | undefined
  notes: LabelNote[]
  quantity: LabelQuantity
}): readonly number[] {
  const { read, list, unit, notes, quantity } = figure
  const [first = 0, second = 0, third = 0] = read
  const joined = list.separators
  if (quantity === 'horsepower') {
    const factor = unit?.metricHorsepower === true ? WATTS_PER_METRIC_HORSEPOWER / WATTS_PER_HORSEPOWER : 1
    if (joined.length === 1 && joined[0] === 'list' && first < second) return [(first / second) * factor]
    if (joined.length === 2 && joined[1] === 'list' && second < third)
      return [(first + second / third) * factor]
    return read.map((value) => value * factor)
  }
  const values = read.map((value) => value * (unit?.factor ?? 1))
  if (
    joined.length === 1 &&
    joined[0] === 'times' &&
    (quantity === 'power' || quantity === 'apparent-power')
  ) {
    const product = first * (values[1] ?? 0)
    notes.push({ code: 'count-multiplied', values: { read: product } })
    return [product]
  }
  return values
}

/** Direct current is said before the voltage or after it, in letters or by the sign of IEC 60417-5031. */
function isDirect(tokens: readonly LabelToken[], at: number, next: number): boolean {
  const after = tokens[next]
  const before = isMark(tokens[at - 1], ':') ? tokens[at - 2] : tokens[at - 1]
  const word = (token: LabelToken | undefined): string => (token?.kind === 'word' ? token.folded : '')
  if (isMark(after, '~') || word(after) === 'ac' || word(after) === 'ca') return false
  if (word(after) === 'dc' || word(after) === 'cc' || isMark(after, '⎓') || isMark(after, '=')) return true
  const beforeBefore = tokens[at - 3]
  return word(before) === 'dc' && word(beforeBefore) !== 'ac'
}
