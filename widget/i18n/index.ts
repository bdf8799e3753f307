import { en, type Words } from './en.ts'
import type { LaterWords } from './en-later.ts'

/** A language's module: the words of the first question, and how those of everything later are fetched. */
export interface Language {
  readonly words: Words
  later(): Promise<LaterWords>
}

/**
 * Languages by subtag, English apart: that one stands in the first bundle, since a failure must always have words.
 * Two pseudo-languages show a page in long words and from right to left.
 */
export const LANGUAGES: Readonly<Record<string, () => Promise<Language>>> = {
  en: async () => ({ words: en, later: async () => (await import('./en-later.ts')).later }),
  de: () => import('./de.ts'),
  es: () => import('./es.ts'),
  fr: () => import('./fr.ts'),
  'en-xa': async () => (await import('./pseudo.ts')).long,
  'ar-xb': async () => (await import('./pseudo.ts')).mirrored,
}

/**
 * The language of a locale, English where we have no other.
 *
 * @param locale - BCP 47 tag
 * @returns The tag of {@link LANGUAGES} that the words are in
 */
export function languageOf(locale: string): string {
  const whole = locale.toLowerCase()
  return [whole, whole.replace(/-.*/, '')].find((tag) => Object.hasOwn(LANGUAGES, tag)) ?? 'en'
}

/**
 * Whether a language reads from right to left.
 *
 * @param tag - BCP 47 tag
 * @returns True for Arabic, Hebrew and their like
 */
export function isRightToLeft(tag: string): boolean {
  return /^(ar|fa|he|ur|ps|dv|yi)\b/.test(tag)
}
