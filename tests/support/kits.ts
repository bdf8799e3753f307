import fc from 'fast-check'
import type { CartInput, CartLine } from '../../core/range/cart-check/cart.ts'
import type { Kit, KitLine, KitWish } from '../../core/range/kit/kit-types.ts'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import type { RangeBattery, RangeCable, RangeConnector, RangeFuse } from '../../core/range/range-document.ts'
import type { SupplyVoltage } from '../../core/range/vocabulary.ts'
import { BATTERY_CHEMISTRIES, CONNECTION_KINDS } from '../../core/range/vocabulary.ts'
import { kitOf, planFor, type Sizing, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'

const demo = fixedRanges({ kingcup, bentcreek })

/** A demo shop's range. */
export function demoRange(shopId: string): PreparedRange {
  const range = demo.current(shopId)
  if (range === undefined) throw new Error(`no demo shop ${shopId}`)
  return range
}

export const DEMO_SHOPS = ['kingcup', 'bentcreek'] as const

/** Parts of a test's own range, changed as the test needs. */
const base = (sku: string) => ({ sku, name: `Part ${sku}`, price: '10.00', inStock: true })
export const makeCable = (sku: string, changes: Partial<RangeCable> = {}): RangeCable => ({
  ...base(sku),
  lengthM: 2,
  insulationC: 105,
  ...(changes.awg === undefined ? { areaMm2: 35 } : {}),
  ...changes,
})
export const makeFuse = (sku: string, changes: Partial<RangeFuse> = {}): RangeFuse => ({
  ...base(sku),
  ratingA: 150,
  style: 'class-t',
  ...changes,
})
export const makeConnector = (sku: string, changes: Partial<RangeConnector> = {}): RangeConnector => ({
  ...base(sku),
  kind: 'quick-connector',
  limitA: 50,
  ...changes,
})
export const makeBattery = (sku: string, changes: Partial<RangeBattery> = {}): RangeBattery => ({
  ...base(sku),
  chemistry: 'agm',
  nominalV: 12,
  capacityAh: 100,
  hourRateH: 20,
  ...changes,
})

/** Sizes a plan; a plan that can't be read is a mistake of the test. */
export function sized(range: PreparedRange, input: SizingInput): Sizing {
  const planned = planFor(range, input)
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

/** The kit of a plan. */
export function kitFrom(range: PreparedRange, input: SizingInput): Kit {
  const kit = kitOf(range, sized(range, input))
  if (kit === undefined) throw new Error('no unit fits')
  return kit
}

/** The line of a role. */
export function lineOf(kit: Kit, role: KitLine['role']): KitLine {
  const line = kit.lines.find((each) => each.role === role)
  if (line === undefined) throw new Error(`no ${role} in the kit`)
  return line
}

/** What of a kit goes into the cart. */
export function linesToBuy(kit: Kit): readonly CartLine[] {
  return kit.lines.flatMap(({ state, sku, quantity }) =>
    state === 'buy' && sku !== undefined ? [{ sku, quantity }] : [],
  )
}

/** A cart of these lines for the same plan. */
export function cartFor(sizing: Sizing, lines: readonly CartLine[]): CartInput {
  const { input, need } = sizing.plan
  const { loads, takeTurns, kit } = input
  return { loads, takeTurns, supply: need.supply, owned: kit?.owned, lines }
}

const applianceIds = BUILT_IN_APPLIANCES.map(({ id }) => id)

const anyOwned: fc.Arbitrary<NonNullable<KitWish['owned']>> = fc.array(
  fc.record({
    role: fc.constantFrom('cable', 'fuse', 'connector', 'battery'),
    sku: fc.constantFrom(
      undefined,
      'KC-CAB-50-2',
      'KC-FUS-T150',
      'KC-BAT12-A210',
      'BC-551-07',
      'BC-8-T125',
      'GONE',
    ),
    quantity: fc.integer({ min: 1, max: 4 }),
  }),
  { maxLength: 3 },
)

/** A plan at one of these voltages. */
export function anyPlan(voltages: readonly SupplyVoltage[]): fc.Arbitrary<SizingInput> {
  const loads = fc
    .uniqueArray(fc.constantFrom(...applianceIds), { minLength: 1, maxLength: 4 })
    .chain((ids) =>
      fc.tuple(
        ...ids.map((appliance, index) =>
          fc.record({
            id: fc.constant(`load-${index}`),
            appliance: fc.constant(appliance),
            quantity: fc.integer({ min: 1, max: 3 }),
            minutesPerDay: fc.constantFrom(undefined, 2, 15, 60, 240),
          }),
        ),
      ),
    )
  const battery = fc.record({
    chemistry: fc.constantFrom(...BATTERY_CHEMISTRIES),
    capacityAh: fc.constantFrom(20, 60, 110, 230, 600, 1500),
    temperatureC: fc.constantFrom(25, 5, 35),
    healthFraction: fc.constantFrom(1, 0.7),
  })
  return fc.record({
    loads,
    supply: fc.record({
      nominalV: fc.constantFrom(...voltages),
      battery: fc.option(battery, { nil: undefined }),
      oneWayLengthM: fc.constantFrom(undefined, 0.5, 1, 2, 3, 5),
      connection: fc.option(fc.record({ kind: fc.constantFrom(...CONNECTION_KINDS) }), {
        nil: undefined,
        freq: 3,
      }),
      autonomyDays: fc.constantFrom(undefined, 2),
    }),
    preferences: fc.record({ inStockOnly: fc.boolean() }),
    kit: fc.option(
      fc.record({
        owned: fc.option(anyOwned, { nil: undefined }),
        buyBattery: fc.constantFrom(undefined, true),
      }),
      { nil: undefined },
    ),
  })
}
