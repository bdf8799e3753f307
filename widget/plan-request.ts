import type { SizingRequest } from '../shared/contract/plan.ts'
import type { Setup } from '../shared/contract/setup.ts'
import type { PlanState, SupplyAnswers } from './plan.ts'

/** What the page itself took where the shopper was not sure; the answer states each. */
export interface PageAssumptions {
  readonly nominalV?: number
  readonly chemistry?: 'flooded'
  readonly capacityAh?: number
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
 * takes; only what the contract can't leave out is filled in here.
 *
 * @param plan - The shopper's answers, at least one load
 * @param setup - The shop
 * @param locale - Language of the reply
 * @returns The request and what was assumed
 */
export function requestFor(plan: PlanState, setup: Setup, locale: string): PlannedRequest {
  const { supply, assumed } = supplyFor(plan.supply, setup)
  const request: SizingRequest = {
    loads: plan.loads.map(({ id, appliance, name, quantity, minutesPerDay, rating, start }) => ({
      id,
      quantity,
      ...(appliance === undefined ? {} : { appliance }),
      ...(name === undefined ? {} : { name }),
      ...(minutesPerDay === undefined ? {} : { minutesPerDay }),
      ...(rating === undefined ? {} : { rating }),
      ...(start === undefined ? {} : { start }),
    })),
    detail: 'brief',
    locale,
    ...(plan.takeTurns.length === 0 ? {} : { takeTurns: plan.takeTurns.map((group) => [...group]) }),
    ...(supply === undefined ? {} : { supply }),
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
  return {
    supply: {
      nominalV,
      ...(battery === 'have' ? { battery: { ...BATTERY_AS_NEW, chemistry, capacityAh } } : {}),
      ...(connection === null ? {} : { connection: { kind: connection } }),
      ...(oneWayLengthM === null ? {} : { oneWayLengthM }),
    },
    assumed: {
      ...(answers.nominalV === null ? { nominalV } : {}),
      ...(battery === 'have' && answers.chemistry === null ? { chemistry: ASSUMED_BATTERY.chemistry } : {}),
      ...(battery === 'have' && answers.capacityAh === null ? { capacityAh } : {}),
    },
  }
}

/** The contract's own defaults, sent so that the request says all that it means. */
const BATTERY_AS_NEW = { hourRateH: 20, startSocFraction: 1, temperatureC: 25, healthFraction: 1 } as const
