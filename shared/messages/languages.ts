/** Languages that everything is written in. */
export const LANGUAGES = ['en', 'de', 'fr', 'es'] as const
export type Language = (typeof LANGUAGES)[number]

/** The language that an answer is written in, and the locale that its numbers follow. */
export interface WrittenIn {
  readonly language: Language
  readonly locale: string
}

/**
 * What a caller's locale comes to: de-CH is written in German with Swiss numbers; a language without a catalogue in
 * English, numbers included.
 *
 * @param locale - BCP 47 tag, or what only looks like one
 * @returns Language and locale; a tag that `Intl` does not read comes to its bare language
 */
export function writtenIn(locale: string): WrittenIn {
  const kept = known.get(locale)
  if (kept !== undefined) return kept
  if (known.size >= 50) known.clear()
  const read = readTag(locale)
  known.set(locale, read)
  return read
}

/** Tags read before, a few at most: callers may send any. */
const known = new Map<string, WrittenIn>()

function readTag(locale: string): WrittenIn {
  const subtag = locale.split('-', 1)[0]?.toLowerCase()
  const language = LANGUAGES.find((name) => name === subtag)
  if (language === undefined) return { language: 'en', locale: 'en' }
  return { language, locale: canonical(locale) ?? language }
}

function canonical(locale: string): string | undefined {
  try {
    return Intl.getCanonicalLocales(locale)[0]
  } catch {
    return undefined
  }
}
