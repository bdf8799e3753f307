import type { BatteryChemistry, SupplyVoltage } from '../range/vocabulary.ts'
import type { SourceId } from './sources.ts'

/** A straight-line table: `[x, y]`, x rising. */
export type Points = readonly (readonly [number, number])[]

/** How the available charge of a lead-acid cell falls with current, per unit of its rated capacity. */
export interface LeadAcidFigures {
  readonly family: 'lead-acid'
  /** Current, as a share of the rated capacity per hour, at which half of the charge is out of reach. [1/h] */
  readonly halfRatePerH: number
  /** Exponent of the generalised Peukert law. */
  readonly rateExponent: number
  /** Working voltage of one cell, empty and full, at no current. [V] */
  readonly emptyCellV: number
  readonly fullCellV: number
}

/** How a lithium battery gives its charge. */
export interface LithiumFigures {
  readonly family: 'lithium'
  readonly peukertExponent: number
  /** Below the current of this hour rate the capacity no longer grows. [h] */
  readonly slowestHourRateH: number
  /** Protection board opens below this. [V per cell] */
  readonly lowestCellV: number
  /** Current assumed where the battery states none, as a share of its capacity. [1/h] */
  readonly assumedLimitPerH: number
  readonly capacityByTemperatureC: Points
  readonly resistanceByTemperatureC: Points
}

/** Published figures of one chemistry. */
export interface ChemistryFigures {
  readonly kind: LeadAcidFigures | LithiumFigures
  readonly cellsInSeries: Readonly<Record<SupplyVoltage, number>>
  /** Resting voltage of one cell by state of charge 0..1. [V] */
  readonly openCircuitCellV: Points
  /** Resistance times capacity of one cell, as a catalogue states it. [ohm Ah] */
  readonly cellResistanceOhmAh: number
  /** What a steady load sees, over the catalogue's figure. */
  readonly loadResistanceFactor: number
  /** How far the assumed resistance may be off, down and up. */
  readonly resistanceSpread: readonly [number, number]
  /** State of charge down to which a battery that states none is used. 0..1 */
  readonly minSocFraction: number
  /** Largest steady current that does the battery no harm, as a share of its capacity. [1/h] */
  readonly advisedLimitPerH: number
  /** Charge put back over charge taken. */
  readonly chargeFactor: number
  /** Energy taken over energy put in. 0..1 */
  readonly roundTripFraction: number
  /** Largest charging current, as a share of the capacity. [1/h] */
  readonly chargeLimitPerH: number
  readonly chargeTemperatureC: readonly [number, number]
  /** Which figure comes from where. */
  readonly sources: Readonly<Record<string, SourceId>>
}

/**
 * Voltage drop of a lead-acid cell that sets in with any current, voltage at which its capacity is rated,
 * and the share of charge over which the voltage falls off at the end of a discharge.
 * Fitted on the AGM tables (battery-model-fit); 1.75 V per cell: navy-od-010.
 */
export const LEAD_ACID_CELL = { polarisationV: 0.045, ratedEndV: 1.75, kneeSocFraction: 0.06 } as const

/** Exponent taken when only one short-rate capacity is stated. Fitted: battery-model-fit. */
export const ONE_FIGURE_RATE_EXPONENT = 0.9

const LEAD_ACID_CELLS = { 12: 6, 24: 12, 36: 18, 48: 24 } as const

/** Open-circuit voltages are Bode's, from the acid named; a printed flooded table agrees within 31 mV. */
const FLOODED_OPEN_CIRCUIT_BLOCK_V: Points = [
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
const AGM_OPEN_CIRCUIT_BLOCK_V: Points = [
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
const GEL_OPEN_CIRCUIT_BLOCK_V: Points = [
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

const perCell = (block: Points): Points => block.map(([soc, volts]) => [soc, volts / 6] as const)

/**
 * The chemistries.
 *
 * Flooded: acid 1.265 full, 1.120 empty; its working line is the AGM line lowered at the full end by the
 * difference of the full open-circuit voltages. AGM: acid 1.30 full, 1.10 empty. Gel: no discharge table
 * could be read, so it takes the AGM shape and is marked unverified. NMC has no true 12 V block: three
 * cells (10.95 V) is the careful choice; 48 V is taken as 13 cells.
 */
export const CHEMISTRIES: Readonly<Record<BatteryChemistry, ChemistryFigures>> = {
  flooded: {
    kind: { family: 'lead-acid', halfRatePerH: 0.46, rateExponent: 0.83, emptyCellV: 1.95, fullCellV: 2.1 },
    cellsInSeries: LEAD_ACID_CELLS,
    openCircuitCellV: perCell(FLOODED_OPEN_CIRCUIT_BLOCK_V),
    cellResistanceOhmAh: 0.5 / 6,
    loadResistanceFactor: 1.2,
    resistanceSpread: [0.7, 1.6],
    minSocFraction: 0.5,
    advisedLimitPerH: 0.2,
    chargeFactor: 1.15,
    roundTripFraction: 0.75,
    chargeLimitPerH: 0.2,
    chargeTemperatureC: [-20, 45],
    sources: {
      kind: 'battery-model-fit',
      openCircuitCellV: 'bode-1977',
      cellResistanceOhmAh: 'battery-handbooks',
      loadResistanceFactor: 'battery-model-fit',
      minSocFraction: 'low-voltage-disconnect-guidance',
      advisedLimitPerH: 'battery-handbooks',
      chargeFactor: 'battery-handbooks',
      roundTripFraction: 'battery-handbooks',
      chargeLimitPerH: 'common-practice',
      chargeTemperatureC: 'flooded-block-sheet',
    },
  },
  agm: {
    kind: { family: 'lead-acid', halfRatePerH: 0.6, rateExponent: 0.85, emptyCellV: 1.95, fullCellV: 2.135 },
    cellsInSeries: LEAD_ACID_CELLS,
    openCircuitCellV: perCell(AGM_OPEN_CIRCUIT_BLOCK_V),
    cellResistanceOhmAh: 0.46 / 6,
    loadResistanceFactor: 1.2,
    resistanceSpread: [0.78, 1.2],
    minSocFraction: 0.5,
    advisedLimitPerH: 1,
    chargeFactor: 1.1,
    roundTripFraction: 0.8,
    chargeLimitPerH: 0.3,
    chargeTemperatureC: [0, 40],
    sources: {
      kind: 'battery-model-fit',
      openCircuitCellV: 'bode-1977',
      cellResistanceOhmAh: 'agm-block-sheets',
      loadResistanceFactor: 'battery-model-fit',
      minSocFraction: 'low-voltage-disconnect-guidance',
      advisedLimitPerH: 'vrla-guidance',
      chargeFactor: 'vrla-guidance',
      roundTripFraction: 'battery-handbooks',
      chargeLimitPerH: 'agm-block-sheets',
      chargeTemperatureC: 'agm-block-sheets',
    },
  },
  gel: {
    kind: { family: 'lead-acid', halfRatePerH: 0.6, rateExponent: 0.85, emptyCellV: 1.95, fullCellV: 2.115 },
    cellsInSeries: LEAD_ACID_CELLS,
    openCircuitCellV: perCell(GEL_OPEN_CIRCUIT_BLOCK_V),
    cellResistanceOhmAh: 0.55 / 6,
    loadResistanceFactor: 1.2,
    resistanceSpread: [0.7, 1.5],
    minSocFraction: 0.5,
    advisedLimitPerH: 0.5,
    chargeFactor: 1.1,
    roundTripFraction: 0.8,
    chargeLimitPerH: 0.2,
    chargeTemperatureC: [-20, 50],
    sources: {
      kind: 'battery-model-fit',
      openCircuitCellV: 'bode-1977',
      cellResistanceOhmAh: 'battery-handbooks',
      loadResistanceFactor: 'battery-model-fit',
      minSocFraction: 'battery-handbooks',
      advisedLimitPerH: 'battery-handbooks',
      chargeFactor: 'battery-handbooks',
      roundTripFraction: 'battery-handbooks',
      chargeLimitPerH: 'common-practice',
      chargeTemperatureC: 'battery-handbooks',
    },
  },
  lifepo4: {
    kind: {
      family: 'lithium',
      peukertExponent: 1.02,
      slowestHourRateH: 5,
      lowestCellV: 2.5,
      assumedLimitPerH: 1,
      capacityByTemperatureC: [
        [-20, 0.7],
        [-10, 0.77],
        [0, 0.9],
        [10, 0.97],
        [20, 1],
      ],
      // Fall of mean voltage from 0.1C to 1C, over that at 25 C; held above 25 C.
      resistanceByTemperatureC: [
        [-20, 3.62],
        [-10, 2.97],
        [0, 2.07],
        [10, 1.52],
        [20, 1.14],
        [25, 1],
      ],
    },
    cellsInSeries: { 12: 4, 24: 8, 36: 12, 48: 16 },
    openCircuitCellV: [
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
    ],
    cellResistanceOhmAh: 0.5 / 4,
    loadResistanceFactor: 1,
    resistanceSpread: [0.7, 1.6],
    minSocFraction: 0.2,
    advisedLimitPerH: 1,
    chargeFactor: 1.02,
    roundTripFraction: 0.94,
    chargeLimitPerH: 0.5,
    chargeTemperatureC: [0, 45],
    sources: {
      kind: 'lfp-block-sheets',
      openCircuitCellV: 'lithium-ocv-2025',
      cellResistanceOhmAh: 'lfp-block-sheets',
      resistanceByTemperatureC: 'lin-lfp-simulation',
      loadResistanceFactor: 'battery-model-fit',
      minSocFraction: 'lfp-block-sheets',
      advisedLimitPerH: 'lfp-cell-sheets',
      chargeFactor: 'battery-handbooks',
      roundTripFraction: 'battery-handbooks',
      chargeLimitPerH: 'lfp-block-sheets',
      chargeTemperatureC: 'lfp-block-sheets',
    },
  },
  nmc: {
    kind: {
      family: 'lithium',
      peukertExponent: 1.03,
      slowestHourRateH: 5,
      lowestCellV: 3,
      assumedLimitPerH: 1,
      capacityByTemperatureC: [
        [-20, 0.7],
        [-10, 0.82],
        [0, 0.92],
        [10, 0.958],
        [20, 0.991],
        [25, 1],
        [30, 1.009],
        [40, 1.019],
        [50, 1.025],
      ],
      // 61, 59, 56, 54, 53 mohm at 0, 10, 20, 30, 40 C, over 55 mohm at 25 C; held outside.
      resistanceByTemperatureC: [
        [0, 1.109],
        [10, 1.073],
        [20, 1.018],
        [25, 1],
      ],
    },
    cellsInSeries: { 12: 3, 24: 7, 36: 10, 48: 13 },
    openCircuitCellV: [
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
    ],
    cellResistanceOhmAh: 0.18,
    loadResistanceFactor: 1,
    resistanceSpread: [0.7, 1.4],
    minSocFraction: 0.2,
    advisedLimitPerH: 1,
    chargeFactor: 1.01,
    roundTripFraction: 0.94,
    chargeLimitPerH: 0.5,
    chargeTemperatureC: [0, 45],
    sources: {
      kind: 'jeon-baek-nmc',
      openCircuitCellV: 'lithium-ocv-2025',
      cellResistanceOhmAh: 'jeon-baek-nmc',
      resistanceByTemperatureC: 'jeon-baek-nmc',
      loadResistanceFactor: 'battery-model-fit',
      minSocFraction: 'battery-handbooks',
      advisedLimitPerH: 'battery-handbooks',
      chargeFactor: 'battery-handbooks',
      roundTripFraction: 'battery-handbooks',
      chargeLimitPerH: 'common-practice',
      chargeTemperatureC: 'nmc-cell-sheet',
    },
  },
}

/** Steady-load resistance over an AC figure stated for a lithium battery: 1.5 to 3 times (battery-handbooks). */
export const STATED_LITHIUM_RESISTANCE_FACTOR = 1.5

/** How far a resistance stated by the shop may be off, down and up. Assumption. */
export const STATED_RESISTANCE_SPREAD: readonly [number, number] = [0.9, 1.1]

/** Discharge times of the columns of {@link LEAD_ACID_TEMPERATURE_ROWS}. [h] */
export const LEAD_ACID_TEMPERATURE_HOURS = [0.25, 1, 5, 8, 20] as const

/** Where the shares of {@link LEAD_ACID_TEMPERATURE_ROWS} are all 1. [C] */
export const LEAD_ACID_REFERENCE_C = 25

/** Share of a lead-acid battery's capacity by temperature [C] and discharge time. king-knight-2003. */
export const LEAD_ACID_TEMPERATURE_ROWS: readonly (readonly [number, ...number[]])[] = [
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

/** Share of a lead-acid battery's capacity in hard cold [C]; carries the table above on downwards. tm-10-6140-200-14. */
export const LEAD_ACID_COLD_POINTS = {
  low: { temperatureC: -17.8, share: 0.4 },
  high: { temperatureC: 0, share: 0.75 },
} as const

/**
 * By how much a predicted run time may lie under (`under`) or over (`over`) the true one, by predicted hours:
 * `[hours, under, over]`, straight lines in log hours between the rows, end rows held. Lead-acid bands
 * cover the errors measured against the published tables (tests/bench/runtime-accuracy.ts); lithium has no
 * measured run from a known state of charge, so its band is set by judgement around a simulated map.
 */
export const ERROR_BANDS = {
  'lead-acid-default': [
    [1 / 3, 0.35, 0.85],
    [0.6, 0.25, 0.45],
    [1, 0.25, 0.45],
    [1.2, 0.2, 0.35],
    [4, 0.2, 0.35],
    [5, 0.1, 0.1],
  ],
  'lead-acid-one-figure': [
    [1 / 3, 0.25, 0.3],
    [0.5, 0.15, 0.15],
    [1, 0.15, 0.15],
    [1.2, 0.1, 0.1],
  ],
  'lead-acid-two-figures': [
    [1 / 3, 0.2, 0.45],
    [0.5, 0.1, 0.1],
    [1, 0.08, 0.08],
  ],
  lithium: [
    [1 / 3, 0.15, 0.15],
    [1, 0.08, 0.08],
  ],
} as const satisfies Readonly<Record<string, readonly (readonly [number, number, number])[]>>

/** What is added to both sides of a band where nothing was tested: cold, hard heat, age, gel. Judgement. */
export const UNTESTED_WIDENING = { coldFraction: 0.1, agedFraction: 0.05, gelFraction: 0.1 } as const
