import { html, nothing, type TemplateResult } from 'lit/html.js'
import { COLUMNS } from '../../../../range-files/columns.ts'
import { sign } from '../from-widget.ts'
import type { Page } from '../state.ts'
import {
  checkDraft,
  discard,
  download,
  edit,
  isEdited,
  keepEdits,
  publish,
  setRange,
  takeFile,
  takeTheirs,
  undo,
} from './actions.ts'
import { PART_LISTS, type PartList, withNewRow } from './draft.ts'
import { changesList, effectSection, isNoChange } from './effect.ts'
import type { Fault } from './faults.ts'
import { cellId, ROWS_PER_PAGE, rangeTable } from './table.ts'

/**
 * The range: its lists as tables, files in and out, faults, effect, publishing.
 *
 * @param page - The page
 * @returns The section
 */
export function rangeView(page: Page): TemplateResult {
  const { words } = page
  const { draft, etag, conflict, faults, collisions } = page.state.range
  if (draft === undefined) return html`<h1 id="range-heading" tabindex="-1">${words.rangeHeading}</h1>`
  const edited = isEdited(page.state.range)
  return html`<h1 id="range-heading" tabindex="-1">${words.rangeHeading}</h1>
    <p class="quiet">${words.inForce(Number(/^"(\d+)-/.exec(etag)?.[1] ?? 0))} ${edited ? words.edited : words.notEdited}</p>
    ${conflict === undefined ? nothing : conflictNotice(page)}
    ${collisions.length === 0 ? nothing : collisionNotice(page)}
    ${faults.length === 0 ? nothing : faultList(page)}
    ${listTabs(page)} ${tools(page)} ${rangeTable(page)}
    ${outcome(page)}
    ${actions(page, edited)}`
}

function listTabs(page: Page): TemplateResult {
  const { words } = page
  const { draft, list: shown, faults } = page.state.range
  return html`<div class="lists" role="group" aria-label=${words.listsLabel}>${PART_LISTS.map((list) => {
    const bad = faults.filter((fault) => fault.list === list && !fault.edited).length
    return html`<button type="button" aria-pressed=${list === shown} data-list=${list} @click=${() => setRange(page, { list, page: 0 })}>
      ${words.lists[list]} <span class="count">${draft?.lists[list].length}</span>
      ${bad === 0 ? nothing : html`<span class="flag">${sign('none-fits')} ${words.faultCount(bad)}</span>`}</button>`
  })}</div>`
}

function tools(page: Page): TemplateResult {
  const { words } = page
  const { draft, list, only } = page.state.range
  const take = (event: Event) => {
    const input = event.target as HTMLInputElement
    const file = input.files?.[0]
    if (file !== undefined) void takeFile(page, file)
    input.value = ''
  }
  const add = () => {
    if (draft === undefined) return
    const made = withNewRow(draft, list)
    const rows = made.lists[list]
    edit(page, made, { only: 'all', page: Math.floor((rows.length - 1) / ROWS_PER_PAGE) })
    page.focus(`#${cellId(list, rows.at(-1)?.key ?? '', 'sku')}`)
  }
  return html`<div class="row tools">
    <label class="file"><span>${words.upload(words.lists[list])}</span>
      <input type="file" id="upload" accept=".csv,.json,text/csv,application/json" @change=${take} /></label>
    <button type="button" @click=${() => void download(page)}>${words.download}</button>
    <button type="button" data-add @click=${add}>${words.addPart}</button>
    <label class="only">${words.show}
      <select @change=${(event: Event) => setRange(page, { only: (event.target as HTMLSelectElement).value as typeof only, page: 0 })}>
        ${(['all', 'changes', 'faults'] as const).map((each) => html`<option value=${each} ?selected=${each === only}>${words.showOnly[each]}</option>`)}
      </select></label>
  </div>`
}

function faultList(page: Page): TemplateResult {
  const { words } = page
  const { faults } = page.state.range
  const open = faults.filter(({ edited }) => !edited).length
  return html`<section class="notice bad" aria-labelledby="faults-heading">
    <h2 id="faults-heading" tabindex="-1">${sign('none-fits')} ${open === 0 ? words.noneLeft : words.faultCount(open)}</h2>
    <p>${words.faultsLead}</p>
    <ol class="faults">${faults.map((fault) => html`<li class=${fault.edited ? 'edited' : nothing}>${faultLine(page, fault)}</li>`)}</ol>
  </section>`
}

function faultLine(page: Page, fault: Fault): TemplateResult {
  const { words } = page
  const { list, key, column, line, message } = fault
  const row =
    list === undefined ? undefined : page.state.range.draft?.lists[list].find((each) => each.key === key)
  const about = list && COLUMNS[list].find(({ name }) => name === column)?.about
  const place = words.faultPlace({
    line,
    sku: row?.cells.sku,
    column: column === undefined ? undefined : (words.columns[column] ?? column),
    list: list === undefined ? undefined : words.lists[list],
  })
  const text = fault.edited ? words.editedCell : (message ?? words.emptyCell(about ?? ''))
  if (list === undefined || key === undefined) return html`${place} ${text}`
  return html`<a href="#range" @click=${(event: Event) => {
    event.preventDefault()
    goTo(page, { list, key, column: column ?? 'sku' })
  }}>${place}</a> ${text}`
}

function goTo(
  page: Page,
  at: { readonly list: PartList; readonly key: string; readonly column: string },
): void {
  const rows = page.state.range.draft?.lists[at.list] ?? []
  const place = rows.findIndex(({ key }) => key === at.key)
  setRange(page, { list: at.list, only: 'all', page: Math.max(0, Math.floor(place / ROWS_PER_PAGE)) })
  page.focus(`#${cellId(at.list, at.key, at.column)}`)
}

function conflictNotice(page: Page): TemplateResult {
  const { words } = page
  const { conflict } = page.state.range
  return html`<section class="notice" aria-labelledby="conflict-heading">
    <h2 id="conflict-heading" tabindex="-1">${sign('fits-with-care')} ${words.conflictHeading}</h2>
    <p>${conflict?.detail}</p>
    ${conflict?.changes === undefined ? nothing : html`<h3>${words.theyChanged}</h3>${changesList(page, conflict.changes)}`}
    <p>${words.conflictChoice}</p>
    <div class="row">
      <button type="button" class="go" data-keep @click=${() => void keepEdits(page)}>${words.keepMine}</button>
      <button type="button" @click=${() => void takeTheirs(page)}>${words.dropMine}</button>
    </div></section>`
}

function collisionNotice(page: Page): TemplateResult {
  const { words } = page
  return html`<section class="notice"><h2>${sign('fits-with-care')} ${words.collisionsHeading}</h2>
    <ul class="plain">${page.state.range.collisions.map(
      ({ sku, column }) =>
        html`<li>${words.collision(sku, column === undefined ? undefined : (words.columns[column] ?? column))}</li>`,
    )}</ul></section>`
}

function outcome(page: Page): TemplateResult {
  const { words } = page
  const { checked, draft } = page.state.range
  if (checked === undefined || checked.draft !== draft) return html``
  return html`<section aria-labelledby="changes-heading" class="changes">
    <h2 id="changes-heading" tabindex="-1">${words.changesHeading}</h2>
    ${changesList(page, checked.changes)}
    ${checked.effect === undefined || isNoChange(checked.changes) ? nothing : effectSection(page, checked.effect)}
  </section>`
}

function actions(page: Page, edited: boolean): TemplateResult {
  const { words } = page
  const { before, checked, draft } = page.state.range
  const ready = checked !== undefined && checked.draft === draft && !isNoChange(checked.changes)
  return html`<div class="foot"><div class="row">
    <button type="button" aria-disabled=${before.length === 0} @click=${() => undo(page)}>${words.undo}</button>
    <button type="button" aria-disabled=${!edited} @click=${() => edited && discard(page)}>${words.discard}</button>
    <span class="spring"></span>
    <button type="button" class=${ready ? nothing : 'go'} data-check @click=${() => void checkDraft(page)}>${words.check}</button>
    <button type="button" class=${ready ? 'go' : nothing} data-publish aria-disabled=${!ready}
      aria-describedby="publish-hint" @click=${() => void publish(page)}>${words.publish}</button>
  </div>
  <p class="small quiet" id="publish-hint">${ready ? words.publishReady : words.checkFirst}</p></div>`
}
