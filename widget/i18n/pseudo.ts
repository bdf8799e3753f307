import { en } from './en.ts'
import type { Language } from './index.ts'

/** Letters that look alike but prove that no text by-passes the catalogues. */
const ACCENTED: Readonly<Record<string, string>> = { a: 'á', e: 'é', i: 'í', o: 'ö', u: 'ü', c: 'ç', n: 'ñ' }

/** Over two fifths longer, as German and French can be. */
function lengthened(text: string): string {
  const accented = text.replace(/[aeioucn]/g, (letter) => ACCENTED[letter] ?? letter)
  const padding = 'ő '.repeat(Math.ceil(text.length * 0.2)).trim()
  return text === '' ? '' : `${accented} ${padding}`
}

/** Marked as right-to-left text, so that marks and numbers fall where Arabic would put them. */
function marked(text: string): string {
  return text === '' ? '' : `\u200f${text}\u200f`
}

function translated<T>(value: T, write: (text: string) => string): T {
  if (typeof value === 'string') return write(value) as T
  if (typeof value === 'function') {
    return ((...parameters: unknown[]) => write(String(value(...parameters)))) as T
  }
  const entries = Object.entries(value as object).map(([key, inner]) => [key, translated(inner, write)])
  return Object.fromEntries(entries) as T
}

const later = async () => (await import('./en-later.ts')).later

/** English in long words. */
export const long: Language = {
  words: translated(en, lengthened),
  later: async () => translated(await later(), lengthened),
}

/** English as if it were written from right to left. */
export const mirrored: Language = {
  words: translated(en, marked),
  later: async () => translated(await later(), marked),
}
