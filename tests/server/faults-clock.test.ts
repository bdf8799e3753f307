import { setTimeout as pause } from 'node:timers/promises'
import { Agent, request } from 'undici'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

const HOUR_MS = 3_600_000

let service: StaffService | undefined
/** Only the clock on the wall: timers and the clock for elapsed time go on as ever. */
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'] })
  vi.setSystemTime(Date.UTC(2026, 0, 15, 12))
})
afterEach(async () => {
  vi.useRealTimers()
  await service?.close()
  service = undefined
})
const jump = (hours: number) => vi.setSystemTime(Date.now() + hours * HOUR_MS)

describe.each([
  ['forward', 1],
  ['back', -1],
] as const)('a clock that jumps an hour %s', (_, hours) => {
  it('gives nobody a new quota and takes nobody’s away', async () => {
    service = await openStaffService(undefined, { addressQuota: 5 })
    const { app } = service
    const ask = async (remoteAddress: string) =>
      (await app.inject({ url: '/v1/shops/kingcup/setup', remoteAddress })).statusCode
    for (let call = 0; call < 5; call += 1) expect(await ask('192.0.2.1')).toBe(200)
    for (let call = 0; call < 3; call += 1) expect(await ask('192.0.2.2')).toBe(200)
    jump(hours)
    expect(await ask('192.0.2.1')).toBe(429)
    expect([await ask('192.0.2.2'), await ask('192.0.2.2')]).toEqual([200, 200])
    expect(await ask('192.0.2.3')).toBe(200)
  })

  it('lets keys in as their dates say, and no others', async () => {
    service = await openStaffService()
    const { app, issue } = service
    const inHours = (count: number) => new Date(Date.now() + count * HOUR_MS).toISOString()
    const keys = {
      unlimited: await issue('kingcup', ['read']),
      twoHours: await issue('kingcup', ['read'], { expiresAt: inHours(2) }),
      expired: await issue('kingcup', ['read'], { expiresAt: inHours(-2) }),
      revoked: await issue('kingcup', ['read'], { revokedAt: inHours(0.5) }),
    }
    jump(hours)
    const statuses = await Promise.all(
      Object.values(keys).map(async (secret) => {
        const headers = { authorization: `Bearer ${secret}` }
        return (await app.inject({ url: '/v1/shops/kingcup/range', headers })).statusCode
      }),
    )
    expect(statuses).toEqual([200, 200, 401, 401])
  })

  it('does not make a store that has just been lost look lost for an hour', async () => {
    service = await openStaffService()
    const { app, issue, store, live } = service
    const secret = await issue('kingcup', ['read'])
    await store.close()
    await live.refresh()
    expect(live.state().available).toBe(false)
    jump(hours)
    const headers = { authorization: `Bearer ${secret}` }
    expect((await app.inject({ url: '/v1/shops/kingcup/range', headers })).statusCode).toBe(200)
    const { storeAgeS } = (await app.inject('/readyz')).json()
    expect(storeAgeS).toBeGreaterThanOrEqual(0)
    expect(storeAgeS).toBeLessThan(60)
  })

  it('hides no change of a range, and counts what was asked for on', async () => {
    service = await openStaffService()
    const { app, store, live } = service
    jump(hours)
    const stored = await store.version('kingcup')
    if (stored === undefined) throw new Error('no range')
    const text = stored.text.replace('"Kingcup', '"Another')
    expect(await store.writeRange({ ...stored, text, digest: 'another' }, 1)).toMatchObject({ ok: true })
    await live.refresh()
    expect(live.ranges.current('kingcup')?.version).toBe(2)
    const reply = await app.inject({
      method: 'POST',
      url: '/v1/shops/kingcup/sizing',
      payload: sizingRequestExample,
    })
    expect(reply.statusCode).toBe(200)
  })

  it('turns nobody away as if it were overloaded, and still turns away when it is', async () => {
    service = await openStaffService(undefined, { shedAfterMs: 40 })
    const { app } = service
    app.get('/test/busy', () => {
      const until = performance.now() + 4
      while (performance.now() < until);
      return { done: true }
    })
    const url = await app.listen({ port: 0, host: '127.0.0.1' })
    const agent = new Agent({ connections: 100 })
    const ask = async () => {
      const { statusCode, body } = await request(`${url}/test/busy`, { dispatcher: agent })
      await body.dump()
      return statusCode
    }
    expect(await ask()).toBe(200)
    jump(hours)
    expect(await ask()).toBe(200)
    const statuses: number[] = []
    for (let round = 0; round < 4; round += 1) {
      statuses.push(...(await Promise.all(Array.from({ length: 80 }, ask))))
    }
    expect(new Set(statuses)).toEqual(new Set([200, 503]))
    jump(hours)
    await pause(1100)
    expect(await ask()).toBe(200)
    await agent.close()
  })
})
