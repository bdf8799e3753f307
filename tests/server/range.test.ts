import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { COLUMNS } from '../../server/range-files/columns.ts'
import { StoreUnavailableError } from '../../server/store/store.ts'
import { readinessSchema } from '../../shared/contract/health.ts'
import { problemSchema } from '../../shared/contract/problem.ts'
import {
  RANGE_BODY_LIMIT_BYTES,
  rangeVersionsSchema,
  rangeWriteAnswerSchema,
} from '../../shared/contract/range-admin.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let editor: string
const RANGE = '/v1/shops/kingcup/range'

beforeAll(async () => {
  service = await openStaffService()
  editor = await service.issue('kingcup', ['read', 'range'], { name: 'Front desk' })
})
afterAll(() => service.close())

interface Call {
  readonly method?: 'GET' | 'PUT' | 'POST' | 'HEAD'
  readonly url?: string
  readonly headers?: Record<string, string>
  readonly body?: unknown
  readonly csv?: string | Buffer
}

async function call({ method = 'GET', url = RANGE, headers = {}, body, csv }: Call = {}) {
  const response = await service.app.inject({
    method,
    url,
    headers: {
      authorization: `Bearer ${editor}`,
      ...(csv === undefined ? {} : { 'content-type': 'text/csv' }),
      ...headers,
    },
    ...(csv !== undefined ? { payload: csv } : body === undefined ? {} : { payload: body as object }),
  })
  if (response.statusCode >= 400) {
    expect(response.headers['content-type']).toBe('application/problem+json; charset=utf-8')
    expect(problemSchema.parse(response.json()).status).toBe(response.statusCode)
  }
  return response
}

async function etag(): Promise<string> {
  return String((await call()).headers.etag)
}

function renamed(name: string) {
  return { ...kingcup, shop: { ...kingcup.shop, name } }
}

async function write(name: string) {
  return call({ method: 'PUT', body: renamed(name), headers: { 'if-match': await etag() } })
}

describe('GET range', () => {
  it('gives the document in force with a strong ETag', async () => {
    const response = await call()
    expect(response.statusCode).toBe(200)
    expect(response.headers.etag).toMatch(/^"\d+-[\w-]{16}"$/)
    expect(response.json()).toMatchObject({ shop: { id: 'kingcup' } })
  })

  it('answers 304 without a body to a caller who holds it, and HEAD like GET', async () => {
    const tag = await etag()
    const response = await call({ headers: { 'if-none-match': `"x", ${tag}` } })
    expect(response.statusCode).toBe(304)
    expect(response.body).toBe('')
    const full = await call()
    for (const header of ['etag', 'cache-control', 'vary']) {
      expect(response.headers[header]).toBe(full.headers[header])
    }
    const head = await call({ method: 'HEAD' })
    expect(head.statusCode).toBe(200)
    expect(head.headers.etag).toBe(tag)
    expect(head.body).toBe('')
  })

  it('gives one list as CSV, and refuses lists and parameters that do not exist', async () => {
    const response = await call({ url: `${RANGE}?part=cables` })
    expect(response.headers['content-type']).toContain('text/csv')
    expect(response.body.split('\r\n')[0]).toBe(`\uFEFF${COLUMNS.cables.map(({ name }) => name).join(',')}`)
    for (const query of ['part=screws', 'parts=cables', 'part=cables&part=fuses']) {
      expect((await call({ url: `${RANGE}?${query}` })).statusCode, query).toBe(400)
    }
  })
})

describe('PUT range', () => {
  it('puts a new version in force for shoppers at once, and says what changed', async () => {
    const before = await call({ url: `${RANGE}/versions` })
    const response = await write('Kingcup renamed')
    expect(response.statusCode).toBe(200)
    const answer = rangeWriteAnswerSchema.parse(response.json())
    expect(answer).toMatchObject({ written: true, dryRun: false, changes: { shop: ['name'], changed: [] } })
    expect(answer.version).toBe(answer.previousVersion + 1)
    expect(response.headers.etag).toBe(await etag())
    const setup = await service.app.inject('/v1/shops/kingcup/setup')
    expect(setup.json()).toMatchObject({
      shop: { name: 'Kingcup renamed' },
      range: { version: answer.version },
    })
    const [latest] = rangeVersionsSchema.parse((await call({ url: `${RANGE}/versions` })).json()).versions
    expect(latest).toMatchObject({
      version: answer.version,
      author: 'Front desk',
      origin: 'written',
      inForce: true,
    })
    expect(rangeVersionsSchema.parse(before.json()).versions[0]?.version).toBe(answer.previousVersion)
  })

  it('needs If-Match: 428 without, 412 with another version or a weak tag, and says who was first', async () => {
    const tag = await etag()
    const without = await call({ method: 'PUT', body: renamed('x') })
    expect([without.statusCode, without.json().code]).toEqual([428, 'precondition-required'])
    for (const wrong of ['"1-gone"', `W/${tag}`, 'nonsense', '']) {
      const response = await call({ method: 'PUT', body: renamed('x'), headers: { 'if-match': wrong } })
      expect([response.statusCode, response.json().code], wrong).toEqual([412, 'precondition-failed'])
      expect(response.headers.etag).toBe(tag)
      expect(response.json().detail).toContain('"Front desk"')
    }
    expect(await etag()).toBe(tag)
  })

  it('tells a writer who comes too late what the other one has changed', async () => {
    const mine = await etag()
    await write('theirs')
    const response = await call({ method: 'PUT', body: renamed('mine'), headers: { 'if-match': mine } })
    expect(response.statusCode).toBe(412)
    expect(response.json().changes).toMatchObject({ shop: ['name'], added: [], removed: [], changed: [] })
    const unknown = await call({ method: 'PUT', body: renamed('mine'), headers: { 'if-match': '"1-gone"' } })
    expect(unknown.json().changes).toBeUndefined()
  })

  it('lets exactly one of 20 writers with one ETag through', async () => {
    const tag = await etag()
    const responses = await Promise.all(
      Array.from({ length: 20 }, (_, index) =>
        call({ method: 'PUT', body: renamed(`writer ${index}`), headers: { 'if-match': tag } }),
      ),
    )
    const codes = responses.map(({ statusCode }) => statusCode).sort()
    expect(codes).toEqual([200, ...Array.from({ length: 19 }, () => 412)])
  })

  it('takes * for whichever version is in force', async () => {
    const response = await call({ method: 'PUT', body: renamed('any'), headers: { 'if-match': '*' } })
    expect(response.json()).toMatchObject({ written: true })
  })

  it('writes no version where nothing differs', async () => {
    const current = (await call()).json()
    const response = await call({ method: 'PUT', body: current, headers: { 'if-match': await etag() } })
    expect(response.json()).toMatchObject({ written: false })
    expect(response.json().version).toBe(response.json().previousVersion)
  })

  it('checks and compares with dryRun, by the same rules, and writes nothing', async () => {
    const tag = await etag()
    const good = await call({ method: 'PUT', url: `${RANGE}?dryRun=true`, body: renamed('only a try') })
    expect(good.json()).toMatchObject({ dryRun: true, written: false, changes: { shop: ['name'] } })
    const bad = await call({
      method: 'PUT',
      url: `${RANGE}?dryRun=true`,
      body: { ...kingcup, inverters: [] },
    })
    expect(bad.statusCode).toBe(422)
    const stale = await call({
      method: 'PUT',
      url: `${RANGE}?dryRun=true`,
      body: renamed('x'),
      headers: { 'if-match': '"1-gone"' },
    })
    expect(stale.statusCode).toBe(412)
    expect(await etag()).toBe(tag)
  })

  it('tells all faults at once, those of the schema and those of physics, with JSON Pointers', async () => {
    const [first, second, third, ...rest] = kingcup.inverters
    const body = {
      ...kingcup,
      inverters: [
        { ...first, price: 12 },
        { ...second, surgeW: 11 },
        { ...third, colour: 'red', waveform: 'square' },
        ...rest,
      ],
      fuses: [...kingcup.fuses, kingcup.fuses[0]],
    }
    const response = await call({ method: 'PUT', body, headers: { 'if-match': await etag() } })
    expect(response.statusCode).toBe(422)
    expect(
      response
        .json()
        .errors.map(({ pointer }: { pointer: string }) => pointer)
        .sort(),
    ).toEqual([
      `/fuses/${kingcup.fuses.length}/sku`,
      '/inverters/0/price',
      '/inverters/1/surgeW',
      '/inverters/2/colour',
      '/inverters/2/waveform',
    ])
  })

  it('refuses properties that are not the caller’s to set, and another shop’s document', async () => {
    const tag = await etag()
    const grab = { ...kingcup, version: 99, shop: { ...kingcup.shop, owner: 'me', scopes: ['range'] } }
    const response = await call({ method: 'PUT', body: grab, headers: { 'if-match': tag } })
    expect(
      response
        .json()
        .errors.map(({ pointer }: { pointer: string }) => pointer)
        .sort(),
    ).toEqual(['/shop/owner', '/shop/scopes', '/version'])
    const other = { ...kingcup, shop: { ...kingcup.shop, id: 'bentcreek' } }
    const foreign = await call({ method: 'PUT', body: other, headers: { 'if-match': tag } })
    expect(foreign.json()).toMatchObject({ status: 422, errors: [{ pointer: '/shop/id' }] })
    expect(service.live.ranges.current('bentcreek')?.version).toBe(1)
    expect(await etag()).toBe(tag)
  })

  it('takes one list as CSV or JSON and leaves the rest as it is', async () => {
    const before = (await call()).json()
    const csv = (await call({ url: `${RANGE}?part=fuses` })).body.replace(/,yes,/, ',no,')
    const response = await call({
      method: 'PUT',
      url: `${RANGE}?part=fuses`,
      csv,
      headers: { 'if-match': await etag() },
    })
    expect(response.json()).toMatchObject({
      written: true,
      changes: { changed: [{ list: 'fuses', fields: [{ field: 'inStock', from: 'true', to: 'false' }] }] },
    })
    const after = (await call()).json()
    expect({ ...after, fuses: [] }).toEqual({ ...before, fuses: [] })
    const back = await call({
      method: 'PUT',
      url: `${RANGE}?part=fuses`,
      body: before.fuses,
      headers: { 'if-match': await etag() },
    })
    expect(back.json()).toMatchObject({ written: true })
    expect((await call()).json()).toEqual(before)
  })

  it('writes nothing for an export that is sent back', async () => {
    for (const part of ['inverters', 'batteries', 'cables', 'fuses', 'connectors']) {
      const csv = (await call({ url: `${RANGE}?part=${part}` })).body
      const response = await call({
        method: 'PUT',
        url: `${RANGE}?part=${part}`,
        csv,
        headers: { 'if-match': await etag() },
      })
      expect(response.json(), part).toMatchObject({ written: false })
    }
  })

  it('tells the faults of a CSV file by line and column', async () => {
    const csv =
      'sku;name;price;inStock;kind;limitA\nX-1;One;1,50;ja;quick-connector;50\nX-1;Two;1;ja;plug;much\n'
    const response = await call({
      method: 'PUT',
      url: `${RANGE}?part=connectors&dryRun=true`,
      csv,
    })
    expect(response.statusCode).toBe(422)
    expect(response.json().errors).toContainEqual(
      expect.objectContaining({ pointer: '/connectors/1/kind', line: 3, column: 5, header: 'kind' }),
    )
    expect(response.json().errors).toContainEqual(
      expect.objectContaining({ pointer: '/connectors/1/limitA', line: 3, column: 6, header: 'limitA' }),
    )
  })

  it('reads CSV in Windows-1252', async () => {
    const csv = Buffer.from(
      'sku;name;price;inStock;kind;limitA\nZ;Z\xfcndung;1,50;ja;quick-connector;50',
      'latin1',
    )
    const response = await call({ method: 'PUT', url: `${RANGE}?part=connectors&dryRun=true`, csv })
    // The demo inverters refer to connectors that this file leaves out: those faults are of another list.
    expect(response.json().errors.every(({ pointer }: { pointer: string }) => /includes/.test(pointer))).toBe(
      true,
    )
    const whole = await call({
      method: 'PUT',
      url: `${RANGE}?part=cables&dryRun=true`,
      csv: Buffer.concat([
        Buffer.from((await call({ url: `${RANGE}?part=cables` })).body.replace('\uFEFF', ''), 'latin1'),
        Buffer.from('Z-1,Z\xfcndkabel 5 \x80,1.50,yes,,,35,,1,\r\n', 'latin1'),
      ]),
    })
    expect(whole.json()).toMatchObject({ changes: { added: [{ sku: 'Z-1', name: 'Zündkabel 5 €' }] } })
  })

  it('wants to know which list a CSV file holds, and takes no other kind of body', async () => {
    expect((await call({ method: 'PUT', csv: 'sku', headers: { 'if-match': '*' } })).statusCode).toBe(400)
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data; boundary=x',
    ]) {
      const response = await call({
        method: 'PUT',
        body: 'x=1',
        headers: { 'content-type': type, 'if-match': '*' },
      })
      expect([response.statusCode, type]).toEqual([415, type])
    }
    const elsewhere = await call({ method: 'POST', url: '/v1/shops/kingcup/sizing', csv: 'a,b' })
    expect(elsewhere.statusCode).toBe(415)
  })

  it('takes bodies up to 5 MiB here and 32 KiB elsewhere', async () => {
    const document = JSON.stringify(renamed('x'))
    const inside = document + ' '.repeat(RANGE_BODY_LIMIT_BYTES - Buffer.byteLength(document))
    const json = { 'content-type': 'application/json' }
    const dry = { method: 'PUT', url: `${RANGE}?dryRun=true`, headers: json } as const
    expect((await call({ ...dry, body: inside })).statusCode).toBe(200)
    expect((await call({ ...dry, body: `${inside} ` })).statusCode).toBe(413)
    const sizing = JSON.stringify(sizingRequestExample).padEnd(32 * 1024 + 1, ' ')
    const elsewhere = await call({
      method: 'POST',
      url: '/v1/shops/kingcup/sizing',
      body: sizing,
      headers: json,
    })
    expect(elsewhere.statusCode).toBe(413)
  })

  it.each(['{', '{"__proto__":{"x":1}}', '{"constructor":{"prototype":{}}}', ''])(
    'refuses the body %s as unreadable',
    async (body) => {
      const response = await call({
        method: 'PUT',
        body,
        headers: { 'content-type': 'application/json', 'if-match': '*' },
      })
      expect(response.statusCode).toBe(400)
    },
  )
})

describe('versions', () => {
  it('come in pages, newest first', async () => {
    await write('page one')
    await write('page two')
    const first = rangeVersionsSchema.parse((await call({ url: `${RANGE}/versions?limit=2` })).json())
    expect(first.versions).toHaveLength(2)
    const next = rangeVersionsSchema.parse(
      (await call({ url: `${RANGE}/versions?limit=200&before=${first.nextBefore}` })).json(),
    )
    const numbers = [...first.versions, ...next.versions].map(({ version }) => version)
    expect(numbers).toEqual(Array.from({ length: numbers.length }, (_, index) => numbers.length - index))
    expect(next.nextBefore).toBeNull()
    for (const query of ['limit=0', 'limit=201', 'limit=x', 'before=0', 'before=-1']) {
      expect((await call({ url: `${RANGE}/versions?${query}` })).statusCode, query).toBe(400)
    }
  })

  it('are read one by one as they were', async () => {
    const response = await call({ url: `${RANGE}/versions/1` })
    expect(response.json()).toMatchObject({ shop: { name: kingcup.shop.name } })
    for (const version of ['0', '999999', '1e3', '-1', 'x', '1.0', '%20', '99999999999999999999']) {
      expect((await call({ url: `${RANGE}/versions/${version}` })).statusCode, version).toBe(404)
    }
  })

  it('are restored byte for byte as a new version, with who and from which', async () => {
    const original = (await call({ url: `${RANGE}/versions/1` })).body
    await write('to be undone')
    const url = `${RANGE}/versions/1/restore`
    expect((await call({ method: 'POST', url })).statusCode).toBe(428)
    expect((await call({ method: 'POST', url, headers: { 'if-match': '"1-x"' } })).statusCode).toBe(412)
    const response = await call({ method: 'POST', url, headers: { 'if-match': await etag() } })
    expect(response.json()).toMatchObject({ written: true })
    expect((await call()).body).toBe(original)
    const { versions } = rangeVersionsSchema.parse((await call({ url: `${RANGE}/versions?limit=1` })).json())
    expect(versions).toMatchObject([
      { origin: 'restored', restoredFrom: 1, author: 'Front desk', inForce: true },
    ])
    const missing = await call({
      method: 'POST',
      url: `${RANGE}/versions/999/restore`,
      headers: { 'if-match': '*' },
    })
    expect(missing.json().code).toBe('unknown-version')
  })
})

describe('a store that does not answer', () => {
  let restore: () => void

  beforeEach(() => {
    const { store } = service
    const original = { ...store }
    restore = () => Object.assign(store, original)
    const fail = () => Promise.reject(new StoreUnavailableError(new Error('connect ECONNREFUSED 10.1.2.3')))
    Object.assign(store, { version: fail, heads: fail, revisions: fail, writeRange: fail, versions: fail })
  })

  it('leaves sizing and reading as they are, refuses writes with 503 and Retry-After, and is degraded', async () => {
    await service.live.refresh()
    const tag = await etag()
    const sizing = await service.app.inject({
      method: 'POST',
      url: '/v1/shops/kingcup/sizing',
      payload: sizingRequestExample,
    })
    expect(sizing.statusCode).toBe(200)
    const response = await call({ method: 'PUT', body: renamed('x'), headers: { 'if-match': tag } })
    expect([response.statusCode, response.json().code]).toEqual([503, 'store-unavailable'])
    expect(response.headers['retry-after']).toBe('2')
    expect(response.body).not.toMatch(/ECONNREFUSED|10\.1\.2\.3|stack/)
    const readiness = await service.app.inject('/readyz')
    expect(readiness.statusCode).toBe(200)
    expect(readinessSchema.parse(readiness.json())).toMatchObject({
      status: 'degraded',
      store: 'unavailable',
    })
    restore()
    await service.live.refresh()
    expect((await service.app.inject('/readyz')).json()).toMatchObject({
      status: 'ready',
      store: 'available',
    })
    expect((await write('healed')).statusCode).toBe(200)
  })
})
