import type {
  ApplianceStart,
  ApplianceUse,
  ApplianceWaveform,
  Band,
  MainsBands,
} from '../../loads/appliance.ts'
import type { StartKind, WaveformNeed, WaveformReason } from '../../loads/vocabulary.ts'
import type { SourceId } from '../sources.ts'

/*
 * The short notation of the appliance tables: arguments by position, so that an entry stays readable.
 */

/**
 * A figure with its spread, written on one line.
 *
 * @param low - Low figure, in the unit of the field it stands in.
 * @param typical - Typical figure.
 * @param high - High figure.
 * @param sourceIds - Where the figures come from.
 * @returns The band.
 */
export function band(low: number, typical: number, high: number, ...sourceIds: readonly SourceId[]): Band {
  return { low, typical, high, sourceIds }
}

/**
 * The same band in 120 V and 230 V countries.
 *
 * @param both - The band. [W]
 * @returns The band for both families of mains voltage.
 */
export function anyMains(both: Band): MainsBands {
  return { at120V: both, at230V: both }
}

/**
 * A start as a multiple of running power.
 *
 * @param kind - How it starts.
 * @param durationS - How long. [s]
 * @param multiple - Starting power over running power.
 * @returns The start.
 */
export function startOf(kind: StartKind, durationS: number, multiple: Band): ApplianceStart {
  return { kind, durationS, multiple }
}

/**
 * A measured compressor start: watts, whatever the running watts.
 *
 * @param durationS - How long. [s]
 * @param multiple - Starting power over running power, as measured.
 * @param startingW - Starting power. [W]
 * @returns The start.
 */
export function measuredCompressorStart(
  durationS: number,
  multiple: Band,
  startingW: MainsBands,
): ApplianceStart {
  return { kind: 'compressor', durationS, multiple, startingW }
}

/**
 * Minutes a day, and the share of them at running power.
 *
 * @param minutesPerDay - Minutes a day switched on. [min] 0..1440
 * @param dutyFraction - Share of that time at running power. 0..1
 * @returns The use.
 */
export function useOf(minutesPerDay: Band, dutyFraction: Band): ApplianceUse {
  return { minutesPerDay, dutyFraction }
}

/**
 * What wave form an appliance takes, and why.
 *
 * @param need - The mildest wave form that does.
 * @param reason - Why.
 * @param sourceIds - Where that comes from.
 * @returns The wave-form need.
 */
export function waveformOf(
  need: WaveformNeed,
  reason: WaveformReason,
  ...sourceIds: readonly SourceId[]
): ApplianceWaveform {
  return { need, reason, sourceIds }
}
