import { describe, expect, it } from 'vitest'
import { METRES_PER_FOOT } from '../../core/units.ts'
import { ambientFactor } from '../../core/wiring/ampacity.ts'
import { worstCaseCurrentA } from '../../core/wiring/battery-current.ts'
import {
  conductorOfSize,
  conductorResistanceOhmPerM,
  wireResistanceOhmPerM,
} from '../../core/wiring/conductor.ts'
import { fuseWindow } from '../../core/wiring/fuse.ts'
import { resistiveDropV, voltageDropV } from '../../core/wiring/voltage-drop.ts'

/** Drop along a length that counts the way back already. */
function loopDropV(currentA: number, loopFt: number, ohmPerFt: number): number {
  return resistiveDropV({
    currentA,
    loopLengthM: loopFt * METRES_PER_FOOT,
    resistanceOhmPerM: ohmPerFt / METRES_PER_FOOT,
  })
}

/** Drop along a one-way length: the current comes back the same way. */
function oneWayDropV(currentA: number, oneWayFt: number, ohmPerFt: number): number {
  return loopDropV(currentA, 2 * oneWayFt, ohmPerFt)
}

// US FAA AC 43.13-1B CHG 1 (27 September 2001), chapter 11, Tables 11-7 and 11-8 and example 1 of paragraph 11-67;
// resistances of its Table 11-9. Page copies, read. The run counts the way back: no factor of two.
describe('FAA AC 43.13-1B, whole-loop lengths', () => {
  it.each([
    { row: '11-7, 1 V, 6 AWG', runFt: 107, ohmPerFt: 0.00044, printedV: 0.942 },
    { row: '11-7, 0.5 V, 4 AWG', runFt: 90, ohmPerFt: 0.00028, printedV: 0.504 },
    { row: '11-7, 7 V, 14 AWG', runFt: 100, ohmPerFt: 0.00306, printedV: 6.12 },
    { row: '11-8, 1 V, 10 AWG', runFt: 39, ohmPerFt: 0.00126, printedV: 0.98 },
    { row: '11-8, 7 V, 10 AWG', runFt: 273, ohmPerFt: 0.00126, printedV: 6.88 },
  ])('$row: 20 A along $runFt ft loses $printedV V', ({ runFt, ohmPerFt, printedV }) => {
    expect(Math.abs(loopDropV(20, runFt, ohmPerFt) - printedV)).toBeLessThan(0.005)
  })

  it('11-8, 0.5 V, 10 AWG: loses 0.491 V and not the misprinted 0.366 V', () => {
    const lostV = loopDropV(20, 19.5, 0.00126)
    expect(lostV).toBeCloseTo(0.4914, 4)
    expect(Math.abs(lostV - 0.366)).toBeGreaterThan(0.1)
  })

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
  // Electrical worker training lesson, low-voltage circuits, page 135 (NEC Chapter 9 Table 8, 16 AWG). Read.
  it('4 A along 100 ft of 16 AWG at 24 V loses 4.0 V, 16.7 percent by the rounded print', () => {
    const lostV = oneWayDropV(4, 100, 4.99 / 1000)
    expect(lostV).toBeCloseTo(3.992, 3)
    expect(Math.abs((lostV / 24) * 100 - 16.7)).toBeLessThan(0.1)
  })

  // Trades mathematics study guide, wire sizing and voltage drop (NEC Chapter 9 Table 8, 12 AWG). Read.
  it('20 A along 100 ft of 12 AWG at 240 V loses 7.92 V, 3.3 percent', () => {
    const lostV = oneWayDropV(20, 100, 1.98 / 1000)
    expect(lostV).toBeCloseTo(7.92, 6)
    expect((lostV / 240) * 100).toBeCloseTo(3.3, 6)
  })

  it('voltageDropV counts the way back, with its own conductors at 75 C', () => {
    const conductor = conductorOfSize({ awg: '12' })
    if (conductor === undefined) throw new Error('not a standard size')
    const run = { conductor, currentA: 20, lengthM: 100 * METRES_PER_FOOT, parallelPairs: 1 }
    expect(Math.abs(voltageDropV({ ...run, conductorTempC: 75 }) - 7.92)).toBeLessThan(0.06)
  })

  // EC&M magazine, The basics of calculating voltage drop, example: three-phase, 1.732, K = 12.9. Read.
  it('20 A along 200 ft, three-phase, 14.4 V allowed, takes 12 AWG and refuses 14 AWG', () => {
    const lostV = (circularMils: number) => loopDropV(20, 1.732 * 200, 12.9 / circularMils)
    expect(lostV(1) / 14.4).toBeCloseTo(6206.3, 0)
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

  // BS 7671 method, UK contractor's article: 6 kW at 230 V and power factor 0.7 as the article has it, 10 mm2. Read.
  it('37.3 A along 30 m at 4.4 mV/A/m stays below 5 V; 40 A at 35 C asks for 42.55 A', () => {
    const currentA = (6000 / 230) * (1 / 0.7)
    expect(currentA).toBeCloseTo(37.27, 2)
    const lostV = resistiveDropV({ currentA, loopLengthM: 2 * 30, resistanceOhmPerM: 0.0044 / 2 })
    expect(lostV).toBeLessThan(5)
    expect(Math.abs(lostV - 4.924)).toBeLessThan(0.01)
    // The article rounds the factor of 70 C insulation at 35 C to 0.94.
    expect(Math.abs(40 / ambientFactor({ insulationC: 70, ambientC: 35 }) - 42.55)).toBeLessThan(0.25)
  })

  // IEC 60364-5-52:2009 Annex G: u = b x rho1 x L / S x I, b = 2, rho1 = 0.0225 for copper. Copy, read; the
  // 18 mV/A/m of BS 7671 for 2.5 mm2 is from memory.
  it('2.5 mm2 loses 18 mV/A/m by Annex G', () => {
    const resistanceOhmPerM = wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0225, areaMm2: 2.5 })
    expect(resistiveDropV({ currentA: 1, loopLengthM: 2, resistanceOhmPerM }) * 1000).toBeCloseTo(18, 9)
  })
})

// OpenStax College Physics 2e and University Physics vol. 2 (CC BY), problems and examples. Publisher's source, read.
describe('textbook wires', () => {
  const circleMm2 = (diameterMm: number) => (Math.PI / 4) * diameterMm ** 2

  // College Physics 2e, module m42346.
  it('20 m of 12-gauge wire, 2.053 mm, resists 0.104 ohm', () => {
    const wire = { resistivityOhmMm2PerM: 0.0172, areaMm2: circleMm2(2.053) }
    expect(20 * wireResistanceOhmPerM(wire)).toBeCloseTo(0.104, 3)
  })

  // College Physics 2e, modules m42344 and m42714.
  it.each([
    { ohm: 0.06, lostV: 0.3, lossW: 1.5 },
    { ohm: 0.3, lostV: 1.5, lossW: 7.5 },
  ])('an extension cord of $ohm ohm at 5 A loses $lostV V and $lossW W', ({ ohm, lostV, lossW }) => {
    const givenV = resistiveDropV({ currentA: 5, loopLengthM: 1, resistanceOhmPerM: ohm })
    expect(givenV).toBeCloseTo(lostV, 9)
    expect(givenV * 5).toBeCloseTo(lossW, 9)
  })

  // College Physics 2e, module m42714: the printed 25.5 W is a hundred times too small.
  it('1 km of 00-gauge wire at 100 A loses 2.55 kW and not the misprinted 25.5 W', () => {
    const wire = { resistivityOhmMm2PerM: 0.0172, areaMm2: circleMm2(9.266) }
    const resistanceOhmPerM = wireResistanceOhmPerM(wire)
    const lossW = 100 * resistiveDropV({ currentA: 100, loopLengthM: 1000, resistanceOhmPerM })
    expect(lossW).toBeCloseTo(2551, 0)
    expect(lossW / 25.5).toBeGreaterThan(99)
  })

  // University Physics vol. 2, module m58735; 42.40 mm2 is called 0-gauge there and is AWG 1.
  it('60 km of 42.4 mm2 at 100 A resists 23.77 ohm and loses 237.7 kW', () => {
    const resistanceOhmPerM = wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.0168, areaMm2: 42.4 })
    expect(60_000 * resistanceOhmPerM).toBeCloseTo(23.77, 2)
    const lossW = 100 * resistiveDropV({ currentA: 100, loopLengthM: 60_000, resistanceOhmPerM })
    expect(Math.abs(lossW - 237_700)).toBeLessThan(50)
  })

  // College Physics 2e, module m42357: a 12 V battery of 0.01 ohm feeds a starter motor of 0.05 ohm.
  it.each([
    { leads: 'clean', leadOhm: 0, currentA: 200, loadV: 10, loadW: 2000 },
    { leads: 'corroded', leadOhm: 0.09, currentA: 80, loadV: 4, loadW: 320 },
  ])('$leads leads leave $loadV V to a 0.05 ohm load', ({ leadOhm, currentA, loadV, loadW }) => {
    const lostV = (ohm: number) => resistiveDropV({ currentA, loopLengthM: 1, resistanceOhmPerM: ohm })
    const leftV = 12 - lostV(0.01) - lostV(leadOhm)
    expect(leftV).toBeCloseTo(loadV, 9)
    expect(leftV / currentA).toBeCloseTo(0.05, 9)
    expect(leftV * currentA).toBeCloseTo(loadW, 6)
    expect(lostV(leadOhm) / 12 > 0.03).toBe(leadOhm > 0)
  })
})

// Battery-to-inverter conductor example in the line of SAND96-2797 (Sandia National Laboratories, 1996), course text;
// ampacities of NEC Table 310.16, 60 C copper. Read.
describe('2500 W, 24 V inverter at 85 percent and 22 V', () => {
  const currentA = worstCaseCurrentA({ continuousW: 2500, efficiencyFullFraction: 0.85, lowestV: 22 })
  const bank = { chemistry: 'flooded', nominalV: 24 } as const
  const derated = ambientFactor({ insulationC: 60, ambientC: 45 })

  it('takes 134 A, which asks for 167 A, and 235 A before derating to 45 C', () => {
    expect(Math.round(currentA)).toBe(134)
    const { minA } = fuseWindow({ ...bank, currentA, conductorAmpacityA: 0 })
    expect(Math.round(minA)).toBe(167)
    expect(derated).toBeCloseTo(0.71, 2)
    expect(Math.abs(minA / 0.71 - 235)).toBeLessThan(0.5)
  })

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
  ])('$awg AWG carries $deratedA A at 70 C', ({ tableA, deratedA, carries }) => {
    const ampacityA = tableA * ambientFactor({ insulationC: 90, ambientC: 70 })
    expect(Math.abs(ampacityA - deratedA)).toBeLessThan(0.25)
    // Five modules of 3.25 A x 1.25 make 20.3 A; 1.25 x that, 25.4 A, picks 10 AWG as the example does.
    const window = fuseWindow({
      currentA: 20.3,
      conductorAmpacityA: ampacityA,
      nominalV: 12,
      style: 'class-t',
    })
    expect(window.ok).toBe(carries)
  })

  it('a module of 3.25 A asks for 4.06 A and, with the 125 percent of the fuse, for 5.08 A', () => {
    const { minA } = fuseWindow({ currentA: 3.25 * 1.25, conductorAmpacityA: 20.3, nominalV: 12 })
    expect(minA).toBeCloseTo(5.078, 3)
    expect(5 * 3.25 * 1.25).toBeCloseTo(20.3, 1)
  })

  it('10 AWG carries the largest fuse that the example allows it, 30 A', () => {
    const conductorAmpacityA = 55 * ambientFactor({ insulationC: 90, ambientC: 70 })
    const window = fuseWindow({ currentA: 20.3, conductorAmpacityA, nominalV: 12, style: 'class-t' })
    expect(window).toMatchObject({ ok: true, ratingA: 30, largestA: 30 })
  })
})
