/**
 * Prints the run-time error against the published constant-power tables of eight AGM blocks to 10.5 V, by
 * discharge time and by what is known of the battery: `npx tsx tests/bench/runtime-accuracy.ts`.
 * Error = (predicted - printed) / printed. Rows with short-rate figures reuse points of the same block: they
 * test the voltage and the interpolation, not the prediction of an unknown block.
 */
import type { OtherRate } from '../../core/range/range-document.ts'
import { AGM_BLOCKS, AGM_MINUTES, type AgmBlock } from '../reference/data/battery-agm-blocks.ts'
import { printedPowerRun } from '../reference/values/runtime.ts'

interface Point {
  readonly minutes: number
  readonly error: number
  readonly inBand: boolean
}

const KNOWN: readonly (readonly [string, (block: AgmBlock) => readonly OtherRate[]])[] = [
  ['typical shape', () => []],
  ['with C10 (must change nothing)', ({ capacityAh }) => [{ hourRateH: 10, capacityAh: capacityAh.h10 }]],
  ['with C5', ({ capacityAh }) => [{ hourRateH: 5, capacityAh: capacityAh.h5 }]],
  ['with C1', ({ capacityAh }) => [{ hourRateH: 1, capacityAh: capacityAh.h1 }]],
  [
    'with C5 and C1',
    ({ capacityAh }) => [
      { hourRateH: 5, capacityAh: capacityAh.h5 },
      { hourRateH: 1, capacityAh: capacityAh.h1 },
    ],
  ],
]

const BANDS: readonly (readonly [string, number, number])[] = [
  ['1-20 h', 60, 1200],
  ['30 min-5 h', 30, 300],
  ['10-20 min', 10, 20],
  ['all', 10, 1200],
]

function pointsOf(block: AgmBlock, otherRates: readonly OtherRate[]): readonly Point[] {
  return AGM_MINUTES.map((minutes, index) => {
    const run = printedPowerRun(block, index, otherRates)
    const hours = minutes / 60
    return { minutes, error: run.hours / hours - 1, inBand: run.hoursLow <= hours && hours <= run.hoursHigh }
  })
}

function percent(share: number): string {
  return `${share >= 0 ? '+' : ''}${(100 * share).toFixed(1)}`
}

function row(points: readonly Point[]): string {
  const errors = points.map(({ error }) => error)
  const bias = errors.reduce((sum, error) => sum + error, 0) / errors.length
  const meanAbsolute = errors.reduce((sum, error) => sum + Math.abs(error), 0) / errors.length
  const worst = errors.reduce((far, error) => (Math.abs(error) > Math.abs(far) ? error : far), 0)
  const held = points.filter(({ inBand }) => inBand).length
  return `bias ${percent(bias)}  mean absolute ${(100 * meanAbsolute).toFixed(1)}  worst ${percent(worst)}  band holds ${held}/${points.length}`
}

for (const [name, ratesOf] of KNOWN) {
  const points = AGM_BLOCKS.flatMap((block) => pointsOf(block, ratesOf(block)))
  console.log(name)
  for (const [band, low, high] of BANDS) {
    console.log(
      `  ${band.padEnd(11)} ${row(points.filter(({ minutes }) => minutes >= low && minutes <= high))}`,
    )
  }
  if (process.argv.includes('--each')) {
    for (const block of AGM_BLOCKS) {
      console.log(
        `    ${block.name}: ${pointsOf(block, ratesOf(block))
          .map(({ error }) => percent(error))
          .join(' ')}`,
      )
    }
  }
}
