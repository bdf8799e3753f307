import * as fc from 'fast-check'

/** Names that mean something to JavaScript's own objects. */
export const PROTOTYPE_NAMES = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'valueOf',
  'hasOwnProperty',
  '__defineGetter__',
  'toJSON',
  'then',
  'length',
] as const

/** Text that is sound Unicode and within most bounds, and that code trips over. */
export const AWKWARD_TEXTS = [
  ...PROTOTYPE_NAMES,
  ' ',
  '\u00a0\u2003',
  '\t\n\r',
  '\u202e12 V\u202c',
  '\u200f\u200e',
  '\u200b\u200d\ufeff',
  'e\u0301\u0302\u0303\u0304\u0305\u0306',
  '👩‍👩‍👧‍👦',
  '🇬🇧🇩🇪',
  '\u{10ffff}\uffff',
  '\u2028\u2029',
  'İıſﬃß',
  '１２０Ｖ ２Ａ',
  '٢٣٠ V',
  '½ hp Ⅻ W',
  'NaN',
  'Infinity',
  '-0',
  '1e999',
  '0x10',
  'null',
  'undefined',
  'true',
  '../../../etc/passwd',
  '..%2f..%2f',
  '%00%zz',
  "'; drop table ranges; --",
  '<script>alert(1)</script>',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: text that a template would fill in
  '${1+1}{{1+1}}#{1+1}',
  "=cmd|' /C calc'!A0",
  '+1-1@SUM(1)',
  'x\r\nset-cookie: a=b',
  '\u0001\u001b[31m\u007f\u0085',
  '/~0~1/~2',
  '$&$1$`',
  '\\u0000\\',
  '"\',;|',
] as const

/** Text that no reader need take: half surrogates, NUL, and more than anything has room for. */
const UNSOUND_TEXTS = [
  '\ud83d',
  '\udc00x',
  'a\0b',
  'x'.repeat(3000),
  '\u0301'.repeat(2500),
  '((((('.repeat(500),
]

/** Any text at all, with a leaning to what code trips over. */
export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...AWKWARD_TEXTS),
  fc.constantFrom(...UNSOUND_TEXTS),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.string({ maxLength: 40 }),
)

/**
 * A text that can be written as UTF-8.
 *
 * @param text - Any text
 * @returns The same with a mark in place of each half surrogate
 */
export function wellFormed(text: string): string {
  return text.replaceAll(/\p{Surrogate}/gu, '\ufffd')
}

/** Sound text that may stand in a JSON string of the contract: without NUL and half surrogates. */
export function soundText(minLength: number, maxLength: number): fc.Arbitrary<string> {
  const short = Math.max(minLength, Math.min(maxLength, 12))
  const sized = (text: string) => {
    const { length } = [...text]
    return length >= minLength && length <= maxLength && !text.includes('\0')
  }
  const awkward = AWKWARD_TEXTS.filter(sized)
  return fc.oneof(
    { weight: 3, arbitrary: fc.string({ minLength, maxLength: short }) },
    { weight: 2, arbitrary: fc.string({ unit: 'binary', minLength, maxLength: short }).filter(sized) },
    ...(awkward.length === 0 ? [] : [{ weight: 3, arbitrary: fc.constantFrom(...awkward) }]),
    { weight: 1, arbitrary: fc.constantFrom('x', '𝟙').map((unit) => unit.repeat(Math.min(maxLength, 5000))) },
  )
}
