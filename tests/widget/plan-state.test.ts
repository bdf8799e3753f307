import { describe, expect, it } from 'vitest'
import { LIMITS } from '../../widget/limits.ts'
import { EMPTY_PLAN, type PlanAction, type PlanState, planAfter } from '../../widget/plan-state.ts'

function planOf(...actions: readonly PlanAction[]): PlanState {
  return actions.reduce(planAfter, EMPTY_PLAN)
}

const add = (appliance: string): PlanAction => ({ do: 'add', appliance })

describe('planAfter', () => {
  it('counts the same thing up instead of listing it twice', () => {
    const plan = planOf(add('laptop'), add('kettle'), add('laptop'))
    expect(plan.loads.map(({ appliance, quantity }) => [appliance, quantity])).toEqual([
      ['laptop', 2],
      ['kettle', 1],
    ])
  })

  it('lists a thing anew where the first has a power of its own', () => {
    const rated: PlanAction = { do: 'set-rating', id: 'load-1', rating: { basis: 'input-watts', watts: 90 } }
    expect(planOf(add('laptop'), rated, add('laptop')).loads).toHaveLength(2)
  })

  it('gives every load an id of its own, also after one was taken away', () => {
    const plan = planOf(add('a'), add('b'), { do: 'remove', ids: ['load-1'] }, add('c'), add('d'))
    expect(new Set(plan.loads.map(({ id }) => id)).size).toBe(3)
  })

  it('takes a thing away at quantity 0 and holds the quantity at its limit', () => {
    expect(planOf(add('a'), { do: 'set-quantity', id: 'load-1', quantity: 0 }).loads).toEqual([])
    const many = planOf(add('a'), { do: 'set-quantity', id: 'load-1', quantity: 5000 })
    expect(many.loads[0]?.quantity).toBe(LIMITS.quantity)
  })

  it('stops at forty different things', () => {
    const plan = planOf(...Array.from({ length: 45 }, (_, index) => add(`thing-${index}`)))
    expect(plan.loads).toHaveLength(LIMITS.loads)
  })

  it('keeps a load in one group at most', () => {
    const plan = planOf(
      add('a'),
      add('b'),
      add('c'),
      { do: 'take-turns', ids: ['load-1', 'load-2'] },
      { do: 'take-turns', ids: ['load-2', 'load-3'] },
    )
    expect(plan.takeTurns).toEqual([['load-2', 'load-3']])
  })

  it('lets a group go that has one load left', () => {
    const plan = planOf(
      add('a'),
      add('b'),
      { do: 'take-turns', ids: ['load-1', 'load-2'] },
      { do: 'remove', ids: ['load-2'] },
    )
    expect(plan.takeTurns).toEqual([])
  })

  it('lets loads run together again', () => {
    const plan = planOf(
      add('a'),
      add('b'),
      { do: 'take-turns', ids: ['load-1', 'load-2'] },
      { do: 'run-together', group: 0 },
    )
    expect(plan.takeTurns).toEqual([])
  })

  it('refuses a group of one and ids that it does not know', () => {
    const before = planOf(add('a'))
    expect(planAfter(before, { do: 'take-turns', ids: ['load-1', 'load-9'] })).toBe(before)
  })

  it('changes one answer on the supply and leaves the others', () => {
    const plan = planOf(
      { do: 'supply', change: { nominalV: 24 } },
      { do: 'supply', change: { battery: 'need' } },
    )
    expect(plan.supply).toEqual({ ...EMPTY_PLAN.supply, nominalV: 24, battery: 'need' })
  })

  it('lets the smallest unit count again once anything else changes than the unit tried out', () => {
    const tried: PlanState = { ...planOf(add('laptop')), sku: 'KC-1' }
    expect(planAfter(tried, add('kettle')).sku).toBeUndefined()
    expect(planAfter(tried, { do: 'supply', change: { nominalV: 24 } }).sku).toBeUndefined()
    // Nothing taken, nothing changed.
    expect(planAfter(tried, { do: 'take-turns', ids: ['load-1'] })).toBe(tried)
  })

  it('never changes the plan that it was given', () => {
    const before = Object.freeze(planOf(add('a')))
    planAfter(before, { do: 'set-quantity', id: 'load-1', quantity: 3 })
    expect(before.loads[0]?.quantity).toBe(1)
  })
})
