import { assumedFigures, type InverterFigures } from '../inverters/figures.ts'
import type { Appliance } from '../loads/appliance.ts'
import { type ListedAppliance, listedAt } from '../loads/listed-appliance.ts'
import { type PreparedParts, prepareParts } from './kit/parts.ts'
import { type FullPolicy, policyOf } from './policy.ts'
import type { Inverter, RangeDocument } from './range-document.ts'

/** An inverter with every left-out figure filled in and its price as a number. */
export interface PreparedInverter {
  readonly unit: Inverter
  readonly figures: InverterFigures
  readonly priceNumber: number
}

/** A range made ready for answering: done once when a range comes into force. */
export interface PreparedRange {
  readonly document: RangeDocument
  readonly version: number
  readonly policy: FullPolicy
  /** In the order of choice: smallest first, ties as {@link byChoice}. */
  readonly inverters: readonly PreparedInverter[]
  /** The built-in appliance list and the shop's own entries, the shop's winning, at the shop's mains voltage. */
  readonly appliances: ReadonlyMap<string, ListedAppliance>
  /** Batteries, cables, fuses and connectors, cheapest first. */
  readonly parts: PreparedParts
}

/**
 * Makes a range ready for answering.
 *
 * @param document - A range that keeps the contract
 * @param builtIn - The built-in appliance list
 * @param version - Number of this version of the range
 * @returns The prepared range
 */
export function prepareRange(
  document: RangeDocument,
  builtIn: readonly Appliance[],
  version: number,
): PreparedRange {
  const inverters = document.inverters.map((unit) => ({
    unit,
    figures: assumedFigures(unit),
    priceNumber: Number(unit.price),
  }))
  const { shop } = document
  const appliances = new Map<string, ListedAppliance>()
  for (const appliance of [...builtIn, ...(shop.appliances ?? [])]) {
    appliances.set(appliance.id, listedAt(appliance, shop.mains.nominalV))
  }
  return {
    document,
    version,
    policy: policyOf(shop),
    inverters: inverters.sort(byChoice),
    appliances,
    parts: prepareParts(document),
  }
}

/**
 * The order of choice: smaller continuous power, then lower price, then lower idle draw, then the SKU.
 *
 * @param a - One inverter
 * @param b - Another
 * @returns Negative where `a` comes first; never 0 for two SKUs
 */
export function byChoice(a: PreparedInverter, b: PreparedInverter): number {
  return (
    a.unit.continuousW - b.unit.continuousW ||
    a.priceNumber - b.priceNumber ||
    a.figures.idleW - b.figures.idleW ||
    (a.unit.sku < b.unit.sku ? -1 : a.unit.sku > b.unit.sku ? 1 : 0)
  )
}
