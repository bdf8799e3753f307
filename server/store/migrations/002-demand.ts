import { type Kysely, type Migration, SqliteAdapter, sql } from 'kysely'

/** Demand by day and by month, and which batches of it have been added. */
export const demand: Migration = {
  async up(db: Kysely<unknown>): Promise<void> {
    const isSqlite = db.getExecutor().adapter instanceof SqliteAdapter
    // Compared byte by byte, as SQLite does, and several times as fast as by the rules of a language.
    const text = isSqlite ? sql`text` : sql`text collate "C"`
    for (const name of ['demand_days', 'demand_months'] as const) {
      const table = db.schema
        .createTable(name)
        .ifNotExists()
        .addColumn('shop_id', text, (column) => column.notNull())
        .addColumn('kind', text, (column) => column.notNull())
        .addColumn('period', text, (column) => column.notNull())
        .addColumn('key', text, (column) => column.notNull())
        .addColumn('count', 'integer', (column) => column.notNull())
        .addPrimaryKeyConstraint(`${name}_pk`, ['shop_id', 'kind', 'period', 'key'])
      // Rows lie in the order of their key, so that a period is read in one go.
      await (isSqlite ? table.modifyEnd(sql`without rowid`) : table).execute()
    }
    await db.schema
      .createTable('demand_batches')
      .ifNotExists()
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('day', 'text', (column) => column.notNull())
      .execute()
  },
}
