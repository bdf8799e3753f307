import { type Finding, finding } from '../../advice/findings.ts'
import type { FuseFault } from '../../wiring/fuse-suits.ts'
import { type AtHand, atHandOf } from '../kit/at-hand.ts'
import { type CableFault, cableFaults, type LaidCable, laidCable, mostPairs } from '../kit/cables.ts'
import { type BankKind, type CircuitNeed, circuitNeed, fusePlace } from '../kit/circuit-need.ts'
import type { OwnedPart } from '../kit/kit-types.ts'
import type { Priced } from '../kit/parts.ts'
import { type PlacedFuse, placedFuseFaults, standardLaid, wirings } from '../kit/wiring.ts'
import type { RangeFuse } from '../range-document.ts'
import { type Cart, type CartFinding, cartFinding } from './cart.ts'

/** How the parts of a cart make the circuit of a unit. */
export interface CircuitCheck {
  readonly need: CircuitNeed
  readonly findings: readonly CartFinding[]
  /** Of the cable, out and back; 0 where there is none. [ohm] */
  readonly resistanceOhm: number
  /** Cable and fuse of the cart's lines that the circuit takes, for one unit. */
  readonly used: {
    readonly cable?: { readonly sku: string; readonly pairs: number }
    readonly fuse?: string
  }
}

/** A cable and a fuse of the cart together, with all that is wrong. */
interface Tried {
  readonly cable: LaidCable | undefined
  readonly fuse: PlacedFuse | undefined
  readonly cableFaults: readonly CableFault[]
  readonly fuseFaults: readonly FuseFault[]
  /** A part that lacks counts as one fault. */
  readonly faults: number
}

/**
 * Checks cable and fuse of one unit: of all the ways in which the cart's parts, the box and the buyer's own go
 * together, the one with the fewest faults is told.
 *
 * @param cart - The lines that are left for this unit
 * @param unit - The unit and how many of it
 * @param context - The bank, as far as known, and what the buyer has
 * @returns Findings, the cable's resistance and what is used up
 * @source nec-125-percent
 */
export function checkCircuit(
  cart: Cart,
  unit: Cart['units'][number],
  context: { readonly bank: BankKind; readonly owned: readonly OwnedPart[] },
): CircuitCheck {
  const { inverter, quantity } = unit
  const need = circuitNeed(cart.range, inverter, cart.supply ?? {})
  const atHand = atHandOf(cart.range, inverter.unit, context.owned)
  if (need.kind === 'vehicle-socket') return { need, findings: [], resistanceOhm: 0, used: {} }
  const { bank } = context
  // A length that nobody stated is the cable's own.
  const judged = need.lengthStated ? need : { ...need, lengthM: 0 }
  const cables = cablesOf(judged, { cart, atHand, quantity })
  if (atHand.uncheckedCable) cables.unshift(standardLaid(need, bank, 'unchecked'))
  const fuses: PlacedFuse[] = [
    ...atHand.fuses.map((each) => ({ ...each, cost: 0 })),
    ...cart.fuses.filter((each) => each.quantity >= quantity).map((each) => ({ ...each, cost: 0 })),
  ]
  if (atHand.uncheckedFuse) fuses.unshift({ origin: 'unchecked', cost: 0 })
  const best = fewestFaults(judged, bank, { cables, fuses })
  const { cable, fuse } = best
  return {
    need,
    findings: findingsOf({ need, bank, best, atHand }),
    resistanceOhm: cable?.resistanceOhm ?? 0,
    used: {
      ...(cable?.origin === 'buy' &&
        cable.cable && { cable: { sku: cable.cable.part.sku, pairs: cable.pairs } }),
      ...(fuse?.origin === 'buy' && fuse.fuse && { fuse: fuse.fuse.part.sku }),
    },
  }
}

function cablesOf(
  need: CircuitNeed,
  { cart, atHand, quantity }: { readonly cart: Cart; readonly atHand: AtHand; readonly quantity: number },
): LaidCable[] {
  const found: LaidCable[] = []
  const lay = ({ cable, pairs: most, origin }: Cart['cables'][number]) => {
    for (let pairs = 1; pairs <= Math.min(most, mostPairs(cable)); pairs += 1) {
      found.push(laidCable(need, cable, { pairs, origin }))
    }
  }
  for (const each of atHand.cables) lay(each)
  for (const each of cart.cables) lay({ ...each, pairs: Math.floor(each.pairs / quantity) })
  return found
}

function fewestFaults(
  need: CircuitNeed,
  bank: BankKind,
  parts: { readonly cables: readonly LaidCable[]; readonly fuses: readonly PlacedFuse[] },
): Tried {
  const place = fusePlace(need.nominalV, bank)
  const faultsAt = (fuse: PlacedFuse | undefined, maxA: number) =>
    fuse?.fuse === undefined ? [] : placedFuseFaults(need, place, { fuse: fuse.fuse.part, maxA })
  const fuses = (parts.fuses.length === 0 ? [undefined] : parts.fuses).map((fuse) => {
    const lacking = Number(fuse === undefined)
    const ratingA = fuse?.fuse?.part.ratingA ?? 0
    return { fuse, ratingA, faults: lacking + faultsAt(fuse, Number.POSITIVE_INFINITY).length }
  })
  let best: Tried | undefined
  for (const cable of parts.cables.length === 0 ? [undefined] : parts.cables) {
    const ofCable = cable === undefined ? [] : cableFaults(need, cable)
    const maxA = cable?.ampacityA ?? Number.POSITIVE_INFINITY
    for (const { fuse, ratingA, faults: own } of fuses) {
      const faults = ofCable.length + Number(cable === undefined) + own + Number(ratingA > maxA)
      if (best !== undefined && !isBetter({ cable, faults }, best)) continue
      best = { cable, fuse, cableFaults: ofCable, fuseFaults: faultsAt(fuse, maxA), faults }
    }
  }
  return best ?? { cable: undefined, fuse: undefined, cableFaults: [], fuseFaults: [], faults: 2 }
}

/** Of two ways with as many faults the cable of less resistance is used: it starts more. */
function isBetter(a: Pick<Tried, 'cable' | 'faults'>, b: Tried): boolean {
  if (a.faults !== b.faults) return a.faults < b.faults
  return (a.cable?.resistanceOhm ?? Infinity) < (b.cable?.resistanceOhm ?? Infinity)
}

interface Judged {
  readonly need: CircuitNeed
  readonly bank: BankKind
  readonly best: Tried
  readonly atHand: AtHand
}

function findingsOf(judged: Judged): readonly CartFinding[] {
  const { need, bank, best } = judged
  if (best.faults === 0) return []
  const { sku } = need.inverter.unit
  const use = fixFor(judged)
  const found: Finding[] = []
  if (best.cable === undefined) {
    found.push(finding('cable-missing', 'fail', { sku, neededA: need.minA, ...use.cable }))
  }
  const cableSku = best.cable?.cable?.part.sku ?? sku
  for (const fault of best.cableFaults) found.push(cableFinding(fault, cableSku, use.cable))
  if (best.fuse === undefined) {
    const maxA = best.cable?.ampacityA ?? standardLaid(need, bank, 'standard').ampacityA
    found.push(finding('fuse-missing', 'fail', { sku, minA: need.minA, maxA, ...use.fuse }))
  }
  const fuseSku = best.fuse?.fuse?.part.sku ?? sku
  for (const fault of best.fuseFaults) {
    // Where no smaller fuse would do, a thicker cable does.
    found.push(fuseFinding(fault, fuseSku, use.fuse ?? use.cable))
  }
  return found.map((each) => cartFinding(each))
}

type Use = { readonly useSku: string } | undefined

/** The parts of the range that put it right: what suits already is kept. */
function fixFor({ need, bank, best, atHand }: Judged): { readonly cable: Use; readonly fuse: Use } {
  const place = fusePlace(need.nominalV, bank)
  const { parts } = need.range
  const inStock = <P extends Priced<{ readonly inStock: boolean } & RangeFuse>>(list: readonly P[]) =>
    list.filter(({ part }) => part.inStock)
  const fuses = inStock(parts.fuses)
  const cables = parts.cables.filter(({ part }) => part.inStock)
  const { cable, fuse } = best
  const keepsCable = cable !== undefined && best.cableFaults.length === 0
  const keepsFuse =
    fuse !== undefined &&
    (fuse.fuse === undefined ||
      placedFuseFaults(need, place, { fuse: fuse.fuse.part, maxA: Number.POSITIVE_INFINITY }).length === 0)
  const kept = {
    cables:
      keepsCable && cable.cable ? [{ cable: cable.cable, pairs: cable.pairs, origin: cable.origin }] : [],
    fuses: keepsFuse && fuse.fuse ? [{ fuse: fuse.fuse, origin: fuse.origin }] : [],
    uncheckedCable: keepsCable && atHand.uncheckedCable,
    uncheckedFuse: keepsFuse && atHand.uncheckedFuse,
  }
  const tooLarge = best.fuseFaults.some(({ fault }) => fault === 'rating-above-conductor')
  // The kept cable is judged by its own length here, which may be less than the usual one.
  const own = keepsCable ? { ...need, lengthM: need.lengthStated ? need.lengthM : 0 } : need
  const [first] = wirings({
    need: own,
    bank,
    atHand: tooLarge ? { ...kept, fuses: [] } : kept,
    cables: keepsCable ? [] : cables,
    fuses,
  })
  const [second] =
    keepsCable && first !== undefined && first.missing > 0
      ? wirings({ need, bank, atHand: { ...kept, cables: [] }, cables, fuses })
      : [first]
  const chosen = second ?? first
  const isNew = (sku: string | undefined, old: string | undefined) => sku !== undefined && sku !== old
  const cableSku = chosen?.cable.cable?.part.sku
  const fuseSku = chosen?.fuse.fuse?.part.sku
  return {
    cable:
      cableSku !== undefined && isNew(cableSku, cable?.cable?.part.sku) ? { useSku: cableSku } : undefined,
    fuse: fuseSku !== undefined && isNew(fuseSku, fuse?.fuse?.part.sku) ? { useSku: fuseSku } : undefined,
  }
}

function cableFinding(fault: CableFault, sku: string, use: Use): Finding {
  switch (fault.fault) {
    case 'too-thin': {
      const { ampacityA, neededA } = fault
      return finding('cable-too-thin', 'fail', { sku, ampacityA, neededA, ...use })
    }
    case 'drop': {
      const { dropFraction, limitFraction } = fault
      return finding('cable-drop', 'fail', { sku, dropFraction, limitFraction, ...use })
    }
    case 'too-short': {
      const { lengthM, routeM } = fault
      return finding('cable-too-short', 'fail', { sku, lengthM, routeM, ...use })
    }
  }
}

/**
 * A fault of a fuse as a finding.
 *
 * @param fault - The fault
 * @param sku - The fuse
 * @param use - What to use in its place
 * @returns The finding, severity `fail`
 */
export function fuseFinding(fault: FuseFault, sku: string, use: Use): Finding {
  switch (fault.fault) {
    case 'rating-below-current': {
      const { ratingA, minA } = fault
      return finding('fuse-too-small', 'fail', { sku, ratingA, minA, ...use })
    }
    case 'rating-above-conductor': {
      const { ratingA, maxA } = fault
      return finding('fuse-too-large', 'fail', { sku, ratingA, maxA, ...use })
    }
    case 'voltage-rating-too-low': {
      const { voltageV, requiredVoltageV } = fault
      return finding('fuse-voltage-short', 'fail', { sku, voltageV, requiredVoltageV, ...use })
    }
    case 'breaking-capacity-too-low': {
      const { breakingCapacityA, requiredBreakingCapacityA } = fault
      const values = { sku, breakingCapacityA, requiredBreakingCapacityA }
      return finding('fuse-breaking-short', 'fail', { ...values, ...use })
    }
  }
}
