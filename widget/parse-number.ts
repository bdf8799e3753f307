import { localeFor } from './watts.ts'

/**
 * A number as somebody types it: "2.5", "2,5", "1,200" and "1.200" by the locale's own signs.
 *
 * @param text - What was typed
 * @param locale - BCP 47 tag
 * @returns The number, or undefined where there is none
 */
export function parseNumber(text: string, locale: string): number | undefined {
  const parts = new Intl.NumberFormat(localeFor(locale)).formatToParts(12_345.6)
  const group = parts.find(({ type }) => type === 'group')?.value ?? ','
  let plain = text.trim().replace(/[\s\u00a0\u202f']/g, '')
  if (new RegExp(`^\\d{1,3}([${group === '.' ? '.' : ','}]\\d{3})+([.,]\\d+)?$`).test(plain)) {
    plain = plain.replaceAll(group === '.' ? '.' : ',', '')
  }
  plain = plain.replace(',', '.')
  return /^\d+(\.\d*)?$|^\.\d+$/.test(plain) ? Number(plain) : undefined
}
