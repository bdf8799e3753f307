import { gzipSync } from 'node:zlib'
import * as fc from 'fast-check'
import type { RangeDocument } from '../../core/range/range-document.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { sheetOf } from '../../server/range-files/write-csv-list.ts'
import { PART_LISTS, type PartList } from '../../shared/contract/range-admin.ts'
import { brokenFiles, fileOf, fileStyle, meddledSheets } from './csv-files.ts'
import { AWKWARD_TEXTS, hostileText, wellFormed } from './hostile.ts'
import { nearValidTexts } from './near-valid.ts'
import type { DescribedOperation } from './operations.ts'
import { madeAnswerable } from './plans.ts'
import { madeSound, rangeDocuments } from './ranges.ts'
import type { Schema, Schemas } from './schema.ts'
import { BYSTANDERS, FUZZED_SHOP, type FuzzKeys } from './service.ts'
import { type Known, validValues } from './valid.ts'

export type Grade = 'valid' | 'near-valid' | 'broken'

/** A request that can be written down: keys stand in it by name. */
export interface FuzzRequest {
  readonly grade: Grade
  readonly method: string
  readonly url: string
  readonly key: keyof FuzzKeys | 'none' | 'made-up' | 'basic'
  readonly headers: Readonly<Record<string, string>>
  readonly payload?: string | Buffer
  /** JSON Pointer of the one place in the body that was broken. */
  readonly brokenAt?: string
}

/**
 * Requests to one operation.
 *
 * @param schemas - The document
 * @param operation - One of its operations
 * @param grade - How far they keep the contract
 * @returns Requests of that grade
 */
export function requestsTo(
  schemas: Schemas,
  operation: DescribedOperation,
  grade: Grade,
): fc.Arbitrary<FuzzRequest> {
  const valid = validRequests(schemas, operation)
  if (grade === 'valid') return valid
  return grade === 'near-valid' ? nearValid(schemas, operation, valid) : broken(operation, valid)
}

const SKUS = PART_LISTS.flatMap((list) => kingcup[list].map(({ sku }) => sku))
const LOAD_IDS = ['a', 'b', 'c', 'd', 'kettle', 'Fön', '1', '__proto__', 'constructor']

/** What the shops know, so that requests reach further than the first look-up. */
const KNOWN: Known = {
  appliance: BUILT_IN_APPLIANCES.map(({ id }) => id),
  sku: SKUS,
  id: LOAD_IDS,
  takeTurns: LOAD_IDS,
  locale: ['en', 'de-CH', 'fr', 'es-MX', 'xx', 'en-GB-oxendict'],
  text: [
    '230V~ 50Hz 1200W',
    '220-240V 50/60Hz 1.8A',
    '120 V 12 A cos φ 0,8',
    'INPUT: 100-240V~ 1.5A OUTPUT: 19V 4.7A',
  ],
  shopId: [...BYSTANDERS, FUZZED_SHOP],
  version: ['1', '2', '3'],
  from: ['2026-01-01', '2026-01-31', '2025-12-31', '2026-02-30'],
  to: ['2026-01-31', '2026-02-28', '2026-03-01', '9999-99-99'],
}

/** What helps with one operation: those that ask about one inverter are to meet one. */
function knownFor({ isKeyed, path }: DescribedOperation): Known {
  if (isKeyed) return { ...KNOWN, shopId: [FUZZED_SHOP] }
  if (!/\/(fit|runtime)$/.test(path)) return KNOWN
  const sku = kingcup.inverters.map((unit) => unit.sku)
  return { ...KNOWN, sku, shopId: ['kingcup', 'kingcup', ...BYSTANDERS, FUZZED_SHOP] }
}

function validRequests(schemas: Schemas, operation: DescribedOperation): fc.Arbitrary<FuzzRequest> {
  const known = knownFor(operation)
  const parts: Record<string, fc.Arbitrary<unknown>> = {}
  const needed: string[] = []
  for (const parameter of operation.parameters) {
    parts[partOf(parameter)] = validValues(
      schemas,
      {
        type: 'object',
        properties: { [parameter.name]: headerSchema(parameter) },
        required: [parameter.name],
      },
      parameter.in === 'header' ? TAGS : known,
    ).map((made) => (made as Readonly<Record<string, unknown>>)[parameter.name])
    if (parameter.in === 'path' || parameter.name === 'If-Match') needed.push(partOf(parameter))
  }
  const drawn = fc.record(parts, { requiredKeys: needed, noNullPrototype: true })
  const seed = bodiesOf(schemas, operation, known)
  return fc.tuple(drawn, seed).map(([values, body]) => {
    const query = { ...queryOf(values), ...body?.query }
    return {
      grade: 'valid',
      method: operation.method,
      url: urlOf(operation, values, query),
      key: operation.isKeyed ? 'whole' : 'none',
      headers: { ...headersOf(values), ...(body === undefined ? {} : { 'content-type': body.type }) },
      ...(body === undefined ? {} : { payload: body.payload }),
    }
  })
}

const TAGS: Known = { 'If-Match': ['*'], 'If-None-Match': ['*', '"1-x"', 'W/"1-x", "2"', ''] }

/** Headers are texts of one line. */
function headerSchema({ in: where, schema }: { readonly in: string; readonly schema: Schema }): Schema {
  return where === 'header' ? { ...schema, pattern: '^[!-~]{1,40}$' } : schema
}

function partOf({ in: where, name }: { readonly in: string; readonly name: string }): string {
  return `${where} ${name}`
}

function namedIn(values: object, where: string): Readonly<Record<string, string>> {
  const found = Object.entries(values).filter(([part]) => part.startsWith(`${where} `))
  return Object.fromEntries(found.map(([part, value]) => [part.slice(where.length + 1), String(value)]))
}

const queryOf = (values: object) => namedIn(values, 'query')
const headersOf = (values: object) =>
  Object.fromEntries(
    Object.entries(namedIn(values, 'header')).map(([name, value]) => [name.toLowerCase(), value]),
  )

function urlOf(
  operation: DescribedOperation,
  values: object,
  query: Readonly<Record<string, string | undefined>>,
): string {
  const path = namedIn(values, 'path')
  const filled = operation.path.replaceAll(/\{(\w+)\}/g, (_, name: string) =>
    encodeURIComponent(wellFormed(path[name] ?? '')),
  )
  const pairs = Object.entries(query).filter(([, value]) => value !== undefined)
  const search = new URLSearchParams(pairs as [string, string][]).toString()
  return search === '' ? filled : `${filled}?${search}`
}

interface Body {
  readonly type: string
  readonly payload: string | Buffer
  /** Query parameters that go with it. */
  readonly query?: Readonly<Record<string, string | undefined>>
}

function bodiesOf(
  schemas: Schemas,
  operation: DescribedOperation,
  known: Known,
): fc.Arbitrary<Body | undefined> {
  const schema = operation.bodies['application/json']
  if (schema === undefined) return fc.constant(undefined)
  if ('text/csv' in operation.bodies) return rangeBodies(schemas)
  return fc.tuple(validValues(schemas, schema, known), isSound).map(([value, sound]) => ({
    type: 'application/json',
    payload: JSON.stringify(sound ? madeAnswerable(value) : value),
  }))
}

const isSound = fc.integer({ min: 0, max: 9 }).map((n) => n > 1)
const part = fc.constantFrom(...PART_LISTS)

/** Whole documents, lists as JSON and lists as CSV. */
function rangeBodies(schemas: Schemas): fc.Arbitrary<Body> {
  const range = fc
    .tuple(rangeDocuments(schemas), isSound)
    .map(([document, sound]) => (sound ? madeSound(document, FUZZED_SHOP) : document))
  const whole = range.map((document) => ({
    type: 'application/json',
    payload: JSON.stringify(document),
    query: { part: undefined },
  }))
  const list = fc.tuple(range, part).map(([document, name]) => ({
    type: 'application/json',
    payload: JSON.stringify(document[name]),
    query: { part: name },
  }))
  const csv = fc.tuple(range, part, fileStyle).map(([document, name, style]) => ({
    type: 'text/csv',
    payload: fileOf(sheetOf(document, name), style),
    query: { part: name },
  }))
  return fc.oneof(whole, list, csv)
}

function nearValid(
  schemas: Schemas,
  operation: DescribedOperation,
  valid: fc.Arbitrary<FuzzRequest>,
): fc.Arbitrary<FuzzRequest> {
  const ways: fc.Arbitrary<FuzzRequest>[] = []
  const schema = operation.bodies['application/json']
  const isRange = 'text/csv' in operation.bodies
  if (schema !== undefined) {
    const values = isRange
      ? rangeDocuments(schemas).map((document) => madeSound(document, FUZZED_SHOP))
      : validValues(schemas, schema, knownFor(operation)).map(madeAnswerable)
    const bodies = nearValidTexts(schemas, schema, values)
    const way = fc.tuple(valid, bodies).map(([request, { text, at }]) => ({
      ...request,
      url: isRange ? withoutPart(request.url) : request.url,
      headers: { ...request.headers, 'content-type': 'application/json' },
      payload: text,
      brokenAt: at,
    }))
    ways.push(way, way, way)
  }
  if (isRange) ways.push(meddledCsv(schemas, valid))
  const { isKeyed } = operation
  ways.push(
    fc.tuple(valid, awkwardPath).map(([request, text]) => withPathPart(request, text)),
    fc.tuple(valid, awkwardQuery).map(([request, query]) => ({
      ...request,
      url: `${request.url}${request.url.includes('?') ? '&' : '?'}${query}`,
    })),
    fc
      .tuple(valid, fc.constantFrom('none', 'made-up', 'basic', 'reading', 'foreign', 'whole') as KeyNames)
      .map(([request, key]) => ({ ...request, key: isKeyed || key !== 'whole' ? key : 'none' })),
    fc.tuple(valid, awkwardHeaders).map(([request, headers]) => ({
      ...request,
      headers: { ...request.headers, ...headers },
    })),
  )
  return fc.oneof(...ways).map((request) => ({ ...request, grade: 'near-valid' }))
}

type KeyNames = fc.Arbitrary<FuzzRequest['key']>

function withoutPart(url: string): string {
  return url.replace(/([?&])part=\w+&?/, '$1').replace(/[?&]$/, '')
}

function meddledCsv(schemas: Schemas, valid: fc.Arbitrary<FuzzRequest>): fc.Arbitrary<FuzzRequest> {
  const sheets = (name: PartList) =>
    rangeDocuments(schemas).map((document: RangeDocument) => sheetOf(madeSound(document, FUZZED_SHOP), name))
  const drawn = part.chain((name) => fc.tuple(fc.constant(name), meddledSheets(sheets(name)), fileStyle))
  return fc.tuple(valid, drawn).map(([request, [name, sheet, style]]) => ({
    ...request,
    url: withPart(request.url, name),
    headers: { ...request.headers, 'content-type': 'text/csv' },
    payload: fileOf(sheet, style),
  }))
}

function withPart(url: string, name: string): string {
  const bare = withoutPart(url)
  return `${bare}${bare.includes('?') ? '&' : '?'}part=${name}`
}

const awkwardPath = fc.oneof(
  hostileText.map((text) => encodeURIComponent(wellFormed(text.slice(0, 400)))),
  fc.constantFrom(
    '',
    '.',
    '..',
    '%',
    '%zz',
    '%2e%2e',
    '%00',
    '%ff',
    '%2F',
    '*',
    ':shopId',
    '{shopId}',
    ';x',
    '0',
    '1e9',
  ),
)

/** A request with one part of its path in place of another. */
function withPathPart(request: FuzzRequest, text: string): FuzzRequest {
  const [path = '', ...query] = request.url.split('?')
  const parts = path.split('/')
  const at = parts.length > 3 ? 3 : parts.length - 1
  const changed = parts.map((old, index) => (index === at ? text : old)).join('/')
  return { ...request, url: [changed.startsWith('/') ? changed : `/${changed}`, ...query].join('?') }
}

const awkwardQuery = fc.oneof(
  fc
    .tuple(
      fc.constantFrom(
        'locale',
        'part',
        'dryRun',
        'limit',
        'before',
        'stock',
        'from',
        'to',
        'newSizes',
        'x',
        '__proto__',
      ),
      hostileText,
    )
    .map(([name, text]) => `${name}=${encodeURIComponent(wellFormed(text.slice(0, 400)))}`),
  fc.constantFrom(
    'locale=en&locale=de',
    'part[]=cables',
    'key=1',
    '%',
    '=&=&',
    'limit=201',
    'from=2026-13-01',
    '&'.repeat(900),
  ),
)

/** Header lines as a parser lets them through, with something odd in them. */
const awkwardHeaders: fc.Arbitrary<Readonly<Record<string, string>>> = fc.oneof(
  fc
    .tuple(
      fc.constantFrom(
        ...[
          'accept',
          'accept-language',
          'if-match',
          'if-none-match',
          'x-request-id',
          'traceparent',
          'origin',
        ],
        ...[
          'x-forwarded-for',
          'x-forwarded-proto',
          'cookie',
          'user-agent',
          'referer',
          'content-type',
          'expect',
          'range',
        ],
      ),
      hostileText,
    )
    .map(([name, text]) => ({ [name]: text.replaceAll(/[^\t\x20-\x7e\u0080-\u00ff]/g, '?').slice(0, 4000) })),
  fc.constantFrom<Readonly<Record<string, string>>>(
    { origin: 'null' },
    { origin: 'https://kingcup.example', 'access-control-request-method': 'POST' },
    { 'x-http-method-override': 'DELETE' },
    { 'if-none-match': `"a",${' '.repeat(4000)}"b"` },
    { accept: 'text/csv;q=0.1, application/json;q=NaN' },
    { 'content-type': 'application/json; charset=utf-8; charset=utf-16' },
    { 'content-type': 'Application/JSON' },
    { 'content-type': 'text/csv; charset=utf-7' },
    { authorization: `Bearer ${'x'.repeat(5000)}` },
    { authorization: `Bearer${' '.repeat(5000)}` },
  ),
)

function broken(operation: DescribedOperation, valid: fc.Arbitrary<FuzzRequest>): fc.Arbitrary<FuzzRequest> {
  const text = fc.tuple(valid, fc.nat(), hostileText)
  const ways: fc.Arbitrary<FuzzRequest>[] = [
    fc.tuple(valid, fc.constantFrom(...METHODS)).map(([request, method]) => ({ ...request, method })),
    fc
      .tuple(valid, fc.constantFrom(...MEDIA_TYPES), fc.uint8Array({ maxLength: 200 }))
      .map(([request, type, bytes]) => ({
        ...request,
        headers: { ...request.headers, 'content-type': type },
        payload: request.payload ?? Buffer.from(bytes),
      })),
    fc
      .tuple(valid, fc.uint8Array({ maxLength: 400 }))
      .map(([request, bytes]) => json(request, Buffer.from(bytes))),
  ]
  if (operation.bodies['application/json'] !== undefined) {
    ways.push(
      text.map(([request, cut]) =>
        json(request, textOf(request).slice(0, cut % (textOf(request).length + 1))),
      ),
      text.map(([request, at, piece]) => json(request, splice(textOf(request), at, piece))),
      text.map(([request, at]) => json(request, splice(textOf(request), at, BITS[at % BITS.length] ?? ''))),
      text.map(([request]) => json(request, textOf(request).replace(/"(\w+)":/, '"$1":0,"$1":'))),
      text.map(([request, at]) => json(request, deep(textOf(request), 15 + (at % 12)))),
      text.map(([request, depth]) => json(request, '[{"a":'.repeat(depth % 2500))),
      text.map(([request]) => json(request, textOf(request).padEnd(33_000, ' '))),
      text.map(([request]) => ({
        ...request,
        headers: { ...request.headers, 'content-encoding': 'gzip' },
        payload: gzipSync(Buffer.from(textOf(request))),
      })),
      text.map(([request, , piece]) => json(request, JSON.stringify(piece))),
      text.map(([request]) => json(request, '')),
    )
  }
  if ('text/csv' in operation.bodies) {
    const files = valid.map(({ payload = '' }) => Buffer.from(payload))
    const way = fc.tuple(valid, brokenFiles(files), part).map(([request, file, name]) => ({
      ...request,
      url: withPart(request.url, name),
      headers: { ...request.headers, 'content-type': 'text/csv' },
      payload: file,
    }))
    ways.push(way, way)
  }
  return fc.oneof(...ways).map((request) => ({ ...request, grade: 'broken' }))
}

const METHODS = ['HEAD', 'OPTIONS', 'DELETE', 'PATCH', 'TRACE', 'PROPFIND', 'GET', 'POST', 'PUT'] as const
const MEDIA_TYPES = [
  ...['text/plain', 'text/csv', 'application/xml', 'application/json; charset=utf-16', 'application/json5'],
  ...[
    'multipart/form-data; boundary=x',
    'application/x-www-form-urlencoded',
    'application/problem+json',
    '*/*',
    '',
  ],
] as const
const BITS = [
  ',',
  ':',
  '{',
  '}',
  '[',
  ']',
  '"',
  '\\',
  '\\u0000',
  '\\ud800',
  '\u0000',
  '\ufeff',
  '1e999',
  '-',
  ...AWKWARD_TEXTS,
]

function json(request: FuzzRequest, payload: string | Buffer): FuzzRequest {
  return { ...request, headers: { ...request.headers, 'content-type': 'application/json' }, payload }
}

function textOf({ payload = '' }: FuzzRequest): string {
  return payload.toString()
}

function splice(text: string, at: number, piece: string): string {
  const from = at % (text.length + 1)
  return text.slice(0, from) + piece + text.slice(from + (at % 3))
}

function deep(text: string, depth: number): string {
  return `${'['.repeat(depth)}${text}${']'.repeat(depth)}`
}
