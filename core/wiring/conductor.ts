import { CoreError, requireInRange } from '../errors.ts'
import type { WireSizes } from '../range/vocabulary.ts'
import {
  AWG_36_DIAMETER_MM,
  AWG_CONDUCTORS,
  AWG_STRANDING_FACTOR,
  COPPER_RESISTIVITY_20C,
  COPPER_ZERO_RESISTANCE_C,
  METRIC_CONDUCTORS,
  THINNEST_CHOSEN,
} from '../tables/conductors.ts'

/** A standard stranded copper conductor. */
export interface Conductor {
  /** Metric: nominal cross-section. AWG: the copper of the solid wire of that gauge. [mm2] */
  readonly areaMm2: number
  /** American wire gauge as written, '4' or '2/0'; absent on metric sizes. */
  readonly awg?: string
  /** '35 mm²' or '2/0 AWG' */
  readonly label: string
  /** Direct-current resistance of one conductor at 20 C. [ohm/m] */
  readonly resistance20COhmPerM: number
}

/** A cross-section as a shop states it: one of the two. */
export interface StatedSize {
  /** [mm2] */
  readonly areaMm2?: number | undefined
  readonly awg?: string | undefined
}

/**
 * The standard conductors that a battery circuit may be built of.
 *
 * @param wireSizes - System of sizes
 * @returns 1.5 to 150 mm2, or 16 to 4/0 AWG, smallest first
 * @source iec60228, astm-b258
 */
export function standardConductors(wireSizes: WireSizes): readonly Conductor[] {
  return wireSizes === 'metric' ? METRIC_CHOICE : AWG_CHOICE
}

/**
 * The standard conductor that stands for a stated size: that size, or the next thinner one where it is
 * none, so that what is worked out for it is on the safe side.
 *
 * @param size.areaMm2 - Cross-section, above 0. [mm2]
 * @param size.awg - Gauge, '20' to '0', '1/0' to '4/0' or '00' to '0000'
 * @returns The conductor, or undefined where the size is thinner than 0.75 mm2 or 18 AWG or is no gauge
 * @throws CoreError `inconsistent` where both sizes or none are stated
 * @example conductorOfSize({ areaMm2: 40 })?.label //=> '35 mm²'
 */
export function conductorOfSize({ areaMm2, awg }: StatedSize): Conductor | undefined {
  if ((areaMm2 === undefined) === (awg === undefined)) {
    throw new CoreError('inconsistent', 'size', 'state either areaMm2 or awg')
  }
  if (areaMm2 !== undefined) return thickestWithin(METRIC, areaMm2)
  const gauge = gaugeOf(awg ?? '')
  return gauge === undefined ? undefined : thickestWithin(AWG, awgAreaMm2(gauge))
}

/**
 * Copper cross-section of an American wire gauge.
 *
 * @param gauge - Gauge number; 1/0 is 0, 2/0 is -1, 4/0 is -3
 * @returns Cross-section of the solid wire. [mm2]
 * @source astm-b258
 * @example awgAreaMm2(0) //=> 53.48
 */
export function awgAreaMm2(gauge: number): number {
  const diameterMm = AWG_36_DIAMETER_MM * 92 ** ((36 - gauge) / 39)
  return (Math.PI / 4) * diameterMm ** 2
}

/**
 * Resistance of a wire from its metal.
 *
 * @param wire.resistivityOhmMm2PerM - Resistivity at the wire's temperature. [ohm mm2/m] above 0
 * @param wire.areaMm2 - True area of the metal. [mm2] above 0
 * @returns Resistance per metre of one conductor. [ohm/m]
 * @source iec60028
 */
export function wireResistanceOhmPerM(wire: {
  readonly resistivityOhmMm2PerM: number
  readonly areaMm2: number
}): number {
  return wire.resistivityOhmMm2PerM / wire.areaMm2
}

/**
 * How much a copper conductor's resistance rises from 20 C.
 *
 * @param temperatureC - Temperature of the copper. [degC] -60..250
 * @returns Resistance over that at 20 C
 * @throws CoreError `out_of_range`
 * @remarks (T + 234.5)/254.5, the same as 0.00393 per kelvin.
 * @source faa-ac43-13, iec60028
 */
export function temperatureFactor(temperatureC: number): number {
  requireInRange('temperatureC', temperatureC, -60, 250)
  return (temperatureC - COPPER_ZERO_RESISTANCE_C) / (20 - COPPER_ZERO_RESISTANCE_C)
}

/**
 * Direct-current resistance of a conductor.
 *
 * @param conductor - A standard conductor
 * @param temperatureC - Temperature of the copper under load. [degC] -60..250
 * @returns Resistance per metre of one conductor. [ohm/m]
 * @throws CoreError `out_of_range`
 * @remarks Metric: the class 5 tinned maximum, 10 to 19 % above resistivity over nominal area, which does
 * not stand for the metal. AWG: the gauge's copper with 2 % for stranding.
 * @source iec60228, astm-b258, nec-chapter-9-table-8
 */
export function conductorResistanceOhmPerM(conductor: Conductor, temperatureC: number): number {
  return conductor.resistance20COhmPerM * temperatureFactor(temperatureC)
}

function gaugeOf(awg: string): number | undefined {
  const aught = /^([1-4])\/0$/.exec(awg)?.[1]
  if (aught !== undefined) return 1 - Number(aught)
  if (/^0{1,4}$/.test(awg)) return 1 - awg.length
  return /^[1-9]\d?$/.test(awg) ? Number(awg) : undefined
}

function thickestWithin(sizes: readonly Conductor[], areaMm2: number): Conductor | undefined {
  // A rounded area ('33.6 mm2' for 2 AWG, '53.5' for 1/0) is still that size.
  return sizes.findLast((size) => size.areaMm2 <= areaMm2 * 1.002)
}

const METRIC: readonly Conductor[] = METRIC_CONDUCTORS.map(({ areaMm2, ohmPerKm }) => ({
  areaMm2,
  label: `${areaMm2} mm²`,
  resistance20COhmPerM: ohmPerKm / 1000,
}))

const AWG: readonly Conductor[] = AWG_CONDUCTORS.map(({ awg, gauge }) => {
  const areaMm2 = awgAreaMm2(gauge)
  const solid = wireResistanceOhmPerM({ resistivityOhmMm2PerM: COPPER_RESISTIVITY_20C, areaMm2 })
  return { areaMm2, awg, label: `${awg} AWG`, resistance20COhmPerM: solid * AWG_STRANDING_FACTOR }
})

const METRIC_CHOICE = METRIC.filter((size) => size.areaMm2 >= THINNEST_CHOSEN.areaMm2)
const AWG_CHOICE = AWG.slice(AWG.findIndex((size) => size.awg === THINNEST_CHOSEN.awg))
