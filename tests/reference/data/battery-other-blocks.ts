/**
 * A 6 V 330 Ah flooded deep-cycle block: capacity by hour rate and minutes at 25 A and 75 A as printed in its
 * maker's data sheet (2014 form). `[hours, A, Ah]`; one of A and Ah is the printed one over or times the time.
 */
export const FLOODED_BLOCK_ROWS: readonly (readonly [number, number, number])[] = [
  [100, 3.67, 367],
  [20, 16.5, 330],
  [11.85, 25, 296.25],
  [10, 30.4, 304],
  [5, 54.2, 271],
  [3.25, 75, 243.75],
]

/**
 * A 12.8 V 45 Ah LiFePO4 block with protection board to 10 V: `[C rate, hours]`, read off the run-time chart of
 * its maker's data sheet (undated) within about 5 %.
 */
export const LFP_BLOCK_ROWS: readonly (readonly [number, number])[] = [
  [0.1, 10.4],
  [0.2, 5.2],
  [0.5, 2.05],
  [1, 0.953],
  [2, 0.484],
]

/**
 * One 2.6 Ah LiFePO4 26650 cell to 2.5 V, `[degC, C rate, Ah, mean V]`: discharge map made with the
 * electro-thermal model of Lin et al., University of Michigan. A simulation, not a measurement.
 */
export const LFP_CELL_ROWS: readonly (readonly [number, number, number, number])[] = [
  [-20, 0.1, 2.579, 3.169],
  [-20, 0.5, 2.531, 2.94],
  [-20, 1, 2.497, 2.858],
  [-20, 2, 2.505, 2.781],
  [-10, 0.1, 2.589, 3.229],
  [-10, 0.5, 2.565, 3.066],
  [-10, 1, 2.534, 2.974],
  [-10, 2, 2.539, 2.89],
  [-10, 4, 2.53, 2.783],
  [0, 0.1, 2.59, 3.249],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: a voltage that happens to look like pi
  [0, 0.5, 2.577, 3.142],
  [0, 1, 2.567, 3.071],
  [0, 2, 2.558, 2.985],
  [0, 4, 2.544, 2.877],
  [10, 0.1, 2.59, 3.264],
  [10, 0.5, 2.586, 3.193],
  [10, 1, 2.58, 3.133],
  [10, 2, 2.571, 3.054],
  [10, 4, 2.554, 2.953],
  [20, 0.1, 2.591, 3.271],
  [20, 0.5, 2.588, 3.22],
  [20, 1, 2.585, 3.173],
  [20, 2, 2.577, 3.105],
  [20, 4, 2.562, 3.011],
  [25, 0.1, 2.592, 3.274],
  [25, 0.5, 2.589, 3.231],
  [25, 1, 2.586, 3.188],
  [25, 2, 2.579, 3.125],
  [25, 4, 2.566, 3.034],
  [40, 0.1, 2.592, 3.277],
  [40, 0.5, 2.589, 3.248],
  [40, 1, 2.587, 3.217],
  [40, 2, 2.583, 3.166],
  [40, 4, 2.573, 3.089],
]

/**
 * One NMC 18650 cell to 2.5 V, `[A, degC, mAh, mean V]`: digitised from Jeon and Baek 2011 and Muenzel et al.
 * 2015; capacity is not monotonic in current (digitising noise, self-heating).
 */
export const NMC_CELL_ROWS: readonly (readonly [number, number, number, number])[] = [
  [2, 0, 3084, 3.429],
  [2, 10, 3209, 3.493],
  [2, 20, 3321, 3.521],
  [2, 30, 3381, 3.543],
  [2, 40, 3416, 3.557],
  [2, 50, 3434, 3.567],
  [4, 0, 3016, 3.287],
  [4, 10, 3163, 3.361],
  [4, 20, 3270, 3.408],
  [4, 30, 3310, 3.436],
  [4, 40, 3351, 3.454],
  [4, 50, 3356, 3.473],
  [6, 0, 3116, 3.152],
  [6, 10, 3267, 3.229],
  [6, 20, 3361, 3.278],
  [6, 30, 3387, 3.317],
  [6, 40, 3408, 3.34],
  [6, 50, 3418, 3.356],
  [8, 0, 3100, 3.067],
  [8, 10, 3193, 3.144],
  [8, 20, 3271, 3.192],
  [8, 30, 3266, 3.225],
  [8, 40, 3260, 3.242],
  [8, 50, 3142, 3.276],
]

/**
 * A 12 V 17 Ah valve-regulated block, measured at constant current, `[A, hours, Ah, mean V]`: Sulzer et al.,
 * Faster Lead-Acid Battery Simulations, J. Electrochem. Soc. 166 (2019) A2363, data BSD-3-Clause. The state of
 * charge at the start differed between runs: use the voltages, not the capacities.
 */
export const VRLA_BLOCK_ROWS: readonly (readonly [number, number, number, number])[] = [
  [0.5, 34.9, 17.45, 12.038],
  [1, 17.77, 17.77, 12.004],
  [1.5, 12.5, 18.76, 12.009],
  [2, 9.58, 19.15, 11.995],
  [2.5, 7.81, 19.52, 11.958],
  [3, 6.42, 19.27, 11.922],
]

/** The same block: terminal voltage by discharged fraction at a current. [V] */
export const VRLA_DISCHARGED_FRACTIONS = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1] as const
export const VRLA_VOLTAGES: readonly { readonly currentA: number; readonly volts: readonly number[] }[] = [
  {
    currentA: 0.5,
    volts: [12.786, 12.68, 12.504, 12.349, 12.214, 12.075, 11.935, 11.78, 11.604, 11.347, 11.135, 10.708],
  },
  {
    currentA: 1,
    volts: [12.728, 12.63, 12.469, 12.324, 12.192, 12.054, 11.915, 11.755, 11.566, 11.307, 11.087, 10.632],
  },
  {
    currentA: 2,
    volts: [12.688, 12.604, 12.465, 12.323, 12.19, 12.049, 11.901, 11.74, 11.554, 11.293, 11.092, 10.633],
  },
  {
    currentA: 3,
    volts: [12.57, 12.513, 12.398, 12.254, 12.115, 11.971, 11.824, 11.663, 11.481, 11.238, 11.059, 10.691],
  },
]
