import { describe, expect, it } from 'vitest'
import { openCircuitV } from '../../core/battery/bank.ts'
import { constantPowerCurrentA } from '../../core/battery/operating-point.ts'

describe('openCircuitV against printed voltages of a 12 V flooded battery', () => {
  // "What does terminal voltage tell", November 2009, table of specific gravity 1.265 to 1.120. The curve is
  // Bode's (Lead-Acid Batteries, 1977) at a specific gravity linear in charge; the table's is 2 points off that
  // line at half charge, which makes most of the 30 mV there.
  it.each([
    [1, 12.65],
    [0.75, 12.45],
    [0.5, 12.24],
    [0.25, 12.06],
    [0, 11.89],
  ])('at %d of full charge is the printed %d V within 31 mV', (socFraction, volts) => {
    const error = Math.abs(openCircuitV({ chemistry: 'flooded', nominalV: 12, socFraction }) - volts)
    expect(error).toBeLessThanOrEqual(0.031)
  })

  // Rule of the trade: cell voltage = specific gravity + 0.845 (common practice, no published source).
  it('at full charge is specific gravity 1.265 plus 0.845 V per cell within 5 mV a cell', () => {
    const cellV = openCircuitV({ chemistry: 'flooded', nominalV: 12, socFraction: 1 }) / 6
    expect(Math.abs(cellV - (1.265 + 0.845))).toBeLessThan(0.005)
  })
})

describe('openCircuitV of lithium batteries', () => {
  // Sunil et al., IEEE Trans. Instrum. Meas. 2025, data files: mean of C/32 charge and discharge of one cell.
  it.each([
    [0.1, 3.203],
    [0.5, 3.299],
    [0.9, 3.341],
    [1, 3.598],
  ])('gives a 12 V LiFePO4 battery four times the cell at %d: %d V', (socFraction, cellV) => {
    expect(openCircuitV({ chemistry: 'lifepo4', nominalV: 12, socFraction })).toBeCloseTo(4 * cellV, 9)
  })
  it.each([
    [0.1, 3.304],
    [0.5, 3.717],
    [0.9, 4.092],
    [1, 4.194],
  ])('gives a 24 V NMC battery seven times the cell at %d: %d V', (socFraction, cellV) => {
    expect(openCircuitV({ chemistry: 'nmc', nominalV: 24, socFraction })).toBeCloseTo(7 * cellV, 9)
  })
})

describe('constantPowerCurrentA against OpenStax College Physics 2e, chapter 21, terminal voltage', () => {
  it.each([
    // e.m.f. 12.0 V, 0.100 ohm inside, loads of 10.0 and 0.500 ohm: printed 1.188 A at 11.9 V, 20.0 A at 10.0 V.
    ['10 ohm', 12, 0.1, 1.188 * 11.88, 1.188, 0.002],
    ['0.5 ohm', 12, 0.1, 200, 20, 0.001],
    // Starter of 0.0500 ohm on 0.0100 ohm: printed 200 A and 2.00 kW; 0.0900 ohm of corrosion: 80.0 A and 320 W.
    ['starter', 12, 0.01, 2000, 200, 0.002],
  ] as const)('%s', (_name, emfV, ohm, powerW, printedA, tolerance) => {
    expect(Math.abs(constantPowerCurrentA(emfV, ohm, powerW) / printedA - 1)).toBeLessThan(tolerance)
  })
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
