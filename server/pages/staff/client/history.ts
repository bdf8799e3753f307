import { html, nothing, type TemplateResult } from 'lit/html.js'
import { forget, loadRange } from './range/actions.ts'
import { changesList, effectSection, isNoChange } from './range/effect.ts'
import type { HistoryState, Page } from './state.ts'

function setHistory(page: Page, change: Partial<HistoryState>): void {
  page.set({ history: { ...page.state.history, ...change } })
}

/** Reads the newest versions, or those before a number. */
export async function loadHistory(page: Page, before?: number): Promise<void> {
  const reply = await page.during(page.api.versions(before))
  if (!reply.ok) return page.failed(reply)
  const { versions, nextBefore } = reply.value
  const shown = before === undefined ? [] : (page.state.history.versions ?? [])
  setHistory(page, { versions: [...shown, ...versions], nextBefore })
}

/** Shows what putting an old version in force again would change. */
async function look(page: Page, version: number): Promise<void> {
  const { api } = page
  const old = await page.during(api.version(version))
  if (!old.ok) return page.failed(old)
  const checked = await page.during(api.checkRange({ document: old.value }, '*'))
  if (!checked.ok) return page.failed(checked)
  const effect = await page.during(api.effect(old.value))
  if (!effect.ok) page.failed(effect)
  setHistory(page, {
    look: { version, changes: checked.value.changes, effect: effect.ok ? effect.value : undefined },
  })
  page.focus('#look-heading')
}

async function restore(page: Page, version: number): Promise<void> {
  const { words } = page
  const reply = await page.during(page.api.restore(version, page.state.range.etag))
  if (!reply.ok && reply.status === 412) {
    await loadRange(page)
    await loadHistory(page)
    page.set({ notice: { kind: 'failure', text: words.restoreStale(reply.problem.detail ?? '') } })
    return
  }
  if (!reply.ok) return page.failed(reply)
  const text = words.restored(version, reply.value.version)
  const kept = page.state.range
  forget(page)
  // Edits that are not in force stay, on top of the restored version.
  page.set({ range: kept })
  await loadRange(page)
  await loadHistory(page)
  page.set({ notice: { kind: 'done', text } })
  page.say(text)
  page.focus('#notice')
}

/**
 * The versions of the range, what restoring one would change, and restoring it.
 *
 * @param page - The page
 * @returns The section
 */
export function historyView(page: Page): TemplateResult {
  const { words, formats } = page
  const { versions, nextBefore, look: shown } = page.state.history
  const time = new Intl.DateTimeFormat(formats.locale, { dateStyle: 'medium', timeStyle: 'short' })
  return html`<h1 id="history-heading" tabindex="-1">${words.historyHeading}</h1>
    ${
      shown === undefined
        ? nothing
        : html`<section class="changes" aria-labelledby="look-heading">
            <h2 id="look-heading" tabindex="-1">${words.lookHeading(shown.version)}</h2>
            ${changesList(page, shown.changes)}
            ${shown.effect === undefined || isNoChange(shown.changes) ? nothing : effectSection(page, shown.effect)}
            <div class="row">
              ${isNoChange(shown.changes) ? nothing : html`<button type="button" class="go" data-restore @click=${() => void restore(page, shown.version)}>${words.restore(shown.version)}</button>`}
              <button type="button" @click=${() => setHistory(page, { look: undefined })}>${words.close}</button>
            </div></section>`
    }
    ${
      versions === undefined
        ? nothing
        : html`<div class="scroll" role="region" aria-labelledby="history-heading" tabindex="0"><table class="versions">
      <thead><tr><th scope="col">${words.version}</th><th scope="col">${words.madeAt}</th><th scope="col">${words.madeBy}</th>
        <th scope="col">${words.madeHow}</th><th scope="col"><span class="off">${words.rowActions}</span></th></tr></thead>
      <tbody>${versions.map(
        ({ version, createdAt, author, origin, restoredFrom, inForce }) => html`<tr>
          <th scope="row">${version}</th><td><time datetime=${createdAt}>${time.format(new Date(createdAt))}</time></td>
          <td>${author}</td><td>${words.origins[origin]}${restoredFrom === null ? nothing : html` ${words.fromVersion(restoredFrom)}`}</td>
          <td>${
            inForce
              ? html`<b>${words.nowInForce}</b>`
              : html`<button type="button" data-look=${version} @click=${() => void look(page, version)}>${words.look(version)}</button>`
          }</td></tr>`,
      )}</tbody></table></div>`
    }
    ${nextBefore === null ? nothing : html`<p><button type="button" @click=${() => void loadHistory(page, nextBefore)}>${words.older}</button></p>`}`
}
