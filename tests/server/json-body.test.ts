import fc from 'fast-check'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { jsonFault } from '../../server/plugins/json-faults.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

const send = (payload: string | Buffer) =>
  app.inject({
    method: 'POST',
    url: '/v1/shops/kingcup/sizing',
    payload,
    headers: { 'content-type': 'application/json' },
  })
const objectOf = (keys: number) =>
  JSON.stringify(Object.fromEntries(Array.from({ length: keys }, (_, key) => [`key${key}`, key])))
const nested = (depth: number) => `${'['.repeat(depth)}${']'.repeat(depth)}`

describe('a body that readers would not agree on', () => {
  it.each([
    ['a key twice', '{"loads":[],"loads":[{"id":"a"}]}', /"loads" stands twice/],
    ['a key twice, once escaped', '{"loads":[],"lo\\u0061ds":[]}', /"loads" stands twice/],
    ['a key twice, deep', '{"loads":[{"id":"a","id":"b"}]}', /"id" stands twice/],
    ['__proto__', '{"__proto__":{"loads":[]}}', /__proto__/],
    ['__proto__, escaped', '{"\\u005f_proto__":1}', /__proto__/],
    ['constructor', '{"constructor":{"prototype":{}}}', /constructor/],
    ['21 levels', nested(21), /20 levels/],
    ['10,000 levels', nested(10_000), /20 levels/],
    ['101 keys in one object', objectOf(101), /more than 100 keys/],
    ['half a surrogate pair', '{"loads":"\\ud83d"}', /surrogate/],
    ['half a surrogate pair in a key', '{"\\udc00":1}', /surrogate/],
    ['NUL', '{"loads":"a\\u0000b"}', /NUL/],
    ['a truncated body', '{"loads":[', /not readable JSON/],
    ['nothing', '', /not readable JSON/],
    ['NaN', '{"loads":NaN}', /not readable JSON/],
    ['two values', '{} {}', /not readable JSON/],
  ])('%s is refused', async (_what, body, message) => {
    const reply = await send(body)
    expect(reply.statusCode).toBe(400)
    expect(reply.json().code).toBe('unreadable-json')
    expect(reply.json().errors[0].message).toMatch(message)
  })

  it('bytes that are not UTF-8 are refused', async () => {
    const reply = await send(Buffer.from([0x7b, 0x22, 0xff, 0x22, 0x3a, 0x31, 0x7d]))
    expect([reply.statusCode, reply.json().code]).toEqual([400, 'unreadable-json'])
  })

  it('a number beyond a double is refused by the contract', async () => {
    const reply = await send('{"loads":[{"id":"a","rating":{"basis":"input-watts","watts":1e999}}]}')
    expect([reply.statusCode, reply.json().errors[0].pointer]).toEqual([422, '/loads/0/rating/watts'])
  })
})

describe('jsonFault', () => {
  it('finds nothing in whatever JSON.stringify writes of sound strings', () => {
    const sound = fc.string({ unit: 'grapheme' }).filter((text) => !text.includes('\0'))
    const key = sound.filter((text) => text !== '__proto__' && text !== 'constructor')
    const value = fc.jsonValue({ maxDepth: 8, noUnicodeString: false })
    fc.assert(
      fc.property(fc.dictionary(key, fc.oneof(sound, value)), fc.boolean(), (data, spaced) => {
        const text = JSON.stringify(data, undefined, spaced ? 2 : undefined)
        fc.pre(!/\\u0000|\\ud[89a-f]|"__proto__"|"constructor"/.test(text))
        expect(jsonFault(text)).toBeUndefined()
      }),
    )
  })

  it('finds a key that is repeated in any object, wherever it stands and however many there are', () => {
    const keys = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 40 })
    fc.assert(
      fc.property(keys, fc.nat(), (names, pick) => {
        fc.pre(!names.some((name) => /\0|__proto__|constructor/.test(name)))
        const again = names[pick % names.length] ?? ''
        const members = [...names, again].map((name) => `${JSON.stringify(name)}:[{"x":"\\\\"}]`)
        expect(jsonFault(`{"list":[{${members.join(' , ')}}]}`)).toMatch(/stands twice/)
      }),
    )
  })

  it('takes braces, colons and quotes in strings as text', () => {
    expect(jsonFault('{"a":"\\"a\\":{[","b":"\\\\","c":":"}')).toBeUndefined()
    expect(jsonFault('[{"a":1},{"a":2}]')).toBeUndefined()
    expect(jsonFault('{"a":{"a":{"a":1}}}')).toBeUndefined()
    expect(jsonFault(nested(20))).toBeUndefined()
    expect(jsonFault(`[${objectOf(100)},${objectOf(100)}]`)).toBeUndefined()
    expect(jsonFault('{"a":"\\ud83d\\ude00 \\\\u0000"}')).toBeUndefined()
  })
})
