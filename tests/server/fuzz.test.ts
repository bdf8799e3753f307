import fc from 'fast-check'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { BATTERY_CHEMISTRIES, CONNECTION_KINDS } from '../../core/range/vocabulary.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { runtimeAnswerSchema, sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { problemSchema } from '../../shared/contract/problem.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })

const rating = fc.oneof(
  fc.record({
    basis: fc.constantFrom('input-watts', 'measured-watts', 'cooking-watts'),
    watts: between(0.2, 100_000),
  }),
  fc.record({ basis: fc.constant('volts-amps'), volts: between(0.1, 1000), amps: between(0.01, 1000) }),
  fc.record({
    basis: fc.constant('volt-amperes'),
    voltAmperes: between(1, 100_000),
    powerFactor: maybe(between(0.1, 1)),
  }),
  fc.record({
    basis: fc.constant('motor-output'),
    watts: maybe(between(1, 100_000)),
    horsepower: maybe(between(0.01, 100)),
  }),
  fc.record({
    basis: fc.constant('cooling-capacity'),
    btuPerHour: between(100, 200_000),
    eer: maybe(between(2, 30)),
  }),
  fc.record({ basis: fc.constant('label-text'), text: fc.string({ minLength: 1, maxLength: 60 }) }),
)

const load = fc.record({
  id: fc.string({ minLength: 1, maxLength: 12 }),
  appliance: maybe(fc.constantFrom(...BUILT_IN_APPLIANCES.map(({ id }) => id))),
  quantity: maybe(fc.integer({ min: 1, max: 100 })),
  minutesPerDay: maybe(between(0, 1440)),
  rating: maybe(rating),
})

const supply = fc.record({
  nominalV: fc.constantFrom(12, 24, 36, 48),
  battery: fc.record({
    chemistry: fc.constantFrom(...BATTERY_CHEMISTRIES),
    capacityAh: between(1, 10_000),
    hourRateH: maybe(between(0.5, 120)),
    minSocFraction: maybe(between(0, 0.95)),
    startSocFraction: maybe(between(0.01, 1)),
    temperatureC: maybe(between(-20, 60)),
    healthFraction: maybe(between(0.3, 1)),
    maxDischargeA: maybe(between(0.1, 10_000)),
    internalResistanceOhm: maybe(between(0.00001, 1)),
    otherRates: maybe(
      fc.array(fc.record({ hourRateH: between(0.1, 120), capacityAh: between(0.1, 10_000) }), {
        maxLength: 6,
      }),
    ),
  }),
  connection: maybe(
    fc.record({ kind: fc.constantFrom(...CONNECTION_KINDS), limitA: maybe(between(0.1, 2000)) }),
  ),
  oneWayLengthM: maybe(between(0.1, 50)),
  autonomyDays: maybe(between(0.5, 30)),
})

/** Every number of an answer, to look for those that JSON can't carry. */
function nullsIn(value: unknown, path = ''): readonly string[] {
  if (value === null) return [path]
  if (typeof value !== 'object') return []
  return Object.entries(value ?? {}).flatMap(([key, part]) => nullsIn(part, `${path}/${key}`))
}

/** Places where the contract allows null: nothing recommended, no circuit, no run time, no bank, no fuse. */
const MAY_BE_NULL = /^\/(recommended|circuit|runtime|bank|kitTotal|circuit\/fuse)$/

async function check(url: string, payload: unknown): Promise<void> {
  const reply = await app.inject({ method: 'POST', url, payload: payload as object })
  if (reply.statusCode !== 200) {
    expect(reply.statusCode, reply.body).toBe(422)
    expect(problemSchema.parse(reply.json()).errors?.length).toBeGreaterThan(0)
    return
  }
  const answer = reply.json()
  if (url.endsWith('runtime')) runtimeAnswerSchema.parse(answer)
  else sizingAnswerSchema.parse(answer)
  expect(nullsIn(answer).filter((path) => !MAY_BE_NULL.test(path))).toEqual([])
}

describe('any request within the contract', () => {
  it('gets an answer on contract with finite figures, or a problem with a pointer', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom('kingcup', 'bentcreek'),
        fc.array(load, { minLength: 1, maxLength: 5 }),
        maybe(supply),
        fc.constantFrom('brief', 'full'),
        (shop, loads, fed, detail) => check(`/v1/shops/${shop}/sizing`, { loads, supply: fed, detail }),
      ),
      { numRuns: 400 },
    )
  })

  it('gets a run time within physics, or a problem with a pointer', async () => {
    const power = fc.oneof(
      fc.record({ basis: fc.constantFrom('mains', 'battery'), watts: between(0, 50_000) }),
      fc.record({ basis: fc.constant('loads'), loads: fc.array(load, { minLength: 1, maxLength: 3 }) }),
    )
    await fc.assert(
      fc.asyncProperty(power, supply, between(10, 20_000), (asked, fed, continuousW) =>
        check('/v1/shops/kingcup/runtime', { power: asked, supply: fed, inverter: { continuousW } }),
      ),
      { numRuns: 400 },
    )
  })
})
