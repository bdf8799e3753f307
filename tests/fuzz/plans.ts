import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'

const APPLIANCES = BUILT_IN_APPLIANCES.map(({ id }) => id)
const KNOWN_APPLIANCES = new Set(APPLIANCES)

interface Load {
  id: string
  appliance?: string
  rating?: { basis: string; [figure: string]: unknown }
}

interface Plan {
  loads?: Load[]
  takeTurns?: string[][]
  power?: Plan
}

/**
 * A request about loads with the contradictions taken out that the schema can't tell, so that it is answered:
 * each id once, appliances of the list, groups of loads that are there, ratings of a size that there is. What the
 * schema leaves free stays as it was drawn. Other values stay as they are.
 *
 * @param body - Keeps the schema of a body
 * @returns The body, sound
 */
export function madeAnswerable(body: unknown): unknown {
  const plan = structuredClone(body) as Plan
  for (const part of [plan, plan.power]) {
    if (part?.loads === undefined) continue
    part.loads.forEach(makeSound)
    if (part.takeTurns !== undefined) part.takeTurns = groupsOf(part.loads, part.takeTurns)
  }
  return plan
}

function makeSound(load: Load, at: number): void {
  load.id = `${load.id.slice(0, 40)} ${at}`
  if (load.rating !== undefined && !isPlausible(load.rating)) delete load.rating
  if (load.appliance !== undefined && !KNOWN_APPLIANCES.has(load.appliance)) delete load.appliance
  if (load.rating === undefined)
    load.appliance ??= APPLIANCES[(load.id.length + at) % APPLIANCES.length] ?? ''
}

function isPlausible({ basis, ...figures }: NonNullable<Load['rating']>): boolean {
  if (basis === 'cooking-watts') return false
  const numbers = Object.values(figures).filter((figure) => typeof figure === 'number')
  return numbers.every((figure) => figure >= 0.1 && figure <= 5000)
}

/** Pairs of loads, as many as were asked for and as there are; a load stands in one group. */
function groupsOf(loads: readonly Load[], wanted: readonly unknown[]): string[][] {
  const pairs: string[][] = []
  for (let at = 0; at + 1 < loads.length && pairs.length < wanted.length; at += 2) {
    pairs.push(loads.slice(at, at + 2).map(({ id }) => id))
  }
  return pairs
}
