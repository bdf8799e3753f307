import type { RangeBody } from '../api.ts'
import type { Page, RangeState } from '../state.ts'
import { type Draft, documentOf, draftOf, saysTheSame } from './draft.ts'
import { placedFaults } from './faults.ts'
import { fileText, withCsv, withJson } from './files.ts'
import { rebase } from './rebase.ts'

/** Edits that can be taken back. */
const UNDO_STEPS = 100

/** Changes some of the range section's state. */
export function setRange(page: Page, change: Partial<RangeState>): void {
  page.set({ range: { ...page.state.range, ...change } })
}

/** Whether there are edits that are not in force. */
export function isEdited({ base, draft }: RangeState): boolean {
  return base !== undefined && draft !== undefined && !saysTheSame(base, draft)
}

/** Reads the range in force; edits that are there stay on top of it. */
export async function loadRange(page: Page): Promise<void> {
  const reply = await page.during(page.api.range())
  if (!reply.ok) return page.failed(reply)
  const theirs = draftOf(reply.value)
  const { base, draft } = page.state.range
  const edited = base !== undefined && draft !== undefined && !saysTheSame(base, draft)
  const made = edited ? rebase(draft, base, theirs) : { draft: theirs, collisions: [] }
  setRange(page, {
    base: theirs,
    etag: reply.etag,
    draft: made.draft,
    before: [],
    collisions: made.collisions,
    faults: [],
    checked: undefined,
    conflict: undefined,
  })
}

/** Puts an edited draft in place of the one before; what is typed into one cell is one edit. */
export function edit(page: Page, draft: Draft, change: Partial<RangeState> = {}): void {
  const { range } = page.state
  if (range.draft === undefined || draft === range.draft) return
  const goesOn = change.typing !== undefined && change.typing === range.typing
  const before = goesOn ? range.before : [...range.before, range.draft].slice(-UNDO_STEPS)
  setRange(page, { typing: undefined, draft, before, checked: undefined, ...change })
}

/** Takes the last edit back. */
export function undo(page: Page): void {
  const { before } = page.state.range
  const draft = before.at(-1)
  if (draft === undefined) return
  setRange(page, { draft, before: before.slice(0, -1), typing: undefined, checked: undefined, faults: [] })
  page.say(page.words.undone)
}

/** Goes back to the range in force. */
export function discard(page: Page): void {
  const { base } = page.state.range
  if (base === undefined) return
  edit(page, base, { faults: [], conflict: undefined, collisions: [] })
  page.say(page.words.discarded)
}

/** Takes a file in place of the shown list, or of the whole range, and shows its faults at their cells. */
export async function takeFile(page: Page, file: File): Promise<void> {
  const { draft, base, list, etag } = page.state.range
  if (draft === undefined || base === undefined) return
  const bytes = new Uint8Array(await file.arrayBuffer())
  const text = fileText(bytes)
  const isJson = /^\s*[[{]/.test(text)
  const value = isJson ? parsed(text) : undefined
  const taken = isJson ? withJson(draft, base, { list, value }) : withCsv(draft, base, { list, text })
  if (taken === undefined) {
    page.set({ notice: { kind: 'failure', text: page.words.notAFile } })
    return
  }
  edit(page, taken, { faults: [], page: 0, only: 'all', collisions: [] })
  const { document } = documentOf(taken)
  const body: RangeBody = isJson ? { document: asSent(value, document, list) } : { csv: bytes, part: list }
  await check(page, { body, etag, draft: taken })
}

/** What a JSON file makes of the range, as it stands in the file: the service checks that, not the table. */
function asSent(value: unknown, document: Readonly<Record<string, unknown>>, list: string): unknown {
  return Array.isArray(value) ? { ...document, [list]: value } : { ...document, ...(value as object) }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Checks what the table holds. */
export async function checkDraft(page: Page): Promise<void> {
  const { draft, etag } = page.state.range
  if (draft === undefined) return
  await check(page, { body: { document: documentOf(draft).document }, etag, draft })
}

async function check(
  page: Page,
  sent: { readonly body: RangeBody; readonly etag: string; readonly draft: Draft },
): Promise<void> {
  const { draft } = sent
  const { document, faults: own } = documentOf(draft)
  const reply = await page.during(page.api.checkRange(sent.body, sent.etag))
  if (page.state.range.draft !== draft) return
  // The service reads a CSV file by itself and tells of every cell.
  const fromFile = 'csv' in sent.body
  if (!reply.ok && reply.status === 422) {
    return showFaults(page, placedFaults(reply.problem.errors ?? [], draft, fromFile ? [] : own))
  }
  if (!reply.ok && reply.status === 412) return showConflict(page, reply.problem)
  if (!reply.ok) return page.failed(reply)
  if (own.length > 0) return showFaults(page, placedFaults([], draft, own))
  // A CSV file is one list; what is edited in the others counts too.
  if (fromFile) return check(page, { ...sent, body: { document } })
  const effect = await page.during(page.api.effect(document))
  if (page.state.range.draft !== draft) return
  if (!effect.ok) page.failed(effect)
  setRange(page, {
    faults: [],
    typing: undefined,
    only: 'all',
    checked: { draft, changes: reply.value.changes, effect: effect.ok ? effect.value : undefined },
  })
  page.say(page.words.checkedWell)
  page.focus('#changes-heading')
}

function showFaults(page: Page, faults: RangeState['faults']): void {
  setRange(page, { faults, checked: undefined })
  page.say(page.words.faultCount(faults.length))
  page.focus('#faults-heading')
}

function showConflict(page: Page, problem: { detail?: string; changes?: unknown }): void {
  setRange(page, {
    conflict: {
      detail: problem.detail ?? '',
      changes: problem.changes as NonNullable<RangeState['conflict']>['changes'],
    },
  })
  page.say(page.words.conflictHeading)
  page.focus('#conflict-heading')
}

/** Puts the checked draft in force, unless somebody else has been faster: then the edits stay. */
export async function publish(page: Page): Promise<void> {
  const { draft, checked, etag } = page.state.range
  if (draft === undefined || checked?.draft !== draft) {
    page.say(page.words.checkFirst)
    return
  }
  const reply = await page.during(page.api.publish(documentOf(draft).document, etag))
  if (!reply.ok && reply.status === 412) return showConflict(page, reply.problem)
  if (!reply.ok && reply.status === 422) {
    return showFaults(page, placedFaults(reply.problem.errors ?? [], draft))
  }
  if (!reply.ok) return page.failed(reply)
  const text = reply.value.written
    ? page.words.published(reply.value.version)
    : page.words.nothingToPublish(reply.value.version)
  forget(page)
  await loadRange(page)
  page.set({ notice: { kind: 'done', text } })
  page.say(text)
  page.focus('#notice')
}

/** Drops edits and everything that was read of older versions. */
export function forget(page: Page): void {
  setRange(page, { base: undefined, draft: undefined, before: [], checked: undefined, collisions: [] })
  page.set({
    history: { versions: undefined, nextBefore: null, look: undefined },
    coverage: { ...page.state.coverage, reply: undefined },
    demand: { ...page.state.demand, reply: undefined },
  })
}

/** Reads what others have put in force and keeps the edits on top of it. */
export async function keepEdits(page: Page): Promise<void> {
  await loadRange(page)
  page.say(page.words.editsKept(page.state.range.collisions.length))
  page.focus('#range-heading')
}

/** Reads what others have put in force and drops the edits. */
export async function takeTheirs(page: Page): Promise<void> {
  forget(page)
  await loadRange(page)
  page.say(page.words.discarded)
  page.focus('#range-heading')
}

/** Saves the shown list of the range in force as a file. */
export async function download(page: Page): Promise<void> {
  const { list } = page.state.range
  const reply = await page.during(page.api.rangeCsv(list))
  if (!reply.ok) return page.failed(reply)
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob(['\uFEFF', reply.value], { type: 'text/csv;charset=utf-8' }))
  link.download = `${page.state.shopId}-${list}.csv`
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}
