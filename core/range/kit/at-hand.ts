import type { KitRole } from '../../advice/vocabulary.ts'
import type { PreparedRange } from '../prepare-range.ts'
import type { Inverter, RangeBattery } from '../range-document.ts'
import type { ConnectorAtHand } from './connectors.ts'
import type { OwnedPart } from './kit-types.ts'
import type { Priced } from './parts.ts'
import type { PartsAtHand } from './wiring.ts'

/** What is in the box of a unit and what the buyer has. */
export interface AtHand extends PartsAtHand {
  readonly connectors: readonly ConnectorAtHand[]
  readonly batteries: readonly { readonly battery: Priced<RangeBattery>; readonly quantity: number }[]
  /** Roles of parts that the buyer has and that can't be looked up. */
  readonly unchecked: ReadonlySet<KitRole>
  /** Parts that the box, and the buyer, have of each role, suiting or not. */
  readonly included: ReadonlySet<KitRole>
  readonly owned: ReadonlySet<KitRole>
}

/**
 * Gathers the parts that need not be bought.
 *
 * @param range - The range
 * @param unit - The unit, for its box; left out: no box
 * @param owned - What the buyer says to have; a SKU of another role counts as one that can't be looked up
 * @returns Parts by role, those in the box first
 */
export function atHandOf(
  range: PreparedRange,
  unit: Inverter | undefined,
  owned: readonly OwnedPart[],
): AtHand {
  const { bySku } = range.parts
  const cables: Mutable<PartsAtHand['cables']> = []
  const fuses: Mutable<PartsAtHand['fuses']> = []
  const connectors: ConnectorAtHand[] = []
  const batteries: Mutable<AtHand['batteries']> = []
  const unchecked = new Set<KitRole>()
  const included = new Set<KitRole>()
  const ownedRoles = new Set<KitRole>()
  const take = (sku: string | undefined, quantity: number, origin: 'included' | 'owned') => {
    const entry = sku === undefined ? undefined : bySku.get(sku)
    switch (entry?.role) {
      case 'cable':
        cables.push({ cable: entry.priced, pairs: quantity, origin })
        break
      case 'fuse':
        fuses.push({ fuse: entry.priced, origin })
        break
      case 'connector':
        connectors.push({ connector: entry.priced, origin })
        break
      case 'battery':
        batteries.push({ battery: entry.priced, quantity })
        break
    }
    return entry?.role
  }
  for (const [sku, quantity] of counted(unit?.includes ?? [])) {
    const role = take(sku, quantity, 'included')
    if (role !== undefined) included.add(role)
  }
  for (const { role, sku, quantity } of owned) {
    ownedRoles.add(role)
    const found = sku === undefined ? undefined : bySku.get(sku)
    if (found?.role === role) take(sku, quantity, 'owned')
    else unchecked.add(role)
  }
  return {
    cables,
    fuses,
    connectors,
    batteries,
    unchecked,
    included,
    owned: ownedRoles,
    uncheckedCable: unchecked.has('cable'),
    uncheckedFuse: unchecked.has('fuse'),
  }
}

type Mutable<T extends readonly unknown[]> = T[number][]

function counted(skus: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const sku of skus) counts.set(sku, (counts.get(sku) ?? 0) + 1)
  return counts
}
