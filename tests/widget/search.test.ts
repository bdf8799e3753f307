import { describe, expect, it } from 'vitest'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { search, wordsOf } from '../../widget/search.ts'

const best = (query: string) => search(BUILT_IN_APPLIANCES, query)[0]?.id
const all = (query: string) => search(BUILT_IN_APPLIANCES, query).map(({ id }) => id)

describe('search', () => {
  it.each([
    ['kettle', 'electric-kettle'],
    ['jug', 'electric-kettle'],
    ['hair drier', 'hair-dryer'],
    ['hairdryer', 'hair-dryer'],
    ['cpap', 'cpap'],
    ['microwaves', 'microwave-oven'],
    ['mircowave', 'microwave-oven'],
    ['micorwave', 'microwave-oven'],
    ['lap top', 'laptop'],
    ['tv', 'television'],
    ['TELLY', 'television'],
    ['crêpe', 'crepe-maker'],
    ['drill', 'electric-drill'],
    ['fridges', 'fridge'],
    ['air frier', 'air-fryer'],
    ['vacum cleaner', 'vacuum-cleaner'],
  ])('finds %s', (query, id) => {
    expect(best(query)).toBe(id)
  })

  it('finds from the first letters on', () => {
    expect(all('toa')).toContain('toaster')
    expect(all('phon')).toContain('phone-charger')
  })

  it('finds words in any order', () => {
    expect(best('charger phone')).toBe('phone-charger')
  })

  it.each(['', '   ', '???', 'xylophone quartet'])('finds nothing for %j', (query) => {
    expect(all(query)).toEqual([])
  })

  it('gives at most forty', () => {
    expect(all('e')).toHaveLength(40)
  })
})

describe('wordsOf', () => {
  it('drops case, accents, punctuation and plural endings', () => {
    expect(wordsOf('Crêpes, Batteries & Dishes!')).toEqual(['crepe', 'battery', 'dish'])
  })
})
