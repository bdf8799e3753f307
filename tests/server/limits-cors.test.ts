import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../server/app.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { checkedReplies } from '../support/checked-replies.ts'

const LISTED = 'https://shop.example'
const SIZING = '/v1/shops/kingcup/sizing'

let app: FastifyInstance
beforeAll(async () => {
  const ranges = fixedRanges({
    kingcup: { ...kingcup, shop: { ...kingcup.shop, allowedOrigins: [LISTED] } },
    other: { ...kingcup, shop: { ...kingcup.shop, id: 'other', allowedOrigins: ['https://other.example'] } },
  })
  app = checkedReplies(await buildApp({ ranges }))
})
afterAll(() => app.close())

const ask = (origin: string | undefined, url = SIZING) =>
  app.inject({
    method: 'POST',
    url,
    payload: sizingRequestExample,
    headers: origin === undefined ? {} : { origin },
  })
const preflight = (origin: string, url = SIZING) =>
  app.inject({
    method: 'OPTIONS',
    url,
    headers: {
      origin,
      'access-control-request-method': 'POST',
      'access-control-request-headers': 'content-type',
    },
  })

describe('a page of an origin that the shop lists', () => {
  it('may read the answer, its quota and its validator, but sends no cookies', async () => {
    const { statusCode, headers } = await ask(LISTED)
    expect(statusCode).toBe(200)
    expect(headers['access-control-allow-origin']).toBe(LISTED)
    expect(headers['access-control-allow-credentials']).toBeUndefined()
    for (const name of ['ETag', 'RateLimit', 'RateLimit-Policy', 'Retry-After']) {
      expect(headers['access-control-expose-headers']).toContain(name)
    }
  })

  it('gets its preflight answered for two hours, without a body', async () => {
    const { statusCode, headers, body } = await preflight(LISTED)
    expect({ statusCode, body }).toEqual({ statusCode: 204, body: '' })
    expect(headers['access-control-allow-origin']).toBe(LISTED)
    expect(headers['access-control-max-age']).toBe('7200')
    expect(headers['access-control-allow-headers']).toContain('Content-Type')
    expect(headers['access-control-allow-methods']).not.toContain('PUT')
  })

  it('finds nothing by an OPTIONS that is no preflight', async () => {
    const { statusCode, headers } = await app.inject({
      method: 'OPTIONS',
      url: SIZING,
      headers: { origin: LISTED },
    })
    expect(statusCode).toBe(405)
    expect(headers['access-control-allow-methods']).toBeUndefined()
  })

  it('may read a problem too', async () => {
    const { statusCode, headers } = await app.inject({
      method: 'POST',
      url: SIZING,
      payload: {},
      headers: { origin: LISTED },
    })
    expect(statusCode).toBe(422)
    expect(headers['access-control-allow-origin']).toBe(LISTED)
  })
})

describe('any other origin', () => {
  const tricks = [
    'null',
    'https://shop.example.evil.example',
    'https://evil-shop.example',
    'https://evilshop.example',
    'https://shop.example@evil.example',
    'https://user:pw@shop.example',
    'https://SHOP.example',
    'HTTPS://shop.example',
    'http://shop.example',
    'https://shop.example:8443',
    'https://shop.example:443',
    'https://shop.example/',
    'https://shop.example.',
    'https://sub.shop.example',
    'https://shopXexample',
    'https://other.example',
    '*',
    '',
  ]
  it.each(tricks)('%j is refused with a reason, in the call and before it', async (origin) => {
    for (const reply of [await ask(origin), await preflight(origin)]) {
      expect(reply.headers['access-control-allow-origin']).toBeUndefined()
      expect(reply.headers.vary).toContain('Origin')
      expect(reply.statusCode).toBe(403)
      expect(reply.json().code).toBe('origin-not-allowed')
    }
  })

  it('is refused whatever the path hides', async () => {
    for (const url of ['/v1/shops//sizing', '/v1/shops/king%63up/sizing']) {
      const reply = await preflight(LISTED, url)
      expect(reply.statusCode).toBe(403)
      expect(reply.headers['access-control-allow-origin']).toBeUndefined()
    }
  })
})

describe('a shop that is not served', () => {
  const anywhere = 'https://anywhere.example'
  const urls = ['nobody', 'king%20cup', 'KINGCUP', 'k%C3%B6nig'].map((id) => `/v1/shops/${id}/sizing`)

  it.each(urls)('lets any page read the 404, and nothing else: %s', async (url) => {
    const reply = await ask(anywhere, url)
    expect(reply.statusCode).toBe(404)
    expect(reply.json().code).toBe('unknown-shop')
    expect(reply.headers['access-control-allow-origin']).toBe('*')
    expect(reply.headers['access-control-allow-credentials']).toBeUndefined()
    expect(reply.headers.vary).toContain('Origin')
    const before = await preflight(anywhere, url)
    expect(before.statusCode).toBe(204)
    expect(before.headers['access-control-allow-origin']).toBe('*')
    expect(before.headers['access-control-allow-methods']).toBe('GET, POST')
    expect(before.headers['access-control-allow-headers']).not.toMatch(/authorization/i)
  })

  it('answers the 404 before it reads a body, whatever the address goes on with', async () => {
    for (const path of ['setup', 'range', 'nowhere', 'range/versions/1/restore']) {
      const reply = await app.inject({ url: `/v1/shops/nobody/${path}`, headers: { origin: anywhere } })
      expect([path, reply.statusCode, reply.json().code]).toEqual([path, 404, 'unknown-shop'])
    }
  })

  it('gives no leave to a call that carries a key', async () => {
    const headers = { origin: anywhere, authorization: 'Bearer x' }
    const reply = await app.inject({ url: '/v1/shops/nobody/setup', headers })
    expect(reply.headers['access-control-allow-origin']).toBeUndefined()
  })
})

describe('every reply', () => {
  it('varies by Origin: answers, 304, refusals, unknown addresses', async () => {
    const setup = await app.inject('/v1/shops/kingcup/setup')
    const replies = [
      setup,
      await app.inject({
        url: '/v1/shops/kingcup/setup',
        headers: { 'if-none-match': String(setup.headers.etag) },
      }),
      await ask(undefined),
      await ask(LISTED),
      await ask('https://evil.example'),
      await preflight(LISTED),
      await app.inject('/nowhere'),
      await app.inject('/%zz'),
      await app.inject({ method: 'DELETE', url: SIZING }),
      await app.inject('/docs'),
    ]
    expect(replies.map(({ statusCode }) => statusCode)).toEqual([
      200, 304, 200, 200, 403, 204, 404, 400, 405, 200,
    ])
    for (const { headers } of replies) expect(headers.vary).toMatch(/^Origin/)
  })
})

describe('a call without Origin, or from a page of the service itself', () => {
  it('is answered without leave to anybody', async () => {
    for (const origin of [undefined, 'http://localhost:80', 'https://localhost:80']) {
      const { statusCode, headers } = await ask(origin)
      expect(statusCode).toBe(200)
      expect(headers['access-control-allow-origin']).toBeUndefined()
    }
  })
})
