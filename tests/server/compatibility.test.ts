import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openApiDocument } from '../../server/openapi/document.ts'
import { breakingChanges } from '../support/contract-changes.ts'

type Tree = { [name: string]: Tree }

const released = read('released.json')
const current = JSON.parse(JSON.stringify(openApiDocument())) as Tree

function read(file: string): Tree {
  return JSON.parse(readFileSync(new URL(`../../openapi/${file}`, import.meta.url), 'utf8')) as Tree
}

/** The document of the release with one change. */
function changed(change: (document: Tree) => void): object {
  const copy = structuredClone(released)
  change(copy)
  return copy
}

const at = (tree: Tree, ...path: readonly string[]): Tree => {
  const node = path.reduce<Tree | undefined>((part, step) => part?.[step], tree)
  if (node === undefined) throw new Error(`There is no ${path.join('/')} in the document.`)
  return node
}
const schema = (document: Tree, ...path: readonly string[]) => at(document, 'components', 'schemas', ...path)
const set = (tree: Tree, name: string, value: unknown) => Object.assign(tree, { [name]: value })

describe('the contract', () => {
  it('breaks nothing that the released one promised', () => {
    expect(breakingChanges(released, current)).toEqual([])
  })
})

describe('a change of the contract', () => {
  it.each<readonly [string, (document: Tree) => void, RegExp]>([
    ['a path goes', (d) => delete at(d, 'paths')['/v1/appliances'], /appliances is gone/],
    ['a method goes', (d) => delete at(d, 'paths', '/v1/shops/{shopId}/range').put, /PUT .*range is gone/],
    [
      'an operation is renamed',
      (d) => set(at(d, 'paths', '/healthz', 'get'), 'operationId', 'x'),
      /operationId/,
    ],
    [
      'an operation needs a key',
      (d) => set(at(d, 'paths', '/v1/appliances', 'get'), 'security', [{ secretKey: [] }]),
      /another key/,
    ],
    [
      'a query parameter goes',
      (d) => set(at(d, 'paths', '/v1/appliances', 'get'), 'parameters', []),
      /query parameter locale is gone/,
    ],
    [
      'a query parameter is needed',
      (d) => set(at(d, 'paths', '/v1/appliances', 'get', 'parameters', '0'), 'required', true),
      /locale is needed now/,
    ],
    [
      'a body takes CSV no more',
      (d) => {
        delete at(d, 'paths', '/v1/shops/{shopId}/range', 'put', 'requestBody', 'content')['text/csv']
      },
      /text\/csv\) is gone/,
    ],
    [
      'an answer goes',
      (d) => delete at(d, 'paths', '/v1/appliances', 'get', 'responses')['304'],
      /304 is gone/,
    ],
    [
      'a header of replies goes',
      (d) => {
        delete at(d, 'paths', '/v1/appliances', 'get', 'responses', '200', 'headers').ETag
      },
      /header ETag is gone/,
    ],
    ['a request field goes', (d) => delete schema(d, 'Load', 'properties').name, /name is gone/],
    [
      'a request field is needed',
      (d) => set(schema(d, 'Load'), 'required', ['id', 'name']),
      /name is needed now/,
    ],
    [
      'a new field is needed',
      (d) => {
        set(schema(d, 'Load', 'properties'), 'room', { type: 'string' })
        set(schema(d, 'Load'), 'required', ['id', 'room'])
      },
      /room is new and needed/,
    ],
    [
      'a value of a request goes',
      (d) => set(schema(d, 'Battery', 'properties', 'chemistry'), 'enum', ['agm']),
      /is gone/,
    ],
    [
      'a field takes only some values',
      (d) => set(schema(d, 'Load', 'properties', 'name'), 'enum', ['a']),
      /only/,
    ],
    [
      'a type of a request narrows',
      (d) => set(schema(d, 'Load', 'properties', 'minutesPerDay'), 'type', 'integer'),
      /no longer takes number/,
    ],
    [
      'an upper bound falls',
      (d) => set(schema(d, 'Battery', 'properties', 'capacityAh'), 'maximum', 100),
      /maximum has fallen/,
    ],
    [
      'a lower bound rises',
      (d) => set(schema(d, 'Battery', 'properties', 'capacityAh'), 'minimum', 2),
      /minimum has risen/,
    ],
    ['a list may hold fewer', (d) => set(schema(d, 'Loads'), 'maxItems', 10), /maxItems has fallen/],
    [
      'a text may be shorter only',
      (d) => set(schema(d, 'Load', 'properties', 'name'), 'maxLength', 10),
      /maxLength has fallen/,
    ],
    [
      'a text must have a form',
      (d) => set(schema(d, 'Load', 'properties', 'name'), 'pattern', '^a'),
      /another pattern/,
    ],
    [
      'a default changes',
      (d) => set(schema(d, 'Battery', 'properties', 'hourRateH'), 'default', 10),
      /another default/,
    ],
    [
      'a choice of a request goes',
      (d) => {
        set(schema(d, 'Rating'), 'anyOf', Object.values(schema(d, 'Rating', 'anyOf')).slice(1))
      },
      /the choice basis "input-watts" is gone/,
    ],
    [
      'a field of a reply goes',
      (d) => delete schema(d, 'SizingAnswer', 'properties').demand,
      /demand is gone/,
    ],
    [
      'a field of a reply may be missing',
      (d) => set(schema(d, 'SizingAnswer'), 'required', []),
      /may now be missing/,
    ],
    [
      'a field of a reply may be null',
      (d) => set(schema(d, 'SizingAnswer', 'properties', 'outcome'), 'type', ['string', 'null']),
      /may now be null/,
    ],
    [
      'a field of a reply has another type',
      (d) => set(schema(d, 'Caution', 'properties', 'message'), 'type', 'object'),
      /may now be object/,
    ],
    [
      'a code of problems goes',
      (d) => {
        const responses = at(d, 'components', 'responses')
        for (const response of Object.values(responses)) {
          delete at(response, 'content', 'application/problem+json', 'examples')['unknown-sku']
        }
      },
      /problem unknown-sku is gone/,
    ],
  ])('breaks where %s', (_what, change, says) => {
    expect(breakingChanges(released, changed(change)).join('\n')).toMatch(says)
  })

  it.each<readonly [string, (document: Tree) => void]>([
    ['a path comes', (d) => set(at(d, 'paths'), '/v1/new', { get: { responses: {} } })],
    [
      'a query parameter comes',
      (d) => {
        const { parameters } = at(d, 'paths', '/v1/appliances', 'get') as unknown as { parameters: unknown[] }
        parameters.push({ name: 'x', in: 'query', required: false, schema: { type: 'string' } })
      },
    ],
    ['a request field comes', (d) => set(schema(d, 'Load', 'properties'), 'room', { type: 'string' })],
    ['a request field is needed no more', (d) => set(schema(d, 'Load'), 'required', [])],
    [
      'a value of a request comes',
      (d) => {
        const { enum: values } = schema(d, 'Battery', 'properties', 'chemistry') as unknown as {
          enum: string[]
        }
        values.push('new')
      },
    ],
    [
      'bounds widen',
      (d) => {
        set(schema(d, 'Battery', 'properties', 'capacityAh'), 'maximum', 1e9)
        set(schema(d, 'Loads'), 'maxItems', 100)
      },
    ],
    [
      'a field of a reply comes',
      (d) => set(schema(d, 'SizingAnswer', 'properties'), 'more', { type: 'string' }),
    ],
    [
      'a field of a reply is always there now',
      (d) => {
        set(schema(d, 'SizingAnswer'), 'required', Object.keys(schema(d, 'SizingAnswer', 'properties')))
      },
    ],
    [
      'a value of a reply comes',
      (d) => {
        const { enum: values } = schema(d, 'SizingAnswer', 'properties', 'outcome') as unknown as {
          enum: string[]
        }
        values.push('new')
      },
    ],
    [
      'a status comes',
      (d) => set(at(d, 'paths', '/healthz', 'get', 'responses'), '418', { description: 'x' }),
    ],
    ['texts change', (d) => set(schema(d, 'Load', 'properties', 'id'), 'description', 'x')],
  ])('breaks nothing where %s', (_what, change) => {
    expect(breakingChanges(released, changed(change))).toEqual([])
  })
})
