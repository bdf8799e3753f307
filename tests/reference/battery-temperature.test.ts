import { describe, expect, it } from 'vitest'
import { predictRuntime } from '../../core/battery/runtime.ts'
import { hoursAtTemperature, leadAcidShares, shareAtHours } from '../../core/battery/temperature.ts'

describe('hoursAtTemperature', () => {
  it.each([-20, -5, 10, 33])('finds the time whose own share shortens it, at %d C', (temperatureC) => {
    const shares = leadAcidShares(temperatureC)
    for (const hoursAt25 of [0.1, 0.4, 2, 6, 15, 50]) {
      const hours = hoursAtTemperature(shares, hoursAt25)
      expect(Math.abs(hours / (hoursAt25 * shareAtHours(shares, hours)) - 1)).toBeLessThan(1e-6)
    }
  })
})

describe('predictRuntime of a lithium battery in the cold', () => {
  // Battery maker's data sheet, 12.8 V 45 Ah LiFePO4 block at 0.5C to 10 V, read off a chart within 2 %: 101 % of
  // the capacity at 20 C, 97 % at 10 C, 91.5 % at 0 C, 77 % at -10 C.
  it.each([
    [10, 0.97],
    [0, 0.915],
    [-10, 0.77],
  ])(
    'at %d C gives the printed share of the 20 C time within 6 points, to the careful side',
    (temperatureC, share) => {
      const hoursAt = (celsius: number) =>
        predictRuntime({
          bank: {
            nominalV: 12,
            chemistry: 'lifepo4',
            capacityAh: 45,
            minSocFraction: 0,
            temperatureC: celsius,
          },
          dcPowerW: 0.5 * 45 * 12.8,
          cutOffV: 10,
        }).hours
      const predicted = hoursAt(temperatureC) / hoursAt(20)
      expect(predicted).toBeLessThan(share / 1.01 + 0.01)
      expect(predicted).toBeGreaterThan(share / 1.01 - 0.06)
    },
  )
})
