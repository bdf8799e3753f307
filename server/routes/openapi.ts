import type { FastifyInstance } from 'fastify'
import { openApiDocument } from '../openapi/document.ts'

/**
 * Adds GET /openapi.json.
 *
 * @param app - The service
 */
export function registerOpenApi(app: FastifyInstance): void {
  const text = JSON.stringify(openApiDocument())
  app.get('/openapi.json', (_request, reply) => reply.type('application/json; charset=utf-8').send(text))
}
