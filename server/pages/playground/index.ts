import type { FastifyInstance } from 'fastify'
import { asPage } from '../../plugins/headers.ts'
import type { Ranges } from '../../store/ranges.ts'
import { escapeHtml } from '../html.ts'
import { LOOKS } from '../shop/looks.ts'
import { WIDGET_PATH } from '../widget-files.ts'
import { COLOURS, FONTS, LANGUAGES } from './settings.ts'

/**
 * Adds /playground: an element with its attributes, theme, language and width to set, and the snippet for it.
 *
 * @param app - The service
 * @param ranges - The ranges in force
 */
export function registerPlayground(app: FastifyInstance, ranges: Ranges): void {
  app.get('/playground', (_request, reply) =>
    asPage(reply, "script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self'").send(
      playgroundPage(ranges),
    ),
  )
}

function playgroundPage(ranges: Ranges): string {
  // Only shops whose pages are public anyway are named here.
  const shops = Object.keys(LOOKS).filter((shopId) => ranges.current(shopId) !== undefined)
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Playground – Tallywatt</title>
<link rel="icon" href="/pages/mark.svg">
<link rel="stylesheet" href="/pages/home.css">
<script type="module" src="${WIDGET_PATH}"></script>
<script type="module" src="/pages/playground.js"></script>
</head>
<body class="wide">
<main>
<p><a href="/">Tallywatt</a></p>
<h1>Playground</h1>
<p>Set what a page would set. The snippet below follows.</p>
<div class="bench">
<form id="settings">
<fieldset><legend>Element</legend>
${select('element', 'Element', [
  ['tallywatt-guide', 'the guide'],
  ['tallywatt-fit', 'fit of one unit'],
])}
${select(
  'shop',
  'Shop',
  shops.map((shopId) => [shopId, ranges.current(shopId)?.document.shop.name ?? shopId]),
)}
<div class="setting" data-for="tallywatt-fit" hidden><label for="sku">Unit</label><select id="sku" name="sku">${shops.map((shopId) => units(shopId, ranges)).join('')}</select></div>
${select('lang', 'Language', LANGUAGES)}
${select('scheme', 'Light or dark', [
  ['', 'as the reader has it'],
  ['light', 'light'],
  ['dark', 'dark'],
])}
<div class="setting" data-for="tallywatt-guide"><label for="without-cart">Without cart</label><input type="checkbox" id="without-cart" name="without-cart"></div>
<div class="setting" data-for="tallywatt-guide"><label for="keep">Keep answers</label><input type="checkbox" id="keep" name="keep"></div>
<div class="setting"><label for="width">Width <output for="width" id="width-text">720 px</output></label><input type="range" id="width" name="width" min="280" max="960" step="20" value="720"></div>
</fieldset>
<fieldset><legend>Theme</legend>
<div class="setting"><label for="themed">Own theme</label><input type="checkbox" id="themed" name="themed"></div>
${COLOURS.map(([name, label, value]) => `<div class="setting" data-theme hidden><label for="${name}">${label}</label><input type="color" id="${name}" name="${name}" value="${value}"></div>`).join('\n')}
<div class="setting" data-theme hidden><label for="--tallywatt-radius">Corners <output id="radius-text">3 px</output></label><input type="range" id="--tallywatt-radius" name="--tallywatt-radius" min="0" max="22" value="3"></div>
<div class="setting" data-theme hidden><label for="--tallywatt-font">Typeface</label><select id="--tallywatt-font" name="--tallywatt-font">${options(FONTS)}</select></div>
<div class="setting" data-theme hidden><label for="--tallywatt-heading-font">Headings</label><select id="--tallywatt-heading-font" name="--tallywatt-heading-font">${options(FONTS)}</select></div>
</fieldset>
</form>
<div>
<div class="stage" id="stage"></div>
<h2>Snippet</h2>
<pre tabindex="0" aria-label="Snippet"><code id="snippet"></code></pre>
<button type="button" data-copy="snippet">Copy the snippet</button>
<h2>What the page hears</h2>
<pre class="events" role="log" tabindex="0" aria-label="Events" id="events"></pre>
</div>
</div>
</main>
</body>
</html>`
}

function select(name: string, label: string, choices: readonly (readonly [string, string])[]): string {
  return `<div class="setting"><label for="${name}">${label}</label><select id="${name}" name="${name}">${options(choices)}</select></div>`
}

function options(choices: readonly (readonly [string, string])[]): string {
  return choices
    .map(([value, text]) => `<option value="${escapeHtml(value)}">${escapeHtml(text)}</option>`)
    .join('')
}

function units(shopId: string, ranges: Ranges): string {
  const inverters = ranges.current(shopId)?.document.inverters ?? []
  return inverters
    .map(
      ({ sku, name }) =>
        `<option value="${escapeHtml(sku)}" data-shop="${shopId}">${escapeHtml(name)}</option>`,
    )
    .join('')
}
