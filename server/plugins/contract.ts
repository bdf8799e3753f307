import type { RouteOptions } from 'fastify'
import type { Operation } from '../../shared/contract/operations.ts'
import { jsonSchemaOf } from '../../shared/json-schema.ts'

/** The part of a route that its operation fixes. */
export type ContractRoute = Pick<RouteOptions, 'method' | 'url' | 'schema' | 'config'>

/**
 * A route's address and validation, as its operation in the contract has them. Replies are written as they are
 * built: a serialiser made from a schema takes longer over them than the engine's own, and the tests hold every
 * reply to the contract.
 *
 * @param operation - The operation
 * @returns Route options without the handler
 */
export function routeOf(operation: Operation): ContractRoute {
  const { query } = operation
  // Where there is CSV beside JSON, the route reads both by one way of its own, with all faults at once.
  const body = operation.csv?.body === undefined ? operation.body : undefined
  return {
    method: operation.method,
    url: operation.path.replaceAll(/\{(\w+)\}/g, ':$1'),
    schema: {
      ...(body === undefined ? {} : { body: jsonSchemaOf(body.schema) }),
      ...(query === undefined ? {} : { querystring: jsonSchemaOf(query) }),
    },
    config: {
      ...(body === undefined ? {} : { bodySchema: body.schema }),
      ...(operation.scope === undefined ? {} : { keyScope: operation.scope }),
    },
  }
}
