import { html, nothing, type TemplateResult } from 'lit/html.js'
import { TallywattElement } from '../element.ts'
import { foot, head } from '../parts/frame.ts'
import { picker } from '../parts/picker.ts'
import { EMPTY_PLAN, type PlanState } from '../plan.ts'
import { isLater } from '../view.ts'
import type { AnswerDesk } from './answer-desk.ts'
import type { Step } from './guide-host.ts'

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
  #desk: AnswerDesk | undefined

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
    if (this.plan === EMPTY_PLAN && location.hash.includes(this.fragmentName)) {
      void Promise.all([this.load('screens'), this.load('links')]).then(([screens, links]) =>
        screens?.restore(this, links?.planInAddress(this.fragmentName)),
      )
    }
  }

  protected override planChanged(): void {
    if (this.keep) void this.load('screens').then((screens) => screens?.keep(this))
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
    if (focused) this.#showTop()
  }

  /** Fetches what the shown screen needs. */
  protected override again(): void {
    if (this.step === 'pick') return
    void this.loadLater()
    if (this.step === 'answer') void this.#answer()
    this.redraw()
  }

  async #answer(): Promise<void> {
    const screens = await this.load('screens')
    if (screens === undefined || this.step !== 'answer') return
    this.#desk ??= new screens.AnswerDesk(this)
    this.#desk.ask()
  }

  /** The plan in place of the one before; used by links and what-ifs. */
  replacePlan(plan: PlanState): void {
    this.plan = plan
    this.planChanged()
  }

  #showTop(): void {
    this.focusOn('h2')
    void this.afterPaint().then(() => {
      if (this.getBoundingClientRect().top < 0) this.scrollIntoView({ block: 'start' })
    })
  }

  protected override body(): TemplateResult {
    const { words, step } = this
    if (step === 'pick') {
      return html`${head(words.pickHeading, words.pickLead, words.question(1, 3))} ${picker(this)} ${this.help()}
        ${foot(this, 'when', words.nextSchedule)}`
    }
    const screens = this.have('screens')
    if (screens === undefined || !isLater(this)) return html`<h2 tabindex="-1">${words.loading}</h2>`
    if (step !== 'answer') return screens.question(this, this, step)
    return html`${this.#desk?.screen(this) ?? html`<h2 tabindex="-1">${words.loading}</h2>`} ${this.#desk?.whole === false ? nothing : this.help()}`
  }
}
