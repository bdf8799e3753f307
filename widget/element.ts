import { html, nothing, render, type TemplateResult } from 'lit/html.js'
import type { Setup } from '../shared/contract/setup.ts'
import { type Api, apiOf, type Failure, type Reply } from './api.ts'
import { type Formats, formatsFor } from './formats.ts'
import { en, type Words } from './i18n/en.ts'
import type { LaterWords } from './i18n/en-later.ts'
import { isRightToLeft, languageOf } from './i18n/index.ts'
import { FETCH, type ModuleName, type Modules, sheetsOf } from './modules.ts'
import { EMPTY_PLAN, type PlanAction, type PlanState, planAfter } from './plan-state.ts'
import type { Sheet } from './sheet.ts'
import { base, picking } from './theme.ts'
import { type Totals, totalsOf } from './totals.ts'
import { freshUi, type UiState, type View } from './view.ts'

/** Where this script came from: the service that serves it answers too. */
const OWN_ORIGIN = new URL(import.meta.url).origin

/**
 * What both elements share: the shop, the plan, the words, waiting and failing. Attributes are the only settings;
 * a property of the same name writes its attribute. It never throws into the page that it stands on.
 */
export abstract class TallywattElement extends HTMLElement implements View {
  static readonly observedAttributes: readonly string[] = ['shop', 'api', 'lang']

  plan: PlanState = EMPTY_PLAN
  words: Words = en
  formats: Formats = formatsFor('en')
  ui: UiState = freshUi()
  rtl = false
  widthEm = 40
  later: LaterWords | undefined
  protected failure: Failure | undefined
  private readonly root = this.attachShadow({ mode: 'open' })
  private setupOrNone: Setup | undefined
  private totalsKept: readonly [plan: PlanState, setup: Setup, rates: unknown, totals: Totals] | undefined
  private tag = 'en'
  private announcement = ''
  private retryAt = 0
  /** False while the parser still sets attributes, before the element is on the page. */
  private placed = false
  private drawing: Promise<void> | undefined
  private readonly modules = new Map<ModuleName, unknown>()
  private readonly running = new Map<string, AbortController>()
  private readonly watch = new ResizeObserver(([entry]) => this.resized(entry?.contentRect.width ?? 0))

  /** Id of the shop. */
  get shop(): string {
    return this.getAttribute('shop') ?? ''
  }
  set shop(id: string) {
    this.setAttribute('shop', id)
  }

  /** Origin of the service; the script's own where it is left out. */
  get api(): string {
    return this.getAttribute('api') || OWN_ORIGIN
  }
  set api(origin: string) {
    this.setAttribute('api', origin)
  }

  /** Whether the service gave no answer. */
  get failed(): boolean {
    return this.failure !== undefined
  }

  /** Resolves once what has changed is on the page. */
  get updateComplete(): Promise<void> {
    return this.drawing ?? Promise.resolve()
  }

  connectedCallback(): void {
    for (const name of ['shop', 'api', 'sku', 'keep', 'withoutCart']) this.takeOver(name)
    this.adopt([base, picking])
    this.watch.observe(this)
    this.placed = true
    this.begin()
  }

  disconnectedCallback(): void {
    this.placed = false
    this.watch.disconnect()
    for (const controller of this.running.values()) controller.abort()
    this.running.clear()
  }

  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (!this.placed || before === after) return
    if (name !== 'lang') this.setupOrNone = undefined
    this.begin()
  }

  /** A property that was set before the element was defined hides the accessor: it is set anew. */
  private takeOver(name: string): void {
    if (!Object.hasOwn(this, name)) return
    const value: unknown = Reflect.get(this, name)
    Reflect.deleteProperty(this, name)
    Reflect.set(this, name, value)
  }

  get setup(): Setup {
    if (this.setupOrNone === undefined) throw new TypeError('asked for the shop before it is here')
    return this.setupOrNone
  }

  get totals(): Totals {
    const { plan, setup } = this
    const rates = this.have('rates')
    const [keptPlan, keptSetup, keptRates, kept] = this.totalsKept ?? []
    if (kept !== undefined && keptPlan === plan && keptSetup === setup && keptRates === rates) return kept
    const totals = totalsOf(plan, setup)
    this.totalsKept = [plan, setup, rates, totals]
    return totals
  }

  act(action: PlanAction, said?: (totals: Totals) => string): void {
    const before = this.plan
    this.plan = planAfter(before, action)
    if (this.plan === before) return
    if (said !== undefined) this.say(said(this.totals))
    this.planChanged()
    this.redraw()
  }

  say(text: string): void {
    // The same words twice would not be spoken twice without a change of text.
    this.announcement = this.announcement === text ? `${text}\u00a0` : text
    this.redraw()
  }

  redraw(): void {
    this.drawing ??= Promise.resolve().then(() => {
      this.drawing = undefined
      try {
        render(this.screen(), this.root, { host: this })
      } catch (error) {
        console.warn('tallywatt: a screen could not be drawn', error)
      }
    })
  }

  focusOn(selector: string): void {
    this.redraw()
    void this.updateComplete.then(() => this.root.querySelector<HTMLElement>(selector)?.focus())
  }

  have<K extends ModuleName>(name: K): Modules[K] | undefined {
    return this.modules.get(name) as Modules[K] | undefined
  }

  async load<K extends ModuleName>(name: K, quiet = false): Promise<Modules[K] | undefined> {
    const known = this.have(name)
    if (known !== undefined) return known
    try {
      const module = await FETCH[name]()
      this.modules.set(name, module)
      this.adopt(sheetsOf(module))
      this.redraw()
      return module
    } catch {
      if (!quiet) this.fail({ kind: navigator.onLine ? 'unreachable' : 'offline' })
      return undefined
    }
  }

  async loadEditor(): Promise<void> {
    await Promise.all([this.loadLaterWords(), this.load('steps'), this.load('rates')])
  }

  /** The words of the later screens, in the language of the element. */
  protected async loadLaterWords(quiet = false): Promise<void> {
    if (this.later !== undefined) return
    const { tag, language } = languageOf(this.locale)
    try {
      const words = await language.later()
      if (languageOf(this.locale).tag === tag) this.later = words
      this.redraw()
    } catch {
      if (!quiet) this.fail({ kind: navigator.onLine ? 'unreachable' : 'offline' })
    }
  }

  /** Fetches the set-up and the words. */
  private begin(): void {
    this.failure = undefined
    this.later = undefined
    void this.speak()
    if (this.shop === '') {
      console.warn(`tallywatt: <${this.localName}> needs the attribute "shop"`)
      this.failure = { kind: 'unknown-shop' }
    } else if (this.setupOrNone === undefined) {
      const call = (api: Api, signal: AbortSignal) => api.setup(this.locale, signal)
      void this.ask('setup', call, (setup) => {
        this.setupOrNone = setup
        void this.speak()
        this.begun()
      })
    }
    this.redraw()
  }

  /** What the element does once it knows its shop. */
  protected begun(): void {
    void this.load('list', true)
  }

  /** What the element does when an answer of the shopper has changed. */
  protected abstract planChanged(): void

  /** The language of the page around, in the shop's region where that speaks the same. */
  protected get locale(): string {
    const page = this.closest('[lang]')?.getAttribute('lang') ?? ''
    const shop = this.setupOrNone?.shop.locale ?? 'en'
    return page === '' || shop.startsWith(`${page}-`) ? shop : page
  }

  private async speak(): Promise<void> {
    const { locale } = this
    const { tag, language } = languageOf(locale)
    const words = await language.words().catch(() => undefined)
    if (words === undefined || this.locale !== locale) return
    this.words = words
    this.tag = tag
    this.rtl = isRightToLeft(tag)
    const feet = this.setupOrNone?.shop.wireSizes === 'awg'
    this.formats = formatsFor(locale.startsWith(tag) ? locale : tag, feet)
    if (this.have('steps') !== undefined) void this.loadLaterWords()
    this.redraw()
  }

  /** Puts a question to the service; the one before under the same name is taken back. */
  async ask<T>(
    name: string,
    call: (api: Api, signal: AbortSignal) => Promise<Reply<T>>,
    done: (value: T) => void,
  ): Promise<void> {
    this.takeBack(name)
    const controller = new AbortController()
    this.running.set(name, controller)
    const reply = await call(apiOf(this.api, this.shop), controller.signal)
    if (reply === undefined || controller.signal.aborted) return
    this.running.delete(name)
    if (reply.ok) done(reply.value)
    else this.fail(reply.failure)
    this.redraw()
  }

  takeBack(name: string): void {
    this.running.get(name)?.abort()
    this.running.delete(name)
  }

  /** Tells the page something; false where the page cancelled it. */
  tell(name: string, detail: unknown, cancelable = false): boolean {
    return this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true, cancelable }))
  }

  fail(failure: Failure): void {
    this.failure = failure
    if (failure.kind === 'busy') {
      this.retryAt = Date.now() + failure.retryAfterS * 1000
      setTimeout(() => this.redraw(), failure.retryAfterS * 1000)
    }
    console.info(`tallywatt: no answer (${failure.kind})`)
    this.say(this.words.failures[failure.kind])
    this.tell('tallywatt-failure', { kind: failure.kind })
  }

  private adopt(sheets: readonly Sheet[]): void {
    const kept = this.root.adoptedStyleSheets
    const fresh = sheets.map((sheet) => sheet.constructed()).filter((sheet) => !kept.includes(sheet))
    if (fresh.length > 0) this.root.adoptedStyleSheets = [...kept, ...fresh]
  }

  private resized(width: number): void {
    const text = this.root.querySelector('.base')
    const size = text === null ? 16 : Number.parseFloat(getComputedStyle(text).fontSize)
    const widthEm = Math.max(10, Math.min(width / size, 44) - 2.5)
    if (Math.abs(widthEm - this.widthEm) < 0.5) return
    this.widthEm = widthEm
    this.redraw()
  }

  protected abstract body(): TemplateResult

  private screen(): TemplateResult {
    const { failure } = this
    return html`<div class="base" part="base" lang=${this.tag} dir=${this.rtl ? 'rtl' : 'ltr'}>
      <slot name="heading"></slot><div class="said" role="status">${this.announcement}</div>
      ${failure === undefined ? nothing : this.notice(failure)} ${this.setupOrNone === undefined ? this.waiting() : this.body()}
      <slot name="footer"></slot>
    </div>`
  }

  private waiting(): TemplateResult {
    return this.failure === undefined ? html`<p class="quiet">${this.words.loading}</p>` : html`<slot></slot>`
  }

  private notice(failure: Failure): TemplateResult {
    const { words } = this
    const waitS = Math.ceil((this.retryAt - Date.now()) / 1000)
    const hopeless = failure.kind.startsWith('unknown')
    return html`<div class="notice" part="failure"><p>${words.failures[failure.kind]}</p>
      ${failure.kind === 'refused' ? html`<ul>${failure.messages.map((message) => html`<li>${message}</li>`)}</ul>` : nothing}
      ${failure.kind === 'busy' && waitS > 0 ? html`<p>${words.retryIn(waitS)}</p>` : nothing}
      ${hopeless ? nothing : html`<button type="button" class="go" @click=${() => this.retry()}>${words.retry}</button>`}</div>`
  }

  /** Asks again what failed. */
  protected retry(): void {
    this.failure = undefined
    if (this.setupOrNone === undefined) this.begin()
    else this.again()
    this.redraw()
  }

  /** Asks again what failed after the set-up. */
  protected abstract again(): void

  protected help(): TemplateResult {
    const { contactUrl } = this.setup.shop
    if (contactUrl === undefined) return html``
    return html`<p class="help"><a href=${contactUrl} part="contact">${this.words.askShop}</a></p>`
  }
}
