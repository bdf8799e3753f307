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
  /**
   * The same hours and the same codes of findings for a fraction of the work: no curve, and no search for the
   * battery that a load too long would take.
   */
  readonly outlookOnly?: boolean | undefined
}
