import { type Finding, finding } from '../advice/findings.ts'
import type { WorkingStep } from '../working.ts'
import type { ListedAppliance } from './listed-appliance.ts'
import type { Load, LoadRequest } from './load.ts'
import { type RatedPower, type RatingRefusal, rateLoad } from './rate-load.ts'
import type { StartKind, WaveformNeed, WaveformReason } from './vocabulary.ts'

/** Why a list of load requests can't be read. `path` leads to the faulty part of the request. */
export interface LoadFault {
  readonly path: readonly (string | number)[]
  readonly code: 'duplicate-load-id' | 'unknown-appliance' | 'nothing-stated' | 'rating-refused'
  readonly loadId: string
  readonly refusal?: RatingRefusal
}

/** What loads are resolved against. */
export interface LoadContext {
  /** Appliance list by id. */
  readonly appliances: ReadonlyMap<string, ListedAppliance>
  readonly mains: { readonly nominalV: number }
}

/** Resolved loads with what had to be assumed, or every fault of the request. */
export type Resolution =
  | { readonly ok: true; readonly loads: readonly Load[]; readonly notes: readonly Finding[] }
  | { readonly ok: false; readonly faults: readonly LoadFault[] }

/** Minutes a day of a load of no list whose use is not stated: a stated assumption. [min] */
export const ASSUMED_MINUTES_PER_DAY = 60

/** Inrush up to this long, one cycle at 50 Hz, is reported and not sized for. [s] */
export const UNSIZED_INRUSH_S = 0.02

/** Notes that every answer would carry: the list's power factor is taken wherever a plate states none. */
const TACIT_NOTES: ReadonlySet<string> = new Set(['power-factor-assumed'])

/**
 * Start of a motor that is known by its shaft power alone, and how long it lasts. [s] 58.8 A locked rotor over
 * 9.8 A full load at 1/2 hp, 115 V: nec-430-251a, nec-430-248.
 */
export const BARE_MOTOR_START = { multiple: 6, durationS: 1 } as const

/**
 * Reads every load's rating and fills its gaps from the appliance list.
 *
 * Sizing takes the plate, or the list's high figure where there is none, which marks the load `estimated`;
 * energy takes the typical figure. The start is the measured starting power where the list has one, else the
 * running power times the list's multiple. Inrush that ends within one mains cycle is not sized for.
 *
 * @param requests - Loads as asked for
 * @param context - Appliance list and the shop's mains
 * @returns Loads in the order of the requests, or every fault
 * @source nec-430-251a, nec-430-248
 */
export function resolveLoads(requests: readonly LoadRequest[], context: LoadContext): Resolution {
  const faults: LoadFault[] = []
  const loads: Load[] = []
  const notes: Finding[] = []
  const seen = new Set<string>()
  for (const [index, request] of requests.entries()) {
    if (seen.has(request.id)) {
      faults.push({ path: ['loads', index, 'id'], code: 'duplicate-load-id', loadId: request.id })
    }
    seen.add(request.id)
    const resolved = resolveLoad(request, context, index)
    if ('code' in resolved) {
      faults.push(resolved)
      continue
    }
    loads.push(resolved.load)
    notes.push(...resolved.notes)
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, loads, notes }
}

function resolveLoad(
  request: LoadRequest,
  context: LoadContext,
  index: number,
): LoadFault | { readonly load: Load; readonly notes: readonly Finding[] } {
  const appliance = request.appliance === undefined ? undefined : context.appliances.get(request.appliance)
  if (request.appliance !== undefined && appliance === undefined) {
    return { path: ['loads', index, 'appliance'], code: 'unknown-appliance', loadId: request.id }
  }
  const power = powerOf(request, appliance, context)
  if (power === undefined) {
    return { path: ['loads', index], code: 'nothing-stated', loadId: request.id }
  }
  if (!power.ok) {
    return { path: ['loads', index, 'rating'], code: 'rating-refused', loadId: request.id, refusal: power }
  }
  return complete(request, appliance, power)
}

function powerOf(
  request: LoadRequest,
  appliance: ListedAppliance | undefined,
  { mains }: LoadContext,
): RatedPower | RatingRefusal | undefined {
  const mainsV = mains.nominalV
  if (request.rating !== undefined) return rateLoad({ rating: request.rating, appliance, mainsV })
  if (appliance === undefined) return undefined
  const listed = { basis: 'input-watts', watts: appliance.sizingW } as const
  const rated = rateLoad({ rating: listed, appliance, mainsV })
  return rated.ok ? { ...rated, typicalW: appliance.typicalW } : rated
}

function complete(
  request: LoadRequest,
  appliance: ListedAppliance | undefined,
  power: RatedPower,
): { readonly load: Load; readonly notes: readonly Finding[] } {
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
  const ids = [request.id]
  const notes: Finding[] = []
  for (const note of power.notes) {
    if (!TACIT_NOTES.has(note.code)) {
      notes.push(finding('rating-read', 'note', { note: note.code, ...note.values }, ids))
    }
  }
  if (estimated) notes.push(finding('rating-estimated', 'note', { sizingW: load.runningW }, ids))
  if (request.minutesPerDay === undefined) {
    notes.push(finding('minutes-assumed', 'note', { minutesPerDay }, ids))
  }
  if (start.assumedNone) notes.push(finding('start-assumed-none', 'note', {}, ids))
  return { load, notes }
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
