import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CoreError } from '../../core/errors.ts'
import { ampacityA } from '../../core/wiring/ampacity.ts'
import {
  type Conductor,
  conductorOfSize,
  conductorResistanceOhmPerM,
  standardConductors,
  temperatureFactor,
} from '../../core/wiring/conductor.ts'
import { conductorTemperatureC, resistiveDropV, voltageDropV } from '../../core/wiring/voltage-drop.ts'

const SYSTEMS = ['metric', 'awg'] as const
const INSULATIONS_C = [60, 70, 75, 80, 85, 90, 105, 125, 200]
const alone = { ambientC: 30, bundledCount: 2, inEngineSpace: false }

function pairsOf(sizes: readonly Conductor[]): readonly (readonly [Conductor, Conductor])[] {
  return sizes.slice(1).map((thicker, index) => [sizes[index] ?? thicker, thicker])
}

describe('standardConductors', () => {
  it('start at 1.5 mm2 and 16 AWG and end at 150 mm2 and 4/0 AWG', () => {
    const ends = SYSTEMS.map((system) => {
      const sizes = standardConductors(system)
      return [sizes[0]?.label, sizes.at(-1)?.label]
    })
    expect(ends).toEqual([
      ['1.5 mm²', '150 mm²'],
      ['16 AWG', '4/0 AWG'],
    ])
  })

  it.each(SYSTEMS)('%s: each next size has more copper and less resistance', (system) => {
    for (const [thinner, thicker] of pairsOf(standardConductors(system))) {
      expect(thicker.areaMm2).toBeGreaterThan(thinner.areaMm2)
      expect(thicker.resistance20COhmPerM).toBeLessThan(thinner.resistance20COhmPerM)
    }
  })

  it.each(SYSTEMS)('%s: each next size carries more, and better insulation never carries less', (system) => {
    for (const insulationC of INSULATIONS_C) {
      for (const [thinner, thicker] of pairsOf(standardConductors(system))) {
        const carried = [thinner, thicker].map((conductor) => ampacityA({ ...alone, conductor, insulationC }))
        expect(carried[1]).toBeGreaterThan(carried[0] ?? Number.NaN)
        const better = ampacityA({ ...alone, conductor: thinner, insulationC: insulationC + 15 })
        expect(better).toBeGreaterThanOrEqual(carried[0] ?? Number.NaN)
      }
    }
  })

  it('both systems hold: a metric size resists as much as AWG copper of 80 to 100 percent of its area', () => {
    for (const metric of standardConductors('metric')) {
      for (const gauge of standardConductors('awg')) {
        const metalMm2 = (gauge.areaMm2 * gauge.resistance20COhmPerM) / metric.resistance20COhmPerM
        expect(metalMm2 / metric.areaMm2).toBeGreaterThan(0.8)
        expect(metalMm2 / metric.areaMm2).toBeLessThan(1)
      }
    }
  })

  it.each([
    [35, '2'],
    [70, '2/0'],
  ])('105 C cable of %i mm2 carries what %s AWG next to it carries', (areaMm2, awg) => {
    const [metric, gauge] = [conductorOfSize({ areaMm2 }), conductorOfSize({ awg })]
    if (metric === undefined || gauge === undefined) throw new Error('not a standard size')
    const carried = [metric, gauge].map((conductor) => ampacityA({ ...alone, conductor, insulationC: 105 }))
    expect(carried[0]).toBe(carried[1])
  })
})

describe('conductorOfSize', () => {
  it.each([
    [{ areaMm2: 35 }, '35 mm²'],
    [{ areaMm2: 34.9 }, '25 mm²'],
    [{ areaMm2: 40 }, '35 mm²'],
    [{ areaMm2: 0.75 }, '0.75 mm²'],
    [{ areaMm2: 240 }, '150 mm²'],
    [{ awg: '4' }, '4 AWG'],
    [{ awg: '5' }, '6 AWG'],
    [{ awg: '0' }, '1/0 AWG'],
    [{ awg: '1/0' }, '1/0 AWG'],
    [{ awg: '0000' }, '4/0 AWG'],
    [{ awg: '4/0' }, '4/0 AWG'],
  ])('takes %j as %s', (size, label) => {
    expect(conductorOfSize(size)?.label).toBe(label)
  })

  it.each([{ areaMm2: 0.7 }, { areaMm2: 0 }, { awg: '20' }, { awg: '5/0' }, { awg: 'thick' }, { awg: '' }])(
    'knows no conductor for %j',
    (size) => {
      expect(conductorOfSize(size)).toBeUndefined()
    },
  )

  it('refuses a size stated twice or not at all', () => {
    expect(() => conductorOfSize({})).toThrow(CoreError)
    expect(() => conductorOfSize({ areaMm2: 16, awg: '6' })).toThrow(CoreError)
  })
})

describe('ampacityA', () => {
  const conductor = standardConductors('awg').find((size) => size.awg === '2') as Conductor
  const laid = { ...alone, conductor, insulationC: 90 }

  it('earns nothing from air cooler than 30 C', () => {
    expect(ampacityA({ ...laid, ambientC: -20 })).toBe(ampacityA(laid))
  })

  it('is 0 where the air is as hot as the insulation allows', () => {
    expect(ampacityA({ ...laid, ambientC: 90 })).toBe(0)
    expect(ampacityA({ ...laid, ambientC: 120 })).toBe(0)
  })

  it('takes the cooler column between two', () => {
    expect(ampacityA({ ...laid, insulationC: 104 })).toBe(ampacityA({ ...laid, insulationC: 90 }))
  })

  it('in an engine space reckons with the hotter of 50 C and the stated air', () => {
    const inside = (ambientC: number) => ampacityA({ ...laid, inEngineSpace: true, ambientC })
    expect(inside(20)).toBe(inside(45))
    expect(inside(70)).toBe(ampacityA({ ...laid, ambientC: 70 }))
    expect(inside(70)).toBeLessThan(inside(45))
  })

  it('never rises with heat or with company', () => {
    const ambient = fc.double({ min: -40, max: 120, noNaN: true })
    const count = fc.integer({ min: 1, max: 60 })
    fc.assert(
      fc.property(ambient, ambient, count, count, fc.boolean(), (air1, air2, count1, count2, engine) => {
        const [cool, hot] = [Math.min(air1, air2), Math.max(air1, air2)]
        const [few, many] = [Math.min(count1, count2), Math.max(count1, count2)]
        const best = ampacityA({ ...laid, ambientC: cool, bundledCount: few, inEngineSpace: false })
        const worst = ampacityA({ ...laid, ambientC: hot, bundledCount: many, inEngineSpace: engine })
        expect(worst).toBeLessThanOrEqual(best)
      }),
    )
  })

  it.each([
    ['insulationC', { insulationC: 59 }],
    ['insulationC', { insulationC: Number.NaN }],
    ['ambientC', { ambientC: 201 }],
    ['bundledCount', { bundledCount: 0 }],
  ])('refuses %s out of its bounds', (field, change) => {
    expect(() => ampacityA({ ...laid, ...change })).toThrow(expect.objectContaining({ field }))
  })
})

describe('voltageDropV', () => {
  const conductor = standardConductors('metric').find((size) => size.areaMm2 === 35) as Conductor
  const run = { conductor, currentA: 100, lengthM: 3, conductorTempC: 20, parallelPairs: 1 }

  it('is current times twice the one-way length times resistance', () => {
    expect(voltageDropV(run)).toBeCloseTo(100 * 2 * 3 * 0.000565, 12)
  })

  it('halves with a second pair and rises with temperature', () => {
    expect(voltageDropV({ ...run, parallelPairs: 2 })).toBeCloseTo(voltageDropV(run) / 2, 12)
    expect(voltageDropV({ ...run, conductorTempC: 75 })).toBeGreaterThan(voltageDropV(run))
  })

  it('is 0 without length or current', () => {
    expect(voltageDropV({ ...run, lengthM: 0 })).toBe(0)
    expect(voltageDropV({ ...run, currentA: 0 })).toBe(0)
  })

  it.each([
    ['currentA', { currentA: -1 }],
    ['loopLengthM', { lengthM: -1 }],
    ['temperatureC', { conductorTempC: 251 }],
    ['parallelPairs', { parallelPairs: 0 }],
  ])('refuses %s out of its bounds', (field, change) => {
    expect(() => voltageDropV({ ...run, ...change })).toThrow(expect.objectContaining({ field }))
  })

  it('agrees with resistiveDropV over the loop', () => {
    const resistanceOhmPerM = conductorResistanceOhmPerM(conductor, 50)
    const loop = resistiveDropV({ currentA: 100, loopLengthM: 6, resistanceOhmPerM })
    expect(loop).toBeCloseTo(voltageDropV({ ...run, conductorTempC: 50 }), 12)
  })
})

describe('conductorTemperatureC', () => {
  const load = { currentA: 100, ampacityA: 200, insulationC: 90, ambientC: 30 }

  it('is the air without current, the rating at full current, and a quarter of the way at half', () => {
    expect(conductorTemperatureC({ ...load, currentA: 0 })).toBe(30)
    expect(conductorTemperatureC({ ...load, currentA: 200 })).toBe(90)
    expect(conductorTemperatureC(load)).toBe(45)
  })

  it('stops at the rating for an overloaded conductor, and for one that may carry nothing', () => {
    expect(conductorTemperatureC({ ...load, currentA: 900 })).toBe(90)
    expect(conductorTemperatureC({ ...load, ampacityA: 0 })).toBe(90)
  })

  it('is never below that of the air', () => {
    expect(conductorTemperatureC({ ...load, ambientC: 120 })).toBe(120)
  })
})

describe('temperatureFactor', () => {
  it('is 1 at 20 C', () => {
    expect(temperatureFactor(20)).toBe(1)
  })

  it('refuses what is no temperature of a cable', () => {
    expect(() => temperatureFactor(251)).toThrow(CoreError)
    expect(() => temperatureFactor(Number.NaN)).toThrow(CoreError)
  })
})
