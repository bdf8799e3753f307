/**
 * Registers an element; a page that loads the script twice keeps the first.
 *
 * @param tag - Its tag
 * @param element - Its class
 */
export function define(tag: string, element: CustomElementConstructor): void {
  if (customElements.get(tag) === undefined) customElements.define(tag, element)
  else console.info(`tallywatt: <${tag}> is registered already; the first one is kept`)
}
