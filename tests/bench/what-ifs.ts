import { labelLimitsFor } from '../../core/inverters/label-limits.ts'
import { whatIfsFor } from '../../core/inverters/what-ifs/what-ifs.ts'
import { planFor, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange } from '../support/make.ts'
import { timeCall, timingLine } from './timing.ts'

const TYPICAL = ['microwave-oven', 'laptop', 'led-lamp', 'electric-kettle', 'toaster']

/** Loads of the built-in list with rated powers, so that the range can serve them or just not. */
function inputOf(count: number, wattsEach: number, withBattery: boolean): SizingInput {
  return {
    loads: Array.from({ length: count }, (_, index) => ({
      id: `load-${index}`,
      appliance: TYPICAL[index % TYPICAL.length] ?? 'laptop',
      quantity: 1,
      rating: { basis: 'input-watts', watts: wattsEach * (1 + (index % 4) / 2) },
      minutesPerDay: 10 + index,
    })),
    supply: {
      nominalV: 12,
      ...(withBattery && { battery: { chemistry: 'agm', capacityAh: 120, hourRateH: 20 } }),
    },
    preferences: { inStockOnly: true },
  }
}

/** A range of both wave forms, larger units dearer. */
function pricedRange(count: number) {
  return makeRange(
    Array.from({ length: count }, (_, index) => {
      const continuousW = 150 + Math.round((5000 * index) / count)
      const modified = index % 3 === 0
      return makeInverter({
        sku: `U${index}`,
        continuousW,
        price: `${Math.round(continuousW * (modified ? 0.12 : 0.25))}.00`,
        waveform: modified ? 'modified-sine' : 'pure-sine',
      })
    }),
  )
}

/** Prints what what-ifs and label limits cost in core, beside the answer that they start from. */
export function benchWhatIfs(): void {
  for (const { loads, units, wattsEach, what } of [
    { loads: 5, units: 20, wattsEach: 400, what: 'one fits' },
    { loads: 5, units: 20, wattsEach: 700, what: 'none fits' },
    { loads: 20, units: 60, wattsEach: 100, what: 'one fits' },
    { loads: 20, units: 60, wattsEach: 170, what: 'none fits' },
  ]) {
    for (const battery of [false, true]) {
      const range = pricedRange(units)
      const planned = planFor(range, inputOf(loads, wattsEach, battery))
      if (!planned.ok) throw new Error('the plan does not read')
      const sizing = sizeFor(range, planned.plan)
      const whatIfs = whatIfsFor(range, sizing)
      const label = `${loads} loads, ${units} units, ${what}${battery ? ', battery' : ''}`
      const all = () => {
        const sized = sizeFor(range, planned.plan)
        return [whatIfsFor(range, sized), labelLimitsFor(range, sized)]
      }
      console.log(
        timingLine(
          `${whatIfs.length} what-ifs: ${label}`,
          timeCall(() => whatIfsFor(range, sizing), 60, 20),
        ),
      )
      console.log(
        timingLine(
          '  label limits',
          timeCall(() => labelLimitsFor(range, sizing), 60, 20),
        ),
      )
      console.log(timingLine('  sizing with both', timeCall(all, 60, 20)))
    }
  }
}
