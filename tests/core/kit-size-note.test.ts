import { describe, expect, it } from 'vitest'
import type { KitLine } from '../../core/range/kit/kit-types.ts'
import { kitOf, type SizingInput } from '../../core/sizing.ts'
import {
  DEMO_SHOPS,
  demoRange,
  kitFrom,
  lineOf,
  makeCable as makeAny,
  makeFuse,
  sized,
} from '../support/kits.ts'
import { makeInverter, makeRange } from '../support/make.ts'

const makeCable: typeof makeAny = (sku, changes) => makeAny(sku, { lengthM: 1, ...changes })

/**
 * 105.8 A at worst from a 1000 W unit: 132.3 A at least, so a fuse of 150 A. ISO 10133, Table A.1 (memory): 25 mm2
 * carries 170 A at 105 degC and 120 A at 70; 35 mm2 160 A at 70; 95 mm2 165 A at 60.
 */
const unit = makeInverter({ sku: 'U1000', price: '200.00' })
const input: SizingInput = {
  loads: [{ id: 'w', quantity: 1, minutesPerDay: 30, rating: { basis: 'input-watts', watts: 600 } }],
  supply: { nominalV: 12, oneWayLengthM: 1, battery: { chemistry: 'agm', capacityAh: 400 } },
  preferences: { inStockOnly: true },
}
const noteOf = (cable: KitLine['sku'], parts: Parameters<typeof makeRange>[1], unitOf = unit) => {
  const line = lineOf(kitFrom(makeRange([unitOf], parts), input), 'cable')
  expect(line.sku).toBe(cable)
  return line.note
}

describe('the note on a cable of another size than the circuit’s', () => {
  it('is absent where both are of one size', () => {
    expect(noteOf('C35', { cables: [makeCable('C35', { insulationC: 75 })], fuses: [makeFuse('F')] })).toBe(
      undefined,
    )
    expect(noteOf(undefined, { cables: [], fuses: [makeFuse('F')] })).toBe(undefined)
  })

  it('names both insulation temperatures where a hotter one lets less copper do', () => {
    const cables = [makeCable('C25', { areaMm2: 25, insulationC: 105 })]
    expect(noteOf('C25', { cables, fuses: [makeFuse('F')] })).toEqual({
      code: 'hotter-insulation',
      values: { size: '25 mm²', insulationC: 105, otherSize: '35 mm²', otherInsulationC: 75 },
    })
  })

  it('names both where a cooler one asks for more copper', () => {
    const cables = [
      makeCable('C35', { areaMm2: 35, insulationC: 60 }),
      makeCable('C95', { areaMm2: 95, insulationC: 60 }),
    ]
    expect(noteOf('C95', { cables, fuses: [makeFuse('F')] })).toEqual({
      code: 'cooler-insulation',
      values: { size: '95 mm²', insulationC: 60, otherSize: '35 mm²', otherInsulationC: 75 },
    })
  })

  it('says that it is more than need be where the range holds no thinner one', () => {
    const cables = [makeCable('C95', { areaMm2: 95, insulationC: 75 })]
    expect(noteOf('C95', { cables, fuses: [makeFuse('F')] })).toEqual({
      code: 'next-size-we-have',
      values: { size: '95 mm²', otherSize: '35 mm²' },
    })
  })

  it('names the fuse where a smaller one than standard lets less copper do', () => {
    // 154.8 A at least: 175 A is the next standard rating, and 50 mm2 the next size for that.
    const larger = makeInverter({ sku: 'U1170', price: '200.00', continuousW: 1170, surgeW: 2340 })
    const cables = [makeCable('C35', { insulationC: 75 })]
    const fuses = [makeFuse('F160', { ratingA: 160 })]
    expect(noteOf('C35', { cables, fuses }, larger)).toEqual({
      code: 'smaller-fuse',
      values: { size: '35 mm²', ratingA: 160, otherSize: '50 mm²', otherRatingA: 175 },
    })
  })

  it('compares with the leads to lay instead where those in the box are too thin', () => {
    const cables = [
      makeCable('BOX', { areaMm2: 10, lengthM: 1, insulationC: 75 }),
      makeCable('C95', { areaMm2: 95, insulationC: 75 }),
    ]
    const boxed = makeInverter({ sku: 'U1000', price: '200.00', includes: ['BOX'] })
    expect(noteOf('C95', { cables, fuses: [makeFuse('F')] }, boxed)).toMatchObject({
      values: { size: '95 mm²', otherSize: '35 mm²' },
    })
  })
})

describe.each(DEMO_SHOPS)('kits of %s', (shopId) => {
  const range = demoRange(shopId)
  const cases = [300, 700, 1200, 1900, 2600].flatMap((watts) =>
    ([12, 24] as const).flatMap((nominalV) =>
      [undefined, 1, 3].map((oneWayLengthM) => ({ watts, nominalV, oneWayLengthM })),
    ),
  )

  it('never name another size than the circuit without a reason', () => {
    let apart = 0
    for (const { watts, nominalV, oneWayLengthM } of cases) {
      const sizing = sized(range, {
        loads: [{ id: 'w', quantity: 1, minutesPerDay: 30, rating: { basis: 'input-watts', watts } }],
        supply: { nominalV, oneWayLengthM },
        preferences: { inStockOnly: true },
      })
      const line = kitOf(range, sizing)?.lines.find(({ role }) => role === 'cable')
      const design = sizing.circuit?.design
      if (line?.sku === undefined || design === undefined || !design.ok) continue
      const part = range.document.cables.find(({ sku }) => sku === line.sku)
      const { areaMm2, awg, parallelPairs } = design.conductor
      const same =
        line.quantity === parallelPairs && (awg === undefined ? part?.areaMm2 === areaMm2 : part?.awg === awg)
      const told = line.note !== undefined || line.reason.code === 'box-unsuitable'
      expect(same || told, JSON.stringify({ line, conductor: design.conductor })).toBe(true)
      if (same) expect(line.note).toBe(undefined)
      else apart += 1
    }
    expect(apart).toBeGreaterThan(3)
  })
})
