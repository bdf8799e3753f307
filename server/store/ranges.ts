import { BUILT_IN_APPLIANCES, type PreparedRange, prepareRange } from '../../core/index.ts'
import { readRange } from '../../shared/range-reading.ts'

/** The ranges in force, in memory: no shopper waits for anything slower. */
export interface Ranges {
  /** The range of a shop, or undefined where there is no such shop. */
  current(shopId: string): PreparedRange | undefined
  /** Ids of all shops. */
  shopIds(): readonly string[]
}

/** Thrown where range documents that the service starts with are faulty: every fault, a line each. */
export class FaultyRangeError extends Error {
  constructor(faults: readonly string[]) {
    super(`Faulty range documents:\n${faults.join('\n')}`)
    this.name = 'FaultyRangeError'
  }
}

/**
 * Holds fixed range documents.
 *
 * @param documents - Parsed JSON by the name that a fault is reported under
 * @returns The ranges
 * @throws FaultyRangeError naming each fault by document and JSON Pointer
 */
export function fixedRanges(documents: Readonly<Record<string, unknown>>): Ranges {
  const faults: string[] = []
  const ranges = new Map<string, PreparedRange>()
  for (const [name, document] of Object.entries(documents)) {
    const reading = readRange(document)
    if (reading.ok) ranges.set(reading.range.shop.id, prepareRange(reading.range, BUILT_IN_APPLIANCES, 1))
    else faults.push(...reading.faults.map(({ pointer, message }) => `${name}${pointer}: ${message}`))
  }
  if (faults.length > 0) throw new FaultyRangeError(faults)
  return { current: (shopId) => ranges.get(shopId), shopIds: () => [...ranges.keys()] }
}
