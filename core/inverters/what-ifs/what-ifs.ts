import type { WhatIfKind } from '../../advice/vocabulary.ts'
import type { PreparedRange } from '../../range/prepare-range.ts'
import type { Sizing } from '../../sizing.ts'
import { batteryChanges } from './battery-changes.ts'
import { compareOutcomes, groundOf } from './ground.ts'
import { leavingOut, lowerRating, softStart, takingTurns } from './load-changes.ts'
import { pureSine, supplyChanges } from './supply-changes.ts'
import { twoUnits } from './two-units.ts'
import type { WhatIf } from './what-if.ts'

/** No more than a shopper will read. */
const MOST_WHAT_IFS = 8

/** Kinds by how little they change, least first; the number of loads they change comes before. */
const BY_CHANGE: readonly WhatIfKind[] = [
  'take-turns',
  'shorter-cable',
  'larger-wire',
  'other-connection',
  'pure-sine',
  'lower-rating',
  'soft-start',
  'leave-out',
  'larger-battery',
  'other-chemistry',
  'two-units',
  'higher-voltage',
]

/**
 * Changes of a plan that would better its answer: a better outcome, less to mind, or a smaller or cheaper unit
 * with nothing new to mind. Every one of them has been sized.
 *
 * Best first: outcome, then how much is left to mind, then the price of the units, then the least change. Of
 * one kind with the same units only the best is told, and at most two of a kind.
 *
 * @param range - The range that was sized from
 * @param sizing - The engine's answer
 * @returns At most eight
 */
export function whatIfsFor(range: PreparedRange, sizing: Sizing): readonly WhatIf[] {
  const ground = groundOf(range, sizing)
  const found = [
    ...takingTurns(ground),
    ...lowerRating(ground),
    ...leavingOut(ground),
    ...softStart(ground),
    ...pureSine(ground),
    ...supplyChanges(ground),
    ...batteryChanges(ground),
    ...twoUnits(ground),
  ]
  return withoutRepeats(found.sort(compareWhatIfs)).slice(0, MOST_WHAT_IFS)
}

function compareWhatIfs(a: WhatIf, b: WhatIf): number {
  return (
    compareOutcomes(a.outcome, b.outcome) ||
    a.cares.size - b.cares.size ||
    Number(a.price) - Number(b.price) ||
    changedLoads(a) - changedLoads(b) ||
    BY_CHANGE.indexOf(a.kind) - BY_CHANGE.indexOf(b.kind)
  )
}

/** Leaving one load out is a larger change than letting two take turns. */
function changedLoads({ kind, loadIds }: WhatIf): number {
  return kind === 'leave-out' || kind === 'two-units' ? loadIds.length + 2 : loadIds.length
}

function withoutRepeats(found: readonly WhatIf[]): readonly WhatIf[] {
  const seen = new Set<string>()
  return found.filter(({ kind, units }) => {
    const key = [kind, ...units.map(({ unit }) => unit.sku)].join('\n')
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}
