import { html, render, type TemplateResult } from 'lit/html.js'
import type { AnswerHost } from '../guide/answer-host.ts'
import { css } from '../sheet.ts'
import { base } from '../theme.ts'
import type { LaterView } from '../view.ts'
import { battery, headline, startingText } from './answer.ts'
import { assumed, cautions, mine } from './answer-details.ts'
import { kit } from './answer-kit.ts'
import { circuit, runtime } from './answer-power.ts'
import { answerStyles } from './answer-styles.ts'
import { barStyles } from './bar-styles.ts'
import { findings } from './findings.ts'
import { loadBar } from './load-bar.ts'

/** A page of A4 or Letter, ink on white. */
const sheet = css`
  @page { margin: 16mm }
  :root { color-scheme: light }
  body { margin: 0 }
  .base { --paper: #fff; --ink: #000; --quiet: #333; --line: #bbb; --edge: #555; font-size: 10.5pt; padding: 0; max-inline-size: none }
  section, li, tr, svg { break-inside: avoid }
  section { margin-block-start: 1.2em }
  button, .tick, .kit .none { display: none }
  .kit li { grid-template-columns: 1fr auto }
  .curve { font-size: .8em }
  footer { margin-block-start: 1.5em; font-size: .85em }
`

/**
 * Prints the answer by itself: the page around it stays out, since the sheet lives in a frame of its own.
 *
 * @param view - What is drawn from
 * @param host - The answer
 */
export function printSheet(view: LaterView, host: AnswerHost): void {
  const frame = document.createElement('iframe')
  frame.title = view.later.print
  frame.hidden = true
  document.body.append(frame)
  const { contentDocument: inner, contentWindow: window } = frame
  if (inner === null || window === null) return
  inner.title = `${view.setup.shop.name}: ${host.answer.recommended?.name ?? view.later.answerHeading}`
  inner.documentElement.lang = view.formats.locale
  // A sheet belongs to the document that made it, so the frame gets its own copies.
  const Sheet = (window as unknown as { CSSStyleSheet: typeof CSSStyleSheet }).CSSStyleSheet
  inner.adoptedStyleSheets = [base, barStyles, answerStyles, sheet].map(({ text }) => {
    const copy = new Sheet()
    copy.replaceSync(text)
    return copy
  })
  render(page(view, host), inner.body)
  window.addEventListener('afterprint', () => frame.remove())
  window.focus()
  window.print()
}

function page(view: LaterView, host: AnswerHost): TemplateResult {
  const { later, formats, setup } = view
  const { answer } = host
  const unit = answer.recommended
  return html`<div class="base" dir=${view.rtl ? 'rtl' : 'ltr'}>
    ${headline(view, answer)} ${battery(view, answer)}
    <h2>${unit?.name ?? later.answerHeading}</h2>
    ${unit === null ? html`` : html`<p>${unit.sku} · ${formats.money(unit.price, unit.currency)} · ${later.continuous} ${formats.watts(unit.continuousW)} · ${later.peak} ${formats.watts(unit.surgeW)}</p>${findings(unit.findings.filter(({ severity }) => severity !== 'note'))}`}
    ${unit === null ? loadBar(view, true) : loadBar(view, true, { watts: unit.continuousW, label: later.limitLabel(formats.watts(unit.continuousW)) })}
    ${unit === null ? html`` : html`<p>${startingText(view, answer, unit.surgeW)}</p>`}
    ${mine(view, host)} ${circuit(view, answer)} ${kit(view, host)} ${runtime(view, answer)} ${cautions(view, answer)}
    <section><h3>${later.assumedHeading}</h3><ul class="plain">${assumed(view, answer).map((sentence) => html`<li>${sentence}</li>`)}</ul></section>
    <footer>${later.printedFrom(setup.shop.name)} · ${new Intl.DateTimeFormat(formats.locale, { dateStyle: 'long' }).format(new Date())}</footer>
  </div>`
}
