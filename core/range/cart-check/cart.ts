import type { Finding } from '../../advice/findings.ts'
import type { Supply } from '../../inverters/need.ts'
import type { Demand } from '../../loads/demand.ts'
import type { LoadRequest } from '../../loads/load.ts'
import type { Outcome, Plan, PlanFault } from '../../sizing.ts'
import type { ConnectorAtHand } from '../kit/connectors.ts'
import type { OwnedPart } from '../kit/kit-types.ts'
import type { Priced } from '../kit/parts.ts'
import type { PartsAtHand } from '../kit/wiring.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import type { RangeBattery } from '../range-document.ts'

/** One line of a cart. */
export interface CartLine {
  readonly sku: string
  /** 1..100 */
  readonly quantity: number
}

/** A cart, what it is to run and what is there beside it. */
export interface CartInput {
  readonly lines: readonly CartLine[]
  readonly loads?: readonly LoadRequest[] | undefined
  readonly takeTurns?: readonly (readonly string[])[] | undefined
  readonly supply?: Supply | undefined
  /** Parts that the buyer has and that are not in the cart. */
  readonly owned?: readonly OwnedPart[] | undefined
}

/** Something that is wrong with a cart, or worth knowing. */
export interface CartFinding {
  readonly found: Finding
  /** Parts that it is about, as far as they are named. */
  readonly skus: readonly string[]
  /** Part of the range that is right, where there is one. */
  readonly useSku?: string | undefined
}

/** What a cart comes to. */
export interface CartAnswer {
  /** Nothing fails. */
  readonly ok: boolean
  /** Gravest first. */
  readonly findings: readonly CartFinding[]
  readonly unknownSkus: readonly string[]
  /** Only where loads are given. */
  readonly plan?: Plan
  /** Only where loads are given and the cart holds a unit. */
  readonly outcome?: Outcome
}

/** A cart's answer, or every fault of its loads. */
export type CartResult =
  | { readonly ok: true; readonly answer: CartAnswer }
  | { readonly ok: false; readonly faults: readonly PlanFault[] }

/** The lines of a cart by what they are. */
export interface Cart {
  readonly range: PreparedRange
  readonly supply: Supply | undefined
  readonly demand: Demand | undefined
  /** Largest first. */
  readonly units: readonly { readonly inverter: PreparedInverter; readonly quantity: number }[]
  readonly batteries: readonly { readonly battery: Priced<RangeBattery>; readonly quantity: number }[]
  readonly cables: PartsAtHand['cables']
  readonly fuses: readonly (PartsAtHand['fuses'][number] & { readonly quantity: number })[]
  readonly connectors: readonly (ConnectorAtHand & { readonly quantity: number })[]
  readonly unknownSkus: readonly string[]
}

/**
 * Sorts the lines of a cart; lines of one SKU are added up.
 *
 * @param range - The range
 * @param input - The cart
 * @param demand - What the loads ask for, where there are loads
 * @returns Parts by role; SKUs that the range does not have apart
 */
export function sortCart(range: PreparedRange, input: CartInput, demand: Demand | undefined): Cart {
  const quantities = new Map<string, number>()
  for (const { sku, quantity } of input.lines) quantities.set(sku, (quantities.get(sku) ?? 0) + quantity)
  const units: Cart['units'][number][] = []
  const batteries: Cart['batteries'][number][] = []
  const cables: Cart['cables'][number][] = []
  const fuses: Cart['fuses'][number][] = []
  const connectors: Cart['connectors'][number][] = []
  const unknownSkus: string[] = []
  for (const [sku, quantity] of quantities) {
    const entry = range.parts.bySku.get(sku)
    switch (entry?.role) {
      case 'inverter': {
        const inverter = range.inverters.find(({ unit }) => unit.sku === sku)
        if (inverter !== undefined) units.push({ inverter, quantity })
        break
      }
      case 'battery':
        batteries.push({ battery: entry.priced, quantity })
        break
      case 'cable':
        cables.push({ cable: entry.priced, pairs: quantity, origin: 'buy' })
        break
      case 'fuse':
        fuses.push({ fuse: entry.priced, origin: 'buy', quantity })
        break
      case 'connector':
        connectors.push({ connector: entry.priced, origin: 'buy', quantity })
        break
      default:
        unknownSkus.push(sku)
    }
  }
  units.sort((a, b) => b.inverter.unit.continuousW - a.inverter.unit.continuousW)
  return { range, supply: input.supply, demand, units, batteries, cables, fuses, connectors, unknownSkus }
}

/**
 * Ties a finding about a cart to the parts that it names.
 *
 * @param found - The finding
 * @param skus - Parts that it is about; left out: those in its values
 * @returns The finding with its parts
 */
export function cartFinding(found: Finding, skus?: readonly string[]): CartFinding {
  const values: Readonly<Record<string, unknown>> = { ...found.values }
  const named = [values.sku, values.otherSku].filter((sku) => typeof sku === 'string')
  const useSku = typeof values.useSku === 'string' ? values.useSku : undefined
  return { found, skus: skus ?? named, useSku }
}
