import { parseNumber } from './parse-number.ts'
import { localeFor, wattsIn } from './watts.ts'

export { parseNumber } from './parse-number.ts'

/** Numbers, money and lengths as one locale writes them. */
export interface Formats {
  readonly locale: string
  number(value: number, decimals?: number): string
  /** A number as somebody types it; undefined where there is none. */
  readNumber(text: string): number | undefined
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
  const made = new Map<string, Intl.NumberFormat>()
  // Making a format costs a hundred times what writing with it does.
  const write = (value: number, options: Intl.NumberFormatOptions) => {
    const key = JSON.stringify(options)
    const format = made.get(key) ?? new Intl.NumberFormat(tag, options)
    made.set(key, format)
    return format.format(value)
  }
  const number = (value: number, decimals = Math.abs(value) < 10 ? 1 : 0) =>
    write(value, { maximumFractionDigits: decimals })
  const unit = (value: number, name: string, decimals = 0) =>
    write(value, { style: 'unit', unit: name, maximumFractionDigits: decimals })
  return {
    locale: tag,
    number,
    readNumber: (text) => parseNumber(text, tag),
    watts: wattsIn(tag),
    percent: (fraction) => write(fraction, { style: 'percent', maximumFractionDigits: 0 }),
    money: (amount, currency) => write(Number(amount), { style: 'currency', currency }),
    duration: (minutes) => {
      const whole = Math.round(minutes)
      const hours = Math.floor(whole / 60)
      const rest = whole % 60
      if (hours === 0) return unit(rest, 'minute')
      const written = unit(hours, 'hour')
      return rest === 0 ? written : `${written} ${unit(rest, 'minute')}`
    },
    length: (metres) => {
      const value = feet ? metres / METRES_PER_FOOT : metres
      return unit(value, feet ? 'foot' : 'meter', value < 10 ? 1 : 0)
    },
    list: (parts) => new Intl.ListFormat(tag, { type: 'conjunction' }).format(parts),
  }
}
