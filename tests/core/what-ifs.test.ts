import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changedInputs } from '../../core/inverters/what-ifs/plan-change.ts'
import type { WhatIf } from '../../core/inverters/what-ifs/what-if.ts'
import { whatIfsFor } from '../../core/inverters/what-ifs/what-ifs.ts'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import type { Inverter, RangeDocument } from '../../core/range/range-document.ts'
import { fitFor, OUTCOMES, planFor, type Sizing, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange } from '../support/make.ts'

const inverterArbitrary = fc
  .record({
    continuousW: fc.integer({ min: 100, max: 3500 }),
    surgeRatio: fc.constantFrom(1.2, 2, 2.5),
    surgeS: fc.constantFrom(0.5, 1, 3),
    price: fc.integer({ min: 2000, max: 90_000 }),
    waveform: fc.constantFrom('pure-sine', 'modified-sine'),
    inputNominalV: fc.constantFrom(12, 12, 12, 24),
    connection: fc.constantFrom(
      { kind: 'battery-terminals' },
      { kind: 'battery-terminals' },
      { kind: 'quick-connector' },
    ),
    includes: fc.constantFrom(undefined, undefined, ['LEADS']),
    inStock: fc.constantFrom(true, true, true, false),
  })
  .map(({ surgeRatio, price, ...unit }) => ({
    ...unit,
    surgeW: unit.continuousW * surgeRatio,
    cutOffV: 0.875 * unit.inputNominalV,
    price: (price / 100).toFixed(2),
  }))

const LEADS: RangeDocument['cables'][number] = {
  sku: 'LEADS',
  name: 'A pair of leads',
  price: '20.00',
  inStock: true,
  areaMm2: 16,
  lengthM: 1,
}

const unitsArbitrary = fc
  .array(inverterArbitrary, { minLength: 1, maxLength: 10 })
  .map((drawn) => drawn.map((unit, index) => makeInverter({ sku: `U${index}`, ...unit } as Inverter)))

const rangeOf = (inverters: readonly Inverter[]) => makeRange(inverters, { cables: [LEADS] })

const ratingArbitrary = fc.oneof(
  fc.constant(undefined),
  fc.integer({ min: 20, max: 2500 }).map((watts) => ({ basis: 'input-watts', watts }) as const),
  fc.integer({ min: 50, max: 1500 }).map((watts) => ({ basis: 'motor-output', watts }) as const),
  fc
    .double({ min: 0.2, max: 8, noNaN: true })
    .map((amps) => ({ basis: 'volts-amps', volts: 230, amps }) as const),
)

const loadArbitrary = fc.record({
  appliance: fc.constantFrom(
    'electric-kettle',
    'toaster',
    'laptop',
    'led-lamp',
    'fridge',
    'electric-drill',
    'television',
    undefined,
  ),
  rating: ratingArbitrary,
  quantity: fc.constantFrom(1, 1, 1, 2),
  minutesPerDay: fc.constantFrom(undefined, 5, 30, 600, 1440),
})

const batteryArbitrary = fc.record({
  chemistry: fc.constantFrom('agm', 'flooded', 'lifepo4'),
  capacityAh: fc.integer({ min: 20, max: 400 }),
  hourRateH: fc.constant(20),
})

const inputArbitrary: fc.Arbitrary<SizingInput> = fc
  .record({
    loads: fc.array(loadArbitrary, { minLength: 1, maxLength: 6 }),
    grouped: fc.boolean(),
    battery: fc.option(batteryArbitrary, { nil: undefined, freq: 2 }),
    connection: fc.constantFrom(
      undefined,
      undefined,
      { kind: 'vehicle-socket' },
      { kind: 'quick-connector' },
    ),
    oneWayLengthM: fc.constantFrom(undefined, 0.5, 3, 20),
  })
  .map(({ loads, grouped, battery, connection, oneWayLengthM }) => ({
    loads: loads.map((load, index) => ({
      ...load,
      id: `l${index}`,
      rating:
        load.rating ?? (load.appliance === undefined ? { basis: 'input-watts', watts: 100 } : undefined),
    })),
    takeTurns: grouped && loads.length > 2 ? [['l0', 'l1']] : undefined,
    supply: { nominalV: 12, battery, connection, oneWayLengthM },
    preferences: { inStockOnly: true },
  })) as fc.Arbitrary<SizingInput>

function sized(range: PreparedRange, input: SizingInput): Sizing {
  const planned = planFor(range, input)
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

function whatIfsOf(range: PreparedRange, input: SizingInput): readonly WhatIf[] {
  return whatIfsFor(range, sized(range, input))
}

/** What asking anew says of a what-if: the changed request sized, or the named unit judged. */
function askedAnew(range: PreparedRange, input: SizingInput, { change }: WhatIf): readonly Sizing[] {
  return changedInputs(input, change).map((changed) => {
    if (change.sku === undefined) return sized(range, changed)
    const planned = planFor(range, changed)
    const fit = planned.ok ? fitFor(range, planned.plan, change.sku) : undefined
    if (fit === undefined) throw new Error('the unit is not in the range')
    return fit.own
  })
}

/** A plan of loads that are on for ten minutes each, by their input watts. */
function plan(watts: Readonly<Record<string, number>>, changes: Partial<SizingInput> = {}): SizingInput {
  return {
    loads: Object.entries(watts).map(([id, power]) => ({
      id,
      quantity: 1,
      minutesPerDay: 10,
      rating: { basis: 'input-watts', watts: power },
    })),
    supply: { nominalV: 12 },
    preferences: { inStockOnly: true },
    ...changes,
  }
}

/** Units with these continuous powers, 10 W a unit of money. */
function units(...powers: readonly number[]): readonly Inverter[] {
  return powers.map((continuousW) =>
    makeInverter({ sku: `U${continuousW}`, continuousW, price: (continuousW / 10).toFixed(2) }),
  )
}

function told<K extends WhatIf['kind']>(whatIfs: readonly WhatIf[], kind: K) {
  return whatIfs.filter((whatIf): whatIf is Extract<WhatIf, { kind: K }> => whatIf.kind === kind)
}

describe('whatIfsFor', () => {
  it('promises exactly what asking anew gives', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        for (const whatIf of whatIfsOf(range, input)) {
          seen.add(whatIf.kind)
          const answers = askedAnew(range, input, whatIf)
          expect(answers.map(({ recommended }) => recommended?.inverter.unit.sku)).toEqual(
            whatIf.units.map(({ unit }) => unit.sku),
          )
          if (answers.length === 2) continue
          expect(answers[0]?.outcome).toBe(whatIf.outcome)
          const hours = answers[0]?.battery?.runtime.hours
          expect(hours === undefined).toBe(whatIf.runtimeHours === undefined)
          expect(hours ?? 0).toBeCloseTo(whatIf.runtimeHours ?? 0, 5)
        }
      }),
      { numRuns: 400 },
    )
    expect(seen.size).toBeGreaterThan(4)
  })

  it('tells two changes at once only where nothing fits and no single one comes to as much', () => {
    let pairs = 0
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        const before = sized(range, input)
        const whatIfs = whatIfsFor(range, before)
        const combined = told(whatIfs, 'combined')
        if (combined.length === 0) return
        pairs += 1
        expect(before.recommended).toBeUndefined()
        expect(combined.length).toBeLessThanOrEqual(3)
        const [best] = combined
        for (const single of whatIfs) {
          if (single.kind === 'combined') continue
          expect(OUTCOMES.indexOf(single.outcome)).toBeGreaterThan(OUTCOMES.indexOf(best?.outcome ?? 'fits'))
        }
        for (const { values } of combined) {
          expect(new Set(values.steps.map(({ kind }) => kind)).size).toBe(2)
        }
      }),
      { numRuns: 400 },
    )
    expect(pairs).toBeGreaterThan(15)
  })

  it('never promises of two units more than each part gives by itself', () => {
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        for (const whatIf of told(whatIfsOf(range, input), 'two-units')) {
          const ranks = askedAnew(range, input, whatIf).map(({ outcome }) => OUTCOMES.indexOf(outcome))
          expect(OUTCOMES.indexOf(whatIf.outcome)).toBeGreaterThanOrEqual(Math.max(...ranks))
          const ids = whatIf.change.split?.flatMap(({ loadIds }) => loadIds) ?? []
          expect([...ids].sort()).toEqual(input.loads.map(({ id }) => id).sort())
        }
      }),
      { numRuns: 200 },
    )
  })

  it('tells nothing that is not better: outcome, less to mind, or money', () => {
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        const before = sized(range, input)
        for (const {
          outcome,
          priceDifference,
          units: [unit],
          change,
        } of whatIfsFor(range, before)) {
          const rank = OUTCOMES.indexOf(outcome) - OUTCOMES.indexOf(before.outcome)
          expect(rank).toBeLessThanOrEqual(0)
          const isCheaper = Number(priceDifference) < 0
          const isSmaller =
            (unit?.unit.continuousW ?? 0) < (before.recommended?.inverter.unit.continuousW ?? 0)
          const mindsBefore = before.outcome === 'fits-with-care'
          expect(rank < 0 || isCheaper || isSmaller || mindsBefore).toBe(true)
          expect(change).not.toEqual({})
        }
      }),
      { numRuns: 200 },
    )
  })

  it('comes best first, at most eight, each kind once a unit', () => {
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        const whatIfs = whatIfsOf(range, input)
        expect(whatIfs.length).toBeLessThanOrEqual(8)
        const keys = whatIfs.map(({ kind, values, units: of }) => {
          const steps = kind === 'combined' ? values.steps.map((step) => step.kind) : []
          return [kind, ...steps, ...of.map(({ unit }) => unit.sku)].join()
        })
        expect(new Set(keys).size).toBe(keys.length)
        const ranks = whatIfs.map(({ outcome }) => OUTCOMES.indexOf(outcome))
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
      }),
      { numRuns: 200 },
    )
  })

  it('does not depend on the order of loads or units', () => {
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (drawn, input) => {
        const range = rangeOf(drawn)
        const shuffled = { ...input, loads: [...input.loads].reverse() }
        const mirrored = rangeOf([...drawn].reverse())
        const short = (whatIfs: readonly WhatIf[]) =>
          whatIfs.map(({ kind, outcome, price }) => [kind, outcome, price])
        expect(short(whatIfsOf(mirrored, shuffled))).toEqual(short(whatIfsOf(range, input)))
      }),
      { numRuns: 100 },
    )
  })

  it('lets a kettle and a toaster take turns for the next smaller unit', () => {
    const range = makeRange(units(1500, 2500, 4000))
    const [best] = told(whatIfsOf(range, plan({ kettle: 1200, toaster: 900, laptop: 60 })), 'take-turns')
    expect(best).toMatchObject({
      loadIds: ['kettle', 'toaster'],
      outcome: 'fits',
      price: '250.00',
      priceDifference: '-150.00',
    })
    expect(best?.change).toEqual({ takeTurns: [['kettle', 'toaster']] })
  })

  it('says how large the kettle may be, and what leaving it out buys', () => {
    const whatIfs = whatIfsOf(makeRange(units(1000, 2000)), plan({ kettle: 900, lamp: 100 }))
    expect(told(whatIfs, 'lower-rating')[0]).toMatchObject({
      loadIds: ['kettle'],
      values: { limitW: 700, ratedW: 900 },
      priceDifference: '-100.00',
    })
    expect(told(whatIfs, 'leave-out')[0]).toMatchObject({ loadIds: ['kettle'], price: '100.00' })
  })

  it('splits the loads over two units where none alone will do, and counts both prices', () => {
    const whatIfs = whatIfsOf(makeRange(units(1300)), plan({ kettle: 1000, heater: 900 }))
    expect(told(whatIfs, 'two-units')[0]).toMatchObject({ outcome: 'fits', price: '260.00' })
  })

  it('checks a battery that feeds two units against both at once: each alone may draw what both may not', () => {
    const split = (maxDischargeA: number) => {
      const battery = { chemistry: 'lifepo4', capacityAh: 200, hourRateH: 20, maxDischargeA } as const
      const asked = plan({ kettle: 1000, heater: 900 }, { supply: { nominalV: 12, battery } })
      return told(whatIfsOf(makeRange(units(1300)), asked), 'two-units')
    }
    expect(split(120)).toEqual([])
    expect(split(400)[0]?.outcome).toBe('fits')
  })

  it('offers a pure sine wave with its price where a modified one wants care', () => {
    const range = makeRange([
      makeInverter({ sku: 'M', continuousW: 500, price: '50.00', waveform: 'modified-sine' }),
      makeInverter({ sku: 'P', continuousW: 600, price: '80.00' }),
    ])
    const [pure] = told(whatIfsOf(range, plan({ thing: 200 })), 'pure-sine')
    expect(pure).toMatchObject({ outcome: 'fits', priceDifference: '30.00', change: { sku: 'P' } })
  })

  it('offers a stronger connection where a vehicle socket is too weak', () => {
    const supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } } as const
    const [found] = told(
      whatIfsOf(makeRange(units(600)), plan({ kettle: 300 }, { supply })),
      'other-connection',
    )
    expect(found).toMatchObject({ outcome: 'fits', values: { connection: 'battery-terminals' } })
  })

  it('is content with a quick connector where that carries the whole unit', () => {
    const supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } } as const
    const whatIfs = whatIfsOf(makeRange(units(300)), plan({ fan: 200 }, { supply }))
    expect(told(whatIfs, 'other-connection')[0]).toMatchObject({
      outcome: 'fits',
      values: { connection: 'quick-connector' },
    })
  })

  it('hangs no large unit on a vehicle socket for a load that was made smaller', () => {
    const supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } } as const
    const whatIfs = whatIfsOf(makeRange(units(120, 3000)), plan({ television: 130 }, { supply }))
    expect(told(whatIfs, 'lower-rating').map(({ units: [unit] }) => unit?.unit.sku)).toEqual(['U120'])
  })

  it('asks for no kettle smaller than there are', () => {
    const asked = (watts: number) => ({
      ...plan({}),
      loads: [
        { id: 'kettle', appliance: 'electric-kettle', rating: { basis: 'input-watts', watts } as const },
      ],
    })
    const range = makeRange(units(1500, 2200, 4000))
    expect(range.leastInputsW.get('electric-kettle')).toBe(1690)
    expect(told(whatIfsOf(range, asked(3000)), 'lower-rating').map(({ values }) => values)).toEqual([
      { limitW: 1760, ratedW: 3000 },
    ])
  })

  it('tells nothing that would only move the trouble to the battery', () => {
    const battery = { chemistry: 'agm', capacityAh: 40, hourRateH: 20 } as const
    const asked = plan({ kettle: 2000, toaster: 1500 }, { supply: { nominalV: 12, battery } })
    const range = makeRange(units(2600))
    expect(told(whatIfsOf(range, asked), 'take-turns')).toEqual([])
    const pairs = told(whatIfsOf(range, asked), 'combined')
    expect(pairs.map(({ loadIds }) => loadIds)).toContainEqual(['kettle', 'toaster'])
    for (const { change, cares } of pairs) {
      expect(change.supply?.battery).toBeDefined()
      expect(cares.has('cut-off-while-running')).toBe(false)
    }
  })

  it('adds a battery that lasts to a change that the battery is too small for', () => {
    const battery = { chemistry: 'agm', capacityAh: 80, hourRateH: 20 } as const
    const asked = plan({ kettle: 900, toaster: 700 }, { supply: { nominalV: 12, battery } })
    const whatIfs = whatIfsOf(makeRange(units(1200)), asked)
    expect(whatIfs[0]).toMatchObject({ kind: 'combined', outcome: 'fits' })
    const single = whatIfs.filter(({ kind }) => kind !== 'combined')
    expect(single.length).toBeGreaterThan(0)
    expect(single.every(({ outcome }) => outcome === 'fits-with-care')).toBe(true)
  })

  it('lets loads take turns and makes one smaller where neither alone would do', () => {
    const watts = { kettle: 1100, iron: 800, toaster: 700, lamp: 40, fan: 60 }
    const whatIfs = whatIfsOf(makeRange(units(1200)), plan(watts))
    const pairs = told(whatIfs, 'combined')
    expect(whatIfs).toEqual(pairs)
    const found = pairs.find(({ change }) => change.takeTurns !== undefined && change.rating !== undefined)
    expect(found).toMatchObject({ outcome: 'fits', change: { rating: { loadId: 'kettle', watts: 960 } } })
    expect(found?.priceDifference).toBeUndefined()
  })

  it('connects at the terminals and makes the load smaller where neither alone would do', () => {
    const supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } } as const
    const [pair] = told(whatIfsOf(makeRange(units(2000)), plan({ kettle: 2200 }, { supply })), 'combined')
    expect(pair).toMatchObject({
      outcome: 'fits',
      change: {
        rating: { loadId: 'kettle', watts: 1600 },
        supply: { connection: { kind: 'battery-terminals' } },
      },
    })
  })

  it('goes two steps up in voltage where one does not do', () => {
    const range = makeRange([
      makeInverter({ sku: 'A', continuousW: 500 }),
      makeInverter({ sku: 'B', continuousW: 1500, inputNominalV: 24, cutOffV: 21 }),
      makeInverter({ sku: 'C', continuousW: 3000, inputNominalV: 48, cutOffV: 42 }),
    ])
    const [found] = told(whatIfsOf(range, plan({ kettle: 2200 })), 'higher-voltage')
    expect(found).toMatchObject({ values: { nominalV: 48 }, change: { supply: { nominalV: 48 } } })
  })

  it('leaves the voltage alone where a stronger connection does as much', () => {
    const supply = { nominalV: 12, connection: { kind: 'vehicle-socket' } } as const
    const range = makeRange([
      makeInverter({ sku: 'A', continuousW: 500 }),
      makeInverter({ sku: 'B', continuousW: 500, inputNominalV: 24, cutOffV: 21 }),
    ])
    const whatIfs = whatIfsOf(range, plan({ fan: 200 }, { supply }))
    expect(told(whatIfs, 'other-connection')).toHaveLength(1)
    expect(told(whatIfs, 'higher-voltage')).toEqual([])
  })

  it('offers larger wire in place of leads that are too thin, and a shorter way where they are too short', () => {
    const unit = makeInverter({ sku: 'U', continuousW: 2000, includes: ['LEADS'] })
    const range = makeRange([unit], { cables: [LEADS] })
    const thin = whatIfsOf(range, plan({ kettle: 1500 }, { supply: { nominalV: 12, oneWayLengthM: 1 } }))
    expect(told(thin, 'larger-wire')[0]?.outcome).toBe('fits')
    const small = makeRange([makeInverter({ sku: 'S', continuousW: 200, includes: ['LEADS'] })], {
      cables: [LEADS],
    })
    const far = whatIfsOf(small, plan({ lamp: 100 }, { supply: { nominalV: 12, oneWayLengthM: 3 } }))
    expect(told(far, 'shorter-cable')[0]).toMatchObject({ outcome: 'fits', values: { oneWayLengthM: 1 } })
  })

  it('offers a higher voltage where only a unit for that is large enough, with a battery of as much energy', () => {
    const range = makeRange([
      makeInverter({ sku: 'A', continuousW: 500 }),
      makeInverter({ sku: 'B', continuousW: 2500, inputNominalV: 24, cutOffV: 21 }),
    ])
    const battery = { chemistry: 'lifepo4', capacityAh: 400, hourRateH: 20 } as const
    const [found] = told(
      whatIfsOf(range, plan({ kettle: 1800 }, { supply: { nominalV: 12, battery } })),
      'higher-voltage',
    )
    expect(found?.units[0]?.unit.sku).toBe('B')
    expect(found?.change.supply).toMatchObject({ nominalV: 24, battery: { capacityAh: 200 } })
  })

  it('offers a larger battery and another chemistry where the battery is too small', () => {
    const battery = { chemistry: 'agm', capacityAh: 70, hourRateH: 20 } as const
    const asked = plan({ kettle: 800 }, { supply: { nominalV: 12, battery } })
    const range = makeRange(units(1000))
    const before = sized(range, asked)
    const whatIfs = whatIfsFor(range, before)
    const [larger] = told(whatIfs, 'larger-battery')
    expect(larger?.change.supply?.battery?.capacityAh).toBeGreaterThan(70)
    expect(larger?.runtimeHours).toBeGreaterThan(before.battery?.runtime.hours ?? 0)
    expect(told(whatIfs, 'other-chemistry')[0]?.values).toEqual({ chemistry: 'lifepo4' })
  })

  it('asks for a gentler start where nothing else is too much', () => {
    const asked = plan({ pump: 400 })
    const loads = asked.loads.map((load) => ({ ...load, start: { startingW: 2400, durationS: 1 } }))
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 800, surgeW: 1600 })])
    const [found] = told(whatIfsOf(range, { ...asked, loads }), 'soft-start')
    expect(found).toMatchObject({ loadIds: ['pump'], values: { limitW: 1600, startingW: 2400 } })
  })

  it('says which load to leave out where the shop does not advise it', () => {
    const asked: SizingInput = {
      ...plan({ lamp: 20 }),
      loads: [
        { id: 'lamp', appliance: 'led-lamp', quantity: 1 },
        { id: 'drill', appliance: 'electric-drill', quantity: 1 },
      ],
    }
    const base = makeRange(units(500, 3000))
    const { category } = base.appliances.get('electric-drill') ?? {}
    const shop = { ...base.document.shop, policy: { notAdvised: category === undefined ? [] : [category] } }
    const range = makeRange(units(500, 3000), { shop })
    expect(sized(range, asked).outcome).toBe('not-advised')
    expect(told(whatIfsOf(range, asked), 'leave-out')[0]).toMatchObject({ loadIds: ['drill'] })
  })

  it('has nothing to say of the smallest unit that simply fits', () => {
    expect(whatIfsOf(makeRange(units(500, 1000)), plan({ lamp: 20 }))).toEqual([])
  })
})
