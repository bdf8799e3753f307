import type { WorkingStep } from '../working.ts'
import type { ListedAppliance } from './listed-appliance.ts'
import type { Load, LoadRequest } from './load.ts'
import { rateLoad } from './rate-load.ts'
import { rateWatts } from './rate-watts.ts'
import type { RatedPower, RatingRefusal } from './rated-power.ts'
import type { StartKind, WaveformNeed, WaveformReason } from './vocabulary.ts'

/** Minutes a day of a load of no list whose use is not stated: a stated assumption. [min] */
export const ASSUMED_MINUTES_PER_DAY = 60

/** Inrush up to this long, one cycle at 50 Hz, is reported and not sized for. [s] */
export const UNSIZED_INRUSH_S = 0.02

/**
 * Start of a motor that is known by its shaft power alone, and how long it lasts. [s] 58.8 A locked rotor over
 * 9.8 A full load at 1/2 hp, 115 V: nec-430-251a, nec-430-248.
 */
export const BARE_MOTOR_START = { multiple: 6, durationS: 1 } as const

/** A load with its gaps filled. */
export interface FilledLoad {
  readonly ok: true
  readonly load: Load
  readonly power: RatedPower
  /** Nothing told how it starts. */
  readonly startAssumedNone: boolean
}

/**
 * One load, its rating read and its gaps filled from the appliance list.
 *
 * Sizing takes the plate, or the list's high figure where there is none, which marks the load `estimated`;
 * energy takes the typical figure. The start is the measured starting power where the list has one, else the
 * running power times the list's multiple. Inrush that ends within one mains cycle is not sized for.
 *
 * @param request - The load as asked for
 * @param appliance - Its entry in the appliance list
 * @param mainsV - The shop's mains. [V] 100..240
 * @returns The load; why its rating gives no power; undefined where it states none and is of no list
 * @source nec-430-251a, nec-430-248
 */
export function filledLoad(
  request: LoadRequest,
  appliance: ListedAppliance | undefined,
  mainsV: number,
): FilledLoad | RatingRefusal | undefined {
  const power = powerOf(request, appliance, mainsV)
  if (!power?.ok) return power
  const estimated = request.rating === undefined
  const quantity = request.quantity ?? 1
  const start = startOf(request, appliance, power.inputW)
  const minutesPerDay = request.minutesPerDay ?? appliance?.minutesPerDay ?? ASSUMED_MINUTES_PER_DAY
  const dutyFraction = appliance?.dutyFraction ?? 1
  const load: Load = {
    id: request.id,
    name: request.name ?? appliance?.name,
    applianceId: appliance?.id,
    quantity,
    runningW: power.inputW,
    typicalW: power.typicalW,
    runningVA: power.apparentVA,
    startingW: start.startingW,
    startingS: start.startingS,
    startKind: start.kind,
    minutesPerDay,
    dutyFraction,
    energyWhPerDay: (quantity * power.typicalW * dutyFraction * minutesPerDay) / 60,
    ...waveformOf(request, appliance),
    category: appliance?.category,
    thermal: appliance?.thermal ?? 'neither',
    medical: appliance?.medical ?? false,
    estimated,
    working: estimated ? estimatedWorking(power) : power.working,
  }
  return { ok: true, load, power, startAssumedNone: start.assumedNone ?? false }
}

function powerOf(
  request: LoadRequest,
  appliance: ListedAppliance | undefined,
  mainsV: number,
): RatedPower | RatingRefusal | undefined {
  if (request.rating !== undefined) return rateLoad({ rating: request.rating, appliance, mainsV })
  if (appliance === undefined) return undefined
  const rated = rateWatts(appliance.sizingW, 'input-watts', appliance)
  return rated.ok ? { ...rated, typicalW: appliance.typicalW } : rated
}

/** The list's figure stands in the place of a plate's; the rest of the working stays. */
function estimatedWorking({ inputW, typicalW, working }: RatedPower): readonly WorkingStep[] {
  return [{ step: 'rating-list-figure', values: { inputW, typicalW } }, ...working.slice(1)]
}

interface Start {
  readonly kind: StartKind
  readonly startingW: number
  readonly startingS: number
  readonly assumedNone?: true
}

function startOf(request: LoadRequest, appliance: ListedAppliance | undefined, runningW: number): Start {
  if (request.start !== undefined) {
    const startingW = Math.max(runningW, request.start.startingW)
    const startingS = request.start.durationS ?? appliance?.startS ?? BARE_MOTOR_START.durationS
    return { kind: appliance?.startKind ?? 'motor', startingW, startingS }
  }
  if (appliance !== undefined) return listedStart(appliance, runningW)
  if (request.rating?.basis === 'motor-output') {
    return {
      kind: 'motor',
      startingW: runningW * BARE_MOTOR_START.multiple,
      startingS: BARE_MOTOR_START.durationS,
    }
  }
  return { kind: 'none', startingW: runningW, startingS: 0, assumedNone: true }
}

function listedStart(appliance: ListedAppliance, runningW: number): Start {
  const { startKind: kind, startS, startMultiple, startingW } = appliance
  if (startS <= UNSIZED_INRUSH_S) return { kind, startingW: runningW, startingS: 0 }
  return { kind, startingW: Math.max(runningW, startingW ?? runningW * startMultiple), startingS: startS }
}

function waveformOf(
  request: LoadRequest,
  appliance: ListedAppliance | undefined,
): { readonly waveform: WaveformNeed; readonly waveformReason: WaveformReason } {
  if (appliance !== undefined) {
    return { waveform: appliance.waveform, waveformReason: appliance.waveformReason }
  }
  const motor = request.rating?.basis === 'motor-output'
  return { waveform: 'pure-sine-advised', waveformReason: motor ? 'induction-motor' : 'unknown-load' }
}
