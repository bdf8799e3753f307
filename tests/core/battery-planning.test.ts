import { describe, expect, it } from 'vitest'
import type { BatteryBank } from '../../core/battery/bank.ts'
import { bankFor, blocksFor, capacityForRunAh, joinedBank } from '../../core/battery/bank-size.ts'
import { bankSizeWorking, inverterInputWorking, rechargeWorking } from '../../core/battery/battery-working.ts'
import { planDay } from '../../core/battery/day-plan.ts'
import { inverterInputW, typicalCutOffV } from '../../core/battery/inverter-input.ts'
import { rechargeFor } from '../../core/battery/recharge.ts'
import { predictRuntime } from '../../core/battery/runtime.ts'
import { batteryStress } from '../../core/battery/stress.ts'
import { judgeUse } from '../../core/battery/use-verdict.ts'

const agm: BatteryBank = { nominalV: 12, chemistry: 'agm', capacityAh: 100 }
const inverter = { continuousW: 1500, efficiencyFullFraction: 0.88, idleW: 12 }

describe('inverterInputW', () => {
  it('meets a stated idle draw and full-load efficiency exactly', () => {
    expect(inverterInputW({ ...inverter, outputW: 0 })).toBe(12)
    expect(inverterInputW({ ...inverter, outputW: 1500 })).toBeCloseTo(1500 / 0.88, 9)
  })
  it('meets them even where the unit idles on more than it loses at full load', () => {
    const odd = { continuousW: 100, efficiencyFullFraction: 0.95, idleW: 10 }
    expect(inverterInputW({ ...odd, outputW: 0 })).toBe(10)
    expect(inverterInputW({ ...odd, outputW: 100 })).toBeCloseTo(100 / 0.95, 9)
  })
  it('meets either alone', () => {
    expect(inverterInputW({ continuousW: 1000, idleW: 5, outputW: 0 })).toBe(5)
    expect(inverterInputW({ continuousW: 1000, efficiencyFullFraction: 0.9, outputW: 1000 })).toBeCloseTo(
      1000 / 0.9,
      9,
    )
  })
  it('rises with the output and never falls below it', () => {
    for (const unit of [
      inverter,
      { continuousW: 800 },
      { continuousW: 100, efficiencyFullFraction: 0.95, idleW: 40 },
    ]) {
      let last = -1
      for (let load = 0; load <= 3; load += 0.05) {
        const inputW = inverterInputW({ ...unit, outputW: load * unit.continuousW })
        expect(inputW).toBeGreaterThan(last)
        expect(inputW).toBeGreaterThanOrEqual(load * unit.continuousW)
        last = inputW
      }
    }
  })
  it.each([
    ['continuousW', { continuousW: 0, outputW: 0 }],
    ['outputW', { continuousW: 100, outputW: 1001 }],
    ['efficiencyFullFraction', { continuousW: 100, outputW: 10, efficiencyFullFraction: 1.01 }],
    ['idleW', { continuousW: 100, outputW: 10, idleW: 51 }],
  ])('refuses %s out of its bounds', (field, unit) => {
    expect(() => inverterInputW(unit)).toThrow(field)
  })
  it('takes 1.75 V per lead-acid cell as the cut-off that is not stated', () => {
    expect([12, 24, 36, 48].map(typicalCutOffV)).toEqual([10.5, 21, 31.5, 42])
  })
  it('shows a working that adds up', () => {
    const { values } = inverterInputWorking({ ...inverter, outputW: 700 })
    expect(Number(values.outputW) + Number(values.lossW)).toBeCloseTo(Number(values.inputW), 9)
  })
})

describe('batteryStress', () => {
  const ask = { bank: agm, dcPowerRunningW: 300, dcPowerStartingW: 300, cutOffV: 10.5 }
  const codes = (stress: ReturnType<typeof batteryStress>) => stress.faults.map(({ code }) => code)

  it('finds no fault with an easy load', () => {
    const stress = batteryStress(ask)
    expect(codes(stress)).toEqual([])
    expect(stress.runningA * stress.runningTerminalV).toBeCloseTo(300, 6)
  })
  it('finds a start-up that pulls the voltage under the cut-off, with its values', () => {
    const stress = batteryStress({ ...ask, dcPowerStartingW: 5000 })
    expect(codes(stress)).toEqual(['cut-off-while-starting', 'sag'])
    const fault = stress.faults[0]
    if (fault?.code !== 'cut-off-while-starting') throw new Error('another fault')
    expect(fault.values.cutOffV).toBe(10.5)
    expect(fault.values.inverterV).toBeLessThan(10.5)
  })
  it('finds currents beyond the stated limit, running and starting', () => {
    const bank = { ...agm, maxDischargeA: 20 }
    expect(codes(batteryStress({ ...ask, bank }))).toEqual([
      'discharge-limit-running',
      'discharge-limit-starting',
    ])
    expect(codes(batteryStress({ ...ask, bank, dcPowerRunningW: 100 }))).toEqual(['discharge-limit-starting'])
  })
  it('says when the limit is assumed: a lithium battery that states none', () => {
    const [fault] = batteryStress({
      bank: { nominalV: 12, chemistry: 'lifepo4', capacityAh: 50 },
      dcPowerRunningW: 1000,
      dcPowerStartingW: 1000,
    }).faults
    expect(fault).toMatchObject({
      code: 'discharge-limit-running',
      values: { limitA: 50, limitAssumed: true },
    })
  })
  it('tells a collapse as 0 V', () => {
    const stress = batteryStress({ ...ask, dcPowerStartingW: 60_000 })
    expect(stress.startingInverterV).toBe(0)
    expect(stress.sagFraction).toBe(1)
  })
  it('sags more behind a thinner cable', () => {
    const sag = (cableResistanceOhm: number) =>
      batteryStress({ ...ask, dcPowerStartingW: 1000, cableResistanceOhm }).sagFraction
    expect(sag(0.005)).toBeGreaterThan(sag(0.001))
  })
})

describe('judgeUse', () => {
  // A heavy load for a few minutes on a small bank is fine, for hours it is not: common practice, no
  // published source.
  const kettle = { bank: { ...agm, capacityAh: 110 }, dcPowerW: 1000, cutOffV: 10.5 }

  it('finds a heavy load for three minutes on a small bank fine, as an occasional one', () => {
    expect(judgeUse(kettle, 0.05)).toMatchObject({ verdict: 'occasional', neededCapacityAh: undefined })
  })
  it('finds the same load for three hours too long, and says what bank it takes', () => {
    const answer = judgeUse(kettle, 3)
    expect(answer.verdict).toBe('too-long')
    const capacityAh = answer.neededCapacityAh ?? 0
    expect(capacityAh).toBeGreaterThan(400)
    const low = (factor: number) =>
      predictRuntime({ ...kettle, bank: { ...kettle.bank, capacityAh: capacityAh * factor } }).hoursLow
    expect(low(1.0001)).toBeGreaterThanOrEqual(3)
    expect(low(0.98)).toBeLessThan(3)
  })
  it('finds a light load fine all day', () => {
    expect(judgeUse({ ...kettle, dcPowerW: 30 }, 8).verdict).toBe('all-day')
  })
  it('finds a load that the bank cannot start too heavy', () => {
    const answer = judgeUse({ ...kettle, bank: { ...agm, capacityAh: 7 } }, 0.05)
    expect(answer.verdict).toBe('too-heavy')
    expect(answer.neededCapacityAh).toBeGreaterThan(7)
  })
})

describe('capacityForRunAh', () => {
  it('finds none where none up to 10,000 Ah does', () => {
    expect(capacityForRunAh({ bank: agm, dcPowerW: 50_000, cutOffV: 10.5 }, 24)).toBeUndefined()
    expect(capacityForRunAh({ bank: { ...agm, startSocFraction: 0.4 }, dcPowerW: 10 }, 1)).toBeUndefined()
  })
})

describe('planDay', () => {
  const loads = [
    { id: 'light', powerW: 20, minutes: 240 },
    { id: 'kettle', powerW: 1000, minutes: 10 },
    { id: 'fridge', powerW: 60, minutes: 1440, dutyFraction: 0.35 },
  ]

  it('runs the heaviest first and idles for the rest of the day', () => {
    const plan = planDay({ bank: { ...agm, capacityAh: 400 }, inverter, loads })
    expect(plan.stretches.map(({ loadIds }) => loadIds)).toEqual([['kettle'], ['fridge'], ['light'], []])
    expect(plan.stretches.reduce((sum, { hours }) => sum + hours, 0)).toBeCloseTo(24, 9)
    expect(plan.ok).toBe(true)
    expect(plan.energyWh).toBeCloseTo(plan.wantedWh, 6)
  })

  it('takes the energy of the loads, the losses and the idle draw', () => {
    const plan = planDay({ bank: { ...agm, capacityAh: 400 }, inverter, loads, idleHours: 2 })
    const at = (outputW: number) => inverterInputW({ ...inverter, outputW })
    expect(plan.wantedWh).toBeCloseTo(at(1000) / 6 + at(60) * 8.4 + at(20) * 4 + 12 * 2, 6)
  })

  it('says where a small bank gives up, and counts less than a day', () => {
    const plan = planDay({ bank: agm, inverter, loads })
    expect(plan.ok).toBe(false)
    expect(plan.stopped?.limitedBy).toBe('state-of-charge')
    expect(plan.socLeftFraction).toBeCloseTo(0.5, 9)
    expect(plan.daysOfAutonomy).toBeLessThan(1)
    expect(plan.daysOfAutonomy).toBeCloseTo(plan.energyWh / plan.wantedWh, 9)
  })

  it('stops at once under a load that the bank cannot carry', () => {
    const plan = planDay({ bank: { ...agm, capacityAh: 7 }, inverter, loads, cutOffV: 10.5 })
    expect(plan.stopped).toMatchObject({ atH: 0, limitedBy: 'cut-off-voltage', loadIds: ['kettle'] })
  })

  it('lets loads that fill more than a day run beside each other, each for its own time', () => {
    const long = [
      { id: 'a', powerW: 50, minutes: 1200 },
      { id: 'b', powerW: 40, minutes: 1200 },
    ]
    const plan = planDay({ bank: { ...agm, capacityAh: 1000 }, loads: long })
    const hoursOf = (id: string) =>
      plan.stretches.filter(({ loadIds }) => loadIds.includes(id)).reduce((sum, { hours }) => sum + hours, 0)
    expect(hoursOf('a')).toBeCloseTo(20, 9)
    expect(hoursOf('b')).toBeCloseTo(20, 9)
    expect(plan.stretches[0]?.loadIds).toEqual(['a', 'b'])
    expect(plan.wantedWh).toBeCloseTo(50 * 20 + 40 * 20, 6)
  })

  it('agrees with the run time of a steady load within 0.2 %', () => {
    const run = predictRuntime({ bank: agm, dcPowerW: 60 })
    const plan = planDay({ bank: agm, loads: [{ id: 'steady', powerW: 60, minutes: 1440 }] })
    expect(plan.ok).toBe(false)
    expect(Math.abs((plan.stopped?.atH ?? 0) / run.hours - 1)).toBeLessThan(0.002)
  })

  it('counts as many days as the charge lasts', () => {
    const plan = planDay({
      bank: { ...agm, capacityAh: 1000 },
      loads: [{ id: 'x', powerW: 100, minutes: 600 }],
    })
    const used = 1 - plan.socLeftFraction
    expect(plan.daysOfAutonomy).toBeCloseTo(0.5 / used, 9)
    expect(planDay({ bank: agm, loads: [] }).daysOfAutonomy).toBe(365)
  })
})

describe('bankFor', () => {
  const ask = { energyWhPerDay: 600, days: 2, chemistry: 'agm', nominalV: 12 } as const

  it('is bound by the current where a short heavy load asks for more than the energy does', () => {
    expect(bankFor(ask)).toMatchObject({ boundBy: 'energy', capacityAh: 200 })
    expect(bankFor({ ...ask, peakDcPowerW: 4800 })).toMatchObject({ boundBy: 'current', capacityAh: 400 })
  })
  it('asks for more in the cold', () => {
    expect(bankFor({ ...ask, temperatureC: 0 }).byEnergyAh).toBeGreaterThan(bankFor(ask).byEnergyAh)
  })
  it('shows a working with its capacity', () => {
    expect(bankSizeWorking(ask, bankFor(ask)).values).toMatchObject({ capacityAh: 200, usableFraction: 0.5 })
  })
  it.each([0, 31])('refuses %d days', (days) => {
    expect(() => bankFor({ ...ask, days })).toThrow('days')
  })
})

describe('blocksFor', () => {
  const block = { nominalV: 12, capacityAh: 100 }
  it('takes one string for what one string holds, two for a little more', () => {
    expect(blocksFor({ block, nominalV: 24, capacityAh: 100 })).toMatchObject({
      inSeries: 2,
      inParallel: 1,
      blocks: 2,
    })
    expect(blocksFor({ block, nominalV: 24, capacityAh: 101 })).toMatchObject({
      inSeries: 2,
      inParallel: 2,
      blocks: 4,
    })
  })
  it('refuses a voltage that the blocks do not make', () => {
    expect(blocksFor({ block: { ...block, nominalV: 24 }, nominalV: 36, capacityAh: 50 })).toMatchObject({
      ok: false,
      reason: 'voltage-not-a-multiple',
    })
    expect(blocksFor({ block: { ...block, nominalV: 24 }, nominalV: 12, capacityAh: 50 }).ok).toBe(false)
  })
  it('refuses more strings than allowed, and says how many it would take', () => {
    expect(blocksFor({ block, nominalV: 12, capacityAh: 401 })).toEqual({
      ok: false,
      reason: 'too-many-in-parallel',
      inParallel: 5,
    })
    expect(blocksFor({ block, nominalV: 12, capacityAh: 401, maxParallel: 5 }).ok).toBe(true)
  })
})

describe('joinedBank', () => {
  it('adds voltage and resistance in series, capacity and limit in parallel', () => {
    const bank = joinedBank(
      { ...agm, internalResistanceOhm: 0.004, maxDischargeA: 100 },
      { inSeries: 2, inParallel: 3 },
    )
    expect(bank).toMatchObject({ nominalV: 24, capacityAh: 300, maxDischargeA: 300 })
    expect(bank.internalResistanceOhm).toBeCloseTo((0.004 * 2) / 3, 12)
  })
  it('refuses a voltage that no bank has', () => {
    expect(() => joinedBank(agm, { inSeries: 5, inParallel: 1 })).toThrow('no bank voltage')
  })
})

describe('rechargeFor', () => {
  const bank = { chemistry: 'lifepo4', nominalV: 12, capacityAh: 100 } as const

  it('flags lithium below 0 C, not at 0 C', () => {
    const at = (temperatureC: number) =>
      rechargeFor({ bank: { ...bank, temperatureC }, energyWh: 500 }).warnings
    expect(at(-0.1)).toContain('lithium-charge-below-freezing')
    expect(at(0)).toEqual([])
  })
  it('asks for more energy than was taken, and for a panel that gives it in the sun hours', () => {
    const recharge = rechargeFor({ bank, energyWh: 470, sunHours: 4 })
    expect(recharge.energyFromSourceWh).toBeCloseTo(500, 9)
    expect(recharge.solarW).toBeCloseTo(500 / 4 / 0.75, 9)
    expect(recharge.chargerHours).toBeUndefined()
  })
  it('holds the charger to what the battery takes', () => {
    const hours = (chargerA: number) => rechargeFor({ bank, energyWh: 600, chargerA })
    expect(hours(50).chargerHours).toBeCloseTo((50 * 1.02) / 50, 9)
    expect(hours(100).chargerHours).toBe(hours(50).chargerHours)
    expect(hours(100).warnings).toEqual(['charge-current-above-limit'])
  })
  it('adds tapering time for lead-acid only', () => {
    expect(rechargeFor({ bank, energyWh: 1 }).absorptionHours).toBe(0)
    expect(
      rechargeFor({ bank: { ...bank, chemistry: 'flooded' }, energyWh: 1 }).absorptionHours,
    ).toBeGreaterThan(0)
  })
  it('shows a working of what was asked for, and of nothing else', () => {
    const question = { bank, energyWh: 470, sunHours: 4 }
    const { values } = rechargeWorking(question, rechargeFor(question))
    expect(Number(values.solarW) * 4 * 0.75).toBeCloseTo(Number(values.energyFromSourceWh), 6)
    expect(values).not.toHaveProperty('chargerHours')
  })
})
