import type { Inverter, RangeDocument } from '../../../core/index.ts'
import { escapeHtml } from '../html.ts'
import { partDrawing, unitDrawing } from './drawing.ts'
import { money, type Shop, shopPage } from './frame.ts'
import { snippetPanel } from './snippet-panel.ts'

const OTHER_PARTS = ['batteries', 'cables', 'fuses', 'connectors'] as const
type Part = RangeDocument[(typeof OTHER_PARTS)[number]][number]

/**
 * The page of one product: a unit with the fit element, any other part plainly.
 *
 * @param shop - The shop
 * @param sku - The part
 * @param origin - Where the service is
 * @returns HTML, or undefined where the shop has no such part
 */
export function productPage(shop: Shop, sku: string, origin: string): string | undefined {
  const { document } = shop.range
  const unit = document.inverters.find((one) => one.sku === sku)
  if (unit !== undefined) return unitPage(shop, unit, origin)
  for (const kind of OTHER_PARTS) {
    const part = (document[kind] as readonly Part[]).find((one) => one.sku === sku)
    if (part !== undefined) return shopPage(shop, part.name, about(shop, part, partDrawing(kind), ''))
  }
  return undefined
}

function unitPage(shop: Shop, unit: Inverter, origin: string): string {
  const { look } = shop
  const attributes = [
    ['shop', look.shopId],
    ['sku', unit.sku],
  ] as const
  const main = `${about(shop, unit, unitDrawing(unit), figures(unit))}
<section class="fit" aria-label="Will it run your things?">
  <tallywatt-fit shop="${look.shopId}" sku="${escapeHtml(unit.sku)}"><a href="#contact">${escapeHtml(look.contact.heading)}</a></tallywatt-fit>
  ${snippetPanel(look, { element: 'tallywatt-fit', attributes }, origin)}
</section>`
  return shopPage(shop, unit.name, main)
}

function about({ look, range }: Shop, part: Part | Inverter, drawing: string, more: string): string {
  return `<p class="back"><a href="/shops/${look.shopId}">${escapeHtml(look.category.heading)}</a></p>
<article class="product">
  <div class="picture">${drawing}</div>
  <div class="words"><h1>${escapeHtml(part.name)}</h1>
    <p class="sku">${escapeHtml(part.sku)}</p>
    <p class="price">${money(range, part.price)} <span class="stock">${part.inStock ? 'in stock' : 'back soon'}</span></p>
    <p><button type="button" class="buy" data-add="${escapeHtml(part.sku)}">${escapeHtml(look.addOne)}</button></p>
    ${more}</div>
</article>`
}

function figures(unit: Inverter): string {
  const rows: readonly (readonly [string, string])[] = [
    ['Continuous power', `${unit.continuousW} W`],
    ['Peak power', `${unit.surgeW} W for ${unit.surgeS} s`],
    [
      'Output',
      `${unit.outputV} V, ${unit.outputHz} Hz, ${unit.waveform === 'pure-sine' ? 'pure' : 'modified'} sine wave`,
    ],
    ['Battery', `${unit.inputNominalV} V`],
    ['Outlets', String(unit.outlets)],
  ]
  return `<dl class="figures">${rows.map(([term, text]) => `<div><dt>${term}</dt><dd>${text}</dd></div>`).join('')}</dl>`
}
