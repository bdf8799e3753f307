import { type Kysely, type RawBuilder, sql, type Transaction } from 'kysely'
import { DEMAND_KINDS, type DemandKind, MERGED_KEY } from '../demand/keys.ts'
import { addDays, monthOf, type Period, partsOf } from '../demand/period.ts'
import {
  COMBINATIONS_TOLD,
  DEMAND_DAYS_KEPT,
  type DemandBatch,
  type DemandRow,
  type DemandStore,
  type DemandTotals,
  MERGE_BELOW,
} from './demand.ts'
import type { Tables } from './tables.ts'

/** Days after which nothing is added to a day any more: an instance may have been cut off for a while. */
const SETTLED_DAYS = 3

type Table = 'demand_days' | 'demand_months'

/**
 * Demand in a database that speaks SQL.
 *
 * @param db - The database
 * @param guarded - Runs a call and tells "not now" from our own mistakes
 * @returns The store's part for demand
 */
export function sqlDemand(
  db: Kysely<Tables>,
  guarded: <T>(work: () => Promise<T>) => Promise<T>,
): DemandStore {
  return {
    addDemand: (batch) => guarded(() => db.transaction().execute((trx) => addBatch(trx, batch))),
    demand: (shopId, period) => guarded(() => readTotals(db, shopId, period)),
    tidyDemand: (today) =>
      guarded(async () => {
        const settled = addDays(today, -SETTLED_DAYS)
        await db.transaction().execute(async (trx) => {
          await mergeRare(trx, 'demand_days', settled)
          await mergeRare(trx, 'demand_months', monthOf(settled))
          await deleteOld(trx, addDays(today, -DEMAND_DAYS_KEPT), settled)
        })
      }),
  }
}

async function addBatch(trx: Transaction<Tables>, { id, rows }: DemandBatch): Promise<void> {
  const [first] = rows
  if (first === undefined) return
  const { numInsertedOrUpdatedRows } = await trx
    .insertInto('demand_batches')
    .values({ id, day: first.day })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .executeTakeFirst()
  if (numInsertedOrUpdatedRows !== 1n) return
  await addRows(trx, 'demand_days', rows)
  await addRows(
    trx,
    'demand_months',
    rows.map((row) => ({ ...row, day: monthOf(row.day) })),
  )
}

async function addRows(trx: Transaction<Tables>, table: Table, rows: readonly DemandRow[]): Promise<void> {
  const added = new Map<string, Tables[Table]>()
  for (const { shopId, kind, day, key, count } of rows) {
    const name = [shopId, kind, day, key].join('\n')
    const before = added.get(name)?.count ?? 0
    added.set(name, { shop_id: shopId, kind, period: day, key, count: before + count })
  }
  // Always in the same order: two instances that lock rows in two orders would lock each other out.
  const values = [...added].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => row)
  if (values.length === 0) return
  await trx
    .insertInto(table)
    .values(values)
    .onConflict((conflict) =>
      conflict
        .columns(['shop_id', 'kind', 'period', 'key'])
        .doUpdateSet({ count: sql<number>`${sql.ref(`${table}.count`)} + excluded.count` }),
    )
    .execute()
}

async function readTotals(db: Kysely<Tables>, shopId: string, period: Period): Promise<DemandTotals> {
  const counts = countsIn(shopId, period)
  const others = DEMAND_KINDS.filter((kind) => kind !== 'combination')
  const [totals, combinations, outcomes] = await Promise.all([
    sql<{ kind: DemandKind; key: string; total: Sum }>`
      select kind, key, sum(count) as total from (${counts(others)}) as counts group by kind, key
    `.execute(db),
    readCombinations(db, counts(['combination'])),
    readOutcomes(db, shopId, period),
  ])
  return {
    totals: totals.rows.map(({ kind, key, total }) => ({ kind, key, count: Number(total) })),
    ...combinations,
    outcomes,
  }
}

async function readOutcomes(
  db: Kysely<Tables>,
  shopId: string,
  { from, to }: Period,
): Promise<DemandTotals['outcomes']> {
  const rows = await db
    .selectFrom('demand_days')
    .select(['period', 'key', 'count'])
    .where('shop_id', '=', shopId)
    .where('kind', '=', 'outcome')
    .where('period', '>=', from)
    .where('period', '<=', to)
    .orderBy('period')
    .orderBy('key')
    .execute()
  return rows.map(({ period: day, key, count }) => ({ day, key, count }))
}

/** The frequent ones by name; the last row, without a key, is all of them together. */
async function readCombinations(
  db: Kysely<Tables>,
  counts: RawBuilder<unknown>,
): Promise<Pick<DemandTotals, 'combinations' | 'otherCombinations'>> {
  const { rows } = await sql<{ key: string | null; total: Sum | null }>`
    with sums as materialized (select key, sum(count) as total from (${counts}) as counts group by key),
    told as (
      select key, total from sums where key <> ${MERGED_KEY} and total >= ${MERGE_BELOW}
      order by total desc, key limit ${COMBINATIONS_TOLD}
    )
    select key, total from told union all select null, sum(total) from sums
  `.execute(db)
  let otherCombinations = 0
  const combinations: { key: string; count: number }[] = []
  for (const { key, total } of rows) {
    const count = Number(total ?? 0)
    otherCombinations += key === null ? count : -count
    if (key !== null) combinations.push({ key, count })
  }
  combinations.sort((a, b) => b.count - a.count || (a.key < b.key ? -1 : 1))
  return { combinations, otherCombinations }
}

/** PostgreSQL hands sums over as text. */
type Sum = number | string

/** Rows of a shop in a period: months where they are whole, days around them. */
function countsIn(shopId: string, period: Period): (kinds: readonly DemandKind[]) => RawBuilder<unknown> {
  const { months, days } = partsOf(period)
  const spans = [
    ...(months === undefined ? [] : [{ table: 'demand_months', span: months }]),
    ...days.map((span) => ({ table: 'demand_days', span })),
  ]
  return (kinds) => {
    const selects = spans.map(
      ({ table, span }) => sql`
        select kind, key, count from ${sql.table(table)}
        where shop_id = ${shopId} and kind in (${sql.join(kinds)})
        and period >= ${span.from} and period <= ${span.to}`,
    )
    return sql.join(selects, sql` union all `)
  }
}

/** Combinations that were rare in a day, or a month, that is over say more of one shopper than of many. */
async function mergeRare(trx: Transaction<Tables>, table: Table, before: string): Promise<void> {
  const rare = await trx
    .deleteFrom(table)
    .where('kind', '=', 'combination')
    .where('period', '<', before)
    .where('count', '<', MERGE_BELOW)
    .where('key', '<>', MERGED_KEY)
    .returning(['shop_id', 'period', 'count'])
    .execute()
  const rows = rare.map(
    ({ shop_id, period, count }): DemandRow => ({
      shopId: shop_id,
      day: period,
      kind: 'combination',
      key: MERGED_KEY,
      count,
    }),
  )
  await addRows(trx, table, rows)
}

async function deleteOld(trx: Transaction<Tables>, oldest: string, settled: string): Promise<void> {
  await trx.deleteFrom('demand_days').where('period', '<', oldest).execute()
  await trx.deleteFrom('demand_months').where('period', '<', monthOf(oldest)).execute()
  await trx.deleteFrom('demand_batches').where('day', '<', settled).execute()
}
