import type { SizingRequest } from '../shared/contract/plan.ts'
import type { Setup } from '../shared/contract/setup.ts'
import type { PlanState, SupplyAnswers } from './plan.ts'

/** What the page itself took where the shopper was not sure; the answer states each. */
export interface PageAssumptions {
  readonly nominalV?: number | undefined
  readonly chemistry?: 'flooded' | undefined
  readonly capacityAh?: number | undefined
}

/** A request and what was assumed to make it. */
export interface PlannedRequest {
  readonly request: SizingRequest
  readonly assumed: PageAssumptions
}

/** Battery taken where the shopper has one and knows no more: the commonest kind and a common size. [Ah] */
export const ASSUMED_BATTERY = { chemistry: 'flooded', capacityAh: 100 } as const

/**
 * The request that a plan makes. What the shopper is not sure of is left to the service, which states what it
 * takes; only what the contract can't leave out is filled in here. What is undefined is not sent.
 *
 * @param plan - The shopper's answers, at least one load
 * @param setup - The shop
 * @param locale - Language of the reply
 * @returns The request and what was assumed
 */
export function requestFor(plan: PlanState, setup: Setup, locale: string): PlannedRequest {
  const { supply, assumed } = supplyFor(plan.supply, setup)
  const takeTurns = plan.takeTurns.map((group) => [...group])
  const request: SizingRequest = {
    loads: plan.loads.map((load) => ({ ...load })),
    detail: 'brief',
    locale,
    takeTurns: takeTurns.length === 0 ? undefined : takeTurns,
    supply,
    preferences: plan.sku === undefined ? undefined : { inStockOnly: true, sku: plan.sku },
  }
  return { request, assumed }
}

function supplyFor(
  answers: SupplyAnswers,
  setup: Setup,
): { supply?: NonNullable<SizingRequest['supply']>; assumed: PageAssumptions } {
  const { battery, connection, oneWayLengthM } = answers
  const known =
    answers.nominalV !== null || battery === 'have' || connection !== null || oneWayLengthM !== null
  if (!known) return { assumed: {} }
  const lowestV = setup.shop.supplyVoltages[0] ?? 12
  const nominalV = (answers.nominalV ?? lowestV) as NonNullable<SizingRequest['supply']>['nominalV']
  const chemistry = answers.chemistry ?? ASSUMED_BATTERY.chemistry
  const capacityAh = answers.capacityAh ?? ASSUMED_BATTERY.capacityAh
  const have = battery === 'have'
  return {
    supply: {
      nominalV,
      battery: have ? { ...BATTERY_AS_NEW, chemistry, capacityAh } : undefined,
      connection: connection === null ? undefined : { kind: connection },
      oneWayLengthM: oneWayLengthM ?? undefined,
    },
    assumed: {
      nominalV: answers.nominalV === null ? nominalV : undefined,
      chemistry: have && answers.chemistry === null ? ASSUMED_BATTERY.chemistry : undefined,
      capacityAh: have && answers.capacityAh === null ? capacityAh : undefined,
    },
  }
}

/** The contract's own defaults, sent so that the request says all that it means. */
const BATTERY_AS_NEW = { hourRateH: 20, startSocFraction: 1, temperatureC: 25, healthFraction: 1 } as const
