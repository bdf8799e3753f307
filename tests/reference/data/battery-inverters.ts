/**
 * Nine inverters with a battery-voltage input in Sandia model form: California Energy Commission test results,
 * library of 2019-03-05 (public data). `lossFit` a, b, c and `efficiency` were worked out of these
 * coefficients beforehand; the test works them out again.
 */
export interface TestedInverter {
  readonly ratedW: number
  readonly ratedDcW: number
  readonly ratedDcV: number
  readonly startW: number
  readonly c0: number
  readonly c1: number
  readonly c2: number
  readonly c3: number
  readonly nightW: number
  readonly efficiency: readonly number[]
}

/** Loads at which the efficiencies are given, as a share of the rating. */
export const TESTED_LOADS = [0.05, 0.1, 0.2, 0.3, 0.5, 0.75, 1] as const

export const TESTED_INVERTERS: readonly TestedInverter[] = [
  {
    ratedW: 3500,
    ratedDcW: 3957.23,
    ratedDcV: 51,
    startW: 44.676,
    c0: -2.2e-5,
    c1: -0.000343,
    c2: 0.044309,
    c3: 0.000396,
    nightW: 1.05,
    efficiency: [0.7818, 0.8653, 0.9087, 0.9191, 0.9176, 0.9036, 0.8845],
  },
  {
    ratedW: 4000,
    ratedDcW: 4584.88,
    ratedDcV: 54.5,
    startW: 55.295,
    c0: -2.2e-5,
    c1: 0.002833,
    c2: 0.014904,
    c3: 0.005088,
    nightW: 1.2,
    efficiency: [0.77, 0.8582, 0.9042, 0.9148, 0.9121, 0.8952, 0.8724],
  },
  {
    ratedW: 5000,
    ratedDcW: 5901.7,
    ratedDcV: 54.5,
    startW: 58.497,
    c0: -2.2e-5,
    c1: 0.004186,
    c2: 0.050469,
    c3: 0.030491,
    nightW: 1.5,
    efficiency: [0.7963, 0.8735, 0.9102, 0.9156, 0.9052, 0.8795, 0.8472],
  },
  {
    ratedW: 3600,
    ratedDcW: 3959.59,
    ratedDcV: 48,
    startW: 57.476,
    c0: -2.1e-5,
    c1: 0.00086,
    c2: 0.024083,
    c3: -0.016929,
    nightW: 1.08,
    efficiency: [0.7584, 0.86, 0.9168, 0.9327, 0.9365, 0.9259, 0.9092],
  },
  {
    ratedW: 7650,
    ratedDcW: 8592.06,
    ratedDcV: 52,
    startW: 123.299,
    c0: -7.705366e-6,
    c1: 0.001038,
    c2: 0.016304,
    c3: -0.008882,
    nightW: 2.295,
    efficiency: [0.7363, 0.8332, 0.8878, 0.9038, 0.9096, 0.9027, 0.8904],
  },
  {
    ratedW: 2560,
    ratedDcW: 2808.53,
    ratedDcV: 52,
    startW: 62.492,
    c0: -2e-5,
    c1: 0.00044,
    c2: 0.017745,
    c3: -0.020926,
    nightW: 0.768,
    efficiency: [0.6649, 0.7921, 0.8727, 0.9002, 0.9175, 0.9183, 0.9115],
  },
  {
    ratedW: 2960,
    ratedDcW: 3343.0,
    ratedDcV: 24,
    startW: 45.661,
    c0: -2.9e-5,
    c1: 0.001619,
    c2: 0.070669,
    c3: -0.032773,
    nightW: 0.888,
    efficiency: [0.7578, 0.8548, 0.9074, 0.9209, 0.9211, 0.9064, 0.8854],
  },
  {
    ratedW: 3037,
    ratedDcW: 3382.37,
    ratedDcV: 51.2,
    startW: 63.013,
    c0: -2.4e-5,
    c1: 0.001529,
    c2: 0.027721,
    c3: 0.001748,
    nightW: 0.9111,
    efficiency: [0.7022, 0.8194, 0.8893, 0.9109, 0.92, 0.9126, 0.8979],
  },
  {
    ratedW: 5000,
    ratedDcW: 5447.35,
    ratedDcV: 48,
    startW: 18.113,
    c0: -1.1e-5,
    c1: 0.000326,
    c2: -0.005656,
    c3: -0.001223,
    nightW: 1.5,
    efficiency: [0.9132, 0.9418, 0.9526, 0.9525, 0.9452, 0.9324, 0.9179],
  },
]

/**
 * The published check of the Sandia model: King, Gonzalez, Galbraith, Boyson, SAND2007-5036, equations 1 to 4,
 * with the coefficients and answers of an open test-suite of that model.
 */
export const SANDIA_VECTOR = {
  inverter: {
    ratedW: 250,
    ratedDcW: 259.5220505,
    ratedDcV: 40.24260317,
    startW: 1.771614224,
    c0: -2.48e-5,
    c1: -9.01e-5,
    c2: 0.000669,
    c3: -0.0189,
    nightW: 0.02,
  },
  cases: [
    { dcV: 0, dcA: 0, outputW: -0.02 },
    { dcV: 25, dcA: 5.5, outputW: 132.004308 },
    { dcV: 50, dcA: 11, outputW: 250 },
  ],
} as const
