import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkInverter } from '../../core/inverters/checks.ts'
import { chooseInverter, judge } from '../../core/inverters/choose.ts'
import { demandOf } from '../../core/loads/demand.ts'
import type { Load } from '../../core/loads/load.ts'
import type { Inverter } from '../../core/range/range-document.ts'
import { makeInverter, makeLoad, makeNeed, makeRange } from '../support/make.ts'

const inverterArbitrary = fc
  .record({
    continuousW: fc.integer({ min: 50, max: 5000 }),
    surgeRatio: fc.constantFrom(1, 1.5, 2, 2.5),
    surgeS: fc.constantFrom(0.5, 1, 3, 5),
    price: fc.integer({ min: 10, max: 900 }),
    waveform: fc.constantFrom('pure-sine', 'modified-sine'),
    inputNominalV: fc.constantFrom(12, 24),
    inStock: fc.boolean(),
    idleW: fc.option(fc.integer({ min: 1, max: 30 }), { nil: undefined }),
  })
  .map(({ surgeRatio, price, ...unit }) => ({
    ...unit,
    surgeW: unit.continuousW * surgeRatio,
    price: `${price}.00`,
  }))

const rangeArbitrary = fc
  .array(inverterArbitrary, { minLength: 1, maxLength: 12 })
  .map((units) => units.map((unit, index) => makeInverter({ sku: `U${index}`, ...unit } as Inverter)))

const loadsArbitrary = fc
  .array(
    fc.record({
      runningW: fc.integer({ min: 1, max: 900 }),
      quantity: fc.integer({ min: 1, max: 3 }),
      startFactor: fc.constantFrom(1, 1, 2, 5),
      waveform: fc.constantFrom('either', 'pure-sine-advised', 'pure-sine-required'),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((drawn) =>
    drawn.map(({ startFactor, ...load }, index) =>
      makeLoad({
        id: `l${index}`,
        ...load,
        startingW: load.runningW * startFactor,
        startingS: startFactor > 1 ? 1 : 0,
      } as Load),
    ),
  )

function chosenUnit(inverters: readonly Inverter[], loads: readonly Load[]): Inverter | undefined {
  const { verdicts, chosen } = chooseInverter(makeRange(inverters).inverters, makeNeed(loads))
  return verdicts[chosen]?.inverter.unit
}

function codesOf(unit: Partial<Inverter>, need: ReturnType<typeof makeNeed>): readonly string[] {
  const [prepared] = makeRange([makeInverter({ sku: 'U', ...unit })]).inverters
  return prepared === undefined ? [] : checkInverter(prepared, need).map((found) => found.code)
}

describe('checkInverter', () => {
  const load800 = [makeLoad({ id: 'a', runningW: 800 })]

  it.each([
    { of: 'exactly enough continuous power', unit: { continuousW: 1000 }, codes: [] },
    { of: 'one watt too little', unit: { continuousW: 999 }, codes: ['continuous-power-short'] },
    { of: 'too few volt-amperes', unit: { continuousVA: 799 }, codes: ['apparent-power-short'] },
    { of: 'a 24 V input', unit: { inputNominalV: 24 }, codes: ['input-voltage-mismatch'] },
    { of: 'a 120 V output', unit: { outputV: 120 }, codes: ['output-voltage-mismatch'] },
    { of: 'a 240 V output, which 230 V things take', unit: { outputV: 240 }, codes: [] },
    { of: 'a 60 Hz output', unit: { outputHz: 60 }, codes: ['output-frequency-mismatch'] },
    { of: 'an empty shelf', unit: { inStock: false }, codes: ['out-of-stock'] },
    { of: 'no outlet', unit: { outlets: 0 }, codes: ['outlets-short'] },
    {
      of: 'a vehicle socket',
      unit: { connection: { kind: 'vehicle-socket' } },
      codes: ['connection-limit'],
    },
    {
      of: 'a connector for exactly this load and no more',
      unit: { connection: { kind: 'quick-connector', limitA: 85 } },
      codes: ['connection-below-full-power'],
    },
  ] as const)('finds $codes in a unit with $of', ({ unit, codes }) => {
    expect(codesOf(unit, makeNeed(load800))).toEqual(codes)
  })

  it('holds a start against surge power and its duration', () => {
    const need = makeNeed([makeLoad({ id: 'm', runningW: 500, startingW: 1500, startingS: 2 })])
    expect(codesOf({ surgeW: 1500, surgeS: 2 }, need)).toEqual([])
    expect(codesOf({ surgeW: 1499, surgeS: 2 }, need)).toEqual(['starting-power-short'])
    expect(codesOf({ surgeW: 1500, surgeS: 1.9 }, need)).toEqual(['surge-time-short'])
    expect(codesOf({ continuousW: 1500, surgeW: 1500, surgeS: 0 }, need)).toEqual([])
  })

  it('finds a long start that fits the surge power behind a short one that is larger', () => {
    const need = makeNeed([
      makeLoad({ id: 'short', runningW: 100, startingW: 1000, startingS: 0.5 }),
      makeLoad({ id: 'long', runningW: 100, startingW: 950, startingS: 4 }),
    ])
    expect(codesOf({ continuousW: 800, surgeW: 1600, surgeS: 1 }, need)).toEqual(['surge-time-short'])
  })

  it('rules a modified sine wave out or asks for care, by the load', () => {
    const unit = { waveform: 'modified-sine' } as const
    const with_ = (waveform: Load['waveform']) => makeNeed([makeLoad({ id: 'a', waveform })])
    expect(codesOf(unit, with_('either'))).toEqual([])
    expect(codesOf(unit, with_('pure-sine-advised'))).toEqual(['wave-form-care'])
    expect(codesOf(unit, with_('pure-sine-required'))).toEqual(['wave-form-unsuitable'])
  })

  it('heeds wishes: features and price', () => {
    const need = makeNeed(load800, {
      preferences: { inStockOnly: false, maxPrice: '99.99', features: ['display'] },
    })
    expect(codesOf({ inStock: false }, need)).toEqual(['feature-missing', 'over-price'])
    expect(codesOf({ features: ['display'], price: '99.99' }, need)).toEqual([])
  })

  it("keeps to the shop's policy of what is not advised", () => {
    const loads = [makeLoad({ id: 'ac', category: 'air-conditioning' })]
    expect(codesOf({}, makeNeed(loads, { policy: { notAdvised: ['air-conditioning'] } }))).toEqual([
      'not-advised',
    ])
    expect(codesOf({}, makeNeed(loads))).toEqual([])
  })

  it('takes the weaker of the connection of the unit and that of the buyer', () => {
    const need = makeNeed([makeLoad({ id: 'a', runningW: 600 })], {
      supply: { nominalV: 12, connection: { kind: 'vehicle-socket' } },
    })
    const [prepared] = makeRange([makeInverter({ sku: 'U' })]).inverters
    const [found] = prepared === undefined ? [] : checkInverter(prepared, need)
    expect(found?.code).toBe('connection-limit')
    expect(found?.values).toMatchObject({ kind: 'vehicle-socket', limitA: 10, limitW: 94.5 })
  })
})

describe('chooseInverter', () => {
  it('prefers the lower price, then the lower idle draw, then the SKU, at equal power', () => {
    const loads = [makeLoad({ id: 'a' })]
    const unit = (sku: string, price: string, idleW: number) => makeInverter({ sku, price, idleW })
    expect(chosenUnit([unit('B', '90', 9), unit('A', '95', 5)], loads)?.sku).toBe('B')
    expect(chosenUnit([unit('B', '90', 9), unit('A', '90', 10)], loads)?.sku).toBe('B')
    expect(chosenUnit([unit('B', '90', 9), unit('A', '90', 9)], loads)?.sku).toBe('A')
  })

  it('never recommends a smaller unit for more load', () => {
    fc.assert(
      fc.property(
        rangeArbitrary,
        loadsArbitrary,
        fc.integer({ min: 1, max: 2000 }),
        (range, loads, extraW) => {
          const before = chosenUnit(range, loads)
          const after = chosenUnit(range, [...loads, makeLoad({ id: 'extra', runningW: extraW })])
          if (after !== undefined) expect(before?.continuousW).toBeLessThanOrEqual(after.continuousW)
        },
      ),
    )
  })

  it('never chooses a larger unit because a smaller one that fits joins the range', () => {
    fc.assert(
      fc.property(rangeArbitrary, inverterArbitrary, loadsArbitrary, (range, unit, loads) => {
        const before = chosenUnit(range, loads)
        const joined = makeInverter({ sku: 'NEW', ...unit } as Inverter)
        const after = chosenUnit([...range, joined], loads)
        if (before !== undefined) expect(after?.continuousW).toBeLessThanOrEqual(before.continuousW)
      }),
    )
  })

  it('recommends only units that pass every check on their own', () => {
    fc.assert(
      fc.property(rangeArbitrary, loadsArbitrary, (range, loads) => {
        const chosen = chosenUnit(range, loads)
        if (chosen === undefined) return
        const [alone] = makeRange([chosen]).inverters
        expect(alone !== undefined && judge(alone, makeNeed(loads)).fits).toBe(true)
      }),
    )
  })

  it('leaves no smaller fitting unit beside its choice', () => {
    fc.assert(
      fc.property(rangeArbitrary, loadsArbitrary, (range, loads) => {
        const need = makeNeed(loads)
        const fitting = makeRange(range).inverters.filter((inverter) => judge(inverter, need).fits)
        const smallest = Math.min(...fitting.map(({ unit }) => unit.continuousW))
        const chosen = chosenUnit(range, loads)
        expect(chosen?.continuousW ?? Number.POSITIVE_INFINITY).toBe(smallest)
      }),
    )
  })

  it('answers alike whatever the order of loads and of the range', () => {
    fc.assert(
      fc.property(rangeArbitrary, loadsArbitrary, (range, loads) => {
        const forward = chosenUnit(range, loads)
        const backward = chosenUnit([...range].reverse(), [...loads].reverse())
        expect(backward?.sku).toBe(forward?.sku)
      }),
    )
  })

  it('never grows by putting loads into a take-turns group', () => {
    fc.assert(
      fc.property(rangeArbitrary, loadsArbitrary, (range, loads) => {
        const prepared = makeRange(range).inverters
        const group = loads.slice(0, 2).map((load) => load.id)
        const turned = makeNeed(loads, { demand: demandOf(loads, [group]) })
        const before = chooseInverter(prepared, makeNeed(loads))
        const after = chooseInverter(prepared, turned)
        if (before.chosen >= 0) expect(after.chosen).toBeLessThanOrEqual(before.chosen)
      }),
    )
  })
})
