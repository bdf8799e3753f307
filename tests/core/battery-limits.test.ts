import { describe, expect, it } from 'vitest'
import type { BatteryBank } from '../../core/battery/bank.ts'
import { batteryStress } from '../../core/battery/stress.ts'

/*
 * What just meets a limit of the battery passes; what is a hair beyond it does not.
 */

const agm: BatteryBank = { nominalV: 12, chemistry: 'agm', capacityAh: 100 }
const ask = { bank: agm, dcPowerRunningW: 300, dcPowerStartingW: 1200, cutOffV: 9 }
const codesOf = (change: Partial<typeof ask>) =>
  batteryStress({ ...ask, ...change }).faults.map(({ code }) => code)

describe('batteryStress at its limits', () => {
  const { startingA, runningA, startingInverterV } = batteryStress(ask)

  it('lets a start draw exactly the discharge limit', () => {
    expect(codesOf({ bank: { ...agm, maxDischargeA: startingA } })).toEqual([])
    expect(codesOf({ bank: { ...agm, maxDischargeA: startingA * 0.9999 } })).toEqual([
      'discharge-limit-starting',
    ])
  })

  it('lets loads run at exactly the discharge limit', () => {
    const even = { dcPowerStartingW: 300 }
    expect(codesOf({ ...even, bank: { ...agm, maxDischargeA: runningA } })).toEqual([])
    expect(codesOf({ ...even, bank: { ...agm, maxDischargeA: runningA * 0.9999 } })).toEqual([
      'discharge-limit-running',
      'discharge-limit-starting',
    ])
  })

  it('lets the voltage sink to exactly the cut-off', () => {
    expect(codesOf({ cutOffV: startingInverterV })).toEqual([])
    expect(codesOf({ cutOffV: startingInverterV * 1.0001 })).toEqual(['cut-off-while-starting'])
  })

  // By hand: 13.18 V at rest at two fifths of charge; 12 % less are 11.5984 V, which 263.6 A make over 6 mohm.
  it('says nothing of a sag of exactly 12 %, from which lamps dim (common practice, no published source)', () => {
    const bank: BatteryBank = {
      nominalV: 12,
      chemistry: 'lifepo4',
      capacityAh: 100,
      internalResistanceOhm: 0.004,
      startSocFraction: 0.4,
      maxDischargeA: 5000,
    }
    const at = (dcPowerStartingW: number) => codesOf({ bank, dcPowerStartingW })
    expect(at(3057.33824)).toEqual([])
    expect(at(3058)).toEqual(['sag'])
  })

  // By hand: 12.964 V at a fifth of charge, 4 mohm stated and 1.5 times that under load: 494 A leave 10 V, the 2.5 V
  // a cell at which a protection board opens, and 494 A x 10 V are 4940 W.
  it('lets a lithium battery sink to exactly what its board allows, and no further', () => {
    const bank: BatteryBank = {
      nominalV: 12,
      chemistry: 'lifepo4',
      capacityAh: 100,
      internalResistanceOhm: 0.004,
      startSocFraction: 0.2,
      maxDischargeA: 5000,
    }
    const at = (watts: number) => codesOf({ bank, dcPowerRunningW: watts, dcPowerStartingW: watts })
    expect(at(4940)).toEqual(['sag'])
    expect(at(4941)).toEqual(['cut-off-while-running', 'cut-off-while-starting', 'sag'])
  })
})
