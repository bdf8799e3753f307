import {
  FINDING_CODES,
  newSizes,
  OUTCOMES,
  type PreparedRange,
  SOURCES,
  type SourceId,
  surgeMultipleOf,
  unitsToDrop,
} from '../../core/index.ts'
import { DEMAND_CALLS, type DemandReply } from '../../shared/contract/demand.ts'
import { tenThousandth } from '../replies/rounding.ts'
import { type DemandTotals, MERGE_BELOW } from '../store/demand.ts'
import { appliancesOf, type DemandKind, UNLISTED, unitsOf, unmetOf, VOLTAGE_NOT_STATED } from './keys.ts'
import type { Period } from './period.ts'

/** Entries of one list at most; what is rarer is counted with the others. */
const ENTRIES_TOLD = 500

/** Units that are looked at for going together. */
const DROP_AT_MOST = 3

/** What {@link demandReply} is made of. */
export interface DemandFacts {
  readonly range: PreparedRange
  readonly period: Period
  readonly totals: DemandTotals
  /** New sizes to look for. */
  readonly sizes: number
}

/**
 * The reply of GET demand: counts below five are told only together with others.
 *
 * @param facts - The shop's range in force and what was counted
 * @returns The body
 */
export function demandReply({ range, period, totals, sizes }: DemandFacts): DemandReply {
  const byKind = keysByKind(totals)
  const of = (kind: DemandKind) => byKind.get(kind) ?? []
  const { appliances, document } = range
  const nameOf = new Map(document.inverters.map(({ sku, name }) => [sku, name]))
  const requests = of('outcome').reduce((sum, { count }) => sum + count, 0)
  return {
    ...period,
    counting: document.shop.countDemand !== false,
    requests: few(requests),
    days: daysOf(totals),
    outcomes: told(of('outcome'), (key) => {
      const [callName, outcomeName] = key.split(' ')
      const call = DEMAND_CALLS.find((each) => each === callName)
      const outcome = OUTCOMES.find((each) => each === outcomeName)
      return call && outcome && { call, outcome }
    }),
    appliances: told(of('appliance'), (key) =>
      key === UNLISTED
        ? { appliance: null, name: null }
        : { appliance: key, name: appliances.get(key)?.name ?? null },
    ),
    combinations: {
      entries: totals.combinations.map(({ key, count }) => {
        const ids = appliancesOf(key)
        return {
          appliances: ids.filter((id) => id !== UNLISTED),
          withUnlisted: ids.includes(UNLISTED),
          count,
        }
      }),
      others: totals.otherCombinations,
    },
    units: told(firstUnits(of('choice')), (sku) => ({ sku, name: nameOf.get(sku) ?? null })),
    codes: told(of('code'), (key) => {
      const code = FINDING_CODES.find((each) => each === key)
      return code && { code }
    }),
    voltages: told(of('voltage'), (key) => ({ nominalV: key === VOLTAGE_NOT_STATED ? null : Number(key) })),
    unmet: told(of('unmet'), unmetOf),
    advice: adviceOf({ range, unmet: of('unmet'), choices: of('choice'), sizes }),
  }
}

interface Counted {
  readonly key: string
  readonly count: number
}

function keysByKind({ totals }: DemandTotals): ReadonlyMap<DemandKind, readonly Counted[]> {
  const byKind = new Map<DemandKind, Counted[]>()
  for (const { kind, key, count } of totals) {
    const keys = byKind.get(kind) ?? []
    keys.push({ key, count })
    byKind.set(kind, keys)
  }
  return byKind
}

/** The frequent ones by name, most often first; a key that this release can't read counts with the others. */
function told<T extends object>(
  counted: readonly Counted[],
  read: (key: string) => T | undefined,
): { readonly entries: (T & { count: number })[]; readonly others: number } {
  const entries: (T & { count: number })[] = []
  let others = 0
  const sorted = [...counted].sort((a, b) => b.count - a.count || (a.key < b.key ? -1 : 1))
  for (const { key, count } of sorted) {
    const entry = count < MERGE_BELOW || entries.length >= ENTRIES_TOLD ? undefined : read(key)
    if (entry === undefined) others += count
    else entries.push({ ...entry, count })
  }
  return { entries, others }
}

function firstUnits(choices: readonly Counted[]): readonly Counted[] {
  const counts = new Map<string, number>()
  for (const { key, count } of choices) {
    const [sku] = unitsOf(key)
    if (sku !== undefined) counts.set(sku, (counts.get(sku) ?? 0) + count)
  }
  return [...counts].map(([key, count]) => ({ key, count }))
}

function daysOf({ outcomes }: DemandTotals): DemandReply['days'] {
  const days = new Map<string, Map<string, number>>()
  for (const { day, key, count } of outcomes) {
    const counts = days.get(day) ?? new Map<string, number>()
    const outcome = key.split(' ')[1] ?? key
    counts.set(outcome, (counts.get(outcome) ?? 0) + count)
    days.set(day, counts)
  }
  return [...days].map(([day, counts]) => ({
    day,
    requests: few([...counts.values()].reduce((sum, count) => sum + count, 0)),
    outcomes: OUTCOMES.flatMap((outcome) => {
      const count = counts.get(outcome) ?? 0
      return count < MERGE_BELOW ? [] : [{ outcome, count }]
    }),
  }))
}

/** Exactly from five up; one to four are no more than "a few". */
function few(count: number): number | null {
  return count > 0 && count < MERGE_BELOW ? null : count
}

interface AdviceFacts {
  readonly range: PreparedRange
  readonly unmet: readonly Counted[]
  readonly choices: readonly Counted[]
  readonly sizes: number
}

function adviceOf({ range, unmet, choices, sizes }: AdviceFacts): DemandReply['advice'] {
  const needs = unmet.flatMap(({ key, count }) => {
    const need = unmetOf(key)
    return need?.cause === 'size' ? [{ ...need, count }] : []
  })
  const surgeMultiple = surgeMultipleOf(range)
  const inStock = range.inverters.filter(({ unit }) => unit.inStock).map(({ unit }) => unit.sku)
  const known = new Set(inStock)
  const served = choices.flatMap(({ key, count }) => {
    const skus = unitsOf(key).filter((sku) => known.has(sku))
    return skus.length === 0 ? [] : [{ skus, count }]
  })
  return {
    surgeMultiple: tenThousandth(surgeMultiple),
    newSizes: upTo(sizes).map((most) => {
      const found = newSizes(needs, { most, surgeMultiple })
      // A size that fewer than five asked for would tell of them.
      const shown = found.sizes.filter((size) => size.served >= MERGE_BELOW)
      return {
        most,
        sizes: shown,
        served: shown.reduce((sum, size) => sum + size.served, 0),
        method: methodReply(found.method),
      }
    }),
    unmetBySize: few(needs.reduce((sum, { count }) => sum + count, 0)),
    drop: upTo(DROP_AT_MOST).flatMap((count) => {
      const found = unitsToDrop(served, inStock, { count })
      if (found === undefined || served.length === 0) return []
      const exact = { name: 'exact', guaranteeFraction: 1, source: 'exhaustive-search' } as const
      const greedy = { name: 'greedy', guaranteeFraction: null, source: 'exhaustive-search' } as const
      return [
        {
          skus: [...found.skus],
          lost: few(found.lost),
          moved: few(found.moved),
          method: methodReply(found.method === 'exact' ? exact : greedy),
        },
      ]
    }),
  }
}

function upTo(most: number): readonly number[] {
  return Array.from({ length: most }, (_, index) => index + 1)
}

function methodReply({
  name,
  guaranteeFraction,
  source,
}: {
  readonly name: 'exact' | 'greedy'
  readonly guaranteeFraction: number | null
  readonly source: SourceId
}) {
  return {
    name,
    guaranteeFraction: guaranteeFraction === null ? null : tenThousandth(guaranteeFraction),
    source,
    sourceDocument: SOURCES[source].document,
  }
}
