import type { FastifyInstance } from 'fastify'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import type { Ranges } from '../store/ranges.ts'

/**
 * Adds the page at `/`: what runs here, and a call to copy.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerHome(app: FastifyInstance, ranges: Ranges): void {
  app.get('/', (request, reply) => {
    const origin = `${request.protocol}://${request.host}`
    reply.header(
      'content-security-policy',
      "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
    )
    return reply.type('text/html; charset=utf-8').send(homePage(origin, ranges))
  })
}

function homePage(origin: string, ranges: Ranges): string {
  const shops = ranges.shopIds().map((shopId) => {
    const range = ranges.current(shopId)
    const count = range?.inverters.length ?? 0
    return `<li><b>${escapeHtml(range?.document.shop.name ?? shopId)}</b> (<code>${escapeHtml(shopId)}</code>), ${count} inverters</li>`
  })
  const curl = [
    `curl -s ${origin}/v1/shops/kingcup/sizing \\`,
    `  -H 'content-type: application/json' \\`,
    `  -d '${JSON.stringify(sizingRequestExample)}'`,
  ].join('\n')
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Tallywatt</title>
<style>
  body { max-inline-size: 44rem; margin: 3rem auto; padding: 0 1rem; font: 1rem/1.6 Georgia, serif; color: #1d1f21; background: #fbfaf7 }
  pre { white-space: pre-wrap; overflow-wrap: anywhere; padding: 1rem; border: 1px solid #c9c5bb; font-size: .875rem }
  @media (prefers-color-scheme: dark) { body { color: #ece9e2; background: #17181a } a { color: #9ec3ff } }
</style>
<h1>Tallywatt</h1>
<p>Which inverter runs these things from this battery? This service answers from a shop’s own range.</p>
<h2>Shops served here</h2>
<ul>${shops.join('')}</ul>
<h2>Ask</h2>
<pre>${escapeHtml(curl)}</pre>
<ul>
  <li><a href="/openapi.json">The API as an OpenAPI 3.1 document</a></li>
  <li><a href="/v1/appliances">The appliance list with the source of every figure</a></li>
  <li><a href="/healthz">Health</a></li>
</ul>
</html>`
}

function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}
