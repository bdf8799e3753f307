import { write, writeSync } from 'node:fs'
import type { DestinationStream } from 'pino'

/** Where log lines go. */
export interface LogStream extends DestinationStream {
  /** Writes what is left, at once and as far as it can be written: for the exit. */
  flush(): void
}

/** Lines that wait for room are held up to here; what comes then is counted, not kept. [characters] */
const MAX_WAITING = 4 * 1024 * 1024
/** Pause before another try, where a disk is full or a pipe isn't being read. [ms] */
const RETRY_MS = 100

/**
 * Writes lines without holding up requests. A disk that is full, or a reader that has gone, neither ends the service
 * nor keeps it from ending: lines wait for room, and how many were lost is told.
 *
 * @param fd - An open file, pipe or terminal
 * @returns The stream
 */
export function logStream(fd: number): LogStream {
  let lines: string[] = []
  let waiting = 0
  let lost = 0
  /** What the next write is to write. */
  let rest: Buffer | undefined
  let isWriting = false
  let isRetrying = false

  function take(): Buffer | undefined {
    if (lost > 0 && rest === undefined) {
      lines.push(`${JSON.stringify({ level: 40, time: Date.now(), event: 'log lines lost', count: lost })}\n`)
      lost = 0
    }
    if (rest === undefined && lines.length > 0) {
      rest = Buffer.from(lines.join(''))
      lines = []
      waiting = 0
    }
    return rest
  }

  function pump(): void {
    const bytes = isWriting || isRetrying ? undefined : take()
    if (bytes === undefined) return
    isWriting = true
    write(fd, bytes, 0, bytes.length, null, (error, written) => {
      isWriting = false
      if (error === null) {
        rest = written < bytes.length ? bytes.subarray(written) : undefined
        return pump()
      }
      isRetrying = true
      setTimeout(() => {
        isRetrying = false
        pump()
      }, RETRY_MS).unref()
    })
  }

  return {
    write(line) {
      if (waiting + line.length > MAX_WAITING) {
        lost += 1
        return
      }
      waiting += line.length
      lines.push(line)
      pump()
    },
    flush() {
      // What is being written just now is finished by its own thread.
      if (isWriting) rest = undefined
      try {
        for (let bytes = take(); bytes !== undefined; bytes = take()) {
          const written = writeSync(fd, bytes)
          rest = written < bytes.length ? bytes.subarray(written) : undefined
        }
      } catch {
        // No room, or nobody reads: the exit doesn't wait for that.
      }
    },
  }
}
