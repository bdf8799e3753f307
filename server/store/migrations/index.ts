import { type Kysely, Migrator } from 'kysely'
import { shopsRangesKeys } from './001-shops-ranges-keys.ts'
import { demand } from './002-demand.ts'

/** Every migration in its order. One that has been released is never changed, only followed by another. */
const MIGRATIONS = { '001-shops-ranges-keys': shopsRangesKeys, '002-demand': demand }

/** Thrown where a newer release has already changed this database in ways that this one doesn't know. */
export class NewerStoreError extends Error {
  constructor() {
    super('A newer release has migrated this store. Run that release, or restore a backup from before it.')
    this.name = 'NewerStoreError'
  }
}

/**
 * Brings a database's tables up to date.
 *
 * @param db - The database
 * @throws NewerStoreError, or the database's error
 */
export async function migrateToLatest(db: Kysely<never>): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...MIGRATIONS }) } })
  const { error } = await migrator.migrateToLatest()
  if (error === undefined) return
  if (error instanceof Error && /^corrupted migrations/.test(error.message)) throw new NewerStoreError()
  // SQLite knows no lock for this: another process may have finished the same migration in the meantime.
  const again = await migrator.migrateToLatest()
  if (again.error !== undefined) throw again.error
}
