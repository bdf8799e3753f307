import { describe, expect, it } from 'vitest'
import { demandOf, requiredContinuousW } from '../../core/loads/demand.ts'
import { resolveLoads } from '../../core/loads/resolve.ts'
import { makeLoad } from '../support/make.ts'

/** Loads of a published example: running and, where printed, starting watts. */
function loadsOf(printed: readonly (readonly [string, number, number?])[]) {
  return printed.map(([id, runningW, startingW = runningW]) =>
    makeLoad({ id, runningW, startingW, startingS: startingW > runningW ? 1 : 0 }),
  )
}

describe('starting load, published examples', () => {
  // A US rural electric cooperative, portable generator page, running and start-up watts; 3950 W is printed.
  it('makes 2250 W running and 3950 W starting of a lamp, slow cooker, refrigerator and television', () => {
    const demand = demandOf(
      loadsOf([
        ['lamp', 100],
        ['slow cooker', 200],
        ['refrigerator', 1200, 2900],
        ['television', 750],
      ]),
    )
    expect(demand.runningW).toBe(2250)
    expect(demand.startingW).toBe(3950)
  })

  // The same page, rows printed; the results of the three combination rules are arithmetic on them.
  it('adds the largest start to three running motors: 3520 W, neither 5140 W nor 2470 W', () => {
    const demand = demandOf(
      loadsOf([
        ['small refrigerator', 500, 2000],
        ['frost-free freezer', 720, 1890],
        ['sump pump, 1/3 hp', 800, 1250],
      ]),
    )
    expect(demand.runningW).toBe(2020)
    expect(demand.startingW).toBe(3520)
  })

  // The cooperative's other habit, every start at once: what our note names for compressors after a cut.
  it('names 5140 W for the same three where all restart together', () => {
    const loads = loadsOf([
      ['small refrigerator', 500, 2000],
      ['frost-free freezer', 720, 1890],
      ['sump pump, 1/3 hp', 800, 1250],
    ]).map((load) => ({ ...load, startKind: 'compressor' as const }))
    const note = demandOf(loads).notes.find((found) => found.code === 'restart-together')
    expect(note?.values).toEqual({ startingW: 5140, count: 3 })
  })

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

describe('totals and headroom, published examples', () => {
  // E-bike study project, charging: ten chargers of 185 W on 120 V, 20 A at 80 %: 1850 W within 1920 W.
  it('adds ten chargers of 185 W to 1850 W, within 80 % of 2400 W and not of 2300 W', () => {
    const demand = demandOf([makeLoad({ id: 'charger', quantity: 10, runningW: 185 })])
    expect(demand.runningW).toBe(1850)
    expect(requiredContinuousW(demand.runningW, 0.2)).toBeLessThanOrEqual(2400)
    expect(requiredContinuousW(demand.runningW, 0.2)).toBeGreaterThan(2300)
  })

  // NEC 210.19(A)/210.20(A): 16 A for three hours or more takes a 20 A circuit.
  it('asks for 20 of what carries a continuous load of 16', () => {
    expect(requiredContinuousW(16, 0.2)).toBeCloseTo(20, 12)
  })

  // KnowledgePoint (R. Blanchard), load of a rural clinic: 400 + 180 + 390 + 8000 + 1000 = 9970 Wh a day.
  it('adds 9970 Wh a day for a rural clinic', () => {
    const demand = demandOf(
      [400, 180, 390, 8000, 1000].map((energyWhPerDay, index) =>
        makeLoad({ id: `${index}`, energyWhPerDay }),
      ),
    )
    expect(demand.energyWhPerDay).toBe(9970)
  })
})

interface EnergyRow {
  readonly what: string
  readonly watts: number
  readonly hours: number
  readonly kWh: number
  readonly decimals?: number
}

/** A US rural electric cooperative's usage table, 11 March 2021: watts, hours in 30 days, kWh. */
const COOPERATIVE_ROWS: readonly EnergyRow[] = [
  { what: 'window air conditioner', watts: 1500, hours: 240, kWh: 360 },
  { what: 'dehumidifier', watts: 480, hours: 360, kWh: 172.8 },
  { what: 'air purifier', watts: 50, hours: 360, kWh: 18 },
  { what: 'attic fan', watts: 370, hours: 360, kWh: 133.2 },
  { what: 'electric blanket', watts: 150, hours: 240, kWh: 36 },
  { what: 'computer', watts: 75, hours: 150, kWh: 11.25 },
  { what: 'portable heater', watts: 1500, hours: 240, kWh: 360 },
  { what: 'old freezer', watts: 160, hours: 720, kWh: 115.2 },
  { what: 'iron', watts: 1100, hours: 5, kWh: 5.5 },
  { what: '60 W lamp', watts: 60, hours: 240, kWh: 14.4 },
  { what: 'phone charger', watts: 10, hours: 120, kWh: 1.2 },
]

/** MacKay, Sustainable Energy - without the hot air (2009), chapter 7, kWh a day, and OpenStax 20.4. */
const TEXTBOOK_ROWS: readonly EnergyRow[] = [
  { what: 'microwave, 20 minutes (MacKay ch. 7)', watts: 1400, hours: 1 / 3, kWh: 0.5, decimals: 1 },
  { what: 'hob rings (MacKay ch. 7)', watts: 3300, hours: 0.5, kWh: 1.6, decimals: 0 },
  { what: 'oven (MacKay ch. 7)', watts: 3000, hours: 0.5, kWh: 1.5 },
  { what: 'standby, 3 W (MacKay ch. 11)', watts: 3, hours: 24, kWh: 0.07, decimals: 2 },
  { what: 'standby, 40 W (MacKay ch. 11)', watts: 40, hours: 24, kWh: 1, decimals: 1 },
]

describe('energy, published rows', () => {
  it.each([...COOPERATIVE_ROWS, ...TEXTBOOK_ROWS])('$what: $watts W for $hours h makes $kWh kWh', (row) => {
    // A plan holds minutes a day: a row of more than 24 h is spread over 30 days.
    const days = row.hours > 24 ? 30 : 1
    const resolution = resolveLoads(
      [
        {
          id: 'load',
          quantity: 1,
          minutesPerDay: (row.hours * 60) / days,
          rating: { basis: 'measured-watts', watts: row.watts },
        },
      ],
      { appliances: new Map(), mains: { nominalV: 230 } },
    )
    if (!resolution.ok) throw new Error('the rating was refused')
    const kWh = (demandOf(resolution.loads).energyWhPerDay * days) / 1000
    expect(kWh).toBeCloseTo(row.kWh, row.decimals ?? 6)
  })
})
