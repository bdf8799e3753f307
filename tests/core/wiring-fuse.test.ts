import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BATTERY_CHEMISTRIES, FUSE_STYLES } from '../../core/range/vocabulary.ts'
import { connectionLimitW, lowestWorkingV, worstCaseCurrentA } from '../../core/wiring/battery-current.ts'
import { requiredBreakingCapacityA } from '../../core/wiring/breaking-capacity.ts'
import { fuseWindow, nextFuse, standardFuseRatingsA } from '../../core/wiring/fuse.ts'
import { fuseSuits } from '../../core/wiring/fuse-suits.ts'

const smallBank = { chemistry: 'agm', bankCapacityAh: 60, nominalV: 12 } as const

describe('fuseWindow', () => {
  it('takes the next standard rating at or above 1.25 x the current', () => {
    const window = fuseWindow({ ...smallBank, currentA: 100, conductorAmpacityA: 170 })
    expect(window).toEqual({
      ok: true,
      ratingA: 125,
      largestA: 150,
      style: 'bolted-strip',
      minA: 125,
      maxA: 170,
      requiredVoltageV: expect.closeTo(14.4, 6),
      requiredBreakingCapacityA: 1500,
    })
  })

  it.each([
    ['conductor-too-thin', { currentA: 100, conductorAmpacityA: 124.9 }],
    ['no-standard-rating-in-window', { currentA: 101, conductorAmpacityA: 149, style: 'bolted-strip' }],
    [
      'voltage-rating-too-low',
      { currentA: 50, conductorAmpacityA: 200, nominalV: 48, style: 'bolted-strip' },
    ],
    ['voltage-rating-too-low', { currentA: 50, conductorAmpacityA: 200, nominalV: 36, style: 'blade' }],
    ['breaking-capacity-too-low', { currentA: 20, conductorAmpacityA: 200, style: 'blade' }],
    [
      'breaking-capacity-too-low',
      { currentA: 50, conductorAmpacityA: 200, bankCapacityAh: 66, style: 'bolted-strip' },
    ],
    [
      'breaking-capacity-too-low',
      { currentA: 50, conductorAmpacityA: 99, chemistry: 'nmc', style: 'terminal-post' },
    ],
    ['above-every-standard-rating', { currentA: 1000, conductorAmpacityA: 9999 }],
    ['above-every-standard-rating', { currentA: 401, conductorAmpacityA: 9999, style: 'bolted-strip' }],
  ] as const)('says %s for %j', (reason, change) => {
    expect(fuseWindow({ ...smallBank, ...change })).toMatchObject({ ok: false, reason })
  })

  it.each([
    ['bolted-strip', {}],
    ['bolted-strip', { nominalV: 24 }],
    ['class-t', { nominalV: 48 }],
    ['class-t', { bankCapacityAh: 66 }],
    ['class-t', { bankCapacityAh: undefined }],
    ['class-t', { chemistry: 'lifepo4' }],
    ['class-t', { chemistry: undefined }],
  ] as const)('takes the plainest style that suits: %s with %j', (style, change) => {
    expect(fuseWindow({ ...smallBank, ...change, currentA: 50, conductorAmpacityA: 200 })).toMatchObject({
      style,
    })
  })

  it('is within 1.25 x the current and the ampacity, or names a reason', () => {
    const current = fc.double({ min: 0, max: 2000, noNaN: true })
    const ampacity = fc.double({ min: 0, max: 3000, noNaN: true })
    const style = fc.constantFrom(undefined, ...FUSE_STYLES)
    const chemistry = fc.constantFrom(undefined, ...BATTERY_CHEMISTRIES)
    const nominalV = fc.constantFrom(12, 24, 36, 48)
    const bankCapacityAh = fc.option(fc.integer({ min: 1, max: 1000 }), { nil: undefined })
    const question = fc.record({
      currentA: current,
      conductorAmpacityA: ampacity,
      style,
      chemistry,
      nominalV,
      bankCapacityAh,
    })
    fc.assert(
      fc.property(question, (asked) => {
        const window = fuseWindow(asked)
        if (!window.ok) {
          expect(window.reason).not.toBe('')
          return
        }
        expect(window.ratingA).toBeGreaterThanOrEqual(1.25 * asked.currentA)
        expect(window.largestA).toBeGreaterThanOrEqual(window.ratingA)
        expect(window.largestA).toBeLessThanOrEqual(asked.conductorAmpacityA)
        expect(standardFuseRatingsA(window.style)).toContain(window.ratingA)
        expect(fuseSuits(window, window)).toEqual([])
        expect(fuseSuits({ ...window, ratingA: window.largestA }, window)).toEqual([])
      }),
    )
  })

  it('refuses a current that is none', () => {
    const asked = { ...smallBank, currentA: Number.NaN, conductorAmpacityA: 100 }
    expect(() => fuseWindow(asked)).toThrow(expect.objectContaining({ field: 'currentA' }))
  })
})

describe('nextFuse', () => {
  it('never falls as the current rises', () => {
    for (const bank of [smallBank, { ...smallBank, nominalV: 48 }, { nominalV: 12 }]) {
      let lastA = 0
      for (let currentA = 1; currentA <= 960; currentA += 1) {
        const ratingA = nextFuse({ ...bank, currentA })?.ratingA ?? Number.NaN
        expect(ratingA).toBeGreaterThanOrEqual(lastA)
        lastA = ratingA
      }
    }
  })

  it('knows none above 1200 A', () => {
    expect(nextFuse({ nominalV: 12, currentA: 960 })?.ratingA).toBe(1200)
    expect(nextFuse({ nominalV: 12, currentA: 961 })).toBeUndefined()
  })
})

describe('fuseSuits', () => {
  const demand = { minA: 125, maxA: 170, requiredVoltageV: 57.6, requiredBreakingCapacityA: 5000 }

  it('lists every fault of a fuse, and which figures are the style’s', () => {
    expect(fuseSuits({ ratingA: 200, style: 'bolted-strip' }, demand)).toEqual([
      { fault: 'rating-above-conductor', ratingA: 200, maxA: 170 },
      { fault: 'voltage-rating-too-low', voltageV: 32, requiredVoltageV: 57.6, assumed: true },
      {
        fault: 'breaking-capacity-too-low',
        breakingCapacityA: 2000,
        requiredBreakingCapacityA: 5000,
        assumed: true,
      },
    ])
    const stated = { ratingA: 100, style: 'class-t', voltageV: 48, breakingCapacityA: 4000 } as const
    expect(
      fuseSuits(stated, demand).map((fault) => [fault.fault, 'assumed' in fault && fault.assumed]),
    ).toEqual([
      ['rating-below-current', false],
      ['voltage-rating-too-low', false],
      ['breaking-capacity-too-low', false],
    ])
  })

  it('lets the shop’s figures go before the style’s', () => {
    const stated = { ratingA: 150, style: 'bolted-strip', voltageV: 80, breakingCapacityA: 6000 } as const
    expect(fuseSuits(stated, demand)).toEqual([])
  })

  it.each([
    [125, 0],
    [124.9, 1],
    [170, 0],
    [170.1, 1],
  ])('at the bounds of the window: %d A has %i faults', (ratingA, count) => {
    expect(fuseSuits({ ratingA, style: 'class-t' }, demand)).toHaveLength(count)
  })
})

describe('requiredBreakingCapacityA', () => {
  // 10 cranking amperes an ampere-hour, and 20 kA on lithium: common practice, no published source.
  it.each([
    [1500, { chemistry: 'flooded', bankCapacityAh: 65, nominalV: 12 }],
    [3000, { chemistry: 'flooded', bankCapacityAh: 66, nominalV: 12 }],
    [3000, { chemistry: 'gel', bankCapacityAh: 110, nominalV: 24 }],
    [5000, { chemistry: 'agm', bankCapacityAh: 111, nominalV: 24 }],
    [5000, { chemistry: 'agm', nominalV: 12 }],
    [5000, { chemistry: 'agm', bankCapacityAh: 20, nominalV: 36 }],
    [20_000, { chemistry: 'lifepo4', bankCapacityAh: 20, nominalV: 12 }],
    [20_000, { chemistry: 'nmc', bankCapacityAh: 20, nominalV: 48 }],
    [20_000, { nominalV: 12 }],
  ] as const)('asks %i A of the first fuse after %j, half of it behind', (breakingA, bank) => {
    expect(requiredBreakingCapacityA(bank)).toBe(breakingA)
    expect(requiredBreakingCapacityA(bank, 'branch')).toBe(breakingA / 2)
  })
})

describe('lowestWorkingV', () => {
  it('is the cut-off where stated, else 10.5 V for each 12 V', () => {
    expect(lowestWorkingV({ nominalV: 24, cutOffV: 22 })).toBe(22)
    expect([12, 24, 36, 48].map((nominalV) => lowestWorkingV({ nominalV }))).toEqual([10.5, 21, 31.5, 42])
  })

  it.each([5.9, 14.5, Number.NaN])('refuses a cut-off of %d V at 12 V', (cutOffV) => {
    expect(() => lowestWorkingV({ nominalV: 12, cutOffV })).toThrow(
      expect.objectContaining({ field: 'cutOffV' }),
    )
  })
})

describe('connectionLimitW', () => {
  it('is the power whose current is the limit', () => {
    const side = { lowestV: 10.5, efficiencyFullFraction: 0.85 }
    const continuousW = connectionLimitW({ ...side, limitA: 10 })
    expect(continuousW).toBeCloseTo(89.25, 9)
    expect(worstCaseCurrentA({ ...side, continuousW })).toBeCloseTo(10, 9)
  })
})
