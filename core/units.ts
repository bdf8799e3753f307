/**
 * Unit conversions, each constant in one place.
 *
 * Exact by definition: 1 ft = 0.3048 m, 1 in = 25.4 mm (international yard and pound agreement, 1959);
 * 1 hp (mechanical) = 550 ft lbf/s and 1 Btu(IT) = 1055.05585262 J (NIST SP 811, 2008 edition, Appendix B.8).
 */

/** Shaft watts of one mechanical horsepower. NIST SP 811 (2008) B.8: 745.6999 W. */
export const WATTS_PER_HORSEPOWER = 745.6999

/** Watts of one Btu (International Table) an hour. NIST SP 811 (2008) B.8: 0.2930711 W. */
export const WATTS_PER_BTU_PER_HOUR = 0.2930711

/** Metres of one international foot, exact. */
export const METRES_PER_FOOT = 0.3048

/** Square millimetres of one circular mil: pi/4 x (0.0254 mm)^2. */
export const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * 0.0254 ** 2

/** Minutes of one day. */
export const MINUTES_PER_DAY = 1440

/**
 * Shaft power of a horsepower figure.
 *
 * @param horsepower - Mechanical horsepower. [hp] 0 or more
 * @returns The same power. [W]
 * @source nist-sp811
 * @example horsepowerToWatts(0.5) //=> 372.85
 */
export function horsepowerToWatts(horsepower: number): number {
  return horsepower * WATTS_PER_HORSEPOWER
}

/**
 * Heat flow of a British-thermal-units-an-hour figure.
 *
 * @param btuPerHour - Heat flow. [Btu/h] 0 or more
 * @returns The same heat flow. [W]
 * @source nist-sp811
 * @example btuPerHourToWatts(12000) //=> 3516.85
 */
export function btuPerHourToWatts(btuPerHour: number): number {
  return btuPerHour * WATTS_PER_BTU_PER_HOUR
}

/**
 * Length in metres of a length in feet.
 *
 * @param feet - Length. [ft]
 * @returns The same length. [m]
 * @source nist-sp811
 */
export function feetToMetres(feet: number): number {
  return feet * METRES_PER_FOOT
}

/**
 * Temperature in degrees Celsius of a temperature in degrees Fahrenheit.
 *
 * @param fahrenheit - Temperature. [degF]
 * @returns The same temperature. [degC]
 * @source nist-sp811
 */
export function fahrenheitToCelsius(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8
}
