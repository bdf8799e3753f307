import { html, nothing, render, type TemplateResult } from 'lit/html.js'
import { staffApi } from './api.ts'
import { coverageView, loadCoverage } from './coverage.ts'
import { demandView, loadDemand } from './demand/view.ts'
import { deskView } from './desk/view.ts'
import { addDrawings, formatsFor, MORE_PATHS } from './from-widget.ts'
import { historyView, loadHistory } from './history.ts'
import { isEdited, loadRange } from './range/actions.ts'
import { rangeView } from './range/view.ts'
import { signInView } from './sign-in.ts'
import { type Page, SECTIONS, type Section, type State, startState } from './state.ts'
import { wordsFor } from './words.ts'

addDrawings(MORE_PATHS)

const root = document.querySelector('#staff')
const said = document.querySelector('#said')
const { tag, words } = wordsFor(navigator.language)
document.documentElement.lang = tag

let state: State = { ...startState(new Date().toISOString().slice(0, 10)), section: sectionInAddress() }
let drawing = false
let waiting = 0

const page: Page & { api: Page['api']; formats: Page['formats'] } = {
  get state() {
    return state
  },
  words,
  // Before anybody has signed in there is no shop to ask.
  api: staffApi('', '', tag),
  formats: formatsFor(tag),
  set: (change) => {
    state = { ...state, ...change }
    draw()
  },
  say: (text) => {
    // Said again only where the text differs; a space makes it so.
    if (said !== null) said.textContent = said.textContent === text ? `${text} ` : text
  },
  failed: ({ status, problem }) => {
    if (status === 401) {
      signOutKeeping()
      return
    }
    const scope = /scope/.test(problem.code ?? '')
    const text =
      status === 0
        ? words.offline
        : scope
          ? words.scopeMissing(problem.title ?? '', scopeOf(state.section))
          : words.problem(problem.title, problem.detail)
    page.set({ notice: { kind: 'failure', text } })
    page.say(text)
    page.focus('#notice')
  },
  during: async (work) => {
    waiting += 1
    page.set({ busy: true })
    const result = await work
    // One call often follows another: what happens between two is no rest.
    setTimeout(() => {
      waiting -= 1
      page.set({ busy: waiting > 0 })
    })
    return result
  },
  focus: (selector) => {
    draw()
    // Behind the drawing, so that the next key already goes there.
    queueMicrotask(() => {
      const target = document.querySelector<HTMLElement>(selector)
      target?.focus()
      target?.scrollIntoView({ block: 'nearest' })
    })
  },
}

const SCOPES: Readonly<Partial<Record<Section, string>>> = { demand: 'demand' }

function scopeOf(section: Section): string {
  return SCOPES[section] ?? (state.range.base === undefined ? 'read' : 'range')
}

/** Draws once for all changes of one turn. */
function draw(): void {
  if (drawing || root === null) return
  drawing = true
  queueMicrotask(() => {
    drawing = false
    render(state.signedIn ? shell() : signInView(page, state.notice?.text, signIn), root as HTMLElement)
    const name = state.signedIn ? words.sections[state.section] : words.signIn
    document.title = `${name}, ${words.title}`
  })
}

async function signIn(shopId: string, key: string): Promise<void> {
  page.api = staffApi(shopId, key, tag)
  const [setup, range] = await page.during(Promise.all([page.api.setup(), page.api.range()]))
  // A key without the scope to read the range may still be one of this shop's.
  const letIn = setup.ok && (range.ok || range.status === 403)
  if (!setup.ok || !letIn) {
    page.api = staffApi('', '', tag)
    const status = range.ok ? 0 : range.status
    const wrong = status === 401 || status === 404 || (!setup.ok && setup.status === 404)
    const text = wrong
      ? words.signInFailed
      : status === 0
        ? words.offline
        : words.problem(
            range.ok ? undefined : range.problem.title,
            range.ok ? undefined : range.problem.detail,
          )
    page.set({ notice: { kind: 'failure', text } })
    page.say(text)
    page.focus('#key')
    return
  }
  page.formats = formatsFor(setup.value.shop.locale, setup.value.shop.wireSizes === 'awg')
  const same = state.shopId === shopId
  const fresh = startState(new Date().toISOString().slice(0, 10))
  page.set({
    ...fresh,
    ...(same ? { range: state.range, desk: state.desk } : {}),
    section: state.section,
    shopId,
    signedIn: true,
    setup: setup.value,
    notice: undefined,
  })
  await loadRange(page)
  await open()
  page.focus('main h1')
}

/** Forgets the key and everything that it has opened. */
function signOut(): void {
  if (isEdited(state.range) && !confirm(words.leave)) return
  page.api = staffApi('', '', tag)
  state = { ...startState(new Date().toISOString().slice(0, 10)), section: state.section }
  draw()
  page.focus('#shop')
}

/** The key has ended: what was edited waits for another one. */
function signOutKeeping(): void {
  page.api = staffApi('', '', tag)
  page.set({ signedIn: false, notice: { kind: 'failure', text: words.keyEnded } })
  page.say(words.keyEnded)
  page.focus('#key')
}

function sectionInAddress(): Section {
  return SECTIONS.find((name) => name === location.hash.slice(1)) ?? 'range'
}

/** Reads what the shown section needs and has not. */
async function open(): Promise<void> {
  const { section } = state
  if (section === 'range' && state.range.draft === undefined) await loadRange(page)
  if (section === 'history') await loadHistory(page)
  if (section === 'coverage' && state.coverage.reply === undefined) await loadCoverage(page)
  if (section === 'demand' && state.demand.reply === undefined) await loadDemand(page)
}

const VIEWS: Readonly<Record<Section, (page: Page) => TemplateResult>> = {
  range: rangeView,
  history: historyView,
  coverage: coverageView,
  demand: demandView,
  desk: deskView,
}

function shell(): TemplateResult {
  const { section, notice, busy, setup } = state
  return html`
    <header>
      <p class="brand">${setup?.shop.name} <span class="quiet small">${words.title}</span></p>
      <button type="button" id="sign-out" @click=${signOut}>${words.signOut}</button>
      <nav aria-label=${words.menu}><ul>${SECTIONS.map(
        (name) =>
          html`<li><a href="#${name}" aria-current=${name === section ? 'page' : nothing}>${words.sections[name]}</a></li>`,
      )}</ul></nav>
    </header>
    <main id="main" aria-busy=${busy}>
      ${notice === undefined ? nothing : html`<p class="notice ${notice.kind}" id="notice" tabindex="-1">${notice.text}</p>`}
      ${VIEWS[section](page)}
    </main>
    <p class="busy" aria-hidden="true">${busy ? words.waiting : nothing}</p>`
}

addEventListener('hashchange', () => {
  page.set({ section: sectionInAddress(), notice: undefined })
  if (!state.signedIn) return
  void open()
  page.focus('main h1')
})
addEventListener('beforeunload', (event) => {
  if (isEdited(state.range)) event.preventDefault()
})
// A page that the browser keeps for going back must not keep the key.
addEventListener('pagehide', (event) => {
  if (!event.persisted) return
  page.api = staffApi('', '', tag)
  state = startState(new Date().toISOString().slice(0, 10))
  draw()
})
root?.replaceChildren()
draw()
