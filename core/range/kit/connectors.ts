import type { RangeConnector } from '../range-document.ts'
import type { PartOrigin } from './cables.ts'
import type { CircuitNeed } from './circuit-need.ts'
import type { Priced } from './parts.ts'

/** A connector in a circuit. */
export interface PlacedConnector {
  readonly origin: PartOrigin
  /** Left out where the range does not hold it. */
  readonly connector?: Priced<RangeConnector>
}

/** A connector that is there already. */
export interface ConnectorAtHand {
  readonly connector: Priced<RangeConnector>
  readonly origin: PartOrigin
}

/**
 * Whether a circuit has a connector of its own. On battery terminals the cable's own lugs are bolted on.
 *
 * @param need - The circuit
 * @returns True for a vehicle socket and for a quick connector
 */
export function takesConnector(need: CircuitNeed): boolean {
  return need.kind !== 'battery-terminals'
}

/**
 * Whether a connector is of the circuit's kind and carries its current.
 *
 * @param need - The circuit
 * @param connector - The connector
 * @returns True where it suits
 */
export function connectorSuits(need: CircuitNeed, { kind, limitA }: RangeConnector): boolean {
  return kind === need.kind && limitA >= need.connectorA
}

/**
 * The connector of a circuit: one that is there already, or the cheapest of the range.
 *
 * @param need - The circuit
 * @param atHand - Connectors that are there already, the one to use first first
 * @param connectors - Connectors that may be bought, cheapest first
 * @returns The connector; origin `standard` where none suits
 */
export function connectorFor(
  need: CircuitNeed,
  atHand: readonly ConnectorAtHand[],
  connectors: readonly Priced<RangeConnector>[],
): PlacedConnector {
  const there = atHand.find(({ connector }) => connectorSuits(need, connector.part))
  if (there !== undefined) return there
  const bought = connectors.find(({ part }) => connectorSuits(need, part))
  return bought === undefined ? { origin: 'standard' } : { origin: 'buy', connector: bought }
}
