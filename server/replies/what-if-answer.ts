import type { LabelLimit, Plan, PreparedRange, Supply, WhatIf } from '../../core/index.ts'
import type { LabelLimitAnswer, WhatIfAnswer } from '../../shared/contract/answers.ts'
import type { LoadName } from '../../shared/messages/catalogue.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { hundredth } from './rounding.ts'

/**
 * A what-if as the contract has it, with its sentence.
 *
 * @param whatIf - The engine's
 * @param plan - The plan that it changes
 * @param range - The range it is sized from
 * @param writer - Whose language it is written in
 * @returns What changes, what it buys, and the change as data
 */
export function whatIfAnswer(whatIf: WhatIf, plan: Plan, range: PreparedRange, writer: Writer): WhatIfAnswer {
  const { kind, loadIds, outcome, units, price, priceDifference, runtimeHours } = whatIf
  const { currency } = range.document.shop
  const [unit] = units
  const single = units.length === 1 && unit !== undefined
  return {
    kind,
    loadIds: [...loadIds],
    outcome,
    ...(single && { sku: unit.unit.sku, continuousW: unit.unit.continuousW }),
    price,
    ...(priceDifference !== undefined && { priceDifference }),
    currency,
    ...(runtimeHours !== undefined && { runtimeHours: hundredth(runtimeHours) }),
    change: changeAnswer(whatIf),
    message: writer.whatIf(
      whatIf,
      loadIds.map((id) => loadName(plan, id)),
      currency,
    ),
    values: { ...whatIf.values },
  }
}

/**
 * A label limit as the contract has it, with its sentence.
 *
 * @param limit - The engine's
 * @param plan - The plan that it belongs to
 * @param writer - Whose language it is written in
 * @returns The limit
 */
export function labelLimitAnswer(limit: LabelLimit, plan: Plan, writer: Writer): LabelLimitAnswer {
  return { ...limit, message: writer.labelLimit(limit, loadName(plan, limit.loadId)) }
}

function changeAnswer({ change }: WhatIf): WhatIfAnswer['change'] {
  const { takeTurns, without, rating, start, supply, sku, split } = change
  return {
    ...(takeTurns && { takeTurns: takeTurns.map((group) => [...group]) }),
    ...(without !== undefined && { without }),
    ...(rating && { rating: { ...rating } }),
    ...(start && { start: { ...start } }),
    ...(supply && { supply: supplyAnswer(supply) }),
    ...(sku !== undefined && { sku }),
    ...(split && { split: split.map((part) => ({ ...part, loadIds: [...part.loadIds] })) }),
  }
}

/** A supply as a request states it, defaults filled in. */
function supplyAnswer(supply: Supply): NonNullable<WhatIfAnswer['change']['supply']> {
  const { battery, ...rest } = supply
  if (battery === undefined) return rest
  const { otherRates } = battery
  return {
    ...rest,
    battery: {
      ...battery,
      hourRateH: battery.hourRateH ?? 20,
      startSocFraction: battery.startSocFraction ?? 1,
      temperatureC: battery.temperatureC ?? 25,
      healthFraction: battery.healthFraction ?? 1,
      otherRates: otherRates?.map((rate) => ({ ...rate })),
    },
  }
}

function loadName({ input, demand }: Plan, loadId: string): LoadName {
  const own = input.loads.find(({ id }) => id === loadId)?.name
  if (own !== undefined) return { name: own, own: true }
  const listed = demand.loads.find(({ id }) => id === loadId)?.name
  return listed === undefined ? { name: loadId, own: true } : { name: listed, own: false }
}
