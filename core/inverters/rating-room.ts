import { BARE_MOTOR_START, UNSIZED_INRUSH_S } from '../loads/filled-load.ts'
import type { Load, LoadRequest } from '../loads/load.ts'
import { rateLoad } from '../loads/rate-load.ts'
import type { PreparedRange } from '../range/prepare-range.ts'
import type { Plan } from '../sizing.ts'
import { CORRECTED_SUPPLY_W } from '../tables/rating-figures.ts'
import { type Capability, startLimitW } from './capability.ts'

/** What stands beside one load of a plan: all that decides how large its rating may be. */
export interface RatingRoom {
  readonly loadId: string
  readonly quantity: number
  /** Running power and apparent power of everything outside the load's own take-turns group. [W], [VA] */
  readonly baseW: number
  readonly baseVA: number
  /** The largest that the load takes turns with; 0 where there is none. [W], [VA] */
  readonly turnsW: number
  readonly turnsVA: number
  /** Starts of others, over what they run at: `alone` where the other takes turns with the load. */
  readonly starts: readonly { readonly overW: number; readonly startingS: number; readonly alone: boolean }[]
  readonly own: OwnStart
  /** Power factor of a plate that states watts, up to and above the size at which supplies are corrected. */
  readonly powerFactorLow: number
  readonly powerFactorHigh: number
}

type OwnStart =
  | { readonly kind: 'none' }
  | { readonly kind: 'multiple'; readonly multiple: number; readonly startingS: number }
  | { readonly kind: 'absolute'; readonly startingW: number; readonly startingS: number }

/**
 * What a plan leaves to one of its loads.
 *
 * @param range - The range that the plan was made for
 * @param plan - The plan
 * @param index - Which load
 * @returns The room, or undefined where the plan has no such load
 */
export function ratingRoomOf(range: PreparedRange, plan: Plan, index: number): RatingRoom | undefined {
  const load = plan.demand.loads[index]
  const request = plan.input.loads[index]
  if (load === undefined || request === undefined) return undefined
  const groups = plan.input.takeTurns ?? []
  const ownGroup = groups.findIndex((group) => group.includes(load.id))
  const largestW = new Array<number>(groups.length).fill(0)
  const largestVA = new Array<number>(groups.length).fill(0)
  const groupOf = (id: string) => groups.findIndex((group) => group.includes(id))
  let baseW = 0
  let baseVA = 0
  for (const other of plan.demand.loads) {
    if (other === load) continue
    const group = groupOf(other.id)
    const runningW = other.quantity * other.runningW
    const runningVA = other.quantity * other.runningVA
    if (group < 0) {
      baseW += runningW
      baseVA += runningVA
    } else {
      largestW[group] = Math.max(largestW[group] ?? 0, runningW)
      largestVA[group] = Math.max(largestVA[group] ?? 0, runningVA)
    }
  }
  for (let group = 0; group < groups.length; group += 1) {
    if (group === ownGroup) continue
    baseW += largestW[group] ?? 0
    baseVA += largestVA[group] ?? 0
  }
  const starts: RatingRoom['starts'][number][] = []
  for (const other of plan.demand.loads) {
    if (other === load || other.startingW <= other.runningW) continue
    const group = groupOf(other.id)
    const alone = group >= 0 && group === ownGroup
    const groupW = group < 0 || alone ? 0 : (largestW[group] ?? 0) - other.quantity * other.runningW
    const itselfW = alone ? other.quantity * other.runningW : 0
    const overW = itselfW - groupW - other.runningW + other.startingW
    if (overW > 0) starts.push({ overW, startingS: other.startingS, alone })
  }
  const appliance = request.appliance === undefined ? undefined : range.appliances.get(request.appliance)
  const mainsV = range.document.shop.mains.nominalV
  const factorAt = (watts: number) => {
    const power = rateLoad({ rating: { basis: 'input-watts', watts }, appliance, mainsV })
    return power.ok ? power.powerFactor : 1
  }
  const powerFactorHigh = factorAt(CORRECTED_SUPPLY_W.value * 2)
  return {
    loadId: load.id,
    quantity: load.quantity,
    baseW,
    baseVA,
    turnsW: ownGroup < 0 ? 0 : (largestW[ownGroup] ?? 0),
    turnsVA: ownGroup < 0 ? 0 : (largestVA[ownGroup] ?? 0),
    starts,
    own: ownStart(range, request, load),
    powerFactorLow:
      appliance?.startKind === 'electronic-inrush' ? factorAt(CORRECTED_SUPPLY_W.value / 2) : powerFactorHigh,
    powerFactorHigh,
  }
}

/**
 * The largest input-watts rating of a load that a unit carries beside everything else: closed form, since
 * every check is linear in the rating. Every smaller rating does as well.
 *
 * @param room - What stands beside the load
 * @param capability - The unit's limits
 * @returns Rating of one item; 0 where not even nothing fits beside the rest. [W]
 * @remarks A supply above 75 W is corrected and takes fewer volt-amperes a watt, so the two sides of that size
 * are looked at apart.
 */
export function largestRatingW(room: RatingRoom, capability: Capability): number {
  const byPowerW = Math.min(byRunning(room, capability), byStarts(room, capability))
  const highW = Math.min(byPowerW, byVoltAmperes(room, capability, room.powerFactorHigh))
  if (highW > CORRECTED_SUPPLY_W.value) return highW
  const lowW = Math.min(byPowerW, byVoltAmperes(room, capability, room.powerFactorLow))
  return Math.max(0, Math.min(lowW, CORRECTED_SUPPLY_W.value))
}

function byRunning(room: RatingRoom, { runningW }: Capability): number {
  if (room.baseW + room.turnsW > runningW) return 0
  return (runningW - room.baseW) / room.quantity
}

function byVoltAmperes(room: RatingRoom, { runningVA }: Capability, powerFactor: number): number {
  if (room.baseVA + room.turnsVA > runningVA) return 0
  return ((runningVA - room.baseVA) * powerFactor) / room.quantity
}

function byStarts(room: RatingRoom, capability: Capability): number {
  let largestW = byOwnStart(room, capability)
  for (const { overW, startingS, alone } of room.starts) {
    const limitW = startLimitW(capability, startingS)
    const besideW = alone ? 0 : room.turnsW
    if (room.baseW + besideW + overW > limitW) return 0
    if (!alone) largestW = Math.min(largestW, (limitW - room.baseW - overW) / room.quantity)
  }
  return largestW
}

function byOwnStart({ own, baseW, quantity }: RatingRoom, capability: Capability): number {
  if (own.kind === 'none') return Number.POSITIVE_INFINITY
  const freeW = startLimitW(capability, own.startingS) - baseW
  if (own.kind === 'multiple') return freeW / (quantity - 1 + own.multiple)
  if (freeW < own.startingW) return 0
  return quantity === 1 ? Number.POSITIVE_INFINITY : (freeW - own.startingW) / (quantity - 1)
}

/** How a load starts once its plate states input watts; as reading that request does. */
function ownStart(range: PreparedRange, request: LoadRequest, load: Load): OwnStart {
  const { start, rating } = request
  if (start !== undefined) {
    return { kind: 'absolute', startingW: start.startingW, startingS: load.startingS }
  }
  const appliance = request.appliance === undefined ? undefined : range.appliances.get(request.appliance)
  if (appliance === undefined) {
    if (rating?.basis !== 'motor-output') return { kind: 'none' }
    return { kind: 'multiple', multiple: BARE_MOTOR_START.multiple, startingS: BARE_MOTOR_START.durationS }
  }
  const { startS, startingW, startMultiple } = appliance
  if (startS <= UNSIZED_INRUSH_S) return { kind: 'none' }
  if (startingW !== undefined) return { kind: 'absolute', startingW, startingS: startS }
  return startMultiple > 1
    ? { kind: 'multiple', multiple: startMultiple, startingS: startS }
    : { kind: 'none' }
}
