import type { BatteryBank } from '../../battery/bank.ts'
import { bankCarries, batteryAnswer, carriesPlan } from '../../battery-side/battery-answer.ts'
import { fedBy } from '../../battery-side/fed-inverter.ts'
import { chooseInverter, judge } from '../../inverters/choose.ts'
import type { Need } from '../../inverters/need.ts'
import { type Outcome, outcomeOf, type Plan } from '../../sizing.ts'
import { banksFor, neededByChemistry } from '../kit/banks.ts'
import { circuitNeed } from '../kit/circuit-need.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import { type CartFinding, cartFinding } from './cart.ts'

/** What a unit and a bank have to carry. */
export interface LoadQuestion {
  readonly range: PreparedRange
  readonly plan: Plan
  readonly inverter: PreparedInverter
  readonly bank: BatteryBank | undefined
  /** SKUs of the batteries, where they are in the cart. */
  readonly batterySkus: readonly string[]
  readonly resistanceOhm: number
}

/** How a unit and a bank carry the loads. */
export interface LoadCheck {
  readonly findings: readonly CartFinding[]
  readonly outcome: Outcome
}

/**
 * Checks a unit of a cart, and the bank, against the loads: every check of the sizing but stock, price and wishes.
 *
 * @param question - Plan, unit, bank and cable
 * @returns Findings, each with the unit or the battery of the range that would do, and the outcome
 */
export function checkLoads(question: LoadQuestion): LoadCheck {
  const { range, plan, inverter, bank } = question
  const need = needAt(plan, inverter)
  const verdict = judge(inverter, need)
  const { sku } = inverter.unit
  const chosen = verdict.fits ? undefined : chooseInverter(range.inverters, wantedOf(plan))
  const useSku = chosen?.verdicts[chosen.chosen]?.inverter.unit.sku
  const findings: CartFinding[] = verdict.findings.map((found) =>
    found.severity === 'fail' ? { found, skus: [sku], useSku } : { found, skus: [sku] },
  )
  if (bank !== undefined && bank.nominalV === inverter.unit.inputNominalV) {
    findings.push(...batteryFindings(question, need, bank))
  }
  const beside = findings.map(({ found }) => found)
  return { findings, outcome: outcomeOf({ ...plan, need }, verdict.fits ? verdict : undefined, beside) }
}

/**
 * The unit of the range that a plan would be given.
 *
 * @param range - The range
 * @param plan - The plan
 * @returns Its SKU, or undefined where none fits
 */
export function unitFor(range: PreparedRange, plan: Plan): string | undefined {
  const { verdicts, chosen } = chooseInverter(range.inverters, wantedOf(plan))
  return verdicts[chosen]?.inverter.unit.sku
}

/** What is put forward is in stock. */
function wantedOf({ need }: Plan): Need {
  return { ...need, preferences: { inStockOnly: true } }
}

/** The unit's own voltage is told apart, and what lies in the cart is not asked for its stock. */
function needAt({ need }: Plan, { unit }: PreparedInverter): Need {
  const supply = { ...need.supply, nominalV: unit.inputNominalV }
  return { ...need, supply, preferences: { inStockOnly: false } }
}

function batteryFindings(question: LoadQuestion, need: Need, bank: BatteryBank): readonly CartFinding[] {
  const { plan, inverter, batterySkus, resistanceOhm } = question
  const { demand } = plan
  const supply = { ...need.supply, battery: bank }
  const asked = { demand, supply, inverter: fedBy(inverter), cableResistanceOhm: resistanceOhm }
  const answer = batteryAnswer(asked, bank)
  const told = answer.findings.filter(({ severity }) => severity !== 'note')
  if (told.length === 0) return []
  const skus = batterySkus.length === 0 ? [inverter.unit.sku] : batterySkus
  const useSku = carriesPlan(answer) ? undefined : batteryThatDoes({ ...question, bank, need })
  return told.map((found) => {
    const helps =
      found.severity === 'fail' || found.code === 'day-not-carried' || found.code === 'runs-too-long'
    return helps ? { ...cartFinding(found, skus), useSku } : cartFinding(found, skus)
  })
}

/**
 * The cheapest battery of the same chemistry that carries the plan, over a cable that is no worse than allowed: the
 * cart's own may be too thin.
 */
function batteryThatDoes({ range, plan, inverter, bank, need, resistanceOhm }: Unfit): string | undefined {
  const { chemistry, temperatureC } = bank
  const supply = { ...need.supply, battery: { chemistry, temperatureC, capacityAh: 1 } }
  const asked = { demand: plan.demand, supply, inverter: fedBy(inverter) }
  const { worstCaseA, nominalV, dropLimitFraction } = circuitNeed(range, inverter, supply)
  const allowedOhm = (dropLimitFraction * nominalV) / worstCaseA
  const cableResistanceOhm = Math.min(resistanceOhm, allowedOhm)
  const inStock = range.parts.batteries.filter(({ part }) => part.inStock)
  const banks = banksFor({ plan: asked, leastAh: 0, neededAh: neededByChemistry(asked) }, inStock, [
    chemistry,
  ])
  return banks.find((each) => bankCarries({ ...asked, cableResistanceOhm }, each.bank))?.block.part.sku
}

interface Unfit extends LoadQuestion {
  readonly bank: BatteryBank
  readonly need: Need
}
