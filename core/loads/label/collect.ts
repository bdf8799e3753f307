import { type DraftFigure, isMark, type LabelText, readNumberAt } from './figures.ts'
import type { LabelQuantity, LabelRole } from './reading.ts'
import { assignLine, type LineItem } from './roles.ts'
import type { LabelToken } from './tokens.ts'
import { isOvenWord, namesCooling, neutralOf, type PrintedUnit, roleOf, unitOf } from './words.ts'

/** All that a plate says, before anything is concluded from it. */
export interface CollectedLabel {
  readonly figures: readonly DraftFigure[]
  readonly threePhase: boolean
  /** The plate names a microwave oven, or the frequency of one. */
  readonly microwaveNamed: boolean
}

/** The frequency that microwave ovens work at. [Hz] Radio Regulations 5.150: 2400-2500 MHz, centre 2450. */
const MICROWAVE_HZ = 2.45e9

/** Quantities that come in thousands, so that "1 200 W" is one number. */
const GROUPED_QUANTITIES: readonly LabelQuantity[] = ['power', 'apparent-power', 'cooling-capacity']

/** Words that name a side only before a colon or after "P": not in "made in 2021", not in "2-pin plug". */
const SHORT_ROLE_WORDS: readonly string[] = ['in', 'out', 'pin', 'pout']

interface Announcement {
  readonly unit: PrintedUnit
  /** "A 2021" is no current, "A: 9.8" is one: a single letter needs a mark after it. */
  assigned: boolean
}

/**
 * Walks the tokens once, reads the figures and finds the role of each from the words on its line.
 *
 * @param label - The plate.
 * @returns Figures in the order of the plate; never throws.
 */
export function collectLabel(label: LabelText): CollectedLabel {
  const walk = new Walk(label)
  return walk.run()
}

class Walk {
  private readonly label: LabelText
  private readonly figures: DraftFigure[] = []
  private items: LineItem[] = []
  private carried: LabelRole = 'unknown'
  private announced: Announcement | undefined
  /** The last two words. */
  private earlier: readonly string[] = []
  private threePhase = false
  private microwaveNamed = false
  /** Index after the last bare number, to join "1 200 W" and "1 1/2 HP". */
  private bareEnd = -1

  constructor(label: LabelText) {
    this.label = label
  }

  run(): CollectedLabel {
    const { tokens } = this.label
    let at = 0
    for (;;) {
      const token = tokens[at]
      if (token === undefined) break
      if (token.kind === 'number') {
        at = this.number(at)
        continue
      }
      if (token.kind === 'word') this.word(token, tokens[at + 1])
      else if (token.kind === 'mark') this.mark(token.mark)
      else if (token.kind === 'line') this.line()
      else this.announced = undefined
      at += 1
    }
    this.line()
    return {
      figures: this.figures,
      threePhase: this.threePhase,
      microwaveNamed: this.microwaveNamed,
    }
  }

  private number(at: number): number {
    const reading = readNumberAt(this.label, at, this.announcedUnit())
    this.announced = undefined
    const unit = this.label.tokens[reading.next - 1]
    if (unit?.kind === 'word') this.earlier = [unit.folded]
    if (reading.kind === 'phases') {
      this.threePhase ||= reading.count === 3
      return reading.next
    }
    if (reading.kind === 'useless') {
      this.items.push({ kind: 'gap' })
      return reading.next
    }
    const figure = this.joined(reading.figure, at)
    this.bareEnd = figure.quantity === 'number' ? reading.next : -1
    if (figure.quantity === 'frequency' && figure.values.includes(MICROWAVE_HZ)) this.microwaveNamed = true
    this.figures.push(figure)
    this.items.push(figure.quantity === 'number' ? { kind: 'gap' } : { kind: 'figure', figure })
    return reading.next
  }

  /** Joins a bare number with the figure right after it where both are one number with a space inside. */
  private joined(figure: DraftFigure, at: number): DraftFigure {
    const before = this.figures.at(-1)
    const token = this.label.tokens[at]
    const [whole] = before?.values ?? []
    const [value, ...rest] = figure.values
    const adjacent = before?.quantity === 'number' && this.bareEnd === at
    if (!adjacent || token?.kind !== 'number' || whole === undefined || value === undefined) return figure
    const printed = this.label.text.slice(token.start, token.end)
    const thousands =
      GROUPED_QUANTITIES.includes(figure.quantity) &&
      figure.values.length === 1 &&
      printed.length === 3 &&
      value === Number(printed) &&
      Number.isInteger(whole) &&
      whole > 0 &&
      whole < (token.gap === 'thin' ? 1000 : 100)
    const mixed =
      figure.quantity === 'horsepower' && rest.length === 0 && value < 1 && Number.isInteger(whole)
    if (!thousands && !mixed) return figure
    this.figures.pop()
    const text = `${before.text} ${figure.text}`
    if (mixed) return { ...figure, text, values: [whole + value] }
    const read = whole * 1000 + value
    return {
      ...figure,
      text,
      values: [read],
      notes: [...figure.notes, { code: 'separator-read-as-thousands', values: { read } }],
    }
  }

  private announcedUnit(): PrintedUnit | undefined {
    return this.announced?.assigned === true ? this.announced.unit : undefined
  }

  private word(token: Extract<LabelToken, { kind: 'word' }>, next: LabelToken | undefined): void {
    const { raw, folded } = token
    const unit = unitOf(raw, folded)
    const keepsAnnouncement = this.announced?.unit.quantity === 'power-factor'
    const soundLevel = folded === 'a' && this.earlier.at(-1) === 'db'
    if (unit !== undefined && !soundLevel) this.announced = { unit, assigned: raw.length > 1 }
    else if (!keepsAnnouncement) this.announced = undefined
    const role = namesCooling(folded, this.earlier) ? 'cooling' : roleOf(folded)
    this.earlier = [...this.earlier.slice(-1), folded]
    if (role === 'cooking') this.microwaveNamed ||= folded !== 'cooking'
    const oven = isOvenWord(folded)
    const neutral = neutralOf(folded)
    const assigned = isMark(next, ':') || isMark(next, '=') || this.earlier.at(-2) === 'p'
    if (SHORT_ROLE_WORDS.includes(folded) && !assigned) return
    if (role === undefined && neutral === undefined && !oven) return
    this.items.push({ kind: 'marker', role, neutral, oven, assigned: false })
  }

  private mark(mark: string): void {
    if (mark === '(' || mark === '[') this.items.push({ kind: 'open' })
    if (mark === ')' || mark === ']') this.items.push({ kind: 'close' })
    const assigns = mark === ':' || mark === '='
    const last = this.items.at(-1)
    if (assigns && last?.kind === 'marker') last.assigned = true
    if (this.announced === undefined) return
    if (assigns || mark === ')') this.announced.assigned = true
    else if (!'.(<>≤≥≈'.includes(mark)) this.announced = undefined
  }

  private line(): void {
    this.carried = assignLine(this.items, this.carried)
    this.items = []
    this.announced = undefined
    this.bareEnd = -1
    this.earlier = []
  }
}
