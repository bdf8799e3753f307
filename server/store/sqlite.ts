import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, SqliteDialect } from 'kysely'
import type { Backend } from './backend.ts'
import type { Tables } from './tables.ts'

/** How long a statement waits for another process that writes. It blocks this one, so it is short. [ms] */
const BUSY_TIMEOUT_MS = 1000

/**
 * Opens a SQLite file, made with its folder where there is none.
 *
 * @param file - Path of the file
 * @returns The database
 * @throws The database's error where the file can't be opened
 */
export function sqliteBackend(file: string): Backend {
  mkdirSync(dirname(file), { recursive: true })
  const database = new Database(file, { timeout: BUSY_TIMEOUT_MS })
  database.pragma('journal_mode = WAL')
  // FULL: an acknowledged write outlives a loss of power, not only a crash of this process.
  database.pragma('synchronous = FULL')
  database.pragma('foreign_keys = ON')
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
  return {
    kind: 'sqlite',
    db,
    isUnavailable: isSqliteUnavailable,
    announce: async () => {},
    listen: () => {},
    close: () => db.destroy(),
  }
}

/** Result codes of SQLite that speak of the file, the disk or another process, not of our statement. */
const UNAVAILABLE_CODES = /^SQLITE_(BUSY|LOCKED|FULL|IOERR|READONLY|CANTOPEN|CORRUPT|NOTADB|NOMEM|PERM|AUTH)/

/**
 * Whether an error of SQLite means "not now".
 *
 * @param error - What a statement or the opening of a file threw
 * @returns True where it makes sense to call again later
 */
export function isSqliteUnavailable(error: unknown): boolean {
  if (!(error instanceof Error)) return false
  if (error instanceof TypeError && error.message === 'The database connection is not open') return true
  // SQLite has rolled back by itself, as it does when the disk is full or fails.
  if (error.message === 'cannot rollback - no transaction is active') return true
  return 'code' in error && typeof error.code === 'string' && UNAVAILABLE_CODES.test(error.code)
}
