import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RuntimeAnswer } from '../../shared/contract/answers.ts'
import type { Setup } from '../../shared/contract/setup.ts'
import { barGeometry, letterOf, widestPiece } from '../../widget/parts/bar-geometry.ts'
import { curveGeometry, pathOf } from '../../widget/parts/curve-geometry.ts'
import { totalsOf } from '../../widget/totals.ts'
import { demoService } from '../support/service.ts'
import { plans } from './support/plans.ts'

const service = await demoService()
const setup = (await service.inject('/v1/shops/kingcup/setup')).json<Setup>()

describe('barGeometry', () => {
  it('lays every load or group end to end and ends where running power ends', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { demand, requiredW } = totalsOf(plan, setup)
        const bar = barGeometry({ demand, takeTurns: plan.takeTurns, requiredW })
        let end = 0
        for (const { x, width } of bar.segments) {
          expect(x).toBeCloseTo(end, 9)
          end = x + width
        }
        expect(end).toBeCloseTo(bar.runningX, 9)
        expect(bar.segments.flatMap(({ ids }) => ids).sort()).toEqual(plan.loads.map(({ id }) => id).sort())
      }),
    )
  })

  it('keeps every mark inside the drawing, with and without a limit', () => {
    fc.assert(
      fc.property(
        plans,
        fc.option(fc.integer({ min: 50, max: 9000 }), { nil: undefined }),
        (plan, limitW) => {
          const { demand, requiredW } = totalsOf(plan, setup)
          const bar = barGeometry({ demand, takeTurns: plan.takeTurns, requiredW, limitW })
          const marks = [
            bar.runningX,
            bar.startingX ?? 0,
            bar.limitX ?? 0,
            (bar.headroom?.x ?? 0) + (bar.headroom?.width ?? 0),
          ]
          for (const mark of marks) {
            expect(mark).toBeGreaterThanOrEqual(0)
            expect(mark).toBeLessThanOrEqual(1)
          }
        },
      ),
    )
  })

  it('hatches from the loads to the need, or to the unit’s limit', () => {
    const plan = {
      loads: [{ id: 'load-1', quantity: 1, rating: { basis: 'input-watts', watts: 800 } as const }],
      takeTurns: [],
    }
    const { demand, requiredW } = totalsOf({ ...plan, supply: unsure }, setup)
    const open = barGeometry({ demand, takeTurns: [], requiredW })
    expect(open.scaleW).toBe(1500)
    expect(open.headroom).toEqual({ x: 800 / 1500, width: expect.closeTo(200 / 1500, 9) })
    const limited = barGeometry({ demand, takeTurns: [], requiredW, limitW: 1600 })
    expect(limited.scaleW).toBeCloseTo(1696, 9)
    expect(limited.headroom?.width).toBeCloseTo(800 / 1696, 9)
    expect(limited.startingX).toBeNull()
  })

  it('has no headroom left where the loads are beyond the limit', () => {
    const plan = {
      loads: [{ id: 'load-1', quantity: 1, rating: { basis: 'input-watts', watts: 800 } as const }],
      takeTurns: [],
    }
    const { demand, requiredW } = totalsOf({ ...plan, supply: unsure }, setup)
    const bar = barGeometry({ demand, takeTurns: [], requiredW, limitW: 500 })
    expect(bar.headroom).toBeNull()
    expect(bar.limitX ?? 1).toBeLessThan(bar.runningX)
  })
})

const unsure = {
  nominalV: null,
  battery: null,
  chemistry: null,
  capacityAh: null,
  connection: null,
  oneWayLengthM: null,
}

describe('widestPiece', () => {
  const stretch = { x: 0.25, width: 0.5 }

  it('is the stretch itself where no line crosses it', () => {
    expect(widestPiece(stretch, [null, 0.25, 0.75, 0.1])).toEqual(stretch)
  })

  it('lies on the wider side of a line', () => {
    expect(widestPiece(stretch, [0.375])).toEqual({ x: 0.375, width: 0.375 })
    expect(widestPiece(stretch, [0.625])).toEqual({ x: 0.25, width: 0.375 })
  })

  it('lies between two lines where those are furthest apart', () => {
    expect(widestPiece(stretch, [0.6875, 0.3125])).toEqual({ x: 0.3125, width: 0.375 })
  })

  it('never holds a line, and is never narrower than an even share', () => {
    const places = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 4 })
    fc.assert(
      fc.property(places, (lines) => {
        const piece = widestPiece({ x: 0, width: 1 }, lines)
        expect(lines.filter((line) => line > piece.x && line < piece.x + piece.width)).toEqual([])
        expect(piece.width).toBeGreaterThanOrEqual(1 / (lines.length + 1) - 1e-9)
      }),
    )
  })
})

describe('letterOf', () => {
  it('counts on after Z', () => {
    expect([0, 1, 25, 26, 39].map(letterOf)).toEqual(['A', 'B', 'Z', 'AA', 'AN'])
  })
})

describe('curveGeometry', () => {
  const runtime: RuntimeAnswer = {
    hours: 4,
    hoursLow: 3,
    hoursHigh: 5,
    limitedBy: 'state-of-charge',
    usableWh: 600,
    averageA: 12,
    curve: [
      { hours: 0, socFraction: 1, terminalV: 12.7, currentA: 12 },
      { hours: 2, socFraction: 0.75, terminalV: 12.3, currentA: 12 },
      { hours: 4, socFraction: 0.5, terminalV: 11.9, currentA: 12 },
    ],
    findings: [],
  }

  it('marks the end on the curve and its spread on both sides', () => {
    const curve = curveGeometry(runtime)
    expect(curve.end).toEqual({ x: 4 / 5.2, y: 0.5 })
    expect(curve.lowX).toBeCloseTo(3 / 5.2, 9)
    expect(curve.highX).toBeCloseTo(5 / 5.2, 9)
    expect(curve.ticks.map(({ hours }) => hours)).toEqual([0, 1, 2, 3, 4, 5])
  })

  it('never puts more than six marks on the time line, however long it runs', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 900, noNaN: true }), (hours) => {
        const { ticks } = curveGeometry({ ...runtime, hours, hoursLow: hours, hoursHigh: hours })
        expect(ticks.length).toBeGreaterThanOrEqual(1)
        expect(ticks.length).toBeLessThanOrEqual(6)
      }),
    )
  })

  it('turns the path around for languages that read from the right', () => {
    const points = [
      { x: 0, y: 1 },
      { x: 1, y: 0.25 },
    ]
    expect(pathOf(points, false)).toBe('M0 0L1000 750')
    expect(pathOf(points, true)).toBe('M1000 0L0 750')
    expect(pathOf(points.slice(1), false)).toBe('')
  })
})
