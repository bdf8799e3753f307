import { type Finding, finding } from '../advice/findings.ts'
import { CoreError } from '../errors.ts'
import type { Load } from './load.ts'
import { WAVEFORM_NEEDS, type WaveformNeed } from './vocabulary.ts'

/** One load starting while everything that may run beside it runs. */
export interface StartMoment {
  readonly loadId: string
  /** Power the inverter gives at that moment. [W] */
  readonly startingW: number
  /** How long it lasts. [s] */
  readonly startingS: number
}

/** What a set of loads asks of an inverter. */
export interface Demand {
  /** Everything that may run together. [W] */
  readonly runningW: number
  /** The same at typical powers, for run time. [W] */
  readonly typicalRunningW: number
  /** The same as apparent power. [VA] */
  readonly runningVA: number
  /** The worst moment of starting; `runningW` where nothing starts hard. [W] */
  readonly startingW: number
  /** How long that moment lasts; 0 where nothing starts hard. [s] */
  readonly startingS: number
  /** Every moment of starting that asks for more than running power. */
  readonly startMoments: readonly StartMoment[]
  /** [Wh] */
  readonly energyWhPerDay: number
  /** The strictest need of all loads. */
  readonly waveform: WaveformNeed
  /** Plugs in use when everything that may run together does. */
  readonly outletsNeeded: number
  readonly loads: readonly Load[]
  /** Compressors that restart together, inrush left out of the sizing. Severity `note`. */
  readonly notes: readonly Finding[]
}

/**
 * Adds loads up to what an inverter must give.
 *
 * Running power is the sum of all ungrouped loads and, for each take-turns group, its largest. The worst
 * moment of starting is the running total plus the largest (start - run) of one item, which is the closed
 * form of trying every moment: a start never draws less than running, so everything that may run beside it
 * runs. Apparent powers are added as numbers, an upper bound whatever the phase angles. Leaves out the chance
 * that two loads start in the same second, but for compressors after a cut, which a note names.
 *
 * @param loads - Resolved loads, ids distinct
 * @param takeTurns - Groups of load ids of which only one load runs at a time; an id in at most one group
 * @returns The demand
 * @throws CoreError `inconsistent` where a group names an unknown load or one of another group
 * @source cooperative-generator-table
 */
export function demandOf(loads: readonly Load[], takeTurns: readonly (readonly string[])[] = []): Demand {
  const groupOf = groupIndex(loads, takeTurns)
  const largest = largestOfGroups(loads, groupOf, takeTurns.length)
  let runningW = sum(largest.runningW)
  let runningVA = sum(largest.runningVA)
  let typicalRunningW = sum(largest.typicalW)
  let outletsNeeded = sum(largest.quantity)
  let energyWhPerDay = 0
  let waveform = 0
  for (const load of loads) {
    energyWhPerDay += load.energyWhPerDay
    waveform = Math.max(waveform, WAVEFORM_NEEDS.indexOf(load.waveform))
    if (groupOf.has(load.id)) continue
    runningW += load.quantity * load.runningW
    runningVA += load.quantity * load.runningVA
    typicalRunningW += load.quantity * load.typicalW
    outletsNeeded += load.quantity
  }
  const startMoments: StartMoment[] = []
  let worst: StartMoment | undefined
  for (const load of loads) {
    if (load.startingW <= load.runningW) continue
    const group = groupOf.get(load.id)
    const othersOfGroupW =
      group === undefined ? 0 : (largest.runningW[group] ?? 0) - load.quantity * load.runningW
    const moment: StartMoment = {
      loadId: load.id,
      startingW: runningW - othersOfGroupW - load.runningW + load.startingW,
      startingS: load.startingS,
    }
    if (moment.startingW <= runningW) continue
    startMoments.push(moment)
    if (worst === undefined || isWorse(moment, worst)) worst = moment
  }
  return {
    runningW: settled(runningW),
    runningVA: settled(runningVA),
    typicalRunningW: settled(typicalRunningW),
    startingW: settled(worst?.startingW ?? runningW),
    startingS: worst?.startingS ?? 0,
    startMoments,
    energyWhPerDay: settled(energyWhPerDay),
    waveform: WAVEFORM_NEEDS[waveform] ?? 'pure-sine-required',
    outletsNeeded,
    loads,
    notes: notesOf(loads, groupOf, runningW),
  }
}

/**
 * Continuous power that carries a demand with headroom.
 *
 * @param runningW - Running power. [W] 0 or more
 * @param headroomFraction - Share of the unit's continuous power kept free. 0..0.9
 * @returns Smallest continuous power that fits. [W]
 * @source nec-210-19 (0.20: continuous load at most 80 % of what carries it)
 * @example requiredContinuousW(800, 0.2) //=> 1000
 */
export function requiredContinuousW(runningW: number, headroomFraction: number): number {
  return runningW / (1 - headroomFraction)
}

/** A sum to the millionth of a watt, so that the order of its terms leaves no trace. */
function settled(value: number): number {
  return Math.round(value * 1e6) / 1e6
}

function isWorse(moment: StartMoment, than: StartMoment): boolean {
  if (moment.startingW !== than.startingW) return moment.startingW > than.startingW
  return moment.startingS > than.startingS
}

function sum(values: readonly number[]): number {
  let total = 0
  for (const value of values) total += value
  return total
}

function groupIndex(
  loads: readonly Load[],
  takeTurns: readonly (readonly string[])[],
): ReadonlyMap<string, number> {
  const groupOf = new Map<string, number>()
  if (takeTurns.length === 0) return groupOf
  const known = new Set(loads.map((load) => load.id))
  for (const [index, group] of takeTurns.entries()) {
    for (const id of group) {
      if (!known.has(id) || groupOf.has(id)) {
        throw new CoreError('inconsistent', 'takeTurns', `${id} must be a load and stand in one group only`)
      }
      groupOf.set(id, index)
    }
  }
  return groupOf
}

function largestOfGroups(loads: readonly Load[], groupOf: ReadonlyMap<string, number>, groups: number) {
  const zeros = () => new Array<number>(groups).fill(0)
  const largest = { runningW: zeros(), runningVA: zeros(), typicalW: zeros(), quantity: zeros() }
  const raise = (values: number[], group: number, value: number) => {
    values[group] = Math.max(values[group] ?? 0, value)
  }
  for (const load of loads) {
    const group = groupOf.get(load.id)
    if (group === undefined) continue
    raise(largest.runningW, group, load.quantity * load.runningW)
    raise(largest.runningVA, group, load.quantity * load.runningVA)
    raise(largest.typicalW, group, load.quantity * load.typicalW)
    raise(largest.quantity, group, load.quantity)
  }
  return largest
}

function notesOf(
  loads: readonly Load[],
  groupOf: ReadonlyMap<string, number>,
  runningW: number,
): readonly Finding[] {
  const notes: Finding[] = []
  const compressors = loads.filter((load) => load.startKind === 'compressor' && !groupOf.has(load.id))
  const count = sum(compressors.map((load) => load.quantity))
  if (count > 1) {
    const startingW =
      runningW + sum(compressors.map((load) => load.quantity * (load.startingW - load.runningW)))
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
