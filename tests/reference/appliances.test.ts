import { describe, expect, it } from 'vitest'
import type { Band } from '../../core/loads/appliance.ts'
import { APPLIANCES, applianceOf, energyKWhPerDay } from './values/appliances.ts'
import { checkTopic } from './values/check-topic.ts'

checkTopic(APPLIANCES)

const covers = ({ low, high }: Band, value: number) => low <= value && value <= high

describe('start multiples', () => {
  it('of a small fridge hold 8.5 to 17.4 times, as measured on 46-79 W units (tracebase)', () => {
    const { multiple } = applianceOf('fridge').start
    expect([multiple.low, multiple.high]).toEqual([8.5, 17.4])
  })

  // NDSU Extension: 4000 W to start and 1000 W to run for each horsepower; NEC: locked rotor 6.00 times.
  it.each([
    ['air-compressor', 4],
    ['air-compressor', 6],
    ['well-pump', 3],
    ['sump-pump', 1.5],
    ['sump-pump', 3],
  ])('%s starts at %s times running power (utility, extension service or code table)', (id, multiple) => {
    expect(covers(applianceOf(id).start.multiple, multiple)).toBe(true)
  })
})

describe('energy a day', () => {
  it('438 kWh a year is 50 W on average, what a typical fridge-freezer takes within 20 % (arithmetic)', () => {
    expect((438 * 1000) / 8760).toBe(50)
    const averageW = (energyKWhPerDay('fridge-freezer', 'at230V', 'typical') * 1000) / 24
    expect(Math.abs(averageW / 50 - 1)).toBeLessThan(0.2)
  })

  it('of a washing machine is that of one programme of 138 minutes (CREST Demand Model v2)', () => {
    expect(applianceOf('washing-machine').use.minutesPerDay.typical).toBe(138)
  })
})
