import { readFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { FINDING_CODES } from '../../core/advice/finding-codes.ts'
import { STEP_CODES } from '../../core/working.ts'
import { openApiText } from '../../server/openapi/text.ts'
import { sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { jsonSchemaOf } from '../../shared/json-schema.ts'
import { en } from '../../shared/messages/en.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

/** Places in a schema that allow anything at all or an object of no properties. */
function emptyPlaces(schema: unknown, path = ''): readonly string[] {
  if (Array.isArray(schema)) return schema.flatMap((part, index) => emptyPlaces(part, `${path}/${index}`))
  if (typeof schema !== 'object' || schema === null) return []
  const isEmptyObject =
    'type' in schema &&
    schema.type === 'object' &&
    !('properties' in schema) &&
    !('additionalProperties' in schema)
  return [
    ...(isEmptyObject ? [path] : []),
    ...Object.entries(schema).flatMap(([key, part]) => emptyPlaces(part, `${path}/${key}`)),
  ]
}

describe('the contract', () => {
  it.each(Object.values<Operation>(operations))('$id has schemas that say something', ({ body, reply }) => {
    const schemas = [reply.schema, ...(body === undefined ? [] : [body.schema])].map(jsonSchemaOf)
    for (const schema of schemas) {
      expect(Object.keys(schema).length).toBeGreaterThan(1)
      expect(emptyPlaces(schema)).toEqual([])
    }
  })

  it.each(Object.values<Operation>(operations).filter(({ body }) => body !== undefined))(
    "$id's example keeps its schema",
    ({ body }) => {
      expect(body?.schema.safeParse(body.example).error?.issues ?? []).toEqual([])
    },
  )

  it('is written down in openapi/openapi.json as it is now', () => {
    const written = readFileSync(new URL('../../openapi/openapi.json', import.meta.url), 'utf8')
    expect(written === openApiText(), 'run npm run openapi').toBe(true)
  })

  it('has an English sentence for every finding and every step of the working', () => {
    expect(Object.keys(en.findings).sort()).toEqual([...FINDING_CODES].sort())
    expect(Object.keys(en.steps).sort()).toEqual([...STEP_CODES].sort())
  })
})

describe('detail: full', () => {
  it('adds the working from plate to fuse and run time, with titles and sources', async () => {
    const reply = await app.inject({
      method: 'POST',
      url: '/v1/shops/kingcup/sizing',
      payload: { ...sizingRequestExample, detail: 'full' },
    })
    const answer = sizingAnswerSchema.parse(reply.json())
    const steps = answer.working?.map(({ step }) => step) ?? []
    for (const step of [
      'rating-label-text',
      'demand-running',
      'headroom',
      'worst-case-current',
      'fuse-window',
    ]) {
      expect(steps).toContain(step)
    }
    expect(steps).toContain('battery-run-time')
    const headroom = answer.working?.find(({ step }) => step === 'headroom')
    expect(headroom?.values.requiredContinuousW).toBe(answer.demand.requiredContinuousW)
    expect(answer.working?.every(({ title }) => title.length > 3)).toBe(true)
  })
})
