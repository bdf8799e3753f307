import type { FastifyRequest } from 'fastify'

/**
 * Where the service is reached: as it was told, or as this request came.
 *
 * @param request - Any request
 * @returns An origin
 */
export function originOf(request: FastifyRequest): string {
  const { publicUrl } = request.server
  return publicUrl === '' ? `${request.protocol}://${request.host}` : publicUrl
}
