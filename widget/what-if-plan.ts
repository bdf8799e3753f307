import type { WhatIfAnswer } from '../shared/contract/answers.ts'
import { type PlanState, planAfter, type SupplyAnswers } from './plan-state.ts'

/**
 * The plan with a what-if put into it.
 *
 * @param plan - The shopper's answers
 * @param whatIf - The service's proposal
 * @returns The changed plan; undefined where the change is none that a shopper's answers can hold: another unit,
 * two units
 */
export function planWith(plan: PlanState, { change }: Pick<WhatIfAnswer, 'change'>): PlanState | undefined {
  const { takeTurns, without, rating, supply, start, sku, split } = change
  if (sku !== undefined || split !== undefined) return undefined
  let changed = plan
  if (takeTurns !== undefined) changed = { ...changed, takeTurns }
  if (without !== undefined && plan.loads.length > 1) {
    changed = planAfter(changed, { do: 'remove', ids: [without] })
  }
  if (rating !== undefined) {
    const { loadId: id, watts } = rating
    changed = planAfter(changed, { do: 'set-rating', id, rating: { basis: 'input-watts', watts } })
  }
  if (start !== undefined) {
    const { loadId: id, startingW, durationS } = start
    changed = planAfter(changed, { do: 'set-start', id, start: { startingW, durationS } })
  }
  if (supply !== undefined) changed = planAfter(changed, { do: 'supply', change: answersOf(supply) })
  return changed === plan ? undefined : changed
}

function answersOf(supply: NonNullable<WhatIfAnswer['change']['supply']>): Partial<SupplyAnswers> {
  const { nominalV, battery, connection, oneWayLengthM } = supply
  return {
    nominalV,
    ...(battery === undefined
      ? {}
      : { battery: 'have', chemistry: battery.chemistry, capacityAh: battery.capacityAh }),
    ...(connection === undefined ? {} : { connection: connection.kind }),
    ...(oneWayLengthM === undefined ? {} : { oneWayLengthM }),
  }
}
