import { startBasket } from './basket.ts'
import { copyOnTap } from './copy.ts'
import { keepLinksHere } from './links.ts'

const basket = startBasket(document)
addEventListener('tallywatt-add-to-cart', (event) => {
  event.preventDefault()
  basket.add((event as CustomEvent<{ lines: { sku: string; quantity: number }[] }>).detail.lines)
})
document.addEventListener('click', ({ target }) => {
  const sku = target instanceof Element ? target.closest('[data-add]')?.getAttribute('data-add') : undefined
  if (typeof sku === 'string') basket.add([{ sku, quantity: 1 }])
})
copyOnTap(document)
keepLinksHere(document)
