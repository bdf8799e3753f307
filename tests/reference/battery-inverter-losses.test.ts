import { lusolve, multiply, transpose } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { inverterInputW } from '../../core/battery/inverter-input.ts'
import { quasiSquareDistortionFraction } from '../../core/inverters/waveform-distortion.ts'
import {
  SANDIA_VECTOR,
  TESTED_INVERTERS,
  TESTED_LOADS,
  type TestedInverter,
} from './data/battery-inverters.ts'
import { checkTopic } from './values/check-topic.ts'
import { INVERTERS } from './values/inverters.ts'

checkTopic(INVERTERS)

type SandiaInverter = Omit<TestedInverter, 'efficiency'>

/** Output of an inverter: King, Gonzalez, Galbraith, Boyson, SAND2007-5036, equations 1 to 4. */
function sandiaOutputW(inverter: SandiaInverter, dcV: number, dcPowerW: number): number {
  const dV = dcV - inverter.ratedDcV
  const a = inverter.ratedDcW * (1 + inverter.c1 * dV)
  const b = inverter.startW * (1 + inverter.c2 * dV)
  const c = inverter.c0 * (1 + inverter.c3 * dV)
  if (dcPowerW < inverter.startW) return -inverter.nightW
  const outputW = (inverter.ratedW / (a - b) - c * (a - b)) * (dcPowerW - b) + c * (dcPowerW - b) ** 2
  return Math.min(outputW, inverter.ratedW)
}

/** Input at rated voltage for an output, found by halving. */
function sandiaInputW(inverter: SandiaInverter, outputW: number): number {
  let low = inverter.startW
  let high = inverter.ratedDcW * 1.05
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    if (sandiaOutputW(inverter, inverter.ratedDcV, middle) < outputW - 1e-9) low = middle
    else high = middle
  }
  return high
}

describe('the Sandia model used here', () => {
  // The coefficients are printed with three figures; the published answers were made with more.
  it.each(SANDIA_VECTOR.cases)(
    'gives $outputW W at $dcV V and $dcA A within 0.1 mW',
    ({ dcV, dcA, outputW }) => {
      expect(Math.abs(sandiaOutputW(SANDIA_VECTOR.inverter, dcV, dcV * dcA) - outputW)).toBeLessThan(1e-4)
    },
  )
  it.each(TESTED_INVERTERS)('gives the efficiencies worked out beforehand for the $ratedW W unit', (unit) => {
    for (const [index, load] of TESTED_LOADS.entries()) {
      const outputW = load * unit.ratedW
      expect(outputW / sandiaInputW(unit, outputW)).toBeCloseTo(unit.efficiency[index] ?? 0, 3)
    }
  })
})

describe('the losses that an inverter does not state', () => {
  it('are the least-squares curve a + b y + c y2 through the medians of the nine tested units', () => {
    const powers = TESTED_LOADS.map((load) => [1, load, load ** 2])
    const lost = TESTED_LOADS.map((load, index) => {
      const sorted = TESTED_INVERTERS.map(({ efficiency }) => efficiency[index] ?? Number.NaN).sort(
        (one, other) => one - other,
      )
      return [load / (sorted[4] ?? Number.NaN) - load]
    })
    const normal = multiply(transpose(powers), powers)
    const [a, b, c] = (lusolve(normal, multiply(transpose(powers), lost)) as number[][]).flat()
    const ours = (load: number) => inverterInputW({ outputW: 1000 * load, continuousW: 1000 }) / 1000 - load
    expect(ours(0)).toBeCloseTo(a ?? Number.NaN, 4)
    expect(4 * ours(0.5) - ours(1) - 3 * ours(0)).toBeCloseTo(b ?? Number.NaN, 4)
    expect(2 * ours(1) + 2 * ours(0) - 4 * ours(0.5)).toBeCloseTo(c ?? Number.NaN, 4)
  })
})

describe('quasiSquareDistortionFraction', () => {
  it('agrees with a numerical Fourier analysis of the wave itself at 100 degrees within 0.1 points', () => {
    const samples = 36_000
    let fundamental = 0
    let square = 0
    for (let index = 0; index < samples; index++) {
      const angle = (360 * (index + 0.5)) / samples
      const half = angle % 180
      const value = half > 40 && half < 140 ? (angle < 180 ? 1 : -1) : 0
      fundamental += (2 * value * Math.sin((angle * Math.PI) / 180)) / samples
      square += value ** 2 / samples
    }
    const rmsFundamental = fundamental / Math.SQRT2
    const numerical = Math.sqrt(square / rmsFundamental ** 2 - 1)
    expect(Math.abs(quasiSquareDistortionFraction(100) - numerical)).toBeLessThan(0.001)
  })
})
