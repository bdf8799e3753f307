import type { BatteryBank } from '../battery/bank.ts'
import type { Demand } from '../loads/demand.ts'
import { requiredContinuousW } from '../loads/demand.ts'
import type { Load } from '../loads/load.ts'
import type { ApplianceCategory } from '../loads/vocabulary.ts'
import type { FullPolicy } from '../range/policy.ts'
import type { ConnectionKind, InverterFeature, SupplyVoltage } from '../range/vocabulary.ts'

/** What the buyer wants beside power. */
export interface Preferences {
  readonly inStockOnly: boolean
  /** A decimal string in the shop's currency. */
  readonly maxPrice?: string | undefined
  readonly features?: readonly InverterFeature[] | undefined
  /** A unit to recommend in place of the smallest, as long as it fits. */
  readonly sku?: string | undefined
}

/** How and from what an inverter is fed. */
export interface Supply {
  readonly nominalV: SupplyVoltage
  /** Where the buyer means to connect; the unit's own connection counts where it is left out. */
  readonly connection?: { readonly kind: ConnectionKind; readonly limitA?: number | undefined } | undefined
  /** The battery or bank, where the buyer has one or wants one. Its nominal voltage is the supply's. */
  readonly battery?: Omit<BatteryBank, 'nominalV'> | undefined
  /** From the battery to the unit. [m] 0.1..50 */
  readonly oneWayLengthM?: number | undefined
  /** Cable as the answer names it instead of the leads in the unit's box; left out: those leads. */
  readonly replaceLeads?: boolean | undefined
  /** Days that the battery is to last without recharge, for its size. 0.5..30, default 1 */
  readonly autonomyDays?: number | undefined
}

/** Everything the checks of one inverter read: made once an answer, read once a unit. */
export interface Need {
  readonly demand: Demand
  /** Smallest continuous power that carries the demand with headroom. [W] */
  readonly requiredContinuousW: number
  readonly mains: { readonly nominalV: number; readonly frequencyHz: number }
  readonly supply: Supply
  readonly preferences: Preferences
  readonly maxPriceNumber: number
  readonly currency: string
  readonly policy: FullPolicy
  /** Loads whose kind the shop does not sell an inverter for. */
  readonly notAdvised: readonly Load[]
  readonly notAdvisedCategories: readonly ApplianceCategory[]
  /** Loads that need a pure sine wave, and those that are better off with one. */
  readonly sineRequired: readonly string[]
  readonly sineAdvised: readonly string[]
}

/**
 * Gathers what the checks read.
 *
 * @param demand - What the loads ask for
 * @param context - The shop's mains, currency and policy, the supply and the buyer's preferences
 * @returns The need
 */
export function needOf(
  demand: Demand,
  context: Pick<Need, 'mains' | 'supply' | 'preferences' | 'currency' | 'policy'>,
): Need {
  const { mains, supply, preferences, currency, policy } = context
  const notAdvised: Load[] = []
  const sineRequired: string[] = []
  const sineAdvised: string[] = []
  for (const load of demand.loads) {
    if (load.category !== undefined && policy.notAdvised.includes(load.category)) notAdvised.push(load)
    if (load.waveform === 'pure-sine-required') sineRequired.push(load.id)
    else if (load.waveform === 'pure-sine-advised') sineAdvised.push(load.id)
  }
  return {
    mains,
    supply,
    preferences,
    currency,
    policy,
    demand,
    requiredContinuousW: requiredContinuousW(demand.runningW, policy.headroomFraction),
    maxPriceNumber:
      preferences.maxPrice === undefined ? Number.POSITIVE_INFINITY : Number(preferences.maxPrice),
    notAdvised,
    notAdvisedCategories: [...new Set(notAdvised.flatMap((load) => load.category ?? []))],
    sineRequired,
    sineAdvised,
  }
}
