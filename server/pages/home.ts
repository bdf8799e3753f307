import type { FastifyInstance } from 'fastify'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { asPage } from '../plugins/headers.ts'
import type { Ranges } from '../store/ranges.ts'
import { escapeHtml } from './html.ts'
import { originOf } from './origin.ts'
import { LOOKS } from './shop/looks.ts'

/**
 * Adds the page at `/`: what runs here, the demo shops, and a call to copy.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerHome(app: FastifyInstance, ranges: Ranges): void {
  app.get('/', (request, reply) =>
    asPage(reply, "style-src 'self'; img-src 'self'").send(homePage(originOf(request), ranges)),
  )
}

function homePage(origin: string, ranges: Ranges): string {
  const shopIds = ranges.shopIds()
  const doors = Object.keys(LOOKS).filter((shopId) => shopIds.includes(shopId))
  const others = shopIds.filter((shopId) => !doors.includes(shopId))
  const curl = [
    `curl -s ${origin}/v1/shops/kingcup/sizing \\`,
    `  -H 'content-type: application/json' \\`,
    `  -d '${JSON.stringify(sizingRequestExample)}'`,
  ].join('\n')
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Tallywatt</title>
<link rel="icon" href="/pages/mark.svg">
<link rel="stylesheet" href="/pages/home.css">
</head>
<body>
<main>
<h1>Tallywatt</h1>
<p class="lead">Which inverter runs these things from this battery? This service answers from a shop’s own range: on the shop’s pages, in a checkout, and to the people who keep the range.</p>
${doors.length === 0 ? '' : `<h2>Two shops, made up, to try it in</h2>\n<ul class="doors">${doors.map((shopId) => door(shopId, ranges)).join('')}</ul>`}
${others.length === 0 ? '' : `<h2>${doors.length === 0 ? 'Shops served here' : 'Other shops served here'}</h2>\n<ul>${others.map((shopId) => `<li>${escapeHtml(nameOf(shopId, ranges))} (<code>${escapeHtml(shopId)}</code>)</li>`).join('')}</ul>`}
<h2>Ask it yourself</h2>
<pre tabindex="0" aria-label="A call to copy">${escapeHtml(curl)}</pre>
<h2>Where to go on</h2>
<ul class="links">
  <li><a href="/docs">The API, readable and to try</a></li>
  <li><a href="/docs/figures">Published figures beside what is computed here, with every source</a></li>
  <li><a href="/playground">The elements for your own pages: settings, theme and language to try</a></li>
  <li><a href="/staff">For shop staff: the range and what it can’t serve</a></li>
  <li><a href="/strict">The elements on a page with a strict content policy</a></li>
  <li><a href="/openapi.json">The API as an OpenAPI 3.1 document</a></li>
  <li><a href="/v1/appliances">The appliance list with the source of every figure</a></li>
  <li><a href="/healthz">Health</a></li>
</ul>
</main>
</body>
</html>`
}

function door(shopId: string, ranges: Ranges): string {
  const look = LOOKS[shopId]
  if (look === undefined) return ''
  const path = `/shops/${shopId}`
  const products = look.featured.map(
    (sku) => `<a href="${path}/products/${sku}">${escapeHtml(shortName(shopId, sku, ranges))}</a>`,
  )
  return `<li><b>${escapeHtml(nameOf(shopId, ranges))}</b><p class="quiet">${escapeHtml(look.motto)}. ${ranges.current(shopId)?.inverters.length ?? 0} inverters.</p>
<nav aria-label="${escapeHtml(nameOf(shopId, ranges))}"><a href="${path}">Category with the guide</a>${products.join('')}</nav></li>`
}

function nameOf(shopId: string, ranges: Ranges): string {
  return ranges.current(shopId)?.document.shop.name ?? shopId
}

/** The first two words of a unit's name. */
function shortName(shopId: string, sku: string, ranges: Ranges): string {
  const unit = ranges.current(shopId)?.document.inverters.find((one) => one.sku === sku)
  return unit?.name.split(' ').slice(0, 2).join(' ') ?? sku
}
