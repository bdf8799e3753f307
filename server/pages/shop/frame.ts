import type { PreparedRange } from '../../../core/index.ts'
import { escapeHtml } from '../html.ts'
import { WIDGET_PATH } from '../widget-files.ts'
import type { Look } from './looks.ts'

/** A shop with what is on its shelves. */
export interface Shop {
  readonly look: Look
  readonly range: PreparedRange
}

/**
 * A page of a demo shop: its header with departments and basket, its footer, and the scripts.
 *
 * @param shop - The shop
 * @param title - Title of the page
 * @param main - HTML of the page's own part
 * @returns HTML of the whole page
 */
export function shopPage(shop: Shop, title: string, main: string): string {
  const { look, range } = shop
  const { name, locale, contactUrl } = range.document.shop
  return `<!doctype html>
<html lang="${escapeHtml(locale)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)} – ${escapeHtml(name)}</title>
<link rel="icon" href="/pages/mark.svg">
<link rel="stylesheet" href="/pages/${look.shopId}.css">
<link rel="stylesheet" href="/shops/${look.shopId}/theme.css">
<script type="module" src="${WIDGET_PATH}"></script>
<script type="module" src="/pages/shop.js"></script>
</head>
<body data-shop="${look.shopId}" data-currency="${range.document.shop.currency}" data-contact="${escapeHtml(contactUrl ?? '')}">
<a class="skip" href="#main">Skip to the page</a>
<header class="top">
  <p class="name"><a href="/shops/${look.shopId}">${escapeHtml(name)}</a></p>
  <p class="motto">${escapeHtml(look.motto)}</p>
  <details class="basket" id="basket"><summary>${look.basket} <span class="number" data-count>0</span></summary>
    <div class="sheet"><ul data-lines></ul><p data-empty>Nothing in it yet.</p><p class="sum" data-sum hidden></p><div data-check></div></div></details>
  <nav aria-label="Departments"><ul>${look.departments.map((department, place) => `<li>${place === 0 ? `<a href="/shops/${look.shopId}">${escapeHtml(department)}</a>` : `<span>${escapeHtml(department)}</span>`}</li>`).join('')}</ul></nav>
</header>
<p class="said" role="status" data-said></p>
<main id="main">
${main}
</main>
<footer class="bottom" id="contact">
  <h2>${escapeHtml(look.contact.heading)}</h2>
  <p>${look.contact.lines.map(escapeHtml).join('<br>')}</p>
  <p class="made-up">This shop is made up to show Tallywatt at work. Nothing here is for sale. <a href="/">What runs here</a></p>
</footer>
<script type="application/json" id="parts">${partsJson(range)}</script>
</body>
</html>`
}

/** Name and price of every part, for the basket. */
function partsJson({ document }: PreparedRange): string {
  const { inverters, batteries, cables, fuses, connectors } = document
  const parts = [...inverters, ...batteries, ...cables, ...fuses, ...connectors]
  const bySku = Object.fromEntries(parts.map(({ sku, name, price }) => [sku, { name, price }]))
  return JSON.stringify(bySku).replaceAll('<', '\\u003c')
}

/**
 * A price as the shop writes it.
 *
 * @param range - The shop's range
 * @param price - Decimal string
 * @returns Text
 */
export function money({ document }: PreparedRange, price: string): string {
  const { locale, currency } = document.shop
  return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(Number(price))
}
