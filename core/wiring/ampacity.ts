import { CoreError, requireInRange } from '../errors.ts'
import type { WireSizes } from '../range/vocabulary.ts'
import {
  AMPACITY_TABLE_AMBIENT_C,
  AWG_AMPACITY,
  AWG_AMPACITY_COLUMNS,
  BUNDLING_FACTORS,
  ENGINE_SPACE_AMBIENT_C,
  METRIC_AMPACITY,
  METRIC_AMPACITY_COLUMNS,
} from '../tables/ampacity.ts'
import type { SourceId } from '../tables/sources.ts'
import type { Conductor } from './conductor.ts'

/** A conductor and where it lies. */
export interface LaidConductor {
  readonly conductor: Conductor
  /** Temperature that the insulation is rated for. [degC] 60..300 */
  readonly insulationC: number
  /** Temperature of the air around it. [degC] -60..200 */
  readonly ambientC: number
  /** Current-carrying conductors in one bundle, duct or sheath, this one included; a pair counts 2. 1..1000 */
  readonly bundledCount: number
  /** Whether it runs through an engine space, taken to be at 50 C. */
  readonly inEngineSpace: boolean
}

/** An ampacity with the factors behind it. */
export interface AmpacityWorking {
  /** Table value at 30 C, alone in free air. [A] */
  readonly tableA: number
  /** Insulation temperature of the table's column, at or below the cable's own. [degC] */
  readonly columnC: number
  /** Air temperature reckoned with. [degC] */
  readonly ambientC: number
  /** Factor for ambient temperature and engine space. 0..1 */
  readonly ambientFactor: number
  /** Factor for bundling. 0..1 */
  readonly bundlingFactor: number
  /** Current that the conductor may carry. [A] */
  readonly ampacityA: number
  readonly source: SourceId
}

/**
 * Current that a conductor may carry for as long as one likes.
 *
 * @param laid - The conductor and where it lies
 * @returns Ampacity. [A] 0 where the air is as hot as the insulation allows
 * @throws CoreError `out_of_range`; `inconsistent` for a conductor that is no standard size
 * @remarks Basis: small-craft and vehicle direct current, single conductors in free air. AWG: 33 CFR
 * 183.425 Table 5. Metric: ISO 10133 Table A.1 (from memory). Wiring codes for buildings, three conductors
 * in a raceway, allow about half of it. Between two columns the cooler one counts.
 * @source 33-cfr-183-425, iso10133
 */
export function ampacityA(laid: LaidConductor): number {
  return ampacityWorking(laid).ampacityA
}

/**
 * As {@link ampacityA}, with the table value and the factors.
 *
 * @param laid - The conductor and where it lies
 * @returns The ampacity and how it comes about
 * @throws CoreError as {@link ampacityA}
 * @remarks The engine-space factor and the ambient factor both stand for hot air: the lower one counts.
 * Air cooler than 30 C earns nothing, since the cable meets a warmer day with the same fuse.
 * @source 33-cfr-183-425-note-1, 33-cfr-183-425-note-2, nec-ambient-correction
 */
export function ampacityWorking(laid: LaidConductor): AmpacityWorking {
  const { conductor } = laid
  const factors = layingFactors(conductor.awg === undefined ? 'metric' : 'awg', laid)
  return {
    ...factors,
    tableA: tableAmpacityA(conductor, factors),
    ampacityA: laidAmpacityA(conductor, factors),
  }
}

/** Column of the table and factors for conductors of one system laid in one place. */
export interface LayingFactors extends Omit<AmpacityWorking, 'tableA' | 'ampacityA'> {
  readonly columnIndex: number
}

/**
 * The column and the factors that hold for every conductor laid in one place.
 *
 * @param wireSizes - System of sizes
 * @param laid - Where they lie
 * @returns Column and factors
 * @throws CoreError `out_of_range`
 */
export function layingFactors(wireSizes: WireSizes, laid: Omit<LaidConductor, 'conductor'>): LayingFactors {
  const { insulationC, ambientC, bundledCount, inEngineSpace } = laid
  requireInRange('insulationC', insulationC, AWG_AMPACITY_COLUMNS[0].insulationC, 300)
  const columns = wireSizes === 'awg' ? AWG_AMPACITY_COLUMNS : METRIC_AMPACITY_COLUMNS
  const columnIndex = columns.findLastIndex((entry) => entry.insulationC <= insulationC)
  const column = columns[columnIndex] ?? columns[0]
  const engineFactor = inEngineSpace ? column.engineSpaceFactor : 1
  return {
    columnIndex,
    columnC: column.insulationC,
    ambientC: inEngineSpace ? Math.max(ambientC, ENGINE_SPACE_AMBIENT_C) : ambientC,
    ambientFactor: Math.min(1, engineFactor, ambientFactor({ insulationC: column.insulationC, ambientC })),
    bundlingFactor: bundlingFactor(bundledCount),
    source: wireSizes === 'awg' ? '33-cfr-183-425' : 'iso10133',
  }
}

/**
 * Ampacity of one conductor where the factors hold.
 *
 * @param conductor - A standard conductor of the factors' system
 * @param factors - Column and factors of the place
 * @returns Ampacity. [A]
 * @throws CoreError `inconsistent` for a conductor that is no standard size
 */
export function laidAmpacityA(conductor: Conductor, factors: LayingFactors): number {
  return tableAmpacityA(conductor, factors) * factors.ambientFactor * factors.bundlingFactor
}

function tableAmpacityA({ awg, areaMm2, label }: Conductor, { columnIndex }: LayingFactors): number {
  const row = awg === undefined ? METRIC_AMPACITY[areaMm2] : AWG_AMPACITY[awg]
  const tableA = row?.[columnIndex]
  if (tableA === undefined) {
    throw new CoreError('inconsistent', 'conductor', `no ampacity is tabulated for ${label}`)
  }
  return tableA
}

/**
 * What the air's temperature does to an ampacity tabulated for 30 C.
 *
 * @param air.insulationC - Temperature that the insulation is rated for. [degC] 40..300
 * @param air.ambientC - Temperature of the air. [degC] -60..200
 * @returns Factor; above 1 below 30 C, 0 where the air is as hot as the insulation allows
 * @throws CoreError `out_of_range`
 * @remarks sqrt((insulationC - ambientC)/(insulationC - 30)); the printed tables are this, rounded.
 * @source nec-ambient-correction
 * @example ambientFactor({ insulationC: 90, ambientC: 50 }) //=> 0.816
 */
export function ambientFactor(air: { readonly insulationC: number; readonly ambientC: number }): number {
  requireInRange('insulationC', air.insulationC, 40, 300)
  requireInRange('ambientC', air.ambientC, -60, 200)
  const headroomC = Math.max(0, air.insulationC - air.ambientC)
  return Math.sqrt(headroomC / (air.insulationC - AMPACITY_TABLE_AMBIENT_C))
}

/**
 * What lying beside other loaded conductors does to an ampacity.
 *
 * @param bundledCount - Current-carrying conductors together. 1..1000
 * @returns Factor: 1 for a pair, 0.7 for three, 0.6 up to six, 0.5 up to 24, 0.4 from there
 * @throws CoreError `out_of_range`
 * @source 33-cfr-183-425-note-2
 */
export function bundlingFactor(bundledCount: number): number {
  requireInRange('bundledCount', bundledCount, 1, 1000)
  return BUNDLING_FACTORS.find((band) => bundledCount >= band.fromCount)?.factor ?? 1
}
