import { html, nothing, type TemplateResult } from 'lit/html.js'
import { TallywattElement } from '../element.ts'
import { loadBar } from '../parts/load-bar.ts'
import { picker } from '../parts/picker.ts'
import { EMPTY_PLAN, type PlanState } from '../plan-state.ts'
import { isLater } from '../view.ts'
import type { AnswerDesk } from './answer-desk.ts'

/** Screens of the guide, in order. */
export type Step = 'pick' | 'when' | 'supply' | 'answer'

/**
 * The wizard: three questions and the answer, from one shop's range.
 *
 * @element tallywatt-guide
 * @attr {string} shop - Id of the shop
 * @attr {string} api - Origin of the service; the script's own where it is left out
 * @attr {string} lang - Language; that of the page where it is left out
 * @attr {'light'|'dark'} scheme - Fixed colour scheme; the reader's choice where it is left out
 * @attr {boolean} without-cart - No cart button
 * @attr {boolean} keep - Keeps the answers in the address's fragment, so that a reload brings them back
 * @slot heading - Above everything
 * @slot footer - Below everything
 * @slot - Shown while there is no service, and without scripts
 */
export class TallywattGuide extends TallywattElement {
  /** The screen that is shown. */
  step: Step = 'pick'
  private desk: AnswerDesk | undefined

  /** Whether the cart button is left out. */
  get withoutCart(): boolean {
    return this.hasAttribute('without-cart')
  }
  set withoutCart(on: boolean) {
    this.toggleAttribute('without-cart', on)
  }

  /** Whether the answers are kept in the address's fragment. */
  get keep(): boolean {
    return this.hasAttribute('keep')
  }
  set keep(on: boolean) {
    this.toggleAttribute('keep', on)
  }

  /** Name of this guide's part of the address's fragment. */
  get fragmentName(): string {
    return `tallywatt-${this.id || this.shop}`
  }

  protected override begun(): void {
    super.begun()
    if (this.plan === EMPTY_PLAN && location.hash.includes(this.fragmentName)) void this.restore()
  }

  /** Takes the answers out of a link and goes to their answer. */
  private async restore(): Promise<void> {
    const link = await this.load('link')
    const plan = link?.planInAddress(this.fragmentName)
    if (plan === undefined || this.plan !== EMPTY_PLAN) return
    const listed = new Set(this.setup.appliances.map(({ id }) => id))
    const gone = plan.loads.filter(({ appliance }) => appliance !== undefined && !listed.has(appliance))
    this.plan = plan
    this.act({ do: 'remove', ids: gone.map(({ id }) => id) })
    if (this.plan.loads.some(({ rating }) => rating !== undefined)) void this.load('rates')
    this.planChanged()
    if (this.plan.loads.length > 0) this.go('answer', false)
  }

  protected override planChanged(): void {
    this.prefetch()
    if (this.keep) void this.load('link').then((link) => link?.keepInAddress(this.fragmentName, this.plan))
  }

  private prefetch(): void {
    void this.load('list', true)
    void this.load('steps', true)
    void this.loadLaterWords(true)
  }

  /**
   * Shows a screen.
   *
   * @param step - Which
   * @param focused - Moves focus to its heading
   */
  go(step: Step, focused = true): void {
    if (step !== 'pick' && this.plan.loads.length === 0) {
      this.say(this.words.pickFirst)
      this.focusOn('#search')
      return
    }
    this.step = step
    this.failure = undefined
    this.ui = { ...this.ui, editing: undefined, turns: undefined, draft: {} }
    this.takeBack('sizing')
    this.again()
    this.tell('tallywatt-step', { step })
    if (focused) this.showTop()
  }

  /** Fetches what the shown screen needs. */
  protected override again(): void {
    if (this.step === 'pick') return
    void this.load('steps')
    void this.load('list')
    void this.loadLaterWords()
    if (this.step === 'supply') void this.load('answer', true)
    if (this.step === 'answer') void this.answer()
    this.redraw()
  }

  private async answer(): Promise<void> {
    const module = await this.load('answer')
    if (module === undefined || this.step !== 'answer') return
    this.desk ??= new module.AnswerDesk(this)
    this.desk.ask()
  }

  /** The plan in place of the one before; used by what-ifs. */
  replacePlan(plan: PlanState): void {
    this.plan = plan
    this.planChanged()
  }

  private showTop(): void {
    this.focusOn('h2')
    void this.updateComplete.then(() => {
      if (this.getBoundingClientRect().top < 0) this.scrollIntoView({ block: 'start' })
    })
  }

  protected override body(): TemplateResult {
    const { words, step } = this
    if (step === 'pick') {
      return html`${this.head(1, words.pickHeading, words.pickLead)} ${picker(this)} ${this.help()}
        ${this.foot(undefined, 'when', words.nextSchedule)}`
    }
    const screens = this.have('steps')
    if (screens === undefined || !isLater(this) || this.have('list') === undefined) {
      return html`<h2 tabindex="-1">${words.loading}</h2>`
    }
    const { later } = this
    if (step === 'answer')
      return html`${this.desk?.screen(this) ?? html`<h2 tabindex="-1">${later.asking}</h2>`} ${this.help()}`
    const when = step === 'when'
    return html`${when ? this.head(2, later.whenHeading, later.whenLead) : this.head(3, later.supplyHeading, later.supplyLead)}
      ${when ? screens.schedule(this) : screens.supplyForm(this)} ${this.help()}
      ${when ? this.foot('pick', 'supply', words.nextSupply) : this.foot('when', 'answer', words.showAnswer)}`
  }

  private head(number: number, heading: string, lead: string): TemplateResult {
    return html`<div class="head" part="head"><p aria-current="step">${this.words.question(number, 3)}</p>
      <h2 tabindex="-1">${heading}</h2><p>${lead}</p></div>`
  }

  private foot(back: Step | undefined, next: Step, text: string): TemplateResult {
    const { words, formats, totals } = this
    const empty = this.plan.loads.length === 0
    return html`<div class="foot" part="foot">
      ${back === undefined && !empty ? loadBar(this, false) : nothing}
      <p class="row">${
        empty
          ? words.nothingYet
          : html`<span class="sum">${words.together} <b>${formats.watts(totals.demand.runningW)}</b></span>
              <span class="small quiet">${words.needed(formats.watts(totals.requiredW))}</span>`
      }</p>
      <div class="row">
        ${back === undefined ? nothing : html`<button type="button" part="back" @click=${() => this.go(back)}>${words.back}</button>`}
        <button type="button" class="go" part="next" aria-disabled=${empty} @click=${() => this.go(next)}>${text}</button>
      </div></div>`
  }
}
