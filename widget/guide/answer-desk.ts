import { html, type TemplateResult } from 'lit/html.js'
import type { SizingAnswer } from '../../shared/contract/answers.ts'
import { answer as answerScreen, headlineText } from '../parts/answer.ts'
import { answerStyles } from '../parts/answer-styles.ts'
import { printSheet } from '../parts/print-sheet.ts'
import { EMPTY_PLAN, type PlanState } from '../plan.ts'
import { addressWith, keepInAddress, planInAddress } from '../plan-link.ts'
import { type PlannedRequest, requestFor } from '../plan-request.ts'
import { planAfter } from '../plan-state.ts'
import { isLater, type LaterView, type View } from '../view.ts'
import type { AnswerHost } from './answer-host.ts'
import type { GuideHost, Step } from './guide-host.ts'

export { fitVerdict } from '../fit/verdict.ts'
export { requestFor } from '../plan-request.ts'

/** Sheets that come with the answer. */
export const styles = [answerStyles]

/** Where a guide's answer is asked for, kept and acted on. */
export class AnswerDesk implements AnswerHost {
  planned: PlannedRequest = { request: { loads: [], detail: 'brief' }, assumed: {} }
  working: SizingAnswer['working'] | 'asked' = undefined
  taken: ReadonlySet<number> = new Set()
  link: string | undefined
  #given: SizingAnswer | undefined
  #before: PlanState | undefined
  readonly #guide: GuideHost

  constructor(guide: GuideHost) {
    this.#guide = guide
  }

  get answer(): SizingAnswer {
    if (this.#given === undefined) throw new TypeError('asked for the answer before it is here')
    return this.#given
  }

  get changed(): boolean {
    return this.#before !== undefined
  }

  get withoutCart(): boolean {
    return this.#guide.withoutCart
  }

  /** Asks the service for the plan as it stands. */
  ask(): void {
    const guide = this.#guide
    this.#given = undefined
    this.working = undefined
    this.link = undefined
    this.planned = requestFor(guide.plan, guide.setup, guide.locale)
    const { request } = this.planned
    void guide.ask<SizingAnswer>('sizing', 'sizing', request, (answer) => {
      this.#given = answer
      this.taken = takenAtFirst(answer, guide.plan)
      if (guide.later !== undefined) guide.say(headlineText(guide.later, answer))
      guide.tell('tallywatt-answer', { request, answer })
      guide.focusOn('h2')
    })
    guide.redraw()
  }

  screen(view: LaterView): TemplateResult | undefined {
    if (this.#given !== undefined) return answerScreen(view, this)
    return html`<div class="head"><h2 tabindex="-1">${this.#guide.failed ? view.later.answerHeading : view.later.asking}</h2></div>
      <button @click=${() => this.go('supply')}>${view.later.back}</button>`
  }

  go(step: Step): void {
    this.#guide.go(step)
  }

  fetchWorking(): void {
    if (this.working !== undefined) return
    this.working = 'asked'
    const request = { ...this.planned.request, detail: 'full' } as const
    void this.#guide
      .ask<SizingAnswer>('working', 'sizing', request, ({ working }) => {
        this.working = working ?? []
      })
      .then(() => {
        if (this.working === 'asked') this.working = undefined
      })
    this.#guide.redraw()
  }

  take(place: number): void {
    const taken = new Set(this.taken)
    if (!taken.delete(place)) taken.add(place)
    this.taken = taken
    this.#guide.redraw()
  }

  addToCart(lines: readonly { readonly sku: string; readonly quantity: number }[]): void {
    const guide = this.#guide
    const { later } = guide
    if (later === undefined) return
    if (lines.length === 0) guide.say(later.cartEmpty)
    if (lines.length === 0 || !guide.tell('tallywatt-add-to-cart', { lines }, true)) return
    guide.say(later.handedToCart(lines.reduce((count, { quantity }) => count + quantity, 0)))
  }

  copyLink(): void {
    const guide = this.#guide
    const address = addressWith(guide.fragmentName, guide.plan)
    const { later } = guide
    navigator.clipboard.writeText(address).then(
      () => guide.say(later?.linkCopied ?? ''),
      () => {
        // No permission: the shopper copies it by hand.
        this.link = address
        guide.say(later?.linkShown ?? '')
        guide.focusOn('#link')
      },
    )
  }

  print(): void {
    const view: View = this.#guide
    if (isLater(view)) printSheet(view, this)
  }

  tryOut(plan: PlanState): void {
    this.#before ??= this.#guide.plan
    this.#guide.replacePlan(plan)
    this.go('answer')
  }

  undo(): void {
    if (this.#before === undefined) return
    this.#guide.replacePlan(this.#before)
    this.#before = undefined
    this.go('answer')
  }

  startAgain(): void {
    this.#before = undefined
    this.#guide.replacePlan(EMPTY_PLAN)
    this.go('pick')
  }
}

/**
 * Takes a guide's answers out of the page's address and goes to their answer.
 *
 * @param guide - Which
 */
export function restore(guide: GuideHost): void {
  const plan = planInAddress(guide.fragmentName)
  if (plan === undefined || guide.plan !== EMPTY_PLAN) return
  const listed = new Set(guide.setup.appliances.map(({ id }) => id))
  const gone = plan.loads.filter(({ appliance }) => appliance !== undefined && !listed.has(appliance))
  guide.replacePlan(planAfter(plan, { do: 'remove', ids: gone.map(({ id }) => id) }))
  if (guide.plan.loads.some(({ rating }) => rating !== undefined)) void guide.load('rates')
  if (guide.plan.loads.length > 0) guide.go('answer', false)
}

/**
 * Writes a guide's answers into the page's address.
 *
 * @param guide - Which
 */
export function keep(guide: GuideHost): void {
  keepInAddress(guide.fragmentName, guide.plan)
}

/**
 * What goes into the cart unless the shopper unticks it: what is to buy, a battery only where one was asked for or
 * the shopper's own does not do.
 */
function takenAtFirst({ kit }: SizingAnswer, plan: PlanState): ReadonlySet<number> {
  const taken = new Set<number>()
  for (const [place, { state, role, sku, reason }] of kit.entries()) {
    const needed = plan.supply.battery === 'need' || reason === 'your-battery-too-small'
    const wanted = role !== 'battery' || needed
    if (state === 'buy' && sku !== undefined && wanted) taken.add(place)
  }
  return taken
}
