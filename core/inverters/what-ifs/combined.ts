import { planFor, type SizingInput, sizeFor } from '../../sizing.ts'
import { batteryChanges } from './battery-changes.ts'
import { blocksOf, idsOf } from './blocks.ts'
import { mayTurn } from './fewest-turns.ts'
import { type Ground, groundOf, isUnbearable } from './ground.ts'
import { leavingOut, lowerRating, softStart, takingTurns } from './load-changes.ts'
import { changedInputs, groupsOf, type PlanChange } from './plan-change.ts'
import { higherVoltages, supplyChanges } from './supply-changes.ts'
import type { Proposal, WhatIf, WhatIfStep } from './what-if.ts'

/** First changes of one kind that a second one is tried on. */
const FIRSTS_OF_A_KIND = 2

/** A change that may be one of two. */
type Step = Extract<Proposal, { readonly kind: WhatIfStep['kind'] }>

/**
 * Two changes at once: only for a plan that nothing fits and that no single change helps.
 *
 * First the connection at the battery's terminals, each higher voltage, the two largest loads or all that may in
 * turns, one of the two largest loads left out, or what would help if the battery were no matter; then whatever
 * single change betters that. At most twelve firsts are tried. Each pair has been sized, as one change.
 *
 * @param ground - The ground
 * @returns Any number, each with its two steps
 */
export function combined(ground: Ground): readonly WhatIf[] {
  return firstSteps(ground).flatMap((first) => {
    const changed = groundAfter(ground, first.change)
    if (changed === undefined) return []
    return secondSteps(changed).flatMap((second) => pair(ground, first, second) ?? [])
  })
}

/**
 * The best single change of a plan that nothing fits, with a battery that lasts: where that alone leaves less to mind.
 *
 * @param ground - The ground
 * @param best - The best single change
 * @returns At most two, with a better outcome than that change has
 */
export function withBattery(ground: Ground, best: WhatIf): readonly WhatIf[] {
  if (best.outcome === 'fits' || !isStep(best)) return []
  const changed = groundAfter(ground, best.change)
  return (changed === undefined ? [] : batteryChanges(changed)).flatMap((second) => {
    const both = second.outcome === 'fits' ? pair(ground, best, second) : undefined
    return both === undefined ? [] : [both]
  })
}

function firstSteps(ground: Ground): readonly Step[] {
  const { plan } = ground
  const { supply } = plan.need
  const firsts: Step[] = [...higherVoltages(ground)]
  if (supply.connection !== undefined && supply.connection.kind !== 'battery-terminals') {
    const connection = { kind: 'battery-terminals' } as const
    firsts.push({
      kind: 'other-connection',
      loadIds: [],
      change: { supply: { ...supply, connection } },
      values: { connection: connection.kind },
    })
  }
  firsts.push(...turningSteps(ground), ...leavingSteps(ground))
  if (supply.battery === undefined) return firsts
  const { battery: _, ...bare } = supply
  const unminded = groundAfter(ground, { supply: bare })
  if (unminded === undefined) return firsts
  return [...firsts, ...takingTurns(unminded), ...lowerRating(unminded)].filter(isStep)
}

/** The two largest loads in turns, and as many as a day has room for. */
function turningSteps({ plan }: Ground): readonly Step[] {
  const blocks = blocksOf(plan).filter(mayTurn)
  const sets: (readonly string[])[] = []
  const chosen: string[] = []
  let minutes = 0
  for (const [index, block] of blocks.entries()) {
    if (minutes + block.minutes > DAY_MINUTES) continue
    minutes += block.minutes
    chosen.push(...idsOf(block))
    if (index === 1 && chosen.length > 1) sets.push([...chosen])
  }
  if (chosen.length > 1 && chosen.length !== sets[0]?.length) sets.push(chosen)
  return sets.map((set) => {
    const turning = new Set(set)
    const loadIds = plan.demand.loads.flatMap(({ id }) => (turning.has(id) ? [id] : []))
    const others = (plan.input.takeTurns ?? []).filter((group) => !group.some((id) => turning.has(id)))
    return { kind: 'take-turns', loadIds, change: { takeTurns: [...others, loadIds] }, values: {} }
  })
}

/** A day. [min] */
const DAY_MINUTES = 1440

function leavingSteps({ plan }: Ground): readonly Step[] {
  const { loads } = plan.demand
  if (loads.length < 2) return []
  const largest = [...loads].sort(
    (a, b) => b.quantity * b.runningW - a.quantity * a.runningW || (a.id < b.id ? -1 : 1),
  )
  return largest
    .slice(0, FIRSTS_OF_A_KIND)
    .map(({ id }) => ({ kind: 'leave-out', loadIds: [id], change: { without: id }, values: {} }))
}

function groundAfter({ range, plan }: Ground, change: PlanChange): Ground | undefined {
  const [input] = changedInputs(plan.input, change)
  const planned = input && planFor(range, input)
  return planned?.ok === true ? groundOf(range, sizeFor(range, planned.plan)) : undefined
}

function secondSteps(ground: Ground): readonly WhatIf[] {
  return [
    ...takingTurns(ground),
    ...lowerRating(ground),
    ...leavingOut(ground),
    ...softStart(ground),
    ...supplyChanges(ground),
    ...batteryChanges(ground),
  ]
}

function pair(ground: Ground, first: Step, second: WhatIf): WhatIf | undefined {
  if (!isStep(second) || first.kind === second.kind || isUnbearable(ground.now, second)) return undefined
  const { outcome, cares, units, price, runtimeHours } = second
  const change = merged(ground.plan.input, first.change, second.change)
  const changed = new Set([...first.loadIds, ...second.loadIds])
  const steps = [first, second].map(asStep)
  // Where loads take turns, a sentence begins with them.
  if (second.kind === 'take-turns') steps.reverse()
  return {
    kind: 'combined',
    loadIds: ground.plan.demand.loads.flatMap(({ id }) => (changed.has(id) ? [id] : [])),
    change,
    values: { steps },
    outcome,
    cares,
    units,
    price,
    ...(runtimeHours !== undefined && { runtimeHours }),
  }
}

function asStep(step: Step): WhatIfStep {
  const { kind, loadIds, values } = step
  return { kind, loadIds, values } as WhatIfStep
}

/** Both changes as one; a load that is left out takes no turns. */
function merged({ loads }: SizingInput, first: PlanChange, second: PlanChange): PlanChange {
  const change = { ...first, ...second }
  const { takeTurns, without } = change
  if (takeTurns === undefined || without === undefined) return change
  const kept = new Set(loads.flatMap(({ id }) => (id === without ? [] : [id])))
  return { ...change, takeTurns: groupsOf(takeTurns, kept) }
}

const STEP_KINDS: ReadonlySet<string> = new Set<WhatIfStep['kind']>([
  'take-turns',
  'lower-rating',
  'leave-out',
  'soft-start',
  'other-connection',
  'higher-voltage',
  'larger-battery',
  'other-chemistry',
])

function isStep(proposal: Proposal): proposal is Step {
  return STEP_KINDS.has(proposal.kind)
}
