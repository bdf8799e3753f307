import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { coveragePreviewSchema, coverageReplySchema } from '../../shared/contract/coverage.ts'
import { demandReplySchema } from '../../shared/contract/demand.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let readKey: string
let rangeKey: string

beforeAll(async () => {
  service = await openStaffService()
  readKey = await service.issue('kingcup', ['read'])
  rangeKey = await service.issue('kingcup', ['range'])
})
afterAll(() => service.close())

function get(url: string, key: string, headers: Record<string, string> = {}) {
  return service.app.inject({ url, headers: { authorization: `Bearer ${key}`, ...headers } })
}

function preview(payload: object | string, query = '', contentType = 'application/json') {
  return service.app.inject({
    method: 'POST',
    url: `/v1/shops/kingcup/coverage/preview${query}`,
    headers: { authorization: `Bearer ${rangeKey}`, 'content-type': contentType },
    payload,
  })
}

describe('GET coverage', () => {
  it('answers each everyday plan as POST sizing does', async () => {
    const reply = await get('/v1/shops/kingcup/coverage', readKey)
    expect(reply.statusCode).toBe(200)
    const coverage = coverageReplySchema.parse(reply.json())
    expect(coverage.voltages).toEqual([12, 24])
    expect(coverage.plans.filter(({ kind }) => kind === 'combination')).toHaveLength(40)
    for (const plan of coverage.plans.filter((_, index) => index % 7 === 0)) {
      for (const answer of plan.answers) {
        const sizing = await service.app.inject({
          method: 'POST',
          url: '/v1/shops/kingcup/sizing',
          payload: {
            loads: plan.loads.map(({ appliance, quantity }) => ({ id: appliance, appliance, quantity })),
            takeTurns: plan.takeTurns,
            supply: { nominalV: answer.nominalV },
          },
        })
        const { outcome, recommended, demand } = sizingAnswerSchema.parse(sizing.json())
        expect([plan.id, answer.outcome, answer.sku]).toEqual([plan.id, outcome, recommended?.sku ?? null])
        expect(answer.requiredContinuousW).toBe(demand.requiredContinuousW)
      }
    }
  }, 60_000)

  it('lists every unit and battery of the range', async () => {
    const coverage = coverageReplySchema.parse((await get('/v1/shops/kingcup/coverage', readKey)).json())
    const all = coverageReplySchema.parse((await get('/v1/shops/kingcup/coverage?stock=all', readKey)).json())
    expect(coverage.units.map(({ sku }) => sku).sort()).toEqual(
      kingcup.inverters.map(({ sku }) => sku).sort(),
    )
    expect(new Set(all.batteries.map(({ sku }) => sku))).toEqual(
      new Set(kingcup.batteries.map(({ sku }) => sku)),
    )
    const gone = kingcup.inverters.find(({ inStock }) => !inStock)?.sku
    expect(coverage.units.find(({ sku }) => sku === gone)).toMatchObject({ fits: 0, codes: ['out-of-stock'] })
    expect(all.units.find(({ sku }) => sku === gone)?.fits).toBeGreaterThan(0)
  }, 60_000)

  it('is not sent again to who holds it', async () => {
    const first = await get('/v1/shops/kingcup/coverage', readKey)
    const etag = String(first.headers.etag)
    const again = await get('/v1/shops/kingcup/coverage', readKey, { 'if-none-match': etag })
    expect(again.statusCode).toBe(304)
    const other = await get('/v1/shops/kingcup/coverage?stock=all', readKey, { 'if-none-match': etag })
    expect(other.statusCode).toBe(200)
  })

  it('asks for a key of the shop that may read', async () => {
    expect((await service.app.inject('/v1/shops/kingcup/coverage')).statusCode).toBe(401)
    expect((await get('/v1/shops/kingcup/coverage', rangeKey)).statusCode).toBe(403)
    expect((await get('/v1/shops/bentcreek/coverage', readKey)).statusCode).toBe(404)
  })

  it('answers shoppers while it is worked out', async () => {
    const key = await service.issue('bentcreek', ['read'])
    let done = false
    const coverage = get('/v1/shops/bentcreek/coverage', key).then((reply) => {
      done = true
      return reply
    })
    await new Promise((resolve) => setImmediate(resolve))
    const sizing = await service.app.inject({
      method: 'POST',
      url: '/v1/shops/bentcreek/sizing',
      payload: { loads: [{ id: 'a', appliance: 'laptop' }] },
    })
    expect(sizing.statusCode).toBe(200)
    expect(done).toBe(false)
    expect((await coverage).statusCode).toBe(200)
  }, 60_000)
})

describe('POST coverage/preview', () => {
  it('finds no change in the range in force', async () => {
    const reply = await preview(kingcup)
    const changes = coveragePreviewSchema.parse(reply.json())
    expect(changes.changed).toEqual([])
    expect(changes.totals.combination).toEqual({ plans: 40, changed: 0 })
  }, 60_000)

  it('tells which plans change their answer, and writes nothing', async () => {
    const before = coverageReplySchema.parse((await get('/v1/shops/kingcup/coverage', readKey)).json())
    const sku = 'KC-ST12-465'
    const inverters = kingcup.inverters.filter((unit) => unit.sku !== sku)
    const changes = coveragePreviewSchema.parse((await preview(inverters, '?part=inverters')).json())
    const expected = before.plans.filter(({ answers }) => answers.some((answer) => answer.sku === sku))
    expect(expected.length).toBeGreaterThan(0)
    expect(changes.changed.map(({ id }) => id)).toEqual(expected.map(({ id }) => id))
    expect(changes.nowNeverRecommended).toContain(sku)
    const { combination, appliance } = changes.totals
    expect(combination.changed + appliance.changed).toBe(expected.length)
    for (const { answers } of changes.changed) {
      expect(answers.every(({ before: old }) => old?.sku === sku)).toBe(true)
      expect(answers.every(({ after }) => after?.sku !== sku)).toBe(true)
    }
    const range = await get('/v1/shops/kingcup/range', readKey)
    expect(range.json().inverters).toHaveLength(kingcup.inverters.length)
  }, 60_000)

  it('reads a list as CSV', async () => {
    const csv = await get('/v1/shops/kingcup/range?part=inverters', readKey)
    const withoutLast = csv.body.trimEnd().split('\n').slice(0, -1).join('\n')
    const reply = await preview(withoutLast, '?part=inverters', 'text/csv')
    expect(reply.statusCode).toBe(200)
    expect(coveragePreviewSchema.parse(reply.json()).changed.length).toBeGreaterThan(0)
  }, 60_000)

  it('refuses a faulty draft as a write would', async () => {
    const faulty = await preview([{ ...kingcup.inverters[0], surgeW: 1 }], '?part=inverters')
    expect(faulty.statusCode).toBe(422)
    expect(faulty.json().errors[0].pointer).toBe('/inverters/0/surgeW')
    const other = await preview({ ...kingcup, shop: { ...kingcup.shop, id: 'bentcreek' } })
    expect(other.json().errors[0].pointer).toBe('/shop/id')
    const csv = await preview('sku\nA', '', 'text/csv')
    expect(csv.statusCode).toBe(400)
  })

  it('asks for a key that may change the range', async () => {
    rangeKey = readKey
    expect((await preview(kingcup)).statusCode).toBe(403)
    rangeKey = await service.issue('kingcup', ['range'])
  })
})

describe('GET demand', () => {
  const TODAY = new Date().toISOString().slice(0, 10)

  it('equals what the replies to shoppers say, merged below five', async () => {
    const shop = await openStaffService()
    const key = await shop.issue('kingcup', ['demand'])
    const plans = [
      { appliances: ['laptop'], nominalV: 12 },
      { appliances: ['microwave-oven', 'laptop'], nominalV: 12 },
      { appliances: ['large-air-compressor'], nominalV: 12 },
      { appliances: ['fridge', 'electric-kettle', 'laptop'], nominalV: 24 },
      { appliances: ['window-air-conditioner'], nominalV: 24 },
      { appliances: ['dishwasher'], nominalV: undefined },
      { appliances: ['laptop'], nominalV: 48 },
    ] as const
    const counts = {
      outcome: new Map<string, number>(),
      appliance: new Map<string, number>(),
      combination: new Map<string, number>(),
      unit: new Map<string, number>(),
      voltage: new Map<string, number>(),
    }
    const count = (of: Map<string, number>, name: string) => of.set(name, (of.get(name) ?? 0) + 1)
    for (let turn = 0; turn < 60; turn += 1) {
      // Some plans are asked for fewer than five times.
      const plan = plans[Math.min(Math.floor(Math.log2(turn + 1)), 6)] ?? plans[0]
      const { appliances, nominalV } = plan
      const payload = {
        loads: appliances.map((appliance) => ({ id: appliance, appliance, name: `of turn ${turn}` })),
        ...(nominalV === undefined ? {} : { supply: { nominalV } }),
      }
      const reply = await shop.app.inject({ method: 'POST', url: '/v1/shops/kingcup/sizing', payload })
      const answer = sizingAnswerSchema.parse(reply.json())
      count(counts.outcome, answer.outcome)
      for (const appliance of appliances) count(counts.appliance, appliance)
      if (appliances.length > 1) count(counts.combination, [...appliances].sort().join())
      if (answer.recommended !== null) count(counts.unit, answer.recommended.sku)
      count(counts.voltage, String(nominalV ?? null))
    }
    const read = await shop.app.inject({
      url: '/v1/shops/kingcup/demand',
      headers: { authorization: `Bearer ${key}` },
    })
    expect(read.statusCode).toBe(200)
    const demand = demandReplySchema.parse(read.json())
    expect(demand).toMatchObject({ to: TODAY, requests: 60, counting: true })
    expect(demand.days).toMatchObject([{ day: TODAY, requests: 60 }])
    const frequent = (of: Map<string, number>) => new Map([...of].filter(([, times]) => times >= 5))
    const rare = (of: Map<string, number>) =>
      [...of.values()].filter((times) => times < 5).reduce((sum, times) => sum + times, 0)
    const told = [
      [demand.outcomes, counts.outcome, ({ outcome }: { outcome?: string }) => String(outcome)],
      [
        demand.appliances,
        counts.appliance,
        ({ appliance }: { appliance?: string | null }) => String(appliance),
      ],
      [
        demand.combinations,
        counts.combination,
        ({ appliances: ids }: { appliances?: string[] }) => String(ids),
      ],
      [demand.units, counts.unit, ({ sku }: { sku?: string }) => String(sku)],
      [demand.voltages, counts.voltage, ({ nominalV }: { nominalV?: number | null }) => String(nominalV)],
    ] as const
    for (const [list, expected, nameOf] of told) {
      expect(new Map(list.entries.map((entry) => [nameOf(entry), entry.count]))).toEqual(frequent(expected))
      expect(list.others).toBe(rare(expected))
    }
    expect(demand.advice.newSizes.map(({ most }) => most)).toEqual([1, 2, 3])
    expect(demand.advice.newSizes[0]?.method).toMatchObject({ name: 'exact', guaranteeFraction: 1 })
    expect(demand.advice.drop.map(({ skus }) => skus.length)).toEqual([1, 2, 3])
    await shop.close()
  })

  it('advises the size that shoppers asked for in vain', async () => {
    const shop = await openStaffService()
    const key = await shop.issue('kingcup', ['demand'])
    for (let turn = 0; turn < 12; turn += 1) {
      await shop.app.inject({
        method: 'POST',
        url: '/v1/shops/kingcup/sizing',
        payload: {
          loads: [{ id: 'a', name: 'kiln', rating: { basis: 'input-watts', watts: 4000 } }],
          supply: { nominalV: 12 },
        },
      })
    }
    const read = await shop.app.inject({
      url: '/v1/shops/kingcup/demand?newSizes=1',
      headers: { authorization: `Bearer ${key}` },
    })
    const demand = demandReplySchema.parse(read.json())
    // 4000 W / (1 - 0.2) = 5000 W, itself a preferred number.
    expect(demand.unmet.entries).toMatchObject([
      { nominalV: 12, continuousW: 5000, surgeW: 4000, cause: 'size', count: 12 },
    ])
    expect(demand.advice.newSizes).toMatchObject([
      { most: 1, sizes: [{ nominalV: 12, continuousW: 5000, surgeW: 5000, served: 12 }], served: 12 },
    ])
    expect(demand.appliances.entries).toEqual([{ appliance: null, name: null, count: 12 }])
    expect(read.body).not.toContain('kiln')
    await shop.close()
  })

  it('counts fit calls by the unit that was asked about', async () => {
    const shop = await openStaffService()
    const key = await shop.issue('kingcup', ['demand'])
    for (let turn = 0; turn < 6; turn += 1) {
      const reply = await shop.app.inject({
        method: 'POST',
        url: '/v1/shops/kingcup/fit',
        payload: {
          loads: [{ id: 'a', appliance: 'toaster' }],
          supply: { nominalV: 12 },
          sku: 'KC-ST12-145',
        },
      })
      expect(reply.statusCode).toBe(200)
    }
    const read = await shop.app.inject({
      url: '/v1/shops/kingcup/demand',
      headers: { authorization: `Bearer ${key}` },
    })
    const demand = demandReplySchema.parse(read.json())
    expect(demand.outcomes.entries).toEqual([{ call: 'fit', outcome: 'none-fits', count: 6 }])
    expect(demand.codes.entries.map(({ code }) => code)).toContain('continuous-power-short')
    expect(demand.units.entries).toMatchObject([{ sku: 'KC-ST12-3180', count: 6 }])
    expect(demand.unmet.entries).toEqual([])
    await shop.close()
  })

  it('loses nothing when the service stops in good order', async () => {
    const shop = await openStaffService()
    await shop.app.inject({
      method: 'POST',
      url: '/v1/shops/kingcup/sizing',
      payload: { loads: [{ id: 'a', appliance: 'laptop' }] },
    })
    await shop.app.close()
    const { totals } = await shop.store.demand('kingcup', { from: TODAY, to: TODAY })
    expect(totals).toContainEqual({ kind: 'appliance', key: 'laptop', count: 1 })
    await shop.close()
  })

  it.each([
    '?from=2026-02-30',
    '?from=2026-03-02&to=2026-03-01',
    '?from=2020-01-01&to=2026-01-01',
    '?to=today',
  ])('refuses %s', async (query) => {
    const key = await service.issue('kingcup', ['demand'])
    const reply = await get(`/v1/shops/kingcup/demand${query}`, key)
    expect(reply.statusCode).toBe(400)
    expect(reply.json().code).toBe('bad-request')
  })

  it('asks for a key that may read demand', async () => {
    expect((await get('/v1/shops/kingcup/demand', readKey)).statusCode).toBe(403)
  })
})
