import { assumedFigures, type InverterFigures } from '../inverters/figures.ts'
import type { Appliance } from '../loads/appliance.ts'
import { type ListedAppliance, leastInputW, listedAt } from '../loads/listed-appliance.ts'
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
  /** Power below which each of them is hardly to be had. [W] */
  readonly leastInputsW: ReadonlyMap<string, number>
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
  const { appliances, leastInputsW } = withOwn(builtInAt(builtIn, shop.mains.nominalV), shop)
  return {
    document,
    version,
    policy: policyOf(shop),
    inverters: inverters.sort(byChoice),
    appliances,
    leastInputsW,
    parts: prepareParts(document),
  }
}

type Listed = Pick<PreparedRange, 'appliances' | 'leastInputsW'>

const listedBuiltIn = new WeakMap<readonly Appliance[], Map<number, Listed>>()

/** The built-in list at a mains voltage, one for all shops of that voltage: it would be most of what a range takes. */
function builtInAt(builtIn: readonly Appliance[], mainsV: number): Listed {
  const lists = listedBuiltIn.get(builtIn) ?? new Map<number, Listed>()
  listedBuiltIn.set(builtIn, lists)
  const listed = lists.get(mainsV) ?? listedOf(builtIn, mainsV)
  lists.set(mainsV, listed)
  return listed
}

function withOwn(listed: Listed, { appliances = [], mains }: RangeDocument['shop']): Listed {
  if (appliances.length === 0) return listed
  const own = listedOf(appliances, mains.nominalV)
  return {
    appliances: new Map([...listed.appliances, ...own.appliances]),
    leastInputsW: new Map([...listed.leastInputsW, ...own.leastInputsW]),
  }
}

function listedOf(list: readonly Appliance[], mainsV: number): Listed {
  return {
    appliances: new Map(list.map((appliance) => [appliance.id, listedAt(appliance, mainsV)])),
    leastInputsW: new Map(list.map((appliance) => [appliance.id, leastInputW(appliance, mainsV)])),
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
