import { finding, SEVERITIES } from '../../advice/findings.ts'
import type { KitRole } from '../../advice/vocabulary.ts'
import { type Outcome, type Plan, planFor } from '../../sizing.ts'
import { atHandOf } from '../kit/at-hand.ts'
import type { OwnedPart } from '../kit/kit-types.ts'
import type { PreparedRange } from '../prepare-range.ts'
import { type BankCheck, checkBank, checkBankAtUnit } from './bank-check.ts'
import {
  type Cart,
  type CartAnswer,
  type CartFinding,
  type CartInput,
  type CartResult,
  cartFinding,
  sortCart,
} from './cart.ts'
import { type CircuitCheck, checkCircuit } from './circuit-check.ts'
import { checkConnector } from './connector-check.ts'
import { checkLoads, unitFor } from './load-check.ts'
import { checkLoneParts } from './lone-parts-check.ts'

/**
 * Checks a cart: whether its lines go together, are safe, and run the loads where there are any.
 *
 * Where it holds several units, the largest takes its parts first, and the loads are taken to run on it.
 *
 * @param range - The shop's range, prepared
 * @param input - Lines, and what is known of loads, supply and parts that the buyer has
 * @returns Findings with the part that is wrong and the one that is right; or the faults of the loads
 */
export function checkCart(range: PreparedRange, input: CartInput): CartResult {
  const { loads, takeTurns, supply, owned = [] } = input
  const planned =
    loads === undefined
      ? undefined
      : planFor(range, { loads, takeTurns, supply, preferences: { inStockOnly: true } })
  if (planned !== undefined && !planned.ok) return { ok: false, faults: planned.faults }
  const plan = planned?.plan
  const cart = sortCart(range, input, plan?.demand)
  const { findings, outcome } =
    cart.units.length > 0 ? withUnits(cart, plan, owned) : withoutUnits(cart, plan, owned)
  const answer: CartAnswer = {
    ok: !findings.some(({ found }) => found.severity === 'fail'),
    findings: [...findings, ...uncheckedNotes(range, owned)].sort(bySeverity),
    unknownSkus: cart.unknownSkus,
    ...(plan && { plan }),
    ...(outcome && { outcome }),
  }
  return { ok: true, answer }
}

interface Checked {
  readonly findings: readonly CartFinding[]
  readonly outcome?: Outcome
}

function withoutUnits(cart: Cart, plan: Plan | undefined, owned: readonly OwnedPart[]): Checked {
  const bank = checkBank(cart, cart.supply?.nominalV, owned)
  const findings = [...bank.findings, ...checkLoneParts(cart, bank)]
  if (owned.some(({ role }) => role === 'inverter')) return { findings }
  const useSku = plan && unitFor(cart.range, plan)
  const missing = finding('inverter-missing', 'note', useSku === undefined ? {} : { useSku })
  return { findings: [...findings, cartFinding(missing)] }
}

function withUnits(cart: Cart, plan: Plan | undefined, owned: readonly OwnedPart[]): Checked {
  const findings: CartFinding[] = []
  const told = new Set<number>()
  let outcome: Outcome | undefined
  let left = cart
  for (const [index, unit] of cart.units.entries()) {
    const { inverter, quantity } = unit
    const { sku, inputNominalV } = inverter.unit
    const bank = checkBank(cart, inputNominalV, owned)
    if (!told.has(inputNominalV)) findings.push(...bank.findings)
    told.add(inputNominalV)
    const circuit = checkCircuit(left, unit, { bank: bank.kind, owned })
    const connector = checkConnector(left, circuit.need, { quantity, owned })
    findings.push(...voltageFindings(cart, unit, plan), ...circuit.findings, ...connector.findings)
    left = without(left, { ...circuit.used, connector: connector.used }, quantity)
    if (bank.bank !== undefined) findings.push(...checkBankAtUnit(bank.bank, circuit.need, bank.skus))
    else if (lacksBattery(cart, bank, owned) && circuit.need.kind !== 'vehicle-socket') {
      findings.push(cartFinding(finding('battery-missing', 'care', { sku })))
    }
    if (plan === undefined || index > 0) continue
    const { resistanceOhm } = circuit
    const asked = {
      range: cart.range,
      plan,
      inverter,
      bank: bank.bank,
      batterySkus: bank.skus,
      resistanceOhm,
    }
    const loads = checkLoads(asked)
    findings.push(...loads.findings)
    outcome = loads.outcome
  }
  const over = [...left.cables.map(({ cable }) => cable), ...left.fuses.map(({ fuse }) => fuse)]
  findings.push(...over.map(({ part }) => cartFinding(finding('part-left-over', 'note', { sku: part.sku }))))
  return { findings, ...(outcome && { outcome }) }
}

function voltageFindings(
  { supply, range }: Cart,
  { inverter }: Cart['units'][number],
  plan: Plan | undefined,
): readonly CartFinding[] {
  const { sku, inputNominalV } = inverter.unit
  if (supply === undefined || supply.nominalV === inputNominalV) return []
  const useSku = plan && unitFor(range, plan)
  const values = { sku, inputNominalV, supplyNominalV: supply.nominalV }
  return [
    cartFinding(
      finding('unit-voltage-mismatch', 'fail', useSku === undefined ? values : { ...values, useSku }),
    ),
  ]
}

function lacksBattery({ batteries, range }: Cart, { bank }: BankCheck, owned: readonly OwnedPart[]): boolean {
  return (
    bank === undefined && batteries.length === 0 && !atHandOf(range, undefined, owned).owned.has('battery')
  )
}

/** What is left of a cart when parts have been taken for so many units. */
function without(
  cart: Cart,
  used: CircuitCheck['used'] & { readonly connector: string | undefined },
  units: number,
): Cart {
  return {
    ...cart,
    cables: cart.cables.flatMap((line) => {
      const taken = line.cable.part.sku === used.cable?.sku ? used.cable.pairs * units : 0
      return line.pairs > taken ? [{ ...line, pairs: line.pairs - taken }] : []
    }),
    fuses: cart.fuses.flatMap((line) => {
      const taken = line.fuse.part.sku === used.fuse ? units : 0
      return line.quantity > taken ? [{ ...line, quantity: line.quantity - taken }] : []
    }),
    connectors: cart.connectors.flatMap((line) => {
      const taken = line.connector.part.sku === used.connector ? units : 0
      return line.quantity > taken ? [{ ...line, quantity: line.quantity - taken }] : []
    }),
  }
}

function uncheckedNotes(range: PreparedRange, owned: readonly OwnedPart[]): readonly CartFinding[] {
  const { unchecked } = atHandOf(range, undefined, owned)
  return [...unchecked].map((role: KitRole) => cartFinding(finding('owned-unchecked', 'note', { role })))
}

function bySeverity(a: CartFinding, b: CartFinding): number {
  return SEVERITIES.indexOf(a.found.severity) - SEVERITIES.indexOf(b.found.severity)
}
