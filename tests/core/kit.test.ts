import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkCart } from '../../core/range/cart-check/cart-check.ts'
import { moneyText, thousandthsOf } from '../../core/range/kit/money.ts'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import { kitOf, type SizingInput } from '../../core/sizing.ts'
import {
  anyPlan,
  cartFor,
  DEMO_SHOPS,
  demoRange,
  kitFrom,
  lineOf,
  linesToBuy,
  makeBattery,
  makeCable,
  makeConnector,
  makeFuse,
  sized,
} from '../support/kits.ts'
import { makeInverter, makeRange } from '../support/make.ts'

const watts = (value: number, minutesPerDay = 30) => ({
  id: `w${value}`,
  quantity: 1,
  minutesPerDay,
  rating: { basis: 'input-watts', watts: value } as const,
})

/** 600 W from a 1000 W unit: 105.8 A at worst, so a fuse of 132.3 A or more. */
function plan(changes: Partial<SizingInput> = {}): SizingInput {
  return {
    loads: [watts(600)],
    supply: { nominalV: 12, oneWayLengthM: 1.5, battery: { chemistry: 'agm', capacityAh: 400 } },
    preferences: { inStockOnly: true },
    ...changes,
  }
}

const parts = {
  cables: [
    makeCable('C25', { areaMm2: 25, price: '8.00', lengthM: 1.5 }),
    makeCable('C35'),
    makeCable('C50', { areaMm2: 50, price: '20.00' }),
  ],
  fuses: [makeFuse('F125', { ratingA: 125 }), makeFuse('F150'), makeFuse('F175', { ratingA: 175 })],
  connectors: [makeConnector('Q50'), makeConnector('Q120', { limitA: 120, price: '30.00' })],
  batteries: [
    makeBattery('B100', { price: '150.00' }),
    makeBattery('B200', { capacityAh: 200, price: '280.00' }),
  ],
}
const unit = makeInverter({ sku: 'U1000', price: '200.00' })
const range = makeRange([unit], parts)

describe('kitFor', () => {
  it('holds unit, cable and fuse of the range, and counts the battery that the buyer has as there', () => {
    const kit = kitFrom(range, plan())
    expect(kit.lines.map(({ role, sku, state, quantity }) => [role, sku, state, quantity])).toEqual([
      ['inverter', 'U1000', 'buy', 1],
      ['cable', 'C25', 'buy', 1],
      ['fuse', 'F150', 'buy', 1],
      ['battery', undefined, 'owned', 1],
    ])
    expect([kit.total, kit.complete]).toEqual(['218.00', true])
  })

  it('is for the unit that the buyer asks for, as long as it fits, and says so', () => {
    const two = makeRange([unit, makeInverter({ sku: 'U2000', continuousW: 2000, surgeW: 4000 })], parts)
    const asked = (sku: string) => {
      const supply = { nominalV: 12, oneWayLengthM: 1 } as const
      const sizing = sized(two, plan({ supply, preferences: { inStockOnly: true, sku } }))
      const kit = kitOf(two, sizing)
      return [sizing.recommended?.inverter.unit.sku, kit && lineOf(kit, 'inverter').reason.code]
    }
    expect(asked('U2000')).toEqual(['U2000', 'unit-asked-for'])
    expect(asked('U1000')).toEqual(['U1000', 'unit-asked-for'])
    expect(asked('NONE')).toEqual(['U1000', 'smallest-that-fits'])
    const small = makeRange([makeInverter({ sku: 'U100', continuousW: 100, surgeW: 200 }), unit], parts)
    const passedOver = sized(small, plan({ preferences: { inStockOnly: true, sku: 'U100' } }))
    expect(passedOver.recommended?.inverter.unit.sku).toBe('U1000')
  })

  it('takes the dearer cable where the cheaper one can only be had with a dearer fuse', () => {
    const fuses = [makeFuse('F150', { price: '25.00' }), makeFuse('F200', { ratingA: 200, price: '10.00' })]
    // 25 mm2 at 105 degC carries 170 A, 35 mm2 210 A (ISO 10133): 8 + 25 against 10 + 10.
    const kit = kitFrom(makeRange([unit], { ...parts, fuses }), plan())
    expect([lineOf(kit, 'cable').sku, lineOf(kit, 'fuse').sku]).toEqual(['C35', 'F200'])
  })

  it('takes the cable with the smaller drop and the fuse with the smaller rating at one price', () => {
    const cables = [makeCable('A25', { areaMm2: 25 }), makeCable('B50', { areaMm2: 50 })]
    const fuses = [makeFuse('A175', { ratingA: 175 }), makeFuse('B150')]
    const kit = kitFrom(makeRange([unit], { ...parts, cables, fuses }), plan())
    expect([lineOf(kit, 'cable').sku, lineOf(kit, 'fuse').sku]).toEqual(['B50', 'B150'])
  })

  it('uses the insulation that the cable states: 25 mm2 does at 105 degC and does not at 60', () => {
    const cool = makeCable('C25', { areaMm2: 25, lengthM: 1.5, insulationC: 60 })
    expect(lineOf(kitFrom(makeRange([unit], { ...parts, cables: [cool] }), plan()), 'cable').state).toBe(
      'not-in-range',
    )
  })

  it('reckons the drop over the length of the cable, not of the way', () => {
    const long = makeCable('LONG', { lengthM: 6, price: '1.00' })
    // 35 mm2, 105.8 A, 2 x 6 m at about 45 degC: some 0.8 V, over 0.36 V.
    expect(lineOf(kitFrom(makeRange([unit], { ...parts, cables: [long] }), plan()), 'cable').state).toBe(
      'not-in-range',
    )
  })

  it('lays equal pairs in parallel only from 1/0 AWG up and only where one pair won’t do', () => {
    const big = makeInverter({ sku: 'U4000', continuousW: 4000 })
    const cables = [makeCable('C70', { areaMm2: 70 }), makeCable('C50', { areaMm2: 50, price: '5.00' })]
    const fuses = [makeFuse('F600', { ratingA: 600 })]
    const supply = {
      nominalV: 12,
      oneWayLengthM: 1,
      battery: { chemistry: 'agm', capacityAh: 2000 },
    } as const
    const kit = kitFrom(
      makeRange([big], { ...parts, cables, fuses }),
      plan({ loads: [watts(3000, 10)], supply }),
    )
    // 423 A at worst: 529 A for the fuse. 70 mm2 carries 330 A, so two pairs 660 A.
    expect(lineOf(kit, 'cable')).toMatchObject({ sku: 'C70', quantity: 2, state: 'buy' })
    expect(lineOf(kit, 'fuse').sku).toBe('F600')
  })

  it('asks for a fuse that breaks a lithium short circuit where the battery is lithium or unknown', () => {
    const small = makeInverter({ sku: 'U300', continuousW: 300 })
    const fuses = [
      makeFuse('S40', { ratingA: 40, style: 'bolted-strip', price: '1.00' }),
      makeFuse('T40', { ratingA: 40 }),
    ]
    const both = makeRange([small], { ...parts, fuses })
    const fuseAt = (battery: NonNullable<SizingInput['supply']>['battery'], owned = false) => {
      const supply = { nominalV: 12, oneWayLengthM: 1.5, battery } as const
      const kit = owned ? { owned: [{ role: 'battery', quantity: 1 } as const] } : undefined
      return lineOf(kitFrom(both, plan({ loads: [watts(200, 5)], supply, kit })), 'fuse').sku
    }
    // 60 Ah of lead-acid: up to 600 cold cranking amperes, 1500 A (ABYC E-11), strip links break 2000 A (ISO 8820-5).
    expect(fuseAt({ chemistry: 'agm', capacityAh: 60 })).toBe('S40')
    // Lithium, or nobody knows: 20 000 A (common practice, no published source).
    expect(fuseAt({ chemistry: 'lifepo4', capacityAh: 100 })).toBe('T40')
    expect(fuseAt(undefined, true)).toBe('T40')
  })

  it('names what comes in the box and buys no second one', () => {
    const boxed = makeInverter({ sku: 'U1000', includes: ['C50', 'F150'] })
    const kit = kitFrom(makeRange([boxed], parts), plan())
    expect(lineOf(kit, 'cable')).toMatchObject({
      state: 'included',
      sku: 'C50',
      reason: { code: 'in-the-box' },
    })
    expect(lineOf(kit, 'fuse')).toMatchObject({ state: 'included', sku: 'F150' })
    expect(kit.total).toBe('100.00')
  })

  it('buys another cable where the one in the box is too short, and says why', () => {
    const boxed = makeInverter({ sku: 'U1000', includes: ['C50'] })
    const cables = [makeCable('C50', { areaMm2: 50, lengthM: 1 }), makeCable('C35')]
    const line = lineOf(kitFrom(makeRange([boxed], { ...parts, cables }), plan()), 'cable')
    expect(line).toMatchObject({ state: 'buy', sku: 'C35', reason: { code: 'box-unsuitable' } })
  })

  it('adds the connector that the unit takes, strong enough for it', () => {
    const quick = makeInverter({ sku: 'U1000', connection: { kind: 'quick-connector', limitA: 120 } })
    expect(lineOf(kitFrom(makeRange([quick], parts), plan()), 'connector').sku).toBe('Q120')
    const small = makeInverter({ sku: 'U300', continuousW: 300, connection: { kind: 'quick-connector' } })
    expect(
      lineOf(
        kitFrom(
          makeRange([small], { ...parts, fuses: [makeFuse('F40', { ratingA: 40 })] }),
          plan({ loads: [watts(200)] }),
        ),
        'connector',
      ).sku,
    ).toBe('Q50')
  })

  it('needs no cable, fuse or battery behind a vehicle socket', () => {
    const plug = makeInverter({ sku: 'U90', continuousW: 90, connection: { kind: 'vehicle-socket' } })
    const connectors = [makeConnector('SKT', { kind: 'vehicle-socket', limitA: 10 })]
    const kit = kitFrom(
      makeRange([plug], { ...parts, connectors }),
      plan({ loads: [watts(50)], supply: { nominalV: 12 } }),
    )
    expect(kit.lines.map(({ role, state }) => [role, state])).toEqual([
      ['inverter', 'buy'],
      ['connector', 'buy'],
      ['battery', 'owned'],
    ])
  })

  it('finds batteries in series and in parallel where none is stated, of one model', () => {
    const unit24 = makeInverter({ sku: 'U24', inputNominalV: 24, cutOffV: 21 })
    const supply = { nominalV: 24, oneWayLengthM: 1.5 } as const
    const loads = [watts(400, 180)]
    const line = lineOf(kitFrom(makeRange([unit24], parts), plan({ loads, supply })), 'battery')
    // 1.2 kWh at the load, half of the capacity usable: over 100 Ah at 24 V, so two strings of two, or two of 200 Ah.
    expect(line.state).toBe('buy')
    expect(line.specification).toMatchObject({ chemistry: 'agm', nominalV: 24, capacityAh: 200, inSeries: 2 })
    expect([line.sku, line.quantity]).toEqual(['B200', 2])
  })

  it('replaces a battery that does not carry the plan by one of the same chemistry', () => {
    const supply = {
      nominalV: 12,
      oneWayLengthM: 1.5,
      battery: { chemistry: 'agm', capacityAh: 40 },
    } as const
    const line = lineOf(kitFrom(range, plan({ supply })), 'battery')
    expect(line).toMatchObject({ state: 'buy', reason: { code: 'your-battery-too-small' } })
    expect(line.specification).toMatchObject({ chemistry: 'agm' })
  })

  it('buys the wished battery, at least as large as stated, where the buyer asks for one', () => {
    const line = lineOf(kitFrom(range, plan({ kit: { buyBattery: true } })), 'battery')
    expect(line).toMatchObject({ state: 'buy', reason: { code: 'lasts-plan' } })
    expect(line.specification).toMatchObject({ capacityAh: 400 })
  })

  it('tells what a part must be where the range holds none, and leaves it out of the total', () => {
    const bare = makeRange([unit])
    const kit = kitFrom(bare, plan({ supply: { nominalV: 12, oneWayLengthM: 1.5 } }))
    expect(kit.lines.map(({ role, state }) => [role, state])).toEqual([
      ['inverter', 'buy'],
      ['cable', 'not-in-range'],
      ['fuse', 'not-in-range'],
      ['battery', 'not-in-range'],
    ])
    expect(lineOf(kit, 'cable').specification).toMatchObject({ standard: expect.stringContaining('mm²') })
    expect([kit.total, kit.complete]).toEqual(['200.00', false])
  })

  it('does without what the buyer has, checks it where it can be looked up, and trusts it where it can’t', () => {
    const owned = (role: 'cable' | 'fuse', sku?: string) => ({ role, sku, quantity: 1 })
    const good = kitFrom(range, plan({ kit: { owned: [owned('cable', 'C50'), owned('fuse')] } }))
    expect(lineOf(good, 'cable')).toMatchObject({ state: 'owned', reason: { code: 'yours-does' } })
    expect(lineOf(good, 'fuse')).toMatchObject({ state: 'owned', reason: { code: 'yours-unchecked' } })
    expect(good.total).toBe('200.00')
    const thin = makeRange([unit], { ...parts, cables: [...parts.cables, makeCable('C6', { areaMm2: 6 })] })
    const bad = kitFrom(thin, plan({ kit: { owned: [owned('cable', 'C6')] } }))
    expect(lineOf(bad, 'cable')).toMatchObject({ state: 'buy', reason: { code: 'yours-unsuitable' } })
  })

  it('leaves out what is out of stock unless the buyer does not mind', () => {
    const cables = [makeCable('GONE', { price: '1.00', inStock: false }), makeCable('HERE')]
    const some = makeRange([unit], { ...parts, cables })
    const skuAt = (inStockOnly: boolean) =>
      lineOf(kitFrom(some, plan({ preferences: { inStockOnly } })), 'cable').sku
    expect([skuAt(true), skuAt(false)]).toEqual(['HERE', 'GONE'])
  })
})

describe('money', () => {
  it('adds prices exactly where floating point does not', () => {
    expect(moneyText(thousandthsOf('0.10') * 3, ['0.10'])).toBe('0.30')
    expect(moneyText(thousandthsOf('1.005') + thousandthsOf('2.20'), ['1.005', '2.20'])).toBe('3.205')
    expect(moneyText(thousandthsOf('2400') * 2, ['2400'])).toBe('4800')
  })

  it('agrees with whole-number arithmetic for any price', () => {
    fc.assert(
      fc.property(
        fc.nat(999_999_999),
        fc.nat(99),
        fc.integer({ min: 1, max: 100 }),
        (whole, cents, count) => {
          const price = `${whole}.${String(cents).padStart(2, '0')}`
          const sum = (BigInt(whole) * 100n + BigInt(cents)) * BigInt(count)
          const text = `${sum / 100n}.${String(sum % 100n).padStart(2, '0')}`
          expect(moneyText(thousandthsOf(price) * count, [price])).toBe(text)
        },
      ),
    )
  })
})

describe.each(DEMO_SHOPS)('kits of %s', (shopId) => {
  const shop = demoRange(shopId)
  const voltages = shopId === 'kingcup' ? ([12, 24] as const) : ([12, 24, 48] as const)

  it('pass their own cart check where they are complete, and miss just what is not in the range', () => {
    let complete = 0
    let partial = 0
    fc.assert(
      fc.property(anyPlan(voltages), (input) => {
        const sizing = sized(shop, input)
        const kit = kitOf(shop, sizing)
        if (kit === undefined) return
        const result = checkCart(shop, cartFor(sizing, linesToBuy(kit)))
        if (!result.ok) throw new Error('the cart’s loads can’t be read')
        const { answer } = result
        expect(answer.unknownSkus).toEqual([])
        const fails = answer.findings
          .filter(({ found }) => found.severity === 'fail')
          .map(({ found }) => found.code)
        if (kit.complete) {
          complete += 1
          expect(fails).toEqual([])
          expect(answer.ok).toBe(true)
          return
        }
        partial += 1
        const missing = kit.lines.filter(({ state }) => state === 'not-in-range').map(({ role }) => role)
        const wiring = missing.filter((role) => role !== 'battery')
        if (wiring.length > 0) expect(answer.ok).toBe(false)
      }),
      { numRuns: 400 },
    )
    expect(complete).toBeGreaterThan(40)
    expect(partial).toBeGreaterThan(5)
  })

  it('cost the sum of what is to be bought', () => {
    fc.assert(
      fc.property(anyPlan(voltages), (input) => {
        const kit = kitOf(shop, sized(shop, input))
        if (kit === undefined) return
        const cents = kit.lines
          .filter(({ state }) => state === 'buy')
          .reduce(
            (sum, { price = '', quantity }) => sum + BigInt(price.replace('.', '')) * BigInt(quantity),
            0n,
          )
        expect(BigInt(kit.total.replace('.', ''))).toBe(cents)
      }),
      { numRuns: 200 },
    )
  })
})

const smallRange: fc.Arbitrary<PreparedRange> = fc
  .record({
    cables: fc.array(
      fc.record({
        areaMm2: fc.constantFrom(25, 35, 50),
        lengthM: fc.constantFrom(1, 2, 3),
        insulationC: fc.constantFrom(75, 90, 105),
        price: fc.integer({ min: 1, max: 60 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    fuses: fc.array(
      fc.record({
        ratingA: fc.constantFrom(80, 100, 125, 150, 200),
        style: fc.constantFrom('class-t', 'class-t', 'terminal-post'),
        price: fc.integer({ min: 1, max: 60 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    batteries: fc.array(
      fc.record({
        capacityAh: fc.constantFrom(40, 80, 120, 260),
        nominalV: fc.constantFrom(12, 24),
        price: fc.integer({ min: 40, max: 300 }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    includes: fc.subarray(['c0', 'f0']),
    nominalV: fc.constantFrom(12, 24),
  })
  .map(({ cables, fuses, batteries, includes, nominalV }) => {
    const priced = <T extends { price: number }>({ price, ...rest }: T) => ({ ...rest, price: `${price}.50` })
    const has = (sku: string) => (sku === 'c0' ? cables.length > 0 : fuses.length > 0)
    const inverter = makeInverter({
      sku: 'u',
      inputNominalV: nominalV,
      cutOffV: (nominalV / 12) * 10.5,
      includes: includes.filter(has),
    })
    return makeRange([inverter], {
      cables: cables.map((cable, index) => makeCable(`c${index}`, priced(cable))),
      fuses: fuses.map((fuse, index) => makeFuse(`f${index}`, priced(fuse))),
      batteries: batteries.map((battery, index) => makeBattery(`b${index}`, priced(battery))),
    })
  })

describe('the cheapest kit', () => {
  it('is that of all carts of a small range that pass the cart check, tried one by one', () => {
    let found = 0
    fc.assert(
      fc.property(
        smallRange,
        fc.constantFrom(5, 40, 120),
        fc.constantFrom(1, 2, 3),
        (small, minutes, routeM) => {
          const nominalV = small.inverters[0]?.unit.inputNominalV ?? 12
          const sizing = sized(small, {
            loads: [watts(700, minutes)],
            supply: { nominalV, oneWayLengthM: routeM },
            preferences: { inStockOnly: true },
          })
          const kit = kitOf(small, sizing)
          const { neededBank } = sizing
          if (kit === undefined || neededBank === undefined) throw new Error('the unit fits')
          let cheapest = Number.POSITIVE_INFINITY
          const { document } = small
          for (const battery of document.batteries) {
            for (let strings = 1; strings <= 4; strings += 1) {
              if (battery.nominalV > nominalV) continue
              if (battery.capacityAh * strings < neededBank.size.capacityAh) continue
              const blocks = (strings * nominalV) / battery.nominalV
              for (const cable of [undefined, ...document.cables]) {
                for (const fuse of [undefined, ...document.fuses]) {
                  const lines = [
                    { sku: 'u', quantity: 1 },
                    { sku: battery.sku, quantity: blocks },
                    ...[cable, fuse].flatMap((part) =>
                      part === undefined ? [] : [{ sku: part.sku, quantity: 1 }],
                    ),
                  ]
                  const cost =
                    100 +
                    Number(battery.price) * blocks +
                    Number(cable?.price ?? 0) +
                    Number(fuse?.price ?? 0)
                  if (cost >= cheapest) continue
                  const result = checkCart(small, cartFor(sizing, lines))
                  if (!result.ok || !result.answer.ok) continue
                  const codes = result.answer.findings.map((each) => each.found.code)
                  if (codes.includes('day-not-carried') || codes.includes('runs-too-long')) continue
                  cheapest = cost
                }
              }
            }
          }
          expect(kit.complete).toBe(Number.isFinite(cheapest))
          if (!kit.complete) return
          found += 1
          expect(Number(kit.total)).toBe(cheapest)
        },
      ),
      { numRuns: 250 },
    )
    expect(found).toBeGreaterThan(15)
  })
})
