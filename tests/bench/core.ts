import { planFor, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange } from '../support/make.ts'
import { timeCall, timingLine } from './timing.ts'

const APPLIANCES = [
  'microwave-oven',
  'laptop',
  'led-lamp',
  'fridge',
  'electric-kettle',
  'toaster',
  'phone-charger',
  'television',
  'router',
  'electric-drill',
  'tool-battery-charger',
  'fan',
]

/** A plan of this many loads of the built-in list. */
export function planOf(count: number): SizingInput {
  return {
    loads: Array.from({ length: count }, (_, index) => ({
      id: `load-${index}`,
      appliance: APPLIANCES[index % APPLIANCES.length] ?? 'laptop',
      quantity: 1 + (index % 2),
    })),
    takeTurns: count >= 6 ? [['load-0', 'load-4', 'load-5']] : undefined,
    supply: { nominalV: 12 },
    preferences: { inStockOnly: true },
  }
}

/** A range of this many units, both wave forms. */
export function rangeOf(count: number) {
  return makeRange(
    Array.from({ length: count }, (_, index) =>
      makeInverter({
        sku: `U${index}`,
        continuousW: 120 + Math.round((6000 * index) / count),
        waveform: index % 3 === 0 ? 'modified-sine' : 'pure-sine',
      }),
    ),
  )
}

/** Prints what sizing costs in core. */
export function benchCore(): void {
  for (const [loads, units] of [
    [3, 12],
    [12, 40],
    [40, 200],
  ] as const) {
    const range = rangeOf(units)
    const input = planOf(loads)
    const timing = timeCall(() => {
      const planned = planFor(range, input)
      return planned.ok ? sizeFor(range, planned.plan) : undefined
    })
    console.log(timingLine(`core sizing, ${loads} loads, ${units} inverters`, timing))
  }
}
