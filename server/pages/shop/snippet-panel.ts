import { escapeHtml } from '../html.ts'
import { snippetOf } from '../snippet.ts'
import { WIDGET_PATH } from '../widget-files.ts'
import type { Look } from './looks.ts'

/**
 * The folded panel with what a web developer copies to get the element that the page shows.
 *
 * @param look - The shop
 * @param tag.element - Name of the element
 * @param tag.attributes - Its attributes
 * @param origin - Where the service is
 * @returns HTML of the panel
 */
export function snippetPanel(
  { theme }: Look,
  tag: { readonly element: string; readonly attributes: readonly (readonly [string, string])[] },
  origin: string,
): string {
  const snippet = snippetOf({ ...tag, theme: Object.entries(theme) }, `${origin}${WIDGET_PATH}`)
  return `<details class="snippet"><summary>For your own shop: the snippet of this page</summary>
<pre tabindex="0" aria-label="Snippet"><code id="snippet">${escapeHtml(snippet)}</code></pre>
<button type="button" data-copy="snippet">Copy the snippet</button> <a href="/playground">Try other settings</a></details>`
}
