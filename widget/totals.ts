import { type AddedUp, addUp, requiredContinuousW } from '../core/loads/added-up.ts'
import { filledLoad } from '../core/loads/filled-load.ts'
import type { Load } from '../core/loads/load.ts'
import type { Setup } from '../shared/contract/setup.ts'
import type { PlanState } from './plan.ts'

/** What the loads of a plan come to, by the same arithmetic as the service's. */
export interface Totals {
  readonly demand: AddedUp
  /** Smallest continuous power that fits. [W] */
  readonly requiredW: number
  /** Loads whose power can't be read yet or whose appliance the shop no longer lists. */
  readonly unread: readonly string[]
}

/**
 * Running power, starting power and energy of a plan, without asking the service.
 *
 * @param plan - The shopper's answers
 * @param setup - The shop
 * @returns The totals of every load that can be read
 */
export function totalsOf(plan: PlanState, { appliances, shop }: Setup): Totals {
  const loads: Load[] = []
  const unread: string[] = []
  for (const load of plan.loads) {
    const listed = appliances.find(({ id }) => id === load.appliance)
    const known = load.appliance === undefined || listed !== undefined
    const filled = known ? filledLoad(load, listed, shop.mainsV) : undefined
    if (filled?.ok) loads.push(filled.load)
    else unread.push(load.id)
  }
  const demand = addUp(
    loads,
    plan.takeTurns.map((group) => group.filter((id) => !unread.includes(id))),
  )
  return { demand, requiredW: requiredContinuousW(demand.runningW, shop.headroomFraction), unread }
}
