import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { motorInputFor } from '../../core/loads/motors.ts'
import {
  RATING_NOTES,
  RATING_REFUSALS,
  type RatedAppliance,
  type RatedPower,
  type RatingRefusal,
  rateLoad,
} from '../../core/loads/rate-load.ts'
import type { Rating } from '../../core/loads/rating.ts'
import {
  COOKING_EFFICIENCY_HIGH,
  COOKING_EFFICIENCY_LOW,
  COOKING_EFFICIENCY_TYPICAL,
  COOLING_EER_LOW,
  COOLING_EER_TYPICAL,
  CORRECTED_POWER_FACTOR,
  CORRECTED_SUPPLY_W,
  DEFAULT_POWER_FACTOR,
  SMALLEST_MICROWAVE_INPUT_W,
} from '../../core/tables/rating-figures.ts'
import { SOURCES } from '../../core/tables/sources.ts'
import { COOKING_PAIRS } from '../reference/values/ratings.ts'

const MICROWAVE: RatedAppliance = {
  powerFactor: 0.92,
  startKind: 'electronic-inrush',
  ratedByCookingPower: true,
}
const FAN: RatedAppliance = { powerFactor: 0.7, startKind: 'motor', ratedByCookingPower: false }
const CHARGER: RatedAppliance = {
  powerFactor: 0.6,
  startKind: 'electronic-inrush',
  ratedByCookingPower: false,
}

function rated(rating: Rating, appliance?: RatedAppliance, mainsV = 230): RatedPower {
  const power = rateLoad({ rating, appliance, mainsV })
  if (!power.ok) throw new Error(`refused: ${power.refusal}`)
  return power
}

function refused(rating: Rating, appliance?: RatedAppliance): RatingRefusal {
  const power = rateLoad({ rating, appliance, mainsV: 230 })
  if (power.ok) throw new Error(`rated ${power.inputW} W`)
  return power
}

function codes(power: RatedPower): readonly string[] {
  return power.notes.map(({ code }) => code)
}

describe('rateLoad', () => {
  it.each(['input-watts', 'measured-watts'] as const)('takes %s as they are', (basis) => {
    expect(rated({ basis, watts: 850 })).toMatchObject({ inputW: 850, typicalW: 850 })
  })

  it('assumes a power factor of 0.9 for a load of no list, and says so', () => {
    const power = rated({ basis: 'input-watts', watts: 900 })
    expect(power.apparentVA).toBeCloseTo(1000, 9)
    expect(codes(power)).toEqual(['power-factor-assumed'])
    expect(power.working.map(({ step }) => step)).toEqual(['rating-input-watts', 'rating-apparent-power'])
  })

  it("takes a listed appliance's power factor", () => {
    expect(rated({ basis: 'input-watts', watts: 70 }, FAN).apparentVA).toBeCloseTo(100, 9)
  })

  it('takes an electronic supply above 75 W for a corrected one', () => {
    expect(rated({ basis: 'input-watts', watts: 75 }, CHARGER).powerFactor).toBeCloseTo(0.6, 9)
    expect(rated({ basis: 'input-watts', watts: 75.1 }, CHARGER).powerFactor).toBeCloseTo(0.9, 9)
    expect(rated({ basis: 'input-watts', watts: 75.1 }, FAN).powerFactor).toBeCloseTo(0.7, 9)
    expect(rated({ basis: 'input-watts', watts: 1200 }, MICROWAVE).powerFactor).toBeCloseTo(0.92, 9)
  })

  it('sizes volts x amperes without a power factor at W = VA and reckons energy with the usual one', () => {
    const power = rated({ basis: 'volts-amps', volts: 230, amps: 2 }, FAN)
    expect(power).toMatchObject({ inputW: 460, apparentVA: 460, powerFactor: 1 })
    expect(power.typicalW).toBeCloseTo(322, 9)
    expect(codes(power)).toEqual(['power-factor-assumed-one'])
    expect(rated({ basis: 'volts-amps', volts: 230, amps: 2 }).typicalW).toBe(460)
  })

  it('uses a stated power factor for both', () => {
    const power = rated({ basis: 'volts-amps', volts: 230, amps: 2, powerFactor: 0.8 }, FAN)
    expect(power.inputW).toBeCloseTo(368, 9)
    expect(power.typicalW).toBeCloseTo(368, 9)
    expect(power.apparentVA).toBe(460)
    expect(codes(power)).toEqual([])
  })

  it('takes volt-amperes likewise', () => {
    expect(rated({ basis: 'volt-amperes', voltAmperes: 300 })).toMatchObject({ inputW: 300, apparentVA: 300 })
    expect(rated({ basis: 'volt-amperes', voltAmperes: 300, powerFactor: 0.5 })).toMatchObject({
      inputW: 150,
      apparentVA: 300,
      powerFactor: 0.5,
    })
  })

  it('remarks on volts that are not those of the mains', () => {
    expect(codes(rated({ basis: 'volts-amps', volts: 120, amps: 5 }))).toContain('volts-differ-from-mains')
    expect(codes(rated({ basis: 'volts-amps', volts: 240, amps: 5 }))).not.toContain(
      'volts-differ-from-mains',
    )
    expect(codes(rated({ basis: 'volts-amps', volts: 110, amps: 5 }, FAN, 120))).not.toContain(
      'volts-differ-from-mains',
    )
  })

  it('sizes cooking power by the lowest efficiency and reckons energy with the usual one', () => {
    const power = rated({ basis: 'cooking-watts', watts: 800 }, MICROWAVE)
    expect(power.inputW).toBe(1600)
    expect(power.typicalW).toBe(1250)
    expect(power.apparentVA).toBeCloseTo(1600 / 0.92, 9)
    expect(codes(power)).toContain('cooking-power-converted')
  })

  it('takes cooking power of a microwave oven only', () => {
    const rating = { basis: 'cooking-watts', watts: 800 } as const
    expect(refused(rating).refusal).toBe('cooking-watts-needs-microwave')
    expect(refused(rating, FAN).refusal).toBe('cooking-watts-needs-microwave')
  })

  it('takes shaft power, in watts or horsepower, through a motor', () => {
    const motor = motorInputFor({ shaftW: 372.84995, mainsV: 230 })
    const power = rated({ basis: 'motor-output', horsepower: 0.5 })
    expect(power.inputW).toBeCloseTo(motor.inputW, 9)
    expect(power.apparentVA).toBeCloseTo(motor.apparentVA, 9)
    expect(power.powerFactor).toBeCloseTo(motor.powerFactor, 9)
    expect(power.working.map(({ step }) => step)).toEqual(['rating-horsepower', 'rating-motor-output'])
    expect(rated({ basis: 'motor-output', watts: 372.84995 }).inputW).toBeCloseTo(motor.inputW, 9)
  })

  it('takes the larger of shaft watts and horsepower, and refuses neither', () => {
    const both = rated({ basis: 'motor-output', watts: 1000, horsepower: 0.5 })
    expect(both.inputW).toBe(rated({ basis: 'motor-output', watts: 1000 }).inputW)
    expect(refused({ basis: 'motor-output' }).refusal).toBe('nothing-stated')
  })

  it('takes cooling capacity by its stated efficiency, else by a cautious one that it names', () => {
    const stated = rated({ basis: 'cooling-capacity', btuPerHour: 12_000, eer: 10 })
    expect(stated).toMatchObject({ inputW: 1200, typicalW: 1200 })
    expect(codes(stated)).not.toContain('efficiency-assumed')
    const assumed = rated({ basis: 'cooling-capacity', btuPerHour: 12_000 })
    expect(assumed.inputW).toBe(1500)
    expect(assumed.typicalW).toBeCloseTo(1100.9, 1)
    expect(codes(assumed)).toContain('efficiency-assumed')
  })

  it('reads the text of a plate, with the volt-amperes where it gives them', () => {
    const power = rated({ basis: 'label-text', text: '230V 50Hz 5A 920W' }, FAN)
    expect(power.inputW).toBe(920)
    expect(power.apparentVA).toBeCloseTo(1150, 9)
  })

  it("fills in the appliance's power factor where a plate gives watts alone", () => {
    expect(rated({ basis: 'label-text', text: '70 W' }, FAN).apparentVA).toBeCloseTo(100, 9)
    expect(rated({ basis: 'label-text', text: '70 W' }).apparentVA).toBeCloseTo(70 / 0.9, 9)
  })

  it('sizes a plate with volts and amperes alone at W = VA', () => {
    const power = rated({ basis: 'label-text', text: '220-240V~ 50/60Hz 1.8A' }, FAN)
    expect(power.inputW).toBeCloseTo(414, 9)
    expect(power.apparentVA).toBeCloseTo(414, 9)
  })

  it('reads the plate of a microwave oven as one', () => {
    expect(rated({ basis: 'label-text', text: '800 W' }, MICROWAVE).inputW).toBe(1600)
    expect(rated({ basis: 'label-text', text: '800 W' }, FAN).inputW).toBe(800)
  })

  it('hands on what a refused plate showed', () => {
    const refusal = refused({ basis: 'label-text', text: 'OUTPUT 20V 5A' })
    expect(refusal.refusal).toBe('output-only')
    expect(refusal.seen?.map(({ text }) => text)).toEqual(['20V', '5A'])
  })

  it.each<Rating>([
    { basis: 'input-watts', watts: 0.09 },
    { basis: 'input-watts', watts: 100_001 },
    { basis: 'input-watts', watts: 0 },
    { basis: 'input-watts', watts: -5 },
    { basis: 'measured-watts', watts: Number.NaN },
    { basis: 'volts-amps', volts: 230, amps: 500 },
    { basis: 'volt-amperes', voltAmperes: Number.POSITIVE_INFINITY },
    { basis: 'motor-output', watts: 100_001 },
    { basis: 'motor-output', watts: 99_000 },
    { basis: 'motor-output', horsepower: 0 },
    { basis: 'cooling-capacity', btuPerHour: 900_000 },
    { basis: 'cooling-capacity', btuPerHour: 12_000, eer: 0 },
  ])('refuses %j as out of bounds', (rating) => {
    expect(refused(rating).refusal).toBe('out-of-bounds')
  })

  it.each([0.1, 100_000])('takes %d W, the bound', (watts) => {
    expect(rated({ basis: 'input-watts', watts }).inputW).toBe(watts)
  })

  it('calls a mains voltage outside 100..240 V a fault of the caller', () => {
    const rating = { basis: 'input-watts', watts: 60 } as const
    expect(() => rateLoad({ rating, mainsV: 99 })).toThrow(expect.objectContaining({ code: 'out_of_range' }))
    expect(() => rateLoad({ rating, mainsV: 241 })).toThrow(expect.objectContaining({ field: 'mainsV' }))
  })

  it('gives for any rating a power in which W <= VA and energy <= sizing, or a refusal of the list', () => {
    fc.assert(
      fc.property(
        ANY_RATING,
        fc.constantFrom(undefined, MICROWAVE, FAN, CHARGER),
        fc.constantFrom(100, 120, 230, 240),
        (rating, appliance, mainsV) => {
          const power = rateLoad({ rating, appliance, mainsV })
          if (!power.ok) {
            expect(RATING_REFUSALS).toContain(power.refusal)
            return
          }
          expect(power.inputW).toBeGreaterThanOrEqual(0.1)
          expect(power.inputW).toBeLessThanOrEqual(100_000)
          expect(power.typicalW).toBeLessThanOrEqual(power.inputW)
          expect(power.apparentVA).toBeGreaterThanOrEqual(power.inputW)
          expect(power.powerFactor).toBeCloseTo(power.inputW / power.apparentVA, 9)
          expect(power.working.length).toBeGreaterThan(0)
          for (const note of power.notes) expect(RATING_NOTES).toContain(note.code)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('never sizes a larger rating smaller', () => {
    const bases = ['input-watts', 'cooking-watts', 'measured-watts'] as const
    fc.assert(
      fc.property(fc.constantFrom(...bases), POSITIVE, POSITIVE, (basis, one, other) => {
        const smaller = rated({ basis, watts: Math.min(one, other) }, MICROWAVE)
        const larger = rated({ basis, watts: Math.max(one, other) }, MICROWAVE)
        expect(larger.inputW).toBeGreaterThanOrEqual(smaller.inputW)
      }),
    )
  })
})

const POSITIVE = fc.double({ min: 0.1, max: 40_000, noNaN: true })
const ANY_NUMBER = fc.oneof(POSITIVE, fc.double({ min: -1e6, max: 1e6 }))
const FACTOR = fc.double({ min: 0.1, max: 1, noNaN: true })
const ANY_RATING: fc.Arbitrary<Rating> = fc.oneof(
  fc.record({
    basis: fc.constantFrom('input-watts' as const, 'measured-watts' as const, 'cooking-watts' as const),
    watts: ANY_NUMBER,
  }),
  fc.record({
    basis: fc.constant('volts-amps' as const),
    volts: ANY_NUMBER,
    amps: ANY_NUMBER,
    powerFactor: fc.option(FACTOR, { nil: undefined }),
  }),
  fc.record({
    basis: fc.constant('volt-amperes' as const),
    voltAmperes: ANY_NUMBER,
    powerFactor: fc.option(FACTOR, { nil: undefined }),
  }),
  fc.record({
    basis: fc.constant('motor-output' as const),
    watts: fc.option(ANY_NUMBER, { nil: undefined }),
    horsepower: fc.option(ANY_NUMBER, { nil: undefined }),
  }),
  fc.record({
    basis: fc.constant('cooling-capacity' as const),
    btuPerHour: ANY_NUMBER,
    eer: fc.option(fc.double({ min: 1, max: 30, noNaN: true }), { nil: undefined }),
  }),
  fc.record({ basis: fc.constant('label-text' as const), text: fc.string({ maxLength: 80 }) }),
)

describe('figures of the ratings', () => {
  it('size cooking power by the lowest of the known pairs', () => {
    const efficiencies = COOKING_PAIRS.map(({ cookingW, inputW }) => cookingW / inputW)
    expect(COOKING_EFFICIENCY_LOW.value).toBe(Math.min(...efficiencies))
    expect(COOKING_EFFICIENCY_TYPICAL.value).toBeGreaterThan(COOKING_EFFICIENCY_LOW.value)
    expect(COOKING_EFFICIENCY_HIGH.value).toBeGreaterThan(Math.max(...efficiencies))
    expect(COOLING_EER_TYPICAL.value).toBeGreaterThan(COOLING_EER_LOW.value)
  })

  it('each name a source of the list', () => {
    const figures = [
      COOKING_EFFICIENCY_HIGH,
      COOKING_EFFICIENCY_LOW,
      COOKING_EFFICIENCY_TYPICAL,
      COOLING_EER_LOW,
      COOLING_EER_TYPICAL,
      CORRECTED_POWER_FACTOR,
      CORRECTED_SUPPLY_W,
      DEFAULT_POWER_FACTOR,
      SMALLEST_MICROWAVE_INPUT_W,
    ]
    for (const { sourceIds } of figures) {
      expect(sourceIds.length).toBeGreaterThan(0)
      for (const id of sourceIds) expect(Object.keys(SOURCES)).toContain(id)
    }
  })
})
