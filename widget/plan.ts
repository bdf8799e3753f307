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
  /** Undefined: as the list has it. A softer start that the shopper tried out. */
  readonly start?: { readonly startingW: number; readonly durationS?: number | undefined } | undefined
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
  /** A unit that the shopper tries out in place of the smallest. */
  readonly sku?: string | undefined
}

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
 * The plan with a thing of the list on it, or one more of that.
 *
 * @param plan - The plan before
 * @param appliance - Id in the shop's list
 * @returns The plan after; the same where the list is full
 */
export function withAppliance(plan: PlanState, appliance: string): PlanState {
  const same = plan.loads.find((load) => load.appliance === appliance && load.rating === undefined)
  if (same === undefined) return withLoad(plan, { appliance })
  return withChange(plan, same.id, { quantity: Math.min(LIMITS.quantity, same.quantity + 1) })
}

/**
 * The plan with another load.
 *
 * @param plan - The plan before
 * @param load - What is known of it; it is counted once
 * @returns The plan after; the same where the list is full
 */
export function withLoad(plan: PlanState, load: Omit<PlanLoad, 'id' | 'quantity'>): PlanState {
  if (plan.loads.length >= LIMITS.loads) return plan
  return { ...plan, loads: [...plan.loads, { ...load, id: freeId(plan.loads), quantity: 1 }] }
}

/**
 * The plan with a load changed.
 *
 * @param plan - The plan before
 * @param id - The load
 * @param change - What is new of it
 * @returns The plan after
 */
export function withChange(plan: PlanState, id: string, change: Partial<PlanLoad>): PlanState {
  return { ...plan, loads: plan.loads.map((load) => (load.id === id ? { ...load, ...change } : load)) }
}

function freeId(loads: readonly PlanLoad[]): string {
  const taken = new Set(loads.map((load) => load.id))
  let number = loads.length + 1
  while (taken.has(`load-${number}`)) number += 1
  return `load-${number}`
}
