import type { Rating } from '../../../../../core/loads/rating.ts'
import type { SetupAppliance } from '../../../../../shared/contract/setup.ts'
import type { PlanLoad, PlanState } from '../from-widget.ts'

/** A line as staff type it while a caller speaks: "2 led lamp", "microwave 800w". */
export interface TypedLine {
  readonly quantity: number
  /** What is searched for. */
  readonly query: string
  /** [W] */
  readonly watts: number | undefined
}

/** Different things on one list, as the contract has it. */
const LOADS_MAX = 40
const QUANTITY_MAX = 100
const WATTS_MAX = 100_000

/**
 * Reads a typed line: a count before the thing and watts behind it may be left out.
 *
 * @param text - Such as "3x phone charger 20 w"
 * @returns Its parts; a number that is no count or no power stays in the query
 */
export function readLine(text: string): TypedLine {
  let query = text.trim().replace(/\s+/g, ' ')
  let watts: number | undefined
  const power = /^(.*\S)\s+(\d+(?:[.,]\d+)?)\s*(k?)w(?:atts?)?$/i.exec(query)
  if (power !== null) {
    const stated = Number((power[2] ?? '').replace(',', '.')) * (power[3] === '' ? 1 : 1000)
    if (stated > 0 && stated <= WATTS_MAX) {
      watts = stated
      query = power[1] ?? ''
    }
  }
  const count = /^(\d{1,3})(?:\s*[x×]\s*|\s+)(?!v\b|volts?\b|w\b)(\S.*)$/i.exec(query)
  const quantity = Number(count?.[1] ?? 1)
  if (count === null || quantity < 1 || quantity > QUANTITY_MAX) return { quantity: 1, query, watts }
  return { quantity, query: count[2] ?? '', watts }
}

/**
 * The rating that a number of watts states for an appliance.
 *
 * @param watts - As the caller reads it. [W]
 * @param appliance - Its entry in the list; undefined for what is not listed
 * @returns Cooking power for what is sold by it, else input power
 */
export function ratingOf(watts: number, appliance: SetupAppliance | undefined): Rating {
  return { basis: appliance?.ratedByCookingPower ? 'cooking-watts' : 'input-watts', watts }
}

/**
 * The plan with what a line says.
 *
 * @param plan - The plan so far
 * @param line - The line
 * @param appliance - What was found for it; undefined: a thing that is not listed
 * @returns The plan; the same one where nothing can be added
 */
export function planWith(plan: PlanState, line: TypedLine, appliance: SetupAppliance | undefined): PlanState {
  if (appliance === undefined && (line.watts === undefined || line.query === '')) return plan
  const same = plan.loads.find((load) => load.appliance === appliance?.id && load.rating === undefined)
  if (appliance !== undefined && line.watts === undefined && same !== undefined) {
    const quantity = Math.min(QUANTITY_MAX, same.quantity + line.quantity)
    return { ...plan, loads: plan.loads.map((load) => (load === same ? { ...load, quantity } : load)) }
  }
  if (plan.loads.length >= LOADS_MAX) return plan
  const load: PlanLoad = {
    id: freeId(plan.loads),
    quantity: line.quantity,
    ...(appliance === undefined ? { name: line.query } : { appliance: appliance.id }),
    ...(line.watts === undefined ? {} : { rating: ratingOf(line.watts, appliance) }),
  }
  return { ...plan, loads: [...plan.loads, load] }
}

function freeId(loads: readonly PlanLoad[]): string {
  const taken = new Set(loads.map(({ id }) => id))
  let number = loads.length + 1
  while (taken.has(`load-${number}`)) number += 1
  return `load-${number}`
}

/**
 * The plan with its groups of things that take turns.
 *
 * @param plan - The plan
 * @param turns - Number of each load's group; loads without one run with the rest
 * @returns The plan; a group of one is none
 */
export function withTurns(plan: PlanState, turns: Readonly<Record<string, number>>): PlanState {
  const groups = new Map<number, string[]>()
  for (const { id } of plan.loads) {
    const group = turns[id]
    if (group !== undefined && group > 0) groups.set(group, [...(groups.get(group) ?? []), id])
  }
  return { ...plan, takeTurns: [...groups.values()].filter((ids) => ids.length > 1) }
}
