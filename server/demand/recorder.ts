import { randomUUID } from 'node:crypto'
import { setImmediate as nextTurn, setTimeout as pause } from 'node:timers/promises'
import type { PreparedRange } from '../../core/index.ts'
import type { DemandBatch, DemandRow, DemandStore } from '../store/demand.ts'
import { type AnsweredRequest, countRequest } from './count.ts'
import { type DemandKind, MERGED_KEY } from './keys.ts'
import { dayOf } from './period.ts'

/** Counts what shoppers ask for, without making them wait. */
export interface DemandRecorder {
  /** Takes note of an answered request; what it counts for is worked out later. */
  record(range: PreparedRange, request: AnsweredRequest): void
  /** Writes everything that has been noted; what can't be written is kept. Never rejects. */
  flush(): Promise<void>
  /** Stops, after a last flush. */
  close(): Promise<void>
}

/** What {@link demandRecorder} needs. */
export interface RecorderOptions {
  readonly store: Pick<DemandStore, 'addDemand' | 'tidyDemand'>
  /** Hears what can't be written, and when it can again. */
  readonly log?: (level: 'info' | 'error', message: string) => void
  /** The clock. [ms since 1970] */
  readonly now?: () => number
  /** Pause between two flushes. [ms] */
  readonly everyMs?: number
}

/** Pause between two flushes. [ms] */
const FLUSH_MS = 3000
/** Requests that wait to be counted, at most: each holds on to its whole answer. */
const QUEUE_LENGTH = 256
/** Rows of one write: some milliseconds of SQLite, which the event loop waits for. */
const ROWS_PER_BATCH = 150
/** Different counts kept while the store can't be written; past this, new combinations are merged. */
const MOST_COUNTS = 50_000
/** How long the last flush is tried: a service that stops is not waited for much longer. [ms] */
const LAST_TRIES_MS = 3000
const LAST_PAUSE_MS = 300

interface Noted {
  readonly shopId: string
  readonly at: number
  readonly request: AnsweredRequest
}

/**
 * Makes a recorder. Requests are noted in memory, counted between requests, and written every few seconds in
 * batches that the store takes once each, however often they are sent.
 *
 * @param options - Where to write, the clock, and how often
 * @returns The recorder, running
 */
export function demandRecorder({
  store,
  log = () => {},
  now = Date.now,
  everyMs = FLUSH_MS,
}: RecorderOptions): DemandRecorder {
  let queue: Noted[] = []
  let scheduled = false
  /** By shop, day, kind and key, each on its line. */
  let counts = new Map<string, number>()
  let waiting: readonly DemandBatch[] = []
  let failing = false
  let tidiedDay = ''
  let running: Promise<void> | undefined

  function countQueue(): void {
    scheduled = false
    const noted = queue
    queue = []
    for (const { shopId, at, request } of noted) {
      const start = `${shopId}\n${dayOf(at)}\n`
      countRequest(request, (kind, key) => add(`${start}${kind}\n`, kind, key))
    }
  }

  function add(start: string, kind: DemandKind, key: string): void {
    const name = start + key
    const known = counts.get(name)
    if (known === undefined && kind === 'combination' && counts.size >= MOST_COUNTS) {
      const merged = start + MERGED_KEY
      counts.set(merged, (counts.get(merged) ?? 0) + 1)
    } else counts.set(name, (known ?? 0) + 1)
  }

  async function write(): Promise<void> {
    countQueue()
    // What failed goes first and as it was, so that the store can tell whether it has it already.
    if (waiting.length === 0) {
      waiting = batchesOf(counts)
      counts = new Map()
    }
    try {
      while (waiting[0] !== undefined) {
        await store.addDemand(waiting[0])
        waiting = waiting.slice(1)
        await nextTurn()
      }
      await tidyDaily()
      if (failing) log('info', 'Demand is written again.')
      failing = false
    } catch (error) {
      if (!failing) log('error', `Demand is kept in memory: ${messageOf(error)}`)
      failing = true
    }
  }

  async function tidyDaily(): Promise<void> {
    const today = dayOf(now())
    if (today === tidiedDay) return
    await store.tidyDemand(today)
    tidiedDay = today
  }

  function flush(): Promise<void> {
    running ??= write().finally(() => {
      running = undefined
    })
    return running
  }

  const timer = setInterval(() => void flush(), everyMs)
  timer.unref()

  return {
    record(range, request) {
      const { shop } = range.document
      if (shop.countDemand === false) return
      queue.push({ shopId: shop.id, at: now(), request })
      if (queue.length < QUEUE_LENGTH || scheduled) return
      scheduled = true
      setImmediate(countQueue)
    },
    async flush() {
      // One that runs already may have begun before the last request.
      await running
      await flush()
    },
    async close() {
      const until = performance.now() + LAST_TRIES_MS
      clearInterval(timer)
      await running
      for (;;) {
        await flush()
        if (waiting.length === 0 && counts.size === 0 && queue.length === 0) return
        if (performance.now() > until) break
        if (failing) await pause(LAST_PAUSE_MS)
      }
      const lost = waiting.reduce((sum, { rows }) => sum + rows.length, counts.size)
      log('error', `${lost} counts of demand could not be written and are lost.`)
    },
  }
}

function batchesOf(counts: ReadonlyMap<string, number>): readonly DemandBatch[] {
  const rows = [...counts].map(([name, count]): DemandRow => {
    const [shopId = '', day = '', kind = '', ...key] = name.split('\n')
    return { shopId, day, kind: kind as DemandKind, key: key.join('\n'), count }
  })
  const batches: DemandBatch[] = []
  for (let start = 0; start < rows.length; start += ROWS_PER_BATCH) {
    batches.push({ id: randomUUID(), rows: rows.slice(start, start + ROWS_PER_BATCH) })
  }
  return batches
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}
