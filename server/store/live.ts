import { type PreparedRange, prepareRange } from '../../core/range/prepare-range.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { readRange } from '../../shared/range-reading.ts'
import { type KeyRing, keyRing } from './key-ring.ts'
import type { Ranges } from './ranges.ts'
import type { Revisions, Store, StoredVersion, VersionEntry } from './store.ts'

/** How often an instance asks whether anything has changed. [ms] */
const POLL_MS = 1000
/** How often the last use of keys is written down. [ms] */
const NOTE_USES_MS = 30_000

/** A range in memory with the version that it was made from. */
export interface HeldRange {
  readonly entry: VersionEntry
  readonly range: PreparedRange
}

/** How the memory stands to the store. */
export interface LiveState {
  /** Whether the store answered when it was last asked. */
  readonly available: boolean
  /** When it last answered. [ms since 1970] */
  readonly checkedAt: number
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
  /** Looks for changes now; never rejects, see {@link Live.state}. */
  refresh(): Promise<void>
  /** Takes a version that has just been written, without asking the store for it. */
  take(stored: StoredVersion): void
  close(): Promise<void>
}

/** What {@link openLive} needs. */
export interface LiveOptions {
  readonly store: Store
  /** Hears what goes wrong, and when it is well again. */
  readonly log?: (level: 'info' | 'error', message: string) => void
}

/**
 * Reads a store into memory and keeps the memory up to date: by the store's hints, and by asking each second.
 * What can't be read leaves the last good state in force.
 *
 * @param options - The store and who hears of faults
 * @returns The memory, filled
 * @throws StoreUnavailableError where the store can't be read now
 */
export async function openLive({ store, log = () => {} }: LiveOptions): Promise<Live> {
  const held = new Map<string, HeldRange>()
  const faulty = new Map<string, string>()
  const keys = keyRing()
  let seen: Revisions = { ranges: -1, keys: -1 }
  let available = true
  let checkedAt = Date.now()
  let running: Promise<void> | undefined
  let wanted = false
  let closed = false

  function take(stored: StoredVersion, restored = false): void {
    const { text, ...entry } = stored
    const before = held.get(entry.shopId)
    // An older version is one that was read before a newer one was written.
    if (!restored && before !== undefined && before.entry.version > entry.version) return
    if (before?.entry.digest === entry.digest && before.entry.version === entry.version) return
    const reading = readRange(parsed(text))
    if (reading.ok) {
      held.set(entry.shopId, {
        entry,
        range: prepareRange(reading.range, BUILT_IN_APPLIANCES, entry.version),
      })
      faulty.delete(entry.shopId)
      return
    }
    const fault = reading.faults[0]
    const reason = `version ${entry.version}${fault?.pointer ?? ''}: ${fault?.message ?? 'unreadable'}`
    faulty.set(entry.shopId, reason)
    log('error', `The range of shop "${entry.shopId}" can't be used, the last good one stays: ${reason}`)
  }

  async function load(): Promise<void> {
    const now = await store.revisions()
    // Counters only rise, unless somebody has put a backup in the store's place.
    const restored = now.ranges < seen.ranges
    if (now.ranges !== seen.ranges) {
      for (const head of await store.heads()) {
        const known = held.get(head.shopId)?.entry
        if (known?.version === head.version && known.digest === head.digest) continue
        const stored = await store.version(head.shopId)
        if (stored !== undefined) take(stored, restored)
      }
    }
    if (now.keys !== seen.keys) keys.replace(await store.keys())
    seen = now
    checkedAt = Date.now()
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
  store.onChange(() => {
    if (!closed) void refresh()
  })
  const timers = [
    setInterval(() => void refresh(), POLL_MS),
    setInterval(() => void noteUses(), NOTE_USES_MS),
  ]
  for (const timer of timers) timer.unref()

  return {
    ranges: { current: (shopId) => held.get(shopId)?.range, shopIds: () => [...held.keys()] },
    keys,
    held: (shopId) => held.get(shopId),
    state: () => ({ available, checkedAt, faulty }),
    refresh,
    take: (stored) => take(stored),
    close: async () => {
      closed = true
      for (const timer of timers) clearInterval(timer)
      await running
      if (available) await noteUses()
    },
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
