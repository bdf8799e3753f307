import { html, type TemplateResult } from 'lit/html.js'
import type { GuideHost } from '../guide/guide-host.ts'
import type { LaterView } from '../view.ts'
import { foot, head } from './frame.ts'
import { schedule } from './schedule.ts'
import { supplyForm } from './supply-form.ts'

/**
 * The second or the third question.
 *
 * @param guide - Whose question
 * @param view - The same, its words here
 * @param step - Which
 * @returns The screen
 */
export function question(guide: GuideHost, view: LaterView, step: 'when' | 'supply'): TemplateResult {
  const { words, later } = view
  const back = (to: 'pick' | 'when') =>
    html`<button part="back" @click=${() => guide.go(to)}>${later.back}</button>`
  if (step === 'when') {
    return html`${head(later.whenHeading, later.whenLead, words.question(2, 3))} ${schedule(view)} ${guide.help()}
      ${foot(guide, 'supply', later.nextSupply, back('pick'))}`
  }
  return html`${head(later.supplyHeading, later.supplyLead, words.question(3, 3))} ${supplyForm(view)} ${guide.help()}
    ${foot(guide, 'answer', later.showAnswer, back('when'))}`
}
