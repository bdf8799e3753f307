import { html, nothing, svg, type TemplateResult } from 'lit/html.js'
import type { DemandReply } from '../../../../../shared/contract/demand.ts'
import type { DemandState, Page } from '../state.ts'
import { adviceSentences } from './advice.ts'
import { type Bar, barsOf, scaleMarks } from './chart.ts'

function setDemand(page: Page, change: Partial<DemandState>): void {
  page.set({ demand: { ...page.state.demand, ...change } })
}

/** Reads what shoppers asked for in the chosen period. */
export async function loadDemand(page: Page): Promise<void> {
  const { from, to } = page.state.demand
  const reply = await page.during(page.api.demand({ from, to }))
  if (!reply.ok) return page.failed(reply)
  setDemand(page, { reply: reply.value })
  page.say(page.words.requestsInAll(reply.value.requests))
}

/**
 * What shoppers asked for: over time, by thing, and what that means for the range.
 *
 * @param page - The page
 * @returns The section
 */
export function demandView(page: Page): TemplateResult {
  const { words } = page
  const { from, to, reply } = page.state.demand
  const date = (name: 'from' | 'to', label: string, value: string) =>
    html`<label>${label} <input type="date" id="demand-${name}" .value=${value} required
      @change=${(event: Event) => setDemand(page, { [name]: (event.target as HTMLInputElement).value })} /></label>`
  return html`<h1 id="demand-heading" tabindex="-1">${words.demandHeading}</h1>
    <p>${words.demandLead}</p>
    <form class="row tools" @submit=${(event: Event) => {
      event.preventDefault()
      void loadDemand(page)
    }}>${date('from', words.from, from)} ${date('to', words.to, to)} <button>${words.showPeriod}</button></form>
    ${reply === undefined ? nothing : told(page, reply)}`
}

function told(page: Page, reply: DemandReply): TemplateResult {
  const { words, formats } = page
  const { appliances, combinations, units, codes, voltages, unmet } = reply
  return html`
    ${reply.counting ? nothing : html`<p class="notice">${words.notCounting}</p>`}
    <p class="lead">${words.requestsInAll(reply.requests)}</p>
    ${advice(page, reply)}
    <section><h2 id="over-time">${words.overTime}</h2>${overTime(page, reply)}</section>
    <div class="counts">
    ${counts(page, 'outcomes', reply.outcomes, ({ call, outcome }) => `${words.calls[call]}: ${words.outcomes[outcome]}`)}
    ${counts(page, 'unmet', unmet, ({ nominalV, continuousW, surgeW, waveform, cause }) => words.unmet({ nominalV, continuousW, surgeW, waveform, cause }))}
    ${counts(page, 'codes', codes, ({ code }) => words.reasons([code]))}
    ${counts(page, 'appliances', appliances, ({ appliance, name }) => name ?? appliance ?? words.unlisted)}
    ${counts(page, 'combinations', combinations, ({ appliances: ids, withUnlisted }) => formats.list([...ids.map((id) => nameOf(page, id)), ...(withUnlisted ? [words.unlisted] : [])]))}
    ${counts(page, 'units', units, ({ sku, name }) => (name === null ? sku : `${sku}, ${name}`))}
    ${counts(page, 'voltages', voltages, ({ nominalV }) => (nominalV === null ? words.notStated : words.volts(nominalV)))}</div>`
}

function nameOf(page: Page, id: string): string {
  return page.state.setup?.appliances.find((appliance) => appliance.id === id)?.name ?? id
}

function advice(page: Page, reply: DemandReply): TemplateResult {
  const { words } = page
  const { stock, drop, methods } = adviceSentences(reply.advice, words)
  const lines = (list: readonly string[]) => list.map((line) => html`<li>${line}</li>`)
  return html`<section aria-labelledby="advice" class="advice"><h2 id="advice">${words.adviceHeading}</h2>
    <h3>${words.adviceStock}</h3><ul class="plain">${lines(stock)}</ul>
    ${drop.length === 0 ? nothing : html`<h3>${words.adviceDrop}</h3><ul class="plain">${lines(drop)}</ul><p class="small quiet">${words.dropCare}</p>`}
    ${methods.length === 0 ? nothing : html`<details><summary>${words.methodHeading}</summary><ul class="plain">${lines(methods)}</ul></details>`}
  </section>`
}

const OUTCOMES = ['fits', 'fits-with-care', 'none-fits', 'not-advised'] as const

/** The drawing's own units. */
const CHART = { width: 620, height: 200, left: 44, foot: 24, top: 8 } as const

function overTime(page: Page, reply: DemandReply): TemplateResult {
  const { words, formats } = page
  const bars = barsOf(reply)
  const most = Math.max(...bars.map(topOf))
  if (most === 0) return html`<p>${words.noRequests}</p>`
  const marks = scaleMarks(most)
  const end = marks.at(-1) ?? 1
  const plotH = CHART.height - CHART.foot - CHART.top
  const y = (count: number) => CHART.top + plotH * (1 - count / end)
  const slot = (CHART.width - CHART.left) / bars.length
  const day = new Intl.DateTimeFormat(formats.locale, { dateStyle: 'medium', timeZone: 'UTC' })
  const short = new Intl.DateTimeFormat(formats.locale, { day: 'numeric', month: 'short', timeZone: 'UTC' })
  const every = Math.max(1, Math.ceil(bars.length / 6))
  const each = bars[0]?.days ?? 1
  return html`<figure class="chart">
    <ul class="legend" aria-hidden="true">${[...OUTCOMES, 'rest' as const].map((name) => html`<li><svg class="key" viewBox="0 0 16 16"><rect class="k-${name}" x="1" y="1" width="14" height="14" /></svg> ${words.chartKeys[name]}</li>`)}</ul>
    <svg viewBox="0 0 ${CHART.width} ${CHART.height}" role="img" aria-label=${words.chartText(each, bars.length, most)}>
      <defs>
        <pattern id="strokes" width="6" height="6" patternUnits="userSpaceOnUse"><rect class="p-tint" width="6" height="6" /><rect class="p-accent" width="1.2" height="6" /></pattern>
        <pattern id="lines" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="p-paper" width="5" height="5" /><rect class="p-ink" width="1.6" height="5" /></pattern>
        <pattern id="dots" width="5" height="5" patternUnits="userSpaceOnUse"><rect class="p-paper" width="5" height="5" /><circle class="p-ink" cx="2.5" cy="2.5" r="1.2" /></pattern>
      </defs>
      ${marks.map((mark) => svg`<line class="grid" x1=${CHART.left} x2=${CHART.width} y1=${y(mark)} y2=${y(mark)} /><text x=${CHART.left - 6} y=${y(mark)} dy=".35em" text-anchor="end">${formats.number(mark, 0)}</text>`)}
      ${bars.map((bar, index) => barOf(bar, { x: CHART.left + index * slot + slot * 0.12, width: slot * 0.76, y }))}
      ${bars.map((bar, index) => (index % every === 0 ? svg`<text x=${CHART.left + (index + 0.5) * slot} y=${CHART.height - 6} text-anchor=${index === 0 ? 'start' : 'middle'}>${short.format(new Date(bar.day))}</text>` : nothing))}
    </svg>
    <details><summary>${words.asTable}</summary><div class="scroll" role="region" aria-labelledby="over-time" tabindex="0"><table>
      <thead><tr><th scope="col">${each === 1 ? words.day : words.weekFrom}</th><th scope="col">${words.requests}</th>${OUTCOMES.map((name) => html`<th scope="col">${words.outcomes[name]}</th>`)}</tr></thead>
      <tbody>${bars
        .filter((bar) => topOf(bar) > 0)
        .map(
          (bar) =>
            html`<tr><th scope="row">${day.format(new Date(bar.day))}</th><td>${words.atLeast(bar.requests, bar.fewDays)}</td>${OUTCOMES.map((name) => html`<td>${bar.outcomes[name] === undefined ? words.underFive : formats.number(bar.outcomes[name] ?? 0, 0)}</td>`)}</tr>`,
        )}</tbody></table></div></details></figure>`
}

/** Requests that a bar shows: a day with one to four is drawn as one. */
function topOf({ requests, fewDays }: Bar): number {
  return requests + fewDays
}

function barOf(
  bar: Bar,
  { x, width, y }: { readonly x: number; readonly width: number; readonly y: (count: number) => number },
) {
  let from = 0
  const piece = (name: string, count: number) => {
    const start = from
    from += count
    return count === 0
      ? nothing
      : svg`<rect class="k-${name}" x=${x} width=${width} y=${y(from)} height=${y(start) - y(from)} />`
  }
  const told = OUTCOMES.map((name) => piece(name, bar.outcomes[name] ?? 0))
  return svg`${told}${piece('rest', Math.max(0, topOf(bar) - from))}`
}

interface Counts<T> {
  readonly entries: readonly T[]
  readonly others: number
}

/** Rows shown before the rest is folded away. */
const FIRST_ROWS = 12

function counts<T extends { readonly count: number }>(
  page: Page,
  name: keyof Page['words']['counted'],
  { entries, others }: Counts<T>,
  label: (entry: T) => string,
): TemplateResult {
  const { words } = page
  const most = Math.max(1, ...entries.map(({ count }) => count))
  const id = `count-${name}`
  const table = (
    rows: readonly T[],
  ) => html`<div class="scroll" role="region" aria-labelledby=${id} tabindex="0"><table class="bars">
    <thead><tr><th scope="col">${words.what}</th><th scope="col">${words.requests}</th><td aria-hidden="true"></td></tr></thead>
    <tbody>${rows.map(
      (entry) => html`<tr><th scope="row">${label(entry)}</th><td>${page.formats.number(entry.count, 0)}</td>
        <td aria-hidden="true"><svg viewBox="0 0 100 10" preserveAspectRatio="none"><rect class="k-fits" x="0" y="0" height="10" width=${(100 * entry.count) / most} /></svg></td></tr>`,
    )}</tbody></table></div>`
  return html`<section><h2 id=${id}>${words.counted[name]}</h2>
    ${entries.length === 0 ? html`<p>${words.nothingTold}</p>` : table(entries.slice(0, FIRST_ROWS))}
    ${entries.length <= FIRST_ROWS ? nothing : html`<details><summary>${words.moreRows(entries.length - FIRST_ROWS)}</summary>${table(entries.slice(FIRST_ROWS))}</details>`}
    ${others === 0 ? nothing : html`<p class="small quiet">${words.others(others)}</p>`}</section>`
}
