import { demandOf } from '../../loads/demand.ts'
import type { PreparedInverter } from '../../range/prepare-range.ts'
import type { Plan } from '../../sizing.ts'
import { capabilityOf, startLimitW } from '../capability.ts'
import { judge } from '../choose.ts'
import { type Block, blocksOf, idsOf } from './blocks.ts'

/** Loads that must take turns for a unit to do. */
export interface Turns {
  readonly loadIds: readonly string[]
  /** How many blocks, single loads or groups that take turns already, go into the new group. */
  readonly size: number
  /** Every group of the changed plan. */
  readonly groups: readonly (readonly string[])[]
}

/** The blocks of a plan, made ready for {@link fewestTurns}: done once a plan. */
export interface Turning {
  readonly plan: Plan
  /** Blocks that may take turns, largest first. */
  readonly blocks: readonly Block[]
  readonly fixed: readonly Block[]
  /** Sums of the largest 0, 1, 2 ... apparent powers. [VA] */
  readonly topVA: readonly number[]
}

/** A day. [min] */
const DAY_MINUTES = 1440

/** Sets looked at for one unit. All sets of ten blocks are fewer, with every step on the way to them. */
const STEPS_PER_UNIT = 12_000

/** Room for the last bits of sums made in another order; the checks decide there. [W] */
const SLACK_W = 1e-6

/**
 * A plan's blocks, those that may take turns apart.
 *
 * @param plan - The plan
 * @returns Blocks for any number of searches
 */
export function turningOf(plan: Plan): Turning {
  const all = blocksOf(plan)
  const blocks = all.filter(mayTurn)
  const topVA = [0]
  for (const block of [...blocks].sort((a, b) => b.runningVA - a.runningVA)) {
    topVA.push((topVA[topVA.length - 1] ?? 0) + block.runningVA)
  }
  return { plan, blocks, fixed: all.filter((block) => !mayTurn(block)), topVA }
}

/**
 * The fewest loads that must take turns for a unit to carry the plan.
 *
 * One new group is formed of single loads and of whole groups that take turns already. Loads that are on all
 * day can't take turns: a group's minutes together stay within a day. Medical devices never do. Of several
 * smallest sets the one with the fewest minutes a day is taken, the easiest to keep to.
 *
 * Exact for up to ten blocks, and beyond as long as {@link STEPS_PER_UNIT} steps are enough. Past those the
 * largest loads are grouped one after another until the unit does, and those that prove needless released: the
 * set is then minimal, but may not be the smallest.
 *
 * @param turning - The plan's blocks
 * @param inverter - The unit that is to do
 * @param most - No set of more blocks is looked for. 2 or more
 * @returns The set, or undefined where none up to `most` makes the unit fit
 */
export function fewestTurns(
  turning: Turning,
  inverter: PreparedInverter,
  most = Number.POSITIVE_INFINITY,
): Turns | undefined {
  const search = searchOf(turning, inverter)
  const { plan, blocks } = turning
  const largest = Math.min(most, blocks.length)
  for (let size = search.leastSize; size <= largest; size += 1) {
    const found = bestOfSize(search, size)
    if (found !== undefined) return turnsOf(plan, found)
    if (search.stepsLeft <= 0) return greedy(search, largest)
  }
  return undefined
}

/** The set with the fewest minutes; each one goes through the checks only where the last bits would decide. */
function bestOfSize(search: Search, size: number): readonly Block[] | undefined {
  for (const checkEach of [false, true]) {
    const state: State = {
      search,
      size,
      checkEach,
      chosen: [],
      best: undefined,
      bestMinutes: DAY_MINUTES + 1,
    }
    extend(state, 0, { runningW: 0, runningVA: 0, minutes: 0 })
    if (state.best === undefined || passesChecks(search, state.best)) return state.best
  }
  return undefined
}

/**
 * Whether a unit might do with so few blocks taking turns, by sums alone: quick, and never wrongly false.
 *
 * @param turning - The plan's blocks
 * @param inverter - The unit
 * @param most - The number of blocks
 * @returns False where not even the largest blocks free enough
 */
export function mightDo(turning: Turning, inverter: PreparedInverter, most: number): boolean {
  return searchOf(turning, inverter).leastSize <= most
}

interface Search extends Turning {
  readonly inverter: PreparedInverter
  readonly runningW: number
  readonly runningVA: number
  readonly limitW: number
  readonly limitVA: number
  readonly startLimit: (startingS: number) => number
  /** What has to go. [W], [VA] */
  readonly excessW: number
  readonly excessVA: number
  /** Below this size not even the largest blocks together free enough. */
  readonly leastSize: number
  stepsLeft: number
}

interface State {
  readonly search: Search
  readonly size: number
  readonly checkEach: boolean
  readonly chosen: Block[]
  best: readonly Block[] | undefined
  bestMinutes: number
}

interface Sums {
  readonly runningW: number
  readonly runningVA: number
  readonly minutes: number
}

/**
 * Whether a block may take turns at all.
 *
 * @param block - The block
 * @returns False for what is on all day, and for medical devices
 */
export function mayTurn(block: Block): boolean {
  return block.minutes < DAY_MINUTES && !block.loads.some(({ medical }) => medical)
}

function searchOf(turning: Turning, inverter: PreparedInverter): Search {
  const { plan, blocks, fixed, topVA } = turning
  const { runningW, runningVA } = plan.demand
  const capability = capabilityOf(inverter, plan.need)
  const excessW = runningW - capability.runningW - SLACK_W
  const excessVA = runningVA - capability.runningVA - SLACK_W
  return {
    plan,
    blocks,
    fixed,
    topVA,
    inverter,
    runningW,
    runningVA,
    limitW: capability.runningW + SLACK_W,
    limitVA: capability.runningVA + SLACK_W,
    startLimit: (startingS) => startLimitW(capability, startingS) + SLACK_W,
    excessW,
    excessVA,
    leastSize: leastSize(blocks, topVA, { excessW, excessVA }),
    stepsLeft: STEPS_PER_UNIT,
  }
}

/** The largest block of a set goes on running, so what is freed is at most the sum of those after it. */
function leastSize(
  blocks: readonly Block[],
  topVA: readonly number[],
  { excessW, excessVA }: { readonly excessW: number; readonly excessVA: number },
): number {
  let freedW = 0
  for (let size = 2; size <= blocks.length; size += 1) {
    freedW += blocks[size - 1]?.runningW ?? 0
    const freedVA = (topVA[size] ?? 0) - (topVA[1] ?? 0)
    if (freedW >= excessW && freedVA >= excessVA) return size
  }
  return Number.POSITIVE_INFINITY
}

/** Adds one more block to the chosen ones, in every way that may still lead to a set of the wanted size. */
function extend(state: State, from: number, sums: Sums): void {
  const { search, size, chosen } = state
  const missing = size - chosen.length
  if (missing === 0) {
    const isBetter = sums.minutes < state.bestMinutes && carries(search, chosen)
    if (isBetter && (!state.checkEach || passesChecks(search, chosen))) {
      state.best = [...chosen]
      state.bestMinutes = sums.minutes
    }
    return
  }
  for (let index = from; index + missing <= search.blocks.length; index += 1) {
    const block = search.blocks[index]
    if (block === undefined) return
    search.stepsLeft -= 1
    if (search.stepsLeft <= 0) return
    if (mostFreedW(state, index, sums) < search.excessW) return
    const minutes = sums.minutes + block.minutes
    if (minutes > DAY_MINUTES || minutes >= state.bestMinutes) continue
    const runningVA = sums.runningVA + block.runningVA
    if (runningVA + (search.topVA[missing - 1] ?? 0) < search.excessVA) continue
    chosen.push(block)
    extend(state, index + 1, { runningW: sums.runningW + block.runningW, runningVA, minutes })
    chosen.pop()
  }
}

/** Freed by the chosen blocks and the next ones from here on, which are the largest left. */
function mostFreedW({ search, size, chosen }: State, from: number, sums: Sums): number {
  let runningW = sums.runningW
  for (let index = from; index < from + size - chosen.length; index += 1) {
    runningW += search.blocks[index]?.runningW ?? 0
  }
  return runningW - ((chosen[0] ?? search.blocks[from])?.runningW ?? 0)
}

/** The checks' arithmetic on sums that are there already; a hair too kind, never too strict. */
function carries(search: Search, chosen: readonly Block[]): boolean {
  let sumW = 0
  let sumVA = 0
  let largestW = 0
  let largestVA = 0
  for (const { runningW, runningVA } of chosen) {
    sumW += runningW
    sumVA += runningVA
    largestW = Math.max(largestW, runningW)
    largestVA = Math.max(largestVA, runningVA)
  }
  const besideW = search.runningW - sumW
  const runningW = besideW + largestW
  if (runningW > search.limitW || search.runningVA - sumVA + largestVA > search.limitVA) return false
  const starts = (block: Block, inside: boolean) =>
    block.starts.every(
      ({ aloneW, overW, startingS }) =>
        (inside ? besideW + aloneW : runningW + overW) <= search.startLimit(startingS),
    )
  return (
    search.blocks.every((block) => starts(block, chosen.includes(block))) &&
    search.fixed.every((block) => starts(block, false))
  )
}

/** The checks of the choice themselves. */
function passesChecks({ plan, inverter }: Search, chosen: readonly Block[]): boolean {
  const { need } = plan
  const demand = demandOf(plan.demand.loads, turnsOf(plan, chosen).groups)
  const requiredContinuousW = demand.runningW / (1 - need.policy.headroomFraction)
  return judge(inverter, { ...need, demand, requiredContinuousW }).fits
}

function greedy(search: Search, most: number): Turns | undefined {
  const { plan, blocks } = search
  const does = (chosen: readonly Block[]) => carries(search, chosen) && passesChecks(search, chosen)
  let chosen: readonly Block[] = []
  let minutes = 0
  for (const block of blocks) {
    if (chosen.length >= 2 && does(chosen)) break
    if (minutes + block.minutes > DAY_MINUTES) continue
    chosen = [...chosen, block]
    minutes += block.minutes
  }
  if (chosen.length < 2 || !does(chosen)) return undefined
  for (const block of [...chosen].reverse()) {
    const without = chosen.filter((kept) => kept !== block)
    if (without.length >= 2 && does(without)) chosen = without
  }
  return chosen.length > most ? undefined : turnsOf(plan, chosen)
}

function turnsOf({ demand, input }: Plan, chosen: readonly Block[]): Turns {
  const turning = new Set(chosen.flatMap(idsOf))
  const loadIds = demand.loads.flatMap(({ id }) => (turning.has(id) ? [id] : []))
  const others = (input.takeTurns ?? []).filter((group) => !group.some((id) => turning.has(id)))
  return { loadIds, size: chosen.length, groups: [...others, loadIds] }
}
