import { type Finding, finding } from '../../advice/findings.ts'
import { type BatteryBank, bankModel, openCircuitV } from '../../battery/bank.ts'
import { blocksFor } from '../../battery/bank-size.ts'
import { atHandOf } from '../kit/at-hand.ts'
import { blockBank, MOST_STRINGS } from '../kit/banks.ts'
import type { BankKind, CircuitNeed } from '../kit/circuit-need.ts'
import type { OwnedPart } from '../kit/kit-types.ts'
import type { PreparedInverter } from '../prepare-range.ts'
import type { RangeBattery } from '../range-document.ts'
import type { SupplyVoltage } from '../vocabulary.ts'
import { type Cart, type CartFinding, cartFinding } from './cart.ts'

/** The battery that a cart comes to. */
export interface BankCheck {
  /** Left out where none is known or the lines make none. */
  readonly bank?: BatteryBank
  /** As much as a fuse goes by. */
  readonly kind: BankKind
  /** SKUs of the batteries. */
  readonly skus: readonly string[]
  readonly findings: readonly CartFinding[]
}

/**
 * Checks that the batteries of a cart make a bank: of one model, in whole strings, of the wanted voltage. Batteries
 * in the cart take the place of the one that the supply states.
 *
 * @param cart - The cart
 * @param wantedV - Voltage that the bank must have; left out: whatever it comes to. [V]
 * @param owned - What the buyer has
 * @returns The bank, as far as it can be told, and findings
 * @source elementary-circuits
 */
export function checkBank(
  cart: Cart,
  wantedV: SupplyVoltage | undefined,
  owned: readonly OwnedPart[],
): BankCheck {
  const { supply, batteries } = cart
  const [first, ...others] = batteries
  if (first === undefined) {
    const has = atHandOf(cart.range, undefined, owned).batteries[0]
    if (supply?.battery !== undefined) {
      const bank = { ...supply.battery, nominalV: supply.nominalV }
      return { bank, kind: bank, skus: [], findings: [] }
    }
    return has === undefined ? { kind: {}, skus: [], findings: [] } : joined(cart, wantedV, has)
  }
  if (others.length === 0) return joined(cart, wantedV, first)
  const severity = cart.units.length > 0 ? 'fail' : 'care'
  const { sku } = first.battery.part
  return {
    kind: {},
    skus: batteries.map(({ battery }) => battery.part.sku),
    findings: others.map(({ battery }) =>
      cartFinding(finding('unlike-batteries', severity, { sku: battery.part.sku, otherSku: sku })),
    ),
  }
}

function joined(
  cart: Cart,
  wantedV: SupplyVoltage | undefined,
  { battery, quantity }: Cart['batteries'][number],
): BankCheck {
  const { part } = battery
  const { sku, chemistry, capacityAh, nominalV: blockV } = part
  const nominalV = wantedV ?? blockV
  const skus = [sku]
  const blocks = blocksFor({ block: part, nominalV, capacityAh: 0 })
  if (!blocks.ok || quantity % blocks.inSeries !== 0) {
    const use = otherBlock(cart, part, nominalV)
    const values = { sku, quantity, blockV, wantedV: nominalV, ...use }
    return {
      kind: { chemistry, capacityAh: capacityAh * quantity },
      skus,
      findings: [cartFinding(finding('battery-string-mismatch', 'fail', values))],
    }
  }
  const strings = quantity / blocks.inSeries
  const stated = cart.supply?.battery
  const minSocFraction = stated?.chemistry === chemistry ? stated.minSocFraction : undefined
  const conditions = { temperatureC: stated?.temperatureC, minSocFraction }
  const made = blockBank(battery, { nominalV, inParallel: strings, conditions })
  const findings: Finding[] = []
  if (strings > MOST_STRINGS) {
    findings.push(finding('too-many-strings', 'care', { sku, strings, mostStrings: MOST_STRINGS }))
  }
  return {
    ...(made && { bank: made.bank }),
    kind: { chemistry, capacityAh: capacityAh * strings },
    skus,
    findings: findings.map((each) => cartFinding(each)),
  }
}

/** A battery of the same chemistry that is the whole bank by itself. */
function otherBlock(cart: Cart, { chemistry, sku }: RangeBattery, nominalV: SupplyVoltage) {
  const found = cart.range.parts.batteries.find(
    ({ part }) =>
      part.inStock && part.sku !== sku && part.chemistry === chemistry && part.nominalV === nominalV,
  )
  return found && { useSku: found.part.sku }
}

/**
 * Checks a bank against a unit, whatever is plugged in: its current at full power and the unit's cut-off. Too low a
 * cut-off runs the battery down further than its cells are rated for; one above the resting voltage at the lowest
 * usual charge leaves most of it unused.
 *
 * @param bank - The bank
 * @param need - The unit's circuit
 * @param skus - SKUs of the batteries, where they are in the cart
 * @returns Findings of severity `care`
 */
export function checkBankAtUnit(
  bank: BatteryBank,
  need: CircuitNeed,
  skus: readonly string[],
): readonly CartFinding[] {
  const model = bankModel(bank)
  const { sku } = need.inverter.unit
  const found: Finding[] = []
  if (need.worstCaseA > model.limitA) {
    const values = { currentA: need.worstCaseA, limitA: model.limitA, limitAssumed: !bank.maxDischargeA }
    found.push(finding('battery-below-full-power', 'care', { sku: skus[0] ?? sku, ...values }))
  }
  found.push(...cutOffFindings(bank, need.inverter, { lowestV: model.ratedEndV, soc: model.minSocFraction }))
  return found.map((each) => cartFinding(each, [sku, ...skus]))
}

function cutOffFindings(
  bank: BatteryBank,
  { unit, figures }: PreparedInverter,
  { lowestV, soc }: { readonly lowestV: number; readonly soc: number },
): readonly Finding[] {
  if (bank.nominalV !== unit.inputNominalV) return []
  const { sku } = unit
  const { cutOffV } = figures
  if (cutOffV < lowestV - 1e-6) {
    return [finding('cut-off-below-battery', 'care', { sku, cutOffV, lowestV })]
  }
  const restingV = openCircuitV({ ...bank, socFraction: soc })
  return cutOffV > restingV ? [finding('cut-off-above-battery', 'care', { sku, cutOffV, restingV })] : []
}
