import { unit } from 'mathjs'
import { describe, expect, it } from 'vitest'
import {
  btuPerHourToWatts,
  fahrenheitToCelsius,
  feetToMetres,
  horsepowerToWatts,
  MINUTES_PER_DAY,
  MM2_PER_CIRCULAR_MIL,
} from '../../core/units.ts'

/** Unit conversions against those of an outside library (mathjs). */
describe('units', () => {
  it.each([0.25, 1, 7.5])('turns %d hp into the same watts', (horsepower) => {
    expect(horsepowerToWatts(horsepower)).toBeCloseTo(unit(horsepower, 'hp').toNumber('W'), 3)
  })
  it.each([1, 5000, 12000])('turns %d Btu/h into the same watts', (btu) => {
    const watts = unit(btu, 'BTU').toNumber('J') / 3600
    expect(Math.abs(btuPerHourToWatts(btu) / watts - 1)).toBeLessThan(1e-6)
  })
  it.each([1, 10, 33.3])('turns %d ft into the same metres', (feet) => {
    expect(feetToMetres(feet)).toBeCloseTo(unit(feet, 'ft').toNumber('m'), 9)
  })
  it.each([-4, 32, 77, 212])('turns %d F into the same degrees Celsius', (fahrenheit) => {
    expect(fahrenheitToCelsius(fahrenheit)).toBeCloseTo(unit(fahrenheit, 'degF').toNumber('degC'), 9)
  })
  it('has the circular mil as the circle of one mil across', () => {
    const milMm = unit(1, 'mil').toNumber('mm')
    expect(MM2_PER_CIRCULAR_MIL).toBeCloseTo((Math.PI / 4) * milMm ** 2, 12)
  })
  it('has the minutes of a day', () => {
    expect(MINUTES_PER_DAY).toBe(unit(1, 'day').toNumber('minute'))
  })
})
