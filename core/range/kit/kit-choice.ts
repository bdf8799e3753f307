import type { BatteryBank } from '../../battery/bank.ts'
import type { Preferences, Supply } from '../../inverters/need.ts'
import type { Demand } from '../../loads/demand.ts'
import type { CircuitDesign, CircuitFailure } from '../../wiring/circuit-types.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import type { BatteryChemistry } from '../vocabulary.ts'
import type { BlockBank } from './banks.ts'
import type { KitWish } from './kit-types.ts'
import type { Wiring } from './wiring.ts'

/** What a kit is put together for. */
export interface KitQuestion {
  readonly range: PreparedRange
  readonly inverter: PreparedInverter
  readonly demand: Demand
  readonly supply: Supply
  readonly preferences: Preferences
  readonly requiredContinuousW: number
  readonly wish?: KitWish | undefined
  /** The circuit that the answer names, to tell where the kit's cable is of another size. */
  readonly circuit?: CircuitDesign | CircuitFailure | undefined
  /** Resistance of cable with which the stated battery is known to carry the plan, or not to. [ohm] */
  readonly known?: { readonly carries: boolean; readonly cableResistanceOhm: number } | undefined
}

/** The battery of a kit: the buyer's, one to buy, or none that does. */
export interface ChosenBank {
  readonly origin: 'owned' | 'unchecked' | 'buy' | 'standard'
  /** Left out where nothing is known of it. */
  readonly bank?: BatteryBank | undefined
  readonly blocks?: BlockBank
  readonly chemistry: BatteryChemistry
  readonly neededCapacityAh: number
  readonly cost: number
}

/** The parts that were chosen, before they are written down as lines. */
export interface ChosenParts {
  readonly bank: ChosenBank
  /** Left out where a vehicle socket is the way. */
  readonly wiring?: Wiring
}
