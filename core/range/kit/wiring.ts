import { MOST_PARALLEL_PAIRS } from '../../tables/conductors.ts'
import { nextFuse } from '../../wiring/fuse.ts'
import { type FuseFault, fuseSuits } from '../../wiring/fuse-suits.ts'
import type { RangeFuse } from '../range-document.ts'
import { cableFaults, type LaidCable, laidCable, mostPairs, PART_ORIGINS, type PartOrigin } from './cables.ts'
import { type BankKind, type CircuitNeed, type FusePlace, fusePlace, standardCable } from './circuit-need.ts'
import type { Priced, PricedCable } from './parts.ts'

/** A fuse in a circuit. */
export interface PlacedFuse {
  readonly origin: PartOrigin
  /** Left out where the range does not hold it. */
  readonly fuse?: Priced<RangeFuse>
  /** In thousandths; nothing where it need not be bought. */
  readonly cost: number
}

/** A cable and a fuse that go together. */
export interface Wiring {
  readonly cable: LaidCable
  readonly fuse: PlacedFuse
  /** Parts that neither the range nor the buyer has. */
  readonly missing: number
  readonly cost: number
}

/** Parts that are there beside those of the range. */
export interface PartsAtHand {
  readonly cables: readonly {
    readonly cable: PricedCable
    readonly pairs: number
    readonly origin: PartOrigin
  }[]
  readonly fuses: readonly { readonly fuse: Priced<RangeFuse>; readonly origin: PartOrigin }[]
  /** The buyer has one that can't be looked up: it is taken to be what the circuit asks for. */
  readonly uncheckedCable: boolean
  readonly uncheckedFuse: boolean
}

/** What a search for wiring starts from. */
export interface WiringQuestion {
  readonly need: CircuitNeed
  readonly bank: BankKind
  readonly atHand: PartsAtHand
  /** Cables and fuses that may be bought, cheapest first. */
  readonly cables: readonly PricedCable[]
  readonly fuses: readonly Priced<RangeFuse>[]
}

/**
 * Every cable that suits a circuit, each with the best fuse for it, best first. Two or three equal pairs are
 * bought only where no single pair has a fuse that suits.
 *
 * Fewest missing parts, then the lower cost, then what is in the box before what the buyer
 * has before what is to be bought, then the smaller drop, then the smaller fuse, then the SKUs.
 *
 * @param question - Circuit, bank, parts at hand and parts to buy
 * @returns At least one wiring; a part that nothing suits for has the origin `standard`
 */
export function wirings(question: WiringQuestion): readonly Wiring[] {
  const { need, bank } = question
  const place = fusePlace(need.nominalV, bank)
  const fuses = suitingFuses(question, place)
  const cables: LaidCable[] = []
  for (let pairs = 1; pairs <= MOST_PARALLEL_PAIRS; pairs += 1) {
    const suiting = suitingCables(question, pairs)
    const found = combine(suiting, fuses)
    if (found.length > 0) return found.sort(byPreference)
    cables.push(...suiting)
  }
  const cable = standardLaid(need, bank, 'standard')
  const fuse: PlacedFuse = { origin: 'standard', cost: 0 }
  const next = nextFuse({
    currentA: need.worstCaseA,
    nominalV: need.nominalV,
    chemistry: bank.chemistry,
    bankCapacityAh: bank.capacityAh,
  })
  // A fuse from elsewhere has a standard rating, which the cable must carry.
  const carrying = cables.filter(({ ampacityA }) => ampacityA >= (next?.ratingA ?? need.minA))
  const partial = [...combine([cable], fuses), ...combine(carrying, [fuse])]
  return partial.length > 0 ? partial.sort(byPreference) : combine([cable], [fuse])
}

/**
 * The standard cable of a circuit as one that lies in it.
 *
 * @param need - The circuit
 * @param bank - The bank, as far as known
 * @param origin - Whether the buyer has it, unchecked, or lacks it
 * @returns The cable as laid, without a part of the range
 */
export function standardLaid(need: CircuitNeed, bank: BankKind, origin: 'unchecked' | 'standard'): LaidCable {
  const { pairs, ampacityA, resistanceOhm } = standardCable(need, bank)
  const dropFraction = (resistanceOhm * need.worstCaseA) / need.nominalV
  return { origin, pairs, ampacityA, dropFraction, resistanceOhm, cost: 0 }
}

/**
 * What is wrong with a fuse in its place behind a cable.
 *
 * @param need - The circuit
 * @param place - What the bank asks of a fuse
 * @param fuse - The fuse
 * @param maxA - What the cable may carry; infinite where there is no cable to judge by. [A]
 * @returns Every fault; empty where it suits
 */
export function placedFuseFaults(
  need: CircuitNeed,
  place: FusePlace,
  { fuse, maxA }: { readonly fuse: RangeFuse; readonly maxA: number },
): readonly FuseFault[] {
  return fuseSuits(fuse, { ...place, minA: need.minA, maxA })
}

/** What is at hand, and what may be bought in as many equal pairs. */
function suitingCables({ need, bank, atHand, cables }: WiringQuestion, boughtPairs: number): LaidCable[] {
  // A cable that can't be looked up is trusted, so none is put in its place.
  if (atHand.uncheckedCable) return [standardLaid(need, bank, 'unchecked')]
  const found: LaidCable[] = []
  for (const { cable, pairs: most, origin } of atHand.cables) {
    for (let pairs = 1; pairs <= Math.min(most, mostPairs(cable)); pairs += 1) {
      const laid = laidCable(need, cable, { pairs, origin })
      if (cableFaults(need, laid).length === 0) found.push(laid)
    }
  }
  for (const cable of cables) {
    // Too short and too thin are told without a table: most of a range goes by here.
    if (cable.part.lengthM < need.lengthM || cable.ampacityA * boughtPairs < need.minA) continue
    if (boughtPairs > mostPairs(cable)) continue
    const laid = laidCable(need, cable, { pairs: boughtPairs, origin: 'buy' })
    if (cableFaults(need, laid).length === 0) found.push(laid)
  }
  return found
}

function suitingFuses(question: WiringQuestion, place: FusePlace): readonly PlacedFuse[] {
  const { need, atHand, fuses } = question
  const suits = ({ part }: Priced<RangeFuse>) =>
    part.ratingA >= need.minA &&
    placedFuseFaults(need, place, { fuse: part, maxA: Number.POSITIVE_INFINITY }).length === 0
  return [
    ...(atHand.uncheckedFuse ? [{ origin: 'unchecked', cost: 0 } as const] : []),
    ...atHand.fuses.filter(({ fuse }) => suits(fuse)).map((each) => ({ ...each, cost: 0 })),
    ...fuses.filter(suits).map((fuse) => ({ origin: 'buy', fuse, cost: fuse.cost }) as const),
  ]
}

/** Each cable with the best fuse that protects it. */
function combine(cables: readonly LaidCable[], fuses: readonly PlacedFuse[]): Wiring[] {
  const inOrder = fuses.toSorted(byFusePreference)
  const found: Wiring[] = []
  for (const cable of cables) {
    const fuse = inOrder.find((each) => (each.fuse?.part.ratingA ?? 0) <= cable.ampacityA)
    if (fuse === undefined) continue
    const missing = Number(cable.origin === 'standard') + Number(fuse.origin === 'standard')
    found.push({ cable, fuse, missing, cost: cable.cost + fuse.cost })
  }
  return found
}

function byFusePreference(a: PlacedFuse, b: PlacedFuse): number {
  return (
    a.cost - b.cost ||
    rank(a.origin) - rank(b.origin) ||
    (a.fuse?.part.ratingA ?? 0) - (b.fuse?.part.ratingA ?? 0) ||
    inText(a.fuse?.part.sku, b.fuse?.part.sku)
  )
}

function byPreference(a: Wiring, b: Wiring): number {
  return (
    a.missing - b.missing ||
    a.cost - b.cost ||
    rank(a.cable.origin) - rank(b.cable.origin) ||
    a.cable.dropFraction - b.cable.dropFraction ||
    byFusePreference(a.fuse, b.fuse) ||
    inText(a.cable.cable?.part.sku, b.cable.cable?.part.sku)
  )
}

function rank(origin: PartOrigin): number {
  return PART_ORIGINS.indexOf(origin)
}

function inText(a = '', b = ''): number {
  return a < b ? -1 : a > b ? 1 : 0
}
