import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { cartAnswerSchema } from '../../shared/contract/cart.ts'
import { problemSchema } from '../../shared/contract/problem.ts'
import { cartRequestExample } from '../../shared/examples/carts.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

const url = '/v1/shops/kingcup/cart-check'

function post(payload: unknown, to = url) {
  return app.inject({
    method: 'POST',
    url: to,
    headers: { 'content-type': 'application/json' },
    payload: typeof payload === 'string' ? payload : JSON.stringify(payload),
  })
}

const line = (sku: string, quantity: unknown = 1) => ({ sku, quantity })
const codesOf = (answer: { findings: readonly { code: string }[] }) => answer.findings.map(({ code }) => code)

describe('POST /v1/shops/{shopId}/cart-check', () => {
  it('tells what is wrong with the example, by SKU and in words, and what is right', async () => {
    const reply = await post(cartRequestExample)
    expect(reply.statusCode).toBe(200)
    const answer = cartAnswerSchema.parse(reply.json())
    expect(answer.ok).toBe(false)
    const fails = answer.findings.filter(({ severity }) => severity === 'fail')
    expect(codesOf({ findings: fails })).toEqual(expect.arrayContaining(['cable-too-thin', 'fuse-missing']))
    const fuse = answer.findings.find(({ code }) => code === 'fuse-missing')
    expect(fuse).toMatchObject({
      skus: ['KC-ST12-1480'],
      values: { sku: 'KC-ST12-1480', useSku: fuse?.useSku },
    })
    expect(fuse?.message).toContain(fuse?.useSku)
    expect(answer.demand?.loads).toHaveLength(3)
    expect(answer.range).toEqual({ shopId: 'kingcup', version: 1 })
  })

  it('puts the part that is right into the sentence of a sizing finding too', async () => {
    const loads = [{ id: 'a', rating: { basis: 'input-watts', watts: 900 } }]
    const answer = cartAnswerSchema.parse((await post({ lines: [line('KC-ST12-465')], loads })).json())
    const short = answer.findings.find(({ code }) => code === 'continuous-power-short')
    expect(short).toMatchObject({ skus: ['KC-ST12-465'], useSku: 'KC-ST12-1480' })
    expect(short?.message).toContain('KC-ST12-1480 is right')
    expect(short?.values).toMatchObject({ sku: 'KC-ST12-465', useSku: 'KC-ST12-1480' })
    expect(answer.outcome).toBe('none-fits')
  })

  it('has nothing against the kit that sizing put together', async () => {
    const body = { loads: [{ id: 'a', appliance: 'laptop' }], supply: { nominalV: 12, oneWayLengthM: 2 } }
    const sizing = sizingAnswerSchema.parse((await post(body, '/v1/shops/kingcup/sizing')).json())
    expect(sizing.kit.map(({ role }) => role)).toEqual(['inverter', 'cable', 'fuse', 'connector', 'battery'])
    const lines = sizing.kit
      .filter(({ state }) => state === 'buy')
      .map(({ sku, quantity }) => ({ sku, quantity }))
    const answer = cartAnswerSchema.parse((await post({ ...body, lines })).json())
    expect([answer.ok, answer.unknownSkus]).toEqual([true, []])
    expect(answer.findings.filter(({ severity }) => severity === 'fail')).toEqual([])
  })

  it('checks a cart without loads or supply, and leaves demand and outcome out', async () => {
    const answer = (await post({ lines: [line('KC-CAB-25-2'), line('KC-FUS-T100')] })).json()
    expect(answer).toMatchObject({ ok: true, unknownSkus: [] })
    expect(Object.keys(answer)).toEqual(expect.not.arrayContaining(['demand', 'outcome']))
  })

  it('names unknown SKUs and answers all the same', async () => {
    const answer = (await post({ lines: [line('TENT-3'), line('KC-CAB-25-2')] })).json()
    expect(answer).toMatchObject({ ok: true, unknownSkus: ['TENT-3'] })
  })
})

describe('the kit of a sizing', () => {
  it('comes with reasons, specifications and an exact total in the shop’s currency', async () => {
    const answer = sizingAnswerSchema.parse(
      (await post(sizingRequestExample, '/v1/shops/kingcup/sizing')).json(),
    )
    expect(answer.kitTotal?.currency).toBe('GBP')
    const pence = answer.kit
      .filter(({ state }) => state === 'buy')
      .reduce((sum, { price = '', quantity }) => sum + Number(price.replace('.', '')) * quantity, 0)
    expect(answer.kitTotal?.amount).toBe(`${Math.floor(pence / 100)}.${String(pence % 100).padStart(2, '0')}`)
    for (const part of answer.kit) {
      expect(part.why.length).toBeGreaterThan(8)
      expect(part.specification).not.toMatch(/undefined|NaN|\[object/)
      expect(part.why).not.toMatch(/undefined|NaN|\[object/)
    }
  })

  it('leaves out what the buyer says to have', async () => {
    const kit = { owned: [{ role: 'fuse' }] }
    const answer = (await post({ ...sizingRequestExample, kit }, '/v1/shops/kingcup/sizing')).json()
    expect(answer.kit.find((part: { role: string }) => part.role === 'fuse')).toMatchObject({
      state: 'owned',
      reason: 'yours-unchecked',
    })
  })

  it('is empty where no unit is recommended', async () => {
    const loads = [{ id: 'ac', appliance: 'window-air-conditioner' }]
    const answer = (await post({ loads }, '/v1/shops/kingcup/sizing')).json()
    expect([answer.kit, answer.kitTotal]).toEqual([[], null])
  })
})

const BAD: readonly {
  what: string
  body: unknown
  pointer: string
  to?: string
  status?: number
  code?: string
}[] = [
  { what: 'no lines', body: {}, pointer: '/lines' },
  { what: 'an empty cart', body: { lines: [] }, pointer: '/lines' },
  { what: '61 lines', body: { lines: Array.from({ length: 61 }, () => line('X')) }, pointer: '/lines' },
  { what: 'a quantity of 0', body: { lines: [line('X', 0)] }, pointer: '/lines/0/quantity' },
  { what: 'a quantity of 101', body: { lines: [line('X', 101)] }, pointer: '/lines/0/quantity' },
  { what: 'half a part', body: { lines: [line('X', 1.5)] }, pointer: '/lines/0/quantity' },
  { what: 'a quantity as text', body: { lines: [line('X', '1')] }, pointer: '/lines/0/quantity' },
  { what: 'a line without a SKU', body: { lines: [{ quantity: 1 }] }, pointer: '/lines/0/sku' },
  { what: 'a misspelt property', body: { lines: [{ ...line('X'), qty: 1 }] }, pointer: '/lines/0/qty' },
  { what: 'an unknown property', body: { lines: [line('X')], colour: 'red' }, pointer: '/colour' },
  {
    what: 'a voltage that no bank has',
    body: { lines: [line('X')], supply: { nominalV: 13 } },
    pointer: '/supply/nominalV',
  },
  {
    what: 'an unknown role',
    body: { lines: [line('X')], owned: [{ role: 'tent' }] },
    pointer: '/owned/0/role',
  },
  { what: 'no loads in loads', body: { lines: [line('X')], loads: [] }, pointer: '/loads' },
  {
    what: 'an unknown appliance',
    body: { lines: [line('X')], loads: [{ id: 'a', appliance: 'flux' }] },
    pointer: '/loads/0/appliance',
  },
  {
    what: 'a take-turns group with an unknown load',
    body: { lines: [line('X')], loads: [{ id: 'a', appliance: 'laptop' }], takeTurns: [['a', 'b']] },
    pointer: '/takeTurns/0/1',
  },
  { what: 'no JSON', body: '{"lines":', pointer: '', status: 400, code: 'unreadable-json' },
  {
    what: 'an unknown shop',
    body: { lines: [line('X')] },
    to: '/v1/shops/nobody/cart-check',
    pointer: '',
    status: 404,
    code: 'unknown-shop',
  },
]

describe('a bad cart', () => {
  it.each(BAD)('with $what is refused with a pointer', async ({ body, pointer, to, status = 422, code }) => {
    const reply = await post(body, to)
    expect(reply.statusCode).toBe(status)
    const problem = problemSchema.parse(reply.json())
    expect(problem.code).toBe(code ?? 'contract-broken')
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer)
  })
})
