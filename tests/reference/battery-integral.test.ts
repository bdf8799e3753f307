import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { predictRuntime, type RuntimeQuestion } from '../../core/battery/runtime.ts'

/**
 * The run time checked by an outside solver of differential equations (odex, the extrapolation code of Hairer
 * and Wanner): charge followed in time with a right-hand side written here from the published equations, the
 * end voltage's constant K found by repeated substitution instead of in closed form.
 */
interface Solver {
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  solve(
    slope: (t: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { y: number[]; outcome: number }
}
// odex 2.0.4 ships its sources without strict types: loaded as what it is, typed above.
const odex: { Solver: new (size: number) => Solver } = createRequire(import.meta.url)('odex')

function socAfter(slope: (soc: number) => number, hours: number, startSoc: number): number {
  const solver = new odex.Solver(1)
  solver.absoluteTolerance = 1e-11
  solver.relativeTolerance = 1e-11
  solver.maxSteps = 100_000
  const { y, outcome } = solver.solve((_t, [soc = 0]) => [slope(soc)], 0, [startSoc], hours)
  expect(outcome).toBe(0)
  return y[0] ?? Number.NaN
}

interface LeadAcid {
  readonly capacityAh: number
  readonly halfRatePerH: number
  readonly exponent: number
  readonly fullCellV: number
  readonly resistanceOhm: number
  readonly health: number
}

/** Charge per hour of a 12 V lead-acid block at constant power. */
function leadAcidSlope(block: LeadAcid, powerW: number): (soc: number) => number {
  const slow = (1 / (20 * block.halfRatePerH)) ** block.exponent
  return (soc) => {
    let currentA = powerW / 12
    for (let pass = 0; pass < 60; pass++) {
      const knee = Math.max(0, 6 * (1.95 - 0.045) - currentA * block.resistanceOhm - 6 * 1.75)
      const emfV = 6 * (1.95 + (block.fullCellV - 1.95) * soc - 0.045) - knee * Math.exp(-soc / 0.06)
      const root = Math.sqrt(emfV ** 2 - 4 * block.resistanceOhm * powerW)
      currentA = (emfV - root) / (2 * block.resistanceOhm)
    }
    const rate = (currentA / (block.capacityAh * block.halfRatePerH)) ** block.exponent
    return (-currentA * (1 + rate)) / (block.health * block.capacityAh * (1 + slow))
  }
}

const LEAD_ACID_CASES: readonly (readonly [string, RuntimeQuestion, LeadAcid])[] = [
  [
    'AGM, 100 Ah, 300 W, to 20 %',
    {
      bank: {
        nominalV: 12,
        chemistry: 'agm',
        capacityAh: 100,
        minSocFraction: 0.2,
        internalResistanceOhm: 0.005,
      },
      dcPowerW: 300,
      cutOffV: 10.5,
    },
    { capacityAh: 100, halfRatePerH: 0.6, exponent: 0.85, fullCellV: 2.135, resistanceOhm: 0.006, health: 1 },
  ],
  [
    'AGM, 100 Ah, 60 W, to the end',
    {
      bank: {
        nominalV: 12,
        chemistry: 'agm',
        capacityAh: 100,
        minSocFraction: 0,
        internalResistanceOhm: 0.005,
      },
      dcPowerW: 60,
      cutOffV: 10,
    },
    { capacityAh: 100, halfRatePerH: 0.6, exponent: 0.85, fullCellV: 2.135, resistanceOhm: 0.006, health: 1 },
  ],
  [
    'flooded, 220 Ah, four fifths left by age, 500 W',
    {
      bank: {
        nominalV: 12,
        chemistry: 'flooded',
        capacityAh: 220,
        minSocFraction: 0.3,
        internalResistanceOhm: 0.002,
        healthFraction: 0.8,
      },
      dcPowerW: 500,
      cutOffV: 10.5,
    },
    {
      capacityAh: 220,
      halfRatePerH: 0.46,
      exponent: 0.83,
      fullCellV: 2.1,
      resistanceOhm: 0.003,
      health: 0.8,
    },
  ],
]

describe('predictRuntime against an outside solver', () => {
  it.each(LEAD_ACID_CASES)(
    '%s: the charge at the predicted time is the predicted one within 1e-6',
    (_name, question, block) => {
      const run = predictRuntime(question)
      const soc = socAfter(leadAcidSlope(block, question.dcPowerW), run.hours, 1)
      expect(Math.abs(soc - run.endSocFraction)).toBeLessThan(1e-6)
    },
  )

  it.each(LEAD_ACID_CASES)(
    '%s: every tenth point of the curve lies on the solution within 1e-6',
    (_name, question, block) => {
      const slope = leadAcidSlope(block, question.dcPowerW)
      for (const point of predictRuntime(question).curve.filter((_point, index) => index % 10 === 9)) {
        expect(Math.abs(socAfter(slope, point.hours, 1) - point.socFraction)).toBeLessThan(1e-6)
      }
    },
  )

  it('LiFePO4, 100 Ah, 15 W: the charge at the predicted time is the predicted one within 1e-6', () => {
    // From 95 % to 40 % the cell's table bends eight times; below 20 A Peukert's law has no hold.
    const table = [
      [0.3, 3.278],
      [0.4, 3.295],
      [0.5, 3.299],
      [0.6, 3.303],
      [0.7, 3.316],
      [0.8, 3.337],
      [0.9, 3.341],
      [0.95, 3.343],
    ] as const
    const emfV = (soc: number): number => {
      const index = Math.max(
        1,
        table.findIndex(([x]) => soc <= x),
      )
      const [x0, y0] = table[index - 1] ?? table[0]
      const [x1, y1] = table[index] ?? table[1]
      return 4 * (y0 + ((y1 - y0) * (soc - x0)) / (x1 - x0))
    }
    const run = predictRuntime({
      bank: {
        nominalV: 12,
        chemistry: 'lifepo4',
        capacityAh: 100,
        startSocFraction: 0.95,
        minSocFraction: 0.4,
        internalResistanceOhm: 0.004,
      },
      dcPowerW: 150,
      cutOffV: 10.5,
    })
    const slope = (soc: number) => {
      const root = Math.sqrt(emfV(soc) ** 2 - 4 * 0.006 * 150)
      return -(emfV(soc) - root) / (2 * 0.006) / 100
    }
    expect(Math.abs(socAfter(slope, run.hours, 0.95) - 0.4)).toBeLessThan(1e-6)
  })
})
