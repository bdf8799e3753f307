import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { CoveragePreview, CoverageReply } from '../../../../../shared/contract/coverage.ts'
import type { RangeChanges } from '../../../../../shared/contract/range-admin.ts'
import { sign } from '../from-widget.ts'
import type { Page } from '../state.ts'

type Answer = CoverageReply['plans'][number]['answers'][number]

/** Whether two ranges say the same. */
export function isNoChange(changes: RangeChanges): boolean {
  return Object.values(changes).every((list) => list.length === 0)
}

/**
 * What differs between two ranges, part by part.
 *
 * @param page - The page
 * @param changes - As the service tells them
 * @returns A list of sentences
 */
export function changesList({ words }: Page, changes: RangeChanges): TemplateResult {
  if (isNoChange(changes)) return html`<p>${words.noChanges}</p>`
  const { added, removed, changed, reordered, shop } = changes
  return html`<ul class="plain">
    ${added.map(({ list, sku, name }) => html`<li>${words.addedPart(words.list[list], sku, name)}</li>`)}
    ${removed.map(({ list, sku, name }) => html`<li>${words.removedPart(words.list[list], sku, name)}</li>`)}
    ${changed.map(
      ({ sku, name, fields }) =>
        html`<li>${words.changedPart(sku, name)}
          <ul class="plain">${fields.map(({ field, from, to }) => html`<li>${words.changedField(words.columns[field] ?? field, from, to)}</li>`)}</ul></li>`,
    )}
    ${reordered.map((list) => html`<li>${words.reordered(words.lists[list])}</li>`)}
    ${shop.length === 0 ? nothing : html`<li>${words.shopChanged(shop)}</li>`}
  </ul>`
}

/**
 * What a draft changes for shoppers.
 *
 * @param page - The page
 * @param effect - The service's comparison
 * @returns Sentences and a table of the plans that change
 */
export function effectSection(page: Page, effect: CoveragePreview): TemplateResult {
  const { words } = page
  const { combination, appliance } = effect.totals
  const { changed } = effect
  return html`<section aria-labelledby="effect-heading" class="effect">
    <h3 id="effect-heading">${words.effectHeading}</h3>
    <p class="lead" data-effect>${words.effectPlans(combination.changed, combination.plans)}</p>
    <p>${words.effectAppliances(appliance.changed, appliance.plans)}</p>
    ${effect.nowNeverRecommended.length === 0 ? nothing : html`<p>${words.nowNever(effect.nowNeverRecommended)}</p>`}
    ${effect.nowRecommended.length === 0 ? nothing : html`<p>${words.nowChosen(effect.nowRecommended)}</p>`}
    ${
      changed.length === 0
        ? nothing
        : html`<div class="scroll" role="region" aria-label=${words.effectTable} tabindex="0">
            <table>
              <thead><tr><th scope="col">${words.plan}</th><th scope="col">${words.supply}</th>
                <th scope="col">${words.answerNow}</th><th scope="col">${words.answerThen}</th></tr></thead>
              <tbody>${changed.flatMap(({ name, answers }) =>
                answers.map(
                  ({ nominalV, before, after }, index) =>
                    html`<tr>${index === 0 ? html`<th scope="rowgroup" rowspan=${answers.length}>${name}</th>` : nothing}
                      <td>${words.volts(nominalV)}</td><td>${answerText(page, before)}</td><td>${answerText(page, after)}</td></tr>`,
                ),
              )}</tbody>
            </table></div>`
    }
  </section>`
}

/**
 * An answer to an everyday plan in a few words.
 *
 * @param page - The page
 * @param answer - The answer; null where the voltage isn't served
 * @returns A mark and words
 */
export function answerText({ words }: Page, answer: Answer | null): TemplateResult {
  if (answer === null) return html`${words.notServed}`
  const { outcome, sku, continuousW, codes } = answer
  return html`${sign(outcome)} ${
    sku === null
      ? html`${words.outcomes[outcome]}${codes.length === 0 ? nothing : html` <span class="quiet small">${words.reasons(codes)}</span>`}`
      : html`${sku} <span class="quiet small">${words.wattsOf(continuousW ?? 0)}${outcome === 'fits' ? nothing : html`, ${words.outcomes[outcome].toLowerCase()}`}</span>`
  }`
}
