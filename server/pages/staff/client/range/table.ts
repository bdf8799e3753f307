import { live } from 'lit/directives/live.js'
import { repeat } from 'lit/directives/repeat.js'
import { html, nothing, type TemplateResult } from 'lit/html.js'
import { COLUMNS, type Column } from '../../../../range-files/columns.ts'
import { sign } from '../from-widget.ts'
import type { Page } from '../state.ts'
import { edit, setRange } from './actions.ts'
import { type DraftRow, type PartList, withCell, withoutRow } from './draft.ts'
import type { Fault } from './faults.ts'

/** Rows shown at once: more would make each key press slow. */
export const ROWS_PER_PAGE = 50

/**
 * The shown list as a table with a field in each cell.
 *
 * @param page - The page
 * @returns The table in a region that scrolls by itself, and its pages
 */
export function rangeTable(page: Page): TemplateResult {
  const { words } = page
  const { list, page: at } = page.state.range
  const rows = shownRows(page)
  const pages = Math.ceil(rows.length / ROWS_PER_PAGE)
  const shown = rows.slice(at * ROWS_PER_PAGE, (at + 1) * ROWS_PER_PAGE)
  const columns = COLUMNS[list]
  return html`
    <div class="scroll" role="region" aria-label=${words.tableOf(words.lists[list])} tabindex="0">
      <table class="parts" @keydown=${(event: KeyboardEvent) => step(event)}>
        <thead><tr>
          ${columns.map(({ name, required }) => html`<th scope="col">${words.columns[name] ?? name}${required ? html`<span class="must" aria-hidden="true"> *</span>` : nothing}</th>`)}
          <th scope="col"><span class="off">${words.rowActions}</span></th>
        </tr></thead>
        <tbody>${repeat(
          shown,
          ({ key }) => key,
          (row) => rowOf(page, list, row),
        )}</tbody>
      </table>
    </div>
    ${rows.length === 0 ? html`<p class="quiet">${words.noRows}</p>` : nothing}
    ${pages > 1 ? pager(page, at, pages) : nothing}`
}

/** The rows of the shown list that the filter lets through. */
export function shownRows(page: Page): readonly DraftRow[] {
  const { draft, list, only, faults } = page.state.range
  const rows = draft?.lists[list] ?? []
  if (only === 'faults') return rows.filter(({ key }) => faults.some((fault) => fault.key === key))
  if (only === 'changes') {
    const before = baseRows(page, list)
    return rows.filter((row) =>
      COLUMNS[list].some(({ name }) => (before.get(row.key)?.cells[name] ?? '') !== (row.cells[name] ?? '')),
    )
  }
  return rows
}

const known = new WeakMap<readonly DraftRow[], ReadonlyMap<string, DraftRow>>()

function baseRows(page: Page, list: PartList): ReadonlyMap<string, DraftRow> {
  const rows = page.state.range.base?.lists[list] ?? []
  const found = known.get(rows) ?? new Map(rows.map((row) => [row.key, row]))
  known.set(rows, found)
  return found
}

function rowOf(page: Page, list: PartList, row: DraftRow): TemplateResult {
  const { words } = page
  const faults = page.state.range.faults.filter((fault) => fault.list === list && fault.key === row.key)
  const before = baseRows(page, list).get(row.key)
  const sku = row.cells.sku ?? ''
  const open = faults.filter(({ edited }) => !edited).length
  const ofRow = faults.filter(({ column }) => column === undefined)
  return html`<tr class=${before === undefined ? 'new' : nothing}>
    ${COLUMNS[list].map((column, index) => {
      const cell = {
        page,
        list,
        row,
        column,
        before: before?.cells[column.name] ?? (before === undefined ? undefined : ''),
        faults: faults.filter((fault) => fault.column === column.name && !fault.edited),
        edited: faults.some((fault) => fault.column === column.name && fault.edited),
      }
      return index === 0
        ? html`<th scope="row">${field(cell)}${before === undefined ? html`<span class="was">${words.newRow}</span>` : nothing}
            ${open === 0 ? nothing : html`<span class="flag">${sign('none-fits')} ${words.faultCount(open)}</span>`}
            ${ofRow.map((fault) => faultText(page, fault, undefined))}</th>`
        : html`<td>${field(cell)}</td>`
    })}
    <td><button type="button" class="bare" aria-label=${words.removeOf(sku)}
      @click=${() => remove(page, list, row)}>${words.remove}</button></td>
  </tr>`
}

function remove(page: Page, list: PartList, row: DraftRow): void {
  const { draft, faults } = page.state.range
  if (draft === undefined) return
  edit(page, withoutRow(draft, list, row.key), { faults: faults.filter(({ key }) => key !== row.key) })
  page.say(page.words.removed(row.cells.sku ?? ''))
  page.focus('.scroll')
}

interface CellView {
  readonly page: Page
  readonly list: PartList
  readonly row: DraftRow
  readonly column: Column
  /** The text in the range in force; undefined where the row is new. */
  readonly before: string | undefined
  readonly faults: readonly Fault[]
  /** Whether there was a fault in what stood here. */
  readonly edited: boolean
}

function field(cell: CellView): TemplateResult {
  const { page, list, row, column, before, faults, edited } = cell
  const { words } = page
  const text = row.cells[column.name] ?? ''
  const id = cellId(list, row.key, column.name)
  const label = `${words.columns[column.name] ?? column.name}, ${row.cells.sku || words.newRow}`
  const changed = before !== undefined && before !== text
  const notes = [...(faults.length > 0 ? [`${id}-fault`] : []), ...(changed ? [`${id}-was`] : [])].join(' ')
  const describedBy = notes === '' ? nothing : notes
  const change = (event: Event) => setCell(cell, (event.target as HTMLInputElement | HTMLSelectElement).value)
  const choices = choicesOf(column, page)
  const control =
    choices === undefined
      ? html`<input id=${id} type="text" size=${sizeOf(column)} aria-label=${label} aria-invalid=${faults.length > 0}
          aria-describedby=${describedBy} inputmode=${column.kind === 'number' || column.kind === 'money' ? 'decimal' : 'text'}
          autocomplete="off" spellcheck="false" data-column=${column.name} class=${column.kind} .value=${live(text)} @input=${change} />`
      : html`<select id=${id} aria-label=${label} aria-invalid=${faults.length > 0} aria-describedby=${describedBy}
          data-column=${column.name} .value=${live(text)} @change=${change}>
          ${column.required && text !== '' ? nothing : html`<option value="" ?selected=${text === ''}></option>`}
          ${text === '' || choices.some(({ value }) => value === text) ? nothing : html`<option value=${text} selected>${text}</option>`}
          ${choices.map(({ value, name }) => html`<option value=${value} ?selected=${value === text}>${name}</option>`)}
        </select>`
  return html`<div class="cell ${faults.length > 0 ? 'bad' : ''} ${changed ? 'changed' : ''}">${control}
    ${faults.length === 0 ? nothing : html`<div id="${id}-fault">${faults.map((fault) => faultText(page, fault, column))}</div>`}
    ${edited && faults.length === 0 ? html`<span class="was">${words.editedCell}</span>` : nothing}
    ${changed ? html`<span class="was" id="${id}-was">${words.was(before)}</span>` : nothing}</div>`
}

function faultText(page: Page, { message }: Fault, column: Column | undefined): TemplateResult {
  return html`<p class="fault">${sign('none-fits')} ${message ?? page.words.emptyCell(column?.about ?? '')}</p>`
}

function choicesOf(
  { kind, words }: Column,
  page: Page,
): readonly { readonly value: string; readonly name: string }[] | undefined {
  if (kind === 'yes-no') {
    return [
      { value: 'yes', name: page.words.yes },
      { value: 'no', name: page.words.no },
    ]
  }
  return kind === 'word'
    ? words?.map((value) => ({ value, name: page.words.values[value] ?? value }))
    : undefined
}

/** Characters that a column's field has room for. */
function sizeOf({ name, kind }: Column): number {
  if (name === 'name') return 34
  if (name === 'sku') return 14
  return kind === 'number' || kind === 'money' ? 7 : 22
}

function setCell({ page, list, row, column }: CellView, text: string): void {
  const { draft, faults } = page.state.range
  if (draft === undefined) return
  const place = { list, key: row.key, column: column.name }
  const isHere = (fault: Fault) =>
    fault.list === list && fault.key === row.key && fault.column === column.name
  edit(page, withCell(draft, place, text), {
    // What was wrong with the old text says nothing of the new one.
    faults: faults.map((fault) => (isHere(fault) ? { ...fault, edited: true } : fault)),
    typing: cellId(list, row.key, column.name),
  })
}

/** Id of a cell's field. */
export function cellId(list: PartList, key: string, column: string): string {
  return `${list}-${Array.from(key, (letter) => letter.codePointAt(0)?.toString(36)).join('')}-${column}`
}

/** Enter and the arrows go to the same column of the row above or below. */
function step(event: KeyboardEvent): void {
  const target = event.target as HTMLElement
  const down = event.key === 'ArrowDown' || (event.key === 'Enter' && !event.shiftKey)
  const up = event.key === 'ArrowUp' || (event.key === 'Enter' && event.shiftKey)
  if (!(target instanceof HTMLInputElement) || !(down || up)) return
  const row = target.closest('tr')
  const next = down ? row?.nextElementSibling : row?.previousElementSibling
  const field = next?.querySelector<HTMLInputElement>(`[data-column="${target.dataset.column}"]`)
  event.preventDefault()
  if (field === null || field === undefined) return
  field.focus()
  field.select()
}

function pager(page: Page, at: number, pages: number): TemplateResult {
  const { words } = page
  const go = (to: number) => setRange(page, { page: Math.min(pages - 1, Math.max(0, to)) })
  return html`<p class="row pager">
    <button type="button" aria-disabled=${at === 0} @click=${() => go(at - 1)}>${words.rowsBefore}</button>
    <span>${words.pageOf(at + 1, pages)}</span>
    <button type="button" aria-disabled=${at >= pages - 1} @click=${() => go(at + 1)}>${words.rowsAfter}</button>
  </p>`
}
