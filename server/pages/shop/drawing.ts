import type { Inverter } from '../../../core/index.ts'

/**
 * A line drawing of a unit: as long as it is strong, with as many outlets as it has, of the shop's country.
 *
 * @param unit - Any unit of a range
 * @returns An SVG that says nothing to a screen reader
 */
export function unitDrawing({ continuousW, outlets, outputV }: Inverter): string {
  const length = 80 + Math.min(56, continuousW / 60)
  const left = (164 - length) / 2
  const outlet = outputV >= 200 ? threeFlatHoles : twoSlots
  const step = (length - 20) / (outlets + 1)
  const faces = Array.from({ length: outlets }, (_, place) => outlet(left + 10 + step * (place + 1), 62))
  const fins = Array.from({ length: Math.floor(length / 9) }, (_, place) => left + 6 + place * 9)
  return `<svg class="unit" viewBox="0 0 180 110" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round" stroke-linecap="round">
<path d="M${left - 8} 92h${length + 16}M${left} 92V34h${length}v58"/>
<path d="${fins.map((x) => `M${x} 34v-9`).join('')}M${left} 25h${length}v9"/>
${faces.join('')}<circle cx="${left + 8}" cy="84" r="2"/>
<path d="M${left + length} 80h9q6 0 6 -6v-8M${left + length} 86h15q8 0 8 -8v-12"/></svg>`
}

function threeFlatHoles(x: number, y: number): string {
  return `<rect x="${x - 10}" y="${y - 11}" width="20" height="22" rx="2"/><path d="M${x} ${y - 6}v4M${x - 5} ${y + 4}h3M${x + 2} ${y + 4}h3"/>`
}

function twoSlots(x: number, y: number): string {
  return `<rect x="${x - 9}" y="${y - 11}" width="18" height="22" rx="6"/><path d="M${x - 4} ${y - 5}v5M${x + 4} ${y - 5}v5"/><circle cx="${x}" cy="${y + 5}" r="1.6"/>`
}

/**
 * A line drawing of a part that is no unit.
 *
 * @param kind - The list of the range that it is in
 * @returns An SVG that says nothing to a screen reader
 */
export function partDrawing(kind: 'batteries' | 'cables' | 'fuses' | 'connectors'): string {
  return `<svg class="unit" viewBox="0 0 180 110" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="1.6" stroke-linejoin="round" stroke-linecap="round">${PARTS[kind]}</svg>`
}

const PARTS = {
  batteries:
    '<path d="M40 36h100v56H40zM54 36v-8h14v8M112 36v-8h14v8M58 58h10M63 53v10M113 58h10M40 72h100"/>',
  cables:
    '<path d="M30 70c30-50 50 40 78 0s40-30 44-14M30 80c30-50 50 40 78 0s40-30 44-14"/><circle cx="25" cy="75" r="6"/><circle cx="155" cy="62" r="6"/>',
  fuses:
    '<path d="M26 58h28M126 58h28M54 44h72v28H54zM66 58q12-14 24 0t24 0"/><circle cx="36" cy="58" r="3"/><circle cx="144" cy="58" r="3"/>',
  connectors: '<path d="M52 40h48v36H52zM100 46h16v10h-16zM100 62h16v10h-16zM52 50H28M52 66H28"/>',
} as const
