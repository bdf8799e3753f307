/** Accented letters of the languages that plates are printed in, and the letter each is read as. */
const PLAIN_LETTER: Readonly<Record<string, string>> = {
  à: 'a',
  á: 'a',
  â: 'a',
  ã: 'a',
  ä: 'a',
  ç: 'c',
  è: 'e',
  é: 'e',
  ê: 'e',
  ë: 'e',
  ì: 'i',
  í: 'i',
  î: 'i',
  ï: 'i',
  ñ: 'n',
  ò: 'o',
  ó: 'o',
  ô: 'o',
  õ: 'o',
  ö: 'o',
  ù: 'u',
  ú: 'u',
  û: 'u',
  ü: 'u',
  ß: 's',
  φ: 'phi',
  ϕ: 'phi',
  ɸ: 'phi',
  ø: 'phi',
  λ: 'lambda',
}

/** Vulgar fractions with a code point of their own. */
const FRACTION: Readonly<Record<string, number>> = { '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3 }

/** @returns true for 0..9 */
export function isDigit(character: string): boolean {
  return character >= '0' && character <= '9'
}

/** @returns true for a basic Latin letter or one of the letters {@link fold} knows */
export function isLetter(character: string): boolean {
  return (
    (character >= 'a' && character <= 'z') ||
    (character >= 'A' && character <= 'Z') ||
    character in PLAIN_LETTER ||
    (character > '\u007f' && character.toLowerCase() in PLAIN_LETTER) ||
    isCombining(character)
  )
}

/** @returns true for a combining accent, as a decomposed `e` + acute has it */
function isCombining(character: string): boolean {
  return character >= '\u0300' && character <= '\u036f'
}

/** @returns true for a space inside a line, narrow and no-break ones included */
export function isSpace(character: string): boolean {
  return character === ' ' || character === '\t' || isThinSpace(character)
}

/** @returns true for a space that print uses between thousands */
export function isThinSpace(character: string): boolean {
  return character === '\u00a0' || character === '\u2009' || character === '\u202f' || character === '\u2007'
}

/** @returns true for the end of a line */
export function isLineEnd(character: string): boolean {
  return character === '\n' || character === '\r' || character === '\u2028' || character === '\u2029'
}

/** @returns the value of a one-character fraction such as "½", else undefined */
export function fractionOf(character: string): number | undefined {
  return FRACTION[character]
}

/**
 * A word in lower case without accents, so that "ENTRÉE" and "entree" are one word.
 *
 * @param word - Letters only.
 * @returns The plain form; Greek phi is spelt out.
 */
export function fold(word: string): string {
  let plain = ''
  for (const character of word.toLowerCase()) {
    if (!isCombining(character)) plain += PLAIN_LETTER[character] ?? character
  }
  return plain
}
