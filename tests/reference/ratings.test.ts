import { describe, expect, it } from 'vitest'
import { type RatedAppliance, rateLoad } from '../../core/loads/rate-load.ts'
import type { Rating } from '../../core/loads/rating.ts'
import { readLabel } from '../../core/loads/read-label.ts'

const MICROWAVE: RatedAppliance = {
  powerFactor: 0.92,
  startKind: 'electronic-inrush',
  ratedByCookingPower: true,
}

function inputOf(rating: Rating, mainsV: number): { readonly inputW: number; readonly typicalW: number } {
  const power = rateLoad({ rating, appliance: MICROWAVE, mainsV })
  if (!power.ok) throw new Error(`refused: ${power.refusal}`)
  return power
}

function plateW(text: string, mainsV: number): number {
  const reading = readLabel(text, { mainsV })
  if (!reading.ok) throw new Error(`refused: ${reading.refusal}`)
  return reading.inputW
}

/** Volts x amperes with a printed answer. Tolerance: the rounding of the printed figure. */
const VOLTS_AMPS = [
  {
    source: 'Louisiana State University AgCenter, Be cautious with generators after a storm, 29 August 2008',
    volts: 120,
    amps: 10,
    watts: 1200,
    tolerance: 0,
  },
  {
    source: 'Tacoma Power (US utility), Estimating generator size',
    volts: 120,
    amps: 2.2,
    watts: 264,
    tolerance: 0,
  },
  {
    source: 'NFPA 70 (NEC) annex D, example D1(a), general lighting 4500 VA = 37.5 A at 120 V',
    volts: 120,
    amps: 37.5,
    watts: 4500,
    tolerance: 0,
  },
  {
    source: 'NFPA 70 (NEC) annex D, example D1(a), net load 18 600 VA at 240 V: 77.5 A, printed as 78 A',
    volts: 240,
    amps: 78,
    watts: 18_600,
    tolerance: 0.007,
  },
  {
    source: 'Electrical Safety First (UK), Ratings of electrical appliances: 3000 W printed as 13 A at 230 V',
    volts: 230,
    amps: 13,
    watts: 3000,
    tolerance: 0.004,
  },
  {
    source: 'E-bike study, Charging: 80 % of a 20 A circuit at 120 V printed as 1920 W',
    volts: 120,
    amps: 16,
    watts: 1920,
    tolerance: 0,
  },
]

describe('volts x amperes against printed answers', () => {
  it.each(VOLTS_AMPS)('$volts V x $amps A = $watts W ($source)', ({ volts, amps, watts, tolerance }) => {
    const slack = watts * tolerance + 1e-9
    const byRating = inputOf({ basis: 'volts-amps', volts, amps }, volts).inputW
    const byPlate = plateW(`${volts} V ${amps} A`, volts)
    expect(Math.abs(byRating - watts)).toBeLessThanOrEqual(slack)
    expect(Math.abs(byPlate - watts)).toBeLessThanOrEqual(slack)
  })
})

/** Microwave ovens of which both powers are published. */
const COOKING = [
  {
    source: 'MacKay, Sustainable Energy - without the hot air (2009), chapter 7: 900 W oven takes 1400 W',
    cookingW: 900,
    inputW: 1400,
  },
  {
    source: 'Encyclopaedia text quoted in 2012: 700 W from 1100 W, printed 64 %',
    cookingW: 700,
    inputW: 1100,
  },
  {
    source: 'Plug-meter readings of one 900 W oven, 8 January 2007: mean 1287 W',
    cookingW: 900,
    inputW: 1287,
  },
  { source: 'Plug-meter readings of the same oven: highest 1314 W', cookingW: 900, inputW: 1314 },
  {
    source: 'Giancoli, Physics for Scientists and Engineers, 5th edition, chapter 25: 950 W at 72 %',
    cookingW: 950,
    inputW: 1319.4,
  },
]

describe('cooking power against published pairs', () => {
  it.each(COOKING)(
    'sizes for at least $inputW W and reckons with about it ($source)',
    ({ cookingW, inputW }) => {
      const power = inputOf({ basis: 'cooking-watts', watts: cookingW }, 230)
      expect(power.inputW).toBeGreaterThanOrEqual(inputW)
      expect(power.inputW).toBeLessThanOrEqual(inputW * 1.5)
      expect(Math.abs(power.typicalW / inputW - 1)).toBeLessThanOrEqual(0.13)
    },
  )

  it.each([
    { source: 'common practice, no published source', cookingW: 650, inputW: 1100 },
    { source: 'common practice, no published source', cookingW: 700, inputW: 1150 },
    { source: 'common practice, no published source; measured', cookingW: 600, inputW: 1200 },
    { source: 'GB 24849-2017 table 1, grade 1, from memory: 60 %', cookingW: 700, inputW: 700 / 0.6 },
    { source: 'GB 24849-2017 table 1, grade 2, from memory: 56 %', cookingW: 700, inputW: 700 / 0.56 },
    { source: 'GB 24849-2017 table 1, grade 3, from memory: 52 %', cookingW: 700, inputW: 700 / 0.52 },
  ])('sizes $cookingW W of cooking power for at least $inputW W ($source)', ({ cookingW, inputW }) => {
    expect(inputOf({ basis: 'cooking-watts', watts: cookingW }, 230).inputW).toBeGreaterThanOrEqual(inputW)
  })
})

/**
 * Room air conditioners, louvred, without reverse cycle. 1990: 42 USC 6295(c)(1), least EER. 2014: 10 CFR 430.32(b)
 * table 3, least CEER until 26 May 2026. Watts are the capacity over the printed limit, to the watt.
 */
const ROOM_UNITS = [
  { btuPerHour: 5000, eer1990: 8, w1990: 625, ceer2014: 11, w2014: 455 },
  { btuPerHour: 6000, eer1990: 8.5, w1990: 706, ceer2014: 11, w2014: 545 },
  { btuPerHour: 8000, eer1990: 9, w1990: 889, ceer2014: 10.9, w2014: 734 },
  { btuPerHour: 10_000, eer1990: 9, w1990: 1111, ceer2014: 10.9, w2014: 917 },
  { btuPerHour: 12_000, eer1990: 9, w1990: 1333, ceer2014: 10.9, w2014: 1101 },
  { btuPerHour: 14_000, eer1990: 8.8, w1990: 1591, ceer2014: 10.7, w2014: 1308 },
  { btuPerHour: 18_000, eer1990: 8.8, w1990: 2045, ceer2014: 10.7, w2014: 1682 },
  { btuPerHour: 24_000, eer1990: 8.2, w1990: 2927, ceer2014: 9.4, w2014: 2553 },
]

describe('cooling capacity against the limits of US law', () => {
  it.each(ROOM_UNITS)(
    '$btuPerHour Btu/h takes $w1990 W at the limit of 1990, $w2014 W at that of 2014',
    (unit) => {
      const { btuPerHour, eer1990, w1990, ceer2014, w2014 } = unit
      const at1990 = inputOf({ basis: 'cooling-capacity', btuPerHour, eer: eer1990 }, 120)
      const at2014 = inputOf({ basis: 'cooling-capacity', btuPerHour, eer: ceer2014 }, 120)
      expect(Math.round(at1990.inputW)).toBe(w1990)
      expect(Math.round(at2014.inputW)).toBe(w2014)
    },
  )

  it.each(ROOM_UNITS)('sizes $btuPerHour Btu/h of unknown efficiency for no less than $w1990 W', (unit) => {
    const { inputW } = inputOf({ basis: 'cooling-capacity', btuPerHour: unit.btuPerHour }, 120)
    expect(Math.round(inputW)).toBeGreaterThanOrEqual(unit.w1990)
    expect(plateW(`${unit.btuPerHour} BTU/h`, 120)).toBeCloseTo(inputW, 9)
  })
})

describe('units on plates against NIST SP 811 (2008), appendix B.8, from memory', () => {
  it('1 Btu/h of cooling is 0.2930711 W', () => {
    expect(plateW('Cooling capacity 2930.711 W', 230)).toBeCloseTo(plateW('10 000 BTU/h', 230), 4)
  })

  it('1 hp is 745.6999 W, 1 metric horsepower 735.4988 W at the shaft', () => {
    expect(plateW('1 HP', 230)).toBeCloseTo(plateW('P2 745.6999 W', 230), 4)
    expect(plateW('1 CV', 230)).toBeCloseTo(plateW('P2 735.4988 W', 230), 4)
  })
})

describe('counts on plates', () => {
  it('ten chargers of 185 W take 1850 W (E-bike study, Charging, printed)', () => {
    expect(plateW('10 x 185 W', 120)).toBe(1850)
  })
})
