import type { Inverter } from '../../../core/index.ts'
import { escapeHtml } from '../html.ts'
import { unitDrawing } from './drawing.ts'
import { money, type Shop, shopPage } from './frame.ts'
import { snippetPanel } from './snippet-panel.ts'

/**
 * The category page of a demo shop: the guide in the flow of the page, and the units.
 *
 * @param shop - The shop
 * @param origin - Where the service is
 * @returns HTML
 */
export function categoryPage(shop: Shop, origin: string): string {
  const { look, range } = shop
  const units = range.document.inverters
  const main = `<div class="lead"><h1>${escapeHtml(look.category.heading)}</h1><p>${escapeHtml(look.category.lead)}</p></div>
<section class="guide" aria-labelledby="guide-heading">
  <div class="beside"><h2 id="guide-heading">${escapeHtml(look.guide.heading)}</h2><p>${escapeHtml(look.guide.lead)}</p></div>
  <tallywatt-guide shop="${look.shopId}" keep><a href="#contact">${escapeHtml(look.contact.heading)}</a></tallywatt-guide>
  ${snippetPanel(look, { element: 'tallywatt-guide', attributes: [['shop', look.shopId]] }, origin)}
</section>
<section class="shelf" aria-labelledby="shelf-heading">
  <h2 id="shelf-heading">On our shelves</h2>
  <ul class="units">${sorted(units, look.featured)
    .map((unit) => card(shop, unit))
    .join('')}</ul>
</section>`
  return shopPage(shop, look.category.heading, main)
}

/** Featured ones first, then by voltage and power. */
function sorted(units: readonly Inverter[], featured: readonly string[]): readonly Inverter[] {
  const rank = ({ sku }: Inverter) => (featured.includes(sku) ? 0 : 1)
  return [...units].sort(
    (a, b) => rank(a) - rank(b) || a.inputNominalV - b.inputNominalV || a.continuousW - b.continuousW,
  )
}

function card({ look, range }: Shop, unit: Inverter): string {
  const featured = look.featured.includes(unit.sku)
  return `<li${featured ? ' class="featured"' : ''}><a class="open" href="/shops/${look.shopId}/products/${encodeURIComponent(unit.sku)}">
${unitDrawing(unit)}<span class="title">${escapeHtml(unit.name)}</span></a>
<span class="sku">${escapeHtml(unit.sku)}</span>
<span class="figures">${unit.continuousW} W, ${unit.waveform === 'pure-sine' ? 'pure sine' : 'modified sine'}</span>
<span class="price">${money(range, unit.price)}</span><span class="stock">${unit.inStock ? 'in stock' : 'back soon'}</span></li>`
}
