import { bankModel, openCircuitV } from '../../../core/battery/bank.ts'
import { bankFor } from '../../../core/battery/bank-size.ts'
import { constantPowerCurrentA } from '../../../core/battery/operating-point.ts'
import { capacityAtCurrentAh, type RateCapacity } from '../../../core/battery/rate-capacity.ts'
import { rechargeFor } from '../../../core/battery/recharge.ts'
import { leadAcidShares, lithiumShare, shareAtHours } from '../../../core/battery/temperature.ts'
import type { BatteryChemistry } from '../../../core/range/vocabulary.ts'
import { CHEMISTRIES } from '../../../core/tables/chemistries.ts'
import {
  AGM_BLOCK_V,
  type Curve,
  FLOODED_BLOCK_V,
  GEL_BLOCK_V,
  LEAD_ACID_HOURS,
  LEAD_ACID_SHARES,
  LFP_CELL_V,
  NMC_CELL_V,
  NMC_SHARES,
} from '../data/battery-curves.ts'
import { LFP_CELL_ROWS } from '../data/battery-other-blocks.ts'
import type { DocumentId } from './documents.ts'
import type { PublishedTable, Row, Topic } from './published.ts'

/**
 * Peukert's law at a stated hour rate, as core holds it.
 *
 * @param capacityAh - Capacity at that rate [Ah]
 * @param hourRateH - The rate [h]
 * @param k - Peukert's exponent
 * @returns The law
 */
export function peukert(capacityAh: number, hourRateH: number, k: number): RateCapacity {
  return {
    law: 'peukert',
    chargeAh: capacityAh,
    scaleA: capacityAh / hourRateH,
    exponent: k - 1,
    basis: 'typical-shape',
  }
}

/**
 * Hours at a constant current.
 *
 * @param rate - The battery's law
 * @param currentA - The current [A]
 * @returns Time [h]
 */
export function hoursAt(rate: RateCapacity, currentA: number): number {
  return capacityAtCurrentAh(rate, currentA) / currentA
}

const percent = (fraction: number) => `${Number((fraction * 100).toPrecision(6))} %`

const openCircuitRows = (chemistry: BatteryChemistry, curve: Curve, cells: number): readonly Row[] =>
  curve.map(([socFraction, volts]) => [
    `${percent(socFraction)} charged`,
    volts,
    () => openCircuitV({ chemistry, nominalV: 12, socFraction }) / cells,
  ])

const ofLithium = (chemistry: 'lifepo4' | 'nmc', temperatureC: number) => {
  const { kind } = CHEMISTRIES[chemistry]
  if (kind.family !== 'lithium') throw new Error('not lithium')
  return lithiumShare(kind, temperatureC)
}

const leadAcidShare = (temperatureC: number, hours: number) =>
  shareAtHours(leadAcidShares(temperatureC), hours)

/** Resistance of a lithium bank over that at 25 C. */
const warmedOver25C = (chemistry: 'lifepo4' | 'nmc', temperatureC: number) => {
  const ohm = (celsius: number) =>
    bankModel({ nominalV: 12, chemistry, capacityAh: 100, temperatureC: celsius }).resistanceOhm
  return ohm(temperatureC) / ohm(25)
}

/** Fall of the map's mean voltage from 0.1C to 1C. [V] */
const fallOfMapV = (temperatureC: number) => {
  const meanV = (perHour: number) =>
    LFP_CELL_ROWS.find(([celsius, rate]) => celsius === temperatureC && rate === perHour)?.[3] ?? Number.NaN
  return meanV(0.1) - meanV(1)
}

/** Resistance of the NMC cell by temperature; at 25 C it lies half-way between its neighbours. [mohm] */
const NMC_MILLIOHM: readonly (readonly [temperatureC: number, milliohm: number])[] = [
  [0, 61],
  [10, 59],
  [20, 56],
]
const NMC_MILLIOHM_AT_25C = (56 + 54) / 2

const CHARGE_C: readonly (readonly [DocumentId, BatteryChemistry, coldest: number, warmest: number])[] = [
  ['flooded-sheet', 'flooded', -20, 45],
  ['agm-sheets', 'agm', 0, 40],
  ['lfp-sheet', 'lifepo4', 0, 45],
  ['nmc-cell-sheet', 'nmc', 0, 45],
]

const chargeTables: readonly PublishedTable[] = CHARGE_C.map(([document, chemistry, coldest, warmest]) => ({
  document,
  table: 'temperature while charging',
  quantity: 'coldest and warmest that it may be charged at',
  unit: '°C',
  how: 'held',
  tolerance: { absolute: 0 },
  because: 'the figure itself',
  rows: [
    ['coldest', coldest, () => CHEMISTRIES[chemistry].chargeTemperatureC[0]],
    ['warmest', warmest, () => CHEMISTRIES[chemistry].chargeTemperatureC[1]],
  ],
}))

const coldBankAh = (temperatureC: number) =>
  bankFor({ energyWhPerDay: 500, days: 1, chemistry: 'flooded', nominalV: 12, temperatureC }).byEnergyAh

const HELD = {
  how: 'held',
  tolerance: { absolute: 0 },
  because: 'the figure itself',
} as const satisfies Partial<PublishedTable>

const BODE = {
  document: 'bode-1977',
  quantity: 'resting voltage of a 12 V block at 25 °C',
  unit: 'V',
  ...HELD,
} as const satisfies Partial<PublishedTable>

const SUNIL = {
  document: 'sunil-2025',
  quantity: 'resting voltage of one cell at 25 °C, mean of charge and discharge at C/32',
  unit: 'V',
  ...HELD,
} as const satisfies Partial<PublishedTable>

export const BATTERY: Topic = {
  id: 'battery',
  title: 'Batteries: voltage, temperature and capacity',
  about: 'What a battery rests at, what cold leaves of it, and printed examples of capacity and size.',
  tables: [
    {
      document: 'terminal-voltage-2009',
      table: 'specific gravity 1.265 to 1.120, 12 V flooded battery',
      quantity: 'resting voltage',
      unit: 'V',
      how: 'computed',
      tolerance: { absolute: 0.031 },
      because: 'ours is Bode’s curve at a specific gravity linear in charge; the table’s is 2 points off it',
      rows: openCircuitRows(
        'flooded',
        [
          [1, 12.65],
          [0.75, 12.45],
          [0.5, 12.24],
          [0.25, 12.06],
          [0, 11.89],
        ],
        1,
      ),
    },
    {
      ...BODE,
      table: 'flooded, specific gravity 1.265 to 1.120',
      rows: openCircuitRows('flooded', FLOODED_BLOCK_V, 1),
    },
    { ...BODE, table: 'AGM, specific gravity 1.30 to 1.10', rows: openCircuitRows('agm', AGM_BLOCK_V, 1) },
    { ...BODE, table: 'gel, specific gravity 1.28 to 1.10', rows: openCircuitRows('gel', GEL_BLOCK_V, 1) },
    { ...SUNIL, table: '1.1 Ah LiFePO4 cell', rows: openCircuitRows('lifepo4', LFP_CELL_V, 4) },
    { ...SUNIL, table: '5 Ah NMC cell', rows: openCircuitRows('nmc', NMC_CELL_V, 3) },
    {
      document: 'king-knight-2003',
      table: 'page 199, lead-acid, by temperature and discharge time',
      quantity: 'share of the capacity',
      unit: '1',
      ...HELD,
      rows: LEAD_ACID_SHARES.flatMap(([temperatureC, ...shares]) =>
        shares.map((share, column) => {
          const hours = LEAD_ACID_HOURS[column] ?? Number.NaN
          return [`${temperatureC} °C, ${hours} h`, share, () => leadAcidShare(temperatureC, hours)] as const
        }),
      ),
    },
    {
      document: 'army-tm-10-6140',
      table: 'heavy discharge in the cold',
      quantity: 'share of the capacity over a quarter of an hour',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.04 },
      because: 'the manual states no discharge time',
      rows: [
        ['32 °F', 0.75, () => leadAcidShare(0, 0.25)],
        ['0 °F', 0.4, () => leadAcidShare(-17.8, 0.25)],
      ],
    },
    {
      document: 'agm-sheets',
      table: '12 V 100 Ah deep-cycle block',
      quantity: 'share of the capacity over 10 h',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.08 },
      because: 'one table of shares for every lead-acid battery',
      rows: (
        [
          [40, 1.03],
          [25, 1],
          [0, 0.86],
          [-15, 0.65],
        ] as const
      ).map(([temperatureC, share]) => [`${temperatureC} °C`, share, () => leadAcidShare(temperatureC, 10)]),
    },
    {
      document: 'lfp-sheet',
      table: 'capacity by temperature at 0.5C',
      quantity: 'share of the capacity',
      unit: '1',
      how: 'held',
      tolerance: { absolute: 0.02 },
      because: 'read off a chart; at 0 °C ours is held below it, towards the 80 % that a cell guarantees',
      rows: (
        [
          [10, 0.97],
          [0, 0.915],
          [-10, 0.77],
        ] as const
      ).map(([temperatureC, share]) => [
        `${temperatureC} °C`,
        share,
        () => ofLithium('lifepo4', temperatureC),
      ]),
    },
    {
      document: 'jeon-baek-nmc',
      table: 'capacity by temperature at 0.6C',
      quantity: 'share of the 25 °C capacity; below 0 °C from memory',
      unit: '1',
      ...HELD,
      rows: NMC_SHARES.map(([temperatureC, share]) => [
        `${temperatureC} °C`,
        share,
        () => ofLithium('nmc', temperatureC),
      ]),
    },
    {
      document: 'lin-lfp-simulation',
      table: 'fall of the mean voltage from 0.1C to 1C, over that at 25 °C',
      quantity: 'resistance over that at 25 °C',
      unit: '1',
      how: 'held',
      standing: 'derived',
      tolerance: { absolute: 0.006 },
      because: 'held with two decimals',
      rows: [-20, -10, 0, 10, 20].map((temperatureC) => [
        `${temperatureC} °C`,
        Number((fallOfMapV(temperatureC) / fallOfMapV(25)).toPrecision(4)),
        () => warmedOver25C('lifepo4', temperatureC),
      ]),
    },
    {
      document: 'jeon-baek-nmc',
      table: 'slope of voltage against current, 2 to 8 A, over that at 25 °C',
      quantity: 'resistance over that at 25 °C',
      unit: '1',
      how: 'held',
      standing: 'derived',
      tolerance: { absolute: 0.0006 },
      because: 'held with three decimals',
      rows: NMC_MILLIOHM.map(([temperatureC, milliohm]) => [
        `${temperatureC} °C, ${milliohm} mΩ`,
        Number((milliohm / NMC_MILLIOHM_AT_25C).toPrecision(4)),
        () => warmedOver25C('nmc', temperatureC),
      ]),
    },
    {
      document: 'navy-od-010',
      table: 'page 27, 1.75 V per cell over 20 h',
      quantity: 'voltage that the capacity of a 12 V lead-acid battery is rated to',
      unit: 'V',
      ...HELD,
      rows: (['flooded', 'agm', 'gel'] as const).map((chemistry) => [
        chemistry,
        10.5,
        () => bankModel({ nominalV: 12, chemistry, capacityAh: 100 }).ratedEndV,
      ]),
    },
    {
      document: 'lfp-sheet',
      table: 'end of discharge',
      quantity: 'voltage at which the protection board of a 12 V block opens',
      unit: 'V',
      ...HELD,
      rows: [
        ['LiFePO4', 10, () => bankModel({ nominalV: 12, chemistry: 'lifepo4', capacityAh: 45 }).lowestV],
      ],
    },
    {
      document: 'nmc-cell-sheet',
      table: 'end of discharge, slower than a fifth of the capacity per hour',
      quantity: 'lowest voltage of three cells',
      unit: 'V',
      ...HELD,
      standing: 'memory',
      rows: [['NMC', 9, () => bankModel({ nominalV: 12, chemistry: 'nmc', capacityAh: 32 }).lowestV]],
    },
    ...chargeTables,
    {
      document: 'agm-sheets',
      table: '12 V 100 Ah deep-cycle block, largest initial current',
      quantity: 'largest charging current',
      unit: 'A',
      ...HELD,
      rows: [['AGM', 30, () => 100 * CHEMISTRIES.agm.chargeLimitPerH]],
    },
    {
      document: 'openstax-college-physics',
      table: 'chapter 21, terminal voltage (module m42357)',
      quantity: 'current at the printed power',
      unit: 'A',
      how: 'computed',
      tolerance: { relative: 0.002 },
      because: 'rounding of the print',
      rows: [
        ['12 V, 0.1 Ω inside, 10 Ω', 1.188, () => constantPowerCurrentA(12, 0.1, 1.188 * 11.88)],
        ['12 V, 0.1 Ω inside, 0.5 Ω', 20, () => constantPowerCurrentA(12, 0.1, 200)],
        ['starter, 0.01 Ω inside, 0.05 Ω', 200, () => constantPowerCurrentA(12, 0.01, 2000)],
      ],
    },
    {
      document: 'peukert-article',
      table: 'worked example: 100 Ah at 1 A, k 1.2',
      quantity: 'time',
      unit: 'h',
      how: 'computed',
      tolerance: { relative: 0.005 },
      because: 'rounding of the print',
      rows: [['5 A', 14.5, () => hoursAt(peukert(100, 100, 1.2), 5)]],
    },
    {
      document: 'peukert-encyclopaedia',
      table: 'example: 100 Ah over 20 h, k 1.2',
      quantity: 'time',
      unit: 'h',
      how: 'computed',
      tolerance: { relative: 0.005 },
      because: 'rounding of the print',
      rows: [['10 A', 8.7, () => hoursAt(peukert(100, 20, 1.2), 10)]],
    },
    {
      document: 'kuphaldt',
      table: 'battery ratings, 70 Ah without loss',
      quantity: 'time',
      unit: 'h',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        ['3.5 A', 20, () => hoursAt(peukert(70, 20, 1), 3.5)],
        ['70 A', 1, () => hoursAt(peukert(70, 20, 1), 70)],
      ],
    },
    {
      document: 'navy-od-16338',
      table: 'capacity, 400 Ah without loss',
      quantity: 'time',
      unit: 'h',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [['100 A', 4, () => hoursAt(peukert(400, 20, 1), 100)]],
    },
    {
      document: 'open-hardware-power',
      table: 'battery example, 300 Wh a day for two days',
      quantity: 'capacity at 12 V and 80 % depth',
      unit: 'Ah',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [
        [
          'LiFePO4',
          62.5,
          () =>
            bankFor({ energyWhPerDay: 300, days: 2, chemistry: 'lifepo4', nominalV: 12, minSocFraction: 0.2 })
              .capacityAh,
        ],
      ],
    },
    {
      document: 'solar-article',
      table: 'worked number, 1000 Wh a day for two and a half days',
      quantity: 'capacity at 12 V and half depth',
      unit: 'Ah',
      how: 'computed',
      tolerance: { absolute: 0.01 },
      because: 'the print cuts off 416.666',
      rows: [
        [
          'flooded',
          416.66,
          () =>
            bankFor({
              energyWhPerDay: 1000,
              days: 2.5,
              chemistry: 'flooded',
              nominalV: 12,
              minSocFraction: 0.5,
            }).capacityAh,
        ],
      ],
    },
    {
      document: 'ieee-485',
      table: 'Table 1, cell size correction',
      quantity: 'capacity over that at 25 °C',
      unit: '1',
      how: 'computed',
      tolerance: { relative: 0.14 },
      because: 'the standard gives one row for every discharge time; ours follows the time',
      rows: (
        [
          [77, 1],
          [70, 1.04],
          [60, 1.11],
          [50, 1.19],
          [40, 1.3],
        ] as const
      ).map(([fahrenheit, multiplier]) => [
        `${fahrenheit} °F`,
        multiplier,
        () => coldBankAh((fahrenheit - 32) / 1.8) / coldBankAh(25),
      ]),
    },
    {
      document: 'vrla-guidance',
      table: 'recharge takes about 110 % of what was drawn',
      quantity: 'charge for 50 Ah drawn',
      unit: 'Ah',
      how: 'held',
      standing: 'derived',
      tolerance: { absolute: 0 },
      because: 'arithmetic on the printed share',
      rows: [
        [
          'AGM, 12 V',
          55,
          () =>
            rechargeFor({ bank: { chemistry: 'agm', nominalV: 12, capacityAh: 100 }, energyWh: 600 })
              .chargeAh,
        ],
      ],
    },
  ],
  traps: [],
}
