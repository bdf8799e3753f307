import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fitAnswerSchema, sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { problemSchema } from '../../shared/contract/problem.ts'
import { fitRequestExample, sizingRequestExample } from '../../shared/examples/plans.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

function post(url: string, payload: unknown, headers: Record<string, string> = {}) {
  return app.inject({
    method: 'POST',
    url,
    headers: { 'content-type': 'application/json', ...headers },
    payload: typeof payload === 'string' ? payload : JSON.stringify(payload),
  })
}

const sizing = '/v1/shops/kingcup/sizing'
const load = (changes: Record<string, unknown> = {}) => ({
  id: 'a',
  rating: { basis: 'input-watts', watts: 100 },
  ...changes,
})

describe('POST /v1/shops/{shopId}/sizing', () => {
  it('answers the example with a unit and the reasons for those passed over', async () => {
    const reply = await post(sizing, sizingRequestExample)
    expect(reply.statusCode).toBe(200)
    const answer = sizingAnswerSchema.parse(reply.json())
    expect(answer.recommended?.continuousW).toBeGreaterThanOrEqual(answer.demand.requiredContinuousW)
    const passedOver = answer.considered.filter((unit) => !unit.fits)
    expect(passedOver.length).toBeGreaterThan(0)
    for (const unit of passedOver) {
      expect(unit.findings.some((found) => found.severity === 'fail' && found.message.length > 10)).toBe(true)
    }
  })

  it('shows at most 8 units around the choice, and the whole range when asked', async () => {
    const brief = (await post(sizing, { loads: [load()] })).json()
    const full = (await post(sizing, { loads: [load()], detail: 'full' })).json()
    expect(brief.considered).toHaveLength(8)
    expect(full.considered).toHaveLength(full.consideredTotal)
    expect(brief.considered.map((unit: { sku: string }) => unit.sku)).toContain(brief.recommended.sku)
    const sizes = full.considered.map((unit: { continuousW: number }) => unit.continuousW)
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b))
  })

  it("uses the shop's mains, currency and locale", async () => {
    const answer = (await post('/v1/shops/bentcreek/sizing', { loads: [load()] })).json()
    expect(answer.recommended.currency).toBe('USD')
    expect(answer.range).toEqual({ shopId: 'bentcreek', version: 1 })
  })

  it('tells what it assumed where the supply is left out', async () => {
    const answer = (await post(sizing, { loads: [load()] })).json()
    const codes = answer.assumptions.map((found: { code: string }) => found.code)
    expect(codes).toContain('supply-voltage-assumed')
  })

  it('says not advised for what the shop advises against, with nothing recommended', async () => {
    const answer = (await post(sizing, { loads: [{ id: 'ac', appliance: 'window-air-conditioner' }] })).json()
    expect(answer.outcome).toBe('not-advised')
    expect(answer.recommended).toBeNull()
  })
})

describe('POST /v1/shops/{shopId}/fit', () => {
  it('judges the named unit and names the smallest that would do', async () => {
    const reply = await post('/v1/shops/kingcup/fit', { ...fitRequestExample, sku: 'KC-ST12-145' })
    expect(reply.statusCode).toBe(200)
    const answer = fitAnswerSchema.parse(reply.json())
    expect(answer.unit).toMatchObject({ sku: 'KC-ST12-145', fits: false })
    expect(answer.outcome).toBe('none-fits')
    expect(answer.smallest?.continuousW).toBeGreaterThan(1000)
  })

  it('agrees with sizing about the unit that sizing recommends', async () => {
    const { recommended } = (await post(sizing, sizingRequestExample)).json()
    const answer = (
      await post('/v1/shops/kingcup/fit', { ...sizingRequestExample, sku: recommended.sku })
    ).json()
    expect(answer.unit.fits).toBe(true)
    expect(answer.smallest.sku).toBe(recommended.sku)
  })

  it('answers 404 with a pointer for a unit that the range lacks', async () => {
    const reply = await post('/v1/shops/kingcup/fit', { ...fitRequestExample, sku: 'NO-SUCH' })
    expect(reply.statusCode).toBe(404)
    expect(reply.json()).toMatchObject({ code: 'unknown-sku', errors: [{ pointer: '/sku' }] })
  })
})

interface BadCase {
  readonly what: string
  readonly body: unknown
  readonly status?: number
  readonly code?: string
  readonly pointer: string
  readonly url?: string
  readonly headers?: Record<string, string>
}

const watts = (value: unknown) => ({ loads: [load({ rating: { basis: 'input-watts', watts: value } })] })
const raw = (value: string) => `{"loads":[{"id":"a","rating":{"basis":"input-watts","watts":${value}}}]}`

const BAD: readonly BadCase[] = [
  { what: 'no loads', body: { loads: [] }, pointer: '/loads' },
  {
    what: '41 loads',
    body: { loads: Array.from({ length: 41 }, (_, index) => load({ id: `l${index}` })) },
    pointer: '/loads',
  },
  { what: 'two loads of one id', body: { loads: [load(), load()] }, pointer: '/loads/1/id' },
  {
    what: 'an id in two take-turns groups',
    body: {
      loads: ['a', 'b', 'c'].map((id) => load({ id })),
      takeTurns: [
        ['a', 'b'],
        ['b', 'c'],
      ],
    },
    pointer: '/takeTurns/1/0',
  },
  {
    what: 'a group with an unknown id',
    body: { loads: [load()], takeTurns: [['a', 'zz']] },
    pointer: '/takeTurns/0/1',
  },
  {
    what: 'an unknown appliance',
    body: { loads: [{ id: 'a', appliance: 'flux' }] },
    pointer: '/loads/0/appliance',
  },
  { what: 'a load that states nothing', body: { loads: [{ id: 'a' }] }, pointer: '/loads/0' },
  { what: 'negative watts', body: watts(-1), pointer: '/loads/0/rating/watts' },
  { what: 'zero watts', body: watts(0), pointer: '/loads/0/rating/watts' },
  { what: 'watts of null, as NaN is written', body: watts(Number.NaN), pointer: '/loads/0/rating/watts' },
  { what: 'watts of 1e309', body: raw('1e309'), pointer: '/loads/0/rating/watts' },
  { what: 'watts as a string', body: watts('100'), pointer: '/loads/0/rating/watts' },
  {
    what: 'cooking watts of a kettle',
    body: { loads: [load({ appliance: 'electric-kettle', rating: { basis: 'cooking-watts', watts: 700 } })] },
    pointer: '/loads/0/rating',
  },
  { what: 'an unknown property', body: { loads: [load()], colour: 'red' }, pointer: '/colour' },
  { what: 'an unknown property deep down', body: { loads: [load({ wats: 3 })] }, pointer: '/loads/0/wats' },
  {
    what: 'a label text of 10,000 characters',
    body: { loads: [load({ rating: { basis: 'label-text', text: '9'.repeat(10_000) } })] },
    pointer: '/loads/0/rating/text',
  },
  {
    what: 'a label text without power',
    body: { loads: [load({ rating: { basis: 'label-text', text: 'OUTPUT 20V 5A' } })] },
    pointer: '/loads/0/rating',
  },
  {
    what: 'a wrong content type',
    body: 'hello',
    headers: { 'content-type': 'text/plain' },
    status: 415,
    code: 'unsupported-media-type',
    pointer: '',
  },
  { what: 'a body of 1 MB', body: ' '.repeat(1_000_000), status: 413, code: 'body-too-large', pointer: '' },
  { what: 'no JSON', body: '{"loads":', status: 400, code: 'unreadable-json', pointer: '' },
  { what: 'an empty body', body: '', status: 400, code: 'unreadable-json', pointer: '' },
  {
    what: 'a __proto__ key',
    body: '{"loads":[{"id":"a","appliance":"laptop","__proto__":{"quantity":5}}]}',
    status: 400,
    code: 'unreadable-json',
    pointer: '',
  },
  {
    what: 'an unknown shop',
    url: '/v1/shops/nobody/sizing',
    body: { loads: [load()] },
    status: 404,
    code: 'unknown-shop',
    pointer: '',
  },
]

describe('bad input', () => {
  it.each(BAD)('refuses $what with a pointer and leaves nothing changed', async (bad) => {
    const before = (await post(sizing, sizingRequestExample)).body
    const reply = await post(bad.url ?? sizing, bad.body, bad.headers)
    expect(reply.statusCode).toBe(bad.status ?? 422)
    expect(reply.headers['content-type']).toBe('application/problem+json; charset=utf-8')
    const problem = problemSchema.parse(reply.json())
    expect(problem.code).toBe(bad.code ?? 'contract-broken')
    expect(problem.errors?.map((error) => error.pointer)).toContain(bad.pointer)
    expect((await post(sizing, sizingRequestExample)).body).toBe(before)
  })

  it('names every fault of a body at once', async () => {
    const reply = await post(sizing, {
      loads: [load({ quantity: 0 }), load({ id: 'b', minutesPerDay: 2000 })],
      supply: { nominalV: 13 },
    })
    expect(reply.json().errors).toEqual([
      { pointer: '/loads/0/quantity', message: 'Must be at least 1.' },
      { pointer: '/loads/1/minutesPerDay', message: 'Must be at most 1440.' },
      { pointer: '/supply/nominalV', message: 'Must be one of 12, 24, 36, 48.' },
    ])
  })

  it('answers 405 with the allowed methods and 404 for an unknown address', async () => {
    const wrong = await app.inject({ method: 'GET', url: sizing })
    expect([wrong.statusCode, wrong.headers.allow]).toEqual([405, 'POST'])
    const nowhere = await app.inject({ method: 'GET', url: '/v2/nothing' })
    expect([nowhere.statusCode, nowhere.json().code]).toEqual([404, 'not-found'])
  })
})

describe('what is read', () => {
  it('gives the appliance list an ETag and answers 304 to it', async () => {
    const first = await app.inject({ method: 'GET', url: '/v1/appliances' })
    expect(first.json().appliances.length).toBeGreaterThanOrEqual(90)
    const again = await app.inject({
      method: 'GET',
      url: '/v1/appliances',
      headers: { 'if-none-match': String(first.headers.etag) },
    })
    expect([again.statusCode, again.body, again.headers.etag]).toEqual([304, '', first.headers.etag])
  })

  it('shows a curl on / that works', async () => {
    const page = await app.inject({ method: 'GET', url: '/' })
    const body = /-d &#39;|-d '([\s\S]*?)'<\/pre>/.exec(page.body)?.[1]?.replaceAll('&quot;', '"')
    const reply = await post(sizing, body ?? '')
    expect(reply.statusCode).toBe(200)
    expect(sizingAnswerSchema.safeParse(reply.json()).success).toBe(true)
  })

  it('tells that it runs', async () => {
    expect((await app.inject({ method: 'GET', url: '/healthz' })).json()).toEqual({ status: 'ok' })
  })
})
