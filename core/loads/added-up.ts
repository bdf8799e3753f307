import type { Load } from './load.ts'

/** One load starting while everything that may run beside it runs. */
export interface StartMoment {
  readonly loadId: string
  /** Power the inverter gives at that moment. [W] */
  readonly startingW: number
  /** How long it lasts. [s] */
  readonly startingS: number
}

/** What loads come to together. */
export interface AddedUp {
  /** Everything that may run together. [W] */
  readonly runningW: number
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
  readonly loads: readonly Load[]
}

/**
 * Adds loads up: running power, the worst moment of starting, energy.
 *
 * Running power is the sum of all ungrouped loads and, for each take-turns group, its largest. The worst
 * moment of starting is the running total plus the largest (start - run) of one item, which is the closed
 * form of trying every moment: a start never draws less than running, so everything that may run beside it
 * runs. Apparent powers are added as numbers, an upper bound whatever the phase angles.
 *
 * @param loads - Resolved loads, ids distinct
 * @param takeTurns - Groups of load ids of which only one load runs at a time; an id in at most one group
 * @returns The sums
 * @source cooperative-generator-table
 */
export function addUp(loads: readonly Load[], takeTurns: readonly (readonly string[])[] = []): AddedUp {
  const runningOf = (load: Load) => load.quantity * load.runningW
  const runningW = mostAtOnce(loads, takeTurns, runningOf)
  const startMoments: StartMoment[] = []
  let worst: StartMoment = { loadId: '', startingW: runningW, startingS: 0 }
  let energyWhPerDay = 0
  for (const load of loads) {
    energyWhPerDay += load.energyWhPerDay
    if (load.startingW <= load.runningW) continue
    const group = takeTurns.find((ids) => ids.includes(load.id))
    const othersOfGroupW = group === undefined ? 0 : largest(loads, group, runningOf) - runningOf(load)
    const moment = {
      loadId: load.id,
      startingW: runningW - othersOfGroupW - load.runningW + load.startingW,
      startingS: load.startingS,
    }
    if (moment.startingW <= runningW) continue
    startMoments.push(moment)
    const { startingW, startingS } = worst
    if (moment.startingW > startingW || (moment.startingW === startingW && moment.startingS > startingS)) {
      worst = moment
    }
  }
  return {
    runningW: settled(runningW),
    runningVA: settled(mostAtOnce(loads, takeTurns, (load) => load.quantity * load.runningVA)),
    startingW: settled(worst.startingW),
    startingS: worst.startingS,
    startMoments,
    energyWhPerDay: settled(energyWhPerDay),
    loads,
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

/**
 * The most of something at once: all ungrouped loads together and the largest of each take-turns group.
 *
 * @param loads - Resolved loads, ids distinct
 * @param takeTurns - Groups of load ids, an id in at most one group
 * @param of - What all items of a load have of it, 0 or more
 * @returns The sum
 */
export function mostAtOnce(
  loads: readonly Load[],
  takeTurns: readonly (readonly string[])[],
  of: (load: Load) => number,
): number {
  const grouped = new Set<string>()
  for (const group of takeTurns) for (const id of group) grouped.add(id)
  let sum = 0
  for (const load of loads) if (!grouped.has(load.id)) sum += of(load)
  for (const group of takeTurns) sum += largest(loads, group, of)
  return sum
}

function largest(loads: readonly Load[], group: readonly string[], of: (load: Load) => number): number {
  let most = 0
  for (const load of loads) if (group.includes(load.id)) most = Math.max(most, of(load))
  return most
}

/**
 * A sum to the millionth, so that the order of its terms leaves no trace.
 *
 * @param value - Any sum
 * @returns The same, settled
 */
export function settled(value: number): number {
  return Math.round(value * 1e6) / 1e6
}
