/**
 * Published discharge tables of eight 12 V AGM blocks of six cells, as printed in their maker's data sheets
 * (undated; constant current in A, constant power in W per cell; 20 or 25 C). The constant-power tables of
 * one maker share few voltage shapes, and several blocks are scaled copies of one another: count about five
 * independent shapes. Capacities are the printed currents times the printed times, to 1.75 V per cell.
 */
export interface AgmBlock {
  readonly name: string
  readonly resistanceOhm: number
  readonly capacityAh: {
    readonly h20: number
    readonly h10: number
    readonly h5: number
    readonly h1: number
  }
  readonly currentAToV175: readonly number[]
  readonly powerWPerCell: {
    readonly v185: readonly number[]
    readonly v180: readonly number[]
    readonly v175: readonly number[]
  }
}

/** Discharge times of every column. [min] */
export const AGM_MINUTES = [10, 15, 20, 30, 45, 60, 120, 180, 240, 300, 360, 480, 600, 1200] as const

export const AGM_BLOCKS: readonly AgmBlock[] = [
  {
    name: 'a 100 Ah deep-cycle AGM block',
    resistanceOhm: 0.004900000000000001,
    capacityAh: { h20: 103.8, h10: 98.0, h5: 87.5, h1: 63.6 },
    currentAToV175: [179.6, 152.0, 131.7, 104.3, 80.1, 63.6, 37.1, 26.8, 21.2, 17.5, 15.1, 11.9, 9.8, 5.19],
    powerWPerCell: {
      v185: [290.5, 256.8, 228.5, 184.2, 144.5, 117.3, 69.2, 50.4, 40.1, 33.4, 29.2, 23.2, 19.3, 10.29],
      v180: [314.4, 273.0, 240.7, 193.5, 149.6, 120.5, 70.7, 51.1, 40.5, 33.8, 29.5, 23.5, 19.5, 10.39],
      v175: [327.1, 280.4, 246.1, 197.1, 152.7, 122.2, 71.8, 52.1, 41.4, 34.4, 29.9, 23.7, 19.6, 10.44],
    },
  },
  {
    name: 'a 100 Ah front-terminal AGM block',
    resistanceOhm: 0.0043,
    capacityAh: { h20: 111.6, h10: 105.0, h5: 94.5, h1: 68.0 },
    currentAToV175: [216.4, 174.9, 146.9, 112.2, 84.5, 68.0, 39.4, 28.6, 22.9, 18.9, 16.3, 12.7, 10.5, 5.58],
    powerWPerCell: {
      v185: [324.8, 273.4, 237.0, 187.9, 147.0, 119.9, 72.0, 52.0, 41.9, 34.8, 30.3, 23.7, 19.8, 10.52],
      v180: [363.9, 300.7, 258.5, 202.5, 156.9, 127.3, 75.4, 55.0, 43.8, 36.4, 31.7, 24.9, 20.7, 10.98],
      v175: [393.0, 321.4, 273.3, 211.1, 161.4, 131.2, 76.6, 55.7, 44.8, 37.1, 32.1, 25.2, 20.9, 11.14],
    },
  },
  {
    name: 'a 75 Ah deep-cycle AGM block',
    resistanceOhm: 0.0066,
    capacityAh: { h20: 77.8, h10: 73.5, h5: 65.5, h1: 47.7 },
    currentAToV175: [135.1, 114.0, 98.3, 77.5, 60.0, 47.7, 27.8, 20.1, 15.9, 13.1, 11.4, 8.94, 7.35, 3.89],
    powerWPerCell: {
      v185: [217.9, 192.6, 171.4, 138.2, 108.4, 88.0, 51.9, 37.8, 30.1, 25.0, 21.9, 17.4, 14.5, 7.72],
      v180: [236.6, 205.3, 179.3, 143.3, 112.2, 90.3, 53.0, 38.3, 30.4, 25.4, 22.2, 17.6, 14.6, 7.79],
      v175: [246.1, 210.3, 183.7, 146.5, 114.6, 91.7, 53.8, 39.0, 31.1, 25.8, 22.4, 17.8, 14.7, 7.83],
    },
  },
  {
    name: 'a 150 Ah deep-cycle AGM block',
    resistanceOhm: 0.0025,
    capacityAh: { h20: 157.4, h10: 147.0, h5: 127.5, h1: 78.7 },
    currentAToV175: [245.7, 199.9, 166.3, 126.5, 95.0, 78.7, 50.3, 37.4, 30.2, 25.5, 22.4, 17.8, 14.7, 7.87],
    powerWPerCell: {
      v185: [320.5, 285.3, 252.6, 203.7, 159.9, 134.8, 89.8, 68.7, 55.9, 47.5, 42.3, 33.9, 28.3, 15.3],
      v180: [415.3, 347.3, 296.6, 229.5, 174.0, 145.2, 95.2, 71.6, 57.8, 49.2, 43.6, 34.9, 29.2, 15.7],
      v175: [447.6, 368.8, 310.8, 239.2, 181.3, 151.3, 97.3, 72.8, 59.2, 50.2, 44.3, 35.4, 29.4, 15.8],
    },
  },
  {
    name: 'a 150 Ah front-terminal AGM block',
    resistanceOhm: 0.003,
    capacityAh: { h20: 167.4, h10: 157.5, h5: 141.5, h1: 102.0 },
    currentAToV175: [
      324.6, 262.3, 220.4, 168.3, 126.8, 102.0, 59.2, 42.8, 34.3, 28.3, 24.5, 18.98, 15.75, 8.37,
    ],
    powerWPerCell: {
      v185: [487.1, 410.2, 355.5, 281.9, 220.4, 179.8, 108.0, 78.0, 62.8, 52.2, 45.5, 35.6, 29.8, 15.78],
      v180: [545.8, 451.0, 387.8, 303.8, 235.3, 190.9, 113.1, 82.6, 65.8, 54.6, 47.6, 37.3, 31.1, 16.48],
      v175: [589.5, 482.2, 409.9, 316.6, 242.0, 196.8, 114.9, 83.5, 67.2, 55.7, 48.2, 37.6, 31.4, 16.7],
    },
  },
  {
    name: 'a 65 Ah general-purpose AGM block',
    resistanceOhm: 0.0073,
    capacityAh: { h20: 69.2, h10: 64.7, h5: 54.5, h1: 34.0 },
    currentAToV175: [93.9, 76.9, 65.9, 52.8, 40.6, 34.0, 21.6, 16.2, 13.1, 10.9, 9.68, 7.73, 6.47, 3.46],
    powerWPerCell: {
      v185: [134.9, 114.6, 102.7, 86.1, 67.0, 57.5, 37.9, 28.6, 23.5, 19.8, 17.6, 14.2, 12.2, 6.52],
      v180: [152.6, 127.0, 111.9, 92.1, 71.7, 60.4, 40.5, 30.5, 24.8, 20.9, 18.6, 14.9, 12.6, 6.74],
      v175: [170.5, 141.4, 122.5, 99.3, 77.5, 65.5, 41.9, 31.6, 25.6, 21.3, 19.1, 15.3, 12.9, 6.9],
    },
  },
  {
    name: 'a 55 Ah front-terminal AGM block',
    resistanceOhm: 0.006,
    capacityAh: { h20: 59.6, h10: 56.0, h5: 49.9, h1: 35.5 },
    currentAToV175: [113.1, 91.4, 76.8, 58.6, 44.2, 35.5, 20.8, 15.1, 12.1, 9.98, 8.7, 6.75, 5.6, 2.98],
    powerWPerCell: {
      v185: [169.7, 142.9, 123.8, 98.2, 76.8, 62.6, 38.0, 27.5, 22.1, 18.4, 16.2, 12.7, 10.6, 5.61],
      v180: [190.1, 157.1, 135.1, 105.8, 82.0, 66.5, 39.8, 29.1, 23.1, 19.2, 16.9, 13.3, 11.1, 5.86],
      v175: [205.3, 168.0, 142.8, 110.3, 84.3, 68.6, 40.4, 29.4, 23.7, 19.6, 17.1, 13.4, 11.2, 5.94],
    },
  },
  {
    name: 'a 40 Ah front-terminal AGM block',
    resistanceOhm: 0.009,
    capacityAh: { h20: 43.4, h10: 40.7, h5: 36.3, h1: 25.8 },
    currentAToV175: [82.2, 66.4, 55.8, 42.6, 32.1, 25.8, 15.1, 11.0, 8.79, 7.26, 6.32, 4.91, 4.07, 2.17],
    powerWPerCell: {
      v185: [123.4, 103.9, 90.1, 71.4, 55.8, 45.6, 27.6, 20.0, 16.1, 13.4, 11.8, 9.21, 7.7, 4.08],
      v180: [138.3, 114.3, 98.2, 77.0, 59.6, 48.4, 29.0, 21.1, 16.8, 14.0, 12.3, 9.64, 8.04, 4.26],
      v175: [149.3, 122.1, 103.8, 80.2, 61.3, 49.9, 29.4, 21.4, 17.2, 14.3, 12.5, 9.74, 8.12, 4.32],
    },
  },
]

/** Makes the twelve-volt, six-cell power of a table's watts per cell. [W] */
export const blockPowerW = (wattsPerCell: number): number => 6 * wattsPerCell
