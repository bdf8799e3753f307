import { MOST_PARALLEL_PAIRS } from '../../tables/conductors.ts'
import { loadPairs } from '../../wiring/choose-conductor.ts'
import { awgAreaMm2 } from '../../wiring/conductor.ts'
import type { CircuitNeed } from './circuit-need.ts'
import type { PricedCable } from './parts.ts'

/** Where a part comes from, the one that is used first among equals first; `standard`: not in the range. */
export const PART_ORIGINS = ['included', 'owned', 'unchecked', 'buy', 'standard'] as const
export type PartOrigin = (typeof PART_ORIGINS)[number]

/** Cable pairs in a circuit and what they do there at its worst-case current. */
export interface LaidCable {
  readonly origin: PartOrigin
  /** Left out where the range does not hold it. */
  readonly cable?: PricedCable
  readonly pairs: number
  /** Of all pairs together. [A] */
  readonly ampacityA: number
  readonly dropFraction: number
  /** Out and back. [ohm] */
  readonly resistanceOhm: number
  /** Of all pairs that are to be bought, in thousandths. */
  readonly cost: number
}

/** What is wrong with a cable in a circuit. */
export type CableFault =
  | { readonly fault: 'too-thin'; readonly ampacityA: number; readonly neededA: number }
  | { readonly fault: 'drop'; readonly dropFraction: number; readonly limitFraction: number }
  | { readonly fault: 'too-short'; readonly lengthM: number; readonly routeM: number }

/** Thinnest conductor that may be laid in parallel: 1/0 AWG. [mm2] Source: nec-parallel */
const THINNEST_PARALLEL_MM2 = awgAreaMm2(0)

/**
 * What pairs of a cable do in a circuit.
 *
 * @param need - The circuit
 * @param cable - The cable, each pair as long as it is sold
 * @param pairs - Equal pairs in parallel. 1..3
 * @param origin - Where they come from; only what is bought costs anything
 * @returns The cable as laid; with an ampacity of 0 where it is thinner than any tabulated size
 */
export function laidCable(
  need: CircuitNeed,
  cable: PricedCable,
  { pairs, origin }: { readonly pairs: number; readonly origin: PartOrigin },
): LaidCable {
  const cost = origin === 'buy' ? cable.cost * pairs : 0
  const { conductor, laid } = cable
  if (conductor === undefined) {
    return { origin, cable, pairs, ampacityA: 0, dropFraction: 1, resistanceOhm: 0, cost }
  }
  const { lengthM } = cable.part
  const run = { currentA: need.worstCaseA, lengthM, laid }
  const { ampacityA, dropV } = loadPairs({ conductor, parallelPairs: pairs }, run)
  return {
    origin,
    cable,
    pairs,
    ampacityA,
    dropFraction: dropV / need.nominalV,
    resistanceOhm: dropV / need.worstCaseA,
    cost,
  }
}

/**
 * Most pairs of a cable that may lie in parallel.
 *
 * @param cable - The cable
 * @returns 1, or 3 from 1/0 AWG up
 * @source nec-parallel
 */
export function mostPairs({ conductor }: PricedCable): number {
  return (conductor?.areaMm2 ?? 0) >= THINNEST_PARALLEL_MM2 * 0.999 ? MOST_PARALLEL_PAIRS : 1
}

/**
 * What is wrong with a cable in a circuit.
 *
 * @param need - The circuit
 * @param laid - The cable as laid; one that is not of the range is not judged
 * @returns Every fault; empty where it suits any fuse up to its ampacity
 */
export function cableFaults(need: CircuitNeed, laid: LaidCable): readonly CableFault[] {
  if (laid.cable === undefined) return []
  const { ampacityA, dropFraction } = laid
  const { lengthM } = laid.cable.part
  const faults: CableFault[] = []
  if (ampacityA < need.minA) faults.push({ fault: 'too-thin', ampacityA, neededA: need.minA })
  if (dropFraction > need.dropLimitFraction) {
    faults.push({ fault: 'drop', dropFraction, limitFraction: need.dropLimitFraction })
  }
  if (lengthM < need.lengthM) faults.push({ fault: 'too-short', lengthM, routeM: need.lengthM })
  return faults
}
