import { setTimeout as pause } from 'node:timers/promises'
import { type RangeReader, rangeReader } from '../range-files/range-reader.ts'
import { type KeyRing, keyRing } from './key-ring.ts'
import type { Ranges } from './ranges.ts'
import { type HeldRange, rangeShelf } from './shelf.ts'
import type { Revisions, Store, StoredVersion, VersionEntry } from './store.ts'

/** How often an instance asks whether anything has changed. [ms] */
const POLL_MS = 1000
/** How often the last use of keys is written down. [ms] */
const NOTE_USES_MS = 30_000

/** Documents that are asked of the store at once. */
const DOCUMENTS_AT_ONCE = 100
/** Between two ranges that are checked while the service runs, so that shoppers have their turn. [ms] */
const CHECK_PAUSE_MS = 5
/** Up to so many shops, every range is held to the contract before the service starts; more are while it runs. */
const CHECKED_AT_START = 20

/** How the memory stands to the store. */
export interface LiveState {
  /** Whether the store answered when it was last asked. */
  readonly available: boolean
  /** Time since it last answered, whatever the clock on the wall has done. [ms] */
  readonly ageMs: number
  /** Shops whose range has yet to be held to the contract. */
  readonly unchecked: number
  /** Shops whose version in force can't be used, by shop id: the last good one is served, or none. */
  readonly faulty: ReadonlyMap<string, string>
}

/** What is in memory of a store, kept up to date. */
export interface Live {
  readonly ranges: Ranges
  readonly keys: KeyRing
  /** The range of a shop with its version, or undefined where there is no such shop. */
  held(shopId: string): HeldRange | undefined
  state(): LiveState
  /** Reads ranges that are to be written. */
  readonly reader: RangeReader
  /** Looks for changes now; never rejects, see {@link Live.state}. */
  refresh(): Promise<void>
  /** Takes a version that has been checked and just been written, without asking the store for it. */
  take(stored: StoredVersion): void
  close(): Promise<void>
}

/** What {@link openLive} needs. */
export interface LiveOptions {
  readonly store: Store
  /** Hears what goes wrong, and when it is well again. */
  readonly log?: (level: 'info' | 'error', message: string) => void
  readonly reader?: RangeReader
}

/**
 * Reads a store into memory and keeps the memory up to date: by the store's hints, and by asking each second.
 * What can't be read leaves the last good state in force.
 *
 * @param options - The store and who hears of faults
 * @returns The memory, filled
 * @throws StoreUnavailableError where the store can't be read now
 */
export async function openLive(options: LiveOptions): Promise<Live> {
  const { store, log = () => {}, reader = rangeReader() } = options
  const faulty = new Map<string, string>()
  /** Versions that can't be used, so that each is looked at and told of once. */
  const refused = new Map<string, VersionEntry>()
  const shelf = rangeShelf({ onFault: refuse })
  const keys = keyRing()
  let seen: Revisions | undefined
  let available = true
  let answeredAt = performance.now()
  let running: Promise<void> | undefined
  let wanted = false
  let closed = false

  function refuse(entry: VersionEntry, fault: string): void {
    const reason = `version ${entry.version}${fault}`
    faulty.set(entry.shopId, reason)
    refused.set(entry.shopId, entry)
    log('error', `The range of shop "${entry.shopId}" can't be used, the last good one stays: ${reason}`)
  }

  function take(stored: StoredVersion, restored = false): void {
    if (!isNews(stored, restored)) return
    faulty.delete(stored.shopId)
    refused.delete(stored.shopId)
    shelf.put(stored, 'checked')
  }

  /** An older version is one that was read before a newer one was written. */
  function isNews(entry: VersionEntry, restored: boolean): boolean {
    const before = shelf.entry(entry.shopId)
    return before === undefined || (!isSame(before, entry) && (restored || before.version < entry.version))
  }

  async function checkAndTake(stored: StoredVersion, restored: boolean): Promise<void> {
    if (!isNews(stored, restored)) return
    const reading = await reader
      .checkStored(stored.text)
      .catch((error: Error) => ({ ok: false, reason: `: ${error.message}` }) as const)
    if (reading.ok) take({ ...stored, text: reading.text }, restored)
    else if (isNews(stored, restored)) refuse(stored, reading.reason)
  }

  async function load(): Promise<void> {
    const now = await store.revisions()
    // Counters only rise, unless somebody has put a backup in the store's place.
    const restored = seen !== undefined && now.ranges < seen.ranges
    if (seen === undefined) {
      const shopIds = (await store.heads()).map(({ shopId }) => shopId)
      for (let at = 0; at < shopIds.length; at += DOCUMENTS_AT_ONCE) {
        const documents = await store.documents(shopIds.slice(at, at + DOCUMENTS_AT_ONCE))
        for (const stored of documents) shelf.put(stored, 'unchecked')
      }
    } else if (now.ranges !== seen.ranges) {
      for (const head of await store.heads()) {
        if (isSame(shelf.entry(head.shopId), head) || isSame(refused.get(head.shopId), head)) continue
        const stored = await store.version(head.shopId)
        if (stored !== undefined) await checkAndTake(stored, restored)
      }
    }
    if (now.keys !== seen?.keys) keys.replace(await store.keys())
    seen = now
    answeredAt = performance.now()
  }

  /** Holds to the contract what was read at the start. Each is checked when it is first asked for, too. */
  async function checkAll(pauseMs: number | undefined): Promise<void> {
    for (;;) {
      const stored = closed ? undefined : shelf.nextUnchecked()
      if (stored === undefined) return
      const reading = await reader
        .checkStored(stored.text)
        .catch((error: Error) => ({ ok: false, reason: `: ${error.message}` }) as const)
      shelf.settle(stored, reading)
      if (pauseMs !== undefined) await pause(pauseMs, undefined, { ref: false })
    }
  }

  async function loadSafely(): Promise<void> {
    try {
      await load()
      if (!available) log('info', 'The store is back.')
      available = true
    } catch (error) {
      if (available)
        log('error', `${error instanceof Error ? error.message : String(error)} Serving from memory.`)
      available = false
    }
  }

  /** One look at a time; what is asked for meanwhile is answered by one more look. */
  function refresh(): Promise<void> {
    if (running !== undefined) {
      wanted = true
      return running
    }
    running = (async () => {
      do {
        wanted = false
        await loadSafely()
      } while (wanted && !closed)
    })().finally(() => {
      running = undefined
    })
    return running
  }

  async function noteUses(): Promise<void> {
    const uses = keys.takeUses()
    if (uses.size > 0) await store.noteKeyUse(uses).catch(() => {})
  }

  await load()
  if (shelf.size() <= CHECKED_AT_START) await checkAll(undefined)
  const checking = checkAll(CHECK_PAUSE_MS)
  store.onChange(() => {
    if (!closed) void refresh()
  })
  const timers = [
    setInterval(() => void refresh(), POLL_MS),
    setInterval(() => void noteUses(), NOTE_USES_MS),
  ]
  for (const timer of timers) timer.unref()

  return {
    ranges: { current: (shopId) => shelf.get(shopId)?.range, shopIds: shelf.ids },
    keys,
    held: shelf.get,
    state: () => ({
      available,
      ageMs: performance.now() - answeredAt,
      unchecked: shelf.uncheckedCount(),
      faulty,
    }),
    reader,
    refresh,
    take: (stored) => take(stored),
    close: async () => {
      closed = true
      for (const timer of timers) clearInterval(timer)
      await reader.close()
      await Promise.all([running, checking])
      if (available) await noteUses()
    },
  }
}

function isSame(one: VersionEntry | undefined, other: VersionEntry): boolean {
  return one?.version === other.version && one.digest === other.digest
}
