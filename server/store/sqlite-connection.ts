import type { CompiledQuery, DatabaseConnection, QueryResult } from 'kysely'
import { startThread } from '../thread.ts'

/** A statement for the thread. */
export interface Question {
  readonly id: number
  readonly sql: string
  readonly parameters: readonly unknown[]
}

/** What a statement came to. */
export interface Rows {
  readonly rows: unknown[]
  /** Rows that were written; undefined where it only reads. */
  readonly changes: number | undefined
}

/** What came of trying. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string; readonly code: string | undefined }

/** A SQLite file that is open in a thread. */
export interface SqliteConnection extends DatabaseConnection {
  close(): Promise<void>
}

interface Waiting {
  readonly resolve: (rows: Rows) => void
  readonly reject: (error: Error) => void
}

/** Says that the file can't be used now, as SQLite's own codes do. */
const THREAD_ENDED = 'SQLITE_IOERR'

/**
 * Opens a SQLite file in a thread of its own, so that no shopper waits for the disk: an acknowledged write may take
 * tens of milliseconds. A thread that ends is not started again, for its transaction has ended with it.
 *
 * @param file - Path of the file
 * @returns The connection; what keeps the file from being opened is told by the first statement
 */
export async function openConnection(file: string): Promise<SqliteConnection> {
  const waiting = new Map<number, Waiting>()
  const thread = await startThread(
    { name: 'sqlite-thread', source: './store/sqlite-thread.ts' },
    { workerData: file },
  )
  const ended = new Promise<void>((resolve) => thread.once('exit', () => resolve()))
  let asked = 0
  let cause: Error | undefined
  thread.unref()
  thread.on('error', (error) => end(error))
  thread.on('exit', () => end(new Error('The thread of the database has ended.')))
  thread.on('message', ({ id, outcome }: { readonly id: number; readonly outcome: Outcome<Rows> }) => {
    const asker = taken(id)
    if (outcome.ok) asker?.resolve(outcome.value)
    else asker?.reject(Object.assign(new Error(outcome.message), { code: outcome.code }))
  })

  function taken(id: number): Waiting | undefined {
    const asker = waiting.get(id)
    waiting.delete(id)
    if (waiting.size === 0) thread.unref()
    return asker
  }

  function end(error: Error): void {
    cause ??= Object.assign(error, { code: THREAD_ENDED })
    for (const id of [...waiting.keys()]) taken(id)?.reject(cause)
  }

  function ask(sql: string, parameters: readonly unknown[]): Promise<Rows> {
    if (cause !== undefined) return Promise.reject(cause)
    return new Promise((resolve, reject) => {
      asked += 1
      waiting.set(asked, { resolve, reject })
      // A process that waits for an answer must not end.
      thread.ref()
      thread.postMessage({ id: asked, sql, parameters } satisfies Question)
    })
  }

  return {
    async executeQuery<R>({ sql, parameters }: CompiledQuery): Promise<QueryResult<R>> {
      const { rows, changes } = await ask(sql, parameters)
      return {
        rows: rows as R[],
        ...(changes !== undefined && { numAffectedRows: BigInt(changes) }),
      }
    },
    // biome-ignore lint/correctness/useYield: nothing is read in parts, and this says so.
    async *streamQuery() {
      throw new Error('Rows of this database come all at once.')
    },
    async close() {
      thread.ref()
      thread.postMessage('close')
      await ended
    },
  }
}
