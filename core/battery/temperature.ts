import {
  LEAD_ACID_COLD_POINTS,
  LEAD_ACID_TEMPERATURE_HOURS,
  LEAD_ACID_TEMPERATURE_ROWS,
  type LithiumFigures,
} from '../tables/chemistries.ts'
import { interpolate } from './table-lookup.ts'

const COLDEST_ROW_C = LEAD_ACID_TEMPERATURE_ROWS[0]?.[0] ?? -9.4

const COLUMNS = LEAD_ACID_TEMPERATURE_HOURS.map((hours, column) => ({
  logHours: Math.log(hours),
  points: LEAD_ACID_TEMPERATURE_ROWS.map((row) => [row[0], row[column + 1] ?? 1] as const),
}))

/** Share of the 25 C capacity by log of discharge time, at one temperature. */
export type TimeShares = readonly (readonly [number, number])[]

/**
 * Share of a lead-acid battery's 25 C capacity at a temperature, by discharge time.
 *
 * @param temperatureC - Temperature of the battery. [degC] -40..80; held above 35
 * @returns `[log hours, share]` rows, to be read with {@link shareAtHours}
 * @remarks Below -9.4 C the coldest row is scaled by the military cold figures (75 % at 0 C, 40 % at -18 C).
 * @source king-knight-2003
 */
export function leadAcidShares(temperatureC: number): TimeShares {
  const cold = hardColdFactor(temperatureC)
  return COLUMNS.map(({ logHours, points }) => [logHours, interpolate(points, temperatureC) * cold] as const)
}

/**
 * Share at a discharge time.
 *
 * @param shares - Rows of {@link leadAcidShares}
 * @param hours - Discharge time. [h] above 0
 * @returns Share of the 25 C capacity. 0..1.05
 */
export function shareAtHours(shares: TimeShares, hours: number): number {
  return interpolate(shares, Math.log(hours))
}

/**
 * Hours that a run lasts at a temperature, given the hours it would last at 25 C: the share depends on the
 * very time that it shortens, so the two are made to agree.
 *
 * @param shares - Rows of {@link leadAcidShares}
 * @param hoursAt25 - Run time without the temperature's effect. [h] above 0
 * @returns Run time. [h]
 */
export function hoursAtTemperature(shares: TimeShares, hoursAt25: number): number {
  let hours = hoursAt25
  // In hard cold the share moves by a fifth of the time's relative change: each pass gains most of a digit.
  for (let pass = 0; pass < 20; pass++) {
    const next = hoursAt25 * shareAtHours(shares, hours)
    if (Math.abs(next - hours) <= 1e-10 * hours) return next
    hours = next
  }
  return hours
}

/**
 * Share of a lithium battery's 25 C capacity at a temperature.
 *
 * @param figures - Figures of the chemistry
 * @param temperatureC - Temperature of the battery. [degC] end values held outside the table
 * @returns Share. 0.7..1.025
 * @source lfp-block-sheets
 */
export function lithiumShare(figures: LithiumFigures, temperatureC: number): number {
  return interpolate(figures.capacityByTemperatureC, temperatureC)
}

function hardColdFactor(temperatureC: number): number {
  if (temperatureC >= COLDEST_ROW_C) return 1
  return Math.max(coldShare(temperatureC), 0.05) / coldShare(COLDEST_ROW_C)
}

/** Straight line through the two cold figures, carried on below the lower one. */
function coldShare(temperatureC: number): number {
  const { low, high } = LEAD_ACID_COLD_POINTS
  const slope = (high.share - low.share) / (high.temperatureC - low.temperatureC)
  return low.share + slope * (temperatureC - low.temperatureC)
}
