import type { PartBase, RangeDocument } from '../../core/index.ts'
import { PART_LISTS, type RangeChanges } from '../../shared/contract/range-admin.ts'

/**
 * What differs between two ranges of one shop, part by part. Parts are told apart by list and SKU.
 *
 * @param from - The old range
 * @param to - The new one
 * @returns The changes; nothing in any list where both say the same
 */
export function rangeChanges(from: RangeDocument, to: RangeDocument): RangeChanges {
  const changes: RangeChanges = { added: [], removed: [], changed: [], reordered: [], shop: [] }
  for (const list of PART_LISTS) {
    const before = new Map<string, PartBase>(from[list].map((part) => [part.sku, part]))
    const after = new Map<string, PartBase>(to[list].map((part) => [part.sku, part]))
    for (const [sku, { name }] of before) if (!after.has(sku)) changes.removed.push({ list, sku, name })
    for (const [sku, part] of after) {
      const old = before.get(sku)
      if (old === undefined) {
        changes.added.push({ list, sku, name: part.name })
        continue
      }
      const fields = fieldChanges(old, part)
      if (fields.length > 0) changes.changed.push({ list, sku, name: part.name, fields })
    }
    const kept = [...before.keys()].filter((sku) => after.has(sku))
    const keptAfter = [...after.keys()].filter((sku) => before.has(sku))
    if (kept.some((sku, index) => sku !== keptAfter[index])) changes.reordered.push(list)
  }
  changes.shop.push(...fieldChanges(from.shop, to.shop).map(({ field }) => field))
  return changes
}

/**
 * Whether two ranges said the same.
 *
 * @param changes - What {@link rangeChanges} found
 * @returns True where there is no change at all
 */
export function isUnchanged(changes: RangeChanges): boolean {
  return Object.values(changes).every((list) => list.length === 0)
}

function fieldChanges(from: object, to: object): RangeChanges['changed'][number]['fields'] {
  const before = new Map<string, unknown>(Object.entries(from))
  const after = new Map<string, unknown>(Object.entries(to))
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((field) => {
    const change = { field, from: textOf(before.get(field)), to: textOf(after.get(field)) }
    return change.from === change.to ? [] : [change]
  })
}

function textOf(value: unknown): string | null {
  if (value === undefined) return null
  return typeof value === 'string' ? value : JSON.stringify(value)
}
