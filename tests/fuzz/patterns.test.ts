import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readLabel } from '../../core/loads/read-label.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { search, wordsOf } from '../../widget/search.ts'
import { hostileText } from './hostile.ts'

const MAINS = { mainsV: 230 } as const
const items = BUILT_IN_APPLIANCES.map(({ id, name, synonyms }) => ({ id, name, synonyms }))

/** Long enough that time that grows by its square would not end within the test's. [characters] */
const LONG = 300_000

const PIECES = [
  ...[
    '(',
    ')',
    '()',
    '((a',
    ' ',
    '\t\n',
    'a',
    's',
    'es',
    'ies ',
    'e\u0301',
    '\u0301',
    '\u200b',
    '\u202e',
    '🔋',
    'ﬃ',
  ],
  ...['kettle ', 'ketle', 'k-e-t', '1', '1.', '230V ', '-', '\\', '*', 'x'.repeat(63)],
] as const

describe('a search', () => {
  it.each(PIECES)('for nothing but %j, without end, ends', (piece) => {
    const query = piece.repeat(LONG / piece.length)
    expect(search(items, query).length).toBeLessThanOrEqual(40)
    expect(wordsOf(query).join('').length).toBeLessThanOrEqual(query.normalize('NFD').length)
  })

  it('for anything at all finds entries of the list, each once', () => {
    const known = fc.constantFrom(...items.flatMap(({ name, synonyms }) => [name, ...synonyms]))
    fc.assert(
      fc.property(
        fc.oneof(
          hostileText,
          fc.tuple(known, hostileText).map((both) => both.join('')),
        ),
        (query) => {
          const found = search(items, query)
          expect(new Set(found).size).toBe(found.length)
          for (const item of found) expect(items).toContain(item)
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('finds what it is for among marks that nobody sees', () => {
    expect(search(items, 'ke\u0301ttle')[0]?.id).toBe('electric-kettle')
    expect(search(items, '\u202eKETTLE\u202c')[0]?.id).toBe('electric-kettle')
  })
})

describe('a rating plate', () => {
  it('of anything at all is read or not, and never breaks the reader', () => {
    const plates = fc.array(
      fc.oneof(
        hostileText,
        fc.constantFrom('230V~', '50Hz', '1200 W', '5,5 A', 'cos φ', 'INPUT:', '½ hp', 'Ⅻ', '１２Ｖ'),
      ),
      { maxLength: 6 },
    )
    fc.assert(
      fc.property(plates, (pieces) => {
        const reading = readLabel(pieces.join(' ').slice(0, 2000), MAINS)
        expect(typeof reading.ok).toBe('boolean')
        expect(JSON.stringify(reading)).not.toMatch(/NaN|Infinity|:null/)
      }),
      { numRuns: 1500 },
    )
  })
})
