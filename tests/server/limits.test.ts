import fc from 'fast-check'
import type { FastifyInstance } from 'fastify'
import { parseList } from 'structured-headers'
import { afterEach, describe, expect, it } from 'vitest'
import { callerOf } from '../../server/plugins/callers.ts'
import { quota } from '../../server/plugins/quota.ts'
import type { Settings } from '../../server/settings.ts'
import { RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { demoService } from '../support/service.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

const SIZING = '/v1/shops/kingcup/sizing'
const open: { close(): Promise<unknown> }[] = []
afterEach(async () => {
  for (const service of open.splice(0)) await service.close()
})

async function service(settings: Partial<Settings>): Promise<FastifyInstance> {
  const app = await demoService({ settings })
  open.push(app)
  return app
}
async function staff(settings: Partial<Settings>): Promise<StaffService> {
  const made = await openStaffService(undefined, settings)
  open.push(made)
  return made
}

describe('quota', () => {
  it('lets a whole window through at once, then one call as each share of the window passes', () => {
    const calls = quota({ limit: 6, windowS: 60, maxCallers: 100 })
    const at = (nowMs: number) => calls.spend('a', nowMs).allowed
    expect([1, 2, 3, 4, 5, 6].map(() => at(1000))).toEqual([true, true, true, true, true, true])
    expect(at(1000)).toBe(false)
    expect(at(10_999)).toBe(false)
    expect(at(11_000)).toBe(true)
    expect(at(11_000)).toBe(false)
  })

  it('never lets more through in any stretch than a full bucket and its refill', () => {
    const gaps = fc.array(fc.integer({ min: 0, max: 20_000 }), { minLength: 1, maxLength: 200 })
    fc.assert(
      fc.property(gaps, fc.integer({ min: 1, max: 30 }), (pauses, limit) => {
        const calls = quota({ limit, windowS: 60, maxCallers: 10 })
        const passed: number[] = []
        let now = 0
        for (const pause of pauses) {
          now += pause
          if (calls.spend('a', now).allowed) passed.push(now)
        }
        passed.forEach((start, first) => {
          passed.slice(first).forEach((end, index) => {
            expect(index + 1).toBeLessThanOrEqual(limit + (limit * (end - start)) / 60_000 + 1e-6)
          })
        })
      }),
    )
  })

  it('lets a caller through that has waited as long as it was told', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 5000 }), (limit, start) => {
        const calls = quota({ limit, windowS: 60, maxCallers: 10 })
        let state = calls.spend('a', start)
        while (state.allowed) state = calls.spend('a', start)
        expect(calls.spend('a', start + state.resetS * 1000).allowed).toBe(true)
      }),
    )
  })

  it('keeps callers apart and no more of them than it was told to', () => {
    const calls = quota({ limit: 1, windowS: 60, maxCallers: 100 })
    for (let caller = 0; caller < 10_000; caller += 1) {
      expect(calls.spend(`caller ${caller}`, caller).allowed).toBe(true)
      expect(calls.size()).toBeLessThanOrEqual(100)
    }
    expect(calls.spend('caller 9999', 10_000).allowed).toBe(false)
  })
})

describe('callerOf', () => {
  it.each([
    ['203.0.113.7', '203.0.113.7'],
    ['::ffff:203.0.113.7', '203.0.113.7'],
    ['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
    ['2001:db8:1:2::9', '2001:db8:1:2::/64'],
    ['2001:0db8:0001:0002::', '2001:db8:1:2::/64'],
    ['::1', '0:0:0:0::/64'],
    ['fe80::1%eth0', 'fe80:0:0:0::/64'],
  ])('takes %s as %s', (address, caller) => {
    expect(callerOf(address)).toBe(caller)
  })
})

describe('calls over the quota of an address', () => {
  it('get 429 with what is left, when to come back and which policy, while others are answered', async () => {
    const app = await service({ addressQuota: 3 })
    const ask = (url = SIZING, remoteAddress = '203.0.113.1') =>
      app.inject({ method: 'POST', url, payload: sizingRequestExample, remoteAddress })
    const first = await ask()
    expect(first.headers['ratelimit-policy']).toBe('"address";q=3;w=60')
    const [[name, parameters] = []] = parseList(String(first.headers.ratelimit))
    expect(name).toBe('address')
    expect((parameters as Map<string, unknown>).get('r')).toBe(2)
    await ask()
    await ask()
    const refused = await ask()
    expect(refused.statusCode).toBe(429)
    expect(refused.json()).toMatchObject({
      type: 'https://iana.org/assignments/http-problem-types#quota-exceeded',
      code: 'rate-limited',
      status: 429,
      'violated-policies': ['address'],
    })
    const [[, spent] = []] = parseList(String(refused.headers.ratelimit))
    const reset = Number((spent as Map<string, unknown>).get('t'))
    expect(Number(refused.headers['retry-after'])).toBeGreaterThanOrEqual(reset)
    expect(reset).toBeGreaterThan(15)
    expect(reset).toBeLessThanOrEqual(20)

    expect((await ask(SIZING, '203.0.113.2')).statusCode, 'another address').toBe(200)
    expect((await ask('/v1/shops/bentcreek/fit')).statusCode, 'another shop').not.toBe(429)
    expect((await app.inject({ url: '/healthz', remoteAddress: '203.0.113.1' })).statusCode).toBe(200)
  })

  it('spread their return', async () => {
    const app = await service({ addressQuota: 1 })
    const waits = new Set<string>()
    for (let call = 0; call < 60; call += 1) {
      waits.add(String((await app.inject('/v1/appliances')).headers['retry-after']))
    }
    waits.delete('undefined')
    expect(waits.size).toBeGreaterThan(1)
  })

  it('buy nothing by inventing shops', async () => {
    const app = await service({ addressQuota: 3 })
    const statuses: number[] = []
    for (let call = 0; call < 5; call += 1) {
      statuses.push((await app.inject(`/v1/shops/made-up-${call}/setup`)).statusCode)
    }
    expect(statuses).toEqual([404, 404, 404, 429, 429])
  })
})

describe('keys', () => {
  it('have a higher quota of their own, whatever the address has used up', async () => {
    const { app, issue } = await staff({ addressQuota: 1, keyQuota: 4 })
    const key = await issue('kingcup', ['read'])
    const read = () =>
      app.inject({ url: '/v1/shops/kingcup/range', headers: { authorization: `Bearer ${key}` } })
    expect((await app.inject('/v1/shops/kingcup/setup')).statusCode).toBe(200)
    expect((await app.inject('/v1/shops/kingcup/setup')).statusCode).toBe(429)
    const statuses: number[] = []
    for (let call = 0; call < 5; call += 1) statuses.push((await read()).statusCode)
    expect(statuses).toEqual([200, 200, 200, 200, 429])
    const refused = await read()
    expect(refused.headers['ratelimit-policy']).toBe('"key";q=4;w=60')
    expect(JSON.stringify(refused.headers) + refused.body).not.toContain(key)
  })

  it('that are refused are slowed, and cost the good key of the same address nothing', async () => {
    const { app, issue } = await staff({ refusedKeyQuota: 3, keyQuota: 100 })
    const key = await issue('kingcup', ['read'])
    const read = (secret: string) =>
      app.inject({ url: '/v1/shops/kingcup/range', headers: { authorization: `Bearer ${secret}` } })
    const statuses: number[] = []
    for (let call = 0; call < 5; call += 1) statuses.push((await read('tw_nonsense')).statusCode)
    expect(statuses).toEqual([401, 401, 401, 429, 429])
    const slowed = await read('tw_nonsense')
    expect(slowed.json()).toMatchObject({ code: 'rate-limited', 'violated-policies': ['refused-key'] })
    expect(slowed.headers['retry-after']).toMatch(/^\d+$/)
    const good = await read(key)
    expect(good.statusCode).toBe(200)
    expect(good.headers.ratelimit).toContain('"key";r=99')
  })
})

describe('proxies', () => {
  const forwarded = { 'x-forwarded-for': '198.51.100.9' }

  it('that nobody has named are not believed: a made-up address buys no quota', async () => {
    const app = await service({ addressQuota: 1 })
    await app.inject({ url: '/v1/appliances', headers: forwarded })
    const second = await app.inject({
      url: '/v1/appliances',
      headers: { 'x-forwarded-for': '198.51.100.10' },
    })
    expect(second.statusCode).toBe(429)
  })

  it('that are named are believed for the last hop only', async () => {
    const app = await service({ addressQuota: 1, trustedProxies: ['10.0.0.0/8'] })
    const through = (chain: string, remoteAddress = '10.1.2.3') =>
      app.inject({ url: '/v1/appliances', headers: { 'x-forwarded-for': chain }, remoteAddress })
    expect((await through('198.51.100.1')).statusCode).toBe(200)
    expect((await through('198.51.100.2')).statusCode).toBe(200)
    expect((await through('203.0.113.66, 198.51.100.2')).statusCode, 'its own word before').toBe(429)
    expect((await through('198.51.100.3', '192.0.2.1')).statusCode, 'past the proxy').toBe(200)
    expect((await through('198.51.100.4', '192.0.2.1')).statusCode).toBe(429)
  })
})

describe('bodies', () => {
  it('of 32 KiB are read and of one byte more are not', async () => {
    const app = await service({})
    const padded = (bytes: number) => {
      const text = JSON.stringify(sizingRequestExample)
      return text + ' '.repeat(bytes - text.length)
    }
    const send = (payload: string) =>
      app.inject({ method: 'POST', url: SIZING, payload, headers: { 'content-type': 'application/json' } })
    expect((await send(padded(32 * 1024))).statusCode).toBe(200)
    const refused = await send(padded(32 * 1024 + 1))
    expect([refused.statusCode, refused.json().code]).toEqual([413, 'body-too-large'])
  })

  it('of a range file are read up to 5 MiB', async () => {
    const { app, issue } = await staff({})
    const key = await issue('kingcup', ['range'])
    const send = (bytes: number) =>
      app.inject({
        method: 'PUT',
        url: '/v1/shops/kingcup/range?dryRun=true',
        payload: '"'.padEnd(bytes - 1, 'x').concat('"'),
        headers: { authorization: `Bearer ${key}`, 'content-type': 'application/json' },
      })
    expect((await send(RANGE_BODY_LIMIT_BYTES)).statusCode).toBe(422)
    expect((await send(RANGE_BODY_LIMIT_BYTES + 1)).statusCode).toBe(413)
  })

  it('labelled as anything but JSON are not read', async () => {
    const app = await service({})
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data; boundary=x',
      'text/csv',
      'application/xml',
      'application/json; charset=utf-16',
      'application/json;charset="latin1"',
    ]) {
      const reply = await app.inject({
        method: 'POST',
        url: SIZING,
        payload: JSON.stringify(sizingRequestExample),
        headers: { 'content-type': type },
      })
      expect([reply.statusCode, reply.json().code], type).toEqual([415, 'unsupported-media-type'])
    }
  })
})

describe('a route that asks the store', () => {
  it('answers 503 when the store takes too long, and the process goes on', async () => {
    const { app, issue, store } = await staff({ handlerTimeoutMs: 50 })
    const key = await issue('kingcup', ['read'])
    const { head } = store
    store.head = () => new Promise(() => {})
    const reply = await app.inject({
      url: '/v1/shops/kingcup/range/versions',
      headers: { authorization: `Bearer ${key}` },
    })
    store.head = head
    expect([reply.statusCode, reply.json().code]).toEqual([503, 'timed-out'])
    expect(reply.headers['retry-after']).toMatch(/^\d+$/)
    expect((await app.inject('/healthz')).statusCode).toBe(200)
  })

  it('turns calls away when too many are being worked on, but never health', async () => {
    const { app, issue, store } = await staff({ maxInFlight: 2 })
    const key = await issue('kingcup', ['read'])
    const read = () =>
      app.inject({
        url: '/v1/shops/kingcup/range/versions',
        headers: { authorization: `Bearer ${key}` },
      })
    const { head } = store
    let go: () => void = () => {}
    const gate = new Promise<void>((resolve) => {
      go = resolve
    })
    store.head = async (shopId) => {
      await gate
      return head.call(store, shopId)
    }
    const held = [read(), read()]
    await new Promise((resolve) => setTimeout(resolve, 30))
    const away = await read()
    expect([away.statusCode, away.json().code]).toEqual([503, 'overloaded'])
    expect(Number(away.headers['retry-after'])).toBeGreaterThan(0)
    expect((await app.inject('/healthz')).statusCode).toBe(200)
    expect((await app.inject('/readyz')).statusCode).toBe(200)
    go()
    for (const reply of held) expect((await reply).statusCode).toBe(200)
    store.head = head
    expect((await read()).statusCode, 'room again').toBe(200)
  })
})
