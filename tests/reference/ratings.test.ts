import { describe, expect, it } from 'vitest'
import { checkTopic } from './values/check-topic.ts'
import { inputOf, PUBLISHED_COOKING_PAIRS, plateW, RATINGS, ROOM_UNITS } from './values/ratings.ts'

checkTopic(RATINGS)

describe('cooking power against published pairs', () => {
  it.each(PUBLISHED_COOKING_PAIRS)(
    'sizes for at least $inputW W, and not for half as much again ($document)',
    ({ cookingW, inputW }) => {
      const power = inputOf({ basis: 'cooking-watts', watts: cookingW }, 230)
      expect(power.inputW).toBeGreaterThanOrEqual(inputW)
      expect(power.inputW).toBeLessThanOrEqual(inputW * 1.5)
    },
  )

  it.each([
    { source: 'common practice, no published source', cookingW: 650, inputW: 1100 },
    { source: 'common practice, no published source', cookingW: 700, inputW: 1150 },
    { source: 'common practice, no published source; measured', cookingW: 600, inputW: 1200 },
    { source: 'GB 24849-2017 table 1, grade 1, from memory: 60 %', cookingW: 700, inputW: 700 / 0.6 },
    { source: 'GB 24849-2017 table 1, grade 2, from memory: 56 %', cookingW: 700, inputW: 700 / 0.56 },
    { source: 'GB 24849-2017 table 1, grade 3, from memory: 52 %', cookingW: 700, inputW: 700 / 0.52 },
  ])('sizes $cookingW W of cooking power for at least $inputW W ($source)', ({ cookingW, inputW }) => {
    expect(inputOf({ basis: 'cooking-watts', watts: cookingW }, 230).inputW).toBeGreaterThanOrEqual(inputW)
  })
})

describe('cooling capacity of unknown efficiency', () => {
  it.each(ROOM_UNITS)(
    'sizes $btuPerHour Btu/h for no less than the $w1990 W of the limit of 1990 (42 USC 6295)',
    (unit) => {
      const { inputW } = inputOf({ basis: 'cooling-capacity', btuPerHour: unit.btuPerHour }, 120)
      expect(Math.round(inputW)).toBeGreaterThanOrEqual(unit.w1990)
      expect(plateW(`${unit.btuPerHour} BTU/h`, 120)).toBeCloseTo(inputW, 9)
    },
  )
})

describe('units on plates against NIST SP 811 (2008), appendix B.8, from memory', () => {
  it('1 Btu/h of cooling is 0.2930711 W', () => {
    expect(plateW('Cooling capacity 2930.711 W', 230)).toBeCloseTo(plateW('10 000 BTU/h', 230), 4)
  })

  it('1 hp is 745.6999 W, 1 metric horsepower 735.4988 W at the shaft', () => {
    expect(plateW('1 HP', 230)).toBeCloseTo(plateW('P2 745.6999 W', 230), 4)
    expect(plateW('1 CV', 230)).toBeCloseTo(plateW('P2 735.4988 W', 230), 4)
  })
})
