import { describe, expect, it } from 'vitest'
import { METRES_PER_FOOT } from '../../core/units.ts'
import {
  conductorResistanceOhmPerM,
  temperatureFactor,
  wireResistanceOhmPerM,
} from '../../core/wiring/conductor.ts'
import { voltageDropV } from '../../core/wiring/voltage-drop.ts'
import { checkTopic } from './values/check-topic.ts'
import { CONDUCTORS, IEC_60228_CLASS_5, SOLID_AWG_20C, standard } from './values/conductors.ts'

checkTopic(CONDUCTORS)

describe('conductorResistanceOhmPerM', () => {
  it.each(IEC_60228_CLASS_5)(
    '%d mm2 resists 10 to 20 percent more than its nominal area of copper would',
    (areaMm2) => {
      const nominal = wireResistanceOhmPerM({ resistivityOhmMm2PerM: 0.017241, areaMm2 })
      const ratio = conductorResistanceOhmPerM(standard({ areaMm2 }), 20) / nominal
      expect(ratio).toBeGreaterThan(1.1)
      expect(ratio).toBeLessThan(1.2)
    },
  )

  it.each([
    [35, 1.31],
    [50, 0.91],
    [95, 0.49],
  ])('a pair of %d mm2 at 60 C loses %d mV/A/m to the last digit of BS 7671', (areaMm2, millivolts) => {
    const pair = { conductor: standard({ areaMm2 }), currentA: 1000, lengthM: 1, parallelPairs: 1 }
    expect(Math.abs(voltageDropV({ ...pair, conductorTempC: 60 }) - millivolts)).toBeLessThanOrEqual(0.005)
  })

  it.each(SOLID_AWG_20C)(
    '%s AWG has 2 percent more than the printed solid wire at 20 C',
    (awg, _gauge, ohmPerKft) => {
      const given = conductorResistanceOhmPerM(standard({ awg }), 20) * 1000 * METRES_PER_FOOT
      expect(Math.abs(given / ohmPerKft - 1.02)).toBeLessThan(0.0015)
    },
  )
})

describe('temperatureFactor', () => {
  // FAA AC 43.13-1B paragraph 11-66: R(T) = R(20) x (234.5 + T)/254.5. Read. IEC 60028: 0.00393 per kelvin. Read.
  it.each([-20, 0, 40, 75, 105])('at %i C follows 0.00393 per kelvin', (temperatureC) => {
    expect(temperatureFactor(temperatureC)).toBeCloseTo(1 + 0.00393 * (temperatureC - 20), 3)
  })
})
