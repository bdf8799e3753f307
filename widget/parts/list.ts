import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { ApplianceCategory } from '../../core/loads/vocabulary.ts'
import type { PlanLoad } from '../plan.ts'
import { planAfter } from '../plan-state.ts'
import { isLater, type LaterView, type View } from '../view.ts'
import { letterOf } from './bar-geometry.ts'
import { applianceDrawing, categoryDrawing, sign } from './drawings.ts'
import { nameOf } from './load-bar.ts'
import { add, countOf, edit } from './picker.ts'

/**
 * What comes below the tiles: a thing of the shopper's own, the kinds to browse, the list so far.
 *
 * @param view - What is drawn from
 * @returns The screen's lower part
 */
export function list(view: View): TemplateResult {
  const { ui } = view
  if (!isLater(view)) return html``
  return html`${ui.editing === 'own' ? editorOf(view, 'own') : nothing} ${ui.browsing ? kinds(view) : nothing} ${things(view)}`
}

function editorOf(view: LaterView, id: string): TemplateResult {
  const module = view.have('editor')
  if (module === undefined || view.have('rates') === undefined) {
    return html`<p class="quiet">${view.words.loading}</p>`
  }
  return module.editor(view, id)
}

function kinds(view: LaterView): TemplateResult {
  const { later, ui, setup } = view
  const held = new Set(setup.appliances.map(({ category }) => category))
  const shown = (Object.keys(later.categories) as ApplianceCategory[]).filter((kind) => held.has(kind))
  const open = (kind: string) => {
    ui.category = ui.category === kind ? undefined : kind
    view.redraw()
    if (ui.category !== undefined) view.focusOn('.kinds-list button')
  }
  return html`<div class="kinds">
    <ul class="tiles">
      ${shown.map(
        (
          kind,
        ) => html`<li><button class="tile ${kind === ui.category ? 'on' : ''}" aria-expanded=${kind === ui.category}
          @click=${() => open(kind)}>${categoryDrawing(kind)}${later.categories[kind]}</button></li>`,
      )}
    </ul>
    ${ui.category === undefined ? nothing : kindList(view, ui.category)}
  </div>`
}

function kindList(view: View, kind: string): TemplateResult {
  const held = view.setup.appliances.filter(({ category }) => category === kind)
  return html`<ul class="kinds-list">
    ${held.map((appliance) => {
      const count = countOf(view, appliance.id)
      return html`<li><button @click=${() => add(view, appliance)}>
        ${applianceDrawing(appliance)}<span class="name">${appliance.name}</span>
        ${count > 0 ? html`<b>× ${count}</b>` : sign('plus')}
      </button></li>`
    })}
  </ul>`
}

function things(view: LaterView): TemplateResult {
  const { later, plan } = view
  if (plan.loads.length === 0) return html``
  return html`<h3 class="label" id="list">${later.yourList}</h3>
    <ul class="things" aria-labelledby="list">${plan.loads.map((load, place) => thing(view, load, place))}</ul>`
}

function thing(view: LaterView, load: PlanLoad, place: number): TemplateResult {
  const { later, ui } = view
  const listed = view.setup.appliances.find(({ id }) => id === load.appliance)
  const name = nameOf(view, load.id)
  const count = (quantity: number) => {
    view.act(planAfter(view.plan, { do: 'set-quantity', id: load.id, quantity }), ({ demand }) =>
      later.changed(view.watts(demand.runningW)),
    )
  }
  return html`<li class="thing">
    ${applianceDrawing(listed)}
    <div class="name">${letterKey(place)}<b>${name}</b><br /><span class="quiet small">${powerText(view, load)}</span></div>
    <div class="tools">
      <span class="stepper">
        <button aria-label=${later.fewer(name)} aria-disabled=${load.quantity <= 1} @click=${() => load.quantity > 1 && count(load.quantity - 1)}>${sign('minus')}</button>
        <span class="many">${load.quantity}</span>
        <button aria-label=${later.more(name)} @click=${() => count(load.quantity + 1)}>${sign('plus')}</button>
      </span>
      <button aria-label=${later.powerOf(name)} aria-expanded=${ui.editing === load.id} data-edit=${load.id} @click=${() => edit(view, load.id)}>${later.power}</button>
      <button class="bare" aria-label=${later.removeOf(name)} @click=${() => remove(view, load.id, name)}>${later.remove}</button>
    </div>
    ${ui.editing === load.id ? html`<div class="edit">${editorOf(view, load.id)}</div>` : nothing}
  </li>`
}

/**
 * The letter by which a load is found in the bar, filled as its stretch is.
 *
 * @param place - Place in the list
 * @returns The letter
 */
export function letterKey(place: number): TemplateResult {
  return html`<span class="key ${place % 2 === 0 ? 'strong' : ''}">${letterOf(place)}</span>`
}

function powerText(view: LaterView, { id, quantity }: PlanLoad): string {
  const { later, totals } = view
  const load = totals.demand.loads.find((one) => one.id === id)
  if (load === undefined) return later.unread
  const watts = `${quantity > 1 ? `${quantity} × ` : ''}${view.watts(load.runningW)}`
  return load.estimated ? later.estimated(watts) : later.stated(watts)
}

function remove(view: LaterView, id: string, name: string): void {
  view.act(planAfter(view.plan, { do: 'remove', ids: [id] }), () => view.later.removed(name))
  view.focusOn('#search')
}
