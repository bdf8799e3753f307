import type { Appliance, Band as ApplianceBand } from '../../../core/loads/appliance.ts'
import type { MainsFamily } from '../../../core/loads/vocabulary.ts'
import { BUILT_IN_APPLIANCES } from '../../../core/tables/appliances/index.ts'
import type { DocumentId } from './documents.ts'
import type { Band, PublishedTable, Topic } from './published.ts'

/**
 * An appliance of the built-in list.
 *
 * @param id - Its id
 * @returns The appliance; an error where there is none
 */
export function applianceOf(id: string): Appliance {
  const found = BUILT_IN_APPLIANCES.find((appliance) => appliance.id === id)
  if (found === undefined) throw new Error(`no appliance ${id}`)
  return found
}

type Watts = readonly [id: string, family: MainsFamily, watts: number, what: string]

/** Running watts, measured or published; none comes from our own code. */
const RUNNING: Partial<Record<DocumentId, readonly Watts[]>> = {
  tracebase: [
    ['fridge', 'at230V', 73, 'refrigerators 3 and 7'],
    ['fridge', 'at230V', 62, 'refrigerator 8'],
    ['fridge', 'at230V', 64, 'refrigerator 9'],
    ['fridge', 'at230V', 77, 'refrigerator 10'],
    ['fridge', 'at230V', 79, 'refrigerator 11'],
    ['fridge', 'at230V', 46, 'refrigerator 13'],
    ['fridge-freezer', 'at230V', 132, 'refrigerators 1, 2 and 4'],
    ['fridge-freezer', 'at230V', 115, 'refrigerator 5'],
    ['fridge-freezer', 'at230V', 113, 'refrigerators 6 and 12'],
    ['chest-freezer', 'at230V', 158, 'freezer 1'],
    ['microwave-oven', 'at230V', 1369, 'median of nine microwave ovens'],
    ['microwave-oven', 'at230V', 983, 'lowest of eight ovens at full power'],
    ['microwave-oven', 'at230V', 1463, 'highest oven'],
    ['electric-kettle', 'at230V', 1691, 'lowest of eleven kettles'],
    ['electric-kettle', 'at230V', 2098, 'median of eleven kettles'],
    ['electric-kettle', 'at230V', 2614, 'highest of eleven kettles'],
    ['toaster', 'at230V', 713, 'median of four toasters'],
    ['hair-dryer', 'at230V', 1870, 'one hair dryer on its high setting'],
    ['vacuum-cleaner', 'at230V', 1229, 'median of two vacuum cleaners'],
    ['laptop', 'at230V', 23.5, 'median of ten laptops'],
    ['laptop', 'at230V', 92, 'largest second of ten laptops'],
    ['desktop-computer', 'at230V', 90, 'median of twelve computers'],
    ['router', 'at230V', 6, 'median of seven routers'],
    ['washing-machine', 'at230V', 2762, 'highest of ten washing machines'],
    ['iron', 'at230V', 1501, 'one iron'],
  ],
  'crest-demand-model': [
    ['fridge', 'at230V', 110, 'refrigerator'],
    ['fridge-freezer', 'at230V', 190, 'fridge-freezer'],
    ['microwave-oven', 'at230V', 1250, 'microwave oven'],
    ['electric-kettle', 'at230V', 2000, 'kettle'],
    ['washing-machine', 'at230V', 405.5, 'washing machine, mean over a programme'],
  ],
  mackay: [['microwave-oven', 'at230V', 1400, 'chapter 7, oven of 900 W cooking power']],
  'microwave-plug-meter': [['microwave-oven', 'at120V', 1287, 'mean of a 900 W oven']],
  'eu-666-2013': [['vacuum-cleaner', 'at230V', 899, 'below 900 W from September 2017']],
  'australian-register': [
    ['television', 'at230V', 58, 'median of fifty 43-inch models'],
    ['very-large-television', 'at230V', 167, 'median of thirty-eight 75-inch models'],
  ],
  'path-oxygen': [
    ['oxygen-concentrator', 'at230V', 350, 'less than 70 W for each litre a minute, 5 L/min'],
    ['large-oxygen-concentrator', 'at230V', 700, 'the same, 10 L/min'],
  ],
  'e-bike-study': [['e-bike-charger', 'at120V', 185, 'charger of 36 V, 4 A, measured']],
  '10-cfr-430-32': [
    ['window-air-conditioner', 'at120V', 734, '(b): 8000 Btu/h at 10.9 Btu/Wh'],
    ['window-air-conditioner', 'at120V', 500, '(b): 8000 Btu/h at 16.0 Btu/Wh'],
    ['window-air-conditioner-large', 'at120V', 1101, '(b): 12 000 Btu/h at 10.9 Btu/Wh'],
  ],
  'usc-42-6295': [['window-air-conditioner-small', 'at120V', 625, '5000 Btu/h at 8.0 Btu/Wh']],
  'cooperative-usage': [
    ['chest-freezer', 'at120V', 160, 'freezer, older'],
    ['dehumidifier', 'at120V', 480, 'dehumidifier'],
    ['electric-blanket', 'at120V', 150, 'electric blanket'],
    ['fan-heater', 'at120V', 1500, 'portable heater'],
  ],
  'cpap-batteries': [
    ['cpap', 'at120V', 30, 'breathing machine, 2.5 A at 12 V'],
    ['cpap', 'at120V', 54, 'breathing machine, 4.5 A at 12 V'],
  ],
  'laboratory-recordings': [['immersion-heater', 'at230V', 3455, 'water heater, 240 V']],
}

/** 95th percentile of one-second starts, at 230 V. */
const STARTING: readonly (readonly [id: string, watts: number, unit: string])[] = [
  ['fridge', 597, 'refrigerator 13'],
  ['fridge', 621, 'refrigerator 8'],
  ['fridge', 635, 'refrigerator 9'],
  ['fridge', 669, 'refrigerator 11'],
  ['fridge', 1077, 'refrigerator 3'],
  ['fridge', 1084, 'refrigerator 7'],
  ['fridge', 1352, 'refrigerator 10, second by second: 0, 1352, 92, 85, 85 W'],
  ['fridge', 1363, 'refrigerator 10'],
  ['fridge-freezer', 324, 'refrigerator 1'],
  ['fridge-freezer', 803, 'refrigerator 6'],
  ['fridge-freezer', 816, 'refrigerator 5'],
  ['fridge-freezer', 1122, 'refrigerator 4'],
  ['chest-freezer', 1318, 'freezer 1'],
  ['chest-freezer', 1052, 'freezer 1, median of its starts'],
]

/** Measured energy of single units. [kWh a day] */
const ENERGY: readonly (readonly [id: string, kWh: number])[] = [
  ['fridge', 0.23],
  ['fridge', 0.47],
  ['fridge', 0.85],
  ['fridge', 1.06],
  ['fridge-freezer', 0.84],
  ['fridge-freezer', 1.09],
  ['fridge-freezer', 1.88],
  ['chest-freezer', 0.56],
]

const plain = ({ low, high }: ApplianceBand): Band => ({ low, high })

/**
 * Energy of a listed appliance.
 *
 * @param id - Its id
 * @param family - Mains that it is made for
 * @param of - Which of its figures: low, typical or high
 * @returns Energy of a day [kWh]
 */
export function energyKWhPerDay(id: string, family: MainsFamily, of: keyof Omit<ApplianceBand, 'sourceIds'>) {
  const { inputW, use } = applianceOf(id)
  return (inputW[family][of] * use.dutyFraction[of] * use.minutesPerDay[of]) / 60 / 1000
}

const IN_BAND = {
  how: 'held',
  tolerance: { absolute: 0 },
  because: 'must lie between the low and the high figure of the list',
} as const

const starting = (id: string): Band => {
  const band = applianceOf(id).start.startingW?.at230V
  return band === undefined ? { low: Number.NaN, high: Number.NaN } : plain(band)
}

export const APPLIANCES: Topic = {
  id: 'appliances',
  title: 'The appliance list',
  about:
    'Low and high figures of the built-in list, taken where a shopper knows no plate, against what was measured or published for single units.',
  tables: [
    ...Object.entries(RUNNING).map(
      ([document, rows]): PublishedTable => ({
        document: document as DocumentId,
        table: 'running watts',
        quantity: 'power from the mains',
        unit: 'W',
        ...IN_BAND,
        rows: rows.map(([id, family, watts, what]) => [
          `${what} (${id})`,
          watts,
          () => plain(applianceOf(id).inputW[family]),
        ]),
      }),
    ),
    {
      document: 'tracebase',
      table: 'starts, 95th percentile of one-second means',
      quantity: 'power at the start',
      unit: 'W',
      ...IN_BAND,
      rows: STARTING.map(([id, watts, unit]) => [`${unit} (${id})`, watts, () => starting(id)]),
    },
    {
      document: 'tracebase',
      table: 'energy of single units',
      quantity: 'energy of a day',
      unit: 'kWh',
      ...IN_BAND,
      rows: ENERGY.map(([id, kWh], number) => [
        `${id}, unit ${number + 1}`,
        kWh,
        () => ({
          low: energyKWhPerDay(id, 'at230V', 'low'),
          high: energyKWhPerDay(id, 'at230V', 'high'),
        }),
      ]),
    },
    {
      document: 'laboratory-recordings',
      table: 'starts of a canister vacuum cleaner',
      quantity: 'first second over running power',
      unit: '1',
      ...IN_BAND,
      rows: [1.25, 1.41, 1.45, 1.56].map((multiple, run) => [
        `run ${run + 1}`,
        multiple,
        () => plain(applianceOf('vacuum-cleaner').start.multiple),
      ]),
    },
    {
      document: 'crest-demand-model',
      table: 'washing machine, a programme of 138 minutes',
      quantity: 'energy',
      unit: 'kWh',
      how: 'held',
      tolerance: { absolute: 0.005 },
      because: 'rounding of the print',
      rows: [['washing machine', 0.93, () => energyKWhPerDay('washing-machine', 'at230V', 'typical')]],
    },
    {
      document: 'tracebase',
      table: 'bean-to-cup coffee machine, 24 days',
      quantity: 'mean power while it is left on',
      unit: 'W',
      how: 'held',
      tolerance: { relative: 0.03 },
      because: 'power and duty are rounded in the list',
      rows: [
        [
          'bean-to-cup coffee machine',
          80.5,
          () => {
            const { inputW, use } = applianceOf('bean-to-cup-coffee-machine')
            return inputW.at230V.typical * use.dutyFraction.typical
          },
        ],
      ],
    },
    {
      document: '10-cfr-430-32',
      table: '(a) class 3, fridge-freezer of 20 cubic feet, 395 kWh a year',
      quantity: 'mean power over the year',
      unit: 'W',
      how: 'held',
      standing: 'derived',
      tolerance: { relative: 0.2 },
      because: 'a limit for one size; the list stands for all',
      rows: [
        ['fridge-freezer', 45.1, () => (energyKWhPerDay('fridge-freezer', 'at120V', 'typical') * 1000) / 24],
      ],
    },
  ],
  traps: [
    {
      document: 'cooperative-generators',
      table: 'table of running watts',
      what: 'microwave oven, running',
      unit: 'W',
      printed: 100,
      why: 'eight measured ovens took 983 to 1463 W',
      compute: () => plain(applianceOf('microwave-oven').inputW.at120V),
    },
    {
      document: 'cooperative-generators',
      table: 'table of running watts',
      what: 'well pump of 1/2 hp, running',
      unit: 'W',
      printed: 150,
      why: 'less than half of what the shaft alone gives: 373 W',
      compute: () => plain(applianceOf('well-pump').inputW.at120V),
    },
    {
      document: 'cooperative-generators',
      table: 'printed example',
      what: 'refrigerator, running',
      unit: 'W',
      printed: 1200,
      why: 'thirteen measured refrigerators ran at 46 to 132 W: their starts are what is hard',
      compute: () => plain(applianceOf('fridge-freezer').inputW.at120V),
    },
  ],
}
