import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bankOf } from '../../core/supply-side.ts'
import { batterySchema } from '../../shared/contract/plan.ts'

/** A battery that states each figure that a caller may state, and another value of each. */
const STATED = {
  chemistry: 'agm',
  capacityAh: 100,
  hourRateH: 20,
  otherRates: [{ hourRateH: 5, capacityAh: 82 }],
  minSocFraction: 0.5,
  startSocFraction: 1,
  temperatureC: 20,
  healthFraction: 1,
  maxDischargeA: 100,
  internalResistanceOhm: 0.004,
} as const
const OTHER = {
  chemistry: 'flooded',
  capacityAh: 101,
  hourRateH: 10,
  otherRates: [{ hourRateH: 5, capacityAh: 81 }],
  minSocFraction: 0.4,
  startSocFraction: 0.9,
  temperatureC: 21,
  healthFraction: 0.9,
  maxDischargeA: 99,
  internalResistanceOhm: 0.005,
} as const

describe('bankOf', () => {
  it('is the same bank for the same battery in another request', () => {
    const bank = bankOf({ nominalV: 12, battery: STATED })
    expect(bank).toEqual({ ...STATED, nominalV: 12 })
    bankOf({ nominalV: 24, battery: STATED })
    expect(bankOf({ nominalV: 12, battery: structuredClone(STATED) })).toBe(bank)
  })

  it('tells batteries apart by every figure that a caller may state', () => {
    const fields = Object.keys(batterySchema.shape)
    expect(Object.keys(OTHER).sort()).toEqual(fields.sort())
    fc.assert(
      fc.property(fc.subarray(fields, { minLength: 1 }), (changed) => {
        const changes = Object.fromEntries(Object.entries(OTHER).filter(([field]) => changed.includes(field)))
        const battery = { ...STATED, ...changes }
        expect(bankOf({ nominalV: 12, battery: STATED })).toEqual({ ...STATED, nominalV: 12 })
        expect(bankOf({ nominalV: 12, battery })).toEqual({ ...battery, nominalV: 12 })
        const optional = changed.find((field) => field !== 'chemistry' && field !== 'capacityAh')
        const partly = { ...STATED, ...(optional !== undefined && { [optional]: undefined }) }
        expect(bankOf({ nominalV: 12, battery: partly })).toEqual({ ...partly, nominalV: 12 })
      }),
    )
  })
})
