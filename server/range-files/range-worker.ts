import { readlinkSync } from 'node:fs'
import { setPriority } from 'node:os'
import { basename } from 'node:path'
import { parentPort } from 'node:worker_threads'
import { checkStored, readDraft } from './draft.ts'
import type { ReaderAnswer, ReaderTask } from './range-reader.ts'

/** Where processors are few, shoppers come first. */
const NICENESS = 10
try {
  // Linux alone keeps a priority for each thread, and tells a thread its number only so.
  setPriority(Number(basename(readlinkSync('/proc/thread-self'))), NICENESS)
} catch {
  // Elsewhere it shares the processors evenly.
}

/** The thread that reads large ranges: one task after the other, an answer to each. */
parentPort?.on('message', (task: ReaderTask) => {
  const answer: ReaderAnswer = task.kind === 'draft' ? readDraft(task.draft) : checkStored(task.text)
  parentPort?.postMessage(answer)
})
