import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { PlanLoad } from '../plan.ts'
import { planAfter } from '../plan-state.ts'
import type { LaterView } from '../view.ts'
import { applianceDrawing } from './drawings.ts'
import { letterKey } from './list.ts'
import { loadBar, nameOf } from './load-bar.ts'

/** Times that people name. [min] */
const PRESETS_MINUTES = [0, 1, 2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720, 1440]

/**
 * The second question: how long a day each is on, and which take turns.
 *
 * @param view - What is drawn from
 * @returns The screen's body
 */
export function schedule(view: LaterView): TemplateResult {
  const { later, plan, totals } = view
  const grouped = new Set(plan.takeTurns.flat())
  const free = plan.loads.filter(({ id }) => !grouped.has(id))
  return html`${loadBar(view, true)}
    <p class="small quiet">${later.energyADay(energyText(view, totals.demand.energyWhPerDay))}</p>
    ${plan.takeTurns.map((group, index) => groupOf(view, group, index))}
    <ul class="things">${free.map((load) => timed(view, load))}</ul>
    ${turns(view, free)}`
}

/**
 * Energy in the unit that keeps it short.
 *
 * @param view - What is drawn from
 * @param energyWh - [Wh]
 * @returns Such as "640 Wh" or "2.4 kWh"
 */
export function energyText({ later, formats }: LaterView, energyWh: number): string {
  if (energyWh < 1000) return later.wattHours(formats.number(energyWh, 0))
  return later.kiloWattHours(formats.number(energyWh / 1000, 1))
}

function groupOf(view: LaterView, group: readonly string[], index: number): TemplateResult {
  const loads = view.plan.loads.filter(({ id }) => group.includes(id))
  return html`<section class="group" aria-label=${view.later.turnsGroup}>
    <div class="row"><h3>${view.later.turnsGroup}</h3>
      <button class="bare" @click=${() => together(view, index)}>${view.later.turnsUndo}</button></div>
    <ul class="things">${loads.map((load) => timed(view, load))}</ul>
  </section>`
}

function together(view: LaterView, group: number): void {
  view.act(planAfter(view.plan, { do: 'run-together', group }), (totals) =>
    view.later.changed(view.formats.watts(totals.demand.runningW)),
  )
  view.focusOn('[data-turns]')
}

function timed(view: LaterView, load: PlanLoad): TemplateResult {
  const { later, ui } = view
  const name = nameOf(view, load.id)
  const listed = view.setup.appliances.find(({ id }) => id === load.appliance)
  const choosing = ui.turns !== undefined && !view.plan.takeTurns.some((group) => group.includes(load.id))
  return html`<li class="thing timed">
    ${
      choosing
        ? html`<label class="tick"><input type="checkbox" .checked=${ui.turns?.includes(load.id) ?? false}
            aria-label=${later.turnsTick(name)} @change=${() => tick(view, load.id)} /></label>`
        : applianceDrawing(listed)
    }
    <div class="name">${letterKey(view.plan.loads.indexOf(load))}<b>${name}</b>${load.quantity > 1 ? ` × ${load.quantity}` : ''}<br />
      <span class="quiet small">${wattsOf(view, load)}</span></div>
    <div class="tools">${minutes(view, load, listed?.minutesPerDay ?? 60, name)}</div>
  </li>`
}

function wattsOf({ totals, formats, later }: LaterView, { id, quantity }: PlanLoad): string {
  const load = totals.demand.loads.find((one) => one.id === id)
  if (load === undefined) return ''
  const starts = load.startingW > load.runningW ? `, ${later.startsWith(formats.watts(load.startingW))}` : ''
  return `${formats.watts(load.runningW * quantity)}${starts}`
}

function minutes(view: LaterView, load: PlanLoad, usual: number, name: string): TemplateResult {
  const { later, formats } = view
  const chosen = load.minutesPerDay
  const presets = PRESETS_MINUTES.filter((preset) => preset !== usual)
  if (chosen !== undefined && !presets.includes(chosen) && chosen !== usual) presets.push(chosen)
  const set = (event: Event) => {
    const value = (event.target as HTMLSelectElement).value
    const minutesPerDay = value === '' ? undefined : Number(value)
    view.act(planAfter(view.plan, { do: 'set-minutes', id: load.id, minutesPerDay }), (totals) =>
      later.energyADay(energyText(view, totals.demand.energyWhPerDay)),
    )
  }
  const text = (value: number) => (value === 0 ? later.neverOn : later.aDay(formats.duration(value)))
  return html`<select aria-label=${later.minutesOf(name)} @change=${set}>
    <option value="" .selected=${chosen === undefined}>${later.usual(formats.duration(usual))}</option>
    ${presets
      .sort((a, b) => a - b)
      .map((value) => html`<option value=${value} .selected=${chosen === value}>${text(value)}</option>`)}
  </select>`
}

function turns(view: LaterView, free: readonly PlanLoad[]): TemplateResult {
  const { later, ui } = view
  if (free.length < 2 && ui.turns === undefined) return html``
  if (ui.turns === undefined) {
    return html`<div class="row turns">${view.plan.takeTurns.length === 0 ? html`<p>${later.allTogether}</p>` : nothing}
      <button data-turns @click=${() => begin(view)}>${later.someTurns}</button></div>`
  }
  return html`<div class="turns notice"><p tabindex="-1" data-lead>${later.turnsLead}</p>
    <div class="row"><button class="go" @click=${() => make(view)}>${later.turnsMake}</button>
    <button @click=${() => leave(view)}>${later.turnsCancel}</button></div></div>`
}

function begin(view: LaterView): void {
  view.ui.turns = []
  view.say(view.later.turnsLead)
  view.redraw()
  view.focusOn('.tick input')
}

function leave(view: LaterView): void {
  view.ui.turns = undefined
  view.redraw()
  view.focusOn('[data-turns]')
}

function tick(view: LaterView, id: string): void {
  const ticked = view.ui.turns ?? []
  view.ui.turns = ticked.includes(id) ? ticked.filter((one) => one !== id) : [...ticked, id]
  view.redraw()
}

function make(view: LaterView): void {
  const ids = view.ui.turns ?? []
  if (ids.length < 2) {
    view.say(view.later.turnsTooFew)
    return
  }
  const names = view.formats.list(ids.map((id) => nameOf(view, id)))
  view.ui.turns = undefined
  view.act(planAfter(view.plan, { do: 'take-turns', ids }), (totals) =>
    view.later.turnsMade(names, view.formats.watts(totals.demand.runningW)),
  )
  view.focusOn('.group button')
}
