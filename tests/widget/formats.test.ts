import { describe, expect, it } from 'vitest'
import { formatsFor, parseNumber } from '../../widget/formats.ts'
import { kitSum } from '../../widget/kit-sum.ts'

describe('parseNumber', () => {
  it.each([
    ['2.5', 'en-GB', 2.5],
    ['2,5', 'en-GB', 2.5],
    ['1,200', 'en-GB', 1200],
    ['1,200.5', 'en-US', 1200.5],
    ['2,5', 'de-DE', 2.5],
    ['2.5', 'de-DE', 2.5],
    ['1.200', 'de-DE', 1200],
    ['1 200', 'fr-FR', 1200],
    [' 90 ', 'en', 90],
  ])('reads %j in %s', (text, locale, value) => {
    expect(parseNumber(text, locale)).toBe(value)
  })

  it.each(['', '.', 'ninety', '12 V', '-5', '1e5', '1.2.3'])('reads no number in %j', (text) => {
    expect(parseNumber(text, 'en')).toBeUndefined()
  })
})

describe('formatsFor', () => {
  it('writes money, watts and time as the locale does', () => {
    const de = formatsFor('de-DE')
    expect(de.money('597.50', 'EUR')).toBe('597,50\u00a0€')
    expect(de.watts(2275.4)).toBe('2.275\u00a0W')
    expect(formatsFor('en-GB').duration(250)).toBe('4 hrs 10 mins')
    expect(formatsFor('en-US').duration(60)).toBe('1 hr')
  })

  it('writes lengths in feet where the shop counts in AWG', () => {
    expect(formatsFor('en-US', true).length(3.048)).toBe('10 ft')
    expect(formatsFor('en-GB').length(1.5)).toBe('1.5 m')
  })

  it('falls back to English for a tag that is none', () => {
    expect(formatsFor('???').locale).toBe('en')
  })
})

describe('kitSum', () => {
  it('adds money without losing a coin', () => {
    expect(
      kitSum([
        { price: '0.10', quantity: 3 },
        { price: '0.20', quantity: 1 },
      ]),
    ).toBe('0.50')
    expect(kitSum([{ price: '1.005', quantity: 1 }])).toBe('1.005')
    expect(kitSum([{ quantity: 2 }])).toBe('0.00')
  })
})
