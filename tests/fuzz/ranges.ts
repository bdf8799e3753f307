import type * as fc from 'fast-check'
import type { Band } from '../../core/loads/appliance.ts'
import type { RangeDocument } from '../../core/range/range-document.ts'
import { SOURCES, type SourceId } from '../../core/tables/sources.ts'
import type { Schemas } from './schema.ts'
import { validValues } from './valid.ts'

/** The lists of parts of a range document. */
const LISTS = ['inverters', 'batteries', 'cables', 'fuses', 'connectors'] as const

/**
 * Range documents that keep the contract's schema; most of them contradict themselves somewhere.
 *
 * @param schemas - The document that describes them
 * @returns Documents of any shop
 */
export function rangeDocuments(schemas: Schemas): fc.Arbitrary<RangeDocument> {
  const known = { sourceIds: Object.keys(SOURCES).slice(0, 3) }
  return validValues(
    schemas,
    { $ref: '#/components/schemas/RangeDocument' },
    known,
  ) as fc.Arbitrary<RangeDocument>
}

/**
 * The same documents with their contradictions taken out, so that they may come into force: each SKU once, bands
 * in order, surge power not below continuous power, and so on. What the schema leaves free stays as it was drawn.
 *
 * @param document - Keeps the schema
 * @param shopId - The shop that it is to be of
 * @returns A document that keeps every rule of a range
 */
export function madeSound(document: RangeDocument, shopId: string): RangeDocument {
  const range = structuredClone(document) as Mutable<RangeDocument>
  range.shop.id = shopId
  const seen = new Set<string>()
  for (const list of LISTS) {
    for (const part of range[list]) {
      while (seen.has(part.sku)) part.sku = `${part.sku.slice(0, 40)}-${seen.size}`
      seen.add(part.sku)
    }
  }
  const skus = [...seen]
  for (const unit of range.inverters) {
    unit.surgeW = Math.max(unit.surgeW, unit.continuousW)
    if (unit.continuousVA !== undefined) unit.continuousVA = Math.max(unit.continuousVA, unit.continuousW)
    if (unit.cutOffV !== undefined) {
      const share = unit.cutOffV / 60
      unit.cutOffV = unit.inputNominalV * (0.76 + 0.28 * share)
      if (unit.restartV !== undefined) unit.restartV = Math.max(unit.restartV, unit.cutOffV)
      if (unit.restartV !== undefined && unit.restartV > 60) delete unit.restartV
    }
    if (unit.includes !== undefined) {
      unit.includes = unit.includes.map((sku, at) => skus[(sku.length + at) % skus.length] ?? sku)
    }
  }
  for (const cable of range.cables) {
    if (cable.areaMm2 !== undefined) delete cable.awg
    else cable.awg ??= '4'
  }
  const appliances = range.shop.appliances ?? []
  appliances.forEach((appliance, at) => {
    appliance.id = `own-${at}`
    putBandsInOrder(appliance)
  })
  return range as RangeDocument
}

type Mutable<T> = T extends object ? { -readonly [Key in keyof T]: Mutable<T[Key]> } : T

function putBandsInOrder(node: unknown): void {
  if (typeof node !== 'object' || node === null) return
  const band = node as Partial<Mutable<Band>>
  if (band.low !== undefined && band.typical !== undefined && band.high !== undefined) {
    const [low = 0, typical = 0, high = 0] = [band.low, band.typical, band.high].sort((a, b) => a - b)
    Object.assign(band, { low, typical, high })
    band.sourceIds = (band.sourceIds ?? []).map((id) => (Object.hasOwn(SOURCES, id) ? id : FIRST_SOURCE))
  }
  for (const part of Object.values(node)) putBandsInOrder(part)
}

const FIRST_SOURCE = 'shop-stated' satisfies SourceId

/**
 * Range documents that may come into force.
 *
 * @param schemas - The document that describes them
 * @param shopId - The shop that they are of
 * @returns Sound documents
 */
export function soundRanges(schemas: Schemas, shopId: string): fc.Arbitrary<RangeDocument> {
  return rangeDocuments(schemas).map((document) => madeSound(document, shopId))
}
