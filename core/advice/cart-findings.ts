import type { ConnectionKind } from '../range/vocabulary.ts'
import type { KitRole } from './vocabulary.ts'

/**
 * Findings about the lines of a cart. `sku` is the part that is wrong, or the unit that lacks one; `useSku` the part
 * of the range that is right in its place, where there is one.
 */
export interface CartFindingValues {
  'inverter-missing': { useSku?: string }
  'unit-voltage-mismatch': { sku: string; inputNominalV: number; supplyNominalV: number; useSku?: string }
  'battery-string-mismatch': {
    sku: string
    quantity: number
    blockV: number
    wantedV: number
    useSku?: string
  }
  'unlike-batteries': { sku: string; otherSku: string }
  'too-many-strings': { sku: string; strings: number; mostStrings: number; useSku?: string }
  'battery-missing': { sku: string }
  'battery-below-full-power': { sku: string; currentA: number; limitA: number; limitAssumed: boolean }
  'cut-off-below-battery': { sku: string; cutOffV: number; lowestV: number }
  'cut-off-above-battery': { sku: string; cutOffV: number; restingV: number }
  'cable-missing': { sku: string; neededA: number; useSku?: string }
  'cable-too-thin': { sku: string; ampacityA: number; neededA: number; useSku?: string }
  'cable-drop': { sku: string; dropFraction: number; limitFraction: number; useSku?: string }
  'cable-too-short': { sku: string; lengthM: number; routeM: number; useSku?: string }
  'fuse-missing': { sku: string; minA: number; maxA: number; useSku?: string }
  'fuse-too-small': { sku: string; ratingA: number; minA: number; useSku?: string }
  'fuse-too-large': { sku: string; ratingA: number; maxA: number; useSku?: string }
  'fuse-voltage-short': { sku: string; voltageV: number; requiredVoltageV: number; useSku?: string }
  'fuse-breaking-short': {
    sku: string
    breakingCapacityA: number
    requiredBreakingCapacityA: number
    useSku?: string
  }
  'connector-missing': { sku: string; kind: ConnectionKind; neededA: number; useSku?: string }
  'connector-under-rated': { sku: string; limitA: number; neededA: number; useSku?: string }
  'owned-unchecked': { role: KitRole }
  'part-left-over': { sku: string }
}
