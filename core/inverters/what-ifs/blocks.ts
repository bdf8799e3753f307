import type { Load } from '../../loads/load.ts'
import type { Plan } from '../../sizing.ts'

/** One start in a block. */
export interface BlockStart {
  /** Power at that moment over running power of the whole plan. [W] */
  readonly overW: number
  /** Power of the load's own items at that moment, when nothing else of its block runs. [W] */
  readonly aloneW: number
  readonly startingS: number
}

/** What stays together when a plan is rearranged: a take-turns group, or a load of none. */
export interface Block {
  /** In the order of the request. */
  readonly loads: readonly Load[]
  /** Of its largest load. [W], [VA] */
  readonly runningW: number
  readonly runningVA: number
  /** Time that its loads take one after another in a day. [min] */
  readonly minutes: number
  readonly starts: readonly BlockStart[]
}

/**
 * The blocks of a plan, largest first, so that the order of the request leaves no trace.
 *
 * @param plan - The plan
 * @returns Its take-turns groups and its single loads
 */
export function blocksOf({ demand, input }: Plan): readonly Block[] {
  const groups = input.takeTurns ?? []
  const members = groups.map((group) => demand.loads.filter(({ id }) => group.includes(id)))
  const grouped = new Set(members.flat())
  const single = demand.loads.filter((load) => !grouped.has(load)).map((load) => [load])
  return [...members, ...single]
    .filter((loads) => loads.length > 0)
    .map(blockOf)
    .sort((a, b) => b.runningW - a.runningW || (firstId(a) < firstId(b) ? -1 : 1))
}

/** Ids of a block's loads. */
export function idsOf({ loads }: Pick<Block, 'loads'>): readonly string[] {
  return loads.map(({ id }) => id)
}

function blockOf(loads: readonly Load[]): Block {
  let runningW = 0
  let runningVA = 0
  let minutes = 0
  for (const load of loads) {
    runningW = Math.max(runningW, load.quantity * load.runningW)
    runningVA = Math.max(runningVA, load.quantity * load.runningVA)
    minutes += load.minutesPerDay
  }
  const starts: BlockStart[] = []
  for (const load of loads) {
    if (load.startingW <= load.runningW) continue
    const aloneW = (load.quantity - 1) * load.runningW + load.startingW
    starts.push({ aloneW, overW: aloneW - runningW, startingS: load.startingS })
  }
  return { loads, runningW, runningVA, minutes, starts }
}

function firstId({ loads }: Block): string {
  return loads[0]?.id ?? ''
}
