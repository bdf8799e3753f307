import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CoreError } from '../../core/errors.ts'
import { demandOf, requiredContinuousW } from '../../core/loads/demand.ts'
import type { Load } from '../../core/loads/load.ts'
import { makeLoad } from '../support/make.ts'

const loadArbitrary = fc
  .record({
    quantity: fc.integer({ min: 1, max: 3 }),
    runningW: fc.integer({ min: 1, max: 2000 }),
    extraStartW: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 4000 })),
    startKind: fc.constantFrom('none', 'motor', 'compressor', 'electronic-inrush'),
  })
  .map(({ quantity, runningW, extraStartW, startKind }) => ({
    quantity,
    runningW,
    startKind,
    runningVA: Math.round(runningW * 1.2),
    startingW: runningW + extraStartW,
    startingS: extraStartW > 0 ? 1 : 0,
  }))

const planArbitrary = fc
  .array(fc.tuple(loadArbitrary, fc.integer({ min: -1, max: 1 })), { minLength: 1, maxLength: 6 })
  .map((drawn) => {
    const loads = drawn.map(([load], index) => makeLoad({ id: `l${index}`, ...load } as Load))
    const groups = [0, 1]
      .map((group) => loads.filter((_, index) => drawn[index]?.[1] === group).map((load) => load.id))
      .filter((group) => group.length > 0)
    return { loads, groups }
  })

/** Tries every allowed set of running loads and, in each, every single item starting. */
function bruteForce(loads: readonly Load[], groups: readonly (readonly string[])[]) {
  let runningW = 0
  let startingW = 0
  for (let mask = 0; mask < 1 << loads.length; mask += 1) {
    const running = loads.filter((_, index) => mask & (1 << index))
    const allowed = groups.every((group) => running.filter((load) => group.includes(load.id)).length <= 1)
    if (!allowed) continue
    const totalW = running.reduce((sum, load) => sum + load.quantity * load.runningW, 0)
    runningW = Math.max(runningW, totalW)
    startingW = Math.max(startingW, totalW)
    for (const load of running) {
      startingW = Math.max(startingW, totalW - load.runningW + load.startingW)
    }
  }
  return { runningW, startingW }
}

describe('demandOf', () => {
  it('adds everything that may run together', () => {
    const demand = demandOf([makeLoad({ id: 'a', runningW: 90 }), makeLoad({ id: 'b', runningW: 100 })])
    expect(demand.runningW).toBe(190)
    expect(demand.startingW).toBe(190)
    expect(demand.startingS).toBe(0)
  })

  it('counts the largest of loads that take turns', () => {
    const loads = [
      makeLoad({ id: 'kettle', runningW: 2000 }),
      makeLoad({ id: 'toaster', runningW: 900 }),
      makeLoad({ id: 'lamp', runningW: 10 }),
    ]
    expect(demandOf(loads, [['kettle', 'toaster']]).runningW).toBe(2010)
  })

  it('starts one item of a quantity while the others run', () => {
    const demand = demandOf([
      makeLoad({ id: 'fan', quantity: 3, runningW: 50, startingW: 150, startingS: 1 }),
    ])
    expect(demand.startingW).toBe(250)
    expect(demand.startingS).toBe(1)
  })

  it('names compressors that restart together after a cut, with the power that takes', () => {
    const compressor = { runningW: 100, startingW: 700, startingS: 1, startKind: 'compressor' } as const
    const demand = demandOf([
      makeLoad({ id: 'fridge', ...compressor }),
      makeLoad({ id: 'freezer', ...compressor }),
    ])
    expect(demand.startingW).toBe(800)
    expect(demand.notes).toContainEqual({
      code: 'restart-together',
      severity: 'note',
      loadIds: ['fridge', 'freezer'],
      values: { startingW: 1400, count: 2 },
    })
  })

  it('takes the strictest wave form of all loads', () => {
    const loads = [makeLoad({ id: 'a' }), makeLoad({ id: 'b', waveform: 'pure-sine-required' })]
    expect(demandOf(loads).waveform).toBe('pure-sine-required')
  })

  it.each([
    { groups: [['a', 'nobody']], why: 'an unknown load in a group' },
    {
      groups: [
        ['a', 'b'],
        ['b', 'c'],
      ],
      why: 'a load in two groups',
    },
  ])('refuses $why', ({ groups }) => {
    const loads = ['a', 'b', 'c'].map((id) => makeLoad({ id }))
    expect(() => demandOf(loads, groups)).toThrow(CoreError)
  })

  it('equals brute force over every allowed moment', () => {
    fc.assert(
      fc.property(planArbitrary, ({ loads, groups }) => {
        const demand = demandOf(loads, groups)
        const expected = bruteForce(loads, groups)
        expect(demand.runningW).toBe(expected.runningW)
        expect(demand.startingW).toBe(expected.startingW)
      }),
      { numRuns: 300 },
    )
  })

  it('never rises when loads are put into a take-turns group', () => {
    fc.assert(
      fc.property(planArbitrary, ({ loads, groups }) => {
        const free = demandOf(loads)
        const turned = demandOf(loads, groups)
        expect(turned.runningW).toBeLessThanOrEqual(free.runningW)
        expect(turned.runningVA).toBeLessThanOrEqual(free.runningVA)
        expect(turned.startingW).toBeLessThanOrEqual(free.startingW)
        expect(turned.energyWhPerDay).toBe(free.energyWhPerDay)
      }),
    )
  })

  it('does not depend on the order of the loads', () => {
    fc.assert(
      fc.property(planArbitrary, ({ loads, groups }) => {
        const { loads: _, startMoments: __, notes: ___, ...forward } = demandOf(loads, groups)
        const {
          loads: ____,
          startMoments: _____,
          notes: ______,
          ...backward
        } = demandOf([...loads].reverse(), groups)
        expect(backward).toEqual(forward)
      }),
    )
  })
})

describe('requiredContinuousW', () => {
  it('keeps a fifth free by the usual headroom', () => {
    expect(requiredContinuousW(800, 0.2)).toBe(1000)
  })
})
