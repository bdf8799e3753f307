import { deflateRaw, inflateRawSync } from 'node:zlib'
import { BUILT_IN_APPLIANCES, type PreparedRange, prepareRange } from '../../core/index.ts'
import { checkStored, type StoredReading } from '../range-files/draft.ts'
import type { StoredVersion, VersionEntry } from './store.ts'

/** A range in memory with the version that it was made from. */
export interface HeldRange {
  readonly entry: VersionEntry
  readonly range: PreparedRange
}

/** The ranges of all shops in memory: those asked for lately ready to answer from, the others packed. */
export interface Shelf {
  /** The range of a shop; a packed one is made ready first, which takes a millisecond or two. */
  get(shopId: string): HeldRange | undefined
  /** The version that is held, without making it ready. */
  entry(shopId: string): VersionEntry | undefined
  ids(): readonly string[]
  size(): number
  /** Versions that have not been held to the contract yet. */
  uncheckedCount(): number
  /** Holds a version in the place of the one before. */
  put(stored: StoredVersion, state: 'checked' | 'unchecked'): void
  /** A version that has not been held to the contract yet. */
  nextUnchecked(): StoredVersion | undefined
  /** Says what became of such a version; nothing where another has come in its place. */
  settle(entry: VersionEntry, reading: StoredReading): void
}

/** How a shelf is made. */
export interface ShelfOptions {
  /** Text that the ranges which are ready may have been made from, together; they take about five times that. [bytes] */
  readonly readyBytes?: number
  /** Hears that a version breaks the contract; it is no longer held. */
  readonly onFault: (entry: VersionEntry, reason: string) => void
}

/** Some thousand everyday ranges, about 200 MB once they are ready. */
const READY_BYTES = 40 * 1024 * 1024

interface Slot {
  readonly entry: VersionEntry
  readonly bytes: number
  /** JSON text, until it is packed. */
  text: string | undefined
  packed: Uint8Array | undefined
  ready: HeldRange | undefined
  checked: boolean
}

/**
 * Makes an empty shelf.
 *
 * @param options - How much is kept ready, and who hears of faults
 * @returns The shelf
 */
export function rangeShelf({ readyBytes = READY_BYTES, onFault }: ShelfOptions): Shelf {
  const slots = new Map<string, Slot>()
  const unchecked = new Set<Slot>()
  /** In the order in which they were last asked for. */
  const ready = new Set<Slot>()
  let latest: Slot | undefined
  let bytesReady = 0

  function makeReady(slot: Slot): HeldRange | undefined {
    const text = slot.checked ? textOf(slot) : check(slot)
    if (text === undefined) return undefined
    const range = prepareRange(JSON.parse(text), BUILT_IN_APPLIANCES, slot.entry.version)
    slot.ready = { entry: slot.entry, range }
    ready.add(slot)
    latest = slot
    bytesReady += slot.bytes
    for (const oldest of ready) {
      if (bytesReady <= readyBytes || oldest === slot) break
      ready.delete(oldest)
      oldest.ready = undefined
      bytesReady -= oldest.bytes
    }
    return slot.ready
  }

  function check(slot: Slot): string | undefined {
    const reading = checkStored(textOf(slot))
    settle(slot, reading)
    return reading.ok ? reading.text : undefined
  }

  function settle(slot: Slot, reading: StoredReading): void {
    unchecked.delete(slot)
    if (!reading.ok) {
      slots.delete(slot.entry.shopId)
      onFault(slot.entry, reading.reason)
      return
    }
    slot.checked = true
    slot.text = reading.text
    pack(slot)
  }

  function forget(slot: Slot): void {
    unchecked.delete(slot)
    if (ready.delete(slot)) bytesReady -= slot.bytes
  }

  return {
    get(shopId) {
      const slot = slots.get(shopId)
      if (slot === undefined) return undefined
      if (slot.ready === undefined) return makeReady(slot)
      if (slot !== latest) {
        ready.delete(slot)
        ready.add(slot)
        latest = slot
      }
      return slot.ready
    },
    entry: (shopId) => slots.get(shopId)?.entry,
    ids: () => [...slots.keys()],
    size: () => slots.size,
    uncheckedCount: () => unchecked.size,
    put({ text, ...entry }, state) {
      const before = slots.get(entry.shopId)
      if (before !== undefined) forget(before)
      const checked = state === 'checked'
      const slot: Slot = {
        entry,
        bytes: text.length,
        text,
        packed: undefined,
        ready: undefined,
        checked,
      }
      slots.set(entry.shopId, slot)
      if (checked) pack(slot)
      else unchecked.add(slot)
    },
    nextUnchecked() {
      const [slot] = unchecked
      return slot === undefined ? undefined : { ...slot.entry, text: textOf(slot) }
    },
    settle({ shopId, version, digest }, reading) {
      const slot = slots.get(shopId)
      if (slot === undefined || !unchecked.has(slot)) return
      if (slot.entry.version === version && slot.entry.digest === digest) settle(slot, reading)
    },
  }
}

function textOf({ text, packed }: Slot): string {
  return text ?? inflateRawSync(packed ?? new Uint8Array()).toString('utf8')
}

/** In a thread of its own; until then, or where it fails, the text is there. Range text packs to about a sixth. */
function pack(slot: Slot): void {
  const { text } = slot
  if (text === undefined) return
  deflateRaw(text, { level: 1 }, (error, packed) => {
    if (error !== null || slot.text !== text) return
    // A copy of its own length: what comes lies in a piece of memory of 16 kB.
    slot.packed = new Uint8Array(packed)
    slot.text = undefined
  })
}
