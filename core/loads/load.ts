import type { WorkingStep } from '../working.ts'
import type { Rating } from './rating.ts'
import type { ApplianceCategory, StartKind, ThermalKind, WaveformNeed, WaveformReason } from './vocabulary.ts'

/** A load as somebody asks for it. */
export interface LoadRequest {
  readonly id: string
  /** Id in the appliance list. */
  readonly appliance?: string | undefined
  readonly name?: string | undefined
  /** Identical items. 1..100, default 1 */
  readonly quantity?: number | undefined
  /** Minutes a day that each is switched on. [min] 0..1440 */
  readonly minutesPerDay?: number | undefined
  readonly rating?: Rating | undefined
  /** Starting power of one item as its maker states it; takes the place of the list's figure. */
  readonly start?: { readonly startingW: number; readonly durationS?: number | undefined } | undefined
}

/** A load whose plate has been read and whose gaps are filled: figures of ONE item unless said otherwise. */
export interface Load {
  readonly id: string
  readonly name?: string | undefined
  readonly applianceId?: string | undefined
  readonly quantity: number
  /** Input power while it runs, for sizing. [W] */
  readonly runningW: number
  /** Input power while it runs, for energy. [W] */
  readonly typicalW: number
  /** Apparent power while it runs. [VA] */
  readonly runningVA: number
  /** Power while it starts; equal to `runningW` where its start needs no sizing. [W] */
  readonly startingW: number
  /** How long that lasts. [s] */
  readonly startingS: number
  readonly startKind: StartKind
  /** Minutes a day. [min] */
  readonly minutesPerDay: number
  readonly dutyFraction: number
  /** Energy a day of all items. [Wh] */
  readonly energyWhPerDay: number
  readonly waveform: WaveformNeed
  readonly waveformReason: WaveformReason
  readonly category?: ApplianceCategory | undefined
  readonly thermal: ThermalKind
  readonly medical: boolean
  /** True where the power is the appliance list's and not the plate's. */
  readonly estimated: boolean
  /** How the power was worked out. */
  readonly working: readonly WorkingStep[]
}
