import { bankModel } from '../../../core/battery/bank.ts'
import { operatingPoint } from '../../../core/battery/operating-point.ts'
import { capacityAtCurrentAh } from '../../../core/battery/rate-capacity.ts'
import { predictRuntime, type RuntimePrediction } from '../../../core/battery/runtime.ts'
import type { OtherRate } from '../../../core/range/range-document.ts'
import { AGM_BLOCKS, AGM_MINUTES, type AgmBlock, blockPowerW } from '../data/battery-agm-blocks.ts'
import {
  FLOODED_BLOCK_ROWS,
  LFP_BLOCK_ROWS,
  LFP_CELL_ROWS,
  NMC_CELL_ROWS,
  VRLA_BLOCK_ROWS,
  VRLA_DISCHARGED_FRACTIONS,
  VRLA_VOLTAGES,
} from '../data/battery-other-blocks.ts'
import type { PublishedTable, Row, Topic } from './published.ts'

/**
 * The block's capacities over short times, as a shop would state them.
 *
 * @param block - The block
 * @param hours - Which of them
 * @returns The rates
 */
export function shortRates(block: AgmBlock, ...hours: readonly (5 | 1)[]): readonly OtherRate[] {
  return hours.map((hourRateH) => ({
    hourRateH,
    capacityAh: hourRateH === 5 ? block.capacityAh.h5 : block.capacityAh.h1,
  }))
}

/** Voltage per cell at which a printed row ends. */
export type EndVoltage = keyof AgmBlock['powerWPerCell']
const CUT_OFF_V: Readonly<Record<EndVoltage, number>> = { v185: 11.1, v180: 10.8, v175: 10.5 }

/**
 * The run of one printed constant power, from full to the end voltage at 25 C, with the printed resistance.
 *
 * @param block - The block
 * @param column - Which of the printed times
 * @param otherRates - Short-rate capacities that are told to core
 * @param end - End voltage of the printed row
 * @returns What core predicts
 */
export function printedPowerRun(
  block: AgmBlock,
  column: number,
  otherRates: readonly OtherRate[],
  end: EndVoltage = 'v175',
): RuntimePrediction {
  return predictRuntime({
    bank: {
      nominalV: 12,
      chemistry: 'agm',
      capacityAh: block.capacityAh.h20,
      otherRates,
      minSocFraction: 0,
      internalResistanceOhm: block.resistanceOhm,
    },
    dcPowerW: blockPowerW(block.powerWPerCell[end][column] ?? Number.NaN),
    cutOffV: CUT_OFF_V[end],
  })
}

const within = (low: number, high: number) =>
  AGM_MINUTES.flatMap((minutes, column) => (minutes >= low && minutes <= high ? [{ minutes, column }] : []))

const powerRows = (
  block: AgmBlock,
  [low, high]: readonly [number, number],
  hours: readonly (5 | 1)[],
): readonly Row[] =>
  within(low, high).map(({ minutes, column }) => [
    `${blockPowerW(block.powerWPerCell.v175[column] ?? Number.NaN).toFixed(1)} W`,
    minutes,
    () => 60 * printedPowerRun(block, column, shortRates(block, ...hours)).hours,
  ])

const AGM = {
  document: 'agm-sheets',
  unit: 'min',
  how: 'computed',
} as const satisfies Partial<PublishedTable>

const agmTables: readonly PublishedTable[] = AGM_BLOCKS.flatMap((block): readonly PublishedTable[] => [
  {
    ...AGM,
    table: `constant power to 1.75 V per cell, ${block.name}`,
    quantity: 'run time over an hour, told the 20, 5 and 1 h capacities',
    tolerance: { relative: 0.05 },
    because: 'the accuracy that we claim from 1 h on with three capacities',
    rows: powerRows(block, [60, 1200], [5, 1]),
  },
  {
    ...AGM,
    table: `constant power to 1.75 V per cell, ${block.name}`,
    quantity: 'run time under an hour, told the 20, 5 and 1 h capacities',
    tolerance: { relative: 0.06 },
    because: 'the accuracy that we claim from half an hour on with three capacities',
    rows: powerRows(block, [30, 59], [5, 1]),
  },
  {
    ...AGM,
    table: `constant power to 1.75 V per cell, ${block.name}`,
    quantity: 'run time from 6 h on, told the 20 h capacity alone',
    tolerance: { relative: 0.05 },
    because: 'what a usual label tells. Below 5 h blocks differ by a third: the answer then has a wide band',
    rows: powerRows(block, [360, 1200], []),
  },
])

const vrla = () => bankModel({ nominalV: 12, chemistry: 'agm', capacityAh: 17 })

const meanV = (run: RuntimePrediction) => run.usableWh / (run.averageA * run.hours)

const lithiumRun = (
  chemistry: 'lifepo4' | 'nmc',
  capacityAh: number,
  at: { readonly temperatureC: number; readonly dcPowerW: number; readonly cutOffV?: number },
) =>
  predictRuntime({
    bank: {
      nominalV: 12,
      chemistry,
      capacityAh,
      minSocFraction: 0,
      temperatureC: at.temperatureC,
      maxDischargeA: 20,
    },
    dcPowerW: at.dcPowerW,
    ...(at.cutOffV !== undefined && { cutOffV: at.cutOffV }),
  })

export const RUNTIME: Topic = {
  id: 'runtime',
  title: 'Run time',
  about: 'Predicted run time, voltage under load and capacity by current, against printed discharge tables.',
  tables: [
    ...agmTables,
    {
      document: 'sulzer-2019',
      table: 'measured 12 V 17 Ah valve-regulated block',
      quantity: 'voltage under load',
      unit: 'V',
      how: 'computed',
      tolerance: { relative: 0.026 },
      because: 'the accuracy that we claim for voltage',
      rows: VRLA_VOLTAGES.flatMap(({ currentA, volts }) =>
        volts.map((measuredV, index) => {
          const discharged = VRLA_DISCHARGED_FRACTIONS[index] ?? Number.NaN
          return [
            `${currentA} A, ${Number((100 * discharged).toPrecision(6))} % discharged`,
            measuredV,
            () => operatingPoint(vrla(), 1 - discharged, measuredV * currentA, 0)?.terminalV ?? Number.NaN,
          ] as const
        }),
      ),
    },
    {
      document: 'sulzer-2019',
      table: 'measured 12 V 17 Ah valve-regulated block',
      quantity: 'mean voltage over the discharge',
      unit: 'V',
      how: 'computed',
      tolerance: { relative: 0.015 },
      because: 'the accuracy that we claim for mean voltage',
      rows: VRLA_BLOCK_ROWS.map(([currentA, , , measuredV]) => [
        `${currentA} A`,
        measuredV,
        () =>
          meanV(
            predictRuntime({
              bank: { nominalV: 12, chemistry: 'agm', capacityAh: 17, minSocFraction: 0 },
              dcPowerW: measuredV * currentA,
              cutOffV: 10.5,
            }),
          ),
      ]),
    },
    {
      document: 'flooded-sheet',
      table: 'capacity by hour rate',
      quantity: 'capacity at the current, told the 20 h capacity alone',
      unit: 'Ah',
      how: 'computed',
      tolerance: { relative: 0.06 },
      because:
        'the minutes at 25 A disagree with the sheet’s own capacities by 5 %; the rest lies within 1 %',
      rows: FLOODED_BLOCK_ROWS.map(([hours, currentA, capacityAh]) => [
        `${hours} h, ${currentA} A`,
        capacityAh,
        () =>
          capacityAtCurrentAh(
            bankModel({ nominalV: 12, chemistry: 'flooded', capacityAh: 330 }).rate,
            currentA,
          ),
      ]),
    },
    {
      document: 'lfp-sheet',
      table: 'run-time chart to 10 V',
      quantity: 'capacity at the current',
      unit: 'Ah',
      how: 'computed',
      tolerance: { relative: 0.05 },
      because: 'read off the chart within 5 %',
      rows: LFP_BLOCK_ROWS.map(([perHour, hours]) => [
        `${perHour}C`,
        Number((perHour * 45 * hours).toPrecision(4)),
        () =>
          capacityAtCurrentAh(
            bankModel({ nominalV: 12, chemistry: 'lifepo4', capacityAh: 45 }).rate,
            perHour * 45,
          ),
      ]),
    },
    {
      document: 'lin-lfp-simulation',
      table: 'discharge map, 20 and 25 °C, up to 2C',
      quantity: 'run time at the map’s mean power',
      unit: 'h',
      how: 'computed',
      tolerance: { relative: 0.1 },
      because: 'ours errs to the careful side, as the map is simulated',
      rows: LFP_CELL_ROWS.filter(
        ([temperatureC, perHour]) => temperatureC >= 20 && temperatureC <= 25 && perHour <= 2,
      ).map(([temperatureC, perHour, ah, volts]) => {
        const currentA = perHour * 2.6
        return [
          `${temperatureC} °C, ${perHour}C`,
          Number((ah / currentA).toPrecision(4)),
          () =>
            lithiumRun('lifepo4', 2.6, { temperatureC, dcPowerW: 4 * volts * currentA, cutOffV: 10 }).hours,
        ] as const
      }),
    },
    {
      document: 'jeon-baek-nmc',
      table: 'discharge map from 20 °C up, 2 and 4 A',
      quantity: 'mean voltage of a cell',
      unit: 'V',
      how: 'computed',
      tolerance: { relative: 0.05 },
      because: 'another NMC cell than the one whose resting voltage is used',
      rows: NMC_CELL_ROWS.filter(([currentA, temperatureC]) => currentA <= 4 && temperatureC >= 20).map(
        ([currentA, temperatureC, , volts]) => [
          `${currentA} A, ${temperatureC} °C`,
          volts,
          () => meanV(lithiumRun('nmc', 3.35, { temperatureC, dcPowerW: 3 * volts * currentA })) / 3,
        ],
      ),
    },
  ],
  traps: [],
}
