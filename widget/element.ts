import { html, nothing, render, type TemplateResult } from 'lit/html.js'
import type { Setup } from '../shared/contract/setup.ts'
import { ask, type Failure, lost } from './api.ts'
import type { Formats } from './formats.ts'
import { en, type Words } from './i18n/en.ts'
import type { LaterWords } from './i18n/en-later.ts'
import { isRightToLeft, LANGUAGES, type Language, languageOf } from './i18n/index.ts'
import { FETCH, type ModuleName, type Modules, sheetsOf } from './modules.ts'
import { EMPTY_PLAN, type PlanState } from './plan.ts'
import type { Sheet } from './sheet.ts'
import { base, picking } from './theme.ts'
import { type Totals, totalsOf } from './totals.ts'
import { freshUi, type UiState, type View } from './view.ts'
import { wattsIn } from './watts.ts'

/** Where this script came from: the service that serves it answers too. */
const OWN_ORIGIN = new URL(import.meta.url).origin

/** Resolves in the next task. */
function nextTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve))
}

/**
 * What both elements share: the shop, the plan, the words, waiting and failing. Attributes are the only settings;
 * a property of the same name writes its attribute. It never throws into the page that it stands on.
 */
export abstract class TallywattElement extends HTMLElement implements View {
  static readonly observedAttributes: readonly string[] = ['shop', 'api', 'lang']

  plan: PlanState = EMPTY_PLAN
  words: Words = en
  later: LaterWords | undefined
  formats: Formats | undefined
  watts = wattsIn('en')
  ui: UiState = freshUi()
  rtl = false
  widthEm = 40
  protected failure: Failure | undefined
  readonly #root = this.attachShadow({ mode: 'open' })
  #setup: Setup | undefined
  /** The language that the set-up was last asked for in. */
  #named = ''
  #totals: readonly [plan: PlanState, setup: Setup, rates: unknown, totals: Totals] | undefined
  #language: Language | undefined
  #tag = 'en'
  #said = ''
  #retryAt = 0
  /** False while the parser still sets attributes, before the element is on the page. */
  #placed = false
  #noted = false
  #drawing: Promise<void> | undefined
  readonly #modules = new Map<ModuleName, unknown>()
  readonly #running = new Map<string, AbortController>()
  readonly #watch = new ResizeObserver(([entry]) => this.#resized(entry?.contentRect.width ?? 0))

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
    return this.#drawing ?? Promise.resolve()
  }

  connectedCallback(): void {
    for (const name of ['shop', 'api', 'sku', 'keep', 'withoutCart']) this.#takeOver(name)
    this.#adopt([base, picking])
    this.#watch.observe(this)
    this.#placed = true
    this.#begin()
  }

  disconnectedCallback(): void {
    this.#placed = false
    this.#watch.disconnect()
    for (const name of this.#running.keys()) this.takeBack(name)
  }

  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (!this.#placed || before === after) return
    if (name !== 'lang') this.#setup = undefined
    this.#begin()
  }

  /** A property that was set before the element was defined hides the accessor: it is set anew. */
  #takeOver(name: string): void {
    if (!Object.hasOwn(this, name)) return
    const value: unknown = Reflect.get(this, name)
    Reflect.deleteProperty(this, name)
    Reflect.set(this, name, value)
  }

  get setup(): Setup {
    if (this.#setup === undefined) throw new TypeError('no shop yet')
    return this.#setup
  }

  get totals(): Totals {
    const { plan, setup } = this
    const rates = this.have('rates')
    const [keptPlan, keptSetup, keptRates, kept] = this.#totals ?? []
    if (kept !== undefined && keptPlan === plan && keptSetup === setup && keptRates === rates) return kept
    const totals = totalsOf(plan, setup)
    this.#totals = [plan, setup, rates, totals]
    return totals
  }

  act(plan: PlanState, said?: (totals: Totals) => string): void {
    if (this.plan === plan) return
    this.plan = plan
    if (said !== undefined) this.say(said(this.totals))
    this.planChanged()
    this.redraw()
  }

  say(text: string): void {
    // The same words twice would not be spoken twice without a change of text.
    this.#said = this.#said === text ? `${text}\u00a0` : text
    this.redraw()
  }

  redraw(): void {
    // In a task of its own, so that what led to it and the browser's layout of it never add up to one long task.
    this.#drawing ??= nextTask().then(() => {
      this.#drawing = undefined
      try {
        render(this.#screen(), this.#root, { host: this })
      } catch (error) {
        console.warn('tallywatt: a screen could not be drawn', error)
      }
    })
  }

  focusOn(selector: string): void {
    this.redraw()
    void this.afterPaint().then(() => this.#root.querySelector<HTMLElement>(selector)?.focus())
  }

  /** Resolves once what has changed is seen: focus and measures force a layout, which the browser has done by then. */
  async afterPaint(): Promise<void> {
    await this.updateComplete
    await new Promise(requestAnimationFrame)
    await nextTask()
  }

  have<K extends ModuleName>(name: K): Modules[K] | undefined {
    return this.#modules.get(name) as Modules[K] | undefined
  }

  async load<K extends ModuleName>(name: K, quiet = false): Promise<Modules[K] | undefined> {
    return (
      this.have(name) ??
      this.#fetched(quiet, FETCH[name], (module) => {
        this.#modules.set(name, module)
        this.#adopt(sheetsOf(module))
      })
    )
  }

  async loadEditor(): Promise<unknown> {
    return Promise.all([this.loadLater(), this.load('editor'), this.load('rates')])
  }

  /** The words and formats of all but the first question, in the language of the element. */
  protected async loadLater(quiet = false): Promise<void> {
    if (this.later !== undefined) return
    const language = this.#language
    const screens = await this.load('screens', quiet)
    if (screens === undefined || language === undefined) return
    await this.#fetched(
      quiet,
      () => language.later(),
      (words) => {
        if (this.#language !== language) return
        this.formats = screens.formatsFor(this.#spoken, this.#setup?.shop.wireSizes === 'awg')
        // Readied here, so that the first tap needn't wait for it.
        this.watts(0)
        this.later = words
        if (!this.#noted) void screens.noteOwnColours(this.#root)
        this.#noted = true
      },
    )
  }

  /** Fetches a part of the script; a failure is told unless nobody waits for it. */
  async #fetched<T>(
    quiet: boolean,
    fetching: () => Promise<T>,
    done: (value: T) => void,
  ): Promise<T | undefined> {
    try {
      const value = await fetching()
      done(value)
      this.redraw()
      return value
    } catch {
      if (!quiet) this.fail(lost())
      return undefined
    }
  }

  /** Fetches the set-up and the words. */
  #begin(): void {
    this.failure = undefined
    void this.#speak()
    if (this.shop === '') {
      console.warn(`tallywatt: <${this.localName}> needs the attribute "shop"`)
      this.failure = { kind: 'unknown-shop' }
    } else if (this.#setup === undefined || this.#named !== this.#page) {
      // Names of things come in the page's language; without one, in the shop's.
      this.#named = this.#page
      const path = this.#named === '' ? 'setup' : `setup?locale=${this.#named}`
      void this.ask<Setup>('setup', path, undefined, (setup) => {
        const first = this.#setup === undefined
        this.#setup = setup
        void this.#speak().then(() => this.loadLater(true))
        if (first) this.begun()
      })
    }
    this.redraw()
  }

  /** What the element does once it knows its shop. */
  protected begun(): void {}

  /** What the element does when an answer of the shopper has changed. */
  protected abstract planChanged(): void

  /** The language tag of the page around; empty where there is none that can be read. */
  get #page(): string {
    const tag = this.closest('[lang]')?.getAttribute('lang') ?? ''
    return /^[a-z]{2,3}(-\w{2,8})*$/i.test(tag) ? tag : ''
  }

  /** The language of the page around, in the shop's region where that speaks the same. */
  get locale(): string {
    const page = this.#page
    const shop = this.#setup?.shop.locale ?? 'en'
    return page === '' || shop.startsWith(`${page}-`) ? shop : page
  }

  /** The locale where we have its language, else the language that we have. */
  get #spoken(): string {
    return this.locale.startsWith(this.#tag) ? this.locale : this.#tag
  }

  async #speak(): Promise<void> {
    const tag = languageOf(this.locale)
    const language = await LANGUAGES[tag]?.().catch(() => undefined)
    if (language === undefined || languageOf(this.locale) !== tag) return
    this.#tag = tag
    this.#language = language
    this.words = language.words
    this.later = undefined
    this.rtl = isRightToLeft(tag)
    this.watts = wattsIn(this.#spoken)
    if (this.have('screens') !== undefined) void this.loadLater(true)
    this.redraw()
  }

  /** Puts a question to the service; the one before under the same name is taken back. */
  async ask<T>(name: string, path: string, request: unknown, done: (value: T) => void): Promise<void> {
    this.takeBack(name)
    const stop = new AbortController()
    this.#running.set(name, stop)
    const root = this.api.replace(/\/+$/, '')
    const reply = await ask<T>(`${root}/v1/shops/${encodeURIComponent(this.shop)}/${path}`, stop, request)
    if (reply === undefined) return
    this.#running.delete(name)
    if (reply.ok) done(reply.value)
    else this.fail(reply.failure)
    this.redraw()
  }

  takeBack(name: string): void {
    this.#running.get(name)?.abort()
    this.#running.delete(name)
  }

  /** Tells the page something; false where the page cancelled it. */
  tell(name: string, detail: unknown, cancelable = false): boolean {
    return this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true, cancelable }))
  }

  fail(failure: Failure): void {
    this.failure = failure
    const { kind } = failure
    if (kind === 'busy') {
      this.#retryAt = Date.now() + failure.retryAfterS * 1000
      setTimeout(() => this.redraw(), failure.retryAfterS * 1000)
    }
    console.info(`tallywatt: no answer (${kind})`)
    this.say(this.words.failures[kind])
    this.tell('tallywatt-failure', { kind })
  }

  #adopt(sheets: readonly Sheet[]): void {
    const kept = this.#root.adoptedStyleSheets
    const fresh = sheets.map((sheet) => sheet.constructed()).filter((sheet) => !kept.includes(sheet))
    if (fresh.length > 0) this.#root.adoptedStyleSheets = [...kept, ...fresh]
  }

  #resized(width: number): void {
    const text = this.#root.querySelector('.base')
    const size = text === null ? 16 : Number.parseFloat(getComputedStyle(text).fontSize)
    const widthEm = Math.max(10, Math.min(width / size, 44) - 2.5)
    if (Math.abs(widthEm - this.widthEm) < 0.5) return
    this.widthEm = widthEm
    this.redraw()
  }

  protected abstract body(): TemplateResult

  #screen(): TemplateResult {
    const { failure } = this
    return html`<div class="base" part="base" lang=${this.#tag} dir=${this.rtl ? 'rtl' : 'ltr'}>
      <slot name="heading"></slot><div class="said" role="status">${this.#said}</div>
      ${failure && this.#notice(failure)} ${this.#setup === undefined ? this.#waiting() : this.body()}
      <slot name="footer"></slot>
    </div>`
  }

  #waiting(): TemplateResult {
    return this.failed ? html`<slot></slot>` : html`<p class="quiet">${this.words.loading}</p>`
  }

  #notice(failure: Failure): TemplateResult {
    const { words } = this
    const { kind } = failure
    const waitS = Math.ceil((this.#retryAt - Date.now()) / 1000)
    return html`<div class="notice" part="failure"><p>${words.failures[kind]}</p>
      ${kind === 'refused' ? html`<ul>${failure.messages.map((message) => html`<li>${message}</li>`)}</ul>` : nothing}
      ${kind === 'busy' && waitS > 0 ? html`<p>${words.retryIn(waitS)}</p>` : nothing}
      ${kind.startsWith('unknown') ? nothing : html`<button class="go" @click=${() => this.#retry()}>${words.retry}</button>`}</div>`
  }

  #retry(): void {
    this.failure = undefined
    if (this.#setup === undefined) this.#begin()
    else this.again()
    this.redraw()
  }

  /** Asks again what failed after the set-up. */
  protected abstract again(): void

  /** The way to the shop's people, at the same place on every screen. */
  help(): TemplateResult {
    const { contactUrl } = this.setup.shop
    return html`${contactUrl && html`<p class="help"><a href=${contactUrl} part="contact">${this.words.askShop}</a></p>`}`
  }
}
