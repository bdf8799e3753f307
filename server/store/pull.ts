import { readRange } from '../../shared/range-reading.ts'
import { isUnchanged, rangeChanges } from '../range-files/diff.ts'
import { FetchRangeError, type RangeFetcher } from './fetch-range.ts'
import type { Live } from './live.ts'
import { type Store, StoreUnavailableError } from './store.ts'
import { newVersion } from './versions.ts'

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
  readonly live: Pick<Live, 'take'>
  readonly log: (level: 'info' | 'error', message: string) => void
}

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
      if (!(error instanceof FetchRangeError || error instanceof StoreUnavailableError)) throw error
      // Said once, not at every look.
      if (complaints.get(source.shopId) === error.message) return
      complaints.set(source.shopId, error.message)
      log('error', `Range of "${source.shopId}" not pulled, the last good one stays: ${error.message}`)
    }
  }

  function pullAll(): Promise<void> {
    running ??= (async () => {
      for (const source of sources) await pullOne(source)
    })().finally(() => {
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
  const reading = readRange(fetched.document)
  if (!reading.ok) {
    const [first] = reading.faults
    throw new FetchRangeError(
      `${reading.faults.length} faults, first ${first?.pointer}: ${first?.message}`,
      false,
    )
  }
  if (reading.range.shop.id !== shopId) {
    throw new FetchRangeError(`It is the range of another shop, "${reading.range.shop.id}".`, false)
  }
  const version = newVersion(reading.range, { author: 'pull', origin: 'pulled' })
  const outcome = await bringIntoForce(store, live, version)
  if (fetched.etag === undefined) known.delete(shopId)
  else known.set(shopId, fetched.etag)
  return outcome
}

async function bringIntoForce(
  store: Store,
  live: Pick<Live, 'take'>,
  version: ReturnType<typeof newVersion>,
): Promise<string | undefined> {
  const inForce = await store.version(version.shopId)
  if (inForce === undefined) {
    const created = await store.createShop(version)
    if (created) live.take({ ...version, version: 1 })
    return created ? 'new shop' : undefined
  }
  if (isUnchanged(rangeChanges(JSON.parse(inForce.text), JSON.parse(version.text)))) return undefined
  const written = await store.writeRange(version, inForce.version)
  if (!written.ok)
    throw new FetchRangeError('Somebody else has just written it; the next look will tell.', true)
  live.take(written.stored)
  return `version ${written.stored.version}`
}
