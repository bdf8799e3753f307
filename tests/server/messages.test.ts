import { describe, expect, it } from 'vitest'
import type { WorkingValues } from '../../core/working.ts'
import type { Catalogue } from '../../shared/messages/catalogue.ts'
import { de } from '../../shared/messages/de.ts'
import { en } from '../../shared/messages/en.ts'
import { es } from '../../shared/messages/es.ts'
import { formatsFor } from '../../shared/messages/formats.ts'
import { fr } from '../../shared/messages/fr.ts'
import { writerFor } from '../../shared/messages/index.ts'
import { sentencesOf } from '../support/message-samples.ts'

const english = sentencesOf(en, 'en')

/** Reads as in English everywhere: a change without price, run time or care adds no word to its clause. */
const SAME_AS_ENGLISH = 'what-if gain 3'

interface Language {
  readonly tag: string
  readonly catalogue: Catalogue
  /** How the language writes what English writes so (number and currency patterns of Unicode CLDR, from memory). */
  readonly numbers: Readonly<Record<string, string>>
  /** Words that are spelt as in English. */
  readonly alike: readonly string[]
  /** Words by which a shopper would be addressed too familiarly. */
  readonly familiar: RegExp
}

const LANGUAGES: readonly Language[] = [
  {
    tag: 'de',
    catalogue: de,
    numbers: {
      '12,346': '12.346',
      '12,300': '12.300',
      '12.5': '12,5',
      '12.8': '12,8',
      '7.5': '7,5',
      '3.7': '3,7',
      '2.6': '2,6',
      '0.65': '0,65',
      '0.1': '0,1',
      '12.5%': '12,5\u00a0%',
      '3%': '3\u00a0%',
      '€1,234.50': '1.234,50\u00a0€',
      '€99.00': '99,00\u00a0€',
    },
    alike: ['working name exponent'],
    familiar: /(?<!\p{L})(du|dich|dir|dein\p{L}*|euch|euer\p{L}*)(?!\p{L})/iu,
  },
  {
    tag: 'fr',
    catalogue: fr,
    numbers: {
      '12,346': '12\u00a0346',
      '12,300': '12\u00a0300',
      '12.5': '12,5',
      '12.8': '12,8',
      '7.5': '7,5',
      '3.7': '3,7',
      '2.6': '2,6',
      '0.65': '0,65',
      '0.1': '0,1',
      '12.5%': '12,5\u00a0%',
      '3%': '3\u00a0%',
      '€1,234.50': '1\u00a0234,50\u00a0€',
      '€99.00': '99,00\u00a0€',
    },
    alike: [],
    familiar: /(?<!\p{L})(tu|te|toi|ton|ta|tes)(?!\p{L})/iu,
  },
  {
    tag: 'es',
    catalogue: es,
    numbers: {
      '12,346': '12.346',
      '12,300': '12.300',
      '12.5': '12,5',
      '12.8': '12,8',
      '7.5': '7,5',
      '3.7': '3,7',
      '2.6': '2,6',
      '0.65': '0,65',
      '0.1': '0,1',
      '12.5%': '12,5\u00a0%',
      '3%': '3\u00a0%',
      '€1,234.50': '1234,50\u00a0€',
      '€99.00': '99,00\u00a0€',
    },
    alike: ['working name label', 'working word no'],
    familiar: /(?<!\p{L})(tú|tu|tus|te|ti|vos)(?!\p{L})/iu,
  },
]

const NUMBER = /€?\d(?:[\d.,\u00a0\u202f]*\d)?(?:[\u00a0\u202f]?[%€])?/gu
const ENGLISH_WORDS =
  /(?<!\p{L})(the|and|with|your|yours|of|is|are|for|this|that|battery|which|from|takes|needed)(?!\p{L})/iu

/** Which kind of fixed blank stands before a unit or between thousands differs between editions of CLDR. */
const numbersIn = (text: string) =>
  (text.match(NUMBER) ?? []).map((number) => number.replaceAll('\u202f', '\u00a0'))

describe('the English catalogue', () => {
  it('has a sentence for every sample', () => {
    expect(english.size).toBeGreaterThan(250)
    for (const [label, text] of english) expect(text, label).not.toMatch(/undefined|NaN|\[object|^\s*$/)
  })
})

describe.each(LANGUAGES)('the catalogue $tag', ({ tag, catalogue, numbers, alike, familiar }) => {
  const sentences = sentencesOf(catalogue, tag)

  it('writes whatever English writes', () => {
    expect([...sentences.keys()]).toEqual([...english.keys()])
    for (const [label, text] of sentences) {
      expect(text, label).not.toMatch(/undefined|NaN|\[object|^\s*$/)
    }
  })

  it('repeats no English', () => {
    const same = [...sentences].filter(([label, text]) => text === english.get(label)).map(([label]) => label)
    expect(same.sort()).toEqual([SAME_AS_ENGLISH, ...alike].sort())
    for (const [label, text] of sentences) expect(text, label).not.toMatch(ENGLISH_WORDS)
  })

  it('tells the same figures, written as the language writes them', () => {
    for (const [label, text] of sentences) {
      const told = numbersIn(english.get(label) ?? '').map((number) => {
        if (!/[.,%€]/.test(number)) return number
        return numbers[number] ?? `no figure for ${number}`
      })
      expect([...numbersIn(text)].sort(), `${label}: ${text}`).toEqual(told.sort())
    }
  })

  it('names the same parts', () => {
    const partsIn = (text: string) => [...new Set(text.toUpperCase().match(/PART-[ABC]|AWG X/g) ?? [])].sort()
    for (const [label, text] of sentences) {
      expect(partsIn(text), `${label}: ${text}`).toEqual(partsIn(english.get(label) ?? ''))
    }
  })

  it('addresses shoppers formally', () => {
    for (const [label, text] of sentences) expect(text, label).not.toMatch(familiar)
  })

  it('is set cleanly: one blank between words, quotation marks in pairs, a full stop where English has one', () => {
    for (const [label, text] of sentences) {
      expect(text, label).not.toMatch(/ {2}| [.,]|\.\.|^\s|\s$/)
      expect(text, label).not.toMatch(/["“”]\p{L}|\p{L}"/u)
      expect((text.match(/[„«]/g) ?? []).length, label).toBe((text.match(/[“»]/g) ?? []).length)
      expect(text.endsWith('.'), `${label}: ${text}`).toBe(english.get(label)?.endsWith('.'))
    }
  })

  it('begins each sentence with a capital or a figure', () => {
    for (const [label, text] of sentences) {
      if (/^(seen|what-if gain|working word)/.test(label)) continue
      expect(text, label).toMatch(/^[\p{Lu}\d€]/u)
    }
  })
})

describe('the catalogue fr, typeset', () => {
  it('keeps double punctuation and guillemets on the line of their word', () => {
    for (const [label, text] of sentencesOf(fr, 'fr')) {
      expect(text, label).not.toMatch(/[^\u00a0\u202f][:;?!»]|«[^\u00a0\u202f]/u)
    }
  })
})

describe('counts', () => {
  const outlets = (catalogue: Catalogue, tag: string, count: number) =>
    catalogue.findings['outlets-short']({ outlets: count, needed: 4 }, formatsFor(tag), 'note')
  const restart = (catalogue: Catalogue, tag: string, count: number) =>
    catalogue.findings['restart-together']({ count, startingW: 500 }, formatsFor(tag), 'note')

  it('take the singular for one and the plural for several', () => {
    expect(outlets(de, 'de', 1)).toContain('1\u00a0Steckdose an')
    expect(outlets(de, 'de', 2)).toContain('2\u00a0Steckdosen an')
    expect(outlets(fr, 'fr', 1)).toContain('1\u00a0prise sur')
    expect(outlets(fr, 'fr', 2)).toContain('2\u00a0prises sur')
    expect(outlets(es, 'es', 1)).toContain('1\u00a0enchufe en')
    expect(outlets(es, 'es', 2)).toContain('2\u00a0enchufes en')
  })

  it('take the singular for nought in French only', () => {
    expect(outlets(fr, 'fr', 0)).toContain('0\u00a0prise sur')
    expect(outlets(de, 'de', 0)).toContain('0\u00a0Steckdosen an')
    expect(outlets(es, 'es', 0)).toContain('0\u00a0enchufes en')
  })

  it('carry their verb along', () => {
    expect(restart(de, 'de', 1)).toContain('kann 1\u00a0Kompressor zugleich')
    expect(restart(de, 'de', 2)).toContain('können 2\u00a0Kompressoren zugleich')
    expect(restart(fr, 'fr', 2)).toContain('2\u00a0compresseurs peuvent démarrer')
    expect(restart(es, 'es', 2)).toContain('pueden arrancar a la vez 2\u00a0compresores')
  })
})

describe('lists of loads and units', () => {
  const leaveOut = (catalogue: Catalogue, tag: string, names: readonly string[]) =>
    catalogue.whatIfs['leave-out'](
      { loads: names.map((name) => ({ name, own: false })), units: ['X'], values: {} },
      formatsFor(tag),
    )

  it('are joined as each language joins them', () => {
    expect(leaveOut(de, 'de', ['Toaster', 'Wasserkocher'])).toBe('Ohne Toaster und Wasserkocher reicht X')
    expect(leaveOut(fr, 'fr', ['Grille-pain', 'Friteuse'])).toBe('Sans grille-pain et friteuse, X suffit')
    expect(leaveOut(es, 'es', ['Tostadora', 'Freidora'])).toBe('Sin tostadora y freidora, basta X')
  })

  it('take "e" for "y" before an i in Spanish', () => {
    expect(leaveOut(es, 'es', ['Tostadora', 'Inflador'])).toBe('Sin tostadora e inflador, basta X')
  })

  it('leave abbreviations and names of the shopper’s own as they are', () => {
    expect(leaveOut(fr, 'fr', ['CPAP'])).toBe('Sans CPAP, X suffit')
    const own = [{ name: 'Bohrer von Opa', own: true }]
    expect(fr.whatIfs['leave-out']({ loads: own, units: ['X'], values: {} }, formatsFor('fr'))).toContain(
      'Bohrer von Opa',
    )
  })
})

describe('lengths', () => {
  const routes = { leadsM: 1, routeM: 2 }
  const written = (locale: string, wireSizes: 'metric' | 'awg') =>
    writerFor(locale, wireSizes).finding({ code: 'own-leads-too-short', severity: 'care', values: routes })

  it('are in feet beside AWG and in metres beside square millimetres', () => {
    // 0.3048 m to the foot: 1 m is 3.28 ft, 2 m are 6.56 ft.
    expect(written('en', 'awg')).toMatch(/ 3\.3\u00a0ft .* 6\.6\u00a0ft/)
    expect(written('en', 'metric')).toMatch(/ 1\u00a0m .* 2\u00a0m/)
    expect(written('fr-CA', 'awg')).toMatch(/ 3,3\u00a0pi.* 6,6\u00a0pi/)
  })
})

describe('the working', () => {
  const shown = (locale: string, values: WorkingValues) =>
    writerFor(locale, 'awg')
      .stepValues(values)
      .map(({ name, text }) => `${name}: ${text}`)

  it('names each value in the language and writes it with its unit', () => {
    expect(shown('de', { requiredContinuousW: 1234.5, efficiencyFraction: 0.885 })).toEqual([
      'Nötige Dauerleistung: 1.234,5\u00a0W',
      'Wirkungsgrad: 88,5\u00a0%',
    ])
    expect(shown('fr', { powerFactor: 0.65, minutesPerDay: 30 })).toEqual([
      'Facteur de puissance: 0,65',
      'En marche par jour: 30\u00a0min',
    ])
    expect(shown('en', { lengthM: 3.048, resistanceOhm: 0.001234 })).toEqual([
      'Length, one way: 10\u00a0ft',
      'Resistance, out and back: 0.001234\u00a0Ω',
    ])
  })

  it('translates words and yes and no, and leaves SKUs and sizes alone', () => {
    expect(shown('es', { collapsed: false, limitedBy: 'cut-off-voltage', sku: 'A-1' })).toEqual([
      'La batería se hunde enseguida: no',
      'Termina por: el corte por baja tensión',
      'Inversor: A-1',
    ])
  })

  it('leaves titles of documents alone and tells in the language what has no title', () => {
    for (const locale of ['de', 'fr', 'es', 'en']) {
      expect(writerFor(locale).source('iec60028')).toBe(
        'IEC 60028, International standard of resistance for copper',
      )
    }
    expect(writerFor('de').source('common-practice')).toMatch(/^Übliche Praxis/)
    expect(writerFor('en').source('common-practice')).toMatch(/^Common practice/)
  })
})

describe('writerFor', () => {
  const written = (locale: string) =>
    writerFor(locale).finding({ code: 'rating-estimated', severity: 'note', values: { sizingW: 12_345 } })

  it('writes a region’s numbers in its language', () => {
    expect(written('de')).toContain('12.345\u00a0W')
    expect(written('de-CH')).toMatch(/ 12['’]345\u00a0W/)
    expect(written('de-CH')).toMatch(/^Leistung auf bis zu/)
    expect(written('fr-CA')).toMatch(/^Puissance estimée/)
    expect(written('es-MX')).toMatch(/^Potencia estimada de hasta 12,345\u00a0W/)
  })

  it('reads tags in whatever case', () => {
    expect(written('DE')).toBe(written('de'))
    expect(writerFor('fr-ca').locale).toBe('fr-CA')
  })

  it('falls back to English, numbers included, for a language without a catalogue', () => {
    expect(written('it-CH')).toBe(written('en'))
    expect(writerFor('it-CH').locale).toBe('en')
  })

  it('falls back to the language where the rest of a tag is no tag', () => {
    expect(written('de-abcde-abcde')).toBe(written('de'))
    expect(written('en-abcde-abcde')).toBe(written('en'))
  })
})
