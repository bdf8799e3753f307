import { html, type TemplateResult } from 'lit/html.js'
import type { FitAnswer } from '../../shared/contract/answers.ts'
import { TallywattElement } from '../element.ts'
import { head } from '../parts/frame.ts'
import { picker } from '../parts/picker.ts'
import { isLater } from '../view.ts'

/** Wait after a change before a shown verdict is asked for again. [ms] */
const SETTLE_MS = 350

/**
 * "Will it run ...?" on a product page: pick things, get a verdict on this very unit.
 *
 * @element tallywatt-fit
 * @attr {string} shop - Id of the shop
 * @attr {string} sku - The unit of this page
 * @attr {string} api - Origin of the service; the script's own where it is left out
 * @attr {string} lang - Language; that of the page where it is left out
 * @attr {'light'|'dark'} scheme - Fixed colour scheme; the reader's choice where it is left out
 * @slot heading - Above everything
 * @slot footer - Below everything
 * @slot - Shown while there is no service, and without scripts
 */
export class TallywattFit extends TallywattElement {
  #answer: FitAnswer | undefined
  #asked = false
  #settling: ReturnType<typeof setTimeout> | undefined

  /** The unit of this page. */
  get sku(): string {
    return this.getAttribute('sku') ?? ''
  }
  set sku(sku: string) {
    this.setAttribute('sku', sku)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.#settling)
  }

  protected override planChanged(): void {
    if (!this.#asked) return
    this.takeBack('fit')
    clearTimeout(this.#settling)
    if (this.plan.loads.length > 0) {
      this.#settling = setTimeout(() => void this.#check(), SETTLE_MS)
    } else {
      this.#asked = false
      this.#answer = undefined
    }
  }

  protected override again(): void {
    if (this.#asked) void this.#check()
  }

  async #check(): Promise<void> {
    if (this.plan.loads.length === 0) {
      this.say(this.words.pickFirst)
      return
    }
    this.#asked = true
    this.failure = undefined
    this.redraw()
    const [screens] = await Promise.all([this.load('screens'), this.loadLater()])
    if (screens === undefined || !isLater(this)) return
    const request = {
      ...screens.requestFor(this.plan, this.setup, this.formats.locale).request,
      sku: this.sku,
    }
    await this.ask<FitAnswer>('fit', 'fit', request, (answer) => {
      this.#answer = answer
      this.say(this.later.verdictOf(this.later.verdicts[answer.outcome], answer.unit.name))
      this.tell('tallywatt-answer', { request, answer })
    })
  }

  protected override body(): TemplateResult {
    const { words } = this
    return html`${head(words.fitHeading, words.fitLead)} ${picker(this)} ${this.#verdict()} ${this.help()}`
  }

  #verdict(): TemplateResult {
    const { words } = this
    if (!this.#asked) {
      return html`<p class="row also"><button class="go" part="check" aria-disabled=${this.plan.loads.length === 0} @click=${() => void this.#check()}>${words.check}</button></p>`
    }
    const screens = this.have('screens')
    if (this.#answer !== undefined && screens !== undefined && isLater(this)) {
      return screens.fitVerdict(this, this.#answer)
    }
    return html`${this.failed ? undefined : html`<p class="quiet">${words.loading}</p>`}`
  }
}
