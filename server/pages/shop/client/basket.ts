interface Line {
  readonly sku: string
  readonly quantity: number
}

interface Finding {
  readonly code: string
  readonly severity: 'fail' | 'care' | 'note'
  readonly message: string
}

/** The basket of a demo shop, kept by this browser as long as the window is open. */
export interface Basket {
  add(lines: readonly Line[]): void
}

/**
 * Starts the basket of a page: draws it, adds to it, and asks the service after each change whether what is in it
 * works and is safe together.
 *
 * @param page - The page
 * @returns The basket
 */
export function startBasket(page: Document): Basket {
  const { shop = '', currency = 'EUR' } = page.body.dataset
  const parts = JSON.parse(page.getElementById('parts')?.textContent ?? '{}') as Record<
    string,
    { name: string; price: string }
  >
  const store = `basket-${shop}`
  const money = new Intl.NumberFormat(page.documentElement.lang, { style: 'currency', currency })
  const find = <T extends HTMLElement>(name: string) => page.querySelector<T>(`[data-${name}]`)
  let lines: readonly Line[] = read(store).filter(({ sku }) => sku in parts)
  let asking = new AbortController()

  function change(next: readonly Line[], said: string): void {
    lines = next
    sessionStorage.setItem(store, JSON.stringify(lines))
    draw()
    const status = find('said')
    if (status !== null) status.textContent = said
  }

  function draw(): void {
    const count = lines.reduce((sum, { quantity }) => sum + quantity, 0)
    setText(find('count'), String(count))
    find('lines')?.replaceChildren(...lines.map(drawLine))
    const total = lines.reduce((sum, { sku, quantity }) => sum + quantity * Number(parts[sku]?.price ?? 0), 0)
    const sum = find('sum')
    setText(sum, `Total ${money.format(total)}`)
    if (sum !== null) sum.hidden = count === 0
    const empty = find('empty')
    if (empty !== null) empty.hidden = count > 0
    void check()
  }

  function drawLine({ sku, quantity }: Line): HTMLElement {
    const item = page.createElement('li')
    const name = page.createElement('span')
    name.textContent = `${quantity} × ${parts[sku]?.name ?? sku}`
    const price = page.createElement('span')
    price.textContent = money.format(quantity * Number(parts[sku]?.price ?? 0))
    const away = page.createElement('button')
    away.type = 'button'
    away.textContent = 'Remove'
    away.setAttribute('aria-label', `Remove ${parts[sku]?.name ?? sku}`)
    away.addEventListener('click', () => {
      change(
        lines.filter((line) => line.sku !== sku),
        'Removed.',
      )
      page.querySelector<HTMLElement>('#basket summary')?.focus()
    })
    item.append(name, price, away)
    return item
  }

  async function check(): Promise<void> {
    asking.abort()
    asking = new AbortController()
    const place = find('check')
    if (place === null) return
    if (lines.length === 0) return place.replaceChildren()
    try {
      const reply = await fetch(`/v1/shops/${shop}/cart-check`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ lines, locale: page.documentElement.lang }),
        signal: asking.signal,
      })
      if (!reply.ok) return place.replaceChildren()
      const { findings } = (await reply.json()) as { findings: readonly Finding[] }
      place.replaceChildren(...drawFindings(page, findings))
    } catch {
      // Taken back, or no service: the basket works without advice.
      place.replaceChildren()
    }
  }

  draw()
  return {
    add(more) {
      const next = new Map(lines.map(({ sku, quantity }) => [sku, quantity]))
      for (const { sku, quantity } of more) next.set(sku, (next.get(sku) ?? 0) + quantity)
      const count = more.reduce((sum, { quantity }) => sum + quantity, 0)
      const all = [...next].map(([sku, quantity]) => ({ sku, quantity }))
      change(all, count === 1 ? 'One part put in.' : `${count} parts put in.`)
    },
  }
}

function drawFindings(page: Document, findings: readonly Finding[]): readonly HTMLElement[] {
  const telling = findings.filter(({ severity }) => severity !== 'note')
  const heading = page.createElement('p')
  heading.textContent =
    telling.length === 0 ? 'These parts go together.' : 'Before you buy, have a look at this:'
  const list = page.createElement('ul')
  list.append(
    ...telling.map(({ severity, message }) => {
      const item = page.createElement('li')
      item.textContent = `${severity === 'fail' ? 'Not safe or not working: ' : 'Mind: '}${message}`
      return item
    }),
  )
  return telling.length === 0 ? [heading] : [heading, list]
}

function setText(element: HTMLElement | null, text: string): void {
  if (element !== null) element.textContent = text
}

function read(store: string): readonly Line[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(store) ?? '[]')
    return Array.isArray(kept) ? (kept as Line[]) : []
  } catch {
    return []
  }
}
