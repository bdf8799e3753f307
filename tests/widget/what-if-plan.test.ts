import { describe, expect, it } from 'vitest'
import type { WhatIfAnswer } from '../../shared/contract/answers.ts'
import { EMPTY_PLAN, type PlanState } from '../../widget/plan-state.ts'
import { plansWith } from '../../widget/what-if-plan.ts'

const plan: PlanState = {
  ...EMPTY_PLAN,
  loads: [
    { id: 'load-1', appliance: 'microwave-oven', quantity: 1 },
    { id: 'load-2', appliance: 'laptop', quantity: 1 },
  ],
}

const changed = (change: WhatIfAnswer['change'], from = plan) => plansWith(from, { change })[0]

describe('plansWith', () => {
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

  it('asks for another unit, of the same plan', () => {
    expect(changed({ sku: 'KC-1' })).toEqual({ ...plan, sku: 'KC-1' })
  })

  it('gives up the unit tried out for any other change', () => {
    const tried: PlanState = { ...plan, sku: 'KC-1' }
    expect(changed({ takeTurns: [['load-1', 'load-2']] }, tried)?.sku).toBeUndefined()
    expect(changed({ without: 'load-1' }, tried)?.sku).toBeUndefined()
    expect(changed({ sku: 'KC-2' }, tried)?.sku).toBe('KC-2')
  })

  it('makes a plan for each unit of a split, with its loads and their groups', () => {
    const three: PlanState = {
      ...plan,
      loads: [...plan.loads, { id: 'load-3', appliance: 'electric-kettle', quantity: 1 }],
      takeTurns: [['load-1', 'load-3']],
    }
    const split = [
      { loadIds: ['load-1', 'load-3'], sku: 'KC-1' },
      { loadIds: ['load-2'], sku: 'KC-2' },
    ]
    const made = plansWith(three, { change: { split } })
    expect(made.map(({ loads }) => loads.map(({ id }) => id))).toEqual([['load-1', 'load-3'], ['load-2']])
    expect(made.map(({ takeTurns }) => takeTurns)).toEqual([[['load-1', 'load-3']], []])
    for (const { supply } of made) expect(supply).toBe(three.supply)
  })

  it('makes none of a change that the answers can’t hold', () => {
    expect(plansWith(plan, { change: {} })).toEqual([])
  })
})
