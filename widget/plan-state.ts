import type { Rating } from '../core/loads/rating.ts'
import type { BatteryChemistry, ConnectionKind } from '../core/range/vocabulary.ts'
import { LIMITS } from './limits.ts'

/** One thing that the shopper wants to run. */
export interface PlanLoad {
  readonly id: string
  /** Id in the shop's appliance list; a load of the shopper's own has none. */
  readonly appliance?: string | undefined
  readonly name?: string | undefined
  /** 1..100 */
  readonly quantity: number
  /** Undefined: as the list has it. [min] 0..1440 */
  readonly minutesPerDay?: number | undefined
  /** Undefined: the list's high figure. */
  readonly rating?: Rating | undefined
}

/** What the shopper said of the supply; null stands for "not sure". */
export interface SupplyAnswers {
  readonly nominalV: number | null
  readonly battery: 'have' | 'need' | null
  readonly chemistry: BatteryChemistry | null
  /** [Ah] */
  readonly capacityAh: number | null
  readonly connection: ConnectionKind | null
  /** [m] */
  readonly oneWayLengthM: number | null
}

/** Every answer of the shopper. */
export interface PlanState {
  readonly loads: readonly PlanLoad[]
  /** Groups of load ids of which only one runs at a time. */
  readonly takeTurns: readonly (readonly string[])[]
  readonly supply: SupplyAnswers
}

/** Something that the shopper did. */
export type PlanAction =
  | { readonly do: 'add'; readonly appliance: string }
  | { readonly do: 'add-own'; readonly name: string; readonly rating: Rating }
  | { readonly do: 'set-quantity'; readonly id: string; readonly quantity: number }
  | { readonly do: 'set-rating'; readonly id: string; readonly rating: Rating | undefined }
  | { readonly do: 'set-minutes'; readonly id: string; readonly minutesPerDay: number | undefined }
  | { readonly do: 'remove'; readonly ids: readonly string[] }
  | { readonly do: 'take-turns'; readonly ids: readonly string[] }
  | { readonly do: 'run-together'; readonly group: number }
  | { readonly do: 'supply'; readonly change: Partial<SupplyAnswers> }

/** Nothing picked, nothing known. */
export const EMPTY_PLAN: PlanState = {
  loads: [],
  takeTurns: [],
  supply: {
    nominalV: null,
    battery: null,
    chemistry: null,
    capacityAh: null,
    connection: null,
    oneWayLengthM: null,
  },
}

/**
 * The plan after one action. Never throws: an action that makes no sense leaves the plan as it is.
 *
 * @param plan - The plan before
 * @param action - What the shopper did
 * @returns The plan after; the same object where nothing changed
 */
export function planAfter(plan: PlanState, action: PlanAction): PlanState {
  switch (action.do) {
    case 'add':
      return withAppliance(plan, action.appliance)
    case 'add-own':
      return withLoad(plan, { name: action.name, rating: action.rating })
    case 'set-quantity':
      return withQuantity(plan, action.id, action.quantity)
    case 'set-rating':
      return withChange(plan, action.id, { rating: action.rating })
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

function withAppliance(plan: PlanState, appliance: string): PlanState {
  const same = plan.loads.find((load) => load.appliance === appliance && load.rating === undefined)
  if (same === undefined) return withLoad(plan, { appliance })
  return withQuantity(plan, same.id, same.quantity + 1)
}

function withLoad(plan: PlanState, load: Omit<PlanLoad, 'id' | 'quantity'>): PlanState {
  if (plan.loads.length >= LIMITS.loads) return plan
  return { ...plan, loads: [...plan.loads, { ...load, id: freeId(plan.loads), quantity: 1 }] }
}

function freeId(loads: readonly PlanLoad[]): string {
  const taken = new Set(loads.map((load) => load.id))
  let number = loads.length + 1
  while (taken.has(`load-${number}`)) number += 1
  return `load-${number}`
}

function withQuantity(plan: PlanState, id: string, quantity: number): PlanState {
  if (quantity < 1) return without(plan, [id])
  return withChange(plan, id, { quantity: Math.min(LIMITS.quantity, Math.round(quantity)) })
}

function withChange(plan: PlanState, id: string, change: Partial<PlanLoad>): PlanState {
  return { ...plan, loads: plan.loads.map((load) => (load.id === id ? { ...load, ...change } : load)) }
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
