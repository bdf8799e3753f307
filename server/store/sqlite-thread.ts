import { parentPort, workerData } from 'node:worker_threads'
import Database from 'better-sqlite3'
import type { Outcome, Question, Rows } from './sqlite-connection.ts'

/** How long a statement waits for another process that writes. [ms] */
const BUSY_TIMEOUT_MS = 1000

/** The thread in which a SQLite file is read and written: one statement after the other, an answer to each. */
const opened = attempt(open)

parentPort?.on('message', (question: Question | 'close') => {
  if (question === 'close') {
    if (opened.ok) opened.value.close()
    parentPort?.close()
  } else {
    const outcome = opened.ok ? attempt(() => run(opened.value, question)) : opened
    parentPort?.postMessage({ id: question.id, outcome })
  }
})

function open(): Database.Database {
  const database = new Database(String(workerData), { timeout: BUSY_TIMEOUT_MS })
  database.pragma('journal_mode = WAL')
  // FULL: an acknowledged write outlives a loss of power, not only a crash of this process.
  database.pragma('synchronous = FULL')
  database.pragma('foreign_keys = ON')
  return database
}

function run(database: Database.Database, { sql, parameters }: Question): Rows {
  const statement = database.prepare(sql)
  if (statement.reader) return { rows: statement.all(parameters), changes: undefined }
  return { rows: [], changes: statement.run(parameters).changes }
}

/** Errors lose their codes on the way out of a thread, so they go as plain data. */
function attempt<T>(work: () => T): Outcome<T> {
  try {
    return { ok: true, value: work() }
  } catch (error) {
    const { message, code } = error as { readonly message: string; readonly code?: string }
    return { ok: false, message, code }
  }
}
