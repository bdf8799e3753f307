import { inverterInputW } from '../../../core/battery/inverter-input.ts'
import { quasiSquareDistortionFraction } from '../../../core/inverters/waveform-distortion.ts'
import { TESTED_INVERTERS, TESTED_LOADS, type TestedInverter } from '../data/battery-inverters.ts'
import type { PublishedTable, Topic } from './published.ts'

/** Efficiency by core of a unit that states its idle draw and its efficiency at full load. */
function efficiencyOf(unit: TestedInverter, load: number): number {
  const outputW = load * unit.ratedW
  const inputW = inverterInputW({
    outputW,
    continuousW: unit.ratedW,
    efficiencyFullFraction: unit.ratedW / unit.ratedDcW,
    idleW: unit.startW,
  })
  return outputW / inputW
}

/** Median of the nine units' efficiencies at one of the loads. */
function medianAt(index: number): number {
  const sorted = TESTED_INVERTERS.map(({ efficiency }) => efficiency[index] ?? Number.NaN).sort(
    (a, b) => a - b,
  )
  return sorted[4] ?? Number.NaN
}

const unitTables: readonly PublishedTable[] = TESTED_INVERTERS.map((unit) => ({
  document: 'cec-inverters',
  table: `tested unit of ${unit.ratedW} W at ${unit.ratedDcV} V`,
  quantity: 'efficiency by load, told idle draw and efficiency at full load',
  unit: '1',
  how: 'computed',
  tolerance: { absolute: 0.02 },
  because: 'the accuracy that we claim for a unit that states both',
  rows: TESTED_LOADS.map((load, index) => [
    `${load * 100} % of the rating`,
    unit.efficiency[index] ?? Number.NaN,
    () => efficiencyOf(unit, load),
  ]),
}))

const DISTORTION: readonly (readonly [conductionAngleDeg: number, fraction: number])[] = [
  [180, 0.4834],
  [150, 0.3192],
  [133.56, 0.2896],
  [120, 0.3108],
  [110, 0.3515],
  [100, 0.4098],
  [90, 0.4834],
  [80, 0.5719],
  [60, 0.8031],
]

export const INVERTERS: Topic = {
  id: 'inverters',
  title: 'Inverters: losses and wave form',
  about: 'What an inverter takes from the battery for what it gives, and how far its wave is from a sine.',
  tables: [
    {
      document: 'cec-inverters',
      table: 'median of nine tested units',
      quantity: 'efficiency by load, told nothing',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.006 },
      because: 'one curve fitted to the medians of these units',
      rows: TESTED_LOADS.map((load, index) => [
        `${load * 100} % of the rating`,
        medianAt(index),
        () => (load * 1000) / inverterInputW({ outputW: load * 1000, continuousW: 1000 }),
      ]),
    },
    ...unitTables,
    {
      document: 'quasi-square-fourier',
      table: 'three-level pulse wave',
      quantity: 'total harmonic distortion by pulse width',
      unit: '1',
      how: 'computed',
      tolerance: { absolute: 0.0001 },
      because: 'four decimals',
      rows: DISTORTION.map(([angle, fraction]) => [
        `${angle}°`,
        fraction,
        () => quasiSquareDistortionFraction(angle),
      ]),
    },
  ],
  traps: [],
}
