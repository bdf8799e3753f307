import { describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { FaultyRangeError, fixedRanges } from '../../server/store/ranges.ts'
import { readRange } from '../../shared/range-reading.ts'

const spoilt = () => structuredClone(kingcup) as Record<string, unknown> & typeof kingcup

describe('fixedRanges', () => {
  it('stops the start with every fault of a range document and its JSON Pointer', () => {
    const faulty = spoilt()
    Object.assign(faulty.inverters[0] ?? {}, { continuousW: -5, colour: 'red' })
    Object.assign(faulty.shop, { currency: 'pounds' })
    const start = () => fixedRanges({ 'kingcup.json': faulty })
    expect(start).toThrow(FaultyRangeError)
    expect(start).toThrow(/kingcup\.json\/shop\/currency: Must be an ISO 4217 code/)
    expect(start).toThrow(/kingcup\.json\/inverters\/0\/continuousW: Must be at least 10\./)
    expect(start).toThrow(/kingcup\.json\/inverters\/0\/colour: There is no such property/)
  })
})

describe('readRange', () => {
  it.each([
    [
      '/inverters/1/sku',
      'twice',
      (range: typeof kingcup) => Object.assign(range.inverters[1] ?? {}, { sku: range.inverters[0]?.sku }),
    ],
    [
      '/inverters/0/surgeW',
      'below continuous power',
      (range: typeof kingcup) => Object.assign(range.inverters[0] ?? {}, { surgeW: 20 }),
    ],
    [
      '/inverters/0/includes/0',
      'No part',
      (range: typeof kingcup) => Object.assign(range.inverters[0] ?? {}, { includes: ['NONE'] }),
    ],
    [
      '/inverters/0/cutOffV',
      "can't be right",
      (range: typeof kingcup) => Object.assign(range.inverters[0] ?? {}, { cutOffV: 8.5 }),
    ],
    [
      '/cables/0',
      'only one of them',
      (range: typeof kingcup) => Object.assign(range.cables[0] ?? {}, { awg: '4' }),
    ],
  ] as const)('points to %s where the range contradicts itself', (pointer, words, spoil) => {
    const faulty = spoilt()
    spoil(faulty)
    const reading = readRange(faulty)
    if (reading.ok) throw new Error('the range was accepted')
    expect(reading.faults).toEqual([{ pointer, message: expect.stringContaining(words) }])
  })
})
