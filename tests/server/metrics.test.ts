import type { FastifyInstance } from 'fastify'
import { afterEach, describe, expect, it } from 'vitest'
import { DURATION_BOUNDS_S, histogram } from '../../server/plugins/histogram.ts'
import type { Settings } from '../../server/settings.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { demoService } from '../support/service.ts'
import { openStaffService } from '../support/staff-service.ts'

let app: FastifyInstance | undefined
afterEach(async () => {
  await app?.close()
})

async function service(settings: Partial<Settings> = {}): Promise<FastifyInstance> {
  app = await demoService({ settings })
  return app
}

/** The samples of the Prometheus text format, by name with labels; anything else in it fails. */
function samples(text: string): ReadonlyMap<string, number> {
  expect(text.endsWith('\n')).toBe(true)
  const lines = text.trimEnd().split('\n')
  const pairs = lines.flatMap((line) => {
    if (/^# (HELP \w+ .+|TYPE \w+ (counter|gauge|histogram))$/.test(line)) return []
    const [, name = '', value = ''] = /^(\w+(?:\{.*\})?) (\S+)$/.exec(line) ?? []
    expect(name, line).not.toBe('')
    return [[name, Number(value)] as const]
  })
  return new Map(pairs)
}

describe('histogram', () => {
  it('counts each duration in the first bucket that holds it and in all above', () => {
    const durations = histogram()
    for (const seconds of [0.005, 0.0051, 3, 11]) durations.observe(seconds)
    const counts = durations.cumulative()
    expect(counts[0]).toBe(1)
    expect(counts[1]).toBe(2)
    expect(counts[DURATION_BOUNDS_S.indexOf(5)]).toBe(3)
    expect(counts.at(-1)).toBe(4)
    expect(durations.sum()).toBeCloseTo(14.0101)
  })

  // OpenTelemetry semantic conventions, HTTP metrics, http.server.request.duration: advised buckets. From memory.
  it('has the buckets that OpenTelemetry advises', () => {
    expect(DURATION_BOUNDS_S).toEqual([
      0.005, 0.01, 0.025, 0.05, 0.075, 0.1, 0.25, 0.5, 0.75, 1, 2.5, 5, 7.5, 10,
    ])
  })
})

describe('GET /metrics', () => {
  it('counts requests by method, route and status, and answers by outcome', async () => {
    const server = await service()
    for (let call = 0; call < 3; call += 1) {
      await server.inject({ method: 'POST', url: '/v1/shops/kingcup/sizing', payload: sizingRequestExample })
    }
    await server.inject({ method: 'POST', url: '/v1/shops/kingcup/sizing', payload: {} })
    const { body, headers } = await server.inject('/metrics')
    expect(headers['content-type']).toBe('text/plain; version=0.0.4; charset=utf-8')
    const found = samples(body)
    const labels = (status: number) =>
      `{http_request_method="POST",http_route="/v1/shops/:shopId/sizing",http_response_status_code="${status}"}`
    expect(found.get(`http_server_request_duration_seconds_count${labels(200)}`)).toBe(3)
    expect(found.get(`http_server_request_duration_seconds_count${labels(422)}`)).toBe(1)
    expect(
      found.get(`http_server_request_duration_seconds_bucket${labels(200).replace('}', ',le="+Inf"}')}`),
    ).toBe(3)
    expect(
      found.get('tallywatt_outcomes_total{http_route="/v1/shops/:shopId/sizing",outcome="fits-with-care"}'),
    ).toBe(3)
    expect(found.get('http_server_active_requests')).toBe(1)
    expect(found.get('tallywatt_shed_total')).toBe(0)
    expect(found.get('process_resident_memory_bytes')).toBeGreaterThan(1e7)
  })

  it('gets no longer by addresses and methods that callers invent', async () => {
    const server = await service()
    const invent = async (from: number) => {
      for (let call = from; call < from + 300; call += 1) {
        await server.inject(`/made-up/${call}?x=${call}`)
        await server.inject(`/v1/shops/shop-${call}/setup`)
        await server.inject({ method: 'PROPFIND' as 'GET', url: '/healthz' })
        await server.inject({ method: 'LOCK' as 'GET', url: `/a${call}` })
      }
      return samples((await server.inject('/metrics')).body).size
    }
    await server.inject('/metrics')
    expect(await invent(0)).toBe(await invent(300))
  })

  it('tells how the store is', async () => {
    const staff = await openStaffService()
    const found = samples((await staff.app.inject('/metrics')).body)
    await staff.close()
    expect(found.get('tallywatt_store_available')).toBe(1)
    expect(found.get('tallywatt_shops')).toBe(2)
    expect(found.get('tallywatt_unchecked_shops')).toBe(0)
    expect(found.get('tallywatt_faulty_shops')).toBe(0)
  })

  it('is there only for callers on the same machine that came past no proxy', async () => {
    const server = await service()
    const ask = (remoteAddress: string, headers = {}) =>
      server.inject({ url: '/metrics', remoteAddress, headers })
    expect((await ask('127.0.0.1')).statusCode).toBe(200)
    expect((await ask('::1')).statusCode).toBe(200)
    for (const reply of [
      await ask('203.0.113.1'),
      await ask('127.0.0.1', { 'x-forwarded-for': '203.0.113.1' }),
      await ask('127.0.0.1', { forwarded: 'for=203.0.113.1' }),
      await ask('127.0.0.1', { via: '1.1 proxy' }),
    ]) {
      expect([reply.statusCode, reply.json().code]).toEqual([404, 'not-found'])
    }
  })

  it('wants the password where there is one, wherever the caller is', async () => {
    const server = await service({ metricsPassword: 'a long pass:word' })
    const ask = (user: string) =>
      server.inject({
        url: '/metrics',
        remoteAddress: '203.0.113.1',
        headers: { authorization: `Basic ${Buffer.from(user).toString('base64')}` },
      })
    expect((await ask('anybody:a long pass:word')).statusCode).toBe(200)
    expect((await ask('anybody:a long pass')).statusCode).toBe(404)
    expect((await ask('a long pass:word')).statusCode).toBe(404)
    expect((await server.inject('/metrics')).statusCode).toBe(404)
  })
})
