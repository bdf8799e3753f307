import { isUnchanged } from '../range-files/diff.ts'
import type { ReadRange } from '../range-files/draft.ts'
import { type RangeReader, RangeReaderError } from '../range-files/range-reader.ts'
import { FetchRangeError, type RangeFetcher } from './fetch-range.ts'
import type { Live } from './live.ts'
import { type Store, type StoredVersion, StoreUnavailableError } from './store.ts'
import { versionOf } from './versions.ts'

/** Where a shop's range is fetched from. */
export interface RangeSource {
  readonly shopId: string
  readonly url: string
}

/** What {@link startPulling} works with. */
export interface PullOptions {
  readonly sources: readonly RangeSource[]
  /** Pause between two looks at a source. [s] */
  readonly everyS: number
  readonly fetcher: RangeFetcher
  readonly store: Store
  readonly live: Pick<Live, 'take' | 'reader'>
  readonly log: (level: 'info' | 'error', message: string) => void
}

/** What may go wrong at any look; the next one may find it well. */
const KNOWN_ERRORS = [FetchRangeError, StoreUnavailableError, RangeReaderError]

/** Sources asked at once: one that hangs for its whole time keeps few others waiting. */
const PULLED_AT_ONCE = 8

/** A running pull. */
export interface Pulling {
  /** Looks at every source once, now. */
  pullAll(): Promise<void>
  stop(): Promise<void>
}

/**
 * Keeps ranges like the documents at configured addresses. A document that can't be fetched or breaks the
 * contract changes nothing: the last good range stays in force.
 *
 * @param options - Sources, how often, and what to work with
 * @returns The running pull
 */
export function startPulling(options: PullOptions): Pulling {
  const { sources, log } = options
  const known = new Map<string, string>()
  const complaints = new Map<string, string>()
  let running: Promise<void> | undefined

  async function pullOne(source: RangeSource): Promise<void> {
    try {
      const outcome = await pullSource(options, source, known)
      if (outcome !== undefined) log('info', `Range of "${source.shopId}" pulled: ${outcome}.`)
      complaints.delete(source.shopId)
    } catch (error) {
      if (!KNOWN_ERRORS.some((known) => error instanceof known) || !(error instanceof Error)) throw error
      // Said once, not at every look.
      if (complaints.get(source.shopId) === error.message) return
      complaints.set(source.shopId, error.message)
      log('error', `Range of "${source.shopId}" not pulled, the last good one stays: ${error.message}`)
    }
  }

  function pullAll(): Promise<void> {
    const waiting = [...sources]
    const pullNext = async (): Promise<void> => {
      for (let source = waiting.shift(); source !== undefined; source = waiting.shift()) {
        await pullOne(source)
      }
    }
    running ??= Promise.all(Array.from({ length: PULLED_AT_ONCE }, pullNext))
      .then(() => {})
      .finally(() => {
        running = undefined
      })
    return running
  }

  const timer = setInterval(() => void pullAll(), options.everyS * 1000)
  timer.unref()
  return {
    pullAll,
    stop: async () => {
      clearInterval(timer)
      await options.fetcher.close()
      await running
    },
  }
}

async function pullSource(
  { fetcher, store, live }: PullOptions,
  { shopId, url }: RangeSource,
  known: Map<string, string>,
): Promise<string | undefined> {
  const fetched = await fetcher.fetch(url, known.get(shopId))
  if (fetched.kind === 'unchanged') return undefined
  const inForce = await store.version(shopId)
  const range = await readFetched(live.reader, fetched.bytes, inForce)
  if (range.shopId !== shopId) {
    throw new FetchRangeError(`It is the range of another shop, "${range.shopId}".`, false)
  }
  const outcome = await bringIntoForce({ store, live }, range, inForce)
  if (fetched.etag === undefined) known.delete(shopId)
  else known.set(shopId, fetched.etag)
  return outcome
}

async function readFetched(
  reader: RangeReader,
  bytes: Uint8Array,
  inForce: StoredVersion | undefined,
): Promise<ReadRange> {
  const body = { kind: 'json', bytes, contentType: 'application/json' } as const
  const reading = await reader.readDraft({ body, base: inForce?.text })
  switch (reading.kind) {
    case 'range':
      return reading
    case 'faults': {
      const [first] = reading.faults
      const message = `${reading.count} faults, first ${first?.pointer}: ${first?.message}`
      throw new FetchRangeError(message, false)
    }
    case 'refused':
      throw new FetchRangeError(`Its answer can't be read: ${reading.message}`, false)
    case 'part-missing':
      throw new Error('a pulled range is never CSV')
  }
}

async function bringIntoForce(
  { store, live }: Pick<PullOptions, 'store' | 'live'>,
  range: ReadRange,
  inForce: StoredVersion | undefined,
): Promise<string | undefined> {
  const version = versionOf(range, { author: 'pull', origin: 'pulled' })
  if (inForce === undefined) {
    const created = await store.createShop(version)
    if (created) live.take({ ...version, version: 1 })
    return created ? 'new shop' : undefined
  }
  if (isUnchanged(range.changes)) return undefined
  const written = await store.writeRange(version, inForce.version)
  if (!written.ok)
    throw new FetchRangeError('Somebody else has just written it; the next look will tell.', true)
  live.take(written.stored)
  return `version ${written.stored.version}`
}
