import type { FastifyInstance } from 'fastify'
import { asPage } from '../../plugins/headers.ts'
import type { Ranges } from '../../store/ranges.ts'
import { escapeHtml } from '../html.ts'
import { LOOKS } from '../shop/looks.ts'
import { WIDGET_PATH } from '../widget-files.ts'

/** All that the elements need of a page: the script, a style sheet of the page's own, calls to the service. */
const POLICY =
  "script-src 'self'; style-src 'self'; connect-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html"

/**
 * Adds /strict: both elements on a page whose content policy allows nothing but what they need.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerStrict(app: FastifyInstance, ranges: Ranges): void {
  app.get('/strict', (_request, reply) => asPage(reply, POLICY).send(strictPage(ranges)))
}

function strictPage(ranges: Ranges): string {
  const shopId = Object.keys(LOOKS).find((id) => ranges.current(id) !== undefined) ?? ''
  const sku = LOOKS[shopId]?.featured[0] ?? ''
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Tallywatt on a strict page</title>
<link rel="stylesheet" href="/pages/home.css">
<script type="module" src="${WIDGET_PATH}"></script>
</head>
<body>
<main>
<h1>On a strict page</h1>
<p>Nothing is allowed here but what the elements need. Under a policy like this they must work as anywhere:</p>
<pre tabindex="0" aria-label="Content policy">default-src 'none'; ${escapeHtml(POLICY)}</pre>
<h2>The guide</h2>
<tallywatt-guide shop="${shopId}"><p>The guide did not start.</p></tallywatt-guide>
<h2>The fit element</h2>
<tallywatt-fit shop="${shopId}" sku="${escapeHtml(sku)}"><p>The element did not start.</p></tallywatt-fit>
</main>
</body>
</html>`
}
