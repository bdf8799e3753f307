import { type BatteryBank, bankModel } from '../battery/bank.ts'
import {
  type DayOutlook,
  type DayPlan,
  dayOutlook,
  dayStretches,
  planDay,
  type Stretch,
} from '../battery/day-plan.ts'
import type { Demand } from '../loads/demand.ts'
import type { Load } from '../loads/load.ts'
import { dcPower, type FedInverter, lossesOf } from './fed-inverter.ts'
import type { BatteryQuestion } from './question.ts'

/**
 * The day's plan run down on a battery, the unit switched on as long as any load is.
 *
 * @param question - Demand, unit and cable
 * @param bank - The battery
 * @returns The day
 * @source battery-model-fit
 */
export function dayOf(question: BatteryQuestion, bank: BatteryBank): DayPlan {
  const { inverter, cableResistanceOhm } = question
  return planDay({ bank, ...plannedOf(question), cutOffV: inverter.cutOffV, cableResistanceOhm })
}

/**
 * Whether {@link dayOf} is carried, for less.
 *
 * @param question - Demand, unit and cable
 * @param bank - The battery
 * @returns The verdict, and the charge that is left
 * @source battery-model-fit
 */
export function dayOutlookOf(question: BatteryQuestion, bank: BatteryBank): DayOutlook {
  const { inverter, cableResistanceOhm } = question
  const stretches = stretchesOf(question)
  return dayOutlook(bankModel(bank), stretches, { cutOffV: inverter.cutOffV, cableOhm: cableResistanceOhm })
}

/**
 * Candidates of one question have most loads and units in common, and a day does not depend on who takes turns.
 * Only the last few, in a map that is replaced: what is held weakly, or was in a map that has been cleared, stays
 * until the next full collection of garbage.
 */
let stretchesByLoads = new Map<readonly Load[], Map<FedInverter, readonly Stretch[]>>()
const MOST_REMEMBERED = 16

function stretchesOf(question: BatteryQuestion): readonly Stretch[] {
  const { demand, inverter } = question
  const kept = stretchesByLoads.get(demand.loads) ?? remembered(demand.loads)
  const known = kept.get(inverter)
  if (known !== undefined) return known
  const made = dayStretches(plannedOf(question))
  kept.set(inverter, made)
  return made
}

function remembered(loads: readonly Load[]): Map<FedInverter, readonly Stretch[]> {
  if (stretchesByLoads.size >= MOST_REMEMBERED) stretchesByLoads = new Map()
  const kept = new Map<FedInverter, readonly Stretch[]>()
  stretchesByLoads.set(loads, kept)
  return kept
}

function plannedOf({ demand, inverter }: BatteryQuestion) {
  const idleHours = Math.max(0, hoursSwitchedOn(demand) - busyHours(demand))
  return { inverter: lossesOf(inverter), loads: plannedLoads(demand), idleHours }
}

/**
 * Energy at the battery of a day's plan: each load through the unit, idle draw while it waits.
 *
 * @param demand - The loads
 * @param inverter - The unit
 * @returns Energy. [Wh]
 * @source cec-inverter-tests
 */
export function dayEnergyWh(demand: Demand, inverter: FedInverter): number {
  const idleW = dcPower(inverter, 0)
  let energyWh = idleW * Math.max(0, hoursSwitchedOn(demand) - busyHours(demand))
  for (const load of demand.loads) {
    energyWh += drawnHours(load) * dcPower(inverter, load.quantity * load.typicalW)
  }
  return energyWh
}

/**
 * Time that the unit is on in a day: as long as the load that is on for longest.
 *
 * @param demand - The loads
 * @returns Time. [h] 0..24
 */
export function hoursSwitchedOn(demand: Demand): number {
  return Math.min(24, Math.max(...demand.loads.map((load) => load.minutesPerDay)) / 60)
}

/**
 * The load that draws most, all its items together, at typical power.
 *
 * @param demand - The loads
 * @returns The load; undefined of none
 */
export function heaviestLoad({ loads }: Demand): Load | undefined {
  const [first, ...rest] = loads
  return first && rest.reduce((most, load) => (drawnW(load) > drawnW(most) ? load : most), first)
}

/**
 * Typical power of all items of a load.
 *
 * @param load - The load
 * @returns Power. [W]
 */
export function drawnW({ quantity, typicalW }: Load): number {
  return quantity * typicalW
}

/**
 * Time in a day that a load draws its power.
 *
 * @param load - The load
 * @returns Time. [h] 0..24
 */
export function drawnHours({ minutesPerDay, dutyFraction }: Load): number {
  return (minutesPerDay * dutyFraction) / 60
}

function plannedLoads(demand: Demand) {
  return demand.loads.map((load) => ({
    id: load.id,
    powerW: load.quantity * load.typicalW,
    minutes: load.minutesPerDay,
    dutyFraction: load.dutyFraction,
  }))
}

function busyHours(demand: Demand): number {
  return demand.loads.reduce((sum, load) => sum + drawnHours(load), 0)
}
