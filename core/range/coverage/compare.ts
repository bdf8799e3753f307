import type { SupplyVoltage } from '../vocabulary.ts'
import type { Coverage, CoverageAnswer } from './coverage-types.ts'
import type { EverydayPlan } from './everyday-plans.ts'

/** One answer that changes; undefined on a side where the range does not serve the voltage or the plan. */
export interface AnswerChange {
  readonly nominalV: SupplyVoltage
  readonly before?: CoverageAnswer
  readonly after?: CoverageAnswer
}

/** A plan whose answer changes. */
export interface ChangedAnswers {
  readonly plan: EverydayPlan
  readonly answers: readonly AnswerChange[]
}

/** What changes for shoppers between two ranges. */
export interface CoverageChanges {
  /** Plans in all, and those of them that change, by kind. */
  readonly totals: Readonly<
    Record<EverydayPlan['kind'], { readonly plans: number; readonly changed: number }>
  >
  readonly changed: readonly ChangedAnswers[]
  /** Units that are never recommended any more, and those that now are. */
  readonly nowNeverRecommended: readonly string[]
  readonly nowRecommended: readonly string[]
}

/**
 * What changes for shoppers when one range takes the place of another.
 *
 * @param before - Coverage of the range in force
 * @param after - Coverage of the range that is to come
 * @returns Plans of either whose recommended unit, outcome or reasons differ, in their order
 */
export function compareCoverage(before: Coverage, after: Coverage): CoverageChanges {
  const old = new Map(before.plans.map((covered) => [keyOf(covered.plan), covered]))
  const kept = new Set(after.plans.map(({ plan }) => keyOf(plan)))
  const pairs = [
    ...after.plans.map(({ plan, answers }) => ({
      plan,
      after: answers,
      before: old.get(keyOf(plan))?.answers ?? [],
    })),
    ...before.plans
      .filter(({ plan }) => !kept.has(keyOf(plan)))
      .map(({ plan, answers }) => ({ plan, before: answers, after: [] })),
  ]
  const totals = { appliance: { plans: 0, changed: 0 }, combination: { plans: 0, changed: 0 } }
  const changed: ChangedAnswers[] = []
  for (const pair of pairs) {
    const answers = changesOf(pair.before, pair.after)
    const total = totals[pair.plan.kind]
    total.plans += 1
    if (answers.length === 0) continue
    total.changed += 1
    changed.push({ plan: pair.plan, answers })
  }
  const [usedBefore, usedAfter] = [recommendedSkus(before), recommendedSkus(after)]
  return {
    totals,
    changed,
    nowNeverRecommended: [...usedBefore].filter((sku) => !usedAfter.has(sku)).sort(),
    nowRecommended: [...usedAfter].filter((sku) => !usedBefore.has(sku)).sort(),
  }
}

function keyOf({ kind, id }: EverydayPlan): string {
  return `${kind} ${id}`
}

function changesOf(
  before: readonly CoverageAnswer[],
  after: readonly CoverageAnswer[],
): readonly AnswerChange[] {
  const voltages = [...new Set([...before, ...after].map(({ nominalV }) => nominalV))].sort((a, b) => a - b)
  return voltages.flatMap((nominalV) => {
    const at = (answers: readonly CoverageAnswer[]) => answers.find((each) => each.nominalV === nominalV)
    const [from, to] = [at(before), at(after)]
    if (from !== undefined && to !== undefined && isSame(from, to)) return []
    return [{ nominalV, ...(from && { before: from }), ...(to && { after: to }) }]
  })
}

function isSame(a: CoverageAnswer, b: CoverageAnswer): boolean {
  return (
    a.outcome === b.outcome &&
    a.recommended?.sku === b.recommended?.sku &&
    [...a.codes].sort().join() === [...b.codes].sort().join()
  )
}

function recommendedSkus({ units }: Coverage): ReadonlySet<string> {
  return new Set(units.filter(({ recommended }) => recommended > 0).map(({ sku }) => sku))
}
