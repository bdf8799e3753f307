import type { BatteryBank } from '../battery/bank.ts'
import { type DayPlan, planDay } from '../battery/day-plan.ts'
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
export function dayOf({ demand, inverter, cableResistanceOhm }: BatteryQuestion, bank: BatteryBank): DayPlan {
  return planDay({
    bank,
    inverter: lossesOf(inverter),
    loads: plannedLoads(demand),
    idleHours: Math.max(0, hoursSwitchedOn(demand) - busyHours(demand)),
    cutOffV: inverter.cutOffV,
    cableResistanceOhm,
  })
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
    const hours = (load.minutesPerDay * load.dutyFraction) / 60
    energyWh += hours * dcPower(inverter, load.quantity * load.typicalW)
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

function plannedLoads(demand: Demand) {
  return demand.loads.map((load) => ({
    id: load.id,
    powerW: load.quantity * load.typicalW,
    minutes: load.minutesPerDay,
    dutyFraction: load.dutyFraction,
  }))
}

function busyHours(demand: Demand): number {
  return demand.loads.reduce((sum, load) => sum + (load.minutesPerDay * load.dutyFraction) / 60, 0)
}
