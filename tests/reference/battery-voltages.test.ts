import { describe, expect, it } from 'vitest'
import { openCircuitV } from '../../core/battery/bank.ts'
import { constantPowerCurrentA } from '../../core/battery/operating-point.ts'

describe('openCircuitV', () => {
  // Rule of the trade: cell voltage = specific gravity + 0.845 (common practice, no published source).
  it('at full charge is specific gravity 1.265 plus 0.845 V per cell within 5 mV a cell', () => {
    const cellV = openCircuitV({ chemistry: 'flooded', nominalV: 12, socFraction: 1 }) / 6
    expect(Math.abs(cellV - (1.265 + 0.845))).toBeLessThan(0.005)
  })
})

describe('openCircuitV of lithium batteries', () => {
  // Sunil et al., IEEE Trans. Instrum. Meas. 2025, data files: mean of C/32 charge and discharge of one cell.
  it.each([
    [0.1, 3.304],
    [0.5, 3.717],
    [0.9, 4.092],
    [1, 4.194],
  ])('gives a 24 V NMC battery seven times the cell at %d: %d V', (socFraction, cellV) => {
    expect(openCircuitV({ chemistry: 'nmc', nominalV: 24, socFraction })).toBeCloseTo(7 * cellV, 9)
  })
})

// OpenStax College Physics 2e, chapter 21, terminal voltage.
describe('constantPowerCurrentA', () => {
  it('corroded starter: 80 A at 320 W is the other root, so at constant power the current is the smaller one', () => {
    // 0.0500 ohm takes the power past its most: the constant-power load with the same e.m.f., resistance and
    // watts settles on the smaller root, E / R minus the printed current.
    const currentA = constantPowerCurrentA(12, 0.1, 320)
    expect(currentA).toBeCloseTo(12 / 0.1 - 80, 6)
  })
  it('gives no current where the power is beyond E^2 / 4R', () => {
    expect(constantPowerCurrentA(12, 0.1, 360.001)).toBe(Number.POSITIVE_INFINITY)
    expect(constantPowerCurrentA(12, 0.1, 360)).toBeCloseTo(60, 9)
  })
})
