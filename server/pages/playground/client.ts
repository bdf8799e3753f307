import { copyOnTap } from '../shop/client/copy.ts'
import { type ChosenElement, snippetOf } from '../snippet.ts'

const form = document.querySelector<HTMLFormElement>('#settings')
const stage = document.querySelector<HTMLElement>('#stage')
const log = document.querySelector<HTMLElement>('#events')
const script = document.querySelector<HTMLScriptElement>('script[src$="/tallywatt.js"]')?.src ?? ''
/** Names of custom properties begin so, and so do the fields that set them. */
const PROPERTY = '--tallywatt-'

function chosen(fields: FormData): ChosenElement {
  const value = (name: string) => String(fields.get(name) ?? '')
  const element = value('element')
  const fit = element === 'tallywatt-fit'
  const attributes: readonly (readonly [string, string])[] = [
    ['shop', value('shop')],
    ['sku', fit ? value('sku') : ''],
    ['lang', value('lang')],
    ['scheme', value('scheme')],
  ]
  const switches = fit ? [] : ['without-cart', 'keep'].filter((name) => fields.has(name))
  const theme = [...fields]
    .filter(([name, text]) => name.startsWith(PROPERTY) && text !== '' && fields.has('themed'))
    .map(([name, text]) => [name, name.endsWith('radius') ? `${String(text)}px` : String(text)] as const)
  return { element, attributes: attributes.filter(([, text]) => text !== ''), switches, theme }
}

function show(): void {
  if (form === null || stage === null) return
  offerUnitsOfShop(form)
  const fields = new FormData(form)
  const wanted = chosen(fields)
  for (const row of form.querySelectorAll<HTMLElement>('[data-for]')) {
    row.hidden = row.dataset.for !== wanted.element
  }
  for (const row of form.querySelectorAll<HTMLElement>('[data-theme]')) row.hidden = !fields.has('themed')
  stage.style.inlineSize = `${String(fields.get('width'))}px`
  setText('#width-text', `${String(fields.get('width'))} px`)
  setText('#radius-text', `${String(fields.get('--tallywatt-radius'))} px`)
  dress(placed(stage, wanted.element), wanted)
  setText('#snippet', snippetOf(wanted, script))
}

/** A unit of another shop would not be found. */
function offerUnitsOfShop(inside: HTMLFormElement): void {
  const shop = String(new FormData(inside).get('shop'))
  const units = inside.querySelector<HTMLSelectElement>('#sku')
  if (units === null) return
  for (const option of units.options) option.hidden = option.dataset.shop !== shop
  if (units.selectedOptions[0]?.hidden !== false) {
    units.value = [...units.options].find(({ hidden }) => !hidden)?.value ?? ''
  }
}

/** The element on the stage: the one that is there, or a new one where another kind is wanted. */
function placed(on: HTMLElement, name: string): HTMLElement {
  const there = on.firstElementChild
  if (there instanceof HTMLElement && there.localName === name) return there
  const made = document.createElement(name)
  // Its attributes are set before it is placed, so that it asks for nothing in vain.
  queueMicrotask(() => on.replaceChildren(made))
  return made
}

function dress(element: HTMLElement, { attributes, switches = [], theme }: ChosenElement): void {
  const wanted = new Map([...attributes, ...switches.map((name) => [name, ''] as const)])
  for (const name of element.getAttributeNames()) {
    if (name !== 'style' && !wanted.has(name)) element.removeAttribute(name)
  }
  for (const [name, text] of wanted) {
    if (element.getAttribute(name) !== text) element.setAttribute(name, text)
  }
  for (const name of [...element.style]) element.style.removeProperty(name)
  for (const [name, text] of theme) element.style.setProperty(name, text)
}

function setText(selector: string, text: string): void {
  const element = document.querySelector(selector)
  if (element !== null) element.textContent = text
}

for (const name of ['answer', 'add-to-cart', 'step', 'failure']) {
  addEventListener(`tallywatt-${name}`, (event) => {
    if (log === null) return
    const { detail } = event as CustomEvent<unknown>
    const text = JSON.stringify(detail)
    const line = `tallywatt-${name} ${text.length > 300 ? `${text.slice(0, 300)} …` : text}`
    log.textContent = `${line}\n${log.textContent ?? ''}`.slice(0, 4000)
  })
}
form?.addEventListener('input', show)
form?.addEventListener('submit', (event) => event.preventDefault())
copyOnTap(document)
show()
