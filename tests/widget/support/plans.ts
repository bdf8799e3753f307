import fc from 'fast-check'
import type { Rating } from '../../../core/loads/rating.ts'
import { BUILT_IN_APPLIANCES } from '../../../core/tables/appliances/index.ts'
import type { PlanLoad, PlanState } from '../../../widget/plan-state.ts'

const ids = BUILT_IN_APPLIANCES.map(({ id }) => id)
const plain = fc.integer({ min: 1, max: 3000 })

const ratings: fc.Arbitrary<Rating> = fc.oneof(
  plain.map((watts) => ({ basis: 'input-watts', watts }) as const),
  fc
    .tuple(fc.integer({ min: 100, max: 240 }), fc.integer({ min: 1, max: 13 }))
    .map(([volts, amps]) => ({ basis: 'volts-amps', volts, amps }) as const),
  plain.map((watts) => ({ basis: 'label-text', text: `230 V~ 50 Hz ${watts} W` }) as const),
)

const loads = fc.array(
  fc.record({
    appliance: fc.option(fc.constantFrom(...ids), { nil: undefined }),
    name: fc.option(fc.string({ minLength: 1, maxLength: 40 }), { nil: undefined }),
    quantity: fc.integer({ min: 1, max: 20 }),
    minutesPerDay: fc.option(fc.integer({ min: 0, max: 1440 }), { nil: undefined }),
    rating: fc.option(ratings, { nil: undefined }),
    start: fc.option(fc.record({ startingW: plain, durationS: fc.integer({ min: 1, max: 60 }) }), {
      nil: undefined,
    }),
  }),
  { minLength: 1, maxLength: 12 },
)

const supplies = fc.record({
  nominalV: fc.constantFrom(null, 12, 24),
  battery: fc.constantFrom(null, 'have', 'need'),
  chemistry: fc.constantFrom(null, 'flooded', 'agm', 'gel', 'lifepo4', 'nmc'),
  capacityAh: fc.option(fc.integer({ min: 1, max: 2000 })),
  connection: fc.constantFrom(null, 'vehicle-socket', 'quick-connector', 'battery-terminals'),
  oneWayLengthM: fc.option(fc.integer({ min: 1, max: 20 })),
} as const)

/** Plans as shoppers could make them. */
export const plans: fc.Arbitrary<PlanState> = fc
  .tuple(loads, supplies, fc.infiniteStream(fc.nat(3)), fc.constantFrom({}, { sku: 'KC-ST12-740' }))
  .map(([raw, supply, draws, unit]) => {
    const made: readonly PlanLoad[] = raw.map((load, index) => ({
      ...load,
      id: `load-${index + 1}`,
      rating:
        load.appliance === undefined ? (load.rating ?? { basis: 'input-watts', watts: 60 }) : load.rating,
    }))
    const groups: string[][] = [[], []]
    for (const { id } of made) groups[draws.next().value ?? 3]?.push(id)
    return { loads: made, takeTurns: groups.filter((group) => group.length > 1), supply, ...unit }
  })
