/**
 * Text as HTML shows it, in content and in quoted attributes.
 *
 * @param text - Any text
 * @returns The text without anything that HTML reads as markup
 */
export function escapeHtml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

/**
 * A sentence of the contract as HTML: what stands between backticks is code.
 *
 * @param text - The sentence
 * @returns HTML
 */
export function prose(text: string): string {
  return escapeHtml(text).replaceAll(/`([^`]+)`/g, '<code>$1</code>')
}
