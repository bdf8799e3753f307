import { describe, expect, it } from 'vitest'
import { METRES_PER_FOOT, MM2_PER_CIRCULAR_MIL } from '../../core/units.ts'
import {
  awgAreaMm2,
  type Conductor,
  conductorOfSize,
  conductorResistanceOhmPerM,
  temperatureFactor,
  wireResistanceOhmPerM,
} from '../../core/wiring/conductor.ts'
import { voltageDropV } from '../../core/wiring/voltage-drop.ts'

const KILOFEET_IN_M = 1000 * METRES_PER_FOOT

function standard(size: { areaMm2?: number; awg?: string }): Conductor {
  const conductor = conductorOfSize(size)
  if (conductor === undefined) throw new Error('not a standard size')
  return conductor
}

// IEC 60228:2004 Table 3, class 5, metal-coated copper, maximum ohm/km at 20 C; three secondary copies. Read.
const IEC_60228_CLASS_5: readonly (readonly [areaMm2: number, ohmPerKm: number])[] = [
  [0.75, 26.7],
  [1, 20],
  [1.5, 13.7],
  [2.5, 8.21],
  [4, 5.09],
  [6, 3.39],
  [10, 1.95],
  [16, 1.24],
  [25, 0.795],
  [35, 0.565],
  [50, 0.393],
  [70, 0.277],
  [95, 0.21],
  [120, 0.164],
  [150, 0.132],
]

// HyperPhysics (Georgia State University), American wire gages, ohm per 1000 ft of solid wire at 20 C, credited to
// Floyd, Electric Circuit Fundamentals, 2nd edition. Read.
const SOLID_AWG_20C: readonly (readonly [awg: string, ohmPerKft: number])[] = [
  ['18', 6.385],
  ['16', 4.016],
  ['14', 2.525],
  ['12', 1.588],
  ['10', 0.9989],
  ['8', 0.6282],
  ['6', 0.3951],
  ['4', 0.2485],
  ['3', 0.197],
  ['2', 0.1563],
  ['1', 0.124],
  ['1/0', 0.0983],
  ['2/0', 0.078],
  ['3/0', 0.0618],
  ['4/0', 0.049],
]

// NFPA 70 NEC Chapter 9 Table 8: circular mils and ohm per 1000 ft of uncoated stranded copper at 75 C.
// 16, 12 and 10 AWG read in training pages; the rest from memory.
const NEC_TABLE_8: readonly (readonly [awg: string, circularMils: number, ohmPerKft: number])[] = [
  ['18', 1620, 7.95],
  ['16', 2580, 4.99],
  ['14', 4110, 3.14],
  ['12', 6530, 1.98],
  ['10', 10380, 1.24],
  ['8', 16510, 0.778],
  ['6', 26240, 0.491],
  ['4', 41740, 0.308],
  ['3', 52620, 0.245],
  ['2', 66360, 0.194],
  ['1', 83690, 0.154],
  ['1/0', 105600, 0.122],
  ['2/0', 133100, 0.0967],
  ['3/0', 167800, 0.0766],
  ['4/0', 211600, 0.0608],
]

// IEC 60228:2004, temperature correction kt: the 20 C value is kt times that at t. Secondary copy, read.
const KT: readonly (readonly [temperatureC: number, kt: number])[] = [
  [5, 1.064],
  [10, 1.042],
  [15, 1.02],
  [20, 1],
  [25, 0.98],
  [30, 0.962],
  [35, 0.943],
  [40, 0.926],
  [45, 0.909],
  [50, 0.893],
  [55, 0.877],
  [60, 0.862],
  [65, 0.847],
  [70, 0.833],
  [75, 0.82],
  [80, 0.806],
  [85, 0.794],
  [90, 0.781],
  [95, 0.769],
  [100, 0.758],
]

// BS 7671 Table 4F1B, 60 C rubber flexible cable, d.c., millivolts per ampere and metre of route. Two copies that
// agree, read.
const BS_7671_4F1B: readonly (readonly [areaMm2: number, millivolts: number])[] = [
  [4, 12],
  [6, 7.8],
  [10, 4.6],
  [16, 2.9],
  [25, 1.8],
  [35, 1.31],
  [50, 0.91],
  [70, 0.64],
  [95, 0.49],
  [120, 0.38],
  [150, 0.31],
]

describe('conductorResistanceOhmPerM, metric', () => {
  it.each(IEC_60228_CLASS_5)(
    '%d mm2 has the class 5 resistance of IEC 60228 at 20 C',
    (areaMm2, ohmPerKm) => {
      expect(conductorResistanceOhmPerM(standard({ areaMm2 }), 20) * 1000).toBeCloseTo(ohmPerKm, 9)
    },
  )

  it.each(IEC_60228_CLASS_5)(
    '%d mm2 resists 10 to 20 percent more than its nominal area of copper would',
    (areaMm2) => {
      const nominal = wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.017241, areaMm2 })
      const ratio = conductorResistanceOhmPerM(standard({ areaMm2 }), 20) / nominal
      expect(ratio).toBeGreaterThan(1.1)
      expect(ratio).toBeLessThan(1.2)
    },
  )

  it.each(BS_7671_4F1B)('a pair of %d mm2 at 60 C loses the millivolts of BS 7671', (areaMm2, millivolts) => {
    const lostV = voltageDropV({
      conductor: standard({ areaMm2 }),
      currentA: 1,
      lengthM: 1,
      conductorTempC: 60,
      parallelPairs: 1,
    })
    expect(Math.abs(lostV * 1000 - millivolts) / millivolts).toBeLessThan(0.0225)
  })

  it.each([
    [35, 1.31],
    [50, 0.91],
    [95, 0.49],
  ])('a pair of %d mm2 at 60 C loses %d mV/A/m to the last printed digit', (areaMm2, millivolts) => {
    const pair = { conductor: standard({ areaMm2 }), currentA: 1000, lengthM: 1, parallelPairs: 1 }
    expect(Math.abs(voltageDropV({ ...pair, conductorTempC: 60 }) - millivolts)).toBeLessThanOrEqual(0.005)
  })
})

describe('conductorResistanceOhmPerM, AWG', () => {
  it.each(SOLID_AWG_20C)(
    '%s AWG has 2 percent more than the printed solid wire at 20 C',
    (awg, ohmPerKft) => {
      const given = conductorResistanceOhmPerM(standard({ awg }), 20) * KILOFEET_IN_M
      expect(Math.abs(given / ohmPerKft - 1.02)).toBeLessThan(0.0015)
    },
  )

  it.each(NEC_TABLE_8)(
    '%s AWG has the stranded resistance of NEC Table 8 at 75 C',
    (awg, circularMils, ohmPerKft) => {
      const given = conductorResistanceOhmPerM(standard({ awg }), 75) * KILOFEET_IN_M
      expect(Math.abs(given / ohmPerKft - 1)).toBeLessThan(0.006)
      expect(Math.abs(standard({ awg }).areaMm2 / (circularMils * MM2_PER_CIRCULAR_MIL) - 1)).toBeLessThan(
        0.003,
      )
    },
  )

  // US Army Engineer School, correspondence course EN1136: AWG 1 bare stranded copper at 20 C. Read.
  it('1 AWG has the 0.12617 ohm per 1000 ft of the US Army course', () => {
    const given = conductorResistanceOhmPerM(standard({ awg: '1' }), 20) * KILOFEET_IN_M
    expect(Math.abs(given / 0.12617 - 1)).toBeLessThan(0.003)
  })

  // EC&M magazine, The basics of calculating voltage drop: K = 12.9 ohm circular mils a foot, copper at 75 C. Read.
  it('12 AWG at 75 C has the 12.9 ohm circular mils a foot of the circular-mil method', () => {
    const { areaMm2 } = standard({ awg: '12' })
    const ohmPerFoot = conductorResistanceOhmPerM(standard({ awg: '12' }), 75) * METRES_PER_FOOT
    expect(Math.abs((ohmPerFoot * areaMm2) / MM2_PER_CIRCULAR_MIL - 12.9)).toBeLessThan(0.1)
  })

  // ASTM B258: 4/0 is 0.46 in and 1/0 is 53.49 mm2. Memory. An open textbook calls 42.40 mm2 0-gauge: it is AWG 1.
  it('knows the area of 1/0 from that of 1', () => {
    expect(awgAreaMm2(-3)).toBeCloseTo((Math.PI / 4) * (0.46 * 25.4) ** 2, 1)
    expect(awgAreaMm2(0)).toBeCloseTo(53.48, 1)
    expect(awgAreaMm2(1)).toBeCloseTo(42.41, 1)
  })
})

describe('temperatureFactor', () => {
  it.each(KT)('at %i C is one over the kt of IEC 60228', (temperatureC, kt) => {
    // kt is printed by the rounded law 250/(230 + t), which is up to 0.4 percent off the 234.5 of copper.
    expect(Math.abs(1 / temperatureFactor(temperatureC) - kt)).toBeLessThan(0.0035)
  })

  // FAA AC 43.13-1B paragraph 11-66: R(T) = R(20) x (234.5 + T)/254.5. Read. IEC 60028: 0.00393 per kelvin. Read.
  it.each([-20, 0, 40, 75, 105])('at %i C follows 0.00393 per kelvin', (temperatureC) => {
    expect(temperatureFactor(temperatureC)).toBeCloseTo(1 + 0.00393 * (temperatureC - 20), 3)
  })
})
