import { finding } from '../../advice/findings.ts'
import { atHandOf } from '../kit/at-hand.ts'
import type { CircuitNeed } from '../kit/circuit-need.ts'
import { connectorFor, connectorSuits, takesConnector } from '../kit/connectors.ts'
import type { OwnedPart } from '../kit/kit-types.ts'
import { type Cart, type CartFinding, cartFinding } from './cart.ts'

/** The connector of a unit's circuit. */
export interface ConnectorCheck {
  readonly findings: readonly CartFinding[]
  /** SKU of the cart's line that is used. */
  readonly used: string | undefined
}

/**
 * Checks the connector of one unit. On battery terminals none is needed, but one that is there must carry the current.
 *
 * @param cart - The lines that are left for this unit
 * @param need - The unit's circuit
 * @param unit - How many units, and what the buyer has
 * @returns Findings and what is used up
 */
export function checkConnector(
  cart: Cart,
  need: CircuitNeed,
  { quantity, owned }: { readonly quantity: number; readonly owned: readonly OwnedPart[] },
): ConnectorCheck {
  const atHand = atHandOf(cart.range, need.inverter.unit, owned)
  const enough = cart.connectors.filter((each) => each.quantity >= quantity)
  const suiting =
    atHand.connectors.find(({ connector }) => connectorSuits(need, connector.part)) ??
    enough.find(({ connector }) => connectorSuits(need, connector.part))
  if (suiting !== undefined) {
    return { findings: [], used: suiting.origin === 'buy' ? suiting.connector.part.sku : undefined }
  }
  if (atHand.unchecked.has('connector')) return { findings: [], used: undefined }
  const ofKind = [...atHand.connectors, ...enough].find(({ connector }) => connector.part.kind === need.kind)
  if (ofKind === undefined && !takesConnector(need)) return { findings: [], used: undefined }
  const { connector } = connectorFor(
    need,
    [],
    need.range.parts.connectors.filter(({ part }) => part.inStock),
  )
  const use = connector && { useSku: connector.part.sku }
  const { kind, connectorA: neededA } = need
  if (ofKind === undefined) {
    const { sku } = need.inverter.unit
    return {
      findings: [cartFinding(finding('connector-missing', 'fail', { sku, kind, neededA, ...use }))],
      used: undefined,
    }
  }
  const { sku, limitA } = ofKind.connector.part
  return {
    findings: [cartFinding(finding('connector-under-rated', 'fail', { sku, limitA, neededA, ...use }))],
    used: ofKind.origin === 'buy' ? sku : undefined,
  }
}
