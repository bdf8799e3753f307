import { describe, expect, it } from 'vitest'
import { ambientFactor, bundlingFactor } from '../../core/wiring/ampacity.ts'
import { AMPACITY, carriedA } from './values/ampacity.ts'
import { checkTopic } from './values/check-topic.ts'

checkTopic(AMPACITY)

describe('ampacityA', () => {
  // 33 CFR 183.425 Table 5: 2/0 AWG of 105 C, outside and inside an engine space. Read.
  it('2/0 AWG of 105 C carries 330 A outside and 280 A inside an engine space', () => {
    expect(carriedA({ awg: '2/0' }, 105)).toBe(330)
    expect(Math.floor(carriedA({ awg: '2/0' }, 105, { inEngineSpace: true }))).toBe(280)
  })

  it('is multiplied by the factor of the bundle', () => {
    for (const count of [2, 3, 4, 6, 7, 24, 25, 100]) {
      const bundled = carriedA({ awg: '4' }, 90, { bundledCount: count })
      expect(bundled).toBeCloseTo(135 * bundlingFactor(count), 9)
    }
  })
})

describe('ambientFactor', () => {
  // NFPA 70 NEC (2020, 2023) Table 310.15(B)(1): in air this hot the insulation is not allowed. Memory.
  it.each([
    [60, 60],
    [60, 65],
    [75, 75],
    [75, 80],
    [75, 85],
  ])('leaves less than 0.3 where %i C insulation is not allowed, in air of %i C', (insulationC, ambientC) => {
    expect(ambientFactor({ insulationC, ambientC })).toBeLessThan(0.3)
  })
})

describe('bundlingFactor', () => {
  // NFPA 70 NEC 310.15(B)(3)(a) (2014): share of the table value from that many conductors up. Read. From 21 up
  // (0.45, then 0.4 and 0.35) the code for buildings is the stricter one; no battery cable lies among so many.
  it.each([
    [4, 0.8],
    [7, 0.7],
    [10, 0.5],
  ])('from %i conductors allows no more than the NEC, %d', (fromCount, fraction) => {
    expect(bundlingFactor(fromCount)).toBeLessThanOrEqual(fraction)
  })
})
