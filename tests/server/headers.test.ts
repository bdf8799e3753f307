import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../server/app.ts'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { demoService } from '../support/service.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let app: FastifyInstance
beforeAll(async () => {
  service = await openStaffService()
  app = service.app
})
afterAll(() => service.close())

/** Addresses for people, and the files of their pages; all else is in the contract. */
const PAGES = /^\/($|docs|staff|shops\/|playground|strict|pages|w\/|widget)/

/** Every address that is registered, by method, as a request would have it. */
function registered(instance: FastifyInstance): readonly { method: string; path: string }[] {
  const lines = instance.printRoutes({ commonPrefix: false }).split('\n')
  const stack: string[] = []
  return lines.flatMap((line) => {
    const found = /^([│ ]*)[├└]── (.*?)(?: \((.*)\))?$/.exec(line)
    if (found === null) return []
    const [, indent = '', part = '', methods = ''] = found
    stack.length = indent.length / 4
    stack.push(part)
    if (methods === '') return []
    const path = stack.join('')
    return methods.split(', ').map((method) => ({ method, path }))
  })
}

function filled(path: string): string {
  return path.replaceAll(/:shopId|\{shopId\}/g, 'kingcup').replaceAll(/:\w+|\{\w+\}/g, '1')
}

describe('what is registered', () => {
  it('is what the contract has, and the other way round', () => {
    const routes = registered(app)
      .filter(({ method, path }) => method !== 'HEAD' && method !== 'OPTIONS' && !PAGES.test(path))
      .map(({ method, path }) => `${method} ${path.replaceAll(/:(\w+)/g, '{$1}')}`)
    const contract = Object.values<Operation>(operations).map(({ method, path }) => `${method} ${path}`)
    expect([...new Set(routes)].sort()).toEqual(contract.sort())
  })

  it('says of each operation with a key which scope it needs, and refuses a key with another', async () => {
    const keyed = Object.values<Operation>(operations).filter(({ scope }) => scope !== undefined)
    expect(keyed.length).toBeGreaterThan(5)
    for (const { scope, method, path } of keyed) {
      const others = (['read', 'range', 'demand'] as const).filter((other) => other !== scope)
      const key = await service.issue('kingcup', others)
      const reply = await app.inject({
        method,
        url: filled(path),
        headers: { authorization: `Bearer ${key}` },
      })
      expect(`${method} ${path} ${reply.statusCode}`).toBe(`${method} ${path} 403`)
    }
  })
})

describe('headers of every address, answered or refused', () => {
  it('let a reply do nothing and tell nothing of the server', async () => {
    const routes = registered(app)
    expect(routes.length).toBeGreaterThan(15)
    const requests = routes.flatMap(({ method, path }) => [
      { method: method as 'GET', url: filled(path) },
      { method: 'PATCH' as const, url: filled(path) },
    ])
    for (const request of [...requests, { method: 'GET' as const, url: '/nowhere' }]) {
      const { headers, statusCode } = await app.inject(request)
      const what = `${request.method} ${request.url} ${statusCode}`
      expect(headers['x-content-type-options'], what).toBe('nosniff')
      expect(headers['referrer-policy'], what).toBe('no-referrer')
      expect(headers['content-security-policy'], what).toMatch(/^default-src 'none'.*frame-ancestors 'none'/)
      expect(headers['content-security-policy'], what).not.toMatch(/unsafe|\*|data:/)
      expect(headers['x-request-id'], what).toBeDefined()
      expect(headers.vary, what).toContain('Origin')
      expect(headers.server ?? headers['x-powered-by'], what).toBeUndefined()
      expect(headers['strict-transport-security'], what).toBeUndefined()
      if (String(headers['content-type']).startsWith('text/html')) {
        expect(headers['cross-origin-opener-policy'], what).toBe('same-origin')
        expect(headers['permissions-policy'], what).toContain('camera=()')
      }
    }
  })

  it('keep replies to keys out of caches', async () => {
    const key = await service.issue('kingcup', ['read'])
    const headers = { authorization: `Bearer ${key}` }
    for (const url of [
      '/v1/shops/kingcup/range/versions',
      '/v1/shops/other/range',
      '/v1/shops/kingcup/setup',
    ]) {
      expect((await app.inject({ url, headers })).headers['cache-control'], url).toMatch(
        /no-store|private|no-cache/,
      )
    }
    expect((await app.inject('/v1/shops/kingcup/range')).headers['cache-control']).toBe('no-store')
  })

  it('ask for TLS where the service is reached by it', async () => {
    const secure = await demoService({ settings: { publicUrl: 'https://sizing.shop.example' } })
    const { headers } = await secure.inject('/healthz')
    await secure.close()
    const seconds = /max-age=(\d+)/.exec(String(headers['strict-transport-security']))?.[1]
    expect(Number(seconds)).toBeGreaterThanOrEqual(31_536_000)
  })
})

describe('request ids', () => {
  it('are the caller’s where they are sound', async () => {
    const { headers } = await app.inject({ url: '/healthz', headers: { 'x-request-id': 'order-2026.11_25' } })
    expect(headers['x-request-id']).toBe('order-2026.11_25')
  })

  it.each([
    'short',
    'a b c d e f g',
    'x'.repeat(65),
    '<script>alert(1)</script>',
    'line\u0085break',
    '../../../etc',
  ])('are our own where the caller’s is %j', async (id) => {
    const { headers } = await app.inject({ url: '/healthz', headers: { 'x-request-id': id } })
    expect(headers['x-request-id']).toMatch(/^r[0-9a-f]{12}-[0-9a-z]+$/)
  })

  it('are different for each request and each instance', async () => {
    const other = await buildApp({ ranges: service.live.ranges })
    const ids = new Set<unknown>()
    for (const instance of [app, app, other, other]) {
      ids.add((await instance.inject('/healthz')).headers['x-request-id'])
    }
    await other.close()
    expect(ids.size).toBe(4)
  })
})

describe('a write', () => {
  it('takes no field that the contract does not know, at the top or within', async () => {
    const key = await service.issue('kingcup', ['range', 'read'])
    const authorization = `Bearer ${key}`
    const range = (await app.inject({ url: '/v1/shops/kingcup/range', headers: { authorization } })).json()
    const attempts = [
      { ...range, version: 99 },
      { ...range, shop: { ...range.shop, keys: [] } },
      { ...range, shop: { ...range.shop, id: 'bentcreek' } },
      { ...range, inverters: [{ ...range.inverters[0], costPrice: '1.00' }, ...range.inverters.slice(1)] },
    ]
    for (const payload of attempts) {
      const reply = await app.inject({
        method: 'PUT',
        url: '/v1/shops/kingcup/range',
        headers: { authorization, 'if-match': '*' },
        payload,
      })
      expect([reply.statusCode, reply.json().code]).toEqual([422, 'contract-broken'])
    }
    const after = (await app.inject({ url: '/v1/shops/kingcup/range', headers: { authorization } })).json()
    expect(after).toEqual(range)
  })

  it('and an answer to shoppers shows nothing but what the contract lists', async () => {
    const payload = operations.sizeShop.body.example
    const reply = await app.inject({ method: 'POST', url: '/v1/shops/kingcup/sizing', payload })
    // The replies are held to schemas without additional properties; here is what must not be in one at all.
    expect(reply.body).not.toMatch(/allowedOrigins|secretHash|keyId|author|inStock|bentcreek/i)
    expect(
      operations.sizeShop.reply.schema.safeParse(Object.assign({}, reply.json(), { margin: 1 })).success,
    ).toBe(false)
  })
})
