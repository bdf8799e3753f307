import { describe, expect, it } from 'vitest'
import { en } from '../../widget/i18n/en.ts'
import { later } from '../../widget/i18n/en-later.ts'
import { isRightToLeft, LANGUAGES, languageOf } from '../../widget/i18n/index.ts'

function shapeOf(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${path}: ${typeof value}`]
  return Object.entries(value).flatMap(([key, inner]) => shapeOf(inner, `${path}/${key}`))
}

describe('every language', () => {
  it.each(Object.keys(LANGUAGES))('%s has the words of English, sentence for sentence', async (tag) => {
    const language = await LANGUAGES[tag]?.()
    expect(shapeOf(language?.words)).toEqual(shapeOf(en))
    expect(shapeOf(await language?.later())).toEqual(shapeOf(later))
  })
})

describe('languageOf', () => {
  it.each([
    ['en-GB', 'en'],
    ['EN', 'en'],
    ['en-XA', 'en-xa'],
    ['xx-YY', 'en'],
    ['', 'en'],
    ['constructor', 'en'],
  ])('answers %j in %s', (locale, tag) => {
    expect(languageOf(locale)).toBe(tag)
  })
})

describe('isRightToLeft', () => {
  it('knows Arabic from English', () => {
    expect(isRightToLeft('ar-xb')).toBe(true)
    expect(isRightToLeft('en')).toBe(false)
  })
})
