/** A value to show; a word or a gap is shown as it is. */
type Shown = string | number | undefined

/** Numbers with their units as one locale writes them. */
export interface Formats {
  readonly locale: string
  /** Up to one decimal below 100, none above. */
  number(value: number): string
  /** A value whose type is not known: numbers to three figures, words as they are. */
  figure(value: Shown): string
  watts(value: Shown): string
  voltAmperes(value: Shown): string
  amps(value: Shown): string
  volts(value: Shown): string
  hertz(value: Shown): string
  seconds(value: Shown): string
  /** A length in metres, written in feet where the formats are made so. */
  length(metres: Shown): string
  /** In degrees Celsius. */
  celsius(value: Shown): string
  ampHours(value: Shown): string
  minutes(value: Shown): string
  hours(value: Shown): string
  percent(fraction: number): string
  /** All figures of a value that is to be checked by hand: two decimals, four figures below 1. */
  exact(value: number): string
  exactPercent(fraction: number): string
  money(amount: string, currency: string): string
}

/** Formatted numbers kept at most a locale; past that the store starts anew. */
const KEPT_NUMBERS = 4000

const byLocale = new Map<string, Formats>()

/** Metres of one foot: exact since 1959 (international yard and pound agreement). */
const METRES_PER_FOOT = 0.3048

/**
 * The formats of a locale, made once and kept: `Intl` formatters cost more to make than an answer does.
 *
 * @param locale - BCP 47 tag; an unknown one falls back as `Intl` does
 * @param feet - Lengths in feet instead of metres
 * @returns The formats
 */
export function formatsFor(locale: string, feet = false): Formats {
  const name = `${locale}${feet ? ' feet' : ''}`
  const kept = byLocale.get(name)
  if (kept !== undefined) return kept
  if (byLocale.size >= 50) byLocale.clear()
  const made = makeFormats(locale, feet)
  byLocale.set(name, made)
  return made
}

function makeFormats(locale: string, inFeet: boolean): Formats {
  const fine = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 })
  const coarse = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 })
  const threeFigures = new Intl.NumberFormat(locale, { maximumSignificantDigits: 3 })
  const percents = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 1 })
  const twoDecimals = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 })
  const fourFigures = new Intl.NumberFormat(locale, { maximumSignificantDigits: 4 })
  const exactPercents = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 2 })
  const moneys = new Map<string, Intl.NumberFormat>()
  const number = remembering((value) => (Math.abs(value) < 100 ? fine : coarse).format(value))
  const threeFigured = remembering((value) => threeFigures.format(value))
  const figure = (value: Shown) => (typeof value === 'number' ? threeFigured(value) : (value ?? ''))
  const unit = (symbol: string) => (value: Shown) =>
    `${typeof value === 'number' ? number(value) : (value ?? '')}\u00a0${symbol}`
  const foot = symbolOf(locale, 'foot')
  const feet = (metres: Shown) =>
    typeof metres === 'number' ? `${number(metres / METRES_PER_FOOT)}\u00a0${foot}` : (metres ?? '')
  return {
    locale,
    number,
    figure,
    watts: unit('W'),
    voltAmperes: unit('VA'),
    amps: unit('A'),
    volts: unit('V'),
    hertz: unit('Hz'),
    seconds: unit('s'),
    length: inFeet ? feet : unit('m'),
    celsius: unit('°C'),
    ampHours: unit('Ah'),
    minutes: unit('min'),
    hours: unit('h'),
    exact: (value) => (Math.abs(value) < 1 ? fourFigures : twoDecimals).format(value),
    exactPercent: (fraction) => exactPercents.format(fraction),
    percent: remembering((fraction) => percents.format(fraction)),
    money: (amount, currency) => {
      const known = moneys.get(currency)
      const format = known ?? new Intl.NumberFormat(locale, { style: 'currency', currency })
      if (known === undefined) moneys.set(currency, format)
      return format.format(Number(amount))
    },
  }
}

/** A unit's short sign in the language: feet are "pi" in French. */
function symbolOf(locale: string, unit: string): string {
  const parts = new Intl.NumberFormat(locale, { style: 'unit', unit }).formatToParts(2)
  return parts.find(({ type }) => type === 'unit')?.value ?? unit
}

function remembering(write: (value: number) => string): (value: number) => string {
  const kept = new Map<number, string>()
  return (value) => {
    const known = kept.get(value)
    if (known !== undefined) return known
    if (kept.size >= KEPT_NUMBERS) kept.clear()
    const written = write(value)
    kept.set(value, written)
    return written
  }
}
