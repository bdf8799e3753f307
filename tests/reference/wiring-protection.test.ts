import { describe, expect, it } from 'vitest'
import { breakingCapacityOfCrankingA, requiredFuseVoltageV } from '../../core/wiring/breaking-capacity.ts'
import { fuseWindow, standardFuseRatingsA } from '../../core/wiring/fuse.ts'
import { fuseSuits } from '../../core/wiring/fuse-suits.ts'
import { checkTopic } from './values/check-topic.ts'
import { FUSES, NEC_240_6_A } from './values/fuses.ts'

checkTopic(FUSES)

const demand = { minA: 0, maxA: 10_000, requiredVoltageV: 0, requiredBreakingCapacityA: 0 }

/** Whether a fuse that states nothing but its style is taken to break that current at that voltage. */
function serves(
  style: Parameters<typeof standardFuseRatingsA>[0],
  voltageV: number,
  breakingA: number,
): boolean {
  const asked = { ...demand, requiredVoltageV: voltageV, requiredBreakingCapacityA: breakingA }
  return fuseSuits({ ratingA: 100, style }, asked).length === 0
}

describe('standardFuseRatingsA', () => {
  // NFPA 70 NEC 240.6(A), standard ampere ratings up to the largest class T fuse, and the fuse-only sizes 1, 3, 6
  // and 10 A; trade journal and code pages, read. 601 A is left out: it only tells two body sizes apart.
  it('of class T are the NEC 240.6(A) series', () => {
    expect(standardFuseRatingsA('class-t')).toEqual(NEC_240_6_A)
  })

  // ISO 8820-3 types F, C and E; ISO 8820-5 SF 30 and SF 51; ISO 8820-6. Rated currents from memory.
  it.each([
    ['blade', [2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30]],
    ['blade', [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40]],
    ['blade', [20, 30, 40, 50, 60, 70, 80, 100]],
    ['bolted-strip', [30, 40, 50, 60, 70, 80, 100, 125, 150, 200]],
    ['bolted-strip', [80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500]],
    ['terminal-post', [30, 40, 50, 60, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300]],
  ] as const)('of the %s hold the ISO 8820 series %j', (style, series) => {
    expect(standardFuseRatingsA(style)).toEqual(expect.arrayContaining([...series]))
  })

  // Scopes of ISO 8820-3:2015 (up to 100 A), -5:2015 (30 to 500 A), -6:2019 (up to 300 A). Catalogue entries, read.
  it.each([
    ['blade', 1, 100],
    ['bolted-strip', 30, 500],
    ['terminal-post', 30, 300],
  ] as const)('of the %s end where the scope of its standard ends', (style, smallestA, largestA) => {
    const ratings = standardFuseRatingsA(style)
    expect([ratings[0], ratings.at(-1)]).toEqual([smallestA, largestA])
    expect(ratings).toEqual([...ratings].sort((a, b) => a - b))
  })
})

describe('fuseSuits, figures of the style', () => {
  // ISO 8820-5:2015 is for 12 and 24 V vehicles, ISO 8820-6:2019 for 12, 24 and 48 V ones. Read.
  it.each([
    [12, true, true],
    [24, true, true],
    [48, false, true],
  ])('at %i V a 32 V strip serves: %s; a 58 V single bolt: %s', (nominalV, strip, post) => {
    expect(serves('bolted-strip', requiredFuseVoltageV(nominalV), 0)).toBe(strip)
    expect(serves('terminal-post', requiredFuseVoltageV(nominalV), 0)).toBe(post)
  })
})

describe('breakingCapacityOfCrankingA', () => {
  it('never lets a 1000 A blade stand as the main fuse', () => {
    for (const crankingA of [1, 650, 1100, 5000]) {
      expect(serves('blade', 12, breakingCapacityOfCrankingA(crankingA, 'main'))).toBe(false)
    }
  })
})

// 33 CFR 183.425 Table 5: 2/0 AWG of 105 C carries 330 A, 280 A in an engine space (read). 33 CFR 183.455(c)(1): a
// fuse is at most 150 % of that (read). NEC 125 % of a continuous current (read).
describe('fuseWindow at 2/0 AWG of 105 C', () => {
  const bank = { nominalV: 12, chemistry: 'agm', bankCapacityAh: 100, style: 'class-t' } as const

  it.each([
    { ampacityA: 330, largestA: 300 },
    { ampacityA: 280, largestA: 250 },
    { ampacityA: 495, largestA: 450 },
  ])('holds at $ampacityA A no standard fuse above $largestA A', ({ ampacityA, largestA }) => {
    const window = fuseWindow({ ...bank, currentA: 150, conductorAmpacityA: ampacityA })
    expect(window).toMatchObject({ ok: true, minA: 187.5, ratingA: 200, largestA })
  })

  it('ends at 264 A of steady current outside and at 224 A in an engine space', () => {
    for (const [ampacityA, lastA] of [
      [330, 264],
      [280, 224],
    ] as const) {
      const reasonAt = (currentA: number) => {
        const window = fuseWindow({ ...bank, currentA, conductorAmpacityA: ampacityA })
        return window.ok ? undefined : window.reason
      }
      expect(reasonAt(lastA)).toBe('no-standard-rating-in-window')
      expect(reasonAt(lastA + 1)).toBe('conductor-too-thin')
    }
  })

  it('never goes to the 150 percent of ampacity that 33 CFR 183.455(c)(1) allows', () => {
    for (let currentA = 10; currentA <= 264; currentA += 1) {
      const window = fuseWindow({ ...bank, currentA, conductorAmpacityA: 330 })
      if (window.ok) expect(window.largestA).toBeLessThanOrEqual(495 / 1.5)
    }
  })
})
