import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { LIMITS as CONTRACT_LIMITS } from '../../shared/contract/primitives.ts'
import { LIMITS } from '../../widget/limits.ts'
import { encodePlan } from '../../widget/plan-link.ts'
import { decodePlan } from '../../widget/plan-link-reader.ts'
import { plans } from './support/plans.ts'

const written = (value: unknown) => Buffer.from(JSON.stringify(value)).toString('base64url')

describe('encodePlan and decodePlan', () => {
  it('bring every plan back as it was', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        expect(decodePlan(encodePlan(plan))).toEqual(plan)
      }),
    )
  })

  it('need no escaping in an address', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        expect(encodePlan(plan)).toMatch(/^[\w-]+$/)
      }),
    )
  })

  it.each([
    ['nothing', ''],
    ['noise', 'not base64 at all!'],
    ['another form', written([2, [], [], []])],
    ['too many loads', written([1, Array.from({ length: 41 }, () => ['kettle', 0, 1, -1, 0]), [], []])],
    ['a load of no power', written([1, [[0, 'Thing', 1, -1, 0]], [], []])],
  ])('refuse %s', (_name, text) => {
    expect(decodePlan(text)).toBeUndefined()
  })

  it('take no figure beyond its bounds from a link', () => {
    const text = written([
      1,
      [['kettle', 0, 9999, 99999, { basis: 'input-watts', watts: -5 }]],
      [],
      [99, 'x', 'y', -1, 'z', 1e9],
    ])
    expect(decodePlan(text)).toEqual({
      loads: [
        {
          id: 'load-1',
          appliance: 'kettle',
          name: undefined,
          quantity: 1,
          minutesPerDay: undefined,
          rating: undefined,
        },
      ],
      takeTurns: [],
      supply: {
        nominalV: null,
        battery: null,
        chemistry: null,
        capacityAh: null,
        connection: null,
        oneWayLengthM: null,
      },
    })
  })

  it('never throw, whatever the text', () => {
    fc.assert(
      fc.property(fc.json(), (json) => {
        const plan = decodePlan(Buffer.from(json).toString('base64url'))
        return plan === undefined || Array.isArray(plan.loads)
      }),
    )
  })
})

describe('LIMITS', () => {
  it('are those of the contract', () => {
    const { loads, takeTurnsGroups, quantity, watts, volts, amps, labelCharacters, nameCharacters } =
      CONTRACT_LIMITS
    expect(LIMITS).toEqual({
      loads,
      takeTurnsGroups,
      quantity,
      watts,
      volts,
      amps,
      labelCharacters,
      nameCharacters,
    })
  })
})
