import type { FindingCode } from './advice/findings.ts'
import type { BatteryBank } from './battery/bank.ts'
import { fedBy } from './battery-side/fed-inverter.ts'
import { type BatteryOutlook, batteryOutlook } from './battery-side/outlook.ts'
import type { CircuitAnswer } from './circuit-side.ts'
import type { Need, Supply } from './inverters/need.ts'
import type { Demand } from './loads/demand.ts'
import type { PreparedInverter } from './range/prepare-range.ts'

/**
 * What the battery of a plan is in for with one unit.
 *
 * @param plan - Loads and supply
 * @param inverter - The unit
 * @param circuit - Its circuit at that supply
 * @param isOfUse - Asked with the codes of what is to be minded so far: false ends the work
 * @returns Run time and codes of findings; undefined where no battery is known, or it was of no use
 */
export function outlookOf(
  { demand, need: { supply } }: { readonly demand: Demand; readonly need: Pick<Need, 'supply'> },
  inverter: PreparedInverter,
  circuit: CircuitAnswer,
  isOfUse: (cares: ReadonlySet<FindingCode>) => boolean,
): BatteryOutlook | undefined {
  const bank = bankOf(supply)
  if (bank === undefined) return undefined
  const question = { demand, supply, inverter: fedBy(inverter), cableResistanceOhm: wireOhm(circuit) }
  return batteryOutlook(question, bank, isOfUse)
}

/**
 * The battery of a supply at the supply's voltage.
 *
 * @param supply - The supply
 * @returns The same bank each time that the same supply is asked for, so that its model is made once
 */
export function bankOf(supply: Supply): BatteryBank | undefined {
  if (supply.battery === undefined) return undefined
  const known = banks.get(supply)
  if (known !== undefined) return known
  const bank = { ...supply.battery, nominalV: supply.nominalV }
  banks.set(supply, bank)
  return bank
}

const banks = new WeakMap<Supply, BatteryBank>()

/**
 * Resistance of a circuit's wire.
 *
 * @param circuit - The circuit
 * @returns Both ways; 0 where no wire is large enough. [ohm]
 */
export function wireOhm({ design }: CircuitAnswer): number {
  return design.ok ? design.conductor.resistanceOhm : 0
}
