import { requireInRange } from '../errors.ts'
import type { BatteryChemistry } from '../range/vocabulary.ts'
import {
  BREAKING_BANDS_UP_TO_V,
  BREAKING_CAPACITY_BANDS,
  CRANKING_A_PER_AH,
  LITHIUM_BREAKING_CAPACITY,
} from '../tables/fuses.ts'
import { CHARGING_OVER_NOMINAL_FACTOR } from '../tables/supply-voltages.ts'

/** `main`: the first fuse after the battery. `branch`: one behind it. */
export type FusePosition = 'main' | 'branch'

/** The bank that a fuse stands behind. */
export interface FusedBank {
  /** Left out: unknown, and reckoned as lithium. */
  readonly chemistry?: BatteryChemistry | undefined
  /** Capacity of the whole bank at its nominal voltage; left out: unknown, the largest band. [Ah] above 0 */
  readonly bankCapacityAh?: number | undefined
  /** [V] 6..120 */
  readonly nominalV: number
}

/**
 * Short-circuit current that a fuse must be able to break.
 *
 * @param bank - The bank; what is not known is taken at its worst
 * @param position - Where the fuse stands
 * @returns Direct-current breaking capacity. [A]
 * @throws CoreError `out_of_range`
 * @remarks Lead-acid: the published bands by cold cranking amperes, taken as 10 A per ampere-hour (common
 * practice); above 24 V, which they leave out, the largest band. Lithium is not in them: 20 000 A, common
 * practice, no published source. A figure by the battery's maker goes before all of these.
 * @source abyc-e11-interrupting, common-practice
 * @example requiredBreakingCapacityA({ chemistry: 'agm', bankCapacityAh: 100, nominalV: 12 }) //=> 3000
 */
export function requiredBreakingCapacityA(bank: FusedBank, position: FusePosition = 'main'): number {
  requireInRange('nominalV', bank.nominalV, 6, 120)
  return position === 'main' ? bandOf(bank).mainA : bandOf(bank).branchA
}

/**
 * Breaking capacity by the published bands.
 *
 * @param crankingA - Cold cranking amperes of all batteries connected. [A] 0 or more
 * @param position - Where the fuse stands
 * @returns Breaking capacity, lead-acid, 12 to 24 V. [A]
 * @throws CoreError `out_of_range`
 * @source abyc-e11-interrupting
 */
export function breakingCapacityOfCrankingA(crankingA: number, position: FusePosition): number {
  const band = bandOfCrankingA(crankingA)
  return position === 'main' ? band.mainA : band.branchA
}

/**
 * Direct-current voltage that a fuse must be rated for: the bank's highest charging voltage.
 *
 * @param nominalV - Nominal voltage of the bank. [V] 6..120
 * @returns Rated voltage, at least. [V]
 * @throws CoreError `out_of_range`
 * @source iso8820-scopes, 33-cfr-183-455
 * @example requiredFuseVoltageV(48) //=> 57.6
 */
export function requiredFuseVoltageV(nominalV: number): number {
  requireInRange('nominalV', nominalV, 6, 120)
  return nominalV * CHARGING_OVER_NOMINAL_FACTOR
}

type Band = { readonly mainA: number; readonly branchA: number }

const LARGEST_BAND = BREAKING_CAPACITY_BANDS[BREAKING_CAPACITY_BANDS.length - 1] ?? LITHIUM_BREAKING_CAPACITY

function bandOf({ chemistry, bankCapacityAh, nominalV }: FusedBank): Band {
  if (bankCapacityAh !== undefined) requireInRange('bankCapacityAh', bankCapacityAh, 0, 1_000_000)
  if (chemistry === undefined || chemistry === 'lifepo4' || chemistry === 'nmc') {
    return LITHIUM_BREAKING_CAPACITY
  }
  if (nominalV > BREAKING_BANDS_UP_TO_V || bankCapacityAh === undefined) return LARGEST_BAND
  return bandOfCrankingA(bankCapacityAh * CRANKING_A_PER_AH)
}

function bandOfCrankingA(crankingA: number): Band {
  requireInRange('crankingA', crankingA, 0, 10_000_000)
  return BREAKING_CAPACITY_BANDS.find((band) => crankingA <= band.upToCrankingA) ?? LARGEST_BAND
}
