import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { KitLine } from '../../shared/contract/answers.ts'
import type { AnswerHost } from '../guide/answer-host.ts'
import { kitSum } from '../kit-sum.ts'
import type { LaterView } from '../view.ts'

/**
 * What the shopper needs, part by part, with a tick for the cart and the total of what is ticked.
 *
 * @param view - What is drawn from
 * @param host - The answer and the ticks
 * @returns A section, or nothing where there is no kit
 */
export function kit(view: LaterView, host: AnswerHost): TemplateResult {
  const lines = host.answer.kit
  if (lines.length === 0) return html``
  const { later, formats, setup } = view
  const { currency } = setup.shop
  const total = kitSum(lines.filter((_, place) => host.taken.has(place)))
  return html`<section part="kit"><h3>${later.kitHeading}</h3>
    <ul class="kit">
      ${lines.map((line, place) => part(view, host, line, place))}
      <li class="total"><span>${later.total}</span><span>${formats.money(total, currency)}</span></li>
    </ul></section>`
}

function part(view: LaterView, host: AnswerHost, line: KitLine, place: number): TemplateResult {
  const { later, formats, setup } = view
  const name = line.name ?? line.specification
  const ticked = line.state === 'buy' && line.sku !== undefined
  const state = later.kitStates[line.state]
  const cost =
    line.state === 'buy' && line.price !== undefined
      ? formats.money(kitSum([line]), setup.shop.currency)
      : state
  return html`<li>
    ${
      ticked
        ? html`<label class="tick"><input type="checkbox" .checked=${host.taken.has(place)} aria-label=${later.kitTake(name)} @change=${() => host.take(place)} /></label>`
        : html`<span class="none"></span>`
    }
    <div>${line.url === undefined ? html`<b>${name}</b>` : html`<a href=${line.url}><b>${name}</b></a>`}${line.quantity > 1 ? ` × ${formats.number(line.quantity)}` : nothing}
      <div class="quiet small">${line.name === undefined ? nothing : `${line.specification}. `}${line.why}</div></div>
    <span class=${cost === state ? 'quiet small' : 'cost'}>${cost}</span>
  </li>`
}
