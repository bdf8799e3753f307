import type { Worker } from 'node:worker_threads'
import { startThread } from '../thread.ts'
import { checkStored, type Draft, type DraftReading, readDraft, type StoredReading } from './draft.ts'

/** What the thread is asked. */
export type ReaderTask =
  | { readonly kind: 'draft'; readonly draft: Draft }
  | { readonly kind: 'stored'; readonly text: string }

/** What it answers. */
export type ReaderAnswer = DraftReading | StoredReading

/** Reads ranges without keeping shoppers waiting. */
export interface RangeReader {
  /** Reads a body into the range that it makes; rejects with {@link RangeReaderError}. */
  readDraft(draft: Draft): Promise<DraftReading>
  /** Holds a text from the store to the contract; rejects with {@link RangeReaderError}. */
  checkStored(text: string): Promise<StoredReading>
  close(): Promise<void>
}

/** Thrown where a range was not read, whatever is in it: too many wait, the thread ended, or it took too long. */
export class RangeReaderError extends Error {
  readonly reason: 'busy' | 'ended' | 'slow'

  constructor(reason: RangeReaderError['reason'], cause?: unknown) {
    super(SENTENCES[reason], { cause })
    this.name = 'RangeReaderError'
    this.reason = reason
  }
}

const SENTENCES = {
  busy: 'Too many ranges wait to be read.',
  ended: 'The thread that reads ranges ended.',
  slow: 'The range took too long to read.',
} as const

/** How ranges are read. */
export interface RangeReaderOptions {
  /** Starts the thread. */
  readonly start?: () => Promise<Worker>
  /** For one task, its wait included: less than a route has, so that nothing is written after its caller has gone. [ms] */
  readonly deadlineMs?: number
}

/** Up to here reading takes a few milliseconds, less than the way to a thread and back. [bytes] */
const SMALL_BYTES = 128 * 1024
/** Tasks that may wait; each holds at most one body and one range in memory. */
const MAX_WAITING = 8
const DEADLINE_MS = 8000
/** A thread with nothing to do is ended after so long: it holds some 40 MB. [ms] */
const IDLE_MS = 30_000
/** Many times what the largest file needs. [MB] */
const HEAP_MB = 512

interface Job {
  readonly task: ReaderTask
  readonly resolve: (answer: ReaderAnswer) => void
  readonly reject: (error: RangeReaderError) => void
  readonly timer: NodeJS.Timeout
}

/**
 * Makes a reader: small ranges are read on the spot, large ones by a thread that is started when the first comes.
 *
 * @param options - How, where it differs from a release
 * @returns The reader
 */
export function rangeReader(options: RangeReaderOptions = {}): RangeReader {
  const { start = startWorker, deadlineMs = DEADLINE_MS } = options
  const waiting: Job[] = []
  let worker: Worker | undefined
  let starting = false
  let current: Job | undefined
  let idle: NodeJS.Timeout | undefined

  function ask(task: ReaderTask): Promise<ReaderAnswer> {
    if (waiting.length >= MAX_WAITING) return Promise.reject(new RangeReaderError('busy'))
    return new Promise((resolve, reject) => {
      const job: Job = { task, resolve, reject, timer: setTimeout(() => giveUp(job), deadlineMs) }
      waiting.push(job)
      next()
    })
  }

  function next(): void {
    clearTimeout(idle)
    if (current !== undefined || starting) return
    if (worker === undefined) {
      if (waiting.length > 0) void open()
      return
    }
    current = waiting.shift()
    if (current !== undefined) worker.postMessage(current.task)
    else idle = setTimeout(() => end(worker), IDLE_MS).unref()
  }

  async function open(): Promise<void> {
    starting = true
    try {
      const opened = await start()
      worker = opened
      opened.unref()
      opened.on('message', (answer: ReaderAnswer) => settle((job) => job.resolve(answer)))
      opened.on('error', (error) => lose(opened, error))
      opened.on('exit', () => lose(opened))
    } catch (error) {
      const refused = new RangeReaderError('ended', error)
      for (const job of waiting.splice(0)) fail(job, refused)
    } finally {
      starting = false
    }
    next()
  }

  /** The task that it was at may be what ended it, so that one is not tried again; those that wait are. */
  function lose(lost: Worker, cause?: unknown): void {
    if (worker !== lost) return
    worker = undefined
    settle((job) => job.reject(new RangeReaderError('ended', cause)))
  }

  function settle(tell: (job: Job) => void): void {
    const job = current
    current = undefined
    if (job !== undefined) {
      clearTimeout(job.timer)
      tell(job)
    }
    next()
  }

  function giveUp(job: Job): void {
    const place = waiting.indexOf(job)
    if (place >= 0) waiting.splice(place, 1)
    fail(job, new RangeReaderError('slow'))
    if (job !== current) return
    current = undefined
    end(worker)
    next()
  }

  function end(ended: Worker | undefined): void {
    if (worker === ended) worker = undefined
    void ended?.terminate()
  }

  return {
    readDraft: async (draft) => {
      const size = (draft.body?.bytes.length ?? 0) + (draft.base?.length ?? 0)
      if (size <= SMALL_BYTES) return readDraft(draft)
      return (await ask({ kind: 'draft', draft })) as DraftReading
    },
    checkStored: async (text) => {
      if (text.length <= SMALL_BYTES) return checkStored(text)
      return (await ask({ kind: 'stored', text })) as StoredReading
    },
    close: async () => {
      clearTimeout(idle)
      const ended = worker
      worker = undefined
      const open = current === undefined ? waiting.splice(0) : [current, ...waiting.splice(0)]
      current = undefined
      for (const job of open) fail(job, new RangeReaderError('ended'))
      await ended?.terminate()
    },
  }
}

function fail(job: Job, error: RangeReaderError): void {
  clearTimeout(job.timer)
  job.reject(error)
}

function startWorker(): Promise<Worker> {
  return startThread(
    { name: 'range-worker', source: './range-files/range-worker.ts' },
    { resourceLimits: { maxOldGenerationSizeMb: HEAP_MB } },
  )
}
