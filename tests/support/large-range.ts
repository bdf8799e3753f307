import type { RangeDocument } from '../../core/range/range-document.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { readRange } from '../../shared/range-reading.ts'

/**
 * The demo range with this many inverters, those of the demo over and over under SKUs of their own.
 *
 * @param inverters - How many
 * @param name - Name of the shop
 * @returns A range that keeps the contract
 */
export function largeRange(inverters: number, name = kingcup.shop.name): RangeDocument {
  const units = Array.from({ length: inverters }, (_, index) => ({
    ...kingcup.inverters[index % kingcup.inverters.length],
    sku: `KC-L${index}`,
  }))
  const reading = readRange({ ...kingcup, shop: { ...kingcup.shop, name }, inverters: units })
  if (!reading.ok) throw new Error(`the large range is faulty: ${reading.faults[0]?.message}`)
  return reading.range
}
