import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { COMBINATIONS } from '../../core/range/coverage/combinations.ts'
import { compareCoverage } from '../../core/range/coverage/compare.ts'
import { coverageOf, coverageSteps } from '../../core/range/coverage/coverage.ts'
import { everydayPlans, inputOf } from '../../core/range/coverage/everyday-plans.ts'
import { cableFaults, laidCable, mostPairs } from '../../core/range/kit/cables.ts'
import { circuitNeed, fusePlace } from '../../core/range/kit/circuit-need.ts'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import type { Inverter, RangeCable, RangeFuse } from '../../core/range/range-document.ts'
import { planFor, type Sizing, sizeFor } from '../../core/sizing.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { fuseSuits } from '../../core/wiring/fuse-suits.ts'
import { makeInverter, makeRange, TEST_SHOP } from '../support/make.ts'

const IN_STOCK = { inStockOnly: true } as const

const inverterArb = fc
  .record({
    continuousW: fc.integer({ min: 100, max: 4000 }),
    surgeMultiple: fc.constantFrom(1, 1.5, 2, 3),
    surgeS: fc.constantFrom(0.2, 1, 5),
    waveform: fc.constantFrom('pure-sine' as const, 'modified-sine' as const),
    inputNominalV: fc.constantFrom(12 as const, 24 as const),
    inStock: fc.boolean(),
    outputV: fc.constantFrom(230, 230, 230, 120),
    kind: fc.constantFrom(
      'vehicle-socket' as const,
      'quick-connector' as const,
      'battery-terminals' as const,
    ),
  })
  .map(({ surgeMultiple, kind, ...rest }) => ({
    ...rest,
    surgeW: Math.ceil(rest.continuousW * surgeMultiple),
    cutOffV: 0.875 * rest.inputNominalV,
    connection: { kind },
  }))

const unitsArb = fc
  .array(inverterArb, { minLength: 1, maxLength: 6 })
  .map((units) => units.map((unit, index) => makeInverter({ sku: `U${index}`, ...unit })))

/** The engine's own answer to a plan at a voltage: what a shopper who asks for just that is told. */
function asked(range: PreparedRange, input: ReturnType<typeof inputOf>, nominalV: 12 | 24): Sizing {
  const planned = planFor(range, { ...input, supply: { nominalV } })
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

function increment(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1)
}

describe('the everyday plans', () => {
  const known = new Set(BUILT_IN_APPLIANCES.map(({ id }) => id))

  it('are forty combinations of listed appliances, each told once in plain words', () => {
    expect(COMBINATIONS).toHaveLength(40)
    expect(new Set(COMBINATIONS.map(({ id }) => id)).size).toBe(40)
    expect(new Set(COMBINATIONS.map(({ name }) => name)).size).toBe(40)
    for (const { id, name, loads, takeTurns = [] } of COMBINATIONS) {
      expect(loads.length, id).toBeGreaterThan(1)
      expect(name.length, id).toBeGreaterThan(10)
      expect(
        loads.filter(({ appliance }) => !known.has(appliance)),
        id,
      ).toEqual([])
      expect(new Set(loads.map(({ appliance }) => appliance)).size, id).toBe(loads.length)
      const inPlan = new Set(loads.map(({ appliance }) => appliance))
      for (const group of takeTurns) {
        expect(group.length, id).toBeGreaterThan(1)
        expect(
          group.every((each) => inPlan.has(each)),
          id,
        ).toBe(true)
      }
    }
  })

  it('hold every appliance of the list by itself, a shop’s own too', () => {
    const own = { ...BUILT_IN_APPLIANCES[0], id: 'own-thing', name: 'Own thing' }
    const range = makeRange([makeInverter({ sku: 'A' })], {
      shop: { ...TEST_SHOP, appliances: [own as (typeof BUILT_IN_APPLIANCES)[number]] },
    })
    const alone = everydayPlans(range).filter(({ kind }) => kind === 'appliance')
    expect(alone.map(({ id }) => id).sort()).toEqual([...known, 'own-thing'].sort())
  })
})

describe('coverage of a range', () => {
  it('is, plan by plan and voltage by voltage, what the engine answers', () => {
    fc.assert(
      fc.property(unitsArb, fc.boolean(), (units, inStockOnly) => {
        const range = makeRange(units)
        const coverage = coverageOf(range, { inStockOnly })
        const voltages = [12, 24].filter((volts) =>
          range.inverters.some(({ unit }) => unit.inputNominalV === volts),
        )
        expect(coverage.voltages).toEqual(voltages)
        expect(coverage.plans).toHaveLength(everydayPlans(range).length)
        const recommended = new Map<string, number>()
        const fits = new Map<string, number>()
        const shadows = new Map<string, Map<string, number>>()
        const gaps = new Map<string, string[]>()
        for (const { plan, answers } of coverage.plans) {
          expect(answers.map(({ nominalV }) => nominalV)).toEqual(voltages)
          for (const answer of answers) {
            const sizing = asked(range, inputOf(plan, inStockOnly), answer.nominalV as 12 | 24)
            const unit = sizing.recommended?.inverter.unit
            const { requiredContinuousW } = sizing.plan.need
            expect(answer.outcome).toBe(sizing.outcome)
            expect(answer.recommended?.sku).toBe(unit?.sku)
            expect(answer.requiredContinuousW).toBe(requiredContinuousW)
            expect(answer.overTwice).toBe(unit !== undefined && unit.continuousW > 2 * requiredContinuousW)
            for (const verdict of sizing.choice.verdicts.filter((each) => each.fits)) {
              const { sku } = verdict.inverter.unit
              increment(fits, sku)
              if (unit === undefined || sku === unit.sku) continue
              const by = shadows.get(sku) ?? new Map<string, number>()
              increment(by, unit.sku)
              shadows.set(sku, by)
            }
            if (unit === undefined) {
              const failing = sizing.choice.verdicts
                .filter(({ inverter }) => inverter.unit.inputNominalV === answer.nominalV)
                .map(({ inverter, findings }) => ({
                  sku: inverter.unit.sku,
                  codes: findings.filter(({ severity }) => severity === 'fail').map(({ code }) => code),
                }))
              const fewest = Math.min(...failing.map(({ codes }) => codes.length))
              const nearest = failing.filter(({ codes }) => codes.length === fewest).at(-1)
              expect(answer.nearestSku).toBe(nearest?.sku)
              expect(answer.codes).toEqual(nearest?.codes)
              continue
            }
            expect(answer.codes).toEqual([])
            increment(recommended, unit.sku)
            if (answer.overTwice) gaps.set(unit.sku, [...(gaps.get(unit.sku) ?? []), plan.id])
          }
        }
        for (const unit of coverage.units) {
          expect(unit.recommended).toBe(recommended.get(unit.sku) ?? 0)
          expect(unit.fits).toBe(fits.get(unit.sku) ?? 0)
          const by = unit.recommended > 0 ? new Map() : (shadows.get(unit.sku) ?? new Map())
          expect(new Map(unit.shadowedBy.map(({ sku, plans }) => [sku, plans]))).toEqual(by)
          expect(unit.codes.length > 0 && unit.fits > 0).toBe(false)
        }
        expect(new Map(coverage.gaps.map(({ sku, planIds }) => [sku, planIds]))).toEqual(gaps)
      }),
      { numRuns: 12 },
    )
  }, 120_000)

  it('names the unit that keeps another from ever being recommended', () => {
    const range = makeRange([
      makeInverter({ sku: 'CHEAP', price: '100.00' }),
      makeInverter({ sku: 'DEAR', price: '200.00' }),
      makeInverter({ sku: 'GONE', continuousW: 3000, inStock: false }),
    ])
    const [cheap, dear, gone] = coverageOf(range, IN_STOCK).units
    expect(cheap?.recommended).toBeGreaterThan(0)
    expect(dear).toMatchObject({ sku: 'DEAR', recommended: 0, codes: [] })
    expect(dear?.shadowedBy).toEqual([{ sku: 'CHEAP', plans: dear?.fits }])
    expect(gone).toMatchObject({ sku: 'GONE', fits: 0, codes: ['out-of-stock'], shadowedBy: [] })
  })

  it('counts what is out of stock only where it is asked to', () => {
    const range = makeRange([makeInverter({ sku: 'GONE', inStock: false })])
    const inStock = coverageOf(range, IN_STOCK)
    const all = coverageOf(range, { inStockOnly: false })
    expect(inStock.plans.every(({ answers }) => answers[0]?.recommended === undefined)).toBe(true)
    expect(all.plans.some(({ answers }) => answers[0]?.recommended?.sku === 'GONE')).toBe(true)
  })

  it('tells a gap in the ladder from units in between that something else rules out', () => {
    const ladder = [makeInverter({ sku: 'BIG', continuousW: 3000 })]
    const middle = makeInverter({ sku: 'MIDDLE', continuousW: 1000, waveform: 'modified-sine' })
    const [bare] = coverageOf(makeRange(ladder), IN_STOCK).gaps
    expect(bare).toMatchObject({ sku: 'BIG', nominalV: 12, codes: [] })
    expect(bare?.highestNeedW).toBeLessThan(1500)
    expect(bare?.lowestNeedW).toBeGreaterThan(0)
    const [held] = coverageOf(makeRange([...ladder, middle]), IN_STOCK).gaps.filter(
      ({ sku }) => sku === 'BIG',
    )
    expect(held?.codes).toContain('wave-form-unsuitable')
    expect(held?.planIds.length).toBeLessThan(bare?.planIds.length ?? 0)
  })

  it('sends nobody to an inverter for what the shop does not advise', () => {
    const shop = { ...TEST_SHOP, policy: { notAdvised: ['air-conditioning' as const] } }
    const range = makeRange([makeInverter({ sku: 'A', continuousW: 6000 })], { shop })
    const { plans } = coverageOf(range, IN_STOCK)
    const cooler = plans.find(({ plan }) => plan.id === 'window-air-conditioner')
    expect(cooler?.answers[0]).toMatchObject({ outcome: 'not-advised', codes: ['not-advised'] })
  })

  it('comes in steps that end in the same', () => {
    const range = makeRange([makeInverter({ sku: 'A' })])
    const steps = coverageSteps(range, IN_STOCK)
    let count = 0
    for (;;) {
      const step = steps.next()
      if (step.done) {
        expect(step.value).toEqual(coverageOf(range, IN_STOCK))
        break
      }
      count += 1
    }
    expect(count).toBeGreaterThan(200)
  })
})

describe('kits with a missing part', () => {
  const unit: Inverter = makeInverter({ sku: 'A', continuousW: 1000 })
  const cable: RangeCable = {
    sku: 'CABLE',
    name: 'Cable pair',
    price: '50.00',
    inStock: true,
    areaMm2: 70,
    lengthM: 3,
  }
  const fuse: RangeFuse = {
    sku: 'FUSE',
    name: 'Fuse',
    price: '20.00',
    inStock: true,
    ratingA: 150,
    style: 'class-t',
  }

  it('are none where the range has a cable and a fuse that fit', () => {
    expect(coverageOf(makeRange([unit], { cables: [cable], fuses: [fuse] }), IN_STOCK).kits).toEqual([])
  })

  it.each([
    ['the cable is too thin', { cables: [{ ...cable, areaMm2: 4 }], fuses: [fuse] }, ['cable']],
    ['the cable is too short', { cables: [{ ...cable, lengthM: 1 }], fuses: [fuse] }, ['cable']],
    ['the fuse is too small', { cables: [cable], fuses: [{ ...fuse, ratingA: 60 }] }, ['fuse']],
    ['the fuse is out of stock', { cables: [cable], fuses: [{ ...fuse, inStock: false }] }, ['fuse']],
    ['there is neither', {}, ['cable', 'fuse']],
  ] as const)('are told where %s', (_, parts, missing) => {
    const { kits } = coverageOf(makeRange([unit], parts), IN_STOCK)
    expect(kits).toEqual([{ sku: 'A', missing, batterySkus: [] }])
  })

  it('are those of which no choice of cable and fuse passes every check of its own', () => {
    const cableArb = fc.record({
      areaMm2: fc.constantFrom(10, 25, 50, 70, 95),
      lengthM: fc.constantFrom(1, 2, 4),
      inStock: fc.boolean(),
    })
    const fuseArb = fc.record({
      ratingA: fc.constantFrom(60, 100, 150, 200, 300),
      style: fc.constantFrom('bolted-strip' as const, 'class-t' as const),
      inStock: fc.boolean(),
    })
    const watts = fc.constantFrom(300, 800, 1500, 2500)
    const lists = [fc.array(cableArb, { maxLength: 4 }), fc.array(fuseArb, { maxLength: 4 })] as const
    fc.assert(
      fc.property(watts, fc.boolean(), ...lists, (continuousW, lead, cables, fuses) => {
        const range = makeRange([makeInverter({ sku: 'A', continuousW })], {
          cables: cables.map((each, index) => ({ ...cable, ...each, sku: `C${index}` })),
          fuses: fuses.map((each, index) => ({ ...fuse, ...each, sku: `F${index}` })),
          batteries: [
            {
              sku: 'B',
              name: 'Battery',
              price: '1.00',
              inStock: true,
              nominalV: 12,
              capacityAh: 100,
              hourRateH: 20,
              chemistry: lead ? 'agm' : 'lifepo4',
            },
          ],
        })
        const [inverter] = range.inverters
        if (inverter === undefined) throw new Error('no unit')
        const need = circuitNeed(range, inverter, {})
        const place = fusePlace(12, { chemistry: lead ? 'agm' : 'lifepo4', capacityAh: 100 })
        const laid = range.parts.cables
          .filter(({ part }) => part.inStock)
          .flatMap((each) =>
            Array.from({ length: mostPairs(each) }, (_, more) =>
              laidCable(need, each, { pairs: more + 1, origin: 'buy' }),
            ),
          )
          .filter((each) => cableFaults(need, each).length === 0)
        const complete = laid.some(({ ampacityA }) =>
          fuses.some(
            (each) =>
              each.inStock && fuseSuits(each, { ...place, minA: need.minA, maxA: ampacityA }).length === 0,
          ),
        )
        const { kits } = coverageOf(range, IN_STOCK)
        expect(kits.length === 0).toBe(complete)
        if (!complete) expect(kits).toMatchObject([{ sku: 'A', batterySkus: ['B'] }])
        if (laid.length === 0) expect(kits[0]?.missing).toContain('cable')
      }),
      { numRuns: 40 },
    )
  }, 60_000)

  it('are told by the batteries on which the fuse can break no short circuit', () => {
    const battery = { name: 'Battery', price: '200.00', inStock: true, nominalV: 12 as const, hourRateH: 20 }
    const range = makeRange([unit], {
      cables: [cable],
      fuses: [{ ...fuse, style: 'bolted-strip', breakingCapacityA: 2000 }],
      batteries: [
        { ...battery, sku: 'LEAD', chemistry: 'agm', capacityAh: 50 },
        { ...battery, sku: 'LITHIUM', chemistry: 'lifepo4', capacityAh: 100 },
      ],
    })
    expect(coverageOf(range, IN_STOCK).kits).toEqual([
      { sku: 'A', missing: ['fuse'], batterySkus: ['LITHIUM'] },
    ])
  })
})

describe('batteries', () => {
  const battery = {
    name: 'Battery',
    price: '1.00',
    inStock: true,
    chemistry: 'lifepo4' as const,
    hourRateH: 20,
  }

  it('carry the fewer plans, the smaller they are, and a large bank carries the cool box', () => {
    const range = makeRange([makeInverter({ sku: 'A', continuousW: 2000 })], {
      batteries: [
        { ...battery, sku: 'SMALL', nominalV: 12, capacityAh: 20 },
        { ...battery, sku: 'LARGE', nominalV: 12, capacityAh: 400 },
        { ...battery, sku: 'OTHER', nominalV: 24, capacityAh: 400 },
      ],
    })
    const { batteries, plans } = coverageOf(range, IN_STOCK)
    expect(batteries.map(({ sku }) => sku).sort()).toEqual(['LARGE', 'SMALL'])
    const small = batteries.find(({ sku }) => sku === 'SMALL')
    const large = batteries.find(({ sku }) => sku === 'LARGE')
    const served = plans.filter(({ answers }) => answers[0]?.recommended !== undefined)
    expect(small?.plans).toBe(served.length)
    expect(small?.shortPlanIds).toContain('living-aboard')
    expect(large?.shortPlanIds).not.toContain('weekend-in-a-van')
    for (const id of large?.shortPlanIds ?? []) expect(small?.shortPlanIds).toContain(id)
    expect(large?.shortPlanIds.length).toBeLessThan(small?.shortPlanIds.length ?? 0)
  })

  it('are short wherever the answer to the same battery says that the day or the current is too much', () => {
    const blockArb = fc.record({
      chemistry: fc.constantFrom('agm' as const, 'lifepo4' as const),
      capacityAh: fc.integer({ min: 10, max: 300 }),
    })
    fc.assert(
      fc.property(blockArb, fc.integer({ min: 300, max: 4000 }), ({ chemistry, capacityAh }, continuousW) => {
        const block = { ...battery, sku: 'B', nominalV: 12 as const, chemistry, capacityAh }
        const range = makeRange([makeInverter({ sku: 'A', continuousW })], { batteries: [block] })
        const { batteries, plans } = coverageOf(range, IN_STOCK)
        const short = new Set(batteries[0]?.shortPlanIds)
        let tried = 0
        for (const { plan, answers } of plans) {
          if (answers[0]?.recommended === undefined) continue
          tried += 1
          const supply = { nominalV: 12 as const, battery: { chemistry, capacityAh, hourRateH: 20 } }
          const planned = planFor(range, { ...inputOf(plan, true), supply })
          if (!planned.ok) throw new Error('the plan is faulty')
          const findings = sizeFor(range, planned.plan).battery?.findings ?? []
          const tooMuch = findings.some(
            ({ code, severity }) =>
              severity === 'fail' || code === 'day-not-carried' || code === 'runs-too-long',
          )
          if (tooMuch) expect([...short], plan.id).toContain(plan.id)
        }
        expect(batteries.map(({ plans: count }) => count)).toEqual(tried === 0 ? [] : [tried])
      }),
      { numRuns: 6 },
    )
  }, 120_000)

  it('are joined in series to the supply voltage', () => {
    const range = makeRange([makeInverter({ sku: 'A', inputNominalV: 24, cutOffV: 21 })], {
      batteries: [{ ...battery, sku: 'B', nominalV: 12, capacityAh: 100 }],
    })
    expect(coverageOf(range, IN_STOCK).batteries).toMatchObject([{ sku: 'B', nominalV: 24, inSeries: 2 }])
  })
})

describe('the comparison of two coverages', () => {
  it('finds nothing between a range and itself', () => {
    const coverage = coverageOf(makeRange([makeInverter({ sku: 'A' })]), IN_STOCK)
    const changes = compareCoverage(coverage, coverage)
    expect(changes.changed).toEqual([])
    expect(changes.totals.combination).toEqual({ plans: 40, changed: 0 })
    expect(changes.nowRecommended).toEqual([])
  })

  it('is, plan by plan, what differs between the answers of the engine', () => {
    fc.assert(
      fc.property(unitsArb, unitsArb, (oldUnits, newUnits) => {
        const [before, after] = [makeRange(oldUnits), makeRange(newUnits)]
        const changes = compareCoverage(coverageOf(before, IN_STOCK), coverageOf(after, IN_STOCK))
        const changed = new Map(changes.changed.map(({ plan, answers }) => [plan.id, answers]))
        const totals = { appliance: 0, combination: 0 }
        for (const plan of everydayPlans(before)) {
          for (const nominalV of [12, 24] as const) {
            const tellOf = (range: PreparedRange) => {
              if (!range.inverters.some(({ unit }) => unit.inputNominalV === nominalV)) return undefined
              const { outcome, recommended } = asked(range, inputOf(plan, true), nominalV)
              return { outcome, sku: recommended?.inverter.unit.sku }
            }
            const [old, now] = [tellOf(before), tellOf(after)]
            const told = changed.get(plan.id)?.find((each) => each.nominalV === nominalV)
            if (JSON.stringify(old) !== JSON.stringify(now)) expect(told).toBeDefined()
            // Without another unit or outcome, only the reasons can have changed.
            else if (told !== undefined) expect(told.before?.codes).not.toEqual(told.after?.codes)
          }
          if (changed.has(plan.id)) totals[plan.kind] += 1
        }
        expect(changes.totals.appliance.changed).toBe(totals.appliance)
        expect(changes.totals.combination.changed).toBe(totals.combination)
      }),
      { numRuns: 5 },
    )
  }, 120_000)

  it('names units that are recommended no longer, and those that now are', () => {
    const before = coverageOf(makeRange([makeInverter({ sku: 'OLD', price: '100.00' })]), IN_STOCK)
    const after = coverageOf(
      makeRange([
        makeInverter({ sku: 'OLD', price: '100.00' }),
        makeInverter({ sku: 'NEW', price: '90.00' }),
      ]),
      IN_STOCK,
    )
    const changes = compareCoverage(before, after)
    expect(changes.nowNeverRecommended).toEqual(['OLD'])
    expect(changes.nowRecommended).toEqual(['NEW'])
    expect(changes.changed.length).toBeGreaterThan(0)
    expect(changes.changed.every(({ answers }) => answers[0]?.after?.recommended?.sku === 'NEW')).toBe(true)
  })

  it('tells a voltage that the draft no longer serves', () => {
    const both = makeRange([
      makeInverter({ sku: 'A' }),
      makeInverter({ sku: 'B', inputNominalV: 24, cutOffV: 21 }),
    ])
    const changes = compareCoverage(
      coverageOf(both, IN_STOCK),
      coverageOf(makeRange([makeInverter({ sku: 'A' })]), IN_STOCK),
    )
    expect(changes.changed).toHaveLength(everydayPlans(both).length)
    expect(changes.changed[0]?.answers).toMatchObject([{ nominalV: 24 }])
    expect(changes.changed[0]?.answers[0]?.after).toBeUndefined()
  })
})
