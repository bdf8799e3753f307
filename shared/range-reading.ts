import type { z } from 'zod/v3'
import { checkRange, type RangeFault } from '../core/range/check-range.ts'
import type { RangeDocument } from '../core/range/range-document.ts'
import {
  cableSchema,
  connectorSchema,
  fuseSchema,
  inverterSchema,
  rangeBatterySchema,
  rangeDocumentSchema,
  shopSchema,
} from './contract/range.ts'
import { type DocumentFault, explainFaults, overlongLists } from './explain.ts'
import { rangeFaultMessage } from './messages/range-faults.ts'
import { pointerOf } from './pointer.ts'

/** A range that keeps the contract, or every fault in it. */
export type RangeReading =
  | { readonly ok: true; readonly range: RangeDocument }
  | { readonly ok: false; readonly faults: readonly DocumentFault[] }

/**
 * Reads a range document, whatever it came from.
 *
 * @param document - Parsed JSON
 * @returns The range, or all its faults at once with JSON Pointers
 */
export function readRange(document: unknown): RangeReading {
  const overlong = overlongLists(rangeDocumentSchema, document)
  if (overlong.length > 0) return { ok: false, faults: overlong }
  const parsed = rangeDocumentSchema.safeParse(document)
  if (!parsed.success) {
    const faults = explainFaults(rangeDocumentSchema, document)
    return { ok: false, faults: [...faults, ...faultsOfReadableParts(document)] }
  }
  const faults = checkRange(parsed.data)
  return faults.length > 0 ? { ok: false, faults: faults.map(explained) } : { ok: true, range: parsed.data }
}

function explained(fault: RangeFault): DocumentFault {
  return { pointer: pointerOf(fault.path), message: rangeFaultMessage(fault) }
}

/**
 * Contradictions among those parts that keep their schema, so that one unreadable part doesn't hide them.
 * Whether an included SKU exists is left open: it may be that of a part that can't be read yet.
 */
function faultsOfReadableParts(document: unknown): readonly DocumentFault[] {
  if (typeof document !== 'object' || document === null) return []
  const source = new Map<string, unknown>(Object.entries(document))
  const shop = shopSchema.safeParse(source.get('shop'))
  if (!shop.success) return []
  const indexes = new Map<string, readonly number[]>()
  const skus = new Set<unknown>()
  const readable = <T>(list: string, schema: z.ZodType<T, z.ZodTypeDef, unknown>): T[] => {
    const entries = source.get(list)
    const kept: number[] = []
    const parts: T[] = []
    for (const [index, entry] of (Array.isArray(entries) ? entries : []).entries()) {
      skus.add(entry?.sku)
      const part = schema.safeParse(entry)
      if (!part.success) continue
      kept.push(index)
      parts.push(part.data)
    }
    indexes.set(list, kept)
    return parts
  }
  const faults = checkRange({
    shop: shop.data,
    inverters: readable('inverters', inverterSchema),
    batteries: readable('batteries', rangeBatterySchema),
    cables: readable('cables', cableSchema),
    fuses: readable('fuses', fuseSchema),
    connectors: readable('connectors', connectorSchema),
  })
  return (
    faults
      // An included part that can't be read yet is not an unknown one.
      .filter(({ code, values }) => code !== 'unknown-included-sku' || !skus.has(values.sku))
      .map(({ path: [list, index, ...rest], ...fault }) => {
        const original = typeof index === 'number' ? indexes.get(String(list))?.[index] : undefined
        const path = [list, original ?? index, ...rest].filter((step) => step !== undefined)
        return explained({ ...fault, path })
      })
  )
}
