import { ambientFactor, ampacityA, bundlingFactor } from '../../../core/wiring/ampacity.ts'
import type { StatedSize } from '../../../core/wiring/conductor.ts'
import { standard } from './conductors.ts'
import type { Topic } from './published.ts'

/**
 * What a conductor carries, alone in air of 30 C and outside engine spaces unless said otherwise.
 *
 * @param size - Area or gauge
 * @param insulationC - Temperature of its insulation [degC]
 * @param place - Where it lies
 * @returns Current [A]
 */
export function carriedA(
  size: StatedSize,
  insulationC: number,
  place: { ambientC?: number; inEngineSpace?: boolean; bundledCount?: number } = {},
): number {
  return ampacityA({
    conductor: standard(size),
    insulationC,
    ambientC: 30,
    bundledCount: 2,
    inEngineSpace: false,
    ...place,
  })
}

const CFR_COLUMNS_C = [60, 75, 80, 90, 105, 125, 200]
const CFR_TABLE_5: readonly (readonly [awg: string, amperes: readonly number[]])[] = [
  ['18', [10, 10, 15, 20, 20, 25, 25]],
  ['16', [15, 15, 20, 25, 25, 30, 35]],
  ['14', [20, 20, 25, 30, 35, 40, 45]],
  ['12', [25, 25, 35, 40, 45, 50, 55]],
  ['10', [40, 40, 50, 55, 60, 70, 70]],
  ['8', [55, 65, 70, 70, 80, 90, 100]],
  ['6', [80, 95, 100, 100, 120, 125, 135]],
  ['4', [105, 125, 130, 135, 160, 170, 180]],
  ['3', [120, 145, 150, 155, 180, 195, 210]],
  ['2', [140, 170, 175, 180, 210, 225, 240]],
  ['1', [165, 195, 210, 210, 245, 265, 280]],
  ['1/0', [195, 230, 245, 245, 285, 305, 325]],
  ['2/0', [225, 265, 285, 285, 330, 355, 370]],
  ['3/0', [260, 310, 330, 330, 385, 410, 430]],
  ['4/0', [300, 360, 385, 385, 445, 475, 510]],
]

const CFR_NOTE_1: readonly (readonly [insulationC: number, factor: number])[] = [
  [60, 0.58],
  [75, 0.75],
  [80, 0.78],
  [90, 0.82],
  [125, 0.89],
  [200, 1],
]

/** Inside engine spaces, printed with mixed rounding to whole amperes. */
const CFR_105C_INSIDE: readonly (readonly [awg: string, amperes: number])[] = [
  ['18', 17],
  ['16', 21],
  ['14', 30],
  ['12', 38],
  ['10', 51],
  ['8', 68],
  ['6', 102],
  ['4', 136],
  ['3', 153],
  ['2', 178],
  ['1', 208],
  ['1/0', 242],
  ['2/0', 280],
  ['3/0', 327],
  ['4/0', 378],
]

/** The column printed for 85 to 90 C is asked for with 85. */
const ISO_COLUMNS_C = [60, 70, 85, 105, 125, 200]
const ISO_TABLE_A1: readonly (readonly [areaMm2: number, amperes: readonly number[]])[] = [
  [0.75, [6, 10, 12, 16, 20, 25]],
  [1, [8, 14, 18, 20, 25, 35]],
  [1.5, [12, 18, 21, 25, 30, 40]],
  [2.5, [17, 25, 30, 35, 40, 45]],
  [4, [22, 35, 40, 45, 50, 55]],
  [6, [29, 45, 50, 60, 70, 75]],
  [10, [40, 65, 70, 90, 100, 120]],
  [16, [54, 90, 100, 130, 150, 170]],
  [25, [71, 120, 140, 170, 185, 200]],
  [35, [87, 160, 185, 210, 225, 240]],
  [50, [105, 210, 230, 270, 300, 325]],
  [70, [135, 265, 285, 330, 360, 375]],
  [95, [165, 310, 330, 390, 410, 430]],
  [120, [190, 360, 400, 450, 480, 520]],
  [150, [220, 380, 430, 475, 520, 560]],
]

const ISO_ENGINE_SPACE: readonly (readonly [insulationC: number, factor: number])[] = [
  [70, 0.75],
  [85, 0.82],
  [90, 0.82],
  [105, 0.86],
  [125, 0.89],
  [200, 1],
]

/** Temperature of the air, and the factor for each insulation where it may be used in such air at all. */
const NEC_AMBIENT: readonly (readonly [ambientC: number, byInsulationC: Readonly<Record<number, number>>])[] =
  [
    [10, { 60: 1.29, 75: 1.2, 90: 1.15 }],
    [15, { 60: 1.22, 75: 1.15, 90: 1.12 }],
    [20, { 60: 1.15, 75: 1.11, 90: 1.08 }],
    [25, { 60: 1.08, 75: 1.05, 90: 1.04 }],
    [30, { 60: 1, 75: 1, 90: 1 }],
    [35, { 60: 0.91, 75: 0.94, 90: 0.96 }],
    [40, { 60: 0.82, 75: 0.88, 90: 0.91 }],
    [45, { 60: 0.71, 75: 0.82, 90: 0.87 }],
    [50, { 60: 0.58, 75: 0.75, 90: 0.82 }],
    [55, { 60: 0.41, 75: 0.67, 90: 0.76 }],
    [60, { 75: 0.58, 90: 0.71 }],
    [65, { 75: 0.47, 90: 0.65 }],
    [70, { 75: 0.33, 90: 0.58 }],
    [75, { 90: 0.5 }],
    [80, { 90: 0.41 }],
    [85, { 90: 0.29 }],
  ]

const BS_IEC_AMBIENT: Readonly<Record<number, readonly (readonly [ambientC: number, factor: number])[]>> = {
  60: [
    [30, 1],
    [35, 0.91],
    [40, 0.82],
    [45, 0.71],
    [50, 0.58],
    [55, 0.41],
  ],
  70: [
    [30, 1],
    [35, 0.94],
    [40, 0.87],
    [45, 0.79],
    [50, 0.71],
    [55, 0.61],
    [60, 0.5],
    [65, 0.35],
  ],
  90: [
    [30, 1],
    [35, 0.96],
    [40, 0.91],
    [45, 0.87],
    [50, 0.82],
    [55, 0.76],
    [60, 0.71],
    [65, 0.65],
    [70, 0.58],
    [75, 0.5],
    [80, 0.41],
    [85, 0.29],
  ],
}

const CFR_NOTE_2: readonly (readonly [count: number, factor: number])[] = [
  [2, 1],
  [3, 0.7],
  [4, 0.6],
  [6, 0.6],
  [7, 0.5],
  [24, 0.5],
  [25, 0.4],
  [100, 0.4],
]

const engineSpaceFactor = (size: StatedSize, insulationC: number) =>
  carriedA(size, insulationC, { inEngineSpace: true }) / carriedA(size, insulationC)

export const AMPACITY: Topic = {
  id: 'ampacity',
  title: 'Current-carrying capacity',
  about: 'What a conductor may carry, by insulation, warmth of the air, engine space and bundling.',
  tables: [
    {
      document: '33-cfr-183-425',
      table: 'Table 5, 30 °C, outside engine spaces',
      quantity: 'allowable current by gauge and insulation',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: CFR_TABLE_5.flatMap(([awg, amperes]) =>
        amperes.map((ampere, column) => {
          const insulationC = CFR_COLUMNS_C[column] ?? Number.NaN
          return [`${awg} AWG, ${insulationC} °C`, ampere, () => carriedA({ awg }, insulationC)] as const
        }),
      ),
    },
    {
      document: '33-cfr-183-425',
      table: 'Table 5 note 1, engine spaces (50 °C)',
      quantity: 'factor by insulation',
      unit: '1',
      how: 'held',
      standing: 'memory',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: CFR_NOTE_1.map(([insulationC, factor]) => [
        `${insulationC} °C`,
        factor,
        () => engineSpaceFactor({ awg: '2' }, insulationC),
      ]),
    },
    {
      document: '33-cfr-183-425',
      table: 'Table 5 note 1, engine spaces (50 °C)',
      quantity: 'factor of 105 °C insulation',
      unit: '1',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: [['105 °C', 0.85, () => engineSpaceFactor({ awg: '2' }, 105)]],
    },
    {
      document: 'marine-technical-note',
      table: '105 °C insulation inside engine spaces',
      quantity: 'allowable current by gauge',
      unit: 'A',
      how: 'computed',
      tolerance: { absolute: 0.76 },
      because: 'the note rounds to whole amperes, some up and some down',
      rows: CFR_105C_INSIDE.map(([awg, amperes]) => [
        `${awg} AWG`,
        amperes,
        () => carriedA({ awg }, 105, { inEngineSpace: true }),
      ]),
    },
    {
      document: '33-cfr-183-425',
      table: 'Table 5 note 2, current-carrying conductors together',
      quantity: 'factor by number',
      unit: '1',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: CFR_NOTE_2.map(([count, factor]) => [`${count} conductors`, factor, () => bundlingFactor(count)]),
    },
    {
      document: 'iso-10133',
      table: 'Table A.1, single conductors, 30 °C',
      quantity: 'allowable current by area and insulation',
      unit: 'A',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: ISO_TABLE_A1.flatMap(([areaMm2, amperes]) =>
        amperes.map((ampere, column) => {
          const insulationC = ISO_COLUMNS_C[column] ?? Number.NaN
          return [
            `${areaMm2} mm², ${insulationC} °C`,
            ampere,
            () => carriedA({ areaMm2 }, insulationC),
          ] as const
        }),
      ),
    },
    {
      document: 'iso-10133',
      table: 'Table A.1, engine spaces',
      quantity: 'factor by insulation',
      unit: '1',
      how: 'held',
      tolerance: { absolute: 0 },
      because: 'the figure itself',
      rows: ISO_ENGINE_SPACE.map(([insulationC, factor]) => [
        `${insulationC} °C`,
        factor,
        () => engineSpaceFactor({ areaMm2: 35 }, insulationC),
      ]),
    },
    {
      document: 'nec-ambient',
      table: 'Table 310.15(B)(1)',
      quantity: 'correction for the warmth of the air',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: 'printed with two decimals, by the same law',
      rows: NEC_AMBIENT.flatMap(([ambientC, byInsulationC]) =>
        Object.entries(byInsulationC).map(
          ([insulationC, factor]) =>
            [
              `${insulationC} °C insulation in air of ${ambientC} °C`,
              factor,
              () => ambientFactor({ insulationC: Number(insulationC), ambientC }),
            ] as const,
        ),
      ),
    },
    {
      document: 'bs-iec-ambient',
      table: 'correction for the warmth of the air',
      quantity: 'factor by insulation',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.005 },
      because: 'printed with two decimals: 0.866 as 0.87, 0.354 as 0.35',
      rows: Object.entries(BS_IEC_AMBIENT).flatMap(([insulationC, factors]) =>
        factors.map(
          ([ambientC, factor]) =>
            [
              `${insulationC} °C insulation in air of ${ambientC} °C`,
              factor,
              () => ambientFactor({ insulationC: Number(insulationC), ambientC }),
            ] as const,
        ),
      ),
    },
  ],
  traps: [],
}
