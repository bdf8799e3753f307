import { describe, expect, it } from 'vitest'
import type { WhatIfAnswer } from '../../shared/contract/answers.ts'
import { EMPTY_PLAN, type PlanState } from '../../widget/plan-state.ts'
import { planWith } from '../../widget/what-if-plan.ts'

const plan: PlanState = {
  ...EMPTY_PLAN,
  loads: [
    { id: 'load-1', appliance: 'microwave-oven', quantity: 1 },
    { id: 'load-2', appliance: 'laptop', quantity: 1 },
  ],
}

const changed = (change: WhatIfAnswer['change'], from = plan) => planWith(from, { change })

describe('planWith', () => {
  it('lets loads take turns', () => {
    expect(changed({ takeTurns: [['load-1', 'load-2']] })?.takeTurns).toEqual([['load-1', 'load-2']])
  })

  it('leaves a load out, but never the last', () => {
    const left = changed({ without: 'load-1' })
    expect(left?.loads.map(({ id }) => id)).toEqual(['load-2'])
    expect(changed({ without: 'load-2' }, left)).toBeUndefined()
  })

  it('gives a load another rating', () => {
    expect(changed({ rating: { loadId: 'load-1', watts: 900 } })?.loads[0]?.rating).toEqual({
      basis: 'input-watts',
      watts: 900,
    })
  })

  it('puts another supply in and keeps what it does not speak of', () => {
    const known = { ...plan, supply: { ...EMPTY_PLAN.supply, oneWayLengthM: 2 } }
    const supply = { nominalV: 24, connection: { kind: 'battery-terminals' } } as const
    expect(changed({ supply }, known)?.supply).toEqual({
      ...known.supply,
      nominalV: 24,
      connection: 'battery-terminals',
    })
  })

  it('lets a load start more softly', () => {
    const start = { loadId: 'load-1', startingW: 1700, durationS: 1 }
    expect(changed({ start })?.loads[0]?.start).toEqual({ startingW: 1700, durationS: 1 })
  })

  it('is undefined for a change that the answers can’t hold', () => {
    expect(changed({ sku: 'KC-1' })).toBeUndefined()
    expect(
      changed({
        split: [
          { loadIds: ['load-1'], sku: 'KC-1' },
          { loadIds: ['load-2'], sku: 'KC-2' },
        ],
      }),
    ).toBeUndefined()
    expect(changed({})).toBeUndefined()
  })
})
