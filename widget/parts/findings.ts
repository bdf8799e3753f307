import { html, type TemplateResult } from 'lit/html.js'
import type { FindingAnswer } from '../../shared/contract/answers.ts'
import { sign } from './drawings.ts'

/**
 * Findings as sentences, each with its mark.
 *
 * @param found - The findings
 * @returns A list, or nothing for none
 */
export function findings(found: readonly FindingAnswer[]): TemplateResult {
  if (found.length === 0) return html``
  return html`<ul class="care">
    ${found.map(({ severity, message }) => html`<li>${sign(severity === 'fail' ? 'none-fits' : 'fits-with-care')}<span>${message}</span></li>`)}
  </ul>`
}
