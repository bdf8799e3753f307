import { type Demand, demandOf, requiredContinuousW } from '../core/loads/demand.ts'
import type { ListedAppliance } from '../core/loads/listed-appliance.ts'
import { resolveLoads } from '../core/loads/resolve.ts'
import type { Setup } from '../shared/contract/setup.ts'
import type { PlanState } from './plan-state.ts'

/** What the loads of a plan come to, by the same arithmetic as the service's. */
export interface Totals {
  readonly demand: Demand
  /** Smallest continuous power that fits. [W] */
  readonly requiredW: number
  /** Loads whose power can't be read yet or whose appliance the shop no longer lists. */
  readonly unread: readonly string[]
}

const lists = new WeakMap<Setup, ReadonlyMap<string, ListedAppliance>>()

/**
 * The shop's appliances by id, gathered once a set-up.
 *
 * @param setup - The shop
 * @returns Appliances by id
 */
export function appliancesOf(setup: Setup): ReadonlyMap<string, ListedAppliance> {
  const known = lists.get(setup)
  if (known !== undefined) return known
  const made = new Map<string, ListedAppliance>(
    setup.appliances.map((appliance) => [appliance.id, appliance]),
  )
  lists.set(setup, made)
  return made
}

/**
 * Running power, starting power and energy of a plan, without asking the service.
 *
 * @param plan - The shopper's answers
 * @param setup - The shop
 * @returns The totals of every load that can be read
 */
export function totalsOf(plan: PlanState, setup: Setup): Totals {
  const context = { appliances: appliancesOf(setup), mains: { nominalV: setup.shop.mainsV } }
  let resolution = resolveLoads(plan.loads, context)
  let unread: readonly string[] = []
  if (!resolution.ok) {
    unread = resolution.faults.map(({ loadId }) => loadId)
    resolution = resolveLoads(
      plan.loads.filter(({ id }) => !unread.includes(id)),
      context,
    )
  }
  const loads = resolution.ok ? resolution.loads : []
  const read = new Set(loads.map(({ id }) => id))
  const groups = plan.takeTurns.map((group) => group.filter((id) => read.has(id)))
  const demand = demandOf(
    loads,
    groups.filter((group) => group.length > 1),
  )
  return { demand, requiredW: requiredContinuousW(demand.runningW, setup.shop.headroomFraction), unread }
}
