import { type Finding, finding } from '../advice/findings.ts'
import { CoreError } from '../errors.ts'
import { type AddedUp, addUp, mostAtOnce, settled } from './added-up.ts'
import type { Load } from './load.ts'
import { WAVEFORM_NEEDS, type WaveformNeed } from './vocabulary.ts'

export { requiredContinuousW } from './added-up.ts'

/** What a set of loads asks of an inverter. */
export interface Demand extends AddedUp {
  /** Everything that may run together at typical powers, for run time. [W] */
  readonly typicalRunningW: number
  /** The strictest need of all loads. */
  readonly waveform: WaveformNeed
  /** Plugs in use when everything that may run together does. */
  readonly outletsNeeded: number
  /** Compressors that restart together, inrush left out of the sizing. Severity `note`. */
  readonly notes: readonly Finding[]
}

/**
 * Adds loads up to what an inverter must give.
 *
 * Leaves out the chance that two loads start in the same second, but for compressors after a cut, which a note
 * names.
 *
 * @param loads - Resolved loads, ids distinct
 * @param takeTurns - Groups of load ids of which only one load runs at a time; an id in at most one group
 * @returns The demand
 * @throws CoreError `inconsistent` where a group names an unknown load or one of another group
 * @source cooperative-generator-table
 */
export function demandOf(loads: readonly Load[], takeTurns: readonly (readonly string[])[] = []): Demand {
  const grouped = groupedIds(loads, takeTurns)
  const sums = addUp(loads, takeTurns)
  const { runningW, runningVA, startingW, startingS, startMoments, energyWhPerDay } = sums
  let waveform = 0
  for (const load of loads) waveform = Math.max(waveform, WAVEFORM_NEEDS.indexOf(load.waveform))
  return {
    runningW,
    runningVA,
    startingW,
    startingS,
    startMoments,
    energyWhPerDay,
    loads,
    typicalRunningW: settled(mostAtOnce(loads, takeTurns, (load) => load.quantity * load.typicalW)),
    waveform: WAVEFORM_NEEDS[waveform] ?? 'pure-sine-required',
    outletsNeeded: mostAtOnce(loads, takeTurns, (load) => load.quantity),
    notes: notesOf(loads, grouped, runningW),
  }
}

/** Ids that stand in a group. */
function groupedIds(loads: readonly Load[], takeTurns: readonly (readonly string[])[]): ReadonlySet<string> {
  const grouped = new Set<string>()
  if (takeTurns.length === 0) return grouped
  const known = new Set<string>()
  for (const load of loads) known.add(load.id)
  for (const group of takeTurns) {
    for (const id of group) {
      if (!known.has(id) || grouped.has(id)) {
        throw new CoreError('inconsistent', 'takeTurns', `${id} must be a load and stand in one group only`)
      }
      grouped.add(id)
    }
  }
  return grouped
}

function notesOf(loads: readonly Load[], grouped: ReadonlySet<string>, runningW: number): readonly Finding[] {
  const notes: Finding[] = []
  const compressors = loads.filter((load) => load.startKind === 'compressor' && !grouped.has(load.id))
  const count = compressors.reduce((sum, load) => sum + load.quantity, 0)
  if (count > 1) {
    let startingW = runningW
    for (const load of compressors) startingW += load.quantity * (load.startingW - load.runningW)
    notes.push(finding('restart-together', 'note', { startingW, count }, idsOf(compressors)))
  }
  const inrush = loads.filter(
    (load) => load.startKind === 'electronic-inrush' && load.startingW <= load.runningW,
  )
  if (inrush.length > 0) notes.push(finding('inrush-not-sized', 'note', {}, idsOf(inrush)))
  return notes
}

function idsOf(loads: readonly Load[]): readonly string[] {
  return loads.map((load) => load.id)
}
