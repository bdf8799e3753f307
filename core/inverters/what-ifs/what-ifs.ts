import type { WhatIfKind } from '../../advice/vocabulary.ts'
import type { PreparedRange } from '../../range/prepare-range.ts'
import type { Sizing } from '../../sizing.ts'
import { batteryChanges } from './battery-changes.ts'
import { combined, withBattery } from './combined.ts'
import { compareOutcomes, groundOf } from './ground.ts'
import { leavingOut, lowerRating, softStart, takingTurns } from './load-changes.ts'
import { pureSine, supplyChanges } from './supply-changes.ts'
import { twoUnits } from './two-units.ts'
import type { WhatIf, WhatIfStep } from './what-if.ts'

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
  'combined',
]

/**
 * Changes of a plan that would better its answer: a better outcome, less to mind, or a smaller or cheaper unit
 * with nothing new to mind. Every one of them has been sized.
 *
 * Best first: outcome, then how much is left to mind, then the price of the units, then the least change. Of
 * one kind with the same units only the best is told, and at most two of a kind. Where nothing fits and no single
 * change helps, up to three pairs of changes are told, all as good as the best of them; where one helps but the
 * battery is too small then, that change with a battery that lasts.
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
  const single = withoutNeedless(found).sort(compareWhatIfs)
  if (ground.unit !== undefined) return withoutRepeats(single).slice(0, MOST_WHAT_IFS)
  const [best] = single
  if (best === undefined) return bestPairs(combined(ground))
  return withoutRepeats([...bestPairs(withBattery(ground, best)), ...single]).slice(0, MOST_WHAT_IFS)
}

function bestPairs(pairs: readonly WhatIf[]): readonly WhatIf[] {
  const sorted = [...pairs].sort(compareWhatIfs)
  const [best] = sorted
  const asGood = sorted.filter(
    ({ outcome, cares }) => outcome === best?.outcome && cares.size === best.cares.size,
  )
  return withoutRepeats(asGood).slice(0, MOST_COMBINED)
}

/** Two changes at once are much to read. */
const MOST_COMBINED = 3

/** What changes more than it gains where one of these leaves no more to mind. */
const LARGE_CHANGES: ReadonlySet<WhatIfKind> = new Set(['higher-voltage', 'shorter-cable'])
const PLAINER_CHANGES: ReadonlySet<WhatIfKind> = new Set([
  'other-connection',
  'larger-wire',
  'larger-battery',
  'other-chemistry',
])

/** Another voltage means another battery, another unit and other wire: told where nothing plainer does as much. */
function withoutNeedless(found: readonly WhatIf[]): WhatIf[] {
  const plainer = found.filter(({ kind }) => PLAINER_CHANGES.has(kind))
  return found.filter(
    (whatIf) => !LARGE_CHANGES.has(whatIf.kind) || !plainer.some((other) => doesAsMuch(other, whatIf)),
  )
}

function doesAsMuch(other: WhatIf, whatIf: WhatIf): boolean {
  const worse = compareOutcomes(other.outcome, whatIf.outcome)
  if (worse !== 0) return worse < 0
  if (other.cares.size < whatIf.cares.size) return true
  return whatIf.kind === 'higher-voltage' && other.cares.size === whatIf.cares.size
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

/** Leaving one load out is a larger change than letting two take turns; of two changes both count. */
function changedLoads(whatIf: WhatIf | WhatIfStep): number {
  const { kind, loadIds } = whatIf
  if (kind === 'combined') return whatIf.values.steps.reduce((sum, step) => sum + changedLoads(step), 0)
  return kind === 'leave-out' || kind === 'two-units' ? loadIds.length + 2 : loadIds.length
}

/** Kinds of change and units, in the order told. */
function keyOf({ kind, values, units }: WhatIf): string {
  const steps = kind === 'combined' ? values.steps.map((step) => step.kind) : []
  return [kind, ...steps, ...units.map(({ unit }) => unit.sku)].join('\n')
}

function withoutRepeats(found: readonly WhatIf[]): readonly WhatIf[] {
  const seen = new Set<string>()
  return found.filter((whatIf) => {
    const key = keyOf(whatIf)
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}
