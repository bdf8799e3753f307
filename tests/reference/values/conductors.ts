import { COPPER_RESISTIVITY_20C } from '../../../core/tables/conductors.ts'
import { METRES_PER_FOOT, MM2_PER_CIRCULAR_MIL } from '../../../core/units.ts'
import {
  awgAreaMm2,
  type Conductor,
  conductorOfSize,
  conductorResistanceOhmPerM,
  type StatedSize,
  temperatureFactor,
  wireResistanceOhmPerM,
} from '../../../core/wiring/conductor.ts'
import { voltageDropV } from '../../../core/wiring/voltage-drop.ts'
import type { Topic } from './published.ts'

const KILOFEET_IN_M = 1000 * METRES_PER_FOOT

/**
 * A conductor of the tables.
 *
 * @param size - Its area or gauge
 * @returns The conductor; an error where the size is no standard one
 */
export function standard(size: StatedSize): Conductor {
  const conductor = conductorOfSize(size)
  if (conductor === undefined) throw new Error('not a standard size')
  return conductor
}

export const IEC_60228_CLASS_5: readonly (readonly [areaMm2: number, ohmPerKm: number])[] = [
  [0.75, 26.7],
  [1, 20],
  [1.5, 13.7],
  [2.5, 8.21],
  [4, 5.09],
  [6, 3.39],
  [10, 1.95],
  [16, 1.24],
  [25, 0.795],
  [35, 0.565],
  [50, 0.393],
  [70, 0.277],
  [95, 0.21],
  [120, 0.164],
  [150, 0.132],
]

/** Solid wire at 20 C; gauge 0 is 1/0, -3 is 4/0. */
export const SOLID_AWG_20C: readonly (readonly [awg: string, gauge: number, ohmPerKft: number])[] = [
  ['18', 18, 6.385],
  ['16', 16, 4.016],
  ['14', 14, 2.525],
  ['12', 12, 1.588],
  ['10', 10, 0.9989],
  ['8', 8, 0.6282],
  ['6', 6, 0.3951],
  ['4', 4, 0.2485],
  ['3', 3, 0.197],
  ['2', 2, 0.1563],
  ['1', 1, 0.124],
  ['1/0', 0, 0.0983],
  ['2/0', -1, 0.078],
  ['3/0', -2, 0.0618],
  ['4/0', -3, 0.049],
]

const NEC_TABLE_8: readonly (readonly [awg: string, circularMils: number, ohmPerKft: number])[] = [
  ['18', 1620, 7.95],
  ['16', 2580, 4.99],
  ['14', 4110, 3.14],
  ['12', 6530, 1.98],
  ['10', 10380, 1.24],
  ['8', 16510, 0.778],
  ['6', 26240, 0.491],
  ['4', 41740, 0.308],
  ['3', 52620, 0.245],
  ['2', 66360, 0.194],
  ['1', 83690, 0.154],
  ['1/0', 105600, 0.122],
  ['2/0', 133100, 0.0967],
  ['3/0', 167800, 0.0766],
  ['4/0', 211600, 0.0608],
]

const KT: readonly (readonly [temperatureC: number, kt: number])[] = [
  [5, 1.064],
  [10, 1.042],
  [15, 1.02],
  [20, 1],
  [25, 0.98],
  [30, 0.962],
  [35, 0.943],
  [40, 0.926],
  [45, 0.909],
  [50, 0.893],
  [55, 0.877],
  [60, 0.862],
  [65, 0.847],
  [70, 0.833],
  [75, 0.82],
  [80, 0.806],
  [85, 0.794],
  [90, 0.781],
  [95, 0.769],
  [100, 0.758],
]

const BS_7671_4F1B: readonly (readonly [areaMm2: number, millivolts: number])[] = [
  [4, 12],
  [6, 7.8],
  [10, 4.6],
  [16, 2.9],
  [25, 1.8],
  [35, 1.31],
  [50, 0.91],
  [70, 0.64],
  [95, 0.49],
  [120, 0.38],
  [150, 0.31],
]

const atKft = (awg: string, temperatureC: number) =>
  conductorResistanceOhmPerM(standard({ awg }), temperatureC) * KILOFEET_IN_M

const millivoltsOf = (areaMm2: number) =>
  1000 *
  voltageDropV({
    conductor: standard({ areaMm2 }),
    currentA: 1,
    lengthM: 1,
    conductorTempC: 60,
    parallelPairs: 1,
  })

export const CONDUCTORS: Topic = {
  id: 'conductors',
  title: 'Conductors: resistance and area',
  about: 'How much a conductor resists, by size and temperature, and the area behind a gauge number.',
  tables: [
    {
      document: 'iec-60228',
      table: 'Table 3, class 5 (flexible), metal-coated copper',
      quantity: 'largest resistance at 20 °C',
      unit: 'Ω/km',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: IEC_60228_CLASS_5.map(([areaMm2, ohmPerKm]) => [
        `${areaMm2} mm²`,
        ohmPerKm,
        () => conductorResistanceOhmPerM(standard({ areaMm2 }), 20) * 1000,
      ]),
    },
    {
      document: 'bs-7671',
      table: 'Table 4F1B, rubber flexible cable, d.c.',
      quantity: 'drop of a pair at 60 °C for each ampere and metre of route',
      unit: 'mV/A/m',
      how: 'computed',
      tolerance: { relative: 0.0225 },
      because:
        'printed with two figures; reckoned from class 5 resistances, which tells the tables of two bodies against each other',
      rows: BS_7671_4F1B.map(([areaMm2, millivolts]) => [
        `${areaMm2} mm²`,
        millivolts,
        () => millivoltsOf(areaMm2),
      ]),
    },
    {
      document: 'iec-60228',
      table: 'temperature correction kt',
      quantity: 'resistance at 20 °C over that at the temperature',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.0035 },
      because: 'kt is printed by a rounded law, up to 0.4 % off the one for copper',
      rows: KT.map(([temperatureC, kt]) => [
        `${temperatureC} °C`,
        kt,
        () => 1 / temperatureFactor(temperatureC),
      ]),
    },
    {
      document: 'hyperphysics',
      table: 'American wire gages, solid copper',
      quantity: 'resistance at 20 °C for 1000 ft',
      unit: 'Ω',
      how: 'computed',
      tolerance: { relative: 0.0015 },
      because: 'rounding of the print',
      rows: SOLID_AWG_20C.map(([awg, gauge, ohmPerKft]) => [
        `${awg} AWG`,
        ohmPerKft,
        () =>
          KILOFEET_IN_M *
          wireResistanceOhmPerM({
            resistivityOhmMm2PerM: COPPER_RESISTIVITY_20C,
            areaMm2: awgAreaMm2(gauge),
          }),
      ]),
    },
    {
      document: 'nec-chapter-9-table-8',
      table: 'Table 8, uncoated stranded copper',
      quantity: 'resistance at 75 °C for 1000 ft',
      unit: 'Ω',
      how: 'computed',
      tolerance: { relative: 0.006 },
      because: 'one stranding factor for all sizes',
      rows: NEC_TABLE_8.map(([awg, , ohmPerKft]) => [`${awg} AWG`, ohmPerKft, () => atKft(awg, 75)]),
    },
    {
      document: 'nec-chapter-9-table-8',
      table: 'Table 8, area',
      quantity: 'area',
      unit: 'circular mil',
      how: 'computed',
      tolerance: { relative: 0.003 },
      because: 'the table rounds the areas of the gauge',
      rows: NEC_TABLE_8.map(([awg, circularMils]) => [
        `${awg} AWG`,
        circularMils,
        () => standard({ awg }).areaMm2 / MM2_PER_CIRCULAR_MIL,
      ]),
    },
    {
      document: 'astm-b258',
      table: 'diameters and areas',
      quantity: 'area',
      unit: 'mm²',
      how: 'computed',
      tolerance: { absolute: 0.05 },
      because: 'rounding of the print',
      rows: [
        ['4/0 AWG, 0.46 in across', 107.22, () => awgAreaMm2(-3)],
        ['1/0 AWG', 53.49, () => awgAreaMm2(0)],
        ['1 AWG', 42.41, () => awgAreaMm2(1)],
      ],
    },
    {
      document: 'army-en1136',
      table: 'bare stranded copper',
      quantity: 'resistance at 20 °C for 1000 ft',
      unit: 'Ω',
      how: 'computed',
      tolerance: { relative: 0.003 },
      because: 'another stranding than ours',
      rows: [['1 AWG', 0.12617, () => atKft('1', 20)]],
    },
    {
      document: 'ecm-voltage-drop',
      table: 'constant of the circular-mil method',
      quantity: 'resistance of copper at 75 °C for each foot of a circular mil',
      unit: 'Ω',
      how: 'computed',
      tolerance: { absolute: 0.1 },
      because: 'one constant for all sizes',
      rows: [
        [
          '12 AWG',
          12.9,
          () => (atKft('12', 75) * standard({ awg: '12' }).areaMm2) / MM2_PER_CIRCULAR_MIL / 1000,
        ],
      ],
    },
  ],
  traps: [
    {
      document: 'openstax-university-physics',
      table: 'module m58735, 60 km copper line',
      what: 'area of 0-gauge wire',
      unit: 'mm²',
      printed: 42.4,
      why: '42.40 mm² is 1 AWG; 1/0 AWG has 53.49 mm² by ASTM B258',
      compute: () => awgAreaMm2(0),
    },
  ],
}
