import type { BatteryBank } from '../battery/bank.ts'
import type { Supply } from '../inverters/need.ts'
import type { Demand } from '../loads/demand.ts'
import type { FedInverter } from './fed-inverter.ts'

/** What the battery side of an answer is worked out from. */
export interface BatteryQuestion {
  readonly demand: Demand
  readonly supply: Supply
  readonly inverter: FedInverter
  /** Both ways, at full power. [ohm] */
  readonly cableResistanceOhm: number
}

/** A steady power that a battery is asked for. */
export interface SteadyQuestion {
  readonly bank: BatteryBank
  /** At the inverter's input: what it has to last with, the most while loads run, and the most of a start. [W] */
  readonly dcPowerW: number
  readonly dcPowerRunningW: number
  readonly dcPowerStartingW: number
  readonly cutOffV?: number | undefined
  readonly cableResistanceOhm?: number | undefined
}
