import { setTimeout as pause } from 'node:timers/promises'
import type { Backend } from './backend.ts'
import { postgresBackend } from './postgres.ts'
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
      store = sqlStore(backendFor(url))
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

function backendFor(url: string): Backend {
  return url.startsWith('sqlite:') ? sqliteBackend(url.slice('sqlite:'.length)) : postgresBackend(url)
}
