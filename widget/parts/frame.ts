import { html, type TemplateResult } from 'lit/html.js'
import type { GuideHost, Step } from '../guide/guide-host.ts'
import { isLater } from '../view.ts'

/**
 * What leads a screen: its heading, a sentence, and which question it is.
 *
 * @param heading - The heading
 * @param lead - The sentence
 * @param question - Such as "Question 1 of 3", where there is more than one
 * @returns The head
 */
export function head(heading: string, lead: string, question?: string): TemplateResult {
  return html`<div class="head" part="head">${question && html`<p aria-current="step">${question}</p>`}
    <h2 tabindex="-1">${heading}</h2><p>${lead}</p></div>`
}

/**
 * The foot of a question: the running total and the ways on and back.
 *
 * @param guide - Whose question
 * @param next - The screen after
 * @param text - What the way on is called
 * @param back - The way back, where there is one
 * @returns The foot
 */
export function foot(guide: GuideHost, next: Step, text: string, back?: TemplateResult): TemplateResult {
  const { words, totals } = guide
  const empty = guide.plan.loads.length === 0
  return html`<div class="foot" part="foot">
    ${back || empty || !isLater(guide) ? undefined : guide.have('screens')?.loadBar(guide, false)}
    <p class="row">${
      empty
        ? words.nothingYet
        : html`<span class="sum">${words.together} <b>${guide.watts(totals.demand.runningW)}</b></span>
            <span class="small quiet">${words.needed(guide.watts(totals.requiredW))}</span>`
    }</p>
    <div class="row">${back}<button class="go" part="next" aria-disabled=${empty} @click=${() => guide.go(next)}>${text}</button></div></div>`
}
