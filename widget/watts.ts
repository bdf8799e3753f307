/**
 * A locale that this browser can write numbers in.
 *
 * @param locale - BCP 47 tag; a malformed one falls back to English
 * @returns The tag to use
 */
export function localeFor(locale: string): string {
  try {
    return Intl.NumberFormat.supportedLocalesOf(locale)[0] ?? 'en'
  } catch {
    return 'en'
  }
}

/**
 * How a locale writes powers. The first writing is the costly one: it readies the browser's own tables.
 *
 * @param locale - BCP 47 tag
 * @returns Writes whole watts, such as "1,710 W". [W]
 */
export function wattsIn(locale: string): (value: number) => string {
  let whole: Intl.NumberFormat | undefined
  return (value) => {
    whole ??= new Intl.NumberFormat(localeFor(locale), { maximumFractionDigits: 0 })
    return `${whole.format(value)}\u00a0W`
  }
}
