import { html, type TemplateResult } from 'lit/html.js'
import type { FitAnswer } from '../../shared/contract/answers.ts'
import { startingText, verdict } from '../parts/answer.ts'
import { assumed, assumptions, cautions } from '../parts/answer-details.ts'
import { findings } from '../parts/findings.ts'
import { loadBar } from '../parts/load-bar.ts'
import type { LaterView } from '../view.ts'

/**
 * The verdict on one unit, with the smallest that would do.
 *
 * @param view - What is drawn from
 * @param answer - The service's reply
 * @returns The verdict's screen
 */
export function fitVerdict(view: LaterView, answer: FitAnswer): TemplateResult {
  const { later, formats } = view
  const { unit, outcome } = answer
  const free = Math.max(0, 1 - unit.loadFraction)
  const telling = unit.findings.filter(({ severity }) => severity !== 'note')
  return html`<section part="result">
    ${verdict(later.verdictOf(later.verdicts[outcome], unit.name), outcome)}
    ${loadBar(view, true, { watts: unit.continuousW, label: later.limitLabel(formats.watts(unit.continuousW)) })}
    <p>${unit.fits ? `${later.roomLeft(formats.percent(free))} ` : ''}${startingText(view, answer, unit.surgeW)}</p>
    ${findings(telling)} ${outcome === 'none-fits' ? smallest(view, answer) : ''}
    ${cautions(view, answer)} ${assumptions(view, assumed(view, answer))}
  </section>`
}

function smallest({ later, formats }: LaterView, { smallest: other }: FitAnswer): TemplateResult {
  if (other === null) return html`<p>${later.smallestNone}</p>`
  const name = `${other.name}, ${formats.money(other.price, other.currency)}`
  return html`<p part="smallest">${later.smallest} ${other.url === undefined ? html`<b>${name}</b>` : html`<a href=${other.url}><b>${name}</b></a>`}</p>`
}
