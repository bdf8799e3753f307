import type { FuseStyle } from '../../../core/range/vocabulary.ts'
import { breakingCapacityOfCrankingA } from '../../../core/wiring/breaking-capacity.ts'
import { nextFuse, standardFuseRatingsA } from '../../../core/wiring/fuse.ts'
import { fuseSuits } from '../../../core/wiring/fuse-suits.ts'
import type { Row, Topic } from './published.ts'

/** Ratings that a class T fuse is made for, as the code lists them. [A] */
export const NEC_240_6_A = [
  1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300,
  350, 400, 450, 500, 600, 700, 800, 1000, 1200,
]

/** Total cold cranking amperes, and what the main device and one behind it must break. [A] */
const CRANKING: readonly (readonly [crankingA: number, mainA: number, branchA: number])[] = [
  [1, 1500, 750],
  [650, 1500, 750],
  [651, 3000, 1500],
  [1100, 3000, 1500],
  [1101, 5000, 2500],
  [4000, 5000, 2500],
]

const STYLES: readonly (readonly [style: FuseStyle, name: string, voltageV: number, breakingA: number])[] = [
  ['blade', 'blade (8820-3)', 32, 1000],
  ['bolted-strip', 'bolted strip (8820-5)', 32, 2000],
  ['terminal-post', 'single bolt (8820-6)', 58, 2000],
]

const NOTHING = { minA: 0, maxA: 10_000, requiredVoltageV: 0, requiredBreakingCapacityA: 0 }

/** The largest whole figure that a fuse which states nothing but its style still serves. */
function largestServed(
  style: FuseStyle,
  asked: 'requiredVoltageV' | 'requiredBreakingCapacityA',
  upTo: number,
): number {
  let low = 0
  let high = upTo
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    const suits = fuseSuits({ ratingA: 100, style }, { ...NOTHING, [asked]: middle }).length === 0
    if (suits) low = middle
    else high = middle
  }
  return low
}

const voltageRow = ([style, name, voltageV]: (typeof STYLES)[number]): Row => [
  name,
  voltageV,
  () => largestServed(style, 'requiredVoltageV', 1000),
]

const breakingRow = ([style, name, , breakingA]: (typeof STYLES)[number]): Row => [
  name,
  breakingA,
  () => largestServed(style, 'requiredBreakingCapacityA', 100_000),
]

const CLASS_T = ['class-t', 'class T', 125, 20_000] as const

export const FUSES: Topic = {
  id: 'fuses',
  title: 'Fuses',
  about: 'Which ratings there are, which one is chosen for a current, and what a fuse must be able to break.',
  tables: [
    {
      document: 'nec-240-6',
      table: '240.6(A), standard ampere ratings, with the fuse-only sizes',
      quantity: 'class T fuse chosen for a thousandth less than the rating over 1.25',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: NEC_240_6_A.map((ratingA) => [
        `${ratingA} A`,
        ratingA,
        () =>
          nextFuse({ currentA: (0.999 * ratingA) / 1.25, nominalV: 48, style: 'class-t' })?.ratingA ??
          Number.NaN,
      ]),
    },
    {
      document: 'iso-8820',
      table: 'scopes of the parts',
      quantity: 'largest rating',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: (
        [
          ['blade', 'blade (8820-3)', 100],
          ['bolted-strip', 'bolted strip (8820-5)', 500],
          ['terminal-post', 'single bolt (8820-6)', 300],
        ] as const
      ).map(([style, name, ratingA]) => [
        name,
        ratingA,
        () => standardFuseRatingsA(style).at(-1) ?? Number.NaN,
      ]),
    },
    {
      document: 'iso-8820',
      table: 'scopes of the parts',
      quantity: 'largest d.c. voltage served by the style alone',
      unit: 'V',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: STYLES.map(voltageRow),
    },
    {
      document: 'iso-8820',
      table: 'scopes of the parts',
      quantity: 'largest breaking capacity served by the style alone',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: STYLES.map(breakingRow),
    },
    {
      document: 'sand96',
      table: 'current-limiting fuses of class T',
      quantity: 'd.c. voltage served',
      unit: 'V',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: [voltageRow(CLASS_T)],
    },
    {
      document: 'sand96',
      table: 'current-limiting fuses of class T',
      quantity: 'breaking capacity served',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: [breakingRow(CLASS_T)],
    },
    {
      document: 'abyc-e11',
      table: 'Table V-A (E-11.16), 12 to 24 V d.c.',
      quantity: 'breaking capacity wanted, by total cold cranking amperes',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: CRANKING.flatMap(([crankingA, mainA, branchA]) => [
        [`${crankingA} A, main device`, mainA, () => breakingCapacityOfCrankingA(crankingA, 'main')] as const,
        [`${crankingA} A, branch`, branchA, () => breakingCapacityOfCrankingA(crankingA, 'branch')] as const,
      ]),
    },
  ],
  traps: [],
}
