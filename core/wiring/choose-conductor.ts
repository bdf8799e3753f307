import type { WireSizes } from '../range/vocabulary.ts'
import { MOST_PARALLEL_PAIRS } from '../tables/conductors.ts'
import {
  type AmpacityWorking,
  ampacityWorking,
  type LaidConductor,
  laidAmpacityA,
  layingFactors,
} from './ampacity.ts'
import type { GoverningLimit } from './circuit-types.ts'
import { type Conductor, standardConductors } from './conductor.ts'
import { conductorTemperatureC, voltageDropV } from './voltage-drop.ts'

/** Conductors laid in one or more pairs. */
export interface Pairs {
  readonly conductor: Conductor
  readonly parallelPairs: number
}

/** What is asked of the conductor. */
export interface ConductorDemand {
  /** Worst-case current of the circuit. [A] */
  readonly currentA: number
  /** 1.25 x that current. [A] */
  readonly minA: number
  /** Rating of the fuse, which the conductor must carry. [A] */
  readonly fuseRatingA: number
  /** One-way length. [m] */
  readonly lengthM: number
  /** [V] */
  readonly dropLimitV: number
  readonly laid: Omit<LaidConductor, 'conductor'>
}

/** Pairs of conductors at the circuit's current. */
export interface LoadedPairs extends Pairs {
  /** Of one conductor. */
  readonly each: AmpacityWorking
  /** Of all pairs together. [A] */
  readonly ampacityA: number
  readonly conductorTempC: number
  readonly dropV: number
}

/** The first conductor that keeps every limit, or the thickest with the limit that it breaks. */
export type ConductorChoice =
  | { readonly ok: true; readonly chosen: LoadedPairs; readonly governedBy: Limit }
  | { readonly ok: false; readonly thickest: LoadedPairs | undefined; readonly brokenLimit: Limit }

type Limit = Exclude<GoverningLimit, 'own-leads'>

/**
 * The smallest standard conductor that carries the fuse and keeps the drop; two or three pairs in parallel
 * where one is not enough.
 *
 * @param wireSizes - System of sizes
 * @param demand - What is asked of it
 * @returns The choice with the limit that governed it, or the thickest with the limit that it breaks
 * @throws CoreError as {@link ampacityWorking} and {@link voltageDropV}
 */
export function chooseConductor(wireSizes: WireSizes, demand: ConductorDemand): ConductorChoice {
  const { minA, fuseRatingA, dropLimitV, laid } = demand
  const factors = layingFactors(wireSizes, laid)
  // The limit that one size cannot keep is the one that governs the choice of the next.
  let broken: Limit = 'ampacity'
  for (const pairs of CANDIDATES[wireSizes]) {
    const ampacityA = laidAmpacityA(pairs.conductor, factors) * pairs.parallelPairs
    if (ampacityA < fuseRatingA) {
      broken = ampacityA < minA ? 'ampacity' : 'fuse'
      continue
    }
    const loaded = loadPairs(pairs, demand)
    if (loaded.dropV <= dropLimitV) return { ok: true, chosen: loaded, governedBy: broken }
    broken = 'voltage-drop'
  }
  const thickest = CANDIDATES[wireSizes].at(-1)
  return { ok: false, thickest: thickest && loadPairs(thickest, demand), brokenLimit: broken }
}

/**
 * What pairs of conductors do at the circuit's current.
 *
 * @param pairs - The conductors
 * @param demand - Current, length and where they lie
 * @returns Ampacity, temperature and drop
 * @throws CoreError as {@link ampacityWorking} and {@link voltageDropV}
 */
export function loadPairs(
  { conductor, parallelPairs }: Pairs,
  demand: Pick<ConductorDemand, 'currentA' | 'lengthM' | 'laid'>,
): LoadedPairs {
  const { currentA, lengthM, laid } = demand
  const each = ampacityWorking({ ...laid, conductor })
  const conductorTempC = conductorTemperatureC({
    currentA: currentA / parallelPairs,
    ampacityA: each.ampacityA,
    insulationC: each.columnC,
    ambientC: each.ambientC,
  })
  const dropV = voltageDropV({ conductor, currentA, lengthM, conductorTempC, parallelPairs })
  return { conductor, parallelPairs, each, ampacityA: each.ampacityA * parallelPairs, conductorTempC, dropV }
}

/**
 * Single conductors, then parallel sets that hold more copper than the thickest set with one pair fewer: a
 * step up in load or length never ends in less copper. That keeps parallel conductors above 1/0 AWG too
 * (nec-parallel).
 */
function candidatesOf(wireSizes: WireSizes): readonly Pairs[] {
  const single = standardConductors(wireSizes)
  const thickestMm2 = Math.max(...single.map((conductor) => conductor.areaMm2))
  const candidates: Pairs[] = []
  for (let parallelPairs = 1; parallelPairs <= MOST_PARALLEL_PAIRS; parallelPairs += 1) {
    for (const conductor of single) {
      const isMore = conductor.areaMm2 * parallelPairs > thickestMm2 * (parallelPairs - 1)
      if (isMore) candidates.push({ conductor, parallelPairs })
    }
  }
  return candidates
}

const CANDIDATES: Readonly<Record<WireSizes, readonly Pairs[]>> = {
  metric: candidatesOf('metric'),
  awg: candidatesOf('awg'),
}
