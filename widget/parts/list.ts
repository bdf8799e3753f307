import { html, nothing, type TemplateResult } from 'lit/html.js'
import { APPLIANCE_CATEGORIES } from '../../core/loads/vocabulary.ts'
import type { PlanLoad } from '../plan-state.ts'
import { isLater, type View } from '../view.ts'
import { letterOf } from './bar-geometry.ts'
import { addDrawings, applianceDrawing, categoryDrawing, sign } from './drawings.ts'
import { listStyles } from './list-styles.ts'
import { nameOf } from './load-bar.ts'
import { MORE_PATHS } from './more-drawings.ts'
import { add, countOf, edit } from './picker.ts'

/** Sheets that come with this screen. */
export const styles = [listStyles]

addDrawings(MORE_PATHS)

/**
 * What comes below the tiles: a thing of the shopper's own, the kinds to browse, the list so far.
 *
 * @param view - What is drawn from
 * @returns The screen's lower part
 */
export function list(view: View): TemplateResult {
  const { ui } = view
  return html`${ui.editing === 'own' ? editorOf(view, 'own') : nothing} ${ui.browsing ? kinds(view) : nothing} ${things(view)}`
}

function editorOf(view: View, id: string): TemplateResult {
  const screens = view.have('steps')
  if (!isLater(view) || screens === undefined || view.have('rates') === undefined) {
    return html`<p class="quiet">${view.words.loading}</p>`
  }
  return screens.editor(view, id)
}

function kinds(view: View): TemplateResult {
  const { words, ui, setup } = view
  const held = APPLIANCE_CATEGORIES.filter((kind) =>
    setup.appliances.some(({ category }) => category === kind),
  )
  const open = (kind: string) => {
    ui.category = ui.category === kind ? undefined : kind
    view.redraw()
    if (ui.category !== undefined) view.focusOn('.kinds-list button')
  }
  return html`<div class="kinds">
    <ul class="tiles">
      ${held.map(
        (
          kind,
        ) => html`<li><button type="button" class="tile ${kind === ui.category ? 'on' : ''}" aria-expanded=${kind === ui.category}
          @click=${() => open(kind)}>${categoryDrawing(kind)}${words.categories[kind]}</button></li>`,
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
      return html`<li><button type="button" @click=${() => add(view, appliance)}>
        ${applianceDrawing(appliance)}<span class="name">${appliance.name}</span>
        ${count > 0 ? html`<b>× ${count}</b>` : sign('plus')}
      </button></li>`
    })}
  </ul>`
}

function things(view: View): TemplateResult {
  const { words, plan } = view
  if (plan.loads.length === 0) return html``
  return html`<h3 class="label" id="list">${words.yourList}</h3>
    <ul class="things" aria-labelledby="list">${plan.loads.map((load, place) => thing(view, load, place))}</ul>`
}

function thing(view: View, load: PlanLoad, place: number): TemplateResult {
  const { words, ui } = view
  const listed = view.setup.appliances.find(({ id }) => id === load.appliance)
  const name = nameOf(view, load.id)
  const count = (quantity: number) => {
    view.act({ do: 'set-quantity', id: load.id, quantity }, (totals) =>
      words.changed(view.formats.watts(totals.demand.runningW)),
    )
  }
  return html`<li class="thing">
    ${applianceDrawing(listed)}
    <div class="name">${letterKey(place)}<b>${name}</b><br /><span class="quiet small">${powerText(view, load)}</span></div>
    <div class="tools">
      <span class="stepper">
        <button type="button" aria-label=${words.fewer(name)} aria-disabled=${load.quantity <= 1} @click=${() => load.quantity > 1 && count(load.quantity - 1)}>${sign('minus')}</button>
        <span class="many">${load.quantity}</span>
        <button type="button" aria-label=${words.more(name)} @click=${() => count(load.quantity + 1)}>${sign('plus')}</button>
      </span>
      <button type="button" aria-label=${words.powerOf(name)} aria-expanded=${ui.editing === load.id} data-edit=${load.id} @click=${() => edit(view, load.id)}>${words.power}</button>
      <button type="button" class="bare" aria-label=${words.removeOf(name)} @click=${() => remove(view, load.id, name)}>${words.remove}</button>
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

function powerText(view: View, { id, quantity }: PlanLoad): string {
  const { words, formats, totals } = view
  const load = totals.demand.loads.find((one) => one.id === id)
  if (load === undefined) return words.unread
  const watts = `${quantity > 1 ? `${quantity} × ` : ''}${formats.watts(load.runningW)}`
  return load.estimated ? words.estimated(watts) : words.stated(watts)
}

function remove(view: View, id: string, name: string): void {
  view.act({ do: 'remove', ids: [id] }, () => view.words.removed(name))
  view.focusOn('#search')
}
