import type { Rating } from '../core/loads/rating.ts'
import { LIMITS } from './limits.ts'
import {
  type PlanLoad,
  type PlanState,
  type SupplyAnswers,
  withAppliance,
  withChange,
  withLoad,
} from './plan.ts'

export { EMPTY_PLAN, type PlanLoad, type PlanState, type SupplyAnswers } from './plan.ts'

/** Something that the shopper did. */
export type PlanAction =
  | { readonly do: 'add'; readonly appliance: string }
  | { readonly do: 'add-own'; readonly name: string; readonly rating: Rating }
  | { readonly do: 'set-quantity'; readonly id: string; readonly quantity: number }
  | { readonly do: 'set-rating'; readonly id: string; readonly rating: Rating | undefined }
  | { readonly do: 'set-start'; readonly id: string; readonly start: PlanLoad['start'] }
  | { readonly do: 'set-minutes'; readonly id: string; readonly minutesPerDay: number | undefined }
  | { readonly do: 'remove'; readonly ids: readonly string[] }
  | { readonly do: 'take-turns'; readonly ids: readonly string[] }
  | { readonly do: 'run-together'; readonly group: number }
  | { readonly do: 'supply'; readonly change: Partial<SupplyAnswers> }

/**
 * The plan after one action. Never throws: an action that makes no sense leaves the plan as it is. A unit that was
 * tried out was tried for the plan before, so the smallest counts again.
 *
 * @param plan - The plan before
 * @param action - What the shopper did
 * @returns The plan after; the same object where nothing changed
 */
export function planAfter(plan: PlanState, action: PlanAction): PlanState {
  const after = acted(plan, action)
  return after === plan || after.sku === undefined ? after : { ...after, sku: undefined }
}

function acted(plan: PlanState, action: PlanAction): PlanState {
  switch (action.do) {
    case 'add':
      return withAppliance(plan, action.appliance)
    case 'add-own':
      return withLoad(plan, { name: action.name, rating: action.rating })
    case 'set-quantity':
      return withQuantity(plan, action.id, action.quantity)
    case 'set-rating':
      return withChange(plan, action.id, { rating: action.rating })
    case 'set-start':
      return withChange(plan, action.id, { start: action.start })
    case 'set-minutes':
      return withChange(plan, action.id, { minutesPerDay: action.minutesPerDay })
    case 'remove':
      return without(plan, action.ids)
    case 'take-turns':
      return withTurns(plan, action.ids)
    case 'run-together':
      return { ...plan, takeTurns: plan.takeTurns.filter((_, index) => index !== action.group) }
    case 'supply':
      return { ...plan, supply: { ...plan.supply, ...action.change } }
  }
}

function withQuantity(plan: PlanState, id: string, quantity: number): PlanState {
  if (quantity < 1) return without(plan, [id])
  return withChange(plan, id, { quantity: Math.min(LIMITS.quantity, Math.round(quantity)) })
}

function without(plan: PlanState, ids: readonly string[]): PlanState {
  return {
    ...plan,
    loads: plan.loads.filter((load) => !ids.includes(load.id)),
    takeTurns: groupsWithout(plan.takeTurns, ids),
  }
}

function withTurns(plan: PlanState, ids: readonly string[]): PlanState {
  const known = plan.loads.map((load) => load.id).filter((id) => ids.includes(id))
  const others = groupsWithout(plan.takeTurns, known)
  if (known.length < 2 || others.length >= LIMITS.takeTurnsGroups) return plan
  return { ...plan, takeTurns: [...others, known] }
}

function groupsWithout(groups: PlanState['takeTurns'], ids: readonly string[]): PlanState['takeTurns'] {
  return groups.map((group) => group.filter((id) => !ids.includes(id))).filter((group) => group.length > 1)
}
