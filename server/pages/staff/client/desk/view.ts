import { live } from 'lit/directives/live.js'
import { repeat } from 'lit/directives/repeat.js'
import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { SizingAnswer } from '../../../../../shared/contract/answers.ts'
import {
  applianceDrawing,
  EMPTY_PLAN,
  encodePlan,
  type PlanLoad,
  parseNumber,
  type SupplyAnswers,
  sign,
} from '../from-widget.ts'
import type { Page } from '../state.ts'
import {
  addTyped,
  changeLoad,
  deskPlan,
  hitsOf,
  nextCaller,
  removeLoad,
  setDesk,
  setSupply,
  setTurns,
  stateWatts,
} from './actions.ts'
import { readAloud } from './read-aloud.ts'
import { readLine } from './typed-line.ts'

/**
 * The phone desk: the three questions on one screen for the keyboard alone, and the answer to read out.
 *
 * @param page - The page
 * @returns The section
 */
export function deskView(page: Page): TemplateResult {
  const { words } = page
  const { plan } = page.state.desk
  const keys = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return
    event.preventDefault()
    page.focus('#answer-heading')
  }
  return html`<div class="desk" @keydown=${keys}>
    <div>
      <h1 id="desk-heading" tabindex="-1">${words.deskHeading}</h1>
      <p class="quiet small">${words.deskLead}</p>
      <section aria-labelledby="what-heading"><h2 id="what-heading">${words.whatHeading}</h2>
        ${searchField(page)}
        ${
          plan.loads.length === 0
            ? html`<p class="quiet">${words.nothingYet}</p>`
            : html`<ul class="things">${repeat(
                plan.loads,
                ({ id }) => id,
                (load) => thing(page, load),
              )}</ul>`
        }
      </section>
      <section aria-labelledby="supply-heading"><h2 id="supply-heading">${words.supplyHeading}</h2>${supplyFields(page)}</section>
    </div>
    ${answerPart(page)}
  </div>`
}

function searchField(page: Page): TemplateResult {
  const { words } = page
  const { typed, hit } = page.state.desk
  const hits = hitsOf(page)
  const open = readLine(typed).query !== ''
  const keys = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey) return
    const move = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
    if (move !== 0 && hits.length > 0) {
      event.preventDefault()
      setDesk(page, { hit: (hit + move + hits.length) % hits.length })
    } else if (event.key === 'Enter') {
      event.preventDefault()
      addTyped(page, hits[hit])
    } else if (event.key === 'Escape') {
      setDesk(page, { typed: '', hit: 0 })
    }
  }
  return html`<div class="search">
    <label for="desk-search">${words.thingLabel}</label>
    <p class="small quiet" id="desk-hint">${words.thingHint}</p>
    <input id="desk-search" type="text" role="combobox" autocomplete="off" spellcheck="false" aria-expanded=${open && hits.length > 0}
      aria-controls="desk-hits" aria-autocomplete="list" aria-describedby="desk-hint"
      aria-activedescendant=${open && hits.length > 0 ? `desk-hit-${hit}` : nothing} .value=${live(typed)}
      @input=${(event: Event) => setDesk(page, { typed: (event.target as HTMLInputElement).value, hit: 0 })} @keydown=${keys} />
    <ul id="desk-hits" class="hits" role="listbox" aria-label=${words.hitsLabel}>${
      open
        ? hits.map(
            (appliance, index) =>
              html`<li id="desk-hit-${index}" role="option" aria-selected=${index === hit}
                @mousedown=${(event: Event) => {
                  event.preventDefault()
                  addTyped(page, appliance)
                }}>${applianceDrawing(appliance)} <span>${appliance.name}</span> <span class="quiet small">${words.upTo(appliance.sizingW)}</span></li>`,
          )
        : nothing
    }</ul>
    ${open && hits.length === 0 ? html`<p class="small">${words.noHits}</p>` : nothing}
  </div>`
}

function thing(page: Page, load: PlanLoad): TemplateResult {
  const { words, formats } = page
  const { setup, desk } = page.state
  const listed = setup?.appliances.find(({ id }) => id === load.appliance)
  const name = load.name ?? listed?.name ?? ''
  const watts = load.rating !== undefined && 'watts' in load.rating ? load.rating.watts : undefined
  const number = (text: string) => parseNumber(text, formats.locale)
  const field = (of: {
    readonly key: string
    readonly label: string
    readonly value: number | undefined
    readonly hint: string
    readonly take: (value: number | undefined) => void
  }) => html`<label>${of.label} <input type="text" inputmode="decimal" size="6" autocomplete="off" id="${load.id}-${of.key}"
      aria-label=${`${of.label}, ${name}`} placeholder=${of.hint} .value=${live(of.value === undefined ? '' : String(of.value))}
      @change=${(event: Event) => of.take(number((event.target as HTMLInputElement).value))} /></label>`
  return html`<li>
    <p class="name">${applianceDrawing(listed)} <b>${name}</b></p>
    <div class="fields">
      ${field({
        key: 'count',
        label: words.howMany,
        value: load.quantity,
        hint: '1',
        take: (value) =>
          changeLoad(page, load.id, { quantity: Math.min(100, Math.max(1, Math.round(value ?? 1))) }),
      })}
      ${field({
        key: 'watts',
        label: listed?.ratedByCookingPower ? words.cookingWatts : words.watts,
        value: watts,
        hint: listed?.ratedByCookingPower ? words.ask : String(listed?.sizingW ?? ''),
        take: (value) =>
          stateWatts(page, load, value === undefined || value <= 0 || value > 100_000 ? undefined : value),
      })}
      ${field({
        key: 'minutes',
        label: words.minutesPerDay,
        value: load.minutesPerDay,
        hint: String(listed?.minutesPerDay ?? ''),
        take: (value) =>
          changeLoad(page, load.id, {
            minutesPerDay: value === undefined || value > 1440 ? undefined : value,
          }),
      })}
      <label>${words.turns} <select id="${load.id}-turns" aria-label=${`${words.turns}, ${name}`}
        @change=${(event: Event) => setTurns(page, load.id, Number((event.target as HTMLSelectElement).value))}>
        ${[0, 1, 2, 3].map((group) => html`<option value=${group} ?selected=${group === (desk.turns[load.id] ?? 0)}>${group === 0 ? words.withTheRest : words.turnGroup(group)}</option>`)}</select></label>
    </div>
    <button type="button" class="bare" aria-label=${words.removeOf(name)} @click=${() => {
      removeLoad(page, load.id)
      page.focus('#desk-search')
    }}>${words.remove}</button></li>`
}

function supplyFields(page: Page): TemplateResult {
  const { words, formats } = page
  const { supply } = page.state.desk.plan
  const choice = <K extends keyof SupplyAnswers>(
    key: K,
    label: string,
    options: readonly { readonly value: SupplyAnswers[K]; readonly name: string }[],
  ) =>
    html`<label>${label} <select id="supply-${key}" @change=${(event: Event) => {
      const chosen = options[(event.target as HTMLSelectElement).selectedIndex]
      if (chosen !== undefined) setSupply(page, { [key]: chosen.value } as Partial<SupplyAnswers>)
    }}>${options.map(({ value, name }) => html`<option ?selected=${value === supply[key]}>${name}</option>`)}</select></label>`
  const figure = (
    key: 'capacityAh' | 'oneWayLengthM',
    label: string,
    bounds: { readonly low: number; readonly high: number },
  ) => html`<label>${label} <input type="text" inputmode="decimal" size="6" autocomplete="off" id="supply-${key}" placeholder=${words.notSure}
    .value=${live(supply[key] === null ? '' : String(supply[key]))} @change=${(event: Event) => {
      const value = parseNumber((event.target as HTMLInputElement).value, formats.locale)
      const fits = value !== undefined && value >= bounds.low && value <= bounds.high
      setSupply(page, { [key]: fits ? value : null })
    }} /></label>`
  const unsure = { value: null, name: words.notSure }
  const voltages = page.state.setup?.shop.supplyVoltages ?? []
  return html`<div class="fields supply">
    ${choice('nominalV', words.voltage, [unsure, ...voltages.map((value) => ({ value, name: words.volts(value) }))])}
    ${choice('battery', words.battery, [unsure, { value: 'have', name: words.hasBattery }, { value: 'need', name: words.needsBattery }])}
    ${choice('chemistry', words.chemistry, [
      unsure,
      ...(['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const).map((value) => ({
        value,
        name: words.values[value] ?? value,
      })),
    ])}
    ${figure('capacityAh', words.capacity, { low: 1, high: 10_000 })}
    ${choice('connection', words.connection, [
      unsure,
      ...(['battery-terminals', 'quick-connector', 'vehicle-socket'] as const).map((value) => ({
        value,
        name: words.values[value] ?? value,
      })),
    ])}
    ${figure('oneWayLengthM', words.cableLength, { low: 0.1, high: 50 })}
  </div>`
}

function answerPart(page: Page): TemplateResult {
  const { words, formats } = page
  const { answer, asking } = page.state.desk
  const headroomFraction = page.state.setup?.shop.headroomFraction ?? 0
  const text = answer === undefined ? undefined : readAloud({ answer, words, formats, headroomFraction })
  return html`<section class="answer" aria-labelledby="answer-heading" aria-busy=${asking}>
    <h2 id="answer-heading" tabindex="-1">${words.answerHeading}</h2>
    ${
      answer === undefined || text === undefined
        ? html`<p class="quiet">${asking ? words.asking : words.noAnswerYet}</p>`
        : told(page, answer, text)
    }
  </section>`
}

function told(page: Page, answer: SizingAnswer, text: string): TemplateResult {
  const { words } = page
  const { shopId, desk } = page.state
  // The guide on the shop's demo page names its part of the fragment after the shop.
  const link = `${location.origin}/shops/${encodeURIComponent(shopId)}#tallywatt-${shopId}=${encodePlan(deskPlan(desk))}`
  const others = answer.cautions.filter(
    ({ severity, code }) => severity !== 'danger' && code !== 'local-rules',
  )
  return html`<p class="verdict">${sign(answer.outcome)} <b>${answer.recommended?.name ?? words.outcomes[answer.outcome]}</b></p>
    <p class="aloud" id="aloud">${text}</p>
    <div class="row">
      <button type="button" class="go" id="copy-link" @click=${() => void copy(page, link, words.linkCopied)}>${words.copyLink}</button>
      <button type="button" id="copy-words" @click=${() => void copy(page, text, words.wordsCopied)}>${words.copyWords}</button>
      <button type="button" @click=${() => nextCaller(page, EMPTY_PLAN)}>${words.nextCaller}</button>
    </div>
    <label class="link">${words.linkLabel} <input type="text" readonly id="caller-link" .value=${link} @focus=${(event: Event) => (event.target as HTMLInputElement).select()} /></label>
    ${answer.whatIfs.length === 0 ? nothing : html`<h3>${words.whatIfs}</h3><ul class="plain ruled">${answer.whatIfs.map(({ message }) => html`<li>${message}</li>`)}</ul>`}
    ${others.length === 0 ? nothing : html`<h3>${words.sayAlso}</h3><ul class="plain ruled">${others.map(({ message, severity }) => html`<li><b>${words.severities[severity]}</b> ${message}</li>`)}</ul>`}`
}

/** Where the browser keeps the clipboard to itself, the text is marked for copying by hand. */
async function copy(page: Page, text: string, done: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text)
    page.say(done)
    page.set({ notice: { kind: 'done', text: done } })
  } catch {
    page.say(page.words.copyByHand)
    page.focus('#caller-link')
  }
}
