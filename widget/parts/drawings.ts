import { html, type TemplateResult } from 'lit/html.js'
import type { ApplianceCategory } from '../../core/loads/vocabulary.ts'

/**
 * Our own line drawings by appliance, category or mark, each one path in a box of 32 by 32, drawn with one stroke weight.
 * The first screen's stand here; the others come with the list.
 */
const PATHS = new Map<string, string>(
  Object.entries({
    'microwave-oven':
      'M3 7h26v18H3zM6 11h14v10H6zM25 11h.01M25 15h.01M23 21h3M6 25v2M26 25v2M9 16c1-2 3-2 4 0s3 2 4 0',
    'coffee-machine': 'M6 4h20v6H6zM6 10v18h20v-4H11V10M15 14h9l-1 8h-7zM19 10v2',
    'hot-drinks': 'M9 12h12l2 14H7zM11 12c0-4 8-4 8 0M15 9V6M9 17l-5-4M22 14c7-1 6 9 1 9',
    computing: 'M7 7h18v13H7zM3 23h26v1a2 2 0 0 1-2 2H5a2 2 0 0 1-2-2zM7 20v3M25 20v3',
    charging:
      'M11 3h10a2 2 0 0 1 2 2v22a2 2 0 0 1-2 2H11a2 2 0 0 1-2-2V5a2 2 0 0 1 2-2zM14 6h4M17 11l-4 6h6l-4 6',
    entertainment: 'M4 6h24v16H4zM10 27h12M16 22v5',
    refrigeration: 'M9 4h14v23H9zM9 13h14M12 8v2M12 16v5M11 27v2M21 27v2',
    lighting: 'M12 5h8l5 12H7zM16 17v10M11 28h10M21 17v4',
    search: 'M14 5a9 9 0 1 1 0 18a9 9 0 0 1 0-18M21 21l7 7',
    open: 'M8 12l8 8 8-8',
    'personal-care': 'M5 8l4-1h10a6 6 0 0 1 0 12H9l-4-1zM14 19l1 9h4l-1-9M19 13h.01',
  }),
)

/**
 * Adds drawings that came later.
 *
 * @param paths - Path data by appliance or category
 */
export function addDrawings(paths: Readonly<Record<string, string>>): void {
  for (const [name, path] of Object.entries(paths)) PATHS.set(name, path)
}

/** A plug: stands for anything that has no drawing of its own. */
const PLUG_PATH = 'M11 3v7M21 3v7M8 10h16v4a8 8 0 0 1-16 0zM16 22v7'

/** A mark that stands beside a word, never alone. */
export type Sign =
  | 'search'
  | 'open'
  | 'plus'
  | 'minus'
  | 'undo'
  | 'fits'
  | 'fits-with-care'
  | 'none-fits'
  | 'not-advised'

function drawn(path: string, name: string): TemplateResult {
  return html`<svg class=${name} viewBox="0 0 32 32" aria-hidden="true"><path d=${path} /></svg>`
}

/**
 * The drawing of an appliance: its own, or that of its category, or a plug.
 *
 * @param appliance - Its id and category, where the load is of the list
 * @returns Decorative SVG; its name stands beside it
 */
export function applianceDrawing(
  appliance: { readonly id: string; readonly category: ApplianceCategory } | undefined,
): TemplateResult {
  const path = appliance && (PATHS.get(appliance.id) ?? PATHS.get(appliance.category))
  return drawn(path ?? PLUG_PATH, 'drawing')
}

/**
 * The drawing of a category.
 *
 * @param category - The category
 * @returns Decorative SVG
 */
export function categoryDrawing(category: ApplianceCategory): TemplateResult {
  return drawn(PATHS.get(category) ?? PLUG_PATH, 'drawing')
}

/**
 * A mark beside a word.
 *
 * @param name - Which
 * @returns Decorative SVG
 */
export function sign(name: Sign): TemplateResult {
  return drawn(PATHS.get(name) ?? '', 'sign')
}
