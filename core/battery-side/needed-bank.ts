import { type BankSize, bankFor } from '../battery/bank-size.ts'
import type { BatteryChemistry, SupplyVoltage } from '../range/vocabulary.ts'
import { dcPower } from './fed-inverter.ts'
import { dayEnergyWh } from './plan-day.ts'
import type { BatteryQuestion } from './question.ts'

/** Capacity that a plan takes, whatever battery there is. */
export interface NeededBank {
  readonly chemistry: BatteryChemistry
  readonly nominalV: SupplyVoltage
  readonly days: number
  /** Energy at the battery in a day. [Wh] */
  readonly energyWhPerDay: number
  readonly size: BankSize
}

/** Taken for a battery that nobody has named yet: the most forgiving of the common ones. */
const UNNAMED_CHEMISTRY: BatteryChemistry = 'agm'

/** Loads wanted for at least this long a day count as steady when a bank is sized by its current. [min] */
const STEADY_MINUTES = 30

/**
 * The bank that a plan takes for its days without recharge.
 *
 * @param question - Demand, supply, unit and cable
 * @returns Capacity for the buyer's chemistry, or for the one taken where none is named
 * @source ieee-1013
 */
export function neededBank({
  demand,
  supply,
  inverter,
}: Omit<BatteryQuestion, 'cableResistanceOhm'>): NeededBank {
  const chemistry = supply.battery?.chemistry ?? UNNAMED_CHEMISTRY
  const days = supply.autonomyDays ?? 1
  const energyWhPerDay = dayEnergyWh(demand, inverter)
  const steadyW = demand.loads
    .filter((load) => load.minutesPerDay * load.dutyFraction >= STEADY_MINUTES)
    .reduce((sum, load) => sum + load.quantity * load.typicalW, 0)
  const size = bankFor({
    energyWhPerDay,
    days,
    chemistry,
    nominalV: supply.nominalV,
    minSocFraction: supply.battery?.minSocFraction,
    temperatureC: supply.battery?.temperatureC,
    endOfLifeFraction: supply.battery?.healthFraction,
    peakDcPowerW: steadyW === 0 ? 0 : dcPower(inverter, Math.min(steadyW, demand.typicalRunningW)),
  })
  return { chemistry, nominalV: supply.nominalV, days, energyWhPerDay, size }
}
