import { describe, expect, it } from 'vitest'
import { checkInverter, ROUNDING } from '../../core/inverters/checks.ts'
import { connectionLimit } from '../../core/inverters/connection.ts'
import { checkRange } from '../../core/range/check-range.ts'
import { DEFAULT_POLICY } from '../../core/range/policy.ts'
import type { Inverter, RangeDocument } from '../../core/range/range-document.ts'
import { fuseWindow } from '../../core/wiring/fuse.ts'
import { fuseSuits } from '../../core/wiring/fuse-suits.ts'
import { makeInverter, makeLoad, makeNeed, makeRange, TEST_SHOP } from '../support/make.ts'

/*
 * What just meets a limit passes; what is a step beyond it does not.
 */

const load800 = [makeLoad({ id: 'a', runningW: 800 })]

function findingsOf(unit: Partial<Inverter>, need: ReturnType<typeof makeNeed>) {
  const [prepared] = makeRange([makeInverter({ sku: 'U', ...unit })]).inverters
  if (prepared === undefined) throw new Error('the range is empty')
  return checkInverter(prepared, need)
}

const codesOf = (unit: Partial<Inverter>, need: ReturnType<typeof makeNeed>) =>
  findingsOf(unit, need).map(({ code }) => code)

describe('checkInverter at its limits', () => {
  it.each([
    [230, [207, 253], [206, 254]],
    [120, [108, 132], [107, 133]],
  ])('takes mains voltages within a tenth of %d V for the same (IEC 60038)', (nominalV, same, other) => {
    const need = { ...makeNeed(load800), mains: { nominalV, frequencyHz: 50 } as const }
    for (const outputV of same) expect(codesOf({ outputV }, need)).toEqual([])
    for (const outputV of other) expect(codesOf({ outputV }, need)).toEqual(['output-voltage-mismatch'])
  })

  it('takes exactly the headroom, and not a watt more', () => {
    expect(codesOf({ continuousW: 1000 }, makeNeed(load800))).toEqual([])
    expect(codesOf({ continuousW: 999 }, makeNeed(load800))).toEqual(['continuous-power-short'])
  })

  it('takes exactly the volt-amperes of a unit', () => {
    const need = makeNeed([makeLoad({ id: 'a', runningW: 500, runningVA: 900 })])
    expect(codesOf({ continuousVA: 900, continuousW: 900 }, need)).toEqual([])
    expect(codesOf({ continuousVA: 899, continuousW: 899 }, need)).toEqual(['apparent-power-short'])
  })

  it('leaves room for the last bits of what was reckoned, and no more', () => {
    const need = makeNeed([makeLoad({ id: 'a', runningW: 500, runningVA: 600 })])
    const asking = (requiredContinuousW: number, runningVA: number) => ({
      ...need,
      requiredContinuousW,
      demand: { ...need.demand, runningVA },
    })
    const unit = { continuousW: 1000, continuousVA: 1000 }
    expect(codesOf(unit, asking(1000 * ROUNDING, 1000 * ROUNDING))).toEqual([])
    expect(codesOf(unit, asking(1000.001, 1000.001))).toEqual([
      'continuous-power-short',
      'apparent-power-short',
    ])
  })

  it('starts what takes exactly the surge, the last bits left room for, and exactly its time', () => {
    const start = (startingW: number, startingS: number) =>
      makeNeed([makeLoad({ id: 'a', runningW: 100, startingW, startingS })])
    const unit = { continuousW: 1000, surgeW: 2000, surgeS: 3 }
    expect(codesOf(unit, start(2000 * ROUNDING, 3))).toEqual([])
    expect(codesOf(unit, start(2000.001, 3))).toEqual(['starting-power-short'])
    expect(codesOf(unit, start(2000, 3.001))).toEqual(['surge-time-short'])
    expect(codesOf(unit, start(1000, 60))).toEqual([])
  })

  it('costs exactly the highest price', () => {
    const need = makeNeed(load800)
    const upTo = (maxPrice: string) => ({
      ...need,
      preferences: { ...need.preferences, maxPrice },
      maxPriceNumber: Number(maxPrice),
    })
    expect(codesOf({ price: '99.90' }, upTo('99.90'))).toEqual([])
    expect(codesOf({ price: '99.91' }, upTo('99.90'))).toEqual(['over-price'])
  })

  it('names the first of two starts that are alike', () => {
    const starts = ['first', 'second'].map((id) =>
      makeLoad({ id, runningW: 100, startingW: 3000, startingS: 1 }),
    )
    const [surge] = findingsOf({ surgeW: 2000 }, makeNeed(starts))
    expect(surge).toMatchObject({ code: 'starting-power-short', loadIds: ['first'] })
    const [time] = findingsOf({ surgeW: 4000, surgeS: 0.5 }, makeNeed(starts))
    expect(time).toMatchObject({ code: 'surge-time-short', loadIds: ['first'] })
  })

  it('asks for no more outlets than there are loads', () => {
    const three = ['a', 'b', 'c'].map((id) => makeLoad({ id }))
    expect(codesOf({ outlets: 3 }, makeNeed(three))).toEqual([])
    expect(codesOf({ outlets: 2 }, makeNeed(three))).toEqual(['outlets-short'])
  })

  it('lets a connection carry exactly its current, for the loads and for full power', () => {
    // 125 A at 10 V and 80 % are 1000 W.
    const figures = { efficiencyFullFraction: 0.8, cutOffV: 10, continuousW: 1250 }
    const at = (runningW: number, continuousW: number, limitA: number) =>
      codesOf(
        { ...figures, continuousW, connection: { kind: 'quick-connector', limitA } },
        makeNeed([makeLoad({ id: 'a', runningW })]),
      )
    expect(at(800, 1000, 125)).toEqual([])
    expect(at(800, 1001, 125)).toEqual(['connection-below-full-power'])
    expect(at(1000, 1250, 125)).toEqual(['connection-below-full-power'])
    expect(at(1001, 1300, 125)).toEqual(['connection-limit'])
  })
})

describe('connectionLimit', () => {
  it("names the unit's own connection where both carry the same", () => {
    const own = { kind: 'quick-connector', limitA: 30 } as const
    const limitOf = (limitA: number) =>
      connectionLimit(own, { kind: 'vehicle-socket', limitA }, DEFAULT_POLICY)
    expect(limitOf(30)).toEqual(own)
    expect(limitOf(29)).toEqual({ kind: 'vehicle-socket', limitA: 29 })
  })
})

describe('fuseWindow and fuseSuits at their limits', () => {
  // 80 A x 1.25 are 100 A, a standard rating.
  const exact = { currentA: 80, conductorAmpacityA: 100, nominalV: 12, chemistry: 'lifepo4' } as const

  it('find the one rating of a window with no width', () => {
    expect(fuseWindow(exact)).toMatchObject({ ok: true, ratingA: 100, largestA: 100, minA: 100, maxA: 100 })
    expect(fuseWindow({ ...exact, conductorAmpacityA: 99 })).toMatchObject({
      ok: false,
      reason: 'conductor-too-thin',
    })
  })

  it('take a fuse whose figures are just those asked for', () => {
    const demand = { minA: 100, maxA: 100, requiredVoltageV: 57.6, requiredBreakingCapacityA: 3000 }
    const fuse = { ratingA: 100, style: 'class-t', voltageV: 57.6, breakingCapacityA: 3000 } as const
    expect(fuseSuits(fuse, demand)).toEqual([])
    const faultsOf = (changes: object) => fuseSuits({ ...fuse, ...changes }, demand).map(({ fault }) => fault)
    expect(faultsOf({ ratingA: 99 })).toEqual(['rating-below-current'])
    expect(faultsOf({ ratingA: 101 })).toEqual(['rating-above-conductor'])
    expect(faultsOf({ voltageV: 57 })).toEqual(['voltage-rating-too-low'])
    expect(faultsOf({ breakingCapacityA: 2999 })).toEqual(['breaking-capacity-too-low'])
  })
})

describe('checkRange at its limits', () => {
  const codesOfUnit = (unit: Partial<Inverter>) => {
    const document: RangeDocument = {
      shop: TEST_SHOP,
      inverters: [makeInverter({ sku: 'U', continuousW: 1000, ...unit })],
      batteries: [],
      cables: [],
      fuses: [],
      connectors: [],
    }
    return checkRange(document).map(({ code }) => code)
  }

  it('lets a unit have no surge and no volt-amperes beyond its watts', () => {
    expect(codesOfUnit({ surgeW: 1000, continuousVA: 1000 })).toEqual([])
    expect(codesOfUnit({ surgeW: 999 })).toEqual(['surge-below-continuous'])
    expect(codesOfUnit({ continuousVA: 999 })).toEqual(['apparent-below-continuous'])
  })

  it('lets a cut-off lie between three quarters and 105 % of the nominal voltage, ends included', () => {
    for (const cutOffV of [9, 12.6]) expect(codesOfUnit({ cutOffV })).toEqual([])
    for (const cutOffV of [8.9, 12.7]) expect(codesOfUnit({ cutOffV })).toEqual(['cut-off-out-of-reach'])
  })

  it('lets a unit start again at its cut-off, but not below', () => {
    expect(codesOfUnit({ cutOffV: 10.5, restartV: 10.5 })).toEqual([])
    expect(codesOfUnit({ cutOffV: 10.5, restartV: 10.4 })).toEqual(['restart-below-cut-off'])
  })
})
