import type { DemandKind } from '../demand/keys.ts'
import type { Period } from '../demand/period.ts'

/** One count of one day. */
export interface DemandRow {
  readonly shopId: string
  /** `YYYY-MM-DD` in UTC. */
  readonly day: string
  readonly kind: DemandKind
  readonly key: string
  readonly count: number
}

/** Rows that are added together, once. */
export interface DemandBatch {
  /** Of the sender's making, never used again. */
  readonly id: string
  /** Shop, day, kind and key differ. */
  readonly rows: readonly DemandRow[]
}

/** What was asked for in a period. */
export interface DemandTotals {
  /** All kinds but combinations, added up over the period. */
  readonly totals: readonly { readonly kind: DemandKind; readonly key: string; readonly count: number }[]
  /** Combinations that were asked for often enough to be told, most often first. */
  readonly combinations: readonly { readonly key: string; readonly count: number }[]
  /** All other combinations together. */
  readonly otherCombinations: number
  /** Outcomes by day, in the order of the days. */
  readonly outcomes: readonly { readonly day: string; readonly key: string; readonly count: number }[]
}

/** Where demand is kept: counts by day and by month, nothing else. */
export interface DemandStore {
  /** Adds a batch to what other instances have added; sent again, it counts once. */
  addDemand(batch: DemandBatch): Promise<void>
  /** What a shop's shoppers asked for in a period. */
  demand(shopId: string, period: Period): Promise<DemandTotals>
  /**
   * Merges rare combinations of days and months that are over, and deletes what is older than is kept. Safe to
   * call at any time from several instances.
   */
  tidyDemand(today: string): Promise<void>
}

/** Counts below this are told, and in the end kept, only together with others. */
export const MERGE_BELOW = 5

/** Combinations told by name at most. */
export const COMBINATIONS_TOLD = 200

/** Days that are kept: a little over two years, so that a month can be compared with the same a year before. */
export const DEMAND_DAYS_KEPT = 800
