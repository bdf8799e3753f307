import type { Formats } from './formats.ts'

/** A word or phrase as it stands beside one thing and beside several. */
export interface Forms {
  readonly one: string
  readonly other: string
}

const rules = new Map<string, Intl.PluralRules>()

/**
 * The form that a count takes: in French 0 and 1.5 are singular, in German, Spanish and English they are not.
 *
 * @param count - How many
 * @param forms - Both forms
 * @param formats - Of the locale that is written
 * @returns The form, without the count
 */
export function formFor(count: number, forms: Forms, { locale }: Formats): string {
  const rule = keptFor(rules, locale, () => new Intl.PluralRules(locale))
  return rule.select(count) === 'one' ? forms.one : forms.other
}

/**
 * A count with the form that it takes, such as "2 Stränge".
 *
 * @param count - How many
 * @param forms - Both forms
 * @param formats - Of the locale that is written
 * @returns Count and form, kept on one line
 */
export function counted(count: number, forms: Forms, formats: Formats): string {
  return `${formats.number(count)}\u00a0${formFor(count, forms, formats)}`
}

const lists = new Map<string, Intl.ListFormat>()

/**
 * Names joined as the language joins them: "a, b und c"; Spanish takes "e" before an i.
 *
 * @param names - What is listed
 * @param formats - Of the locale that is written
 * @returns The list
 */
export function listed(names: readonly string[], { locale }: Formats): string {
  return keptFor(lists, locale, () => new Intl.ListFormat(locale, { type: 'conjunction' })).format(names)
}

/**
 * A name as it stands inside a sentence; leaves abbreviations such as "USB" alone.
 *
 * @param name - A name with a capital
 * @returns The same with a small initial
 */
export function uncapital(name: string): string {
  return /^\p{Lu}[\p{Ll} -]/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name
}

/**
 * A phrase as it begins a sentence.
 *
 * @param text - The phrase
 * @returns The same with a capital
 */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** What is costly to make, made once a locale; past fifty locales the store starts anew. */
function keptFor<T>(store: Map<string, T>, locale: string, make: () => T): T {
  const kept = store.get(locale)
  if (kept !== undefined) return kept
  if (store.size >= 50) store.clear()
  const made = make()
  store.set(locale, made)
  return made
}
