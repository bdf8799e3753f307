import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BATTERY_CHEMISTRIES, CONNECTION_KINDS, WIRE_SIZES } from '../../core/range/vocabulary.ts'
import { SOURCES } from '../../core/tables/sources.ts'
import { circuit } from '../../core/wiring/circuit.ts'
import type { CircuitDesign, CircuitInput } from '../../core/wiring/circuit-types.ts'
import { standardConductors } from '../../core/wiring/conductor.ts'

const usual: CircuitInput = {
  continuousW: 1000,
  efficiencyFullFraction: 0.85,
  nominalV: 12,
  lengthM: 1.5,
  wireSizes: 'metric',
  dropLimitFraction: 0.03,
  chemistry: 'agm',
  bankCapacityAh: 100,
  connection: { kind: 'battery-terminals' },
}

/** Steps of a fraction: integers shrink fast where a law fails. */
const stepped = (min: number, max: number, stepsPerUnit: number) =>
  fc.integer({ min: min * stepsPerUnit, max: max * stepsPerUnit }).map((steps) => steps / stepsPerUnit)

const anyInput: fc.Arbitrary<CircuitInput> = fc.record({
  continuousW: stepped(10, 20_000, 7),
  efficiencyFullFraction: stepped(0.5, 1, 1000),
  nominalV: fc.constantFrom(12, 24, 36, 48),
  lengthM: stepped(0.1, 50, 100),
  wireSizes: fc.constantFrom(...WIRE_SIZES),
  dropLimitFraction: stepped(0.005, 0.1, 1000),
  insulationC: fc.constantFrom(undefined, 60, 70, 75, 90, 105, 200),
  ambientC: fc.option(stepped(-40, 110, 10), { nil: undefined }),
  inEngineSpace: fc.boolean(),
  bundledCount: fc.constantFrom(undefined, 1, 2, 4, 8),
  chemistry: fc.constantFrom(undefined, ...BATTERY_CHEMISTRIES),
  bankCapacityAh: fc.option(fc.integer({ min: 1, max: 2000 }), { nil: undefined }),
  connection: fc.record({
    kind: fc.constantFrom(...CONNECTION_KINDS),
    limitA: fc.constantFrom(undefined, 10, 50, 175),
  }),
})

const anyLeads = fc.oneof(
  fc.record({
    areaMm2: stepped(0, 300, 10),
    lengthM: stepped(0, 5, 10),
  }),
  fc.record({
    awg: fc.constantFrom('20', '10', '5', '0', '2/0', '4/0', 'none'),
    lengthM: stepped(0, 5, 10),
    parallelPairs: fc.constantFrom(1, 2),
  }),
)

function design(change: Partial<CircuitInput> = {}): CircuitDesign {
  const result = circuit({ ...usual, ...change })
  if (!result.ok) throw new Error(`no circuit: ${result.reason}`)
  return result
}

/** Copper of the chosen conductors on one side, and where nothing is thick enough, more than any. [mm2] */
function copperMm2(input: CircuitInput): number {
  const result = circuit(input)
  return result.ok ? result.conductor.areaMm2 * result.conductor.parallelPairs : Number.POSITIVE_INFINITY
}

describe('circuit', () => {
  it('by hand: 1000 W at 12 V, 85 percent, 10.5 V, 1.5 m', () => {
    const made = design()
    // 1000 / 0.85 / 10.5 = 112.04 A; x 1.25 = 140.06 A, so 150 A; 35 mm2 of 70 C PVC carries 160 A and 25 mm2 120 A.
    expect(made.worstCaseA).toBeCloseTo(112.04, 2)
    expect(made.fuse).toMatchObject({ ratingA: 150, style: 'class-t', requiredBreakingCapacityA: 3000 })
    expect(made.conductor).toMatchObject({ label: '35 mm²', parallelPairs: 1, ampacityA: 160 })
    // 30 + 40 x (112.04/160)^2 = 49.6 C; 3 m x 0.565 mohm/m x 284.1/254.5 = 1.892 mohm.
    expect(made.conductor.conductorTempC).toBeCloseTo(49.6, 1)
    expect(made.conductor.resistanceOhm).toBeCloseTo(0.001892, 6)
    expect(made.conductor.dropV).toBeCloseTo(0.212, 3)
    expect(made.conductor.dropFraction).toBeCloseTo(0.01767, 5)
    expect(made.conductor.lossW).toBeCloseTo(23.75, 1)
    expect(made.governedBy).toBe('ampacity')
    expect(made.problems).toEqual([])
  })

  it.each([
    ['ampacity', { continuousW: 2000 }],
    ['voltage-drop', { lengthM: 6 }],
    // 162 A x 1.25 = 203 A: 50 mm2 carries 210 A, but not the next rating, 225 A.
    ['fuse', { continuousW: 1450 }],
  ] as const)('says that %s governed with %j', (governedBy, change) => {
    expect(design(change).governedBy).toBe(governedBy)
  })

  it('offers parallel pairs where one conductor is not enough, each of 50 mm2 or 1/0 AWG at least', () => {
    for (const wireSizes of WIRE_SIZES) {
      const pairs = new Set<number>()
      for (let continuousW = 200; continuousW <= 8000; continuousW += 20) {
        const result = circuit({ ...usual, wireSizes, continuousW })
        if (!result.ok) continue
        pairs.add(result.conductor.parallelPairs)
        if (result.conductor.parallelPairs > 1) expect(result.conductor.areaMm2).toBeGreaterThanOrEqual(50)
      }
      expect([...pairs]).toEqual([1, 2, 3])
    }
  })

  it('gives the reason where nothing standard will do', () => {
    expect(circuit({ ...usual, continuousW: 20_000 })).toMatchObject({
      ok: false,
      reason: 'no-standard-fuse',
    })
    const hot = circuit({ ...usual, ambientC: 75 })
    expect(hot).toMatchObject({ ok: false, reason: 'no-standard-conductor', brokenLimit: 'ampacity' })
    expect(hot).toMatchObject({ thickest: { label: '150 mm²', parallelPairs: 3, ampacityA: 0 } })
    const long = circuit({ ...usual, continuousW: 3000, lengthM: 50, wireSizes: 'awg' })
    expect(long).toMatchObject({ ok: false, reason: 'no-standard-conductor', brokenLimit: 'voltage-drop' })
  })

  it('fits a class T fuse, never a 32 V strip, at 48 V', () => {
    const made = design({ nominalV: 48, continuousW: 3000, bankCapacityAh: 50 })
    expect(made.fuse?.style).toBe('class-t')
    expect(made.fuse?.requiredVoltageV).toBeGreaterThan(32)
  })

  it('takes no notice of a cooler day, and of an engine space it does', () => {
    expect(design({ ambientC: -10 }).conductor.areaMm2).toBe(design({ ambientC: 30 }).conductor.areaMm2)
    expect(design({ inEngineSpace: true }).conductor.areaMm2).toBeGreaterThan(design().conductor.areaMm2)
  })

  it('takes 75 C where the insulation is not stated', () => {
    expect(design({ wireSizes: 'awg' })).toEqual(design({ wireSizes: 'awg', insulationC: 75 }))
  })

  it('takes the stated cut-off as the lowest voltage', () => {
    expect(design({ cutOffV: 11 }).worstCaseA).toBeCloseTo(1000 / 0.85 / 11, 9)
  })

  it.each([
    ['continuousW', { continuousW: 0 }],
    ['continuousW', { continuousW: Number.NaN }],
    ['lengthM', { lengthM: -1 }],
    ['dropLimitFraction', { dropLimitFraction: 0 }],
    ['nominalV', { nominalV: 230 }],
    ['efficiencyFullFraction', { efficiencyFullFraction: 1.01 }],
    ['insulationC', { insulationC: 40 }],
  ])('refuses %s out of its bounds', (field, change) => {
    expect(() => circuit({ ...usual, ...change })).toThrow(expect.objectContaining({ field }))
  })
})

describe('circuit, connections', () => {
  it('says how many watts a vehicle socket passes, and leaves its fuse alone', () => {
    const made = design({ continuousW: 150, connection: { kind: 'vehicle-socket', limitA: 10 } })
    expect(made.connection).toEqual({ kind: 'vehicle-socket', limitA: 10, limitW: expect.closeTo(89.25, 9) })
    expect(made.problems).toEqual([
      {
        problem: 'connection-below-full-power',
        limitA: 10,
        limitW: expect.closeTo(89.25, 9),
        worstCaseA: expect.closeTo(16.807, 3),
      },
    ])
    expect(made.fuse).toBeNull()
    expect(made.noFuse).toBe('socket-circuit-has-its-own')
  })

  it('finds nothing where the connector passes the full power', () => {
    const made = design({ continuousW: 400, connection: { kind: 'quick-connector', limitA: 50 } })
    expect(made.problems).toEqual([])
    expect(made.connection.limitW).toBeCloseTo(446.25, 9)
    expect(made.fuse).not.toBeNull()
  })

  it('limits nothing where no limit is stated', () => {
    expect(design().connection).toEqual({ kind: 'battery-terminals' })
  })
})

describe('circuit, own leads', () => {
  it('checks leads that suit and chooses nothing else', () => {
    const made = design({ ownLeads: { areaMm2: 50, lengthM: 1.5 } })
    expect(made.conductor.label).toBe('50 mm²')
    expect(made.governedBy).toBe('own-leads')
    expect(made.problems).toEqual([])
    expect(made.fuse).toMatchObject({ ratingA: 150, largestA: 200 })
  })

  it('finds leads too thin to be fused, and names what would do', () => {
    const made = design({ ownLeads: { areaMm2: 16, lengthM: 1.5 } })
    expect(made.fuse).toBeNull()
    expect(made.noFuse).toBe('conductor-too-thin')
    expect(made.problems[0]).toEqual({
      problem: 'own-leads-too-thin',
      ampacityA: 90,
      neededA: 150,
      needed: { areaMm2: 35, label: '35 mm²', parallelPairs: 1 },
    })
  })

  it('finds leads that carry the current but no standard fuse', () => {
    // 141.2 A asked, 145 A carried; the next rating is 150 A.
    const made = design({ continuousW: 1008, ownLeads: { awg: '3', lengthM: 1.5 } })
    expect(made.noFuse).toBe('no-standard-rating-in-window')
    expect(made.problems).toMatchObject([{ problem: 'own-leads-too-thin', ampacityA: 145, neededA: 150 }])
  })

  it('flags thin leads for their drop, as a poor lead and not a poor load', () => {
    const made = design({ continuousW: 200, lengthM: 4, ownLeads: { areaMm2: 4, lengthM: 4 } })
    expect(made.problems).toMatchObject([{ problem: 'own-leads-drop', limitFraction: 0.03 }])
  })

  it('finds leads shorter than the way', () => {
    const made = design({ lengthM: 2, ownLeads: { areaMm2: 50, lengthM: 1 } })
    expect(made.problems).toEqual([{ problem: 'own-leads-too-short', leadsM: 1, routeM: 2 }])
  })

  it('adds up two pairs of leads', () => {
    const leads = { areaMm2: 50, lengthM: 1.5 }
    const one = design({ ownLeads: leads }).conductor
    const two = design({ ownLeads: { ...leads, parallelPairs: 2 } }).conductor
    expect(two.ampacityA).toBe(2 * one.ampacityA)
    expect(two.dropV).toBeLessThan(one.dropV / 2)
  })

  it('says so where their size stands in no table', () => {
    const result = circuit({ ...usual, ownLeads: { awg: '22', lengthM: 1 } })
    expect(result).toMatchObject({ ok: false, reason: 'own-leads-not-tabulated' })
  })
})

describe('circuit, laws', () => {
  it('always answers, with finite figures and known sources', () => {
    fc.assert(
      fc.property(anyInput, fc.option(anyLeads, { nil: undefined }), (input, ownLeads) => {
        const result = circuit({ ...input, ownLeads })
        const figures = result.ok ? result.conductor : result.thickest
        const numbers = [
          result.worstCaseA,
          ...Object.values(figures ?? {}),
          ...Object.values(result.connection),
        ]
        for (const step of result.working) {
          numbers.push(...Object.values(step.values))
          if (step.source !== undefined) expect(SOURCES).toHaveProperty(step.source)
        }
        for (const value of numbers) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true)
      }),
      { numRuns: 1000 },
    )
  })

  it('keeps every limit: the conductor carries the fuse, the fuse the current, the drop its limit', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const result = circuit(input)
        if (!result.ok) return
        expect(result.conductor.dropFraction).toBeLessThanOrEqual(input.dropLimitFraction * (1 + 1e-12))
        expect(result.conductor.ampacityA).toBeGreaterThanOrEqual(1.25 * result.worstCaseA)
        if (input.connection.kind === 'vehicle-socket') return
        expect(result.fuse?.ratingA).toBeGreaterThanOrEqual(1.25 * result.worstCaseA)
        expect(result.fuse?.ratingA).toBeLessThanOrEqual(result.conductor.ampacityA)
      }),
      { numRuns: 1000 },
    )
  })

  it.each([
    ['a longer cable', 'lengthM', 50],
    ['a more powerful unit', 'continuousW', 20_000],
    ['hotter air', 'ambientC', 110],
    ['more conductors together', 'bundledCount', 40],
  ] as const)('%s never gives a thinner conductor', (_what, field, most) => {
    const value = fc.integer({ min: 10, max: most })
    fc.assert(
      fc.property(anyInput, value, value, (input, one, other) => {
        const less = copperMm2({ ...input, [field]: Math.min(one, other) })
        const more = copperMm2({ ...input, [field]: Math.max(one, other) })
        expect(more).toBeGreaterThanOrEqual(less)
      }),
      { numRuns: 1000 },
    )
  })

  it('a stricter drop limit or a lower efficiency never gives a thinner conductor', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const copper = copperMm2(input)
        const stricter = copperMm2({ ...input, dropLimitFraction: input.dropLimitFraction / 2 })
        const poorer = copperMm2({ ...input, efficiencyFullFraction: input.efficiencyFullFraction * 0.9 })
        expect(stricter).toBeGreaterThanOrEqual(copper)
        expect(poorer).toBeGreaterThanOrEqual(copper)
      }),
    )
  })

  it('the size before the chosen one would break a limit', () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const result = circuit(input)
        if (!result.ok || result.conductor.parallelPairs > 1) return
        const sizes = standardConductors(input.wireSizes)
        const before = sizes[sizes.findIndex((size) => size.label === result.conductor.label) - 1]
        if (before === undefined) return
        const size = before.awg === undefined ? { areaMm2: before.areaMm2 } : { awg: before.awg }
        const thinner = circuit({ ...input, ownLeads: { ...size, lengthM: input.lengthM } })
        const found = thinner.ok ? thinner.problems.map((problem) => problem.problem) : []
        expect(found.filter((problem) => problem.startsWith('own-leads'))).not.toEqual([])
      }),
      { numRuns: 1000 },
    )
  })
})
