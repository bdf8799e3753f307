import type { Kysely, Migration } from 'kysely'

/** Shops, versions of their ranges, keys, and the counters that instances poll. */
export const shopsRangesKeys: Migration = {
  async up(db: Kysely<unknown>): Promise<void> {
    // "if not exists": SQLite commits each statement by itself, so a crash may leave a part of these behind.
    await db.schema
      .createTable('shops')
      .ifNotExists()
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('created_at', 'text', (column) => column.notNull())
      .execute()
    await db.schema
      .createTable('range_versions')
      .ifNotExists()
      .addColumn('shop_id', 'text', (column) => column.notNull().references('shops.id'))
      .addColumn('version', 'integer', (column) => column.notNull())
      .addColumn('document', 'text', (column) => column.notNull())
      .addColumn('digest', 'text', (column) => column.notNull())
      .addColumn('author', 'text', (column) => column.notNull())
      .addColumn('created_at', 'text', (column) => column.notNull())
      .addColumn('origin', 'text', (column) => column.notNull())
      .addColumn('restored_from', 'integer')
      .addPrimaryKeyConstraint('range_versions_pk', ['shop_id', 'version'])
      .execute()
    await db.schema
      .createTable('keys')
      .ifNotExists()
      .addColumn('id', 'text', (column) => column.primaryKey())
      .addColumn('shop_id', 'text', (column) => column.notNull().references('shops.id'))
      .addColumn('name', 'text', (column) => column.notNull())
      .addColumn('secret_hash', 'text', (column) => column.notNull().unique())
      .addColumn('scopes', 'text', (column) => column.notNull())
      .addColumn('created_at', 'text', (column) => column.notNull())
      .addColumn('expires_at', 'text')
      .addColumn('revoked_at', 'text')
      .addColumn('last_used_at', 'text')
      .execute()
    await db.schema
      .createTable('revisions')
      .ifNotExists()
      .addColumn('name', 'text', (column) => column.primaryKey())
      .addColumn('value', 'integer', (column) => column.notNull())
      .execute()
    const counters = (db as Kysely<{ revisions: { name: string; value: number } }>).insertInto('revisions')
    await counters
      .values([
        { name: 'ranges', value: 0 },
        { name: 'keys', value: 0 },
      ])
      .onConflict((conflict) => conflict.column('name').doNothing())
      .execute()
  },
}
