/** Rows of a published curve: state of charge 0..1 or temperature [C], and what belongs to it. */
export type Curve = readonly (readonly [x: number, y: number])[]

/**
 * Resting voltage of a 12 V lead-acid block at 25 C. [V] H. Bode, Lead-Acid Batteries, Wiley 1977: half-cell potentials
 * by molality, worked out apart from our code at a specific gravity linear in charge: flooded 1.265 to 1.120, AGM 1.30 to
 * 1.10, gel 1.28 to 1.10. Density to molality: CRC Handbook, from memory.
 */
export const FLOODED_BLOCK_V: Curve = [
  [0, 11.89],
  [0.1, 11.96],
  [0.2, 12.04],
  [0.3, 12.12],
  [0.4, 12.19],
  [0.5, 12.27],
  [0.6, 12.34],
  [0.7, 12.42],
  [0.8, 12.5],
  [0.9, 12.58],
  [1, 12.66],
]
export const AGM_BLOCK_V: Curve = [
  [0, 11.78],
  [0.1, 11.89],
  [0.2, 11.99],
  [0.3, 12.1],
  [0.4, 12.2],
  [0.5, 12.31],
  [0.6, 12.41],
  [0.7, 12.52],
  [0.8, 12.64],
  [0.9, 12.75],
  [1, 12.87],
]
export const GEL_BLOCK_V: Curve = [
  [0, 11.78],
  [0.1, 11.88],
  [0.2, 11.97],
  [0.3, 12.07],
  [0.4, 12.16],
  [0.5, 12.25],
  [0.6, 12.35],
  [0.7, 12.45],
  [0.8, 12.55],
  [0.9, 12.65],
  [1, 12.75],
]

/**
 * Resting voltage of one lithium cell at 25 C. [V] Sunil et al., piecewise battery OCV modelling, IEEE Trans. Instrum.
 * Meas. 2025, data files: mean of charge and discharge at C/32.
 */
export const LFP_CELL_V: Curve = [
  [0, 2.01],
  [0.01, 2.702],
  [0.02, 2.864],
  [0.03, 2.956],
  [0.05, 3.072],
  [0.075, 3.164],
  [0.1, 3.203],
  [0.15, 3.216],
  [0.2, 3.241],
  [0.25, 3.262],
  [0.3, 3.278],
  [0.4, 3.295],
  [0.5, 3.299],
  [0.6, 3.303],
  [0.7, 3.316],
  [0.8, 3.337],
  [0.9, 3.341],
  [0.95, 3.343],
  [0.98, 3.348],
  [0.99, 3.37],
  [1, 3.598],
]
export const NMC_CELL_V: Curve = [
  [0, 2.52],
  [0.02, 2.965],
  [0.05, 3.162],
  [0.1, 3.304],
  [0.15, 3.401],
  [0.2, 3.475],
  [0.25, 3.521],
  [0.3, 3.576],
  [0.4, 3.644],
  [0.5, 3.717],
  [0.6, 3.817],
  [0.7, 3.92],
  [0.8, 4.018],
  [0.9, 4.092],
  [0.95, 4.116],
  [1, 4.194],
]

/**
 * Share of the 25 C capacity of an 18650 NMC cell by temperature [C]: discharge map of Jeon and Baek 2011, as digitised
 * in Muenzel et al. 2015, 0.6C to 2.5 V; below 0 C from memory.
 */
export const NMC_SHARES: Curve = [
  [-20, 0.7],
  [-10, 0.82],
  [0, 0.92],
  [10, 0.958],
  [20, 0.991],
  [25, 1],
  [30, 1.009],
  [40, 1.019],
  [50, 1.025],
]

/** Discharge times of the columns of {@link LEAD_ACID_SHARES}. [h] */
export const LEAD_ACID_HOURS = [0.25, 1, 5, 8, 20] as const

/**
 * Share of a lead-acid battery's capacity by temperature [C] and discharge time: A. King, W. Knight, Uninterruptible
 * Power Supplies and Standby Power Systems, McGraw-Hill 2003, p. 199, the whole table.
 */
export const LEAD_ACID_SHARES: readonly (readonly [temperatureC: number, ...shares: number[]])[] = [
  [-9.4, 0.55, 0.58, 0.65, 0.705, 0.735],
  [-6.7, 0.6, 0.63, 0.69, 0.735, 0.765],
  [-3.9, 0.65, 0.68, 0.735, 0.765, 0.79],
  [-1.1, 0.7, 0.725, 0.765, 0.79, 0.815],
  [1.7, 0.74, 0.765, 0.8, 0.82, 0.84],
  [4.4, 0.78, 0.8, 0.83, 0.845, 0.865],
  [7.2, 0.82, 0.84, 0.855, 0.87, 0.89],
  [10, 0.86, 0.865, 0.88, 0.895, 0.91],
  [12.8, 0.875, 0.89, 0.91, 0.92, 0.93],
  [15.8, 0.92, 0.93, 0.94, 0.945, 0.95],
  [18.3, 0.94, 0.95, 0.955, 0.96, 0.965],
  [21.1, 0.96, 0.97, 0.975, 0.975, 0.98],
  [25, 1, 1, 1, 1, 1],
  [26.7, 1.01, 1.005, 1.003, 1.002, 1.001],
  [29.4, 1.03, 1.02, 1.015, 1.01, 1.005],
  [32.2, 1.04, 1.025, 1.02, 1.015, 1.01],
  [35, 1.05, 1.03, 1.025, 1.02, 1.015],
]
