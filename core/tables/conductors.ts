/** Resistivity of annealed copper at 20 C: 1/58. [ohm mm2/m] Source: iec60028 */
export const COPPER_RESISTIVITY_20C = 1 / 58

/**
 * Resistance rises as (T + 234.5)/254.5 from 20 C, which is 0.00393 per kelvin. [degC]
 * Source: faa-ac43-13, iec60028
 */
export const COPPER_ZERO_RESISTANCE_C = -234.5

/**
 * Resistance of a stranded AWG conductor over that of the solid wire: lay and strand tolerance.
 * Source: nec-chapter-9-table-8 (stranded over solid: 1.02 within 0.5 %)
 */
export const AWG_STRANDING_FACTOR = 1.02

/** Diameter of 36 AWG. [mm] Source: astm-b258 (0.005 in) */
export const AWG_36_DIAMETER_MM = 0.127

/**
 * Metric sizes: nominal cross-section [mm2] and maximum resistance at 20 C [ohm/km] of tinned flexible
 * copper. Source: iec60228, Table 3, class 5, metal-coated
 */
export const METRIC_CONDUCTORS = [
  { areaMm2: 0.75, ohmPerKm: 26.7 },
  { areaMm2: 1, ohmPerKm: 20.0 },
  { areaMm2: 1.5, ohmPerKm: 13.7 },
  { areaMm2: 2.5, ohmPerKm: 8.21 },
  { areaMm2: 4, ohmPerKm: 5.09 },
  { areaMm2: 6, ohmPerKm: 3.39 },
  { areaMm2: 10, ohmPerKm: 1.95 },
  { areaMm2: 16, ohmPerKm: 1.24 },
  { areaMm2: 25, ohmPerKm: 0.795 },
  { areaMm2: 35, ohmPerKm: 0.565 },
  { areaMm2: 50, ohmPerKm: 0.393 },
  { areaMm2: 70, ohmPerKm: 0.277 },
  { areaMm2: 95, ohmPerKm: 0.21 },
  { areaMm2: 120, ohmPerKm: 0.164 },
  { areaMm2: 150, ohmPerKm: 0.132 },
] as const

/** AWG sizes with their gauge number; 1/0 is number 0, 4/0 is -3. Source: astm-b258 */
export const AWG_CONDUCTORS = [
  { awg: '18', gauge: 18 },
  { awg: '16', gauge: 16 },
  { awg: '14', gauge: 14 },
  { awg: '12', gauge: 12 },
  { awg: '10', gauge: 10 },
  { awg: '8', gauge: 8 },
  { awg: '6', gauge: 6 },
  { awg: '4', gauge: 4 },
  { awg: '3', gauge: 3 },
  { awg: '2', gauge: 2 },
  { awg: '1', gauge: 1 },
  { awg: '1/0', gauge: 0 },
  { awg: '2/0', gauge: -1 },
  { awg: '3/0', gauge: -2 },
  { awg: '4/0', gauge: -3 },
] as const

/**
 * Thinnest conductor chosen for a battery circuit. Source: 33-cfr-183-425 (single conductors at least
 * 16 AWG); 1.5 mm2 is the metric size next to it.
 */
export const THINNEST_CHOSEN = { areaMm2: 1.5, awg: '16' } as const

/** Most pairs of conductors offered in parallel. Source: common-practice */
export const MOST_PARALLEL_PAIRS = 3
