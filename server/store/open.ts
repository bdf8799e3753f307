import { setTimeout as pause } from 'node:timers/promises'
import type { Backend } from './backend.ts'
import { sqlStore } from './sql-store.ts'
import { isSqliteUnavailable, sqliteBackend } from './sqlite.ts'
import { type Store, StoreUnavailableError } from './store.ts'

/**
 * Opens the store that a setting names and brings its tables up to date.
 *
 * @param url - `postgres://...`, or `sqlite:` and the path of a file
 * @param waitS - How long to wait for a database that is not there yet. [s] 0..600
 * @returns The store
 * @throws StoreUnavailableError where it isn't there in time
 */
export async function openStore(url: string, waitS: number): Promise<Store> {
  const deadline = performance.now() + waitS * 1000
  for (;;) {
    let store: Store | undefined
    try {
      store = sqlStore(await backendFor(url))
      await store.migrate()
      return store
    } catch (error) {
      await store?.close().catch(() => {})
      const later = error instanceof StoreUnavailableError || isSqliteUnavailable(error)
      if (!later) throw error
      if (performance.now() >= deadline) {
        throw error instanceof StoreUnavailableError ? error : new StoreUnavailableError(error)
      }
      await pause(500)
    }
  }
}

async function backendFor(url: string): Promise<Backend> {
  if (url.startsWith('sqlite:')) return sqliteBackend(url.slice('sqlite:'.length))
  // Loaded where it is asked for: the start of the others need not wait for it.
  const { postgresBackend } = await import('./postgres.ts')
  return postgresBackend(url)
}
