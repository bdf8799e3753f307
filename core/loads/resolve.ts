import { type Finding, finding } from '../advice/findings.ts'
import { type FilledLoad, filledLoad } from './filled-load.ts'
import type { ListedAppliance } from './listed-appliance.ts'
import type { Load, LoadRequest } from './load.ts'
import type { RatingRefusal } from './rated-power.ts'

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

/** Notes that every answer would carry: the list's power factor is taken wherever a plate states none. */
const TACIT_NOTES: ReadonlySet<string> = new Set(['power-factor-assumed'])

/**
 * Reads every load's rating and fills its gaps from the appliance list.
 *
 * @param requests - Loads as asked for
 * @param context - Appliance list and the shop's mains
 * @returns Loads in the order of the requests, or every fault
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
    notes.push(...notesOf(request, resolved))
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, loads, notes }
}

function resolveLoad(request: LoadRequest, context: LoadContext, index: number): LoadFault | FilledLoad {
  const appliance = request.appliance === undefined ? undefined : context.appliances.get(request.appliance)
  if (request.appliance !== undefined && appliance === undefined) {
    return { path: ['loads', index, 'appliance'], code: 'unknown-appliance', loadId: request.id }
  }
  const filled = filledLoad(request, appliance, context.mains.nominalV)
  if (filled === undefined) {
    return { path: ['loads', index], code: 'nothing-stated', loadId: request.id }
  }
  if (!filled.ok) {
    return { path: ['loads', index, 'rating'], code: 'rating-refused', loadId: request.id, refusal: filled }
  }
  return filled
}

function notesOf(
  { id, minutesPerDay }: LoadRequest,
  { load, power, startAssumedNone }: FilledLoad,
): readonly Finding[] {
  const ids = [id]
  const notes: Finding[] = []
  for (const note of power.notes) {
    if (!TACIT_NOTES.has(note.code)) {
      notes.push(finding('rating-read', 'note', { note: note.code, ...note.values }, ids))
    }
  }
  if (load.estimated) notes.push(finding('rating-estimated', 'note', { sizingW: load.runningW }, ids))
  if (minutesPerDay === undefined) {
    notes.push(finding('minutes-assumed', 'note', { minutesPerDay: load.minutesPerDay }, ids))
  }
  if (startAssumedNone) notes.push(finding('start-assumed-none', 'note', {}, ids))
  return notes
}
