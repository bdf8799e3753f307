import { localeFor, wattsIn } from './watts.ts'

export { parseNumber } from './parse-number.ts'

/** Numbers, money and lengths as one locale writes them. */
export interface Formats {
  readonly locale: string
  number(value: number, decimals?: number): string
  watts(value: number): string
  percent(fraction: number): string
  money(amount: string, currency: string): string
  /** Such as "15 min" or "4 hr 10 min". */
  duration(minutes: number): string
  /** In feet where the shop counts in AWG. */
  length(metres: number): string
  list(parts: readonly string[]): string
}

/** Metres of one foot: exact since 1959 (international yard and pound agreement). */
export const METRES_PER_FOOT = 0.3048

/**
 * The formats of a locale.
 *
 * @param locale - BCP 47 tag; a malformed one falls back to English
 * @param feet - Lengths in feet instead of metres
 * @returns The formats
 */
export function formatsFor(locale: string, feet = false): Formats {
  const tag = localeFor(locale)
  const number = (value: number, decimals = Math.abs(value) < 10 ? 1 : 0) =>
    new Intl.NumberFormat(tag, { maximumFractionDigits: decimals }).format(value)
  const unit = (value: number, name: string, decimals = 0) =>
    new Intl.NumberFormat(tag, { style: 'unit', unit: name, maximumFractionDigits: decimals }).format(value)
  return {
    locale: tag,
    number,
    watts: wattsIn(tag),
    percent: (fraction) =>
      new Intl.NumberFormat(tag, { style: 'percent', maximumFractionDigits: 0 }).format(fraction),
    money: (amount, currency) =>
      new Intl.NumberFormat(tag, { style: 'currency', currency }).format(Number(amount)),
    duration: (minutes) => {
      const whole = Math.round(minutes)
      const hours = Math.floor(whole / 60)
      const rest = whole % 60
      if (hours === 0) return unit(rest, 'minute')
      const written = unit(hours, 'hour')
      return rest === 0 ? written : `${written} ${unit(rest, 'minute')}`
    },
    length: (metres) =>
      feet ? unit(metres / METRES_PER_FOOT, 'foot') : unit(metres, 'meter', metres < 10 ? 1 : 0),
    list: (parts) => new Intl.ListFormat(tag, { type: 'conjunction' }).format(parts),
  }
}
