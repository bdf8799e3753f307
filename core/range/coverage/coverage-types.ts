import type { FindingCode } from '../../advice/findings.ts'
import type { KitRole } from '../../advice/vocabulary.ts'
import type { Outcome } from '../../sizing.ts'
import type { SupplyVoltage } from '../vocabulary.ts'
import type { EverydayPlan } from './everyday-plans.ts'

/** What a range answers to one everyday plan at one supply voltage. */
export interface CoverageAnswer {
  readonly nominalV: SupplyVoltage
  readonly outcome: Outcome
  /** Smallest continuous power that carries the plan with headroom. [W] */
  readonly requiredContinuousW: number
  /** The unit, or undefined where none fits. */
  readonly recommended?: { readonly sku: string; readonly continuousW: number }
  /** True where the recommended unit is over twice the need. */
  readonly overTwice: boolean
  /** Why none fits: what fails at the unit that comes nearest; empty where one fits. */
  readonly codes: readonly FindingCode[]
  readonly nearestSku?: string
}

/** An everyday plan with its answers, lowest supply voltage first. */
export interface PlanCoverage {
  readonly plan: EverydayPlan
  readonly answers: readonly CoverageAnswer[]
}

/** What an inverter does for the everyday plans at its own supply voltage. */
export interface UnitCoverage {
  readonly sku: string
  readonly nominalV: SupplyVoltage
  /** Plans that it fits, and plans that it is recommended for. */
  readonly fits: number
  readonly recommended: number
  /** For a unit that is never recommended: what is recommended where it would fit, most often first. */
  readonly shadowedBy: readonly { readonly sku: string; readonly plans: number }[]
  /** For a unit that fits no plan: what fails with every one of them. */
  readonly codes: readonly FindingCode[]
}

/** A hole in the ladder of sizes: plans for which the recommended unit is over twice the need. */
export interface Gap {
  readonly nominalV: SupplyVoltage
  readonly sku: string
  readonly continuousW: number
  /** [W] */
  readonly lowestNeedW: number
  /** [W] */
  readonly highestNeedW: number
  readonly planIds: readonly string[]
  /** What rules out the units in between; empty where there are none. */
  readonly codes: readonly FindingCode[]
}

/** A unit for whose battery circuit the range lacks parts. */
export interface KitGap {
  readonly sku: string
  readonly missing: readonly KitRole[]
  /** Batteries of the range on which they are missing; empty where the range has none of its voltage. */
  readonly batterySkus: readonly string[]
}

/** What a single string of a battery does for the everyday plans at one supply voltage. */
export interface BatteryCoverage {
  readonly sku: string
  readonly nominalV: SupplyVoltage
  readonly inSeries: number
  /** Plans with a recommended unit that it was tried with. */
  readonly plans: number
  /** Plans that it does not carry for the time that they run in a day. */
  readonly shortPlanIds: readonly string[]
}

/** What a range can and can't serve. */
export interface Coverage {
  readonly voltages: readonly SupplyVoltage[]
  readonly plans: readonly PlanCoverage[]
  readonly units: readonly UnitCoverage[]
  readonly gaps: readonly Gap[]
  readonly kits: readonly KitGap[]
  readonly batteries: readonly BatteryCoverage[]
}

/** How a range is tried. */
export interface CoverageOptions {
  /** Whether only what is in stock counts, as it does for shoppers. */
  readonly inStockOnly: boolean
}
