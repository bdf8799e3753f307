import type { KitRole } from '../../advice/vocabulary.ts'
import { atHandOf } from '../kit/at-hand.ts'
import { blockBank } from '../kit/banks.ts'
import { type BankKind, circuitNeed, fusePlace } from '../kit/circuit-need.ts'
import { connectorFor, takesConnector } from '../kit/connectors.ts'
import type { Priced } from '../kit/parts.ts'
import { wirings } from '../kit/wiring.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import type { PartBase } from '../range-document.ts'
import type { CoverageOptions, KitGap } from './coverage-types.ts'

/** Part lists as far as they count. */
type Parts = Pick<PreparedRange['parts'], 'cables' | 'fuses' | 'connectors' | 'batteries'>

/**
 * Units for whose battery circuit the range has no fitting cable, fuse or connector, at the length and the limits
 * that an answer takes where nobody states any. What is in the unit's box counts. Each unit is tried with one
 * string of every battery of its voltage, or where there is none with a battery of which nothing is known.
 *
 * @param range - The range, prepared
 * @param options - Whether only what is in stock counts
 * @returns A generator that yields after each unit and returns those that lack something
 */
export function* missingParts(
  range: PreparedRange,
  options: CoverageOptions,
): Generator<undefined, readonly KitGap[], undefined> {
  const parts: Parts = {
    cables: counting(range.parts.cables, options),
    fuses: counting(range.parts.fuses, options),
    connectors: counting(range.parts.connectors, options),
    batteries: counting(range.parts.batteries, options),
  }
  const gaps: KitGap[] = []
  for (const inverter of range.inverters) {
    // A unit that can't be bought needs no kit.
    if (options.inStockOnly && !inverter.unit.inStock) continue
    gaps.push(...gapsOf(range, inverter, parts))
    yield
  }
  return gaps
}

function gapsOf(range: PreparedRange, inverter: PreparedInverter, parts: Parts): readonly KitGap[] {
  const { sku, inputNominalV: nominalV } = inverter.unit
  const missingOn = missingByBank(range, inverter, parts)
  const banks = parts.batteries.flatMap((block) => {
    const made = blockBank(block, { nominalV, inParallel: 1, conditions: {} })
    return made === undefined ? [] : [{ sku: block.part.sku, bank: made.bank }]
  })
  if (banks.length === 0) {
    const missing = missingOn({})
    return missing.length === 0 ? [] : [{ sku, missing, batterySkus: [] }]
  }
  const bySet = new Map<string, { readonly missing: readonly KitRole[]; readonly batterySkus: string[] }>()
  for (const { sku: batterySku, bank } of banks) {
    const missing = missingOn(bank)
    if (missing.length === 0) continue
    const set = bySet.get(missing.join()) ?? { missing, batterySkus: [] }
    set.batterySkus.push(batterySku)
    bySet.set(missing.join(), set)
  }
  return [...bySet.values()].map((set) => ({ sku, ...set }))
}

/** Parts that a unit's circuit lacks, by its bank. */
function missingByBank(
  range: PreparedRange,
  inverter: PreparedInverter,
  { cables, fuses, connectors }: Parts,
): (bank: BankKind) => readonly KitRole[] {
  const need = circuitNeed(range, inverter, {})
  const atHand = atHandOf(range, inverter.unit, [])
  const connector: readonly KitRole[] =
    takesConnector(need) && connectorFor(need, atHand.connectors, connectors).origin === 'standard'
      ? ['connector']
      : []
  // Behind a vehicle socket, cable and fuse are the vehicle's.
  if (need.kind === 'vehicle-socket') return () => connector
  // Of a bank nothing counts here but the short-circuit current that its fuse must break.
  const known = new Map<number, readonly KitRole[]>()
  return (bank) => {
    const { requiredBreakingCapacityA } = fusePlace(need.nominalV, bank)
    const before = known.get(requiredBreakingCapacityA)
    if (before !== undefined) return before
    const [best] = wirings({ need, bank, atHand, cables, fuses })
    const missing: KitRole[] = []
    if (best === undefined || best.cable.origin === 'standard') missing.push('cable')
    if (best === undefined || best.fuse.origin === 'standard') missing.push('fuse')
    missing.push(...connector)
    known.set(requiredBreakingCapacityA, missing)
    return missing
  }
}

function counting<T extends Priced<PartBase>>(
  parts: readonly T[],
  { inStockOnly }: CoverageOptions,
): readonly T[] {
  return inStockOnly ? parts.filter(({ part }) => part.inStock) : parts
}
