import { createHash } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import { asPage } from '../../plugins/headers.ts'
import { sendTagged } from '../../routes/conditional.ts'
import { escapeHtml } from '../html.ts'
import { registerFigures } from './figures/index.ts'
import { docsPage } from './page.ts'
import { docsScript } from './script.ts'
import { STYLE } from './style.ts'

/** Stands in the page for the address that it is asked at, and can't be in it otherwise. */
const ORIGIN = 'https://origin.invalid'

/**
 * Adds the API reference at /docs and the page of published figures below it, with their style and script from this service alone.
 *
 * @param app - The service
 */
export function registerDocs(app: FastifyInstance): void {
  let page: string | undefined
  app.get('/docs', (request, reply) => {
    page ??= docsPage(ORIGIN)
    const origin = app.publicUrl === '' ? `${request.protocol}://${request.host}` : app.publicUrl
    return asPage(reply, "script-src 'self'; style-src 'self'; connect-src 'self'")
      .header('cache-control', 'no-cache')
      .send(page.replaceAll(ORIGIN, escapeHtml(origin)))
  })
  app.get('/docs/style.css', (request, reply) =>
    sendTagged(request, reply, { etag: tagOf(STYLE), type: 'text/css; charset=utf-8', text: STYLE }),
  )
  registerFigures(app)
  let script: Promise<string> | undefined
  app.get('/docs/try-it.js', async (request, reply) => {
    script ??= docsScript()
    const text = await script
    return sendTagged(request, reply, { etag: tagOf(text), type: 'text/javascript; charset=utf-8', text })
  })
}

function tagOf(text: string): string {
  return `"${createHash('sha256').update(text).digest('base64url').slice(0, 22)}"`
}
