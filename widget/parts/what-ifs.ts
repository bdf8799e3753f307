import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { AnswerHost } from '../guide/answer-host.ts'
import type { LaterView } from '../view.ts'
import { plansWith } from '../what-if-plan.ts'

/**
 * Changes that would buy something, to tap where the shopper's answers can hold them, and the label limits.
 *
 * @param view - What is drawn from
 * @param host - The answer and what can be done with it
 * @returns Sections, or nothing
 */
export function whatIfs(view: LaterView, host: AnswerHost): TemplateResult {
  const { later, plan } = view
  const { whatIfs: proposed, labelLimits, recommended } = host.answer
  const offers = proposed.map((whatIf) => {
    const tried = plansWith(plan, whatIf)
    return html`<li><span>${whatIf.message}</span>
      ${
        tried.length === 0
          ? html`<span class="quiet small">${later.whatIfUnchangeable}</span>`
          : html`<button aria-label="${later.whatIfTry}: ${whatIf.message}" @click=${() => host.tryOut(tried)}>${later.whatIfTry}</button>`
      }</li>`
  })
  return html`${offers.length === 0 ? nothing : html`<section part="what-ifs"><h3>${recommended === null ? later.whatHelps : later.whatIfHeading}</h3><ul class="ifs">${offers}</ul></section>`}
    ${labelLimits.length === 0 ? nothing : html`<section><h3>${later.limitsHeading}</h3><ul class="plain">${labelLimits.map(({ message }) => html`<li>${message}</li>`)}</ul></section>`}`
}
