import Fastify from 'fastify'
import type { z } from 'zod/v3'
import { AJV_OPTIONS } from '../../server/plugins/validators.ts'
import { sizingAnswerSchema } from '../../shared/contract/answers.ts'
import { sizingRequestSchema } from '../../shared/contract/plan.ts'
import { type JsonSchema, jsonSchemaOf } from '../../shared/json-schema.ts'
import { demoService } from '../support/service.ts'
import { BENCH_BODIES, type BenchBody } from './bodies.ts'

/** Serves the real endpoint, or a bare route with the same body schema and the same response bytes. */
const service = await demoService()
const [, , mode = 'service', name = 'whole'] = process.argv
const answer = await service.inject({
  method: 'POST',
  url: '/v1/shops/kingcup/sizing',
  payload: BENCH_BODIES[name as BenchBody],
})

if (mode === 'bare') {
  const body = answer.json()
  const bare = Fastify({ ajv: { customOptions: AJV_OPTIONS } })
  bare.post('/v1/shops/:shopId/sizing', {
    schema: {
      body: jsonSchemaOf(sizingRequestSchema),
      response: { 200: serializerSchema(sizingAnswerSchema) },
    },
    handler: () => body,
  })
  process.send?.(await bare.listen({ port: 0 }))
} else {
  process.send?.(await service.listen({ port: 0 }))
}

/**
 * The schema that replies are written by: `T | null` as a nullable T, which the serialiser writes without
 * validating each branch.
 *
 * @param schema - What the reply is
 * @returns JSON Schema for the serialiser
 */
function serializerSchema(schema: z.ZodTypeAny): JsonSchema {
  return withNullable(jsonSchemaOf(schema)) as JsonSchema
}

function withNullable(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withNullable)
  if (typeof node !== 'object' || node === null) return node
  const entries = Object.entries(node).map(([key, value]) => [key, withNullable(value)] as const)
  const made: Record<string, unknown> = Object.fromEntries(entries)
  const choices = made.anyOf
  if (Array.isArray(choices) && choices.length === 2 && choices[1]?.type === 'null') {
    const { anyOf: _, ...rest } = made
    return { ...rest, ...choices[0], nullable: true }
  }
  return made
}
