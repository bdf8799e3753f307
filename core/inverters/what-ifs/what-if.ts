import type { FindingCode } from '../../advice/findings.ts'
import type { WhatIfKind } from '../../advice/vocabulary.ts'
import type { PreparedInverter } from '../../range/prepare-range.ts'
import type { BatteryChemistry, ConnectionKind, SupplyVoltage } from '../../range/vocabulary.ts'
import type { Outcome } from '../../sizing.ts'
import type { PlanChange } from './plan-change.ts'

/** What the sentence of each kind may show, beside loads and units. */
export interface WhatIfValues {
  'take-turns': Record<string, never>
  /** Input power of one item: the limit, and what it is now. [W] */
  'lower-rating': { limitW: number; ratedW: number }
  'leave-out': Record<string, never>
  'other-connection': { connection: ConnectionKind }
  'shorter-cable': { oneWayLengthM: number }
  /** Size of the cable to lay, as the shop's wire sizes have it. */
  'larger-wire': { cable?: string }
  'higher-voltage': { nominalV: SupplyVoltage }
  'pure-sine': Record<string, never>
  'larger-battery': { capacityAh: number }
  'other-chemistry': { chemistry: BatteryChemistry }
  'two-units': Record<string, never>
  /** Starting power of one item: the limit, and what it is now. [W] */
  'soft-start': { limitW: number; startingW: number }
  combined: { steps: readonly WhatIfStep[] }
}

/** Kinds that may be one of two changes at once. */
type StepKind =
  | 'take-turns'
  | 'lower-rating'
  | 'leave-out'
  | 'soft-start'
  | 'other-connection'
  | 'higher-voltage'
  | 'larger-battery'
  | 'other-chemistry'

/** One of two changes at once. */
export interface WhatIfStepOf<K extends StepKind> {
  readonly kind: K
  readonly loadIds: readonly string[]
  readonly values: WhatIfValues[K]
}
export type WhatIfStep = { [K in StepKind]: WhatIfStepOf<K> }[StepKind]

/** One kind's proposal, before it is known what it buys. */
export interface ProposalOf<K extends WhatIfKind> {
  readonly kind: K
  /** The loads that it changes. */
  readonly loadIds: readonly string[]
  readonly change: PlanChange
  readonly values: WhatIfValues[K]
}
export type Proposal = { [K in WhatIfKind]: ProposalOf<K> }[WhatIfKind]

/** What a change buys, as sizing the changed request gives it. */
export interface Gain {
  readonly outcome: Outcome
  /** What is still to be minded then: codes of findings of severity `fail` or `care`. */
  readonly cares: ReadonlySet<FindingCode>
  /** The unit, or both of a split, in the order of the split. */
  readonly units: readonly PreparedInverter[]
  /** Of all units together, a decimal string. */
  readonly price: string
  /** Over the unit recommended now, a decimal string with its sign; left out where there is none. */
  readonly priceDifference?: string
  /** Run time with everything on, where a battery is known. [h] */
  readonly runtimeHours?: number
}

/** A change of the plan and what it buys. */
export type WhatIf = { [K in WhatIfKind]: ProposalOf<K> & Gain }[WhatIfKind]
