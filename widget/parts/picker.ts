import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { ListedAppliance } from '../../core/loads/listed-appliance.ts'
import { withAppliance } from '../plan.ts'
import { indexFor, search } from '../search.ts'
import type { View } from '../view.ts'
import { applianceDrawing, sign } from './drawings.ts'

/** Things that most shoppers want, one tap away. */
const OFTEN = [
  'microwave-oven',
  'electric-kettle',
  'laptop',
  'phone-charger',
  'television',
  'fridge',
  'coffee-machine',
  'led-lamp',
  'hair-dryer',
]

/**
 * Picking things: search, what is often picked, kinds, and the list so far.
 *
 * @param view - What is drawn from
 * @returns The screen's body
 */
export function picker(view: View): TemplateResult {
  const { words, ui, setup } = view
  const often = OFTEN.flatMap((id) => setup.appliances.find((one) => one.id === id) ?? [])
  return html`${searchBox(view)}
    <p class="label" id="often">${words.often}</p>
    <ul class="tiles" aria-labelledby="often">${often.map((appliance) => html`<li>${tile(view, appliance)}</li>`)}</ul>
    <div class="row also">
      <button aria-expanded=${ui.browsing} @click=${() => browse(view)}>${words.browse} ${sign('open')}</button>
      <button aria-expanded=${ui.editing === 'own'} data-own @click=${() => edit(view, 'own')}>${words.somethingElse}</button>
    </div>
    ${view.have('screens')?.list(view)}`
}

function searchBox(view: View): TemplateResult {
  const { words, ui } = view
  const hits = search(view.setup.appliances, ui.query)
  const active = hits[ui.hit] === undefined ? nothing : `hit-${ui.hit}`
  return html`<div class="search">
      <label for="search">${words.searchLabel}</label>
      <input id="search" type="text" role="combobox" aria-autocomplete="list" aria-controls="hits"
        aria-expanded=${hits.length > 0} aria-activedescendant=${active} autocomplete="off" autocapitalize="none"
        spellcheck="false" placeholder=${words.searchHint} .value=${ui.query}
        @focus=${() => setTimeout(() => indexFor(view.setup.appliances))}
        @input=${(event: InputEvent) => typed(view, event)} @keydown=${(event: KeyboardEvent) => pressed(view, event)} />
      ${sign('search')}
    </div>
    <ul class="hits" id="hits" role="listbox" aria-label=${words.hits}>${hits.map((appliance, index) => hit(view, appliance, index))}</ul>
    ${ui.query.trim() !== '' && hits.length === 0 ? html`<p class="quiet small">${words.noHits}</p>` : nothing}`
}

function hit(view: View, appliance: ListedAppliance, index: number): TemplateResult {
  return html`<li id="hit-${index}" role="option" aria-selected=${index === view.ui.hit} @click=${() => take(view, appliance)}>
    ${applianceDrawing(appliance)}<span class="name">${appliance.name}</span>
    <span class="quiet small">${view.watts(appliance.sizingW)}</span>
  </li>`
}

function typed(view: View, event: InputEvent): void {
  view.ui.query = (event.target as HTMLInputElement).value
  view.ui.hit = -1
  const count = search(view.setup.appliances, view.ui.query).length
  if (view.ui.query.trim() !== '') view.say(count === 0 ? view.words.noHits : view.words.hitCount(count))
  view.redraw()
}

function pressed(view: View, event: KeyboardEvent): void {
  // While an input method composes a character its keys are not ours.
  if (event.isComposing) return
  const { ui } = view
  const hits = search(view.setup.appliances, ui.query)
  const move = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
  if (move !== 0 && hits.length > 0) {
    ui.hit = (Math.max(ui.hit, move < 0 ? 0 : -1) + move + hits.length) % hits.length
  } else if (event.key === 'Enter') {
    const chosen = hits[Math.max(0, ui.hit)]
    if (chosen !== undefined) take(view, chosen)
  } else if (event.key === 'Escape' && ui.query !== '') {
    ui.query = ''
    ui.hit = -1
  } else return
  // Enter would send a form that the element stands in.
  event.preventDefault()
  event.stopPropagation()
  const box = event.target as HTMLInputElement
  // At once: the next letter may come before the drawing.
  box.value = ui.query
  view.redraw()
  const list = box.parentElement?.nextElementSibling
  void view
    .afterPaint()
    .then(() => list?.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' }))
}

function take(view: View, appliance: ListedAppliance): void {
  view.ui.query = ''
  view.ui.hit = -1
  add(view, appliance)
  view.focusOn('#search')
}

/**
 * Adds a thing of the list, or one more of it.
 *
 * @param view - Whose list
 * @param appliance - The thing
 */
export function add(view: View, { id, name }: ListedAppliance): void {
  const { words, plan } = view
  const after = withAppliance(plan, id)
  if (after === plan) view.say(words.listFull)
  else view.act(after, ({ demand }) => words.added(name, view.watts(demand.runningW)))
}

function tile(view: View, appliance: ListedAppliance): TemplateResult {
  const count = countOf(view, appliance.id)
  const { words } = view
  const label = count === 0 ? words.add(appliance.name) : words.addAnother(appliance.name, count)
  return html`<button class="tile ${count > 0 ? 'on' : ''}" aria-label=${label} @click=${() => add(view, appliance)}>
    ${applianceDrawing(appliance)}${appliance.name} ${count > 0 ? html`<span class="count">× ${count}</span>` : nothing}
  </button>`
}

/**
 * How many of a thing are on the list.
 *
 * @param view - Whose list
 * @param appliance - Id of the thing
 * @returns Its count
 */
export function countOf(view: View, appliance: string): number {
  return view.plan.loads.reduce(
    (count, load) => count + (load.appliance === appliance ? load.quantity : 0),
    0,
  )
}

function browse(view: View): void {
  view.ui.browsing = !view.ui.browsing
  void view.load('screens')
  view.redraw()
}

/**
 * Opens or closes the editor of a load's power.
 *
 * @param view - Whose editor
 * @param id - The load, or `own` for a new one
 */
export function edit(view: View, id: string): void {
  view.ui.editing = view.ui.editing === id ? undefined : id
  view.ui.draft = {}
  void view.load('screens')
  void view.loadEditor()
  view.redraw()
}
