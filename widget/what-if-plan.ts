import type { WhatIfAnswer } from '../shared/contract/answers.ts'
import { type PlanState, planAfter, type SupplyAnswers } from './plan-state.ts'

/**
 * The plans that a what-if makes of one.
 *
 * @param plan - The shopper's answers
 * @param whatIf - The service's proposal
 * @returns The changed plan, or one for each unit of a split; none where a shopper's answers can't hold the change
 */
export function plansWith(plan: PlanState, { change }: Pick<WhatIfAnswer, 'change'>): readonly PlanState[] {
  if (change.split === undefined) return [planWith(plan, change)].filter((changed) => changed !== plan)
  return change.split.map(({ loadIds }) => {
    const others = plan.loads.map(({ id }) => id).filter((id) => !loadIds.includes(id))
    return planAfter(plan, { do: 'remove', ids: others })
  })
}

function planWith(plan: PlanState, change: WhatIfAnswer['change']): PlanState {
  const { takeTurns, without, rating, supply, start, sku } = change
  let changed = plan
  if (takeTurns !== undefined) changed = { ...changed, takeTurns, sku: undefined }
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
  return sku === undefined ? changed : { ...changed, sku }
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
