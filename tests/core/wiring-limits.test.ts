import { describe, expect, it } from 'vitest'
import { ampacityWorking } from '../../core/wiring/ampacity.ts'
import { chooseConductor, loadPairs } from '../../core/wiring/choose-conductor.ts'
import { circuit } from '../../core/wiring/circuit.ts'
import type { CircuitInput } from '../../core/wiring/circuit-types.ts'
import { conductorOfSize, standardConductors } from '../../core/wiring/conductor.ts'

/*
 * What just meets a limit of the wiring passes; what is a step beyond it does not.
 */

const laid = { insulationC: 105, ambientC: 30, inEngineSpace: false, bundledCount: 2 }
const conductorOf = (areaMm2: number) => {
  const conductor = conductorOfSize({ areaMm2 })
  if (conductor === undefined) throw new Error('not a standard size')
  return conductor
}

// ISO 10133:2012 Table A.1, 105 C: 6 mm2 carries 60 A, 10 mm2 carries 90 A. From memory.
describe('chooseConductor at its limits', () => {
  const asked = { currentA: 60, minA: 75, fuseRatingA: 90, lengthM: 0.1, dropLimitV: 5, laid }
  const chosen = (change: Partial<typeof asked>) => {
    const choice = chooseConductor('metric', { ...asked, ...change })
    if (!choice.ok) throw new Error('nothing was chosen')
    return { label: choice.chosen.conductor.label, governedBy: choice.governedBy }
  }

  it('takes a conductor that carries exactly the fuse, and the next for an ampere more', () => {
    expect(chosen({}).label).toBe('10 mm²')
    expect(chosen({ fuseRatingA: 91 }).label).toBe('16 mm²')
  })

  it('names the fuse as what governs where the size before carries exactly the current asked', () => {
    expect(chosen({ minA: 60 }).governedBy).toBe('fuse')
    expect(chosen({ minA: 61 }).governedBy).toBe('ampacity')
  })

  it('takes a conductor that loses exactly the limit, and the next for a hair less', () => {
    const pairs = { conductor: conductorOf(10), parallelPairs: 1 }
    const { dropV } = loadPairs(pairs, { ...asked, lengthM: 4 })
    expect(chosen({ lengthM: 4, dropLimitV: dropV }).label).toBe('10 mm²')
    const next = chosen({ lengthM: 4, dropLimitV: dropV * 0.9999 })
    expect(next).toEqual({ label: '16 mm²', governedBy: 'voltage-drop' })
  })
})

describe('conductorOfSize at its limit', () => {
  it.each(standardConductors('metric'))('takes a fifth of a percent less for $label still', (conductor) => {
    const { areaMm2, label } = conductor
    expect(conductorOfSize({ areaMm2: areaMm2 / 1.002 })?.label).toBe(label)
    expect(conductorOfSize({ areaMm2: areaMm2 / 1.003 })?.label).not.toBe(label)
  })
})

describe('ampacityWorking', () => {
  // Columns of 33 CFR 183.425 Table 5 (read) and of ISO 10133 Table A.1 (memory).
  it.each([
    ['awg', { awg: '2' }, [60, 75, 80, 90, 105, 125, 200]],
    ['metric', { areaMm2: 35 }, [60, 70, 85, 105, 125, 200]],
  ] as const)(
    'takes a column from the very degree on that it is printed for: %s',
    (_sizes, size, columns) => {
      const conductor = conductorOfSize(size)
      if (conductor === undefined) throw new Error('not a standard size')
      const columnAt = (insulationC: number) => ampacityWorking({ ...laid, conductor, insulationC }).columnC
      for (const [index, column] of columns.entries()) {
        expect(columnAt(column)).toBe(column)
        if (index > 0) expect(columnAt(column - 1)).toBe(columns[index - 1])
      }
    },
  )

  it('names the table that it looked into', () => {
    const metric = ampacityWorking({ ...laid, conductor: conductorOf(10) })
    expect(metric).toMatchObject({ tableA: 90, source: 'iso10133' })
    const awg = conductorOfSize({ awg: '2/0' })
    if (awg === undefined) throw new Error('not a standard size')
    expect(ampacityWorking({ ...laid, conductor: awg })).toMatchObject({
      tableA: 330,
      source: '33-cfr-183-425',
    })
  })
})

describe('circuit at its limits', () => {
  const usual: CircuitInput = {
    continuousW: 200,
    efficiencyFullFraction: 0.85,
    nominalV: 12,
    lengthM: 4,
    wireSizes: 'metric',
    dropLimitFraction: 0.03,
    chemistry: 'agm',
    bankCapacityAh: 100,
    connection: { kind: 'battery-terminals' },
  }
  const problemsOf = (change: Partial<CircuitInput>) => {
    const result = circuit({ ...usual, ...change })
    if (!result.ok) throw new Error(`no circuit: ${result.reason}`)
    return result.problems.map(({ problem }) => problem)
  }
  const designOf = (change: Partial<CircuitInput>) => {
    const result = circuit({ ...usual, ...change })
    if (!result.ok) throw new Error(`no circuit: ${result.reason}`)
    return result
  }

  it('lets own leads lose exactly the limit', () => {
    const ownLeads = { areaMm2: 4, lengthM: 4 }
    const { dropFraction } = designOf({ ownLeads }).conductor
    expect(problemsOf({ ownLeads, dropLimitFraction: dropFraction })).toEqual([])
    expect(problemsOf({ ownLeads, dropLimitFraction: dropFraction * 0.9999 })).toEqual(['own-leads-drop'])
  })

  it('lets own leads be exactly as long as the way', () => {
    expect(problemsOf({ lengthM: 1, ownLeads: { areaMm2: 50, lengthM: 1 } })).toEqual([])
    expect(problemsOf({ lengthM: 1, ownLeads: { areaMm2: 50, lengthM: 0.99 } })).toEqual([
      'own-leads-too-short',
    ])
  })

  it('lets own leads carry exactly 1.25 times the current, where the socket has its own fuse', () => {
    // 160 W at 10 V without loss are 16 A, and 1.25 x 16 A are the 20 A of 14 AWG at 60 C (33 CFR 183.425 Table 5).
    const socket = { kind: 'vehicle-socket' } as const
    const ownLeads = { awg: '14', lengthM: 0.1 }
    const at = (continuousW: number) =>
      problemsOf({
        continuousW,
        efficiencyFullFraction: 1,
        cutOffV: 10,
        connection: socket,
        insulationC: 60,
        lengthM: 0.1,
        ownLeads,
      })
    expect(at(160)).toEqual([])
    expect(at(160.1)).toEqual(['own-leads-too-thin'])
  })

  it('finds nothing where the connection passes exactly the worst current', () => {
    const { worstCaseA } = designOf({})
    const at = (limitA: number) => problemsOf({ connection: { kind: 'quick-connector', limitA } })
    expect(at(worstCaseA)).toEqual([])
    expect(at(worstCaseA * 0.9999)).toEqual(['connection-below-full-power'])
  })

  it('shows what the connection lets through by hand: 10 A x 10.5 V x 85 % = 89.25 W', () => {
    const { working } = designOf({ connection: { kind: 'vehicle-socket', limitA: 10 } })
    const step = working.find((found) => found.step === 'connection-limit')
    expect(step?.values).toEqual({
      kind: 'vehicle-socket',
      limitA: 10,
      lowestV: 10.5,
      efficiencyFullFraction: 0.85,
      limitW: expect.closeTo(89.25, 9),
    })
    expect(designOf({}).working.map((found) => found.step)).not.toContain('connection-limit')
  })

  it('shows the lowest voltage by the cut-off where one is stated, else by the nominal voltage', () => {
    const first = (change: Partial<CircuitInput>) => designOf(change).working[0]
    expect(first({})).toMatchObject({ values: { lowestV: 10.5 }, source: 'lead-acid-end-voltage' })
    expect(first({ cutOffV: 11 })).toMatchObject({
      values: { cutOffV: 11, lowestV: 11 },
      source: 'shop-stated',
    })
  })
})
