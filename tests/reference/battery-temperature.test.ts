import { describe, expect, it } from 'vitest'
import { predictRuntime } from '../../core/battery/runtime.ts'
import { hoursAtTemperature, leadAcidShares, shareAtHours } from '../../core/battery/temperature.ts'

describe('leadAcidShares against published temperature figures', () => {
  // A. King, W. Knight, Uninterruptible Power Supplies and Standby Power Systems, McGraw-Hill 2003, p. 199:
  // share of the capacity by temperature [C] and discharge time [h], retyped here from the book's table.
  it.each([
    [-9.4, 0.25, 0.55],
    [-9.4, 20, 0.735],
    [-1.1, 1, 0.725],
    [1.7, 5, 0.8],
    [10, 8, 0.895],
    [18.3, 20, 0.965],
    [25, 1, 1],
    [35, 0.25, 1.05],
  ])('at %d C over %d h leaves %d of the capacity', (temperatureC, hours, share) => {
    expect(shareAtHours(leadAcidShares(temperatureC), hours)).toBeCloseTo(share, 9)
  })

  // US Army TM 10-6140-200-14: heavy discharge leaves 75 % at 32 F and 40 % at 0 F.
  it('over a quarter of an hour leaves the 75 % of 0 C and the 40 % of -17.8 C within 4 points', () => {
    expect(Math.abs(shareAtHours(leadAcidShares(0), 0.25) - 0.75)).toBeLessThan(0.04)
    expect(Math.abs(shareAtHours(leadAcidShares(-17.8), 0.25) - 0.4)).toBeLessThan(0.04)
  })

  // Battery maker's data sheet, 12 V 100 Ah deep-cycle AGM block, 10 h rate: 103, 100, 86 and 65 %.
  it.each([
    [40, 1.03],
    [25, 1],
    [0, 0.86],
    [-15, 0.65],
  ])('at %d C over 10 h leaves the %d of an AGM block within 8 points', (temperatureC, share) => {
    expect(Math.abs(shareAtHours(leadAcidShares(temperatureC), 10) - share)).toBeLessThan(0.08)
  })
})

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
