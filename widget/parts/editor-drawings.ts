import { html, type TemplateResult } from 'lit/html.js'

/**
 * Where a microwave states its two kinds of watts: front (1) and plate at the back (2).
 *
 * @returns Decorative SVG; the caption beside it says the same in words
 */
export function twoWattsDrawing(): TemplateResult {
  return html`<svg class="plates" viewBox="0 0 240 96" aria-hidden="true">
    <path d="M6 14h104v66H6zM14 22h66v50H14zM90 24h12M90 31h12M96 62m-6 0a6 6 0 1 0 12 0a6 6 0 1 0-12 0M14 80v5M102 80v5M28 46c6-8 12-8 18 0s12 8 18 0" />
    <path d="M130 14h104v66H130zM138 80v5M226 80v5M224 60q8 0 8 12v16M142 22h10M142 27h10M142 32h10" />
    <path class="sheet" d="M158 28h66v36h-66z" />
    <path d="M158 28h66v36h-66zM164 36h24M164 42h34M163 48h40v11h-40z" />
    <text x="47" y="34" text-anchor="middle">800 W</text><text x="183" y="57" text-anchor="middle">1250 W</text>
    <circle class="spot" cx="47" cy="60" r="8" /><text class="number" x="47" y="63.5" text-anchor="middle">1</text>
    <circle class="spot" cx="214" cy="53.5" r="8" /><text class="number" x="214" y="57" text-anchor="middle">2</text>
  </svg>`
}

/**
 * A rating plate with the line that counts framed.
 *
 * @returns Decorative SVG
 */
export function plateDrawing(): TemplateResult {
  return html`<svg class="plates" viewBox="0 0 240 76" aria-hidden="true">
    <path d="M50 8h140v60H50zM58 18h36M58 25h56M56 33h112v15h-112zM58 56h44M58 61h30M176 18a6 6 0 1 0 .1 0" />
    <text x="62" y="44">220-240V~ 50Hz 850W</text>
  </svg>`
}
