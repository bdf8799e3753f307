import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../core/inverters/choose.ts'
import { labelLimitsFor } from '../../core/inverters/label-limits.ts'
import { changedInputs } from '../../core/inverters/what-ifs/plan-change.ts'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import { planFor, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange } from '../support/make.ts'

const loadArbitrary = fc
  .record({
    appliance: fc.constantFrom(
      'microwave-oven',
      'laptop',
      'desktop-computer',
      'fridge',
      'electric-drill',
      'led-lamp',
      'electric-kettle',
      undefined,
    ),
    rating: fc.oneof(
      fc.integer({ min: 5, max: 800 }).map((watts) => ({ basis: 'input-watts', watts }) as const),
      fc.integer({ min: 50, max: 700 }).map((watts) => ({ basis: 'motor-output', watts }) as const),
      fc
        .double({ min: 0.1, max: 4, noNaN: true })
        .map((amps) => ({ basis: 'volts-amps', volts: 230, amps }) as const),
    ),
    start: fc.constantFrom(undefined, undefined, { startingW: 900 }, { startingW: 1500, durationS: 2 }),
    quantity: fc.constantFrom(1, 1, 2, 5),
  })
  .map(({ start, ...load }) => ({ ...load, ...(start && { start }) }))

const inputArbitrary: fc.Arbitrary<SizingInput> = fc
  .record({
    drawn: fc.array(loadArbitrary, { minLength: 1, maxLength: 6 }),
    grouped: fc.boolean(),
    connection: fc.constantFrom(undefined, { kind: 'quick-connector' } as const),
  })
  .map(({ drawn, grouped, connection }) => ({
    loads: drawn.map((load, index) => ({ ...load, id: `l${index}` })),
    takeTurns: grouped && drawn.length > 2 ? [['l0', 'l2']] : undefined,
    supply: { nominalV: 12, ...(connection && { connection }) },
    preferences: { inStockOnly: true },
  }))

const unitsArbitrary = fc
  .array(
    fc.record({
      continuousW: fc.integer({ min: 300, max: 9000 }),
      surgeRatio: fc.constantFrom(1, 1.7, 2.5),
      surgeS: fc.constantFrom(0.3, 1, 3),
      vaShare: fc.constantFrom(1, 1, 0.9, 1.2),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((units) =>
    units.map(({ surgeRatio, vaShare, ...unit }, index) =>
      makeInverter({
        sku: `U${index}`,
        ...unit,
        surgeW: unit.continuousW * surgeRatio,
        continuousVA: unit.continuousW * vaShare,
      }),
    ),
  )

function sized(range: PreparedRange, input: SizingInput) {
  const planned = planFor(range, input)
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

function limitsOf(range: PreparedRange, input: SizingInput) {
  return labelLimitsFor(range, sized(range, input))
}

/** Whether the unit carries the request with one load rated at these input watts, read and judged anew. */
function carries(range: PreparedRange, input: SizingInput, loadId: string, watts: number): boolean {
  const unit = sized(range, input).recommended?.inverter
  const [changed] = changedInputs(input, { rating: { loadId, watts } })
  const planned = changed && planFor(range, changed)
  return unit !== undefined && planned?.ok === true && judge(unit, planned.plan.need).fits
}

const kettle = (watts: number): SizingInput => ({
  loads: [{ id: 'kettle', quantity: 1, rating: { basis: 'input-watts', watts } }],
  supply: { nominalV: 12 },
  preferences: { inStockOnly: true },
})

describe('labelLimitsFor', () => {
  it('gives a limit that fits, of which one watt more does not', () => {
    let limits = 0
    fc.assert(
      fc.property(unitsArbitrary, inputArbitrary, (units, input) => {
        const range = makeRange(units)
        for (const { loadId, limitW } of limitsOf(range, input)) {
          limits += 1
          expect(carries(range, input, loadId, limitW)).toBe(true)
          expect(carries(range, input, loadId, limitW + 1)).toBe(false)
        }
      }),
      { numRuns: 500 },
    )
    expect(limits).toBeGreaterThan(500)
  })

  it('gives a limit below which every rating fits', () => {
    fc.assert(
      fc.property(
        unitsArbitrary,
        inputArbitrary,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (units, input, share) => {
          const range = makeRange(units)
          for (const { loadId, limitW } of limitsOf(range, input)) {
            // A supply below the size at which it is corrected takes more volt-amperes a watt.
            if (limitW > 75 && limitW * share <= 75) continue
            expect(carries(range, input, loadId, Math.max(0.1, limitW * share))).toBe(true)
          }
        },
      ),
      { numRuns: 200 },
    )
  })

  it('keeps the headroom free: 800 W on a unit of 1000 W', () => {
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 1000, continuousVA: 2000 })])
    expect(limitsOf(range, kettle(500))).toEqual([{ loadId: 'kettle', limitW: 800 }])
  })

  it('counts volt-amperes at the power factor of a plate that states watts alone', () => {
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 1000, continuousVA: 500 })])
    expect(limitsOf(range, kettle(300))[0]?.limitW).toBe(450)
  })

  it('lets the current of a socket or connector decide where that is the weakest part', () => {
    const connection = { kind: 'quick-connector', limitA: 40 } as const
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 1000, connection })])
    // 40 A x 10.5 V x 0.9
    expect(limitsOf(range, kettle(300))[0]?.limitW).toBe(378)
  })

  it('is as large for a load that takes turns as if its fellow were not there', () => {
    const asked: SizingInput = {
      ...kettle(500),
      loads: [
        ...kettle(500).loads,
        { id: 'iron', quantity: 1, rating: { basis: 'input-watts', watts: 600 } },
      ],
      takeTurns: [['kettle', 'iron']],
    }
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 1000, continuousVA: 2000 })])
    expect(limitsOf(range, asked).map(({ limitW }) => limitW)).toEqual([800, 800])
  })

  it('tells a microwave oven in cooking power too, with which a rating by cooking power fits', () => {
    const range = makeRange([makeInverter({ sku: 'U', continuousW: 2000, surgeW: 6000 })])
    const loads = [{ id: 'oven', appliance: 'microwave-oven', quantity: 1 }]
    const cooking = (watts: number): SizingInput => ({
      ...kettle(1),
      loads: loads.map((load) => ({ ...load, rating: { basis: 'cooking-watts', watts } })),
    })
    const [limit] = limitsOf(range, cooking(600))
    expect(limit?.cookingW).toBe(Math.floor((limit?.limitW ?? 0) / 2))
    expect(sized(range, cooking(limit?.cookingW ?? 0)).outcome).not.toBe('none-fits')
    expect(sized(range, cooking((limit?.cookingW ?? 0) + 1)).outcome).toBe('none-fits')
  })

  it('has no limit to tell where nothing fits', () => {
    expect(limitsOf(makeRange([makeInverter({ sku: 'U', continuousW: 100 })]), kettle(900))).toEqual([])
  })
})
