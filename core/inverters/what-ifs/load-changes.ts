import type { FindingCode } from '../../advice/findings.ts'
import type { Load } from '../../loads/load.ts'
import type { PreparedRange } from '../../range/prepare-range.ts'
import { INPUT_POWER_BOUNDS_W } from '../../tables/rating-figures.ts'
import { capabilityOf, startLimitW } from '../capability.ts'
import { judge, type Verdict } from '../choose.ts'
import { roundedDown } from '../label-limits.ts'
import { largestRatingW, type RatingRoom, ratingRoomOf } from '../rating-room.ts'
import { fewestTurns, mightDo, type Turning, type Turns, turningOf } from './fewest-turns.ts'
import {
  failsOnlyBy,
  type Ground,
  isHeldBack,
  isWorthwhile,
  POWER_CODES,
  smallestThatFits,
  tried,
} from './ground.ts'
import { changedPlan, restricted } from './plan-change.ts'
import type { Proposal, WhatIf } from './what-if.ts'

/** Units tried for one kind of change before the search ends; those nearest to the present answer come first. */
const UNITS_TRIED = 4

/** What-ifs told of one kind. */
const MOST_OF_A_KIND = 2

/** Below this share of its present rating a load of no list would be another kind of thing. Our own bound. */
const LEAST_RATING_SHARE = 1 / 3

/** A soft starter lowers a start to no less than this over running power. Our own bound, on the safe side. */
const LEAST_START_MULTIPLE = 1.5

const START_CODES: ReadonlySet<FindingCode> = new Set(['starting-power-short', 'surge-time-short'])

/**
 * Loads that could take turns: the fewest for the next smaller unit that is worth having, or where none fits
 * for any unit; and, among sets no larger than that, one for the cheapest unit.
 *
 * @param ground - The ground
 * @returns At most two
 */
export function takingTurns(ground: Ground): readonly WhatIf[] {
  const units = unitsShortOf(ground, POWER_CODES)
  const turning = turningOf(ground.plan)
  const first =
    ground.unit === undefined ? fewestForAny(ground, turning, units) : fewestForNext(ground, turning, units)
  if (first === undefined) return []
  const cheaper = byPrice(units)
    .filter(
      ({ inverter }) =>
        inverter.priceNumber < (first.whatIf.units[0]?.priceNumber ?? 0) &&
        wavesAsWell(ground, inverter, first.whatIf.cares) &&
        mightDo(turning, inverter, first.size),
    )
    .slice(0, UNITS_TRIED)
  for (const { inverter } of cheaper) {
    const whatIf = withTurns(ground, fewestTurns(turning, inverter, first.size))
    if (whatIf !== undefined) return [first.whatIf, whatIf]
  }
  return [first.whatIf]
}

/**
 * One load with a smaller rating: the one that needs the least reduction for the next smaller unit that is
 * worth having, and for the cheapest.
 *
 * @param ground - The ground
 * @returns At most two
 */
export function lowerRating(ground: Ground): readonly WhatIf[] {
  const units = unitsShortOf(ground, POWER_CODES)
  const rooms = ground.plan.demand.loads.map((_, index) => ratingRoomOf(ground.range, ground.plan, index))
  const firstOf = (order: readonly Verdict[]) => {
    for (const { inverter } of order.slice(0, UNITS_TRIED)) {
      const proposal = leastReduction(ground, inverter, rooms)
      const whatIf = proposal && tried(ground, proposal)
      if (whatIf !== undefined) return whatIf
    }
    return undefined
  }
  return distinct([firstOf(units), firstOf(byPrice(units))])
}

/**
 * One load left out.
 *
 * @param ground - The ground
 * @returns For each unit that it leads to, the load that gives up least; at most two, cheapest unit first
 */
export function leavingOut(ground: Ground): readonly WhatIf[] {
  const { plan, unit } = ground
  const { loads, runningW } = plan.demand
  const worthwhile = ground.hopefuls.filter(({ fits, inverter }) => !fits && isWorthwhile(ground, inverter))
  if (loads.length < 2 || worthwhile.length === 0) return []
  const mostW = largestOf(worthwhile.map(({ inverter }) => capabilityOf(inverter, plan.need).runningW))
  const bestByUnit = new Map<string, { readonly load: Load; readonly price: number }>()
  for (const load of loads) {
    if (runningW - load.quantity * load.runningW > mostW) continue
    const changed = restricted(
      plan,
      loads.filter((kept) => kept !== load),
    )
    const smallest = smallestThatFits(ground, changed)?.inverter
    if (smallest === undefined || smallest === unit || !isWorthwhile(ground, smallest)) continue
    const { sku } = smallest.unit
    const best = bestByUnit.get(sku)
    if (best === undefined || givesUpLess(load, best.load)) {
      bestByUnit.set(sku, { load, price: smallest.priceNumber })
    }
  }
  const found: WhatIf[] = []
  const byPriceOfUnit = [...bestByUnit.values()].sort((a, b) => a.price - b.price).slice(0, UNITS_TRIED)
  for (const { load } of byPriceOfUnit) {
    const { id } = load
    const whatIf = tried(ground, { kind: 'leave-out', loadIds: [id], change: { without: id }, values: {} })
    if (whatIf !== undefined) found.push(whatIf)
    if (found.length === MOST_OF_A_KIND) break
  }
  return found
}

/**
 * A gentler start, where nothing but one load's start is too much for a unit.
 *
 * @param ground - The ground
 * @returns At most one
 */
export function softStart(ground: Ground): readonly WhatIf[] {
  for (const { inverter } of unitsShortOf(ground, START_CODES).slice(0, UNITS_TRIED)) {
    const proposal = gentlerStart(ground, inverter)
    const whatIf = proposal && tried(ground, proposal)
    if (whatIf !== undefined) return [whatIf]
  }
  return []
}

/** Units worth having that fail by nothing else, nearest to the present answer first: the largest. */
function unitsShortOf(ground: Ground, codes: ReadonlySet<FindingCode>): readonly Verdict[] {
  return ground.hopefuls
    .filter(
      (verdict) =>
        !verdict.fits &&
        isWorthwhile(ground, verdict.inverter) &&
        !isHeldBack(ground.plan, verdict.inverter) &&
        (ground.unit === undefined || wavesAsWell(ground, verdict.inverter, ground.now.cares)) &&
        failsOnlyBy(verdict, codes),
    )
    .reverse()
}

/** False where a unit's wave form would be one more thing to mind. */
function wavesAsWell(
  { plan }: Ground,
  { unit }: Verdict['inverter'],
  cares: ReadonlySet<FindingCode>,
): boolean {
  return unit.waveform === 'pure-sine' || plan.need.sineAdvised.length === 0 || cares.has('wave-form-care')
}

function byPrice(units: readonly Verdict[]): readonly Verdict[] {
  return [...units].sort((a, b) => a.inverter.priceNumber - b.inverter.priceNumber)
}

interface FoundTurns {
  readonly whatIf: WhatIf
  readonly size: number
}

function fewestForNext(ground: Ground, turning: Turning, units: readonly Verdict[]): FoundTurns | undefined {
  for (const { inverter } of units.slice(0, UNITS_TRIED)) {
    const turns = fewestTurns(turning, inverter)
    const whatIf = withTurns(ground, turns)
    if (turns !== undefined && whatIf !== undefined) return { whatIf, size: turns.size }
  }
  return undefined
}

function fewestForAny(ground: Ground, turning: Turning, units: readonly Verdict[]): FoundTurns | undefined {
  let best: FoundTurns | undefined
  for (const { inverter } of units) {
    const turns = fewestTurns(turning, inverter, best === undefined ? undefined : best.size - 1)
    const whatIf = withTurns(ground, turns)
    if (turns !== undefined && whatIf !== undefined) best = { whatIf, size: turns.size }
    if (best?.size === 2) return best
  }
  return best
}

function withTurns(ground: Ground, turns: Turns | undefined): WhatIf | undefined {
  if (turns === undefined) return undefined
  const { loadIds, groups } = turns
  return tried(ground, { kind: 'take-turns', loadIds, change: { takeTurns: groups }, values: {} })
}

function leastReduction(
  { range, plan }: Ground,
  inverter: Verdict['inverter'],
  rooms: readonly (RatingRoom | undefined)[],
): Proposal | undefined {
  const capability = capabilityOf(inverter, plan.need)
  let best: { readonly load: Load; readonly watts: number; readonly share: number } | undefined
  for (const [index, load] of plan.demand.loads.entries()) {
    const room = rooms[index]
    if (room === undefined || load.medical) continue
    const watts = largestRatingW(room, capability)
    const share = watts / load.runningW
    if (watts < leastRatingW(range, load)) continue
    if (share < 1 && share > (best?.share ?? 0)) best = { load, watts, share }
  }
  if (best === undefined) return undefined
  const { id: loadId, runningW: ratedW } = best.load
  const limitW = roundedDown(best.watts, (watts) => {
    const { need } = changedPlan(range, plan, { rating: { loadId, watts } })
    return judge(inverter, need).fits
  })
  if (limitW >= ratedW || limitW < INPUT_POWER_BOUNDS_W.low) return undefined
  return {
    kind: 'lower-rating',
    loadIds: [loadId],
    change: { rating: { loadId, watts: limitW } },
    values: { limitW, ratedW },
  }
}

/** The least rating with which a load is still to be had. [W] */
function leastRatingW(range: PreparedRange, { applianceId, runningW }: Load): number {
  const listedW = applianceId === undefined ? undefined : range.leastInputsW.get(applianceId)
  return listedW ?? LEAST_RATING_SHARE * runningW
}

function gentlerStart({ plan }: Ground, inverter: Verdict['inverter']): Proposal | undefined {
  const capability = capabilityOf(inverter, plan.need)
  const tooHard = plan.demand.startMoments.filter(
    ({ startingW, startingS }) => startingW > startLimitW(capability, startingS),
  )
  const [moment] = tooHard
  const load = plan.demand.loads.find(({ id }) => id === moment?.loadId)
  if (moment === undefined || tooHard.length > 1 || load === undefined || load.medical) return undefined
  if (load.startKind !== 'motor' && load.startKind !== 'compressor') return undefined
  const { id: loadId, startingW, startingS } = load
  const excessW = moment.startingW - startLimitW(capability, startingS)
  const limitW = Math.floor(startingW - excessW)
  if (limitW < LEAST_START_MULTIPLE * load.runningW) return undefined
  return {
    kind: 'soft-start',
    loadIds: [loadId],
    change: { start: { loadId, startingW: limitW, durationS: startingS } },
    values: { limitW, startingW },
  }
}

function largestOf(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, value), 0)
}

/** Less power is given up; at the same power, less time. */
function givesUpLess(load: Load, than: Load): boolean {
  const difference = load.quantity * load.runningW - than.quantity * than.runningW
  return difference < 0 || (difference === 0 && load.minutesPerDay < than.minutesPerDay)
}

function distinct(found: readonly (WhatIf | undefined)[]): readonly WhatIf[] {
  const bySku = new Map<string, WhatIf>()
  for (const whatIf of found) {
    const sku = whatIf?.units[0]?.unit.sku
    if (whatIf !== undefined && sku !== undefined && !bySku.has(sku)) bySku.set(sku, whatIf)
  }
  return [...bySku.values()]
}
