import { mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import {
  CompiledQuery,
  type DatabaseConnection,
  type Driver,
  Kysely,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'
import type { Backend } from './backend.ts'
import { openConnection, type SqliteConnection } from './sqlite-connection.ts'
import type { Tables } from './tables.ts'

/**
 * Opens a SQLite file, made with its folder where there is none.
 *
 * @param file - Path of the file
 * @returns The database; where the file can't be opened, the first statement fails
 * @throws The file system's error where the folder can't be made
 */
export function sqliteBackend(file: string): Backend {
  mkdirSync(dirname(file), { recursive: true })
  const db = new Kysely<Tables>({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => driverFor(file),
      createIntrospector: (kysely) => new SqliteIntrospector(kysely),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  })
  return {
    kind: 'sqlite',
    db,
    isUnavailable: isSqliteUnavailable,
    announce: async () => {},
    listen: () => {},
    close: () => db.destroy(),
  }
}

/** One connection, lent to one asker at a time. */
function driverFor(file: string): Driver {
  let connection: SqliteConnection | undefined
  let free: Promise<void> = Promise.resolve()
  let giveBack = (): void => {}
  const say = (sql: string) => async (lent: DatabaseConnection) => {
    await lent.executeQuery(CompiledQuery.raw(sql))
  }
  return {
    async init() {
      connection = await openConnection(file)
    },
    async acquireConnection() {
      const before = free
      let release = (): void => {}
      free = new Promise((resolve) => {
        release = resolve
      })
      await before
      giveBack = release
      if (connection === undefined) throw new TypeError('The database connection is not open')
      return connection
    },
    releaseConnection: async () => giveBack(),
    beginTransaction: say('begin'),
    commitTransaction: say('commit'),
    rollbackTransaction: say('rollback'),
    async destroy() {
      await connection?.close()
    },
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
