import { describe, expect, it } from 'vitest'
import type { BatteryChemistry } from '../../core/range/vocabulary.ts'
import { planFor, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange } from '../support/make.ts'

// Every figure of this file: common practice, no published source.

const units = [600, 1000, 1500, 2000, 2500, 3000].map((continuousW) =>
  makeInverter({
    sku: `P${continuousW}`,
    continuousW,
    surgeW: 2 * continuousW,
    efficiencyFullFraction: 0.88,
  }),
)

function microwave(minutesPerDay: number, capacityAh: number, chemistry: BatteryChemistry = 'agm') {
  return answer({
    loads: [
      { id: 'm', appliance: 'microwave-oven', rating: { basis: 'input-watts', watts: 1200 }, minutesPerDay },
    ],
    supply: { nominalV: 12, battery: { chemistry, capacityAh }, oneWayLengthM: 1 },
  })
}

function answer(input: Omit<SizingInput, 'preferences'>) {
  const range = makeRange(units)
  const planned = planFor(range, { ...input, preferences: { inStockOnly: true } })
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

const codesOf = (sizing: ReturnType<typeof answer>) =>
  sizing.battery?.findings.map((found) => found.code) ?? []

describe('common practice, no published source', () => {
  it.each([
    [5, 'agm'],
    [10, 'agm'],
    [5, 'flooded'],
    [10, 'flooded'],
  ] as const)('a 1200 W microwave for %i minutes is fine on a 120 Ah %s battery', (minutes, chemistry) => {
    const sizing = microwave(minutes, 120, chemistry)
    expect(codesOf(sizing)).toContain('occasional-use')
    expect(codesOf(sizing)).not.toContain('runs-too-long')
    expect(sizing.battery?.day.ok).toBe(true)
  })

  it('a catering day of it is not, and the answer says what bank that takes', () => {
    const sizing = microwave(360, 120)
    const found = sizing.battery?.findings.find(({ code }) => code === 'runs-too-long')
    expect(found?.values).toMatchObject({ neededCapacityAh: expect.any(Number) })
    expect(sizing.battery?.day.ok).toBe(false)
    expect(sizing.neededBank?.size.capacityAh).toBeGreaterThan(1000)
    expect(sizing.outcome).toBe('fits-with-care')
  })

  it('where the battery fails the unit stays the same: the answer names the battery', () => {
    const large = microwave(360, 2000)
    const small = microwave(360, 120)
    expect(small.recommended?.inverter.unit.sku).toBe(large.recommended?.inverter.unit.sku)
  })

  it('running a microwave for hours flattens the battery', () => {
    const { battery } = microwave(120, 120)
    expect(battery?.runtime.hours).toBeLessThan(1)
    expect(battery?.day.socLeftFraction).toBeCloseTo(0.5, 6)
    expect(battery?.day.ok).toBe(false)
  })

  it('from 1000 W on a long cable loses power: it must be far thicker than a short one', () => {
    const at = (oneWayLengthM: number) => {
      const { circuit } = answer({
        loads: [{ id: 'a', rating: { basis: 'input-watts', watts: 800 } }],
        supply: { nominalV: 12, oneWayLengthM },
      })
      if (!circuit?.design.ok) throw new Error('there is no circuit')
      return circuit.design.conductor
    }
    expect(at(6).areaMm2 * at(6).parallelPairs).toBeGreaterThan(2 * at(1).areaMm2)
  })

  it('a kettle, a heater or a fridge takes more from the battery in a day than a laptop, a phone or a lamp', () => {
    const energyWh = (appliance: string) =>
      answer({ loads: [{ id: 'a', appliance }] }).plan.demand.energyWhPerDay
    const small = ['phone-charger', 'led-lamp', 'router'].map(energyWh)
    for (const hungry of ['electric-kettle', 'fan-heater', 'fridge', 'slow-cooker']) {
      expect(energyWh(hungry), hungry).toBeGreaterThan(Math.max(...small))
    }
  })
})
