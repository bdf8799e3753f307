import { fullLoadA, lockedRotorA, lockedRotorVAFor, motorInputFor } from '../../../core/loads/motors.ts'
import type { MOTOR_CODE_LETTERS } from '../../../core/tables/motors.ts'
import { horsepowerToWatts } from '../../../core/units.ts'
import type { Topic } from './published.ts'

export const FULL_LOAD_ROWS = [
  ['1/6 hp', 1 / 6, 4.4, 2.5, 2.4, 2.2],
  ['1/4 hp', 1 / 4, 5.8, 3.3, 3.2, 2.9],
  ['1/3 hp', 1 / 3, 7.2, 4.1, 4.0, 3.6],
  ['1/2 hp', 1 / 2, 9.8, 5.6, 5.4, 4.9],
  ['3/4 hp', 3 / 4, 13.8, 7.9, 7.6, 6.9],
  ['1 hp', 1, 16, 9.2, 8.8, 8],
  ['1-1/2 hp', 1.5, 20, 11.5, 11, 10],
  ['2 hp', 2, 24, 13.8, 13.2, 12],
  ['3 hp', 3, 34, 19.6, 18.7, 17],
  ['5 hp', 5, 56, 32.2, 30.8, 28],
  ['7-1/2 hp', 7.5, 80, 46, 44, 40],
  ['10 hp', 10, 100, 57.5, 55, 50],
] as const

export const LOCKED_ROTOR_ROWS = [
  ['1/2 hp', 1 / 2, 58.8, 32.5, 29.4],
  ['3/4 hp', 3 / 4, 82.8, 45.8, 41.4],
  ['1 hp', 1, 96, 53, 48],
  ['1-1/2 hp', 1.5, 120, 66, 60],
  ['2 hp', 2, 144, 80, 72],
  ['3 hp', 3, 204, 113, 102],
  ['5 hp', 5, 336, 186, 168],
  ['7-1/2 hp', 7.5, 480, 265, 240],
  ['10 hp', 10, 600, 332, 300],
] as const

/** kVA for each horsepower. */
const CODE_LETTER_ROWS = [
  ['B', 3.15, 3.54],
  ['C', 3.55, 3.99],
  ['D', 4.0, 4.49],
  ['E', 4.5, 4.99],
  ['F', 5.0, 5.59],
  ['G', 5.6, 6.29],
  ['H', 6.3, 7.09],
  ['J', 7.1, 7.99],
  ['K', 8.0, 8.99],
  ['L', 9.0, 9.99],
  ['M', 10.0, 11.19],
  ['N', 11.2, 12.49],
  ['P', 12.5, 13.99],
  ['R', 14.0, 15.99],
  ['S', 16.0, 17.99],
  ['T', 18.0, 19.99],
  ['U', 20.0, 22.39],
] as const satisfies readonly (readonly [(typeof MOTOR_CODE_LETTERS)[number], number, number])[]

/** Full-load efficiency of plain single-phase induction motors, on the cautious side. */
const EFFICIENCY_ROWS = [
  ['1/100 hp', 1 / 100, 0.2],
  ['1/20 hp', 1 / 20, 0.35],
  ['1/6 hp', 1 / 6, 0.5],
  ['1/4 hp', 1 / 4, 0.53],
  ['1/3 hp', 1 / 3, 0.56],
  ['1/2 hp', 1 / 2, 0.6],
  ['3/4 hp', 3 / 4, 0.64],
  ['1 hp', 1, 0.67],
  ['1-1/2 hp', 1.5, 0.71],
  ['2 hp', 2, 0.74],
] as const

const HELD = { how: 'held', tolerance: { absolute: 0 }, because: 'the figure itself' } as const

const lowKVA = (letter: (typeof MOTOR_CODE_LETTERS)[number]) => lockedRotorVAFor(letter, 1).lowVA / 1000
const highKVA = (letter: (typeof MOTOR_CODE_LETTERS)[number]) =>
  (lockedRotorVAFor(letter, 1).highVA ?? Number.NaN) / 1000

export const MOTORS: Topic = {
  id: 'motors',
  title: 'Motors',
  about: 'Running and starting current of single-phase motors, and what a shaft power takes from the mains.',
  tables: [
    {
      document: 'nec-430-248',
      table: 'single-phase motors',
      quantity: 'full-load current by power and voltage',
      unit: 'A',
      ...HELD,
      rows: FULL_LOAD_ROWS.flatMap(([size, horsepower, ...amperes]) =>
        [115, 200, 208, 230].map(
          (mainsV, column) =>
            [
              `${size}, ${mainsV} V`,
              amperes[column] ?? Number.NaN,
              () => fullLoadA({ horsepower, mainsV }),
            ] as const,
        ),
      ),
    },
    {
      document: 'nec-430-251a',
      table: 'single-phase motors',
      quantity: 'locked-rotor current by power and voltage',
      unit: 'A',
      ...HELD,
      rows: LOCKED_ROTOR_ROWS.flatMap(([size, horsepower, ...amperes]) =>
        [115, 208, 230].map(
          (mainsV, column) =>
            [
              `${size}, ${mainsV} V`,
              amperes[column] ?? Number.NaN,
              () => lockedRotorA({ horsepower, mainsV }),
            ] as const,
        ),
      ),
    },
    {
      document: 'nec-430-7b',
      table: 'locked-rotor code letters',
      quantity: 'lowest and highest for each horsepower',
      unit: 'kVA/hp',
      ...HELD,
      rows: [
        ['A, highest', 3.14, () => highKVA('A')],
        ...CODE_LETTER_ROWS.flatMap(([letter, low, high]) => [
          [`${letter}, lowest`, low, () => lowKVA(letter)] as const,
          [`${letter}, highest`, high, () => highKVA(letter)] as const,
        ]),
        ['V, lowest', 22.4, () => lowKVA('V')],
      ],
    },
    {
      document: 'nec-430-248',
      table: 'single-phase motors at 115 V, with their volts',
      quantity: 'apparent power at full load, from the shaft power',
      unit: 'VA',
      how: 'computed',
      tolerance: { absolute: 0 },
      because: 'printed amperes times volts',
      rows: FULL_LOAD_ROWS.map(([size, horsepower, at115V]) => [
        size,
        115 * at115V,
        () => motorInputFor({ shaftW: horsepowerToWatts(horsepower), mainsV: 115 }).apparentVA,
      ]),
    },
    {
      document: 'motor-textbook',
      table: 'small single-phase induction motors',
      quantity: 'efficiency at full load, on the cautious side',
      unit: '1',
      ...HELD,
      rows: EFFICIENCY_ROWS.map(([size, horsepower, efficiency]) => [
        size,
        efficiency,
        () => motorInputFor({ shaftW: horsepowerToWatts(horsepower), mainsV: 115 }).efficiencyFraction,
      ]),
    },
    {
      document: 'motor-textbook',
      table: '1/2 hp at an efficiency of 0.60',
      quantity: 'power from the mains',
      unit: 'W',
      how: 'computed',
      tolerance: { absolute: 1 },
      because: '746 W for each horsepower, rounded',
      rows: [['1/2 hp', 622, () => motorInputFor({ shaftW: horsepowerToWatts(0.5), mainsV: 115 }).inputW]],
    },
  ],
  traps: [
    {
      document: 'nec-430-7b',
      table: 'letter H, in one copy',
      what: 'lowest for each horsepower',
      unit: 'kVA/hp',
      printed: 7.1,
      why: 'the band of letter J, which begins where H ends; other copies have 6.3',
      compute: () => lowKVA('H'),
    },
  ],
}
