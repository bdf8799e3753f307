import type { FastifyInstance } from 'fastify'
import { asPage } from '../../../plugins/headers.ts'
import { sendProblem } from '../../../plugins/problems.ts'
import { figuresPage, isFigureSource } from './figures-page.ts'

/**
 * Adds the page of published figures at /docs/figures; `?source=` shows those of one document.
 *
 * @param app - The service
 */
export function registerFigures(app: FastifyInstance): void {
  let whole: string | undefined
  app.get<{ Querystring: { source?: unknown } }>('/docs/figures', (request, reply) => {
    const { source } = request.query
    const only = typeof source === 'string' && isFigureSource(source) ? source : undefined
    if (source !== undefined && only === undefined) return sendProblem(reply, 'not-found')
    whole ??= figuresPage()
    return asPage(reply, "style-src 'self'")
      .header('cache-control', 'no-cache')
      .send(only === undefined ? whole : figuresPage(only))
  })
}
