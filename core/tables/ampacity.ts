/**
 * Insulation temperature of each column of {@link AWG_AMPACITY} and what its rows are multiplied by in an
 * engine space at 50 C. Source: 33-cfr-183-425, 33-cfr-183-425-note-1
 */
export const AWG_AMPACITY_COLUMNS = [
  { insulationC: 60, engineSpaceFactor: 0.58 },
  { insulationC: 75, engineSpaceFactor: 0.75 },
  { insulationC: 80, engineSpaceFactor: 0.78 },
  { insulationC: 90, engineSpaceFactor: 0.82 },
  { insulationC: 105, engineSpaceFactor: 0.85 },
  { insulationC: 125, engineSpaceFactor: 0.89 },
  { insulationC: 200, engineSpaceFactor: 1 },
] as const

/** Allowable current of a single conductor at 30 C, by AWG and column. [A] Source: 33-cfr-183-425, Table 5 */
export const AWG_AMPACITY: Readonly<Record<string, readonly number[]>> = {
  '18': [10, 10, 15, 20, 20, 25, 25],
  '16': [15, 15, 20, 25, 25, 30, 35],
  '14': [20, 20, 25, 30, 35, 40, 45],
  '12': [25, 25, 35, 40, 45, 50, 55],
  '10': [40, 40, 50, 55, 60, 70, 70],
  '8': [55, 65, 70, 70, 80, 90, 100],
  '6': [80, 95, 100, 100, 120, 125, 135],
  '4': [105, 125, 130, 135, 160, 170, 180],
  '3': [120, 145, 150, 155, 180, 195, 210],
  '2': [140, 170, 175, 180, 210, 225, 240],
  '1': [165, 195, 210, 210, 245, 265, 280],
  '1/0': [195, 230, 245, 245, 285, 305, 325],
  '2/0': [225, 265, 285, 285, 330, 355, 370],
  '3/0': [260, 310, 330, 330, 385, 410, 430],
  '4/0': [300, 360, 385, 385, 445, 475, 510],
}

/**
 * Insulation temperature of each column of {@link METRIC_AMPACITY} and its engine-space factor. The
 * column printed for 85 to 90 C counts from 85 C. The 60 C column has no factor of its own: that of
 * 33-cfr-183-425-note-1. Source: iso10133 (memory)
 */
export const METRIC_AMPACITY_COLUMNS = [
  { insulationC: 60, engineSpaceFactor: 0.58 },
  { insulationC: 70, engineSpaceFactor: 0.75 },
  { insulationC: 85, engineSpaceFactor: 0.82 },
  { insulationC: 105, engineSpaceFactor: 0.86 },
  { insulationC: 125, engineSpaceFactor: 0.89 },
  { insulationC: 200, engineSpaceFactor: 1 },
] as const

/**
 * Allowable current of a single conductor at 30 C, by nominal area [mm2] and column. [A]
 * Source: iso10133, Table A.1 (memory)
 */
export const METRIC_AMPACITY: Readonly<Record<string, readonly number[]>> = {
  '0.75': [6, 10, 12, 16, 20, 25],
  '1': [8, 14, 18, 20, 25, 35],
  '1.5': [12, 18, 21, 25, 30, 40],
  '2.5': [17, 25, 30, 35, 40, 45],
  '4': [22, 35, 40, 45, 50, 55],
  '6': [29, 45, 50, 60, 70, 75],
  '10': [40, 65, 70, 90, 100, 120],
  '16': [54, 90, 100, 130, 150, 170],
  '25': [71, 120, 140, 170, 185, 200],
  '35': [87, 160, 185, 210, 225, 240],
  '50': [105, 210, 230, 270, 300, 325],
  '70': [135, 265, 285, 330, 360, 375],
  '95': [165, 310, 330, 390, 410, 430],
  '120': [190, 360, 400, 450, 480, 520],
  '150': [220, 380, 430, 475, 520, 560],
}

/** Ambient temperature that both tables are drawn up for. [degC] */
export const AMPACITY_TABLE_AMBIENT_C = 30

/** Ambient temperature that an engine space is taken to have. [degC] Source: 33-cfr-183-425-note-1 */
export const ENGINE_SPACE_AMBIENT_C = 50

/**
 * Factor for current-carrying conductors in one bundle, duct or sheath, from that many up.
 * Source: 33-cfr-183-425-note-2
 */
export const BUNDLING_FACTORS = [
  { fromCount: 25, factor: 0.4 },
  { fromCount: 7, factor: 0.5 },
  { fromCount: 4, factor: 0.6 },
  { fromCount: 3, factor: 0.7 },
] as const

/**
 * Insulation temperature taken for a cable that states none. [degC] Ordinary PVC cable is made for 70 to
 * 75 C, and the terminals of the gear are seldom rated for more. Source: nec-110-14-c, common-practice
 */
export const ASSUMED_INSULATION_C = 75
