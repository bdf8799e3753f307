import { describe, expect, it } from 'vitest'
import { openCircuitV } from '../../core/battery/bank.ts'
import { leadAcidShares, lithiumShare, shareAtHours } from '../../core/battery/temperature.ts'
import { CHEMISTRIES } from '../../core/tables/chemistries.ts'
import { AGM_BLOCK_V, FLOODED_BLOCK_V, GEL_BLOCK_V } from './data/battery-curves.ts'
import { BATTERY } from './values/battery.ts'
import { checkTopic } from './values/check-topic.ts'

checkTopic(BATTERY)

describe('openCircuitV between the rows of the published curves', () => {
  // Between two rows the straight line holds: a row at another state of charge would bend it.
  it.each([
    ['flooded', FLOODED_BLOCK_V],
    ['agm', AGM_BLOCK_V],
    ['gel', GEL_BLOCK_V],
  ] as const)('%s, 12 V, half-way between rows', (chemistry, curve) => {
    for (const [row, [soc, volts]] of curve.slice(0, -1).entries()) {
      const [nextSoc, nextVolts] = curve[row + 1] ?? [Number.NaN, Number.NaN]
      const ours = openCircuitV({ chemistry, nominalV: 12, socFraction: (soc + nextSoc) / 2 })
      expect(ours, `after ${soc}`).toBeCloseTo((volts + nextVolts) / 2, 9)
    }
  })
})

describe('capacity of LiFePO4 by temperature', () => {
  // Specification of a 302 Ah LiFePO4 cell, guaranteed minimum at -20 C. 0 C lies between the 91.5 % of a maker's
  // 12.8 V 45 Ah block at 0.5C and the cell's guaranteed 80 %.
  it('is the guaranteed 70 % at -20 C, lies below the chart at 0 C, and all from 20 C on', () => {
    const { kind } = CHEMISTRIES.lifepo4
    if (kind.family !== 'lithium') throw new Error('LiFePO4 is a lithium chemistry')
    expect(lithiumShare(kind, -20)).toBeCloseTo(0.7, 9)
    expect(lithiumShare(kind, 0)).toBeGreaterThan(0.88)
    expect(lithiumShare(kind, 0)).toBeLessThanOrEqual(0.915)
    for (const temperatureC of [20, 25, 40]) expect(lithiumShare(kind, temperatureC)).toBe(1)
  })

  // Battery maker's data sheet, 12.8 V 45 Ah block at 0.5C, read off a chart.
  it('is that of the chart at -10 and 10 C', () => {
    const { kind } = CHEMISTRIES.lifepo4
    if (kind.family !== 'lithium') throw new Error('LiFePO4 is a lithium chemistry')
    expect(lithiumShare(kind, -10)).toBeCloseTo(0.77, 9)
    expect(lithiumShare(kind, 10)).toBeCloseTo(0.97, 9)
  })
})

describe('leadAcidShares below the coldest row of the table', () => {
  // US Army TM 10-6140-200-14: 75 % at 0 C and 40 % at -17.8 C, so 56.5 % at the coldest row (-9.4 C) on the line
  // between them. Over 15 minutes that row is 0.55, and at -17.8 C what is left is 0.55 x 40 / 56.5 = 0.3893.
  it('falls from there as the military figures do', () => {
    expect(shareAtHours(leadAcidShares(-17.8), 0.25)).toBeCloseTo(0.3893, 4)
  })
})

/*
 * Typical figures of a 12 V block of 100 Ah: share of the capacity that should be used, energy out over energy in, charge
 * put back over charge taken, steady current that does no harm as a share of the capacity, resistance when full, and
 * temperatures to charge at. Standing: the used half of lead-acid is the disconnect guidance for deep-cycle batteries,
 * AGM charge factor and current are a valve-regulated user guidance sheet, the AGM resistance is the mean of seven makers'
 * sheets, charging temperatures and the four lithium cells are makers' sheets; all else from memory of handbooks.
 */
const TYPICAL = [
  ['flooded', { used: 0.5, roundTrip: 0.75, charge: 1.15, limitPerH: 0.2, milliohm: 5, chargeC: [-20, 45] }],
  ['agm', { used: 0.5, roundTrip: 0.8, charge: 1.1, limitPerH: 1, milliohm: 4.6, chargeC: [0, 40] }],
  ['gel', { used: 0.5, roundTrip: 0.8, charge: 1.1, limitPerH: 0.5, milliohm: 5.5, chargeC: [-20, 50] }],
  ['lifepo4', { used: 0.8, roundTrip: 0.94, charge: 1.02, limitPerH: 1, milliohm: 5, chargeC: [0, 45] }],
  // Three cells of 0.18 ohm Ah.
  ['nmc', { used: 0.8, roundTrip: 0.94, charge: 1.01, limitPerH: 1, milliohm: 5.4, chargeC: [0, 45] }],
] as const

describe('figures taken where a battery states none are the typical ones', () => {
  it.each(TYPICAL)('%s', (chemistry, typical) => {
    const figures = CHEMISTRIES[chemistry]
    const blockOhm = (figures.cellResistanceOhmAh * figures.cellsInSeries[12]) / 100
    expect(1 - figures.minSocFraction).toBeCloseTo(typical.used, 9)
    expect(figures.roundTripFraction).toBe(typical.roundTrip)
    expect(figures.chargeFactor).toBe(typical.charge)
    expect(figures.advisedLimitPerH).toBe(typical.limitPerH)
    expect(blockOhm * 1000).toBeCloseTo(typical.milliohm, 9)
    expect(figures.chargeTemperatureC).toEqual(typical.chargeC)
  })

  // Nominal voltages: 2 V a lead-acid cell, 3.2 V a LiFePO4 cell (makers' sheets). NMC at 3.65 V a cell makes no true 12 V.
  it.each([
    ['flooded', 2],
    ['agm', 2],
    ['gel', 2],
    ['lifepo4', 3.2],
  ] as const)('%s has as many cells of %d V as make the nominal voltage', (chemistry, cellV) => {
    for (const nominalV of [12, 24, 36, 48] as const) {
      const cells = CHEMISTRIES[chemistry].cellsInSeries[nominalV]
      expect(Math.abs(cells * cellV - nominalV)).toBeLessThan(nominalV / 12 + 1e-9)
      expect(cells % CHEMISTRIES[chemistry].cellsInSeries[12]).toBe(0)
    }
  })
})
