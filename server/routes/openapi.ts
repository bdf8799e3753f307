import { createHash } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import { operations } from '../../shared/contract/operations.ts'
import { openApiDocument } from '../openapi/document.ts'
import { routeOf } from '../plugins/contract.ts'
import { sendTagged, type Tagged } from './conditional.ts'

/**
 * Adds GET /openapi.json.
 *
 * @param app - The service
 */
export function registerOpenApi(app: FastifyInstance): void {
  // Made when it is first asked for: the start need not wait for it.
  let body: Tagged | undefined
  app.route({
    ...routeOf(operations.readContract),
    handler: (request, reply) => {
      body ??= written()
      return sendTagged(request, reply, body)
    },
  })
}

function written(): Tagged {
  const text = JSON.stringify(openApiDocument())
  const digest = createHash('sha256').update(text).digest('base64url').slice(0, 22)
  return { etag: `"${digest}"`, type: 'application/json; charset=utf-8', text }
}
