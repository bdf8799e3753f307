import type { BatteryBank } from '../../battery/bank.ts'
import { blocksFor, joinedBank } from '../../battery/bank-size.ts'
import { neededBank } from '../../battery-side/needed-bank.ts'
import type { BatteryQuestion } from '../../battery-side/question.ts'
import type { RangeBattery } from '../range-document.ts'
import { BATTERY_CHEMISTRIES, type BatteryChemistry, type SupplyVoltage } from '../vocabulary.ts'
import type { Priced } from './parts.ts'

/** Blocks of one model joined to a bank. */
export interface BlockBank {
  readonly block: Priced<RangeBattery>
  readonly inSeries: number
  readonly inParallel: number
  readonly bank: BatteryBank
  /** Of all blocks, in thousandths. */
  readonly cost: number
}

/** Most strings side by side: more share the current badly. Source: common-practice */
export const MOST_STRINGS = 4

/** Shortest discharge time for which a stated capacity can be used. [h] As the battery model has it. */
const SHORTEST_RATE_H = 0.5

/**
 * Chemistries in the order in which a bank is looked for: the buyer's own and no other; where none is named,
 * AGM, which the needed bank is told for, then those that need no care, then flooded, which gives off gas.
 *
 * @param named - The buyer's chemistry, where known
 * @returns Groups; a later one counts only where the range has nothing in those before
 */
export function chemistryGroups(
  named: BatteryChemistry | undefined,
): readonly (readonly BatteryChemistry[])[] {
  if (named !== undefined) return [[named]]
  const rest = BATTERY_CHEMISTRIES.filter((each) => each !== 'agm' && each !== 'flooded')
  return [['agm'], rest, ['flooded']]
}

/**
 * Blocks of a model joined to a bank of a voltage.
 *
 * @param block - The model
 * @param joined.nominalV - Voltage of the bank. [V]
 * @param joined.inParallel - Strings side by side. 1..100
 * @param joined.conditions - Temperature and lowest charge that the buyer states
 * @returns The bank; undefined where blocks of this voltage don't add up to it, or the model can't be reckoned
 */
export function blockBank(
  block: Priced<RangeBattery>,
  joined: {
    readonly nominalV: SupplyVoltage
    readonly inParallel: number
    readonly conditions: Pick<BatteryBank, 'temperatureC' | 'minSocFraction'>
  },
): BlockBank | undefined {
  const { part } = block
  const { nominalV, inParallel, conditions } = joined
  const blocks = blocksFor({ block: part, nominalV, capacityAh: 0 })
  if (!blocks.ok || part.hourRateH < SHORTEST_RATE_H) return undefined
  const { inSeries } = blocks
  const { chemistry, capacityAh, hourRateH, otherRates, maxDischargeA, internalResistanceOhm } = part
  const one: BatteryBank = {
    nominalV: part.nominalV,
    chemistry,
    capacityAh,
    hourRateH,
    otherRates,
    maxDischargeA,
    internalResistanceOhm,
    ...conditions,
  }
  return {
    block,
    inSeries,
    inParallel,
    bank: joinedBank(one, { inSeries, inParallel }),
    cost: block.cost * inSeries * inParallel,
  }
}

/** What a bank of the range has to be. */
export interface BankQuestion {
  readonly plan: Omit<BatteryQuestion, 'cableResistanceOhm'>
  /** Least capacity that the buyer asks for beside what the plan takes. [Ah] */
  readonly leastAh: number
  /** Capacity that the plan takes of a new bank of a chemistry. [Ah] */
  readonly neededAh: (chemistry: BatteryChemistry) => number
}

/**
 * Every bank of the range that has the capacity for a plan, cheapest first, then fewest blocks, then the SKU.
 * Whether it bears the currents goes by the cable and is left to the caller.
 *
 * @param question - Plan, unit and supply
 * @param batteries - Models that may be bought
 * @param chemistries - Which of them count
 * @returns Banks of 1 to 4 strings
 * @source ieee-1013
 */
export function banksFor(
  { plan, leastAh, neededAh }: BankQuestion,
  batteries: readonly Priced<RangeBattery>[],
  chemistries: readonly BatteryChemistry[],
): readonly BlockBank[] {
  const found: BlockBank[] = []
  const { nominalV } = plan.supply
  for (const chemistry of chemistries) {
    const conditions = conditionsOf(plan, chemistry)
    const atLeastAh = Math.max(leastAh, neededAh(chemistry))
    for (const block of batteries) {
      if (block.part.chemistry !== chemistry) continue
      const fewest = Math.max(1, Math.ceil(atLeastAh / block.part.capacityAh - 1e-9))
      for (let inParallel = fewest; inParallel <= MOST_STRINGS; inParallel += 1) {
        const made = blockBank(block, { nominalV, inParallel, conditions })
        if (made !== undefined) found.push(made)
      }
    }
  }
  return found.sort(
    (a, b) =>
      a.cost - b.cost ||
      a.inSeries * a.inParallel - b.inSeries * b.inParallel ||
      (a.block.part.sku < b.block.part.sku ? -1 : 1),
  )
}

/**
 * The capacity that a plan takes of a new bank, worked out once a chemistry, however many banks are looked at.
 *
 * @param plan - Plan, unit and supply
 * @returns As {@link neededBank} has it for a chemistry, without the age of the buyer's own battery. [Ah]
 */
export function neededByChemistry(plan: BankQuestion['plan']): BankQuestion['neededAh'] {
  const known = new Map<BatteryChemistry, number>()
  return (chemistry) => {
    const capacityAh = known.get(chemistry) ?? neededOf(plan, chemistry)
    known.set(chemistry, capacityAh)
    return capacityAh
  }
}

function neededOf(plan: BankQuestion['plan'], chemistry: BatteryChemistry): number {
  const { supply } = plan
  const battery = { ...conditionsOf(plan, chemistry), chemistry, capacityAh: 1 }
  return neededBank({ ...plan, supply: { ...supply, battery } }).size.capacityAh
}

/** The temperature is the place's; the lowest charge is the chemistry's. */
function conditionsOf({ supply }: BankQuestion['plan'], chemistry: BatteryChemistry) {
  const { battery } = supply
  const minSocFraction = battery?.chemistry === chemistry ? battery.minSocFraction : undefined
  return { temperatureC: battery?.temperatureC, minSocFraction }
}
