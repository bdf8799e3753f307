import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CoreError } from '../../core/errors.ts'
import { fullLoadA, lockedRotorA, lockedRotorVAFor, motorInputFor } from '../../core/loads/motors.ts'
import { MOTOR_CODE_LETTERS } from '../../core/tables/motors.ts'
import { horsepowerToWatts } from '../../core/units.ts'
import { checkTopic } from './values/check-topic.ts'
import { FULL_LOAD_ROWS, LOCKED_ROTOR_ROWS, MOTORS } from './values/motors.ts'

checkTopic(MOTORS)

describe('full-load current', () => {
  it.each([
    [100, 9.8],
    [120, 9.8],
    [220, 4.9],
    [240, 4.9],
  ])('on %s V mains a 1/2 hp motor is read from its column', (mainsV, expectedA) => {
    expect(fullLoadA({ horsepower: 0.5, mainsV })).toBeCloseTo(expectedA, 9)
  })
})

describe('locked-rotor current against NEC table 430.251(A)', () => {
  it.each(LOCKED_ROTOR_ROWS)(
    '%s is 6.00 times the full-load current of table 430.248',
    (_size, horsepower) => {
      for (const mainsV of [115, 230]) {
        const ratio = lockedRotorA({ horsepower, mainsV }) / fullLoadA({ horsepower, mainsV })
        expect(ratio).toBeCloseTo(6, 9)
      }
    },
  )

  it('1/2 hp at 115 V: 9.8 A running, 58.8 A locked, 1127 VA and 6762 VA (both tables)', () => {
    const motor = { horsepower: 0.5, mainsV: 115 }
    expect(fullLoadA(motor) * 115).toBeCloseTo(1127, 6)
    expect(lockedRotorA(motor) * 115).toBeCloseTo(6762, 6)
  })

  it('1/3 hp, below the table: six times 7.2 A (six times rated current where none is marked)', () => {
    expect(lockedRotorA({ horsepower: 1 / 3, mainsV: 115 })).toBeCloseTo(43.2, 9)
  })

  it('1 hp at 200 V, where the table has no column: six times 9.2 A', () => {
    expect(lockedRotorA({ horsepower: 1, mainsV: 200 })).toBeCloseTo(55.2, 9)
  })
})

describe('locked-rotor volt-amperes against NEC table 430.7(B)', () => {
  it('letter A ends at 3.14 kVA, letter V starts at 22.4 kVA and has no end', () => {
    expect(lockedRotorVAFor('A', 1)).toEqual({ lowVA: 0, highVA: 3140 })
    expect(lockedRotorVAFor('V', 1)).toEqual({ lowVA: 22_400, highVA: null })
  })

  // Amps computed by hand from the table: kVA/hp x hp x 1000 / V.
  it.each([
    ['J', 1, 115, 61.7, 69.5],
    ['G', 2, 230, 48.7, 54.7],
    ['L', 0.5, 120, 37.5, 41.6],
  ] as const)('letter %s, %s hp at %s V: %s to %s A', (letter, horsepower, mainsV, lowA, highA) => {
    const { lowVA, highVA } = lockedRotorVAFor(letter, horsepower)
    expect(lowVA / mainsV).toBeCloseTo(lowA, 1)
    expect((highVA ?? 0) / mainsV).toBeCloseTo(highA, 1)
  })

  it('leaves out the letters I, O and Q, and no band reaches into the next', () => {
    expect(MOTOR_CODE_LETTERS.join('')).toBe('ABCDEFGHJKLMNPRSTUV')
    const bands = MOTOR_CODE_LETTERS.map((letter) => lockedRotorVAFor(letter, 1))
    for (const [at, band] of bands.entries()) {
      const next = bands[at + 1]
      if (next === undefined) continue
      expect(band.highVA).not.toBeNull()
      expect(next.lowVA - (band.highVA ?? 0)).toBeCloseTo(10, 6)
    }
  })

  // Letter by arithmetic on tables 430.251(A) and 430.7(B): 115 V x locked-rotor amps / hp.
  it.each([
    ['1/2 hp', 0.5, 'P'],
    ['3/4 hp', 0.75, 'P'],
    ['1 hp', 1, 'M'],
    ['1-1/2 hp', 1.5, 'L'],
    ['2 hp', 2, 'K'],
    ['3 hp', 3, 'J'],
    ['5 hp', 5, 'J'],
    ['7-1/2 hp', 7.5, 'J'],
    ['10 hp', 10, 'H'],
  ] as const)('the table current of %s lies in the band of one letter', (_size, horsepower, letter) => {
    const startVA = lockedRotorA({ horsepower, mainsV: 115 }) * 115
    const { lowVA, highVA } = lockedRotorVAFor(letter, horsepower)
    expect(startVA).toBeGreaterThanOrEqual(lowVA)
    expect(startVA).toBeLessThanOrEqual(highVA ?? 0)
  })
})

describe('input power of a motor from its shaft power', () => {
  it('1/2 hp, efficiency 0.60 (textbook, from memory): at least 956 VA', () => {
    const input = motorInputFor({ shaftW: horsepowerToWatts(0.5), mainsV: 115 })
    expect(input.efficiencyFraction).toBeCloseTo(0.6, 9)
    expect(input.apparentVA).toBeGreaterThanOrEqual(956)
  })

  // North Dakota State University Extension, standby generators: 1000 W to run for each horsepower.
  it.each([1 / 6, 1 / 4, 1 / 3, 1 / 2, 3 / 4, 1, 1.5, 2, 3, 5, 7.5, 10])(
    '%s hp never takes less than 1000 W for each horsepower (NDSU Extension)',
    (horsepower) => {
      const { inputW } = motorInputFor({ shaftW: horsepowerToWatts(horsepower), mainsV: 115 })
      expect(inputW).toBeGreaterThanOrEqual(1000 * horsepower)
    },
  )

  it.each(FULL_LOAD_ROWS)('%s takes the same volt-amperes on 230 V', (_size, horsepower, at115V) => {
    const shaftW = horsepowerToWatts(horsepower)
    expect(motorInputFor({ shaftW, mainsV: 230 }).apparentVA).toBeCloseTo(at115V * 115, 6)
  })

  it('1/3 hp covers the 800 W that two utilities give its sump pump, as volt-amperes', () => {
    // Central Maine Power, generator size; a US rural electric cooperative, generator page: 800 W running.
    expect(motorInputFor({ shaftW: horsepowerToWatts(1 / 3), mainsV: 120 }).apparentVA).toBeGreaterThan(800)
  })

  it('small motors are 50 to 75 % efficient, the smallest less (textbook, from memory)', () => {
    const efficiencyOf = (horsepower: number) =>
      motorInputFor({ shaftW: horsepowerToWatts(horsepower), mainsV: 230 }).efficiencyFraction
    expect(efficiencyOf(1 / 6)).toBeCloseTo(0.5, 9)
    expect(efficiencyOf(10)).toBeLessThanOrEqual(0.75)
    expect(efficiencyOf(1 / 100)).toBeLessThan(0.3)
  })

  const shaft = fc.double({ min: 0.1, max: 100_000, noNaN: true })
  const mains = fc.constantFrom(100, 110, 115, 120, 127, 200, 208, 220, 230, 240)

  it('always gives more at the plug than at the shaft, and no power factor above 1', () => {
    fc.assert(
      fc.property(shaft, mains, (shaftW, mainsV) => {
        const { inputW, apparentVA, efficiencyFraction, powerFactor } = motorInputFor({ shaftW, mainsV })
        expect(inputW).toBeGreaterThan(shaftW)
        expect(apparentVA).toBeGreaterThanOrEqual(inputW)
        expect(inputW * efficiencyFraction).toBeCloseTo(shaftW, 4)
        expect(apparentVA * powerFactor).toBeCloseTo(inputW, 4)
      }),
    )
  })

  it('never takes less for a larger shaft power', () => {
    fc.assert(
      fc.property(shaft, shaft, mains, (a, b, mainsV) => {
        const smaller = motorInputFor({ shaftW: Math.min(a, b), mainsV })
        const larger = motorInputFor({ shaftW: Math.max(a, b), mainsV })
        expect(larger.inputW).toBeGreaterThanOrEqual(smaller.inputW * (1 - 1e-12))
        expect(larger.apparentVA).toBeGreaterThanOrEqual(smaller.apparentVA * (1 - 1e-12))
      }),
    )
  })

  it('takes nothing for no shaft power, and stays a number', () => {
    const { inputW, apparentVA, powerFactor } = motorInputFor({ shaftW: 0, mainsV: 230 })
    expect([inputW, apparentVA]).toEqual([0, 0])
    expect(powerFactor).toBeGreaterThan(0)
  })

  it.each([
    [{ shaftW: -1, mainsV: 230 }, 'shaftW'],
    [{ shaftW: 100_001, mainsV: 230 }, 'shaftW'],
    [{ shaftW: Number.NaN, mainsV: 230 }, 'shaftW'],
    [{ shaftW: 100, mainsV: 99 }, 'mainsV'],
    [{ shaftW: 100, mainsV: 241 }, 'mainsV'],
  ])('refuses %o, naming %s', (motor, field) => {
    let caught: unknown
    try {
      motorInputFor(motor)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(CoreError)
    expect(caught).toMatchObject({ code: 'out_of_range', field })
  })

  it('takes the bounds themselves', () => {
    expect(motorInputFor({ shaftW: 100_000, mainsV: 240 }).inputW).toBeGreaterThan(100_000)
    expect(motorInputFor({ shaftW: 100, mainsV: 100 }).inputW).toBeGreaterThan(100)
  })
})
