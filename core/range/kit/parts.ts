import { AMPACITY_TABLE_AMBIENT_C, ASSUMED_INSULATION_C } from '../../tables/ampacity.ts'
import { ampacityA, type LaidConductor } from '../../wiring/ampacity.ts'
import { type Conductor, conductorOfSize } from '../../wiring/conductor.ts'
import type {
  Inverter,
  PartBase,
  RangeBattery,
  RangeCable,
  RangeConnector,
  RangeDocument,
  RangeFuse,
} from '../range-document.ts'
import { thousandthsOf } from './money.ts'

/** A part with its price as a whole number, so that sums are exact. */
export interface Priced<P extends PartBase> {
  readonly part: P
  /** Price in thousandths of the currency's unit. */
  readonly cost: number
}

/** A cable pair with its conductor; without one where it is thinner than any tabulated size. */
export interface PricedCable extends Priced<RangeCable> {
  readonly conductor: Conductor | undefined
  /** How its conductors are taken to lie: as a pair, in free air at 30 degC. */
  readonly laid: Omit<LaidConductor, 'conductor'>
  /** Of one pair. [A] 0 where it is thinner than any tabulated size */
  readonly ampacityA: number
}

/** A part of a range by its SKU. */
export type RangePart =
  | { readonly role: 'inverter'; readonly part: Inverter }
  | { readonly role: 'cable'; readonly part: RangeCable; readonly priced: PricedCable }
  | { readonly role: 'fuse'; readonly part: RangeFuse; readonly priced: Priced<RangeFuse> }
  | { readonly role: 'connector'; readonly part: RangeConnector; readonly priced: Priced<RangeConnector> }
  | { readonly role: 'battery'; readonly part: RangeBattery; readonly priced: Priced<RangeBattery> }

/** Everything of a range but its inverters, cheapest first; made once when a range comes into force. */
export interface PreparedParts {
  readonly cables: readonly PricedCable[]
  readonly fuses: readonly Priced<RangeFuse>[]
  readonly connectors: readonly Priced<RangeConnector>[]
  readonly batteries: readonly Priced<RangeBattery>[]
  readonly bySku: ReadonlyMap<string, RangePart>
}

/**
 * Makes the parts of a range ready for kits and cart checks.
 *
 * @param document - A range that keeps the contract
 * @returns The parts, cheapest first and then by SKU
 */
export function prepareParts(document: RangeDocument): PreparedParts {
  const cables = document.cables.map(pricedCable).sort(byCost)
  const fuses = document.fuses.map(priced).sort(byCost)
  const connectors = document.connectors.map(priced).sort(byCost)
  const batteries = document.batteries.map(priced).sort(byCost)
  const bySku = new Map<string, RangePart>()
  for (const part of document.inverters) bySku.set(part.sku, { role: 'inverter', part })
  for (const cable of cables) bySku.set(cable.part.sku, { role: 'cable', part: cable.part, priced: cable })
  for (const fuse of fuses) bySku.set(fuse.part.sku, { role: 'fuse', part: fuse.part, priced: fuse })
  for (const connector of connectors) {
    bySku.set(connector.part.sku, { role: 'connector', part: connector.part, priced: connector })
  }
  for (const battery of batteries) {
    bySku.set(battery.part.sku, { role: 'battery', part: battery.part, priced: battery })
  }
  return { cables, fuses, connectors, batteries, bySku }
}

function priced<P extends PartBase>(part: P): Priced<P> {
  return { part, cost: thousandthsOf(part.price) }
}

function pricedCable(cable: RangeCable): PricedCable {
  const { areaMm2, awg, insulationC = ASSUMED_INSULATION_C } = cable
  // A document that is not checked may state both sizes: neither is then believed.
  const stated = (areaMm2 === undefined) !== (awg === undefined)
  const conductor = stated ? conductorOfSize({ areaMm2, awg }) : undefined
  const laid = { insulationC, ambientC: AMPACITY_TABLE_AMBIENT_C, inEngineSpace: false, bundledCount: 2 }
  const carries = conductor === undefined ? 0 : ampacityA({ ...laid, conductor })
  return { ...priced(cable), conductor, laid, ampacityA: carries }
}

function byCost<P extends PartBase>(a: Priced<P>, b: Priced<P>): number {
  return a.cost - b.cost || (a.part.sku < b.part.sku ? -1 : a.part.sku > b.part.sku ? 1 : 0)
}
