import { demandOf } from '../../loads/demand.ts'
import { BARE_MOTOR_START } from '../../loads/filled-load.ts'
import type { Load, LoadRequest } from '../../loads/load.ts'
import { resolveLoads } from '../../loads/resolve.ts'
import type { PreparedRange } from '../../range/prepare-range.ts'
import type { Plan, SizingInput } from '../../sizing.ts'
import { needOf, type Supply } from '../need.ts'

/** A change of a request as data: each part stands in place of the request's own. */
export interface PlanChange {
  /** All groups of the changed request. */
  readonly takeTurns?: readonly (readonly string[])[]
  /** One load is left out, of its group too. */
  readonly without?: string
  /** One load gets this rating in input watts; a motor known by its shaft power alone keeps its hard start. */
  readonly rating?: { readonly loadId: string; readonly watts: number }
  /** One load starts like this. */
  readonly start?: { readonly loadId: string; readonly startingW: number; readonly durationS: number }
  readonly supply?: Supply
  /** This unit is taken, though it is not the smallest that fits. */
  readonly sku?: string
  /** Two requests in place of one, and the unit of each. */
  readonly split?: readonly { readonly loadIds: readonly string[]; readonly sku: string }[]
}

/** What a changed plan is judged by. */
export type ChangedPlan = Pick<Plan, 'demand' | 'need'>

/**
 * The request, or for a split the two requests, that a change makes of a request.
 *
 * @param input - The request
 * @param change - What changes; its `sku` is not part of a request
 * @returns One request, or two
 */
export function changedInputs(input: SizingInput, change: PlanChange): readonly SizingInput[] {
  if (change.split !== undefined) return change.split.map(({ loadIds }) => onlyWith(input, loadIds))
  const { without, rating, start, takeTurns, supply } = change
  let changed = input
  if (without !== undefined) {
    changed = onlyWith(
      input,
      input.loads.flatMap(({ id }) => (id === without ? [] : [id])),
    )
  }
  if (rating !== undefined) changed = withLoad(changed, rating.loadId, (load) => rated(load, rating.watts))
  if (start !== undefined) {
    const { startingW, durationS } = start
    changed = withLoad(changed, start.loadId, (load) => ({ ...load, start: { startingW, durationS } }))
  }
  return [{ ...changed, ...(takeTurns && { takeTurns }), ...(supply && { supply }) }]
}

/**
 * A load request whose plate states input watts.
 *
 * @param request - The load as asked for
 * @param watts - Input power of one item. [W]
 * @returns The request with that rating; a motor that is known by its shaft power alone keeps its start
 */
export function rated(request: LoadRequest, watts: number): LoadRequest {
  const changed = { ...request, rating: { basis: 'input-watts', watts } } as const
  const bareMotor = request.appliance === undefined && request.rating?.basis === 'motor-output'
  if (!bareMotor || request.start !== undefined) return changed
  const { multiple, durationS } = BARE_MOTOR_START
  return { ...changed, start: { startingW: watts * multiple, durationS } }
}

/**
 * The changed plan, reusing every load that the change leaves alone.
 *
 * @param range - The range that the plan was made for
 * @param plan - The plan
 * @param change - A change of loads, groups or supply; not a split
 * @returns Demand and need, as reading the changed request anew gives them
 */
export function changedPlan(range: PreparedRange, plan: Plan, change: PlanChange): ChangedPlan {
  const { rating, start, without, takeTurns, supply } = change
  if (takeTurns !== undefined) return regrouped(plan, takeTurns)
  if (rating !== undefined || start !== undefined) return reloaded(range, plan, change)
  if (without !== undefined) {
    return restricted(
      plan,
      plan.demand.loads.filter(({ id }) => id !== without),
    )
  }
  return supply === undefined ? plan : { demand: plan.demand, need: { ...plan.need, supply } }
}

/**
 * The plan of some of its loads.
 *
 * @param plan - The plan
 * @param loads - Loads of it, in their order
 * @returns Demand and need of those alone
 */
export function restricted(plan: Plan, loads: readonly Load[]): ChangedPlan {
  const kept = new Set(loads.map(({ id }) => id))
  const demand = demandOf(loads, groupsOf(plan.input.takeTurns, kept))
  return { demand, need: needOf(demand, plan.need) }
}

function regrouped({ demand, need }: Plan, takeTurns: readonly (readonly string[])[]): ChangedPlan {
  const grouped = demandOf(demand.loads, takeTurns)
  const requiredContinuousW = grouped.runningW / (1 - need.policy.headroomFraction)
  return { demand: grouped, need: { ...need, demand: grouped, requiredContinuousW } }
}

function reloaded(range: PreparedRange, plan: Plan, change: PlanChange): ChangedPlan {
  const id = change.rating?.loadId ?? change.start?.loadId
  const [changed] = changedInputs(plan.input, change)
  const request = changed?.loads.find((load) => load.id === id)
  if (request === undefined) return plan
  const resolution = resolveLoads([request], {
    appliances: range.appliances,
    mains: range.document.shop.mains,
  })
  const [load] = resolution.ok ? resolution.loads : []
  if (load === undefined) return plan
  const loads = plan.demand.loads.map((kept) => (kept.id === id ? load : kept))
  const demand = demandOf(loads, plan.input.takeTurns)
  return { demand, need: needOf(demand, plan.need) }
}

function onlyWith(input: SizingInput, loadIds: readonly string[]): SizingInput {
  const kept = new Set(loadIds)
  const loads = input.loads.filter(({ id }) => kept.has(id))
  const groups = groupsOf(input.takeTurns, kept)
  return { ...input, loads, takeTurns: groups.length === 0 ? undefined : groups }
}

/**
 * Groups of the loads that are left; one that has no other to take turns with needs none.
 *
 * @param takeTurns - All groups
 * @param kept - Ids of the loads that are left
 * @returns Groups of two or more
 */
export function groupsOf(
  takeTurns: SizingInput['takeTurns'],
  kept: ReadonlySet<string>,
): readonly (readonly string[])[] {
  return (takeTurns ?? [])
    .map((group) => group.filter((id) => kept.has(id)))
    .filter((group) => group.length > 1)
}

function withLoad(
  input: SizingInput,
  loadId: string,
  change: (load: LoadRequest) => LoadRequest,
): SizingInput {
  return { ...input, loads: input.loads.map((load) => (load.id === loadId ? change(load) : load)) }
}
