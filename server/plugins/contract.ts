import type { RouteOptions } from 'fastify'
import type { z } from 'zod/v3'
import type { Operation } from '../../shared/contract/operations.ts'
import { type JsonSchema, jsonSchemaOf } from '../../shared/json-schema.ts'

/** The part of a route that its operation fixes. */
export type ContractRoute = Pick<RouteOptions, 'method' | 'url' | 'schema' | 'config'>

/**
 * A route's address, validation and serialisation, as its operation in the contract has them.
 *
 * @param operation - The operation
 * @returns Route options without the handler
 */
export function routeOf(operation: Operation): ContractRoute {
  const { query, reply } = operation
  // Where there is CSV beside JSON, the route reads both by one way of its own, with all faults at once.
  const body = operation.csv?.body === undefined ? operation.body : undefined
  return {
    method: operation.method,
    url: operation.path.replaceAll(/\{(\w+)\}/g, ':$1'),
    schema: {
      ...(body === undefined ? {} : { body: jsonSchemaOf(body.schema) }),
      ...(query === undefined ? {} : { querystring: jsonSchemaOf(query) }),
      response: { 200: serializerSchema(reply.schema) },
    },
    config: {
      ...(body === undefined ? {} : { bodySchema: body.schema }),
      ...(operation.scope === undefined ? {} : { keyScope: operation.scope }),
    },
  }
}

/**
 * The schema that replies are written by: `T | null` as a nullable T, which the serialiser writes without
 * validating each branch.
 *
 * @param schema - What the reply is
 * @returns JSON Schema for the serialiser
 */
export function serializerSchema(schema: z.ZodTypeAny): JsonSchema {
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
