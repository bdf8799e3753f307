import type { Appliance, Band, MainsBands } from './appliance.ts'
import {
  type ApplianceCategory,
  mainsFamilyFor,
  type StartKind,
  type ThermalKind,
  type WaveformNeed,
  type WaveformReason,
} from './vocabulary.ts'

/** An appliance at one mains voltage, one figure a quantity: what adding up loads takes, here and in a page. */
export interface ListedAppliance {
  readonly id: string
  readonly name: string
  readonly synonyms: readonly string[]
  readonly category: ApplianceCategory
  /** The high figure, for sizing where no plate is read. [W] */
  readonly sizingW: number
  /** [W] */
  readonly typicalW: number
  readonly powerFactor: number
  readonly startKind: StartKind
  /** [s] */
  readonly startS: number
  readonly startMultiple: number
  /** Measured starting power, whatever the running power. [W] */
  readonly startingW?: number | undefined
  readonly minutesPerDay: number
  readonly dutyFraction: number
  readonly waveform: WaveformNeed
  readonly waveformReason: WaveformReason
  readonly thermal: ThermalKind
  readonly medical: boolean
  readonly ratedByCookingPower: boolean
}

/**
 * An appliance's figures at a shop's mains voltage.
 *
 * Sizing takes the high running figure and the high measured start, energy the typical figure. A start given
 * as a multiple takes the typical one: the high multiples were seen on the smallest units and would be
 * counted twice on a high running figure.
 *
 * @param appliance - An entry of an appliance list
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns One figure for each quantity
 */
export function listedAt(appliance: Appliance, mainsV: number): ListedAppliance {
  const { start, use, waveform } = appliance
  const at = (bands: MainsBands): Band => bands[mainsFamilyFor(mainsV)]
  return {
    id: appliance.id,
    name: appliance.name,
    synonyms: appliance.synonyms,
    category: appliance.category,
    sizingW: at(appliance.inputW).high,
    typicalW: at(appliance.inputW).typical,
    powerFactor: appliance.powerFactor.typical,
    startKind: start.kind,
    startS: start.durationS,
    startMultiple: start.multiple.typical,
    ...(start.startingW === undefined ? {} : { startingW: at(start.startingW).high }),
    minutesPerDay: use.minutesPerDay.typical,
    dutyFraction: use.dutyFraction.typical,
    waveform: waveform.need,
    waveformReason: waveform.reason,
    thermal: appliance.thermal,
    medical: appliance.medical,
    ratedByCookingPower: appliance.ratedByCookingPower ?? false,
  }
}

/**
 * The low figure of an appliance's input power: smaller ones are hardly to be had.
 *
 * @param appliance - An entry of an appliance list
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns Power. [W]
 */
export function leastInputW({ inputW }: Appliance, mainsV: number): number {
  return inputW[mainsFamilyFor(mainsV)].low
}
