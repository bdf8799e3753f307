import { html, type TemplateResult } from 'lit/html.js'
import type { SizingAnswer } from '../../shared/contract/answers.ts'
import { answer as answerScreen, headlineText } from '../parts/answer.ts'
import { printSheet } from '../parts/print-sheet.ts'
import { EMPTY_PLAN, type PlanState } from '../plan.ts'
import { addressWith, keepInAddress } from '../plan-link.ts'
import { type PlannedRequest, requestFor } from '../plan-request.ts'
import { planAfter } from '../plan-state.ts'
import { isLater, type LaterView, type View } from '../view.ts'
import type { AnswerHost } from './answer-host.ts'
import type { GuideHost, Step } from './guide-host.ts'

/** Where a guide's answer is asked for, kept and acted on. */
export class AnswerDesk implements AnswerHost {
  planned: PlannedRequest = { request: { loads: [], detail: 'brief' }, assumed: {} }
  working: SizingAnswer['working'] | 'asked' = undefined
  taken: ReadonlySet<number> = new Set()
  link: string | undefined
  whole = true
  #given: SizingAnswer | undefined
  #before: PlanState | undefined
  #tried: readonly PlanState[] = []
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

  get parts(): readonly PlanState[] {
    const tried = this.#tried
    // A part that the shopper has changed since is a plan of its own.
    return tried.length > 1 && tried.includes(this.#guide.plan) ? tried : []
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
      this.whole = false
      void guide.afterPaint().then(() => {
        this.whole = true
        guide.redraw()
      })
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

  tryOut(plans: readonly PlanState[], shown = plans[0]): void {
    if (shown === undefined) return
    this.#before ??= this.#guide.plan
    this.#tried = plans
    this.#guide.replacePlan(shown)
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
 * Takes over what a link holds, less what the shop no longer lists, and goes to the answer.
 *
 * @param guide - Which guide
 * @param plan - What its part of the page's address holds, if that can be read
 */
export function restore(guide: GuideHost, plan: PlanState | undefined): void {
  if (plan === undefined || guide.plan !== EMPTY_PLAN) return
  const listed = new Set(guide.setup.appliances.map(({ id }) => id))
  const gone = plan.loads.filter(({ appliance }) => appliance !== undefined && !listed.has(appliance))
  const ids = gone.map(({ id }) => id)
  guide.replacePlan(ids.length === 0 ? plan : planAfter(plan, { do: 'remove', ids }))
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
