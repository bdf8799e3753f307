import { describe, expect, it } from 'vitest'
import { METRES_PER_FOOT } from '../../core/units.ts'
import { ambientFactor } from '../../core/wiring/ampacity.ts'
import { worstCaseCurrentA } from '../../core/wiring/battery-current.ts'
import { conductorOfSize, conductorResistanceOhmPerM } from '../../core/wiring/conductor.ts'
import { fuseWindow } from '../../core/wiring/fuse.ts'
import { resistiveDropV, voltageDropV } from '../../core/wiring/voltage-drop.ts'
import { checkTopic } from './values/check-topic.ts'
import { loopDropV, VOLTAGE_DROP } from './values/voltage-drop.ts'

checkTopic(VOLTAGE_DROP)

// US FAA AC 43.13-1B CHG 1 (27 September 2001), chapter 11, Tables 11-7 and 11-8 and example 1 of paragraph 11-67;
// resistances of its Table 11-9. Page copies, read. The run counts the way back: no factor of two.
describe('FAA AC 43.13-1B, whole-loop lengths', () => {
  it('example 1: 20 A along 50 ft, 1 V allowed, takes 8 AWG and refuses 10 AWG', () => {
    expect(loopDropV(20, 50, 0.0007)).toBeCloseTo(0.7, 9)
    expect(loopDropV(20, 50, 0.00126)).toBeCloseTo(1.26, 9)
    const ours = (awg: string) => {
      const conductor = conductorOfSize({ awg })
      if (conductor === undefined) throw new Error('not a standard size')
      const lengthM = 25 * METRES_PER_FOOT
      return voltageDropV({ conductor, currentA: 20, lengthM, conductorTempC: 20, parallelPairs: 1 })
    }
    expect(ours('8')).toBeLessThan(1)
    expect(ours('10')).toBeGreaterThan(1)
  })
})

describe('one-way lengths', () => {
  // Trades mathematics study guide: 20 A along 100 ft of 12 AWG loses 7.92 V. Read.
  it('voltageDropV counts the way back, with its own conductors at 75 C', () => {
    const conductor = conductorOfSize({ awg: '12' })
    if (conductor === undefined) throw new Error('not a standard size')
    const run = { conductor, currentA: 20, lengthM: 100 * METRES_PER_FOOT, parallelPairs: 1 }
    expect(Math.abs(voltageDropV({ ...run, conductorTempC: 75 }) - 7.92)).toBeLessThan(0.06)
  })

  // EC&M magazine, The basics of calculating voltage drop, example: three-phase, 1.732, K = 12.9. Read.
  it('20 A along 200 ft, three-phase, 14.4 V allowed, takes 12 AWG and refuses 14 AWG', () => {
    const lostV = (circularMils: number) => loopDropV(20, 1.732 * 200, 12.9 / circularMils)
    expect(lostV(6530)).toBeLessThan(14.4)
    expect(lostV(4110)).toBeGreaterThan(14.4)
    const ours = (awg: string) => {
      const conductor = conductorOfSize({ awg })
      if (conductor === undefined) throw new Error('not a standard size')
      return loopDropV(20, 1.732 * 200, conductorResistanceOhmPerM(conductor, 75) * METRES_PER_FOOT)
    }
    expect(ours('12')).toBeLessThan(14.4)
    expect(ours('14')).toBeGreaterThan(14.4)
  })
})

// OpenStax College Physics 2e, module m42357: a 12 V battery of 0.01 ohm feeds a starter motor of 0.05 ohm. Read.
describe('corroded leads', () => {
  it.each([
    { leads: 'clean', leadOhm: 0, currentA: 200 },
    { leads: 'corroded', leadOhm: 0.09, currentA: 80 },
  ])('$leads leads: the current is that of a 0.05 ohm load, and the lead is what is at fault', (row) => {
    const { leadOhm, currentA } = row
    const lostV = (ohm: number) => resistiveDropV({ currentA, loopLengthM: 1, resistanceOhmPerM: ohm })
    expect((12 - lostV(0.01) - lostV(leadOhm)) / currentA).toBeCloseTo(0.05, 9)
    expect(lostV(leadOhm) / 12 > 0.03).toBe(leadOhm > 0)
  })
})

// Battery-to-inverter conductor example in the line of SAND96-2797 (Sandia National Laboratories, 1996), course text;
// ampacities of NEC Table 310.16, 60 C copper. Read.
describe('2500 W, 24 V inverter at 85 percent and 22 V', () => {
  const currentA = worstCaseCurrentA({ continuousW: 2500, efficiencyFullFraction: 0.85, lowestV: 22 })
  const bank = { chemistry: 'flooded', nominalV: 24 } as const
  const derated = ambientFactor({ insulationC: 60, ambientC: 45 })

  it('refuses 250 kcmil, 215 A, as too thin', () => {
    const window = fuseWindow({ ...bank, currentA, conductorAmpacityA: 215 * derated })
    expect(window).toMatchObject({ ok: false, reason: 'conductor-too-thin' })
  })

  it('lets 300 kcmil, 240 A, carry the current; the next fuse, 175 A, would be above what it may carry', () => {
    const conductorAmpacityA = 240 * derated
    const window = fuseWindow({ ...bank, currentA, conductorAmpacityA })
    expect(conductorAmpacityA).toBeGreaterThan(window.minA)
    expect(window).toMatchObject({ ok: false, reason: 'no-standard-rating-in-window' })
  })
})

// SAND96-2797 Appendix E, 12 V stand-alone system, module and sub-array wiring; reproduction, read.
describe('Sandia example system, sub-array wiring', () => {
  // 90 C copper in free air, with the factor 0.58 for 61 to 70 C.
  it.each([
    { awg: '14', tableA: 35, deratedA: 20.3, carries: false },
    { awg: '12', tableA: 40, deratedA: 23.2, carries: false },
    { awg: '10', tableA: 55, deratedA: 31.9, carries: true },
    { awg: '8', tableA: 80, deratedA: 46.4, carries: true },
  ])('$awg AWG, $deratedA A at 70 C, carries five modules: $carries', ({ tableA, carries }) => {
    const ampacityA = tableA * ambientFactor({ insulationC: 90, ambientC: 70 })
    // Five modules of 3.25 A x 1.25 make 20.3 A; 1.25 x that, 25.4 A, picks 10 AWG as the example does.
    const window = fuseWindow({
      currentA: 20.3,
      conductorAmpacityA: ampacityA,
      nominalV: 12,
      style: 'class-t',
    })
    expect(window.ok).toBe(carries)
  })

  it('10 AWG carries the largest fuse that the example allows it, 30 A', () => {
    const conductorAmpacityA = 55 * ambientFactor({ insulationC: 90, ambientC: 70 })
    const window = fuseWindow({ currentA: 20.3, conductorAmpacityA, nominalV: 12, style: 'class-t' })
    expect(window).toMatchObject({ ok: true, ratingA: 30, largestA: 30 })
  })
})
