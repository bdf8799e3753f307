import { en, type Words } from './en.ts'
import type { LaterWords } from './en-later.ts'

/** A language's modules; each is fetched on its own, the later words only after the first question. */
export interface Language {
  words(): Promise<Words>
  later(): Promise<LaterWords>
}

/**
 * Languages by subtag, English apart: that one stands in the first bundle, since a failure must always have words.
 * Two pseudo-languages show a page in long words and from right to left.
 */
export const LANGUAGES: Readonly<Record<string, Language>> = {
  en: {
    words: async () => en,
    later: async () => (await import('./en-later.ts')).later,
  },
  'en-xa': {
    words: async () => (await import('./pseudo.ts')).longWords,
    later: async () => (await import('./pseudo.ts')).longLater,
  },
  'ar-xb': {
    words: async () => (await import('./pseudo.ts')).mirroredWords,
    later: async () => (await import('./pseudo.ts')).mirroredLater,
  },
}

/** Languages written from right to left. */
const RIGHT_TO_LEFT = ['ar', 'fa', 'he', 'ur', 'ps', 'dv', 'yi']

/**
 * The language of a locale, English where we have no other.
 *
 * @param locale - BCP 47 tag
 * @returns Its modules and the tag that the words are in
 */
export function languageOf(locale: string): { readonly tag: string; readonly language: Language } {
  const whole = locale.toLowerCase()
  const first = whole.split('-', 1)[0] ?? ''
  for (const tag of [whole, first, 'en']) {
    const language = LANGUAGES[tag]
    if (language !== undefined) return { tag, language }
  }
  throw new RangeError('English is missing')
}

/**
 * Whether a language reads from right to left.
 *
 * @param tag - BCP 47 tag
 * @returns True for Arabic, Hebrew and their like
 */
export function isRightToLeft(tag: string): boolean {
  return RIGHT_TO_LEFT.includes(tag.split('-', 1)[0] ?? '')
}
