import type { Appliance, Band } from '../loads/appliance.ts'
import { SOURCES } from '../tables/sources.ts'
import type { Inverter, RangeDocument } from './range-document.ts'

/** A fault of a range document that its schema can't express. */
export interface RangeFault {
  readonly path: readonly (string | number)[]
  readonly code:
    | 'duplicate-sku'
    | 'unknown-included-sku'
    | 'surge-below-continuous'
    | 'apparent-below-continuous'
    | 'cut-off-out-of-reach'
    | 'restart-below-cut-off'
    | 'one-conductor-size'
    | 'band-out-of-order'
    | 'duplicate-appliance-id'
    | 'unknown-source'
  readonly values: Readonly<Record<string, string | number>>
}

/** A cut-off within these shares of the nominal voltage can happen. */
const CUT_OFF_SHARES = { low: 0.75, high: 1.05 } as const

/**
 * Looks for everything in a range that contradicts itself or physics.
 *
 * @param document - A range that keeps the contract's schema
 * @returns All faults; none where the range may come into force
 */
export function checkRange(document: RangeDocument): readonly RangeFault[] {
  const skus = new Set(PART_LISTS.flatMap((list) => document[list].map(({ sku }) => sku)))
  return [
    ...duplicateSkus(document),
    ...document.inverters.flatMap((unit, index) => inverterFaults(skus, unit, index)),
    ...document.cables.flatMap((cable, index): readonly RangeFault[] =>
      (cable.areaMm2 === undefined) === (cable.awg === undefined)
        ? [{ path: ['cables', index], code: 'one-conductor-size', values: { sku: cable.sku } }]
        : [],
    ),
    ...applianceFaults(document.shop.appliances ?? []),
  ]
}

const PART_LISTS = ['inverters', 'batteries', 'cables', 'fuses', 'connectors'] as const

function duplicateSkus(document: RangeDocument): readonly RangeFault[] {
  const seen = new Set<string>()
  const faults: RangeFault[] = []
  for (const list of PART_LISTS) {
    for (const [index, { sku }] of document[list].entries()) {
      if (seen.has(sku)) faults.push({ path: [list, index, 'sku'], code: 'duplicate-sku', values: { sku } })
      seen.add(sku)
    }
  }
  return faults
}

function inverterFaults(skus: ReadonlySet<string>, unit: Inverter, index: number): readonly RangeFault[] {
  const faults: RangeFault[] = []
  const fault = (field: string, code: RangeFault['code'], values: RangeFault['values']) =>
    faults.push({ path: ['inverters', index, field], code, values })
  const { continuousW, continuousVA, surgeW, cutOffV, restartV, inputNominalV } = unit
  if (surgeW < continuousW) fault('surgeW', 'surge-below-continuous', { surgeW, continuousW })
  if (continuousVA !== undefined && continuousVA < continuousW) {
    fault('continuousVA', 'apparent-below-continuous', { continuousVA, continuousW })
  }
  if (cutOffV !== undefined) {
    const lowV = toTenth(CUT_OFF_SHARES.low * inputNominalV)
    const highV = toTenth(CUT_OFF_SHARES.high * inputNominalV)
    if (cutOffV < lowV || cutOffV > highV) {
      fault('cutOffV', 'cut-off-out-of-reach', { cutOffV, lowV, highV })
    }
    if (restartV !== undefined && restartV < cutOffV) {
      fault('restartV', 'restart-below-cut-off', { restartV, cutOffV })
    }
  }
  for (const [at, sku] of (unit.includes ?? []).entries()) {
    if (!skus.has(sku)) {
      faults.push({
        path: ['inverters', index, 'includes', at],
        code: 'unknown-included-sku',
        values: { sku },
      })
    }
  }
  return faults
}

function toTenth(value: number): number {
  return Math.round(value * 10) / 10
}

function applianceFaults(appliances: readonly Appliance[]): readonly RangeFault[] {
  const seen = new Set<string>()
  return appliances.flatMap((appliance, index): readonly RangeFault[] => {
    const path = ['shop', 'appliances', index]
    const faults: RangeFault[] = []
    if (seen.has(appliance.id)) {
      faults.push({ path: [...path, 'id'], code: 'duplicate-appliance-id', values: { id: appliance.id } })
    }
    seen.add(appliance.id)
    for (const [where, band] of bandsOf(appliance)) {
      for (const sourceId of band.sourceIds) {
        if (Object.hasOwn(SOURCES, sourceId)) continue
        faults.push({ path: [...path, ...where, 'sourceIds'], code: 'unknown-source', values: { sourceId } })
      }
      if (band.low <= band.typical && band.typical <= band.high) continue
      faults.push({ path: [...path, ...where], code: 'band-out-of-order', values: { id: appliance.id } })
    }
    return faults
  })
}

function bandsOf(appliance: Appliance): readonly (readonly [readonly string[], Band])[] {
  const { inputW, powerFactor, start, standbyW, use } = appliance
  const measured = start.startingW
  return [
    [['inputW', 'at120V'], inputW.at120V],
    [['inputW', 'at230V'], inputW.at230V],
    [['powerFactor'], powerFactor],
    [['start', 'multiple'], start.multiple],
    ...(measured === undefined
      ? []
      : ([
          [['start', 'startingW', 'at120V'], measured.at120V],
          [['start', 'startingW', 'at230V'], measured.at230V],
        ] as const)),
    [['standbyW'], standbyW],
    [['use', 'minutesPerDay'], use.minutesPerDay],
    [['use', 'dutyFraction'], use.dutyFraction],
  ]
}
