import { html, nothing, type TemplateResult } from 'lit/html.js'
import type { RuntimeAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { LaterView } from '../view.ts'
import { findings } from './findings.ts'
import { runCurve } from './run-curve.ts'

/**
 * How long the battery lasts: sentence, curve, a day's plan, recharge; and what battery a day takes.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns A section, or nothing where neither was worked out
 */
export function runtime(view: LaterView, { runtime: given, bank }: SizingAnswer): TemplateResult {
  if (given === null && bank === null) return html``
  const { later } = view
  return html`<section part="runtime"><h3>${later.runtimeHeading}</h3>
    ${given === null ? nothing : lasting(view, given)} ${bank === null ? nothing : html`<p>${bankText(view, bank)}</p>`}</section>`
}

function lasting(view: LaterView, given: RuntimeAnswer): TemplateResult {
  const { later, formats } = view
  const duration = (hours: number) => (hours < 1 / 60 ? later.underMinute : formats.duration(hours * 60))
  return html`<p class="why">${later.lasts(duration(given.hours))} ${later.endsWhy[given.limitedBy]}</p>
    <p class="quiet small">${later.lastsBetween(duration(given.hoursLow), duration(given.hoursHigh))}</p>
    ${given.curve.length > 1 ? runCurve(view, given) : nothing} ${day(view, given)}
    ${findings(given.findings.filter(({ severity }) => severity !== 'note'))}`
}

/**
 * What battery the plan takes.
 *
 * @param view - What is drawn from
 * @param bank - The service's answer
 * @returns One sentence
 */
export function bankText({ later, formats }: LaterView, bank: NonNullable<SizingAnswer['bank']>): string {
  return later.bank(
    later.ampHoursOf(formats.number(bank.neededCapacityAh, 0)),
    later.kinds[bank.chemistry],
    later.volts(formats.number(bank.nominalV)),
    later.days(bank.days),
  )
}

function day({ later, formats }: LaterView, given: RuntimeAnswer): TemplateResult {
  const { day: plan, recharge, daysOfAutonomy } = given
  const dayText =
    plan === undefined
      ? undefined
      : plan.fits
        ? later.dayFits(formats.percent(plan.remainingSocFraction))
        : later.dayShort
  const back =
    recharge === undefined
      ? undefined
      : later.recharge(
          formats.watts(recharge.solarW),
          formats.number(recharge.sunHours),
          formats.number(recharge.chargerA),
          formats.number(recharge.chargerHours),
        )
  return html`${dayText === undefined ? nothing : html`<p>${dayText}</p>`}
    ${daysOfAutonomy === undefined || daysOfAutonomy < 1 ? nothing : html`<p>${later.autonomy(formats.number(daysOfAutonomy))}</p>`}
    ${back === undefined ? nothing : html`<p>${back}</p>`}`
}

/**
 * Cable and fuse of the battery side.
 *
 * @param view - What is drawn from
 * @param answer - The answer
 * @returns A section, or nothing where there is no circuit
 */
export function circuit(view: LaterView, { circuit: given }: SizingAnswer): TemplateResult {
  if (given === null) return html``
  const { later, formats } = view
  const { conductor, fuse } = given
  return html`<section part="circuit"><h3>${later.circuitHeading}</h3>
    <dl class="facts">
      <dt>${later.cable}</dt><dd>${later.cableText(conductor.label, conductor.parallelPairs, formats.length(given.oneWayLengthM), formats.number(conductor.insulationC))}</dd>
      ${fuse === null ? nothing : html`<dt>${later.fuse}</dt><dd>${later.fuseText(formats.number(fuse.ratingA))}</dd>`}
      <dt>${later.worstCase}</dt><dd>${later.amps(formats.number(given.worstCaseA))}</dd>
      <dt>${later.drop}</dt><dd>${later.volts(formats.number(conductor.dropV, 2))}</dd>
    </dl>
    <p class="quiet small">${later.governed[given.governedBy]}</p>
    ${findings(given.findings.filter(({ severity }) => severity !== 'note'))}</section>`
}
