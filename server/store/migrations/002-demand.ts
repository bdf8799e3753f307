import type { Kysely, Migration } from 'kysely'

/** Demand by day and by month, and which batches of it have been added. */
export const demand: Migration = {
  async up(db: Kysely<unknown>): Promise<void> {
    for (const table of ['demand_days', 'demand_months'] as const) {
      await db.schema
        .createTable(table)
        .ifNotExists()
        .addColumn('shop_id', 'text', (column) => column.notNull())
        .addColumn('kind', 'text', (column) => column.notNull())
        .addColumn('period', 'text', (column) => column.notNull())
        .addColumn('key', 'text', (column) => column.notNull())
        .addColumn('count', 'integer', (column) => column.notNull())
        .addPrimaryKeyConstraint(`${table}_pk`, ['shop_id', 'kind', 'period', 'key'])
        .execute()
    }
    await db.schema
      .createTable('demand_batches')
      .ifNotExists()
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('day', 'text', (column) => column.notNull())
      .execute()
  },
}
