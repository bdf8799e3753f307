import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { CoverageReply } from '../../../../shared/contract/coverage.ts'
import type { Stock } from './api.ts'
import { type Sign, sign } from './from-widget.ts'
import type { CoverageState, Page } from './state.ts'

type Plan = CoverageReply['plans'][number]
type Answer = Plan['answers'][number]

/** States of a cell of the map, best first. */
export const CELL_STATES = ['fits', 'fits-with-care', 'over-twice', 'none-fits', 'not-advised'] as const
export type CellState = (typeof CELL_STATES)[number]

const SIGNS: Readonly<Record<CellState, Sign>> = {
  fits: 'fits',
  'fits-with-care': 'fits-with-care',
  'over-twice': 'plus',
  'none-fits': 'none-fits',
  'not-advised': 'not-advised',
}

/**
 * How a cell of the map is marked.
 *
 * @param answer - What the range answers
 * @returns The outcome, or that the unit is over twice the need
 */
export function cellState({ outcome, overTwice }: Pick<Answer, 'outcome' | 'overTwice'>): CellState {
  return overTwice && (outcome === 'fits' || outcome === 'fits-with-care') ? 'over-twice' : outcome
}

function setCoverage(page: Page, change: Partial<CoverageState>): void {
  page.set({ coverage: { ...page.state.coverage, ...change } })
}

/** Reads the coverage of the range in force. */
export async function loadCoverage(page: Page, stock: Stock = page.state.coverage.stock): Promise<void> {
  const reply = await page.during(page.api.coverage(stock))
  if (!reply.ok) return page.failed(reply)
  setCoverage(page, { stock, reply: reply.value })
}

/**
 * What the range can and can't serve: a map of everyday plans by supply voltage, and what stands out in sentences.
 *
 * @param page - The page
 * @returns The section
 */
export function coverageView(page: Page): TemplateResult {
  const { words } = page
  const { reply, stock, only } = page.state.coverage
  const heading = html`<h1 id="coverage-heading" tabindex="-1">${words.coverageHeading}</h1>`
  if (reply === undefined) return heading
  const shown = reply.plans.filter(
    (plan) =>
      only === 'all' ||
      plan.answers.some((answer) => !['fits', 'fits-with-care'].includes(cellState(answer))),
  )
  const kinds = (['combination', 'appliance'] as const).map((kind) => ({
    kind,
    plans: shown.filter((plan) => plan.kind === kind),
    of: reply.plans.filter((plan) => plan.kind === kind),
  }))
  return html`${heading}
    <p>${words.coverageLead}</p>
    <div class="row tools">
      <label class="only">${words.stock} <select @change=${(event: Event) => void loadCoverage(page, (event.target as HTMLSelectElement).value as Stock)}>
        ${(['in-stock', 'all'] as const).map((each) => html`<option value=${each} ?selected=${each === stock}>${words.stocks[each]}</option>`)}</select></label>
      <label class="only">${words.show} <select @change=${(event: Event) => setCoverage(page, { only: (event.target as HTMLSelectElement).value as typeof only })}>
        ${(['all', 'gaps'] as const).map((each) => html`<option value=${each} ?selected=${each === only}>${words.coverageOnly[each]}</option>`)}</select></label>
    </div>
    <ul class="legend" aria-label=${words.legend}>${CELL_STATES.map(
      (state) =>
        html`<li class="state ${state}">${sign(SIGNS[state])} <span>${words.cellStates[state]}</span></li>`,
    )}</ul>
    ${kinds.map(
      ({ kind, plans, of }) => html`<section>
        <h2 id="map-${kind}">${words.planKinds[kind]}</h2>
        ${reply.voltages.map((nominalV) => html`<p class="small">${servedSentence(page, of, nominalV)}</p>`)}
        ${plans.length === 0 ? html`<p>${words.noGaps}</p>` : map(page, plans, { kind, voltages: reply.voltages })}
      </section>`,
    )}
    ${standsOut(page, reply)}`
}

function servedSentence({ words }: Page, plans: readonly Plan[], nominalV: number): string {
  const answers = plans.flatMap((plan) => plan.answers.filter((answer) => answer.nominalV === nominalV))
  const served = answers.filter(({ sku }) => sku !== null).length
  return words.served(nominalV, served, answers.length)
}

function map(
  page: Page,
  plans: readonly Plan[],
  { kind, voltages }: { readonly kind: Plan['kind']; readonly voltages: readonly number[] },
): TemplateResult {
  const { words } = page
  return html`<div class="scroll" role="region" aria-labelledby="map-${kind}" tabindex="0"><table class="map">
    <thead><tr><th scope="col">${words.plan}</th>${voltages.map((nominalV) => html`<th scope="col">${words.volts(nominalV)}</th>`)}</tr></thead>
    <tbody>${plans.map(
      ({ name, answers }) =>
        html`<tr><th scope="row">${name}</th>${voltages.map((nominalV) =>
          cell(
            page,
            answers.find((answer) => answer.nominalV === nominalV),
          ),
        )}</tr>`,
    )}</tbody></table></div>`
}

function cell({ words }: Page, answer: Answer | undefined): TemplateResult {
  if (answer === undefined) return html`<td>${words.notServed}</td>`
  const state = cellState(answer)
  const { sku, continuousW, requiredContinuousW, codes } = answer
  return html`<td class="state ${state}"><div>${sign(SIGNS[state])}<span><b>${words.cellStates[state]}</b>
    <span class="small">${
      sku === null
        ? words.needsBut(requiredContinuousW, codes)
        : words.unitFor(sku, continuousW ?? 0, requiredContinuousW)
    }</span></span></div></td>`
}

function standsOut(page: Page, reply: CoverageReply): TemplateResult {
  const { words } = page
  const names = new Map(reply.plans.map(({ id, name }) => [id, name]))
  const named = (ids: readonly string[]) => ids.map((id) => names.get(id) ?? id)
  const never = reply.units.filter(({ recommended }) => recommended === 0)
  const short = reply.batteries.filter(({ shortPlanIds }) => shortPlanIds.length > 0)
  const part = (id: string, heading: string, none: string, lines: readonly TemplateResult[]) =>
    html`<section><h2 id=${id}>${heading}</h2>
      ${lines.length === 0 ? html`<p>${none}</p>` : html`<ul class="plain ruled">${lines}</ul>`}</section>`
  return html`
    ${part(
      'never',
      words.neverHeading,
      words.neverNone,
      never.map(
        ({ sku, fits, shadowedBy, codes }) =>
          html`<li><b>${sku}</b> ${fits === 0 ? words.fitsNothing(codes) : words.shadowed(fits, shadowedBy)}</li>`,
      ),
    )}
    ${part(
      'over',
      words.overHeading,
      words.overNone,
      reply.gaps.map(
        (gap) =>
          html`<li>${words.gap(gap)} ${fold(words.whichPlans(gap.planIds.length), named(gap.planIds))}</li>`,
      ),
    )}
    ${part(
      'kits',
      words.kitsHeading,
      words.kitsNone,
      reply.kits.map(
        ({ sku, missing, batterySkus }) =>
          html`<li><b>${sku}</b> ${words.kitMissing(missing, batterySkus.length)}${batterySkus.length === 0 ? nothing : fold(words.whichBatteries(batterySkus.length), batterySkus)}</li>`,
      ),
    )}
    ${part(
      'batteries',
      words.batteriesHeading,
      words.batteriesNone,
      short.map(
        ({ sku, nominalV, inSeries, plans, shortPlanIds }) =>
          html`<li>${words.batteryShort({ sku, nominalV, inSeries, plans, short: shortPlanIds.length })} ${fold(words.whichPlans(shortPlanIds.length), named(shortPlanIds))}</li>`,
      ),
    )}`
}

function fold(summary: string, lines: readonly string[]): TemplateResult {
  return html`<details><summary>${summary}</summary><ul class="plain">${lines.map((line) => html`<li>${line}</li>`)}</ul></details>`
}
