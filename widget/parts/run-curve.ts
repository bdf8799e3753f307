import { html, svg, type TemplateResult } from 'lit/html.js'
import type { RuntimeAnswer } from '../../shared/contract/answers.ts'
import type { LaterView } from '../view.ts'
import { curveGeometry, pathOf } from './curve-geometry.ts'

const percent = (fraction: number) => `${Math.round(fraction * 1e5) / 1e3}%`

/**
 * The run-time curve: charge left over hours, its end marked and named, the spread of the end as a whisker.
 *
 * @param view - What is drawn from
 * @param runtime - The service's answer
 * @returns One picture with its text
 */
export function runCurve(view: LaterView, runtime: RuntimeAnswer): TemplateResult {
  const { later, formats, rtl } = view
  const curve = curveGeometry(runtime)
  const across = (x: number) => percent(rtl ? 1 - x : x)
  const end = later.ends[runtime.limitedBy]
  const time = formats.duration(runtime.hours * 60)
  const charge = formats.percent(curve.end.y)
  const late = curve.end.x > 0.45
  // The end's name stands under the curve where that leaves room, else at the top, past where the curve fell.
  const low = curve.end.y < 0.3
  const line = pathOf(curve.charge, rtl)
  const floor = pathOf(
    [
      { x: curve.end.x, y: 0 },
      { x: 0, y: 0 },
    ],
    rtl,
  ).replace('M', 'L')
  return html`<svg class="curve" part="run-curve" width="100%" height="15em" role="img"
      aria-label=${later.curveText(time, charge, end)}>
    <defs><pattern id="hatch-curve" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="7" /></pattern></defs>
    <text class="tell" x=${across(0)} y="1em" text-anchor="start">${later.chargeLeft}</text>
    <svg y="1.6em" height="10.4em" width="100%">
      <svg viewBox="0 0 1000 1000" preserveAspectRatio="none" width="100%" height="100%">
        <path d="${line}${floor}Z" fill="url(#hatch-curve)" stroke="none" />
      </svg>
      ${[0, 0.5, 1].map(
        (level) =>
          html`<svg width="100%" height="100%"><line class="grid" x1="0" x2="100%" y1=${percent(1 - level)} y2=${percent(1 - level)} />
            ${level === 0 ? '' : svg`<text class="tell quiet" x=${across(1)} y=${percent(1 - level)} dy="-.35em" text-anchor="end">${formats.percent(level)}</text>`}</svg>`,
      )}
      <svg viewBox="0 0 1000 1000" preserveAspectRatio="none" width="100%" height="100%">
        <path class="trace" d=${line} vector-effect="non-scaling-stroke" />
      </svg>
      <svg width="100%" height="100%">
        <line class="mark" x1=${across(curve.end.x)} x2=${across(curve.end.x)} y1=${percent(1 - curve.end.y)} y2="100%" />
        <line class="mark" x1=${across(curve.lowX)} x2=${across(curve.highX)} y1=${percent(1 - curve.end.y)} y2=${percent(1 - curve.end.y)} />
        <circle class="end" cx=${across(curve.end.x)} cy=${percent(1 - curve.end.y)} r="6" />
        <text class="named" x=${across(curve.end.x)} dx=${late !== rtl ? '-.6em' : '.6em'} y=${low ? '1.5em' : '100%'} dy=${low ? '0' : '-1.9em'} text-anchor=${late ? 'end' : 'start'}>${time}</text>
        <text class="tell" x=${across(curve.end.x)} dx=${late !== rtl ? '-.7em' : '.7em'} y=${low ? '3.1em' : '100%'} dy=${low ? '0' : '-.7em'} text-anchor=${late ? 'end' : 'start'}>${end}, ${charge}</text>
      </svg>
    </svg>
    ${curve.ticks.map(
      ({ hours, x }) => html`<svg width="100%" height="15em">
        <line class="line" x1=${across(x)} x2=${across(x)} y1="12em" y2="12.35em" />
        <text class="tell" x=${across(x)} y="13.6em" text-anchor=${x === 0 ? 'start' : x > 0.93 ? 'end' : 'middle'}>${hours === 0 ? '0' : formats.duration(hours * 60)}</text></svg>`,
    )}
  </svg>`
}
