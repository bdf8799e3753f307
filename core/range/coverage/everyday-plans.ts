import type { SizingInput } from '../../sizing.ts'
import type { PreparedRange } from '../prepare-range.ts'
import { COMBINATIONS, type Combination } from './combinations.ts'

/** A plan that a range is tried with: one appliance by itself, or several together. */
export interface EverydayPlan extends Combination {
  readonly kind: 'appliance' | 'combination'
}

/**
 * The plans that a range is tried with: each appliance of the list that its shoppers see, and the combinations.
 *
 * @param range - The range, for its appliance list
 * @returns Combinations first; those with an appliance that the list lacks are left out
 */
export function everydayPlans({ appliances }: PreparedRange): readonly EverydayPlan[] {
  const together = COMBINATIONS.filter(({ loads }) =>
    loads.every(({ appliance }) => appliances.has(appliance)),
  ).map((combination) => ({ ...combination, kind: 'combination' as const }))
  const alone = [...appliances.values()].map(({ id, name }) => ({
    kind: 'appliance' as const,
    id,
    name,
    loads: [{ appliance: id }],
  }))
  return [...together, ...alone]
}

/**
 * An everyday plan as somebody would ask for it.
 *
 * @param plan - The plan
 * @param inStockOnly - Whether only units in stock count
 * @returns The request without a supply; each load's id is its appliance
 */
export function inputOf(
  { loads, takeTurns }: Pick<EverydayPlan, 'loads' | 'takeTurns'>,
  inStockOnly: boolean,
): SizingInput {
  return {
    loads: loads.map(({ appliance, quantity }) => ({ id: appliance, appliance, quantity })),
    takeTurns,
    preferences: { inStockOnly },
  }
}
