import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { FindingAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { AnswerHost } from '../guide/answer-host.ts'
import type { LaterWords } from '../i18n/en-later.ts'
import { kitSum } from '../kit-sum.ts'
import type { PlanState } from '../plan.ts'
import type { LaterView } from '../view.ts'
import { mine, remarks, units } from './answer-details.ts'
import { kit } from './answer-kit.ts'
import { bankText, circuit, runtime } from './answer-power.ts'
import { type Sign, sign } from './drawings.ts'
import { findings } from './findings.ts'
import { loadBar, nameOf } from './load-bar.ts'
import { unitDrawing } from './unit-drawing.ts'
import { whatIfs } from './what-ifs.ts'

/**
 * The answer: the unit and why, the bar, run time, cable and fuse, kit, what-ifs, cautions, the working.
 *
 * @param view - What is drawn from
 * @param host - The answer and what can be done with it
 * @returns The screen
 */
export function answer(view: LaterView, host: AnswerHost): TemplateResult {
  const { later, formats } = view
  const { answer: given } = host
  const unit = given.recommended
  return html`
    ${host.changed ? changedNotice(view, host) : nothing}
    ${headline(view, given)} ${battery(view, given)}
    ${unit === null ? noUnit(view, given) : recommended(view, given)}
    ${
      unit === null
        ? loadBar(view, true)
        : html`${loadBar(view, true, { watts: unit.continuousW, label: later.limitLabel(formats.watts(unit.continuousW)) })}
            <p class="small">${startingText(view, given, unit.surgeW)}</p>`
    }
    ${doing(view, host)} ${host.whole ? rest(view, host) : nothing}`
}

/** What stands below the first screenful: drawn after that is seen. */
function rest(view: LaterView, host: AnswerHost): TemplateResult {
  const { answer: given } = host
  const none = given.recommended === null
  return html`${none ? whatIfs(view, host) : nothing} ${mine(view, host)} ${runtime(view, given)} ${circuit(view, given)}
    ${kit(view, host)} ${none ? nothing : whatIfs(view, host)} ${units(view, given)} ${remarks(view, host)}
    <div class="row doing"><button class="bare" @click=${() => host.startAgain()}>${view.later.startAgain}</button></div>`
}

/**
 * A state in a word with its mark.
 *
 * @param word - The word
 * @param outcome - Which mark
 * @returns One line
 */
export function verdict(word: string, outcome: Sign): TemplateResult {
  return html`<p class="verdict" part="verdict">${sign(outcome)} ${word}</p>`
}

/**
 * What fails with the battery where the unit itself fits.
 *
 * @param answer - The answer
 * @returns The gravest finding, or undefined
 */
export function batteryFault({ recommended, runtime }: SizingAnswer): FindingAnswer | undefined {
  return recommended === null ? undefined : runtime?.findings.find(({ severity }) => severity === 'fail')
}

/**
 * The answer in a few words.
 *
 * @param later - Words
 * @param answer - The answer
 * @returns One sentence, or two where the battery is what fails
 */
export function headlineText(later: LaterWords, answer: SizingAnswer): string {
  return batteryFault(answer) === undefined ? later.outcomes[answer.outcome] : later.batteryFails
}

/**
 * The same with its mark.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns One line
 */
export function headline({ later }: LaterView, answer: SizingAnswer): TemplateResult {
  const mark = batteryFault(answer) === undefined ? answer.outcome : 'none-fits'
  return verdict(headlineText(later, answer), mark)
}

/**
 * Why the battery does not do, and which would.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns A notice, or nothing where the battery does or none is stated
 */
export function battery(view: LaterView, answer: SizingAnswer): TemplateResult {
  const { later, formats, setup } = view
  const fault = batteryFault(answer)
  if (fault === undefined) return html``
  const { bank } = answer
  const line = answer.kit.find(({ role }) => role === 'battery')
  const { name, price, quantity = 1 } = line ?? {}
  const counted = `${quantity > 1 ? `${quantity} × ` : ''}${name}`
  return html`<div class="notice" part="battery"><p>${fault.message}</p>
    ${bank === null ? nothing : html`<p>${bankText(view, bank)}</p>`}
    ${name === undefined || line === undefined || price === undefined ? nothing : html`<p><b>${later.batteryDoes(counted, formats.money(kitSum([line]), setup.shop.currency))}</b></p>`}</div>`
}

function changedNotice(view: LaterView, host: AnswerHost): TemplateResult {
  const { later } = view
  return html`<div class="notice"><p>${later.whatIfShown}</p>${twoUnits(view, host)}
    <button @click=${() => host.undo()}>${sign('undo')} ${later.whatIfUndo}</button></div>`
}

/** Of a plan split over two units one answer is shown at a time. */
function twoUnits(
  { later, formats, plan, setup }: LaterView,
  host: AnswerHost,
): TemplateResult | typeof nothing {
  if (host.parts.length === 0) return nothing
  const names = (part: PlanState) => part.loads.map(({ id }) => nameOf({ plan: part, setup }, id))
  return html`<p>${later.whatIfSplit}</p><p class="row">${host.parts.map(
    (part) =>
      html`<button class=${part === plan ? 'go' : ''} aria-pressed=${part === plan} @click=${() => host.tryOut(host.parts, part)}>${formats.list(names(part))}</button>`,
  )}</p>`
}

function recommended(view: LaterView, given: SizingAnswer): TemplateResult {
  const { later, formats } = view
  const unit = given.recommended
  if (unit === null) return html``
  return html`<div class="unit" part="unit">
      ${unit.imageUrl === undefined ? unitDrawing() : html`<img class="unit-picture" src=${unit.imageUrl} alt="" width="144" height="108" />`}
      <div>
        <h2 tabindex="-1">${unit.name}</h2>
        <p class="price">${formats.money(unit.price, unit.currency)}</p>
        <dl><dt>${later.continuous}</dt><dd>${formats.watts(unit.continuousW)}</dd><dt>${later.peak}</dt><dd>${formats.watts(unit.surgeW)}</dd></dl>
        ${unit.url === undefined ? nothing : html`<a href=${unit.url} part="unit-link">${later.seeUnit}</a>`}
      </div>
    </div>
    <p class="why">${whyText(view, given)}</p>
    ${findings(unit.findings.filter(({ severity }) => severity !== 'note'))}`
}

function whyText({ later, formats, setup, plan }: LaterView, { demand }: SizingAnswer): string {
  // Of a unit that is tried out it is not true that it is the smallest.
  if (plan.sku !== undefined) {
    return later.whyNone(formats.watts(demand.runningW), formats.watts(demand.requiredContinuousW))
  }
  const say = plan.takeTurns.length > 0 ? later.whyTurns : later.why
  return say(
    formats.watts(demand.runningW),
    formats.percent(setup.shop.headroomFraction),
    formats.watts(demand.requiredContinuousW),
  )
}

function noUnit(view: LaterView, given: SizingAnswer): TemplateResult {
  const { later, formats, setup } = view
  const { demand } = given
  const closest = given.considered.at(-1)
  const reasons = (closest?.findings ?? []).filter(({ severity }) => severity === 'fail')
  return html`<div class="head"><h2 tabindex="-1">${later.answerHeading}</h2></div>
    <p class="why">${later.whyNone(formats.watts(demand.runningW), formats.watts(demand.requiredContinuousW))}</p>
    ${findings(reasons)}
    ${setup.shop.contactUrl === undefined ? nothing : html`<p><a class="contact" href=${setup.shop.contactUrl}>${later.contact}</a></p>`}`
}

/**
 * Starting power against the unit's peak, in one sentence.
 *
 * @param view - What is drawn from
 * @param given - Answer with its demand
 * @param surgeW - The unit's peak. [W]
 * @returns The sentence
 */
export function startingText(
  { later, formats }: LaterView,
  { demand }: Pick<SizingAnswer, 'demand'>,
  surgeW: number,
): string {
  const surge = formats.watts(surgeW)
  if (demand.startingW <= demand.runningW) return later.startingNone(surge)
  return later.startingAgainst(
    formats.watts(demand.startingW),
    `${formats.number(demand.startingS)} s`,
    surge,
  )
}

function doing({ later }: LaterView, host: AnswerHost): TemplateResult {
  const { link, answer: given } = host
  const lines = [...host.taken]
    .sort((a, b) => a - b)
    .flatMap((place) => {
      const { sku, quantity } = given.kit[place] ?? {}
      return sku === undefined || quantity === undefined ? [] : [{ sku, quantity }]
    })
  const unit = given.recommended
  const cart = given.kit.length > 0 || unit === null ? lines : [{ sku: unit.sku, quantity: 1 }]
  return html`<div class="row doing">
      ${unit === null || host.withoutCart ? nothing : html`<button class="go" part="add-to-cart" @click=${() => host.addToCart(cart)}>${later.addToCart}</button>`}
      <button part="copy-link" @click=${() => host.copyLink()}>${later.copyLink}</button>
      <button part="print" @click=${() => host.print()}>${later.print}</button>
    </div>
    ${link === undefined ? nothing : html`<label class="link">${later.linkShown}<input id="link" type="text" readonly .value=${link} @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()} /></label>`}`
}
