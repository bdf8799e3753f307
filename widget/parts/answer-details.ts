import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { SizingAnswer } from '../../shared/contract/answers.ts'
import type { AnswerHost } from '../guide/answer-host.ts'
import type { Step } from '../guide/guide-host.ts'
import type { LaterView } from '../view.ts'
import { sign } from './drawings.ts'
import { nameOf } from './load-bar.ts'

/**
 * The shopper's answers, each with a way back to it.
 *
 * @param view - What is drawn from
 * @param host - Where to go
 * @returns A section
 */
export function mine(view: LaterView, host: AnswerHost): TemplateResult {
  const { later, plan, formats } = view
  const things = plan.loads.map(
    ({ id, quantity }) => `${quantity > 1 ? `${quantity} × ` : ''}${nameOf(view, id)}`,
  )
  const turns = plan.takeTurns.map(
    (group) => `${later.turnsGroup}: ${formats.list(group.map((id) => nameOf(view, id)))}`,
  )
  const line = (text: string, step: Step, label: string) =>
    html`<li><span>${text}</span><button class="bare" aria-label=${label} @click=${() => host.go(step)}>${later.change}</button></li>`
  return html`<section class="mine" part="answers"><h3>${later.answersHeading}</h3><ul>
    ${line(formats.list(things), 'pick', later.changePick)}
    ${line(turns.length > 0 ? turns.join('; ') : later.allTogether, 'when', later.changeWhen)}
    ${line(supplyText(view), 'supply', later.changeSupply)}
  </ul></section>`
}

function supplyText({ later, plan, formats }: LaterView): string {
  const { nominalV, battery, chemistry, capacityAh, connection, oneWayLengthM } = plan.supply
  const known = [
    nominalV === null ? [] : later.volts(formats.number(nominalV)),
    battery === 'need' ? later.batteryNeed : [],
    battery === 'have' && chemistry !== null ? later.kinds[chemistry] : [],
    battery === 'have' && capacityAh !== null ? later.ampHoursOf(formats.number(capacityAh)) : [],
    connection === null ? [] : later.connections[connection],
    oneWayLengthM === null ? [] : formats.length(oneWayLengthM),
  ].flat()
  return known.length === 0 ? `${later.battery}: ${later.notSure}` : known.join(', ')
}

/**
 * The units that were passed over, each with why.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns A folded list
 */
export function units(
  { later, formats }: LaterView,
  { considered, recommended, consideredTotal }: SizingAnswer,
): TemplateResult {
  const passed = considered.filter(({ sku }) => sku !== recommended?.sku)
  if (passed.length === 0) return html``
  const count = recommended === null ? consideredTotal : consideredTotal - 1
  return html`<details part="passed-over"><summary>${later.passedHeading(count)} ${sign('open')}</summary>
    <ul class="plain">
      ${passed.map(({ name, continuousW, findings }) => {
        const reasons = findings.filter(({ severity }) => severity !== 'note').map(({ message }) => message)
        return html`<li><b>${name}</b>, ${formats.watts(continuousW)}<br /><span class="quiet small">${reasons.join(' ')}</span></li>`
      })}
    </ul></details>`
}

/**
 * Cautions, assumptions and the working.
 *
 * @param view - What is drawn from
 * @param host - The answer, and how to fetch the working
 * @returns Sections
 */
export function remarks(view: LaterView, host: AnswerHost): TemplateResult {
  const { later } = view
  return html`${cautions(view, host.answer)} ${assumptions(view, [...pageAssumptions(view, host), ...assumed(view, host.answer)])}
    <details part="working" @toggle=${(event: Event) => (event.target as HTMLDetailsElement).open && host.fetchWorking()}>
      <summary>${later.workingHeading} ${sign('open')}</summary>${working(view, host)}</details>`
}

/**
 * Cautions, gravest first, each with its signal word.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns A section, or nothing
 */
export function cautions({ later }: LaterView, answer: Pick<SizingAnswer, 'cautions'>): TemplateResult {
  if (answer.cautions.length === 0) return html``
  return html`<section part="cautions"><h3>${later.cautionsHeading}</h3><ul class="cautions">
    ${answer.cautions.map(({ severity, message }) => html`<li>${sign('fits-with-care')}<span><b>${later.severities[severity]}.</b> ${message}</span></li>`)}
  </ul></section>`
}

/**
 * What was assumed, folded.
 *
 * @param view - What is drawn from
 * @param sentences - One each
 * @returns A folded list, or nothing
 */
export function assumptions({ later }: LaterView, sentences: readonly string[]): TemplateResult {
  if (sentences.length === 0) return html``
  return html`<details part="assumptions"><summary>${later.assumedHeading} ${sign('open')}</summary>
    <ul class="plain">${sentences.map((sentence) => html`<li>${sentence}</li>`)}</ul></details>`
}

/**
 * The service's assumptions, each led by the load that it is about.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns Sentences
 */
export function assumed(view: LaterView, answer: Pick<SizingAnswer, 'assumptions'>): readonly string[] {
  return answer.assumptions.map(({ message, loadIds }) => {
    const names = (loadIds ?? []).map((id) => nameOf(view, id)).filter((name) => name !== '')
    return names.length === 0 ? message : `${view.formats.list(names)}: ${message}`
  })
}

function pageAssumptions({ later, formats }: LaterView, { planned }: AnswerHost): readonly string[] {
  const { nominalV, chemistry, capacityAh } = planned.assumed
  return [
    nominalV === undefined ? [] : later.assumedVoltage(later.volts(formats.number(nominalV))),
    chemistry === undefined ? [] : later.assumedKind(later.kinds[chemistry]),
    capacityAh === undefined ? [] : later.assumedCapacity(later.ampHoursOf(formats.number(capacityAh))),
  ].flat()
}

function working(view: LaterView, host: AnswerHost): TemplateResult {
  const { later } = view
  const { working: steps } = host
  if (steps === undefined) return html``
  if (steps === 'asked') return html`<p class="quiet">${later.workingWait}</p>`
  if (steps.length === 0) return html`<p class="quiet">${later.workingEmpty}</p>`
  return html`<div class="working" tabindex="0" role="group" aria-label=${later.workingHeading}><table>
    <tr><th scope="col">${later.step}</th><th scope="col">${later.values}</th><th scope="col">${later.source}</th></tr>
    ${steps.map(
      ({
        title,
        loadId,
        shown,
        sourceDocument,
      }) => html`<tr><td>${loadId === undefined ? title : `${nameOf(view, loadId)}: ${title}`}</td>
        <td>${shown.map(({ name, text }) => html`${name} = ${text}<br />`)}</td><td>${sourceDocument ?? nothing}</td></tr>`,
    )}
  </table></div>`
}
