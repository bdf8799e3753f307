/** An element as a page sets it. */
export interface ChosenElement {
  readonly element: string
  readonly attributes: readonly (readonly [name: string, value: string])[]
  /** Attributes without a value. */
  readonly switches?: readonly string[]
  /** Custom properties. */
  readonly theme: readonly (readonly [name: string, value: string])[]
}

/**
 * Keeps the place of an element until its script is here, so that the page does not jump.
 *
 * @param element - Name of the element
 * @returns CSS
 */
export function reserveRules(element: string): string {
  return `${element}:not(:defined) { display: block; min-block-size: 42em }
@media (max-width: 40em) { ${element}:not(:defined) { min-block-size: 54em } }
@media (max-width: 19em) { ${element}:not(:defined) { min-block-size: 66em } }`
}

/**
 * A theme as a rule.
 *
 * @param selector - The elements that it is for
 * @param theme - Custom properties
 * @returns CSS
 */
export function themeRule(selector: string, theme: ChosenElement['theme']): string {
  return `${selector} {\n${theme.map(([name, value]) => `  ${name}: ${value};`).join('\n')}\n}`
}

/**
 * What a web developer copies to get an element as it is set. It runs in pages too, so it takes nothing from Node.
 *
 * @param chosen - How the element is set
 * @param script - Address of the widget's script
 * @returns HTML
 */
export function snippetOf(chosen: ChosenElement, script: string): string {
  const { element, attributes, switches = [], theme } = chosen
  const set = [...attributes.map(([name, value]) => `${name}="${value}"`), ...switches]
  const rules = [reserveRules(element), ...(theme.length === 0 ? [] : [themeRule(element, theme)])]
  return `<script type="module" src="${script}"></script>
<${element} ${set.join(' ')}><a href="/contact">Ask us</a></${element}>

<!-- in your style sheet -->
<style>
${rules.join('\n')}
</style>${element === 'tallywatt-guide' && !switches.includes('without-cart') ? CART : ''}`
}

const CART = `

<!-- in your script -->
<script type="module">
  addEventListener('tallywatt-add-to-cart', (event) => {
    event.preventDefault() // your page says itself what became of it
    for (const { sku, quantity } of event.detail.lines) yourCart.add(sku, quantity)
  })
</script>`
