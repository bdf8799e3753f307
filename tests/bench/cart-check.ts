import type { CartInput } from '../../core/range/cart-check/cart.ts'
import { checkCart } from '../../core/range/cart-check/cart-check.ts'
import { kitFor } from '../../core/range/kit/kit.ts'
import { planFor, sizeFor } from '../../core/sizing.ts'
import { demoRange } from '../support/kits.ts'
import { timeCall, timingLine } from './timing.ts'

const loads = [
  { id: 'm', appliance: 'microwave-oven', quantity: 1, minutesPerDay: 10 },
  { id: 'l', appliance: 'laptop', quantity: 1 },
  { id: 'f', appliance: 'fridge', quantity: 1 },
]
const preferences = { inStockOnly: true } as const
const line = (sku: string, quantity = 1) => ({ sku, quantity })

/** Prints what kits and cart checks cost in core. */
export function benchCartCheck(): void {
  const range = demoRange('kingcup')
  const stated = { nominalV: 12, oneWayLengthM: 2, battery: { chemistry: 'agm', capacityAh: 600 } } as const
  for (const [what, supply] of [
    ['battery that does', stated],
    ['battery unknown', { nominalV: 12 } as const],
    ['battery too small', { ...stated, battery: { chemistry: 'agm', capacityAh: 60 } } as const],
  ] as const) {
    const planned = planFor(range, { loads, supply, preferences })
    if (!planned.ok) throw new Error('the plan can’t be read')
    const { demand, need } = planned.plan
    const inverter = sizeFor(range, planned.plan).recommended?.inverter
    if (inverter === undefined) throw new Error('nothing fits')
    const { requiredContinuousW } = need
    const question = { range, inverter, demand, supply, preferences, requiredContinuousW }
    console.log(
      timingLine(
        `kit, ${what}`,
        timeCall(() => kitFor(question), 100, 20),
      ),
    )
  }

  const right = [line('KC-ST12-2350'), line('KC-CAB-70-2'), line('KC-FUS-T300'), line('KC-BAT12-A92', 3)]
  const wrong = [line('KC-ST12-2350'), line('KC-CAB-16-2'), line('KC-FUS-B15'), line('KC-BAT12-L104')]
  const { inverters, cables, fuses, batteries } = range.document
  const some = (list: readonly { readonly sku: string }[]) => list.slice(0, 15).map(({ sku }) => line(sku))
  const all = [inverters, cables, fuses, batteries].flatMap((list) => some(list))
  const carts: readonly (readonly [string, CartInput])[] = [
    ['4 lines, right, no loads', { lines: right }],
    ['4 lines, right, 3 loads', { lines: right, loads, supply: { nominalV: 12 } }],
    ['4 lines, all wrong, 3 loads', { lines: wrong, loads, supply: { nominalV: 12 } }],
    ['60 lines, 15 units, 3 loads', { lines: all, loads, supply: { nominalV: 12 } }],
  ]
  for (const [what, cart] of carts) {
    console.log(
      timingLine(
        `cart check, ${what}`,
        timeCall(() => checkCart(range, cart), 100, 5),
      ),
    )
  }
}
