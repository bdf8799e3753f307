import type { SourceId } from '../tables/sources.ts'
import type { ApplianceCategory, StartKind, ThermalKind, WaveformNeed, WaveformReason } from './vocabulary.ts'

/** A figure with its spread and where it comes from. */
export interface Band {
  readonly low: number
  readonly typical: number
  readonly high: number
  readonly sourceIds: readonly SourceId[]
}

/** A figure that differs between 120 V and 230 V countries; both are always given. */
export interface MainsBands {
  readonly at120V: Band
  readonly at230V: Band
}

/** How an appliance starts. */
export interface ApplianceStart {
  readonly kind: StartKind
  /** How long the start lasts. [s] */
  readonly durationS: number
  /** Starting power as a multiple of running power; used unless `startingW` is given. */
  readonly multiple: Band
  /**
   * Starting power as measured, whatever the running power. [W] Given for refrigeration, whose real running
   * power is small while its start is not.
   */
  readonly startingW?: MainsBands
}

/** What wave form an appliance takes, and why. */
export interface ApplianceWaveform {
  readonly need: WaveformNeed
  readonly reason: WaveformReason
  readonly sourceIds: readonly SourceId[]
}

/** How an appliance is usually used. */
export interface ApplianceUse {
  /** Minutes a day that it is switched on. [min] 0..1440 */
  readonly minutesPerDay: Band
  /** Share of that time at running power. 0..1 */
  readonly dutyFraction: Band
}

/** One entry of an appliance list, the built-in one or a shop's own. */
export interface Appliance {
  readonly id: string
  readonly name: string
  readonly synonyms: readonly string[]
  readonly category: ApplianceCategory
  /** Active power taken from the mains while it runs. [W] */
  readonly inputW: MainsBands
  /** 0..1 */
  readonly powerFactor: Band
  readonly start: ApplianceStart
  /** Power taken while it waits, switched on but idle. [W] */
  readonly standbyW: Band
  readonly use: ApplianceUse
  readonly waveform: ApplianceWaveform
  readonly thermal: ThermalKind
  readonly medical: boolean
  /** True for a microwave oven, whose advertised power is what it gives the food, not what it takes. */
  readonly ratedByCookingPower?: boolean
  readonly note?: string
}
