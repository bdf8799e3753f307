import { describe, expect, it } from 'vitest'
import { demandOf, requiredContinuousW } from '../../core/loads/demand.ts'
import { checkTopic } from './values/check-topic.ts'
import { DEMAND, loadsOf, THREE_MOTORS } from './values/demand.ts'

checkTopic(DEMAND)

// A US rural electric cooperative, portable generator page, rows printed; the results are arithmetic on them.
describe('starting load of three motors', () => {
  it('is added to what runs: neither every start at once, 5140 W, nor one after the other, 2470 W', () => {
    const demand = demandOf(loadsOf(THREE_MOTORS))
    expect(demand.runningW).toBe(2020)
    expect(demand.startingW).toBe(3520)
  })

  it('is told for a restart all at once, where they are compressors', () => {
    const loads = loadsOf(THREE_MOTORS).map((load) => ({ ...load, startKind: 'compressor' as const }))
    const note = demandOf(loads).notes.find((found) => found.code === 'restart-together')
    expect(note?.values).toEqual({ startingW: 5140, count: 3 })
  })
})

describe('a single start', () => {
  // OpenStax College Physics 2e, 23.6 Back EMF: 48 V motor, 0.400 ohm: 5.76 kW at start, 20 A (960 W) running.
  it('carries a motor of 960 W that takes 5760 W at start', () => {
    expect(demandOf(loadsOf([['motor', 960, 5760]])).startingW).toBe(5760)
  })

  // tracebase, a refrigerator second by second: 0, 1352, 92, 85, 85 W.
  it('carries a refrigerator of 85 W that takes 1352 W in its first second', () => {
    const demand = demandOf(loadsOf([['refrigerator', 85, 1352]]))
    expect(demand.startingW).toBe(1352)
    expect(demand.runningW).toBe(85)
  })
})

describe('headroom', () => {
  // E-bike study project, charging: ten chargers of 185 W on 120 V, 20 A at 80 %: 1850 W within 1920 W.
  it('of a fifth lets 1850 W run on 2400 W and not on 2300 W', () => {
    expect(requiredContinuousW(1850, 0.2)).toBeLessThanOrEqual(2400)
    expect(requiredContinuousW(1850, 0.2)).toBeGreaterThan(2300)
  })
})
