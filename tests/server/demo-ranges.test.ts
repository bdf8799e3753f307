import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { APPLIANCE_CATEGORIES } from '../../core/loads/vocabulary.ts'
import type { Inverter, RangeCable, RangeDocument } from '../../core/range/range-document.ts'
import {
  BATTERY_CHEMISTRIES,
  CONNECTION_KINDS,
  FUSE_STYLES,
  INVERTER_WAVEFORMS,
} from '../../core/range/vocabulary.ts'

/** What design.md, section 8, says of each demo shop. */
const DEMO_SHOPS = [
  {
    id: 'kingcup',
    name: 'Kingcup Boatyard Stores',
    locale: 'en-GB',
    currency: 'GBP',
    mains: { nominalV: 230, frequencyHz: 50 },
    wireSizes: 'metric',
    voltages: [12, 24],
    notAdvised: ['air-conditioning'],
    ownApplianceId: 'canal-boat-pump-out-pump',
    skuPattern: /^KC-[A-Z0-9-]+$/,
  },
  {
    id: 'bentcreek',
    name: 'Bent Creek Fleet Supply',
    locale: 'en-US',
    currency: 'USD',
    mains: { nominalV: 120, frequencyHz: 60 },
    wireSizes: 'awg',
    voltages: [12, 24, 48],
    notAdvised: [],
    ownApplianceId: 'taco-stand-warmer',
    skuPattern: /^BC-[A-Z0-9-]+$/,
  },
] as const

/** Assumed where a unit states none: low for a small unit, so that the current comes out high. */
const ASSUMED_EFFICIENCY_FRACTION = 0.85
/** Assumed where a unit states none: 1.75 V a cell, the end voltage of a 20 h discharge. [V per 12 V] */
const ASSUMED_CUT_OFF_V = 10.5

/**
 * Current that a single conductor may carry at 30 °C. [A]
 * AWG: 33 CFR 183.425, Table 5. mm²: ISO 10133:2012, Table A.1, from memory. Key: size, then insulation in °C.
 */
const AMPACITY_A: Readonly<Record<string, Readonly<Record<number, number>>>> = {
  '6': { 60: 29 },
  '10': { 90: 70 },
  '16': { 90: 100 },
  '25': { 105: 170 },
  '35': { 105: 210 },
  '50': { 105: 270 },
  '70': { 105: 330 },
  '95': { 105: 390 },
  '120': { 125: 480 },
  'awg 10': { 60: 40 },
  'awg 8': { 105: 80 },
  'awg 6': { 105: 120 },
  'awg 4': { 105: 160 },
  'awg 2': { 105: 210 },
  'awg 1': { 105: 245 },
  'awg 1/0': { 105: 285 },
  'awg 2/0': { 105: 330 },
  'awg 3/0': { 105: 385 },
  'awg 4/0': { 125: 475 },
}

/** Cross-sections by ASTM B258, rounded. [mm2] */
const AWG_AREA_MM2: Readonly<Record<string, number>> = {
  '10': 5.26,
  '8': 8.37,
  '6': 13.3,
  '4': 21.15,
  '2': 33.6,
  '1': 42.4,
  '1/0': 53.5,
  '2/0': 67.4,
  '3/0': 85.0,
  '4/0': 107.2,
}

/** Copper at 70 °C: (1/58) x (1 + 0.00393 x 50), IEC 60028. [ohm mm2/m] */
const COPPER_OHM_MM2_PER_M = (1 / 58) * (1 + 0.00393 * 50)
/** ABYC E-11, main feeders: 3 % of the nominal voltage. */
const DROP_LIMIT_FRACTION = 0.03
/** NEC 210.20(A): a device carries 1.25 x a continuous current. */
const FUSE_MARGIN = 1.25

function readRange(id: string): RangeDocument {
  const url = new URL(`../../server/demo/${id}.json`, import.meta.url)
  return JSON.parse(readFileSync(url, 'utf8')) as RangeDocument
}

function partsOf(range: RangeDocument) {
  return [...range.inverters, ...range.batteries, ...range.cables, ...range.fuses, ...range.connectors]
}

function fullLoadA(unit: Inverter): number {
  const efficiencyFraction = unit.efficiencyFullFraction ?? ASSUMED_EFFICIENCY_FRACTION
  const lowestV = unit.cutOffV ?? (ASSUMED_CUT_OFF_V * unit.inputNominalV) / 12
  return unit.continuousW / efficiencyFraction / lowestV
}

function ampacityA(cable: RangeCable): number {
  const size = cable.awg === undefined ? String(cable.areaMm2) : `awg ${cable.awg}`
  const insulationC = cable.insulationC ?? 60
  const found = AMPACITY_A[size]?.[insulationC]
  if (found === undefined) throw new Error(`no ampacity for ${cable.sku}`)
  return found
}

function areaMm2Of(cable: RangeCable): number {
  const area = cable.awg === undefined ? cable.areaMm2 : AWG_AREA_MM2[cable.awg]
  if (area === undefined) throw new Error(`no cross-section for ${cable.sku}`)
  return area
}

/** The smallest fuse in stock that carries the unit's full load for long and may guard its voltage. */
function smallestFuseA(range: RangeDocument, unit: Inverter): number {
  // A 48 V bank charges near 58 V, beyond 32 V fuse links (ISO 8820); a 24 V bank stays below 32 V.
  const neededV = unit.inputNominalV === 48 ? 58 : 32
  const ratings = range.fuses
    .filter((fuse) => fuse.inStock && (fuse.voltageV ?? 0) >= neededV)
    .map((fuse) => fuse.ratingA)
    .filter((ratingA) => ratingA >= FUSE_MARGIN * fullLoadA(unit))
  return Math.min(...ratings)
}

function hasFittingCable(range: RangeDocument, unit: Inverter, oneWayM: number): boolean {
  const fuseA = smallestFuseA(range, unit)
  return range.cables.some((cable) => {
    const longEnough = cable.inStock && cable.lengthM >= oneWayM && cable.lengthM < oneWayM + 0.5
    const dropV = (fullLoadA(unit) * 2 * cable.lengthM * COPPER_OHM_MM2_PER_M) / areaMm2Of(cable)
    return longEnough && ampacityA(cable) >= fuseA && dropV <= DROP_LIMIT_FRACTION * unit.inputNominalV
  })
}

describe.each(DEMO_SHOPS)('demo range of $id', (expected) => {
  const range = readRange(expected.id)
  const { shop, inverters } = range

  it('is the shop that the design describes', () => {
    const { id, name, locale, currency, mains, wireSizes, ownApplianceId } = expected
    expect(shop).toMatchObject({ id, name, locale, currency, mains, wireSizes })
    expect(shop.policy?.notAdvised).toEqual(expected.notAdvised)
    expect(shop.appliances?.map((appliance) => appliance.id)).toEqual([ownApplianceId])
    expect(shop.allowedOrigins).toEqual(['http://localhost:8787', 'http://127.0.0.1:8787'])
  })

  it('points every link at a reserved .example host (RFC 2606)', () => {
    const urls = partsOf(range).flatMap((part) => (part.url === undefined ? [] : [part.url]))
    expect(urls.length).toBeGreaterThanOrEqual(inverters.length)
    for (const url of [...urls, shop.contactUrl ?? '']) {
      expect(new URL(url).host).toBe(`${expected.id}.example`)
    }
  })

  it('names each SKU once and in the shop’s own pattern', () => {
    const skus = partsOf(range).map((part) => part.sku)
    expect(skus.filter((sku, index) => skus.indexOf(sku) !== index)).toEqual([])
    expect(skus.filter((sku) => !expected.skuPattern.test(sku))).toEqual([])
  })

  it('prices each part as a positive decimal string with two places', () => {
    const badPrices = partsOf(range).filter(
      (part) => !/^\d+\.\d{2}$/.test(part.price) || Number(part.price) <= 0,
    )
    expect(badPrices).toEqual([])
  })

  it('holds 14 to 20 inverters, no two of one size, some of them out of stock', () => {
    expect(inverters.length).toBeGreaterThanOrEqual(14)
    expect(inverters.length).toBeLessThanOrEqual(20)
    expect(new Set(inverters.map((unit) => unit.continuousW)).size).toBe(inverters.length)
    const outOfStock = inverters.filter((unit) => !unit.inStock)
    expect(outOfStock.length).toBeGreaterThanOrEqual(2)
    expect(outOfStock.length).toBeLessThan(inverters.length / 4)
  })

  it('sells inverters and batteries at the shop’s voltages and no other', () => {
    const sorted = (voltages: readonly number[]) => [...new Set(voltages)].sort((a, b) => a - b)
    expect(sorted(inverters.map((unit) => unit.inputNominalV))).toEqual(expected.voltages)
    expect(sorted(range.batteries.map((battery) => battery.nominalV))).toEqual(expected.voltages)
  })

  it.each(expected.voltages)('has both wave forms in stock at %i V', (nominalV) => {
    const inStock = inverters.filter((unit) => unit.inputNominalV === nominalV && unit.inStock)
    const waveforms = new Set(inStock.map((unit) => unit.waveform))
    expect([...waveforms].sort()).toEqual([...INVERTER_WAVEFORMS].sort())
  })

  it('climbs at 12 V pure sine from at most 150 W past 3100 W, each step at most 2.2 times the last', () => {
    const sizes = inverters
      .filter((unit) => unit.inputNominalV === 12 && unit.waveform === 'pure-sine')
      .map((unit) => unit.continuousW)
      .sort((a, b) => a - b)
    expect(sizes[0]).toBeLessThanOrEqual(150)
    expect(sizes.at(-1)).toBeGreaterThan(3100)
    const ratios = sizes.slice(1).map((size, index) => size / (sizes[index] ?? 0))
    expect(ratios.filter((ratio) => ratio > 2.2)).toEqual([])
  })

  it('gives each inverter a surge of 1.5 to 2.5 times its continuous power for 0.5 to 5 s', () => {
    const odd = inverters.filter((unit) => {
      const multiple = unit.surgeW / unit.continuousW
      return multiple < 1.5 || multiple > 2.5 || unit.surgeS < 0.5 || unit.surgeS > 5
    })
    expect(odd).toEqual([])
  })

  it('states figures of each inverter that agree with one another', () => {
    for (const unit of inverters) {
      expect(unit.outputV, unit.sku).toBe(shop.mains.nominalV)
      expect(unit.outputHz, unit.sku).toBe(shop.mains.frequencyHz)
      expect(unit.continuousVA ?? unit.continuousW, unit.sku).toBeGreaterThanOrEqual(unit.continuousW)
      expect(unit.efficiencyFullFraction ?? 0.84, unit.sku).toBeGreaterThanOrEqual(0.84)
      expect(unit.efficiencyFullFraction ?? 0.84, unit.sku).toBeLessThanOrEqual(0.92)
      expect(unit.efficiencyPeakFraction ?? 1, unit.sku).toBeGreaterThan(unit.efficiencyFullFraction ?? 0)
      expect(unit.idleW ?? 3, unit.sku).toBeGreaterThanOrEqual(3)
      expect(unit.idleW ?? 3, unit.sku).toBeLessThanOrEqual(25)
      expect(unit.restartV === undefined, unit.sku).toBe(unit.cutOffV === undefined)
      expect(unit.restartV ?? 1, unit.sku).toBeGreaterThan(unit.cutOffV ?? 0)
      expect(unit.cutOffV ?? 0, unit.sku).toBeLessThan(unit.inputNominalV)
      expect(unit.outlets, unit.sku).toBeGreaterThanOrEqual(1)
      expect(unit.outlets, unit.sku).toBeLessThanOrEqual(4)
    }
  })

  it('leaves each optional figure out of some inverters, so that the defaults are met', () => {
    const optional = ['continuousVA', 'efficiencyFullFraction', 'efficiencyPeakFraction', 'idleW', 'cutOffV']
    for (const key of optional) {
      const stated = inverters.filter((unit) => Object.hasOwn(unit, key)).length
      expect(stated, key).toBeGreaterThan(0)
      expect(stated, key).toBeLessThan(inverters.length)
    }
  })

  it('asks more for more power, and more for a pure sine wave than for as much of a modified one', () => {
    const undercut = inverters.flatMap((large) =>
      inverters.filter(
        (small) =>
          small.inputNominalV === large.inputNominalV &&
          small.continuousW < large.continuousW &&
          (small.waveform === large.waveform || large.waveform === 'pure-sine') &&
          Number(small.price) >= Number(large.price),
      ),
    )
    expect(undercut).toEqual([])
  })

  it('keeps the full-load current of a plugged-in inverter within the limit of its connection', () => {
    const plugged = inverters.filter((unit) => unit.connection.kind !== 'battery-terminals')
    expect(new Set(plugged.map((unit) => unit.connection.kind)).size).toBe(2)
    for (const unit of plugged) {
      expect(unit.connection.limitA, unit.sku).toBe(unit.connection.kind === 'vehicle-socket' ? 10 : 50)
      expect(fullLoadA(unit), unit.sku).toBeLessThanOrEqual(unit.connection.limitA ?? 0)
    }
  })

  it('puts only parts of its own range into the box, each apt for the inverter', () => {
    const including = inverters.filter((unit) => unit.includes !== undefined)
    expect(including.length).toBeGreaterThan(3)
    for (const unit of including) {
      for (const sku of unit.includes ?? []) {
        const connector = range.connectors.find((part) => part.sku === sku)
        const cable = range.cables.find((part) => part.sku === sku)
        const fuse = range.fuses.find((part) => part.sku === sku)
        expect(
          [connector, cable, fuse].filter((part) => part !== undefined),
          `${unit.sku}: ${sku}`,
        ).toHaveLength(1)
        if (connector) expect(connector.kind, unit.sku).toBe(unit.connection.kind)
        if (cable) expect(ampacityA(cable), unit.sku).toBeGreaterThanOrEqual(smallestFuseA(range, unit))
        if (fuse) expect(fuse.ratingA, unit.sku).toBe(smallestFuseA(range, unit))
      }
    }
  })

  it('stocks a fuse between 1.25 and 1.5 times the full-load current of each inverter', () => {
    for (const unit of inverters.filter((each) => each.connection.kind !== 'vehicle-socket')) {
      expect(smallestFuseA(range, unit) / fullLoadA(unit), unit.sku).toBeLessThanOrEqual(1.5)
    }
  })

  it.each([
    [1, Number.POSITIVE_INFINITY],
    [2, Number.POSITIVE_INFINITY],
    // At 3 m and over 300 A even 4/0 AWG, the thickest cable that bentcreek sells, drops more than 3 % of 12 V.
    [3, 300],
  ])(
    'stocks a cable of %i m for each inverter on battery terminals that takes up to %d A',
    (oneWayM, upToA) => {
      const onTerminals = inverters.filter(
        (unit) => unit.connection.kind === 'battery-terminals' && fullLoadA(unit) <= upToA,
      )
      expect(onTerminals.length).toBeGreaterThan(8)
      const without = onTerminals.filter((unit) => !hasFittingCable(range, unit, oneWayM))
      expect(without.map((unit) => unit.sku)).toEqual([])
    },
  )

  it('sizes cables in the shop’s system and from 0.5 to 5 m', () => {
    for (const cable of range.cables) {
      expect(cable.areaMm2 === undefined, cable.sku).toBe(expected.wireSizes === 'awg')
      expect(cable.awg === undefined, cable.sku).toBe(expected.wireSizes === 'metric')
      expect(cable.lengthM, cable.sku).toBeGreaterThanOrEqual(0.5)
      expect(cable.lengthM, cable.sku).toBeLessThanOrEqual(5)
    }
  })

  it('holds fuses of each style from 15 to 400 A and connectors of each kind', () => {
    const ratings = range.fuses.map((fuse) => fuse.ratingA)
    expect(Math.min(...ratings)).toBe(15)
    expect(Math.max(...ratings)).toBe(400)
    expect(new Set(range.fuses.map((fuse) => fuse.style))).toEqual(new Set(FUSE_STYLES))
    expect(new Set(range.connectors.map((part) => part.kind))).toEqual(new Set(CONNECTION_KINDS))
  })

  it('holds four chemistries, and lithium batteries that state what they can give', () => {
    const chemistries = new Set(range.batteries.map((battery) => battery.chemistry))
    expect(chemistries).toEqual(new Set(BATTERY_CHEMISTRIES.filter((chemistry) => chemistry !== 'nmc')))
    for (const battery of range.batteries) {
      if (battery.chemistry === 'lifepo4') expect(battery.maxDischargeA ?? 0, battery.sku).toBeGreaterThan(0)
      // A shorter hour rate never yields more charge than the rated one.
      for (const rate of battery.otherRates ?? []) {
        expect(rate.hourRateH, battery.sku).toBeLessThan(battery.hourRateH)
        expect(rate.capacityAh, battery.sku).toBeLessThan(battery.capacityAh)
      }
    }
  })

  it('lists its own appliance with ordered figures for both mains families, stated by the shop', () => {
    for (const appliance of shop.appliances ?? []) {
      expect(APPLIANCE_CATEGORIES).toContain(appliance.category)
      const { inputW, powerFactor, start, standbyW, use } = appliance
      const bands = [
        inputW.at120V,
        inputW.at230V,
        powerFactor,
        start.multiple,
        standbyW,
        ...Object.values(use),
      ]
      expect(bands).toHaveLength(7)
      for (const { low, typical, high, sourceIds } of bands) {
        expect([low, typical, high]).toEqual([low, typical, high].toSorted((a, b) => a - b))
        expect(sourceIds).toEqual(['shop-stated'])
      }
    }
  })
})

describe('the two demo ranges', () => {
  it('share no inverter size, SKU or name', () => {
    const traits = DEMO_SHOPS.flatMap((shop) =>
      readRange(shop.id).inverters.flatMap((unit) => [unit.continuousW, unit.sku, unit.name]),
    )
    expect(traits.filter((trait, index) => traits.indexOf(trait) !== index)).toEqual([])
  })
})
