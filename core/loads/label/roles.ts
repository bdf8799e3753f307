import type { DraftFigure } from './figures.ts'
import type { LabelRole } from './reading.ts'

/** A word that says what figures belong to. */
export interface Marker {
  readonly kind: 'marker'
  readonly role: LabelRole | undefined
  readonly neutral: 'rated' | 'power' | undefined
  /** Says that the appliance is named, not its cooking power: "microwave oven". */
  readonly oven: boolean
  /** True when a colon follows: it speaks of what comes after it. */
  assigned: boolean
}

/** What a line of a plate is made of, as far as roles go. */
export type LineItem =
  | Marker
  | { readonly kind: 'figure'; readonly figure: DraftFigure }
  | { readonly kind: 'open' | 'close' | 'gap' }

/** Which word of a phrase decides: "standby power consumption", "microwave input power". */
const PRIORITY: readonly LabelRole[] = ['other', 'input', 'cooking', 'cooling', 'shaft', 'output']

/** A voltage that is a mains voltage. [V] IEC 60038 low-voltage systems, with their tolerance. */
const MAINS_VOLTAGE_V = { low: 90, high: 264 }

interface Phrase {
  readonly role: LabelRole | undefined
  readonly neutral: 'rated' | 'power' | undefined
  readonly assigned: boolean
}

/**
 * Gives each figure of a line its role. A word speaks of the figures after it ("INPUT 1150 W OUTPUT
 * 700 W"), unless the line begins with a figure and ends with a word ("1150 W input, 700 W output").
 * Words in brackets speak of the figures in the brackets, else of those before them.
 *
 * @param items - The line; roles are written into its figures.
 * @param carried - The role that the line before left open.
 * @returns The role left open for the next line: input, output or unknown.
 */
export function assignLine(items: readonly LineItem[], carried: LabelRole): LabelRole {
  return new LineRoles(items, carried).assign()
}

class LineRoles {
  private readonly items: readonly LineItem[]
  private readonly postfix: boolean
  private role: LabelRole
  /** True while `role` comes from an earlier line. */
  private inherited: boolean
  private roleBefore: LabelRole = 'unknown'
  private sinceMarker: DraftFigure[] = []
  private figuresUnderRole = 0

  constructor(items: readonly LineItem[], carried: LabelRole) {
    this.items = items
    this.role = carried
    this.inherited = true
    this.postfix = isPostfix(items)
  }

  assign(): LabelRole {
    let at = 0
    while (at < this.items.length) {
      const item = this.items[at]
      if (item?.kind === 'open') {
        at = this.brackets(at + 1)
      } else if (item?.kind === 'marker') {
        const phrase = readPhrase(this.items, at)
        this.phrase(phrase)
        at = phrase.next
      } else {
        if (item?.kind === 'figure') this.figure(item.figure)
        at += 1
      }
    }
    const open = this.role === 'input' || this.role === 'output'
    return open && !this.postfix ? this.role : 'unknown'
  }

  private phrase({ role, neutral, assigned }: Phrase): void {
    if (role === undefined) {
      const begins = neutral === 'rated' || (neutral === 'power' && this.inherited)
      if (begins && !this.postfix) this.take('unknown')
      return
    }
    if (this.postfix && !assigned) this.giveBack(role)
    else this.take(role)
  }

  private take(role: LabelRole): void {
    if (role === 'other') this.roleBefore = this.role === 'other' ? 'unknown' : this.role
    this.role = role
    this.inherited = false
    this.sinceMarker = []
    this.figuresUnderRole = 0
  }

  private giveBack(role: LabelRole): void {
    // "120 V 60 Hz 12.5 A 1000 W output": the mains side before it is none of the output.
    const lastOnly = role === 'other' || (role !== 'input' && this.sinceMarker.some(isMainsVoltage))
    const reached = lastOnly ? this.sinceMarker.slice(-1) : this.sinceMarker
    for (const figure of reached) figure.role = role
    this.sinceMarker = []
  }

  private figure(figure: DraftFigure): void {
    // "OUTPUT 700 W 230 V 50 Hz 1150 W": a mains voltage after an output begins the mains side.
    const entered = this.inherited || this.figuresUnderRole > 0
    if (this.role === 'output' && entered && isMainsVoltage(figure)) this.take('unknown')
    figure.role = this.role
    this.sinceMarker.push(figure)
    this.figuresUnderRole += 1
    if (this.role === 'other') this.role = this.roleBefore
  }

  /** @returns the index after the closing bracket */
  private brackets(from: number): number {
    let end = from
    while (end < this.items.length && this.items[end]?.kind !== 'close') end += 1
    const inside = this.items.slice(from, end)
    const phrase = combine(inside.filter((item) => item.kind === 'marker'))
    const figures = inside.flatMap((item) => (item.kind === 'figure' ? [item.figure] : []))
    if (figures.length > 0) {
      for (const figure of figures) figure.role = phrase.role ?? this.role
    } else if (phrase.role !== undefined) {
      if (this.sinceMarker.length > 0) this.giveBack(phrase.role)
      else this.take(stronger(this.inherited ? undefined : this.role, phrase.role) ?? 'unknown')
    }
    return end + 1
  }
}

function isMainsVoltage({ quantity, values, direct }: DraftFigure): boolean {
  const [volts = 0] = values
  const { low, high } = MAINS_VOLTAGE_V
  return quantity === 'voltage' && !direct && volts >= low && volts <= high
}

/** A line that begins with a figure and ends with a word without a colon, brackets apart, speaks backwards. */
function isPostfix(items: readonly LineItem[]): boolean {
  const open = withoutBrackets(items)
  const first = open.find((item) => item.kind === 'figure' || (item.kind === 'marker' && item.role))
  if (first?.kind !== 'figure') return false
  let start = open.length
  while (open[start - 1]?.kind === 'marker') start -= 1
  const last = readPhrase(open, start)
  return last.role !== undefined && !last.assigned
}

function withoutBrackets(items: readonly LineItem[]): readonly LineItem[] {
  let inside = false
  return items.filter(({ kind }) => {
    if (kind === 'open') inside = true
    const outside = !inside
    if (kind === 'close') inside = false
    return outside && kind !== 'close'
  })
}

/** The markers that stand together from an index on, taken as one. */
function readPhrase(items: readonly LineItem[], from: number): Phrase & { readonly next: number } {
  const markers: Marker[] = []
  let next = from
  for (;;) {
    const item = items[next]
    if (item?.kind !== 'marker') break
    markers.push(item)
    next += 1
  }
  return { ...combine(markers), next }
}

function combine(markers: readonly Marker[]): Phrase {
  const oven = markers.some((marker) => marker.oven)
  let role: LabelRole | undefined
  for (const marker of markers) {
    if (!(oven && marker.role === 'cooking')) role = stronger(role, marker.role)
  }
  const rated = markers.some((marker) => marker.neutral === 'rated')
  return {
    role,
    neutral: rated ? 'rated' : markers.find((marker) => marker.neutral)?.neutral,
    assigned: markers.some((marker) => marker.assigned),
  }
}

function stronger(one: LabelRole | undefined, other: LabelRole | undefined): LabelRole | undefined {
  return PRIORITY.find((role) => role === one || role === other)
}
