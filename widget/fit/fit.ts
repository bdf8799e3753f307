import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { FitAnswer } from '../../shared/contract/answers.ts'
import { TallywattElement } from '../element.ts'
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
  private answer: FitAnswer | undefined
  private asked = false
  private settling: ReturnType<typeof setTimeout> | undefined

  /** The unit of this page. */
  get sku(): string {
    return this.getAttribute('sku') ?? ''
  }
  set sku(sku: string) {
    this.setAttribute('sku', sku)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.settling)
  }

  protected override planChanged(): void {
    if (!this.asked) return
    this.takeBack('fit')
    clearTimeout(this.settling)
    if (this.plan.loads.length > 0) {
      this.settling = setTimeout(() => void this.check(), SETTLE_MS)
    } else {
      this.asked = false
      this.answer = undefined
    }
  }

  protected override again(): void {
    if (this.asked) void this.check()
  }

  private async check(): Promise<void> {
    if (this.plan.loads.length === 0) {
      this.say(this.words.pickFirst)
      return
    }
    this.asked = true
    this.failure = undefined
    this.redraw()
    const [screens] = await Promise.all([this.load('verdict'), this.load('list'), this.loadLaterWords()])
    if (screens === undefined) return
    const request = {
      ...screens.requestFor(this.plan, this.setup, this.formats.locale).request,
      sku: this.sku,
    }
    await this.ask(
      'fit',
      (api, signal) => api.fit(request, signal),
      (answer) => {
        this.answer = answer
        const { later } = this
        if (later !== undefined) this.say(later.verdictOf(later.verdicts[answer.outcome], answer.unit.name))
        this.tell('tallywatt-answer', { request, answer })
      },
    )
  }

  protected override body(): TemplateResult {
    const { words, asked } = this
    const empty = this.plan.loads.length === 0
    return html`<div class="head" part="head"><h2 tabindex="-1">${words.fitHeading}</h2><p>${words.fitLead}</p></div>
      ${picker(this)}
      ${asked ? this.verdict() : html`<p class="row also"><button type="button" class="go" part="check" aria-disabled=${empty} @click=${() => void this.check()}>${words.check}</button></p>`}
      ${this.help()}`
  }

  private verdict(): TemplateResult | typeof nothing {
    const screens = this.have('verdict')
    if (this.answer !== undefined && screens !== undefined && isLater(this)) {
      return screens.fitVerdict(this, this.answer)
    }
    return this.failure === undefined ? html`<p class="quiet">${this.words.loading}</p>` : nothing
  }
}
