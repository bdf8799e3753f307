import { html, type TemplateResult } from 'lit/html.js'

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
