import { type Kysely, Migrator } from 'kysely'
import { shopsRangesKeys } from './001-shops-ranges-keys.ts'

/** Every migration in its order. One that has been released is never changed, only followed by another. */
const MIGRATIONS = { '001-shops-ranges-keys': shopsRangesKeys }

/**
 * Brings a database's tables up to date.
 *
 * @param db - The database
 * @throws The database's error, or an error of kysely where a newer release has migrated this database
 */
export async function migrateToLatest(db: Kysely<never>): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...MIGRATIONS }) } })
  const { error } = await migrator.migrateToLatest()
  if (error === undefined) return
  // SQLite knows no lock for this: another process may have finished the same migration in the meantime.
  const again = await migrator.migrateToLatest()
  if (again.error !== undefined) throw again.error
}
