import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../core/inverters/choose.ts'
import { needOf } from '../../core/inverters/need.ts'
import { fewestTurns, turningOf } from '../../core/inverters/what-ifs/fewest-turns.ts'
import { demandOf } from '../../core/loads/demand.ts'
import type { Load } from '../../core/loads/load.ts'
import type { PreparedInverter } from '../../core/range/prepare-range.ts'
import type { Inverter } from '../../core/range/range-document.ts'
import type { Plan } from '../../core/sizing.ts'
import { makeInverter, makeLoad, makeNeed, makeRange } from '../support/make.ts'

const loadArbitrary = fc
  .record({
    runningW: fc.integer({ min: 1, max: 900 }),
    quantity: fc.constantFrom(1, 1, 1, 2),
    startFactor: fc.constantFrom(1, 1, 2, 5),
    startingS: fc.constantFrom(0.5, 2),
    powerFactor: fc.constantFrom(1, 0.6),
    minutesPerDay: fc.constantFrom(5, 60, 500, 900, 1440),
    medical: fc.constantFrom(false, false, false, false, true),
  })
  .map(({ startFactor, powerFactor, startingS, ...load }) => ({
    ...load,
    runningVA: load.runningW / powerFactor,
    startingW: load.runningW * startFactor,
    startingS: startFactor > 1 ? startingS : 0,
  }))

const unitArbitrary = fc.record({
  continuousW: fc.integer({ min: 200, max: 4000 }),
  surgeRatio: fc.constantFrom(1.1, 2),
  surgeS: fc.constantFrom(1, 3),
  connection: fc.constantFrom({ kind: 'battery-terminals' }, { kind: 'quick-connector', limitA: 80 }),
})

function planOf(drawn: readonly Partial<Load>[], takeTurns: Plan['input']['takeTurns']): Plan {
  const loads = drawn.map((load, index) => makeLoad({ ...load, id: `l${index}` }))
  const need = makeNeed(loads, takeTurns === undefined ? {} : { takeTurns })
  const input = { loads: [], takeTurns, preferences: { inStockOnly: true } }
  return { input, need, demand: need.demand, assumptions: [] }
}

function unitOf({ surgeRatio, ...unit }: { surgeRatio: number; continuousW: number }): PreparedInverter {
  const made = makeInverter({ sku: 'U', ...unit, surgeW: surgeRatio * unit.continuousW } as Inverter)
  const [prepared] = makeRange([made]).inverters
  if (prepared === undefined) throw new Error('no unit')
  return prepared
}

function fitsWith({ need, demand }: Plan, unit: PreparedInverter, groups: readonly (readonly string[])[]) {
  return judge(unit, needOf(demandOf(demand.loads, groups), need)).fits
}

/** Sizes of all sets of blocks that make the unit fit when they take turns, by trying every one. */
function bruteForce({ need, demand, input }: Plan, unit: PreparedInverter): readonly number[] {
  const existing = input.takeTurns ?? []
  const single = demand.loads.filter(({ id }) => !existing.flat().includes(id)).map(({ id }) => [id])
  const blocks = [...existing, ...single]
  const byId = new Map(demand.loads.map((load) => [load.id, load]))
  const sizes: number[] = []
  for (let mask = 1; mask < 1 << blocks.length; mask += 1) {
    const chosen = blocks.filter((_, index) => (mask & (1 << index)) !== 0)
    if (chosen.length < 2) continue
    const loads = chosen.flat().flatMap((id) => byId.get(id) ?? [])
    const minutes = loads.reduce((sum, load) => sum + load.minutesPerDay, 0)
    const wholeDay = chosen.some(
      (ids) => ids.reduce((sum, id) => sum + (byId.get(id)?.minutesPerDay ?? 0), 0) >= 1440,
    )
    if (minutes > 1440 || wholeDay || loads.some(({ medical }) => medical)) continue
    const others = existing.filter((group) => !chosen.includes(group))
    const groups = [...others, chosen.flat()]
    if (judge(unit, needOf(demandOf(demand.loads, groups), need)).fits) sizes.push(chosen.length)
  }
  return sizes
}

describe('fewestTurns', () => {
  it('finds what trying every subset of up to ten loads finds', () => {
    fc.assert(
      fc.property(
        fc.array(loadArbitrary, { minLength: 1, maxLength: 10 }),
        unitArbitrary,
        fc.boolean(),
        (drawn, unit, grouped) => {
          const plan = planOf(drawn, grouped && drawn.length > 2 ? [['l0', 'l1']] : undefined)
          const inverter = unitOf(unit)
          if (judge(inverter, plan.need).fits) return
          const found = fewestTurns(turningOf(plan), inverter)
          const sizes = bruteForce(plan, inverter)
          expect(found?.size).toBe(sizes.length === 0 ? undefined : Math.min(...sizes))
          if (found !== undefined) expect(fitsWith(plan, inverter, found.groups)).toBe(true)
        },
      ),
      { numRuns: 400 },
    )
  })

  it('is minimal: with any one load let off, the unit does no more', () => {
    fc.assert(
      fc.property(fc.array(loadArbitrary, { minLength: 3, maxLength: 9 }), unitArbitrary, (drawn, unit) => {
        const plan = planOf(drawn, undefined)
        const inverter = unitOf(unit)
        if (judge(inverter, plan.need).fits) return
        const found = fewestTurns(turningOf(plan), inverter)
        for (const id of found?.loadIds ?? []) {
          const rest = found?.loadIds.filter((kept) => kept !== id) ?? []
          expect(fitsWith(plan, inverter, [rest])).toBe(false)
        }
      }),
    )
  })

  it('takes the loads that run for the shortest time among equally small sets', () => {
    const plan = planOf(
      [
        { runningW: 500, minutesPerDay: 300 },
        { runningW: 500, minutesPerDay: 10 },
        { runningW: 500, minutesPerDay: 5 },
      ],
      undefined,
    )
    const unit = unitOf({ continuousW: 1250, surgeRatio: 2 })
    expect(fewestTurns(turningOf(plan), unit)?.loadIds).toEqual(['l1', 'l2'])
  })

  it('lets no medical device and nothing that is on all day take turns', () => {
    const plan = planOf(
      [
        { runningW: 500, medical: true },
        { runningW: 500, minutesPerDay: 1440 },
        { runningW: 500, minutesPerDay: 10 },
      ],
      undefined,
    )
    expect(fewestTurns(turningOf(plan), unitOf({ continuousW: 1250, surgeRatio: 2 }))).toBeUndefined()
  })

  it('still finds a set that fits, with nothing needless in it, in the longest list', () => {
    const plan = planOf(
      Array.from({ length: 40 }, (_, index) => ({ runningW: 90 + ((index * 37) % 61), minutesPerDay: 10 })),
      undefined,
    )
    const inverter = unitOf({ continuousW: 3100, surgeRatio: 2 })
    const found = fewestTurns(turningOf(plan), inverter)
    expect(found !== undefined && fitsWith(plan, inverter, found.groups)).toBe(true)
    for (const id of found?.loadIds ?? []) {
      const rest = found?.loadIds.filter((kept) => kept !== id) ?? []
      expect(fitsWith(plan, inverter, [rest])).toBe(false)
    }
  })
})
