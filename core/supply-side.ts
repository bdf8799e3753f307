import type { FindingCode } from './advice/findings.ts'
import { type BatteryBank, keepModel } from './battery/bank.ts'
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
 * @returns The same bank each time that the same battery is asked for, so that its model is made once
 */
export function bankOf({ battery, nominalV }: Supply): BatteryBank | undefined {
  if (battery === undefined) return undefined
  if (lastAsked?.battery === battery && lastAsked.bank.nominalV === nominalV) return lastAsked.bank
  const key = keyOf(battery, nominalV)
  const bank = banks.get(key) ?? remembered(key, { ...battery, nominalV })
  lastAsked = { battery, bank }
  return bank
}

function remembered(key: string, bank: BatteryBank): BatteryBank {
  if (banks.size >= MOST_REMEMBERED) banks.clear()
  keepModel(bank)
  banks.set(key, bank)
  return bank
}

/** All that a bank is: two with the same key are the same bank. */
function keyOf(battery: NonNullable<Supply['battery']>, nominalV: number): string {
  const { chemistry, capacityAh, hourRateH, otherRates, minSocFraction, startSocFraction } = battery
  const { temperatureC, healthFraction, maxDischargeA, internalResistanceOhm } = battery
  const rates = otherRates?.map((rate) => `${rate.hourRateH}:${rate.capacityAh}`)
  const made = `${nominalV}|${chemistry}|${capacityAh}|${hourRateH}|${rates}|${maxDischargeA}|${internalResistanceOhm}`
  return `${made}|${minSocFraction}|${startSocFraction}|${temperatureC}|${healthFraction}`
}

/** Most shoppers have one of the same few batteries, and an answer asks for it many times. */
const banks = new Map<string, BatteryBank>()
const MOST_REMEMBERED = 500
let lastAsked: { readonly battery: Supply['battery']; readonly bank: BatteryBank } | undefined

/**
 * Resistance of a circuit's wire.
 *
 * @param circuit - The circuit
 * @returns Both ways; 0 where no wire is large enough. [ohm]
 */
export function wireOhm({ design }: CircuitAnswer): number {
  return design.ok ? design.conductor.resistanceOhm : 0
}
