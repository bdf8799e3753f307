import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { afterAll, afterEach, beforeAll, describe, expect, expectTypeOf, it } from 'vitest'
import type { z } from 'zod/v3'
import { clientBuild } from '../../shared/client/build.ts'
import { decide } from '../../shared/client/examples/checkout.ts'
import { pushList } from '../../shared/client/examples/push-range.ts'
import {
  type Client,
  ConnectionError,
  createClient,
  type Data,
  type Input,
  ProblemError,
} from '../../shared/client/index.ts'
import { pauseBefore, secondsOf } from '../../shared/client/retries.ts'
import type { operations } from '../../shared/contract/operations.ts'
import { cartRequestExample } from '../../shared/examples/carts.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let baseUrl: string
let client: Client
let staff: Client
beforeAll(async () => {
  service = await openStaffService()
  baseUrl = await service.app.listen({ port: 0, host: '127.0.0.1' })
  client = createClient({ baseUrl, timeoutMs: 20_000 })
  staff = createClient({
    baseUrl: `${baseUrl}/`,
    secretKey: await service.issue('kingcup', ['read', 'range', 'demand']),
    timeoutMs: 20_000,
  })
})
afterAll(() => service.close())

/** A server that answers what it is told, one answer a request. */
const stubs: Server[] = []
afterEach(() => {
  for (const stub of stubs.splice(0)) {
    stub.closeAllConnections()
    stub.close()
  }
})
type Answer = (request: IncomingMessage, response: ServerResponse) => void
async function stub(answers: readonly Answer[]): Promise<{ url: string; seen: IncomingMessage[] }> {
  const seen: IncomingMessage[] = []
  const server = createServer((request, response) => {
    seen.push(request)
    answers[Math.min(seen.length, answers.length) - 1]?.(request, response)
  })
  stubs.push(server)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, seen }
}
const ok: Answer = (_request, response) =>
  response.writeHead(200, { 'content-type': 'application/json' }).end('{"status":"ok"}')
const problem =
  (status: number, code: string, headers: Record<string, string> = {}): Answer =>
  (_request, response) =>
    response
      .writeHead(status, { 'content-type': 'application/problem+json', ...headers })
      .end(JSON.stringify({ type: '/x', title: 'No', status, code, instance: 'request-1' }))
const silence: Answer = () => {}
const quick = { retries: 2, firstPauseMs: 5, longestPauseMs: 2000 }

describe('the client', () => {
  it('asks every operation of a real service', async () => {
    const shop = { shopId: 'kingcup' }
    const sizing = await client.sizeShop({ ...shop, body: sizingRequestExample })
    expect(sizing.data.recommended?.continuousW).toBeGreaterThan(0)
    expect(sizing.requestId).toMatch(/^r/)
    const sku = sizing.data.recommended?.sku ?? ''
    expect((await client.fitUnit({ ...shop, body: { ...sizingRequestExample, sku } })).data.unit.sku).toBe(
      sku,
    )
    expect((await client.checkCart({ ...shop, body: cartRequestExample })).data.ok).toBe(false)
    expect((await client.readSetup(shop)).data?.shop.id).toBe('kingcup')
    expect((await client.listAppliances()).data?.appliances.length).toBeGreaterThan(40)
    expect((await client.readHealth()).data).toEqual({ status: 'ok' })
    expect((await client.readReadiness()).data.status).toBe('ready')
    expect((await client.readContract()).data).toMatchObject({ openapi: '3.1.0' })
    expect((await client.readMetrics()).data).toContain('http_server_request_duration_seconds')

    const range = await staff.readRange(shop)
    expect(range.etag).toMatch(/^"/)
    expect((await staff.readRange({ ...shop, ifNoneMatch: range.etag ?? '' })).notModified).toBe(true)
    expect(String((await staff.readRange({ ...shop, query: { part: 'cables' } })).data)).toMatch(/^.?sku,/)
    expect((await staff.listRangeVersions({ ...shop, query: { limit: '1' } })).data.versions).toHaveLength(1)
    expect((await staff.readCoverage(shop)).notModified).toBe(false)
    expect((await staff.readDemand(shop)).data.from).toBeDefined()
  })

  it('throws a problem as an error with its code and every fault', async () => {
    const error = await client
      .sizeShop({ shopId: 'kingcup', body: { loads: [{ id: '' }, { id: 'a', quantity: 0 }] } })
      .catch((thrown: unknown) => thrown)
    expect(error).toBeInstanceOf(ProblemError)
    if (!(error instanceof ProblemError)) return
    expect([error.code, error.status]).toEqual(['contract-broken', 422])
    expect(error.problem.errors?.map(({ pointer }) => pointer)).toContain('/loads/1/quantity')
    expect(error.requestId).toMatch(/^r/)
  })

  it('puts what it is given into the address in no other place than its own', async () => {
    const { url, seen } = await stub([ok])
    await createClient({ baseUrl: url }).readSetup({ shopId: '../x?y=z#', ifNoneMatch: '"a"' })
    expect(seen[0]?.url).toBe('/v1/shops/..%2Fx%3Fy%3Dz%23/setup')
  })

  it('sends the key as a header and nowhere else, and a request id where it has one', async () => {
    const { url, seen } = await stub([ok])
    await createClient({ baseUrl: url, secretKey: 'tw_secret' }).readRange(
      { shopId: 'a' },
      { requestId: 'order-0001' },
    )
    expect(seen[0]?.headers).toMatchObject({
      authorization: 'Bearer tw_secret',
      'x-request-id': 'order-0001',
    })
    expect(seen[0]?.url).not.toContain('secret')
  })
})

describe('tries', () => {
  it('come after the time that the service names, for writes too: a refused call has done nothing', async () => {
    const { url, seen } = await stub([
      problem(429, 'rate-limited', { 'retry-after': '1' }),
      problem(503, 'overloaded'),
      ok,
    ])
    const started = performance.now()
    await createClient({ baseUrl: url, retry: quick }).writeRange({ shopId: 'a', ifMatch: '*', body: [] })
    expect(seen).toHaveLength(3)
    expect(performance.now() - started).toBeGreaterThanOrEqual(1000)
  })

  it('end after as many as were asked for, with the last problem', async () => {
    const { url, seen } = await stub([problem(503, 'overloaded')])
    const error = await createClient({ baseUrl: url, retry: quick })
      .readHealth()
      .catch((thrown: unknown) => thrown)
    expect(error).toMatchObject({ name: 'ProblemError', code: 'overloaded' })
    expect(seen).toHaveLength(3)
  })

  it('are not made for what will not get better, nor where the wait is too long', async () => {
    for (const answer of [
      problem(422, 'contract-broken'),
      problem(429, 'rate-limited', { 'retry-after': '60' }),
    ]) {
      const { url, seen } = await stub([answer])
      await expect(createClient({ baseUrl: url, retry: quick }).readHealth()).rejects.toBeInstanceOf(
        ProblemError,
      )
      expect(seen).toHaveLength(1)
    }
  })

  it('are made for a read that broke off, and not for a write that may have arrived', async () => {
    const drop: Answer = (request) => request.socket.destroy()
    const read = await stub([drop, ok])
    await createClient({ baseUrl: read.url, retry: quick }).readHealth()
    expect(read.seen).toHaveLength(2)
    const write = await stub([drop, ok])
    const writing = createClient({ baseUrl: write.url, retry: quick }).writeRange({ shopId: 'a', body: [] })
    await expect(writing).rejects.toMatchObject({ code: 'unreachable' })
    expect(write.seen).toHaveLength(1)
  })

  it('are spread, never before the time named, never beyond the longest pause and what was asked', () => {
    const pauses = Array.from({ length: 200 }, () => pauseBefore(quick, 1, 1) ?? 0)
    expect(Math.min(...pauses)).toBeGreaterThanOrEqual(1000)
    expect(Math.max(...pauses)).toBeLessThanOrEqual(1000 + quick.firstPauseMs)
    expect(new Set(pauses).size).toBeGreaterThan(100)
    expect(pauseBefore(quick, 3, undefined)).toBeUndefined()
    expect(pauseBefore(quick, 1, 3)).toBeUndefined()
  })

  it.each([
    ['120', 120],
    ['Thu, 01 Jan 1970 00:00:10 GMT', 5],
    ['Thu, 01 Jan 1970 00:00:01 GMT', 0],
    ['soon', undefined],
    [undefined, undefined],
  ])('read Retry-After %j as %j s', (header, seconds) => {
    expect(secondsOf(header, 5000)).toBe(seconds)
  })
})

describe('a service that', () => {
  it('does not answer is given up after the time-out', async () => {
    const { url } = await stub([silence])
    const asked = createClient({ baseUrl: url, timeoutMs: 50, retry: { retries: 0 } }).readHealth()
    await expect(asked).rejects.toMatchObject({ name: 'ConnectionError', code: 'timed-out' })
  })

  it('is no longer wanted is let go, in a call and in a pause', async () => {
    const { url } = await stub([silence])
    await expect(
      createClient({ baseUrl: url }).readHealth({}, { signal: AbortSignal.timeout(50) }),
    ).rejects.toMatchObject({ code: 'aborted' })
    const busy = await stub([problem(503, 'overloaded', { 'retry-after': '5' })])
    const started = performance.now()
    await expect(
      createClient({ baseUrl: busy.url }).readHealth({}, { signal: AbortSignal.timeout(200) }),
    ).rejects.toMatchObject({ code: 'aborted' })
    expect(performance.now() - started).toBeLessThan(4000)
  })

  it('is not there, or is another, is told from one that has a problem', async () => {
    const retry = { retries: 0 }
    await expect(createClient({ baseUrl: 'http://127.0.0.1:1', retry }).readHealth()).rejects.toMatchObject({
      code: 'unreachable',
    })
    for (const answer of [
      (_request, response) => response.writeHead(502, { 'content-type': 'text/html' }).end('<h1>Bad gateway'),
      (_request, response) => response.writeHead(200, { 'content-type': 'application/json' }).end('{'),
    ] as Answer[]) {
      const { url } = await stub([answer])
      const asked = createClient({ baseUrl: url, retry }).readHealth()
      await expect(asked).rejects.toBeInstanceOf(ConnectionError)
      await expect(asked).rejects.toMatchObject({ code: 'unexpected-reply' })
    }
  })
})

describe('the checkout', () => {
  it('stops a cart with a cable too thin, and says why', async () => {
    const decision = await decide(client, 'kingcup', ['KC-ST12-1480', 'KC-CAB-16-2'])
    expect(decision.proceed).toBe(false)
    expect(JSON.stringify(decision)).toMatch(/cable|fuse/i)
  })

  it('goes on without advice when the service is away', async () => {
    const away = createClient({ baseUrl: 'http://127.0.0.1:1', retry: { firstPauseMs: 1 } })
    expect(await decide(away, 'kingcup', ['X'])).toEqual({
      proceed: true,
      notes: ['This cart was not checked.'],
    })
  })
})

describe('the script that pushes a range', () => {
  const cables = async () =>
    String((await staff.readRange({ shopId: 'kingcup', query: { part: 'cables' } })).data)

  it('puts a list in force that the next shopper is answered from', async () => {
    const csv = (await cables()).replace(/\r?\n$/, '')
    const [header = '', first = ''] = csv.split(/\r?\n/)
    const added = `${csv}\n${first.replace(/^[^,;]+/, 'X-NEW-CABLE')}\n`
    expect(header).toContain('sku')
    const answer = await pushList(staff, { shopId: 'kingcup', part: 'cables', csv: added })
    expect(answer.written).toBe(true)
    expect(answer.changes.added.map(({ sku }) => sku)).toEqual(['X-NEW-CABLE'])
    expect(await cables()).toContain('X-NEW-CABLE')
  })

  it('starts again where somebody was quicker, and loses nobody’s change', async () => {
    const readRange: Client['readRange'] = async (input, options) => {
      const reply = await staff.readRange(input, options)
      if (overtaken) return reply
      overtaken = true
      const csv = (await cables()).replace('X-NEW-CABLE', 'X-OTHER-CABLE')
      await staff.writeRange({ shopId: 'kingcup', query: { part: 'cables' }, ifMatch: '*', body: { csv } })
      return reply
    }
    let overtaken = false
    const fuses = String((await staff.readRange({ shopId: 'kingcup', query: { part: 'fuses' } })).data)
    const csv = fuses.replace(/\n([^,;\n]+)/, '\nX-FUSE')
    const answer = await pushList({ ...staff, readRange }, { shopId: 'kingcup', part: 'fuses', csv })
    expect(answer.written).toBe(true)
    expect(await cables()).toContain('X-OTHER-CABLE')
  })

  it('names each fault by line and column, and leaves the range as it was', async () => {
    const before = await staff.readRange({ shopId: 'kingcup' })
    const csv = 'sku,name,price,inStock,areaMm2,lengthM\nA,Cable,x,yes,16,2\nB,Cable,1,yes,16,-1\n'
    const error = await pushList(staff, { shopId: 'kingcup', part: 'cables', csv }).catch(
      (thrown: unknown) => thrown,
    )
    expect(error).toBeInstanceOf(ProblemError)
    const lines = (error as ProblemError).problem.errors?.map(({ line }) => line)
    expect(lines).toEqual(expect.arrayContaining([2, 3]))
    expect((await staff.readRange({ shopId: 'kingcup' })).etag).toBe(before.etag)
  })
})

describe('the built client', () => {
  it('holds neither zod nor the schemas, and needs undici alone', async () => {
    const root = fileURLToPath(new URL('../..', import.meta.url))
    const { metafile, outputFiles } = await build({ ...clientBuild(root), write: false, metafile: true })
    const inputs = Object.keys(metafile?.inputs ?? {})
    expect(inputs.filter((path) => !/^(shared\/client|openapi)\//.test(path))).toEqual([])
    const outside = Object.values(metafile?.outputs ?? {}).flatMap(({ imports }) => imports)
    const names = outside.map(({ path }) => path).filter((path) => !path.startsWith('node:'))
    expect(new Set(names)).toEqual(new Set(['undici']))
    const code = outputFiles?.find(({ path }) => path.endsWith('.js'))?.text ?? ''
    expect(code.length).toBeLessThan(20_000)
  })
})

describe('the generated types', () => {
  type Operations = typeof operations
  type Loose<T> = T extends readonly (infer Part)[]
    ? readonly Loose<Part>[]
    : T extends object
      ? { readonly [Key in keyof T]: Loose<T[Key]> }
      : T

  it('take what the schemas take and give what they give', () => {
    expectTypeOf<z.input<Operations['sizeShop']['body']['schema']>>().toExtend<Input<'sizeShop'>['body']>()
    expectTypeOf<z.input<Operations['checkCart']['body']['schema']>>().toExtend<Input<'checkCart'>['body']>()
    expectTypeOf<Loose<z.output<Operations['sizeShop']['reply']['schema']>>>().toExtend<Data<'sizeShop'>>()
    expectTypeOf<Loose<z.output<Operations['checkCart']['reply']['schema']>>>().toExtend<Data<'checkCart'>>()
    expectTypeOf<Data<'sizeShop'>['outcome']>().toEqualTypeOf<
      'fits' | 'fits-with-care' | 'none-fits' | 'not-advised'
    >()
    expectTypeOf<Input<'sizeShop'>['body']>().not.toBeAny()
  })
})
