import { type RatedAppliance, rateLoad } from '../../../core/loads/rate-load.ts'
import type { Rating } from '../../../core/loads/rating.ts'
import { readLabel } from '../../../core/loads/read-label.ts'
import {
  btuPerHourToWatts,
  fahrenheitToCelsius,
  feetToMetres,
  horsepowerToWatts,
  MM2_PER_CIRCULAR_MIL,
} from '../../../core/units.ts'
import type { DocumentId } from './documents.ts'
import type { PublishedTable, Topic } from './published.ts'

const MICROWAVE: RatedAppliance = {
  powerFactor: 0.92,
  startKind: 'electronic-inrush',
  ratedByCookingPower: true,
}

/**
 * What core makes of a microwave oven's rating.
 *
 * @param rating - The rating
 * @param mainsV - Mains voltage [V]
 * @returns Input to size for and to expect [W]; an error where the rating is refused
 */
export function inputOf(
  rating: Rating,
  mainsV: number,
): { readonly inputW: number; readonly typicalW: number } {
  const power = rateLoad({ rating, appliance: MICROWAVE, mainsV })
  if (!power.ok) throw new Error(`refused: ${power.refusal}`)
  return power
}

/**
 * What core reads on a rating plate.
 *
 * @param text - The plate
 * @param mainsV - Mains voltage [V]
 * @returns Input [W]; an error where the plate is not understood
 */
export function plateW(text: string, mainsV: number): number {
  const reading = readLabel(text, { mainsV })
  if (!reading.ok) throw new Error(`refused: ${reading.refusal}`)
  return reading.inputW
}

/** One microwave oven known by both of its powers. [W] */
export interface CookingPair {
  readonly cookingW: number
  readonly inputW: number
  readonly document: DocumentId | 'common-practice'
  readonly table: string
}

/** Cooking power and mains input of microwave ovens, as published or known. */
export const COOKING_PAIRS: readonly CookingPair[] = [
  {
    cookingW: 900,
    inputW: 1400,
    document: 'mackay',
    table: 'chapter 7, oven of 900 W',
  },
  {
    cookingW: 700,
    inputW: 1100,
    document: 'microwave-encyclopaedia',
    table: '700 W from 1100 W, printed as 64 %',
  },
  {
    cookingW: 900,
    inputW: 1287,
    document: 'microwave-plug-meter',
    table: 'mean reading of a 900 W oven',
  },
  {
    cookingW: 900,
    inputW: 1314,
    document: 'microwave-plug-meter',
    table: 'highest reading of the same oven',
  },
  {
    cookingW: 950,
    inputW: 1319.4,
    document: 'giancoli',
    table: 'chapter 25, 950 W at an efficiency of 72 %',
  },
  {
    cookingW: 600,
    inputW: 1200,
    document: 'common-practice',
    table: 'no published source',
  },
]

/** Of these a document can be named. */
export const PUBLISHED_COOKING_PAIRS = COOKING_PAIRS.flatMap(({ document, ...pair }) =>
  document === 'common-practice' ? [] : [{ ...pair, document }],
)

/** Volts and amperes with the watts that the document prints for them. */
const VOLTS_AMPS: readonly {
  readonly document: DocumentId
  readonly table: string
  readonly volts: number
  readonly amps: number
  readonly watts: number
  readonly relative?: number
}[] = [
  { document: 'lsu-generators', table: 'plate of 10 A', volts: 120, amps: 10, watts: 1200 },
  { document: 'tacoma-power', table: 'plate of 2.2 A', volts: 120, amps: 2.2, watts: 264 },
  {
    document: 'nec-annex-d',
    table: 'example D1(a), general lighting, in volt-amperes',
    volts: 120,
    amps: 37.5,
    watts: 4500,
  },
  {
    document: 'nec-annex-d',
    table: 'example D1(a), net load, 77.5 A printed as 78 A',
    volts: 240,
    amps: 78,
    watts: 18_600,
    relative: 0.007,
  },
  {
    document: 'electrical-safety-first',
    table: '3000 W printed as 13 A',
    volts: 230,
    amps: 13,
    watts: 3000,
    relative: 0.004,
  },
  { document: 'e-bike-study', table: '80 % of a 20 A circuit', volts: 120, amps: 16, watts: 1920 },
]

/**
 * Room air conditioners, louvred, without reverse cycle: least efficiency by law, and the watts that it makes of the
 * capacity, to the watt.
 */
export const ROOM_UNITS = [
  { btuPerHour: 5000, eer1990: 8, w1990: 625, ceer2014: 11, w2014: 455 },
  { btuPerHour: 6000, eer1990: 8.5, w1990: 706, ceer2014: 11, w2014: 545 },
  { btuPerHour: 8000, eer1990: 9, w1990: 889, ceer2014: 10.9, w2014: 734 },
  { btuPerHour: 10_000, eer1990: 9, w1990: 1111, ceer2014: 10.9, w2014: 917 },
  { btuPerHour: 12_000, eer1990: 9, w1990: 1333, ceer2014: 10.9, w2014: 1101 },
  { btuPerHour: 14_000, eer1990: 8.8, w1990: 1591, ceer2014: 10.7, w2014: 1308 },
  { btuPerHour: 18_000, eer1990: 8.8, w1990: 2045, ceer2014: 10.7, w2014: 1682 },
  { btuPerHour: 24_000, eer1990: 8.2, w1990: 2927, ceer2014: 9.4, w2014: 2553 },
] as const

const coolingW = (btuPerHour: number, eer: number) =>
  inputOf({ basis: 'cooling-capacity', btuPerHour, eer }, 120).inputW

const voltsAmpsTables: readonly PublishedTable[] = VOLTS_AMPS.map(
  ({ document, table, volts, amps, watts, relative = 0 }) => ({
    document,
    table,
    quantity: 'power of the volts and amperes, given apart and as a plate',
    unit: 'W',
    how: 'computed',
    tolerance: { relative },
    because: relative === 0 ? 'printed whole' : 'the amperes are rounded',
    rows: [
      [`${volts} V, ${amps} A`, watts, () => inputOf({ basis: 'volts-amps', volts, amps }, volts).inputW],
      [`plate "${volts} V ${amps} A"`, watts, () => plateW(`${volts} V ${amps} A`, volts)],
    ],
  }),
)

const cookingTables: readonly PublishedTable[] = PUBLISHED_COOKING_PAIRS.map(
  ({ document, table, cookingW, inputW }) => ({
    document,
    table,
    quantity: 'input that energy is reckoned with',
    unit: 'W',
    how: 'computed',
    ...(document === 'giancoli' && { standing: 'derived' as const }),
    tolerance: { relative: 0.13 },
    because: 'ovens differ: one typical efficiency of 64 % stands for all. For size, 50 % is taken',
    rows: [
      [
        `${cookingW} W of cooking power`,
        inputW,
        () => inputOf({ basis: 'cooking-watts', watts: cookingW }, 230).typicalW,
      ],
    ],
  }),
)

export const RATINGS: Topic = {
  id: 'ratings',
  title: 'Rating plates and units',
  about: 'What a plate or a figure of a data sheet makes in watts from the mains.',
  tables: [
    ...voltsAmpsTables,
    ...cookingTables,
    roomUnits('usc-42-6295', '(c)(1), louvred room units from 1990', ({ eer1990, w1990 }) => [
      eer1990,
      w1990,
    ]),
    roomUnits('10-cfr-430-32', '(b) table 3, louvred room units until 26 May 2026', ({ ceer2014, w2014 }) => [
      ceer2014,
      w2014,
    ]),
    {
      document: 'e-bike-study',
      table: 'ten chargers of 185 W',
      quantity: 'power of the plate "10 x 185 W"',
      unit: 'W',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed whole',
      rows: [['ten of 185 W', 1850, () => plateW('10 x 185 W', 120)]],
    },
    {
      document: 'nist-sp-811',
      table: 'Appendix B.8',
      quantity: 'power',
      unit: 'W',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: [
        ['1 Btu/h (International Table)', 0.2930711, () => btuPerHourToWatts(1)],
        ['1 hp (550 ft lbf/s)', 745.6999, () => horsepowerToWatts(1)],
        ['1 hp (metric), as a plate "1 CV" against one in watts', 735.4988, metricHorsepowerW],
      ],
    },
    {
      document: 'nist-sp-811',
      table: 'Appendix B.8',
      quantity: 'length, area and temperature',
      unit: 'm, mm², °C',
      how: 'held',
      tolerance: { relative: 1e-6 },
      because: 'rounding of the print',
      rows: [
        ['1 ft', 0.3048, () => feetToMetres(1)],
        ['1 circular mil', 5.067075e-4, () => MM2_PER_CIRCULAR_MIL],
        ['77 °F', 25, () => fahrenheitToCelsius(77)],
      ],
    },
  ],
  traps: [],
}

/** Shaft watts at which a plate in watts takes as much as one of a metric horsepower, found by halving. */
/** The watts that one law's least efficiency makes of each capacity. */
function roomUnits(
  document: DocumentId,
  table: string,
  limitOf: (unit: (typeof ROOM_UNITS)[number]) => readonly [leastEer: number, inputW: number],
): PublishedTable {
  return {
    document,
    table,
    quantity: 'input at the least efficiency allowed',
    unit: 'W',
    how: 'computed',
    standing: 'derived',
    tolerance: { absolute: 0.5 },
    because: 'capacity over the printed limit, to the watt',
    rows: ROOM_UNITS.map((unit) => {
      const { btuPerHour } = unit
      const [leastEer, inputW] = limitOf(unit)
      return [`${btuPerHour} Btu/h at ${leastEer}`, inputW, () => coolingW(btuPerHour, leastEer)]
    }),
  }
}

function metricHorsepowerW(): number {
  const wanted = plateW('1 CV', 230)
  let low = 700
  let high = 800
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2
    if (plateW(`P2 ${middle.toFixed(9)} W`, 230) < wanted) low = middle
    else high = middle
  }
  return high
}
