import { html, type TemplateResult } from 'lit/html.js'

/**
 * An inverter, for a unit of which the shop has no picture.
 *
 * @returns Decorative SVG
 */
export function unitDrawing(): TemplateResult {
  return html`<svg class="unit-drawing" viewBox="0 0 96 72" aria-hidden="true">
    <path d="M8 14h80v46H8zM2 20h6M2 54h6M88 20h6M88 54h6M5 20v34M91 20v34M16 24h26v26H16zM24 33v6M34 33v6M26 44h6M52 26h28M52 32h28M52 38h28M54 50h.01M61 50h.01M72 47h8v6h-8z" />
  </svg>`
}
