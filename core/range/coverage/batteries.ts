import { bankCarries } from '../../battery-side/battery-answer.ts'
import { fedBy } from '../../battery-side/fed-inverter.ts'
import type { Demand } from '../../loads/demand.ts'
import { type BlockBank, blockBank } from '../kit/banks.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import { SUPPLY_VOLTAGES, type SupplyVoltage } from '../vocabulary.ts'
import type { BatteryCoverage, CoverageOptions } from './coverage-types.ts'
import type { EverydayPlan } from './everyday-plans.ts'

/** An everyday plan with the unit that is recommended for it. */
export interface TriedPlan {
  readonly id: string
  readonly kind: EverydayPlan['kind']
  readonly demand: Demand
  readonly nominalV: SupplyVoltage
  readonly inverter: PreparedInverter
  /** Both ways. [ohm] */
  readonly cableResistanceOhm: number
}

/** Most trials of battery and plan, each a fraction of a millisecond; past this only combinations are tried. */
const MOST_TRIALS = 20_000

/** Trials in one step. */
const TRIALS_PER_STEP = 8

/**
 * Which batteries carry which plans for the time that they run in a day: full, new and at 25 degC, one string
 * of the blocks that add up to the supply voltage.
 *
 * @param range - The range, prepared
 * @param options - Whether only what is in stock counts
 * @param tried - Plans with the unit that is recommended for each
 * @returns A generator that yields now and then and returns a line for each battery and voltage
 * @source battery-model-fit
 */
export function* triedBatteries(
  { parts }: PreparedRange,
  { inStockOnly }: CoverageOptions,
  tried: readonly TriedPlan[],
): Generator<undefined, readonly BatteryCoverage[], undefined> {
  const banks = parts.batteries
    .filter(({ part }) => part.inStock || !inStockOnly)
    .flatMap((block) =>
      SUPPLY_VOLTAGES.flatMap((nominalV) => {
        const made = blockBank(block, { nominalV, inParallel: 1, conditions: {} })
        return made === undefined ? [] : [{ nominalV, made }]
      }),
    )
  const served = new Set(tried.map(({ nominalV }) => nominalV))
  const many = banks.length * tried.length > MOST_TRIALS * served.size
  const covered: BatteryCoverage[] = []
  let trials = 0
  for (const { nominalV, made } of banks) {
    if (!served.has(nominalV)) continue
    const plans = tried.filter((plan) => plan.nominalV === nominalV && (plan.kind === 'combination' || !many))
    const shortPlanIds: string[] = []
    for (const plan of plans) {
      if (!carries(plan, made)) shortPlanIds.push(plan.id)
      trials += 1
      if (trials % TRIALS_PER_STEP === 0) yield
    }
    const { sku } = made.block.part
    covered.push({ sku, nominalV, inSeries: made.inSeries, plans: plans.length, shortPlanIds })
  }
  return covered
}

function carries(plan: TriedPlan, { bank }: BlockBank): boolean {
  const { demand, inverter, nominalV, cableResistanceOhm } = plan
  const question = { demand, supply: { nominalV }, inverter: fedBy(inverter), cableResistanceOhm }
  return bankCarries(question, bank)
}
