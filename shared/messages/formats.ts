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
  metres(value: Shown): string
  ampHours(value: Shown): string
  minutes(value: Shown): string
  hours(value: Shown): string
  percent(fraction: number): string
  money(amount: string, currency: string): string
}

/** Formatted numbers kept at most a locale; past that the store starts anew. */
const KEPT_NUMBERS = 4000

const byLocale = new Map<string, Formats>()

/**
 * The formats of a locale, made once and kept: `Intl` formatters cost more to make than an answer does.
 *
 * @param locale - BCP 47 tag; an unknown one falls back as `Intl` does
 * @returns The formats
 */
export function formatsFor(locale: string): Formats {
  const kept = byLocale.get(locale)
  if (kept !== undefined) return kept
  if (byLocale.size >= 50) byLocale.clear()
  const made = makeFormats(locale)
  byLocale.set(locale, made)
  return made
}

function makeFormats(locale: string): Formats {
  const fine = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 })
  const coarse = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 })
  const threeFigures = new Intl.NumberFormat(locale, { maximumSignificantDigits: 3 })
  const percents = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 1 })
  const moneys = new Map<string, Intl.NumberFormat>()
  const number = remembering((value) => (Math.abs(value) < 100 ? fine : coarse).format(value))
  const figure = (value: Shown) => (typeof value === 'number' ? threeFigures.format(value) : (value ?? ''))
  const unit = (symbol: string) => (value: Shown) =>
    `${typeof value === 'number' ? number(value) : (value ?? '')}\u00a0${symbol}`
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
    metres: unit('m'),
    ampHours: unit('Ah'),
    minutes: unit('min'),
    hours: unit('h'),
    percent: remembering((fraction) => percents.format(fraction)),
    money: (amount, currency) => {
      const known = moneys.get(currency)
      const format = known ?? new Intl.NumberFormat(locale, { style: 'currency', currency })
      if (known === undefined) moneys.set(currency, format)
      return format.format(Number(amount))
    },
  }
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
