import { Ajv2020 } from 'ajv/dist/2020.js'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { openApiDocument } from '../../server/openapi/document.ts'
import { nearValidTexts } from './near-valid.ts'
import { type Schema, schemasOf } from './schema.ts'
import { validValues } from './valid.ts'

const document = openApiDocument() as { readonly components: { readonly schemas: Record<string, Schema> } }
const named = Object.keys(document.components.schemas)
const ajv = new Ajv2020({ strict: false, allErrors: true, logger: false })
ajv.addSchema({ $id: 'document', ...document })

/** A document of its own with everything in it that ours may come to use. */
const OTHER = {
  components: {
    schemas: {
      Tree: {
        type: 'object',
        properties: {
          name: { type: 'string', minLength: 1 },
          children: { type: 'array', items: { $ref: '#/components/schemas/Tree' } },
          parent: { $ref: '#/components/schemas/Tree' },
        },
        required: ['name', 'children'],
        additionalProperties: false,
      },
      Mixed: {
        allOf: [
          { $ref: '#/components/schemas/Named' },
          { type: 'object', properties: { at: { type: 'string', format: 'date-time' } }, required: ['at'] },
        ],
      },
      Named: {
        type: 'object',
        properties: { id: { type: ['integer', 'null'], exclusiveMinimum: 2, exclusiveMaximum: 5 } },
        required: ['id'],
      },
      One: { oneOf: [{ type: 'number', maximum: 5 }, { type: 'number', minimum: 3 }, { const: 'x' }] },
      Map: { type: 'object', additionalProperties: { type: 'string', pattern: '^[a-f]{3}$' } },
    },
  },
} as const

describe('values made from a schema', () => {
  it.each(named)('%s keep it, as another validator has it', (name) => {
    const schemas = schemasOf(document)
    const validate = ajv.getSchema(`document#/components/schemas/${name}`)
    const values = validValues(schemas, { $ref: `#/components/schemas/${name}` })
    for (const value of fc.sample(values, { numRuns: 40, seed: 1 })) {
      expect(validate?.(JSON.parse(JSON.stringify(value))), ajv.errorsText(validate?.errors)).toBe(true)
    }
  })

  it.each(Object.keys(OTHER.components.schemas))('keep one with %s in it', (name) => {
    const other = new Ajv2020({ strict: false, validateFormats: false })
    other.addSchema({ $id: 'other', ...OTHER })
    const validate = other.getSchema(`other#/components/schemas/${name}`)
    const values = validValues(schemasOf(OTHER), { $ref: `#/components/schemas/${name}` })
    const drawn = fc.sample(values, { numRuns: 100, seed: 1 })
    for (const value of drawn) expect(validate?.(value), other.errorsText(validate?.errors)).toBe(true)
    expect(new Set(drawn.map((value) => JSON.stringify(value))).size).toBeGreaterThan(2)
  })

  it('reach both bounds of a number and both ends of a list', () => {
    const schema: Schema = {
      type: 'array',
      items: { type: 'number', minimum: -3, maximum: 7 },
      minItems: 1,
      maxItems: 3,
    }
    const drawn = fc.sample(validValues(schemasOf({}), schema), { numRuns: 300, seed: 1 }) as number[][]
    const lengths = new Set(drawn.map(({ length }) => length))
    expect([lengths.has(1), lengths.has(3)]).toEqual([true, true])
    expect([drawn.flat().includes(-3), drawn.flat().includes(7)]).toEqual([true, true])
  })

  it('are not made from what is not understood', () => {
    const schema = { type: 'object', patternProperties: {} } as Schema
    expect(() => validValues(schemasOf({}), schema)).toThrow(/patternProperties/)
  })
})

describe('values with one thing broken', () => {
  it('mostly break the schema, in every way, and say where', () => {
    const schemas = schemasOf(document)
    const schema: Schema = { $ref: '#/components/schemas/SizingRequest' }
    const texts = nearValidTexts(schemas, schema, validValues(schemas, schema))
    const drawn = fc.sample(texts, { numRuns: 2000, seed: 1 })
    const validate = ajv.getSchema('document#/components/schemas/SizingRequest')
    const keywords = new Set<string>()
    let broken = 0
    for (const { text, at } of drawn) {
      expect(at).toMatch(/^(\/([^~/]|~[01])*)*$/u)
      if (validate?.(JSON.parse(text)) === true) continue
      broken += 1
      for (const { keyword } of validate?.errors ?? []) keywords.add(keyword)
    }
    expect(broken).toBeGreaterThan(drawn.length * 0.7)
    for (const keyword of [
      'type',
      'required',
      'additionalProperties',
      'enum',
      'maximum',
      'maxLength',
      'minItems',
    ]) {
      expect(keywords, keyword).toContain(keyword)
    }
  })
})
