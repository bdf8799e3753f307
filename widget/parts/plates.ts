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

/** The three connections, one path each in a box of 64 by 40. */
const CONNECTION_PATHS = {
  'vehicle-socket':
    'M2 20h5M7 12h11v16H7zM18 15h8v10h-8zM26 18h4v4h-4zM20 15v-3h4M20 25v3h4M49 7a13 13 0 1 1 0 26a13 13 0 0 1 0-26M49 13a7 7 0 1 1 0 14a7 7 0 0 1 0-14M49 20h.01',
  'quick-connector':
    'M2 15h10M2 25h10M12 8h14v24H12zM26 12h5v6h-5M26 22h5v6h-5M52 8H38v24h14zM38 12h-3v6h3M38 22h-3v6h3M52 15h10M52 25h10',
  'battery-terminals':
    'M8 16h48v20H8zM14 16v-5h8v5M42 16v-5h8v5M15 24h6M43 24h6M46 21v6M18 11V8a4 4 0 0 0-4-4H2M46 11V8a4 4 0 0 1 4-4h12',
} as const

/**
 * The drawing of a connection.
 *
 * @param kind - Which
 * @returns Decorative SVG; its name stands beside it
 */
export function connectionDrawing(kind: keyof typeof CONNECTION_PATHS): TemplateResult {
  return html`<svg class="connection" viewBox="0 0 64 40" aria-hidden="true"><path d=${CONNECTION_PATHS[kind]} /></svg>`
}

/**
 * Battery, cable and unit, with the one-way length marked.
 *
 * @returns Decorative SVG
 */
export function distanceDrawing(): TemplateResult {
  return html`<svg class="plates" viewBox="0 0 240 70" aria-hidden="true">
    <path d="M10 30h54v34H10zM18 30v-5h8v5M48 30v-5h8v5M19 40h6M49 40h6M52 37v6M22 25v-2q0-3 3-3h5M52 25v-2q0-3 3-3" />
    <path d="M176 26h54v38h-54zM184 34h14v10h-14zM188 38v2M194 38v2M206 36h16M206 42h16M64 50h112M64 56h112" />
    <path d="M64 12h112M64 7v10M176 7v10M70 9l-6 3 6 3M170 9l6 3-6 3" />
  </svg>`
}
