import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { BrowserContextOptions } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from '../widget/support/guide-page.ts'
import { violations } from './support/axe.ts'
import { type Live, serviceFor, startLive, type Visit } from './support/live.ts'

/* The guide on a page of another origin than the service that serves its script and its answers; nothing is mocked. */

let live: Live
beforeAll(async () => {
  live = await startLive()
})
afterAll(() => live.close())

interface Opened extends Visit {
  readonly guide: GuidePage
}

async function open(
  attributes = 'shop="kingcup"',
  context: BrowserContextOptions = {},
  head = '',
): Promise<Opened> {
  const body = `<main><h1>A shop</h1><tallywatt-guide ${attributes}><a href="/contact">Write to us</a></tallywatt-guide></main>`
  const visit = await live.visit(live.serve({ body, head }), context)
  return { ...visit, guide: new GuidePage(visit.page) }
}

async function closed({ faults, close }: Opened): Promise<void> {
  expect(faults).toEqual([])
  await close()
}

async function find(guide: GuidePage, thing: string): Promise<void> {
  await guide.host.getByLabel('Search for a thing').fill(thing)
  await guide.host.getByRole('option').first().click()
}

describe('the whole path on a page of another origin', () => {
  it('by mouse: search, kind, plate, turns, battery, answer, cart', async () => {
    const opened = await open()
    const { page, guide } = opened
    await page.evaluate(() => {
      addEventListener('tallywatt-add-to-cart', (event) => {
        event.preventDefault()
        Reflect.set(window, 'cart', (event as CustomEvent).detail.lines)
      })
    })
    await guide.ready()
    await guide.host.getByLabel('Search for a thing').click()
    await guide.host.getByLabel('Search for a thing').fill('hair drier')
    await guide.host.getByRole('option').first().click()
    await guide.host.getByRole('button', { name: 'By kind' }).click()
    await guide.host.getByRole('button', { name: 'Computers' }).click()
    await guide.host.getByRole('button', { name: 'Add Laptop' }).last().click()
    await guide.host.getByRole('button', { name: 'Power of Hair dryer' }).click()
    await guide.host.getByLabel('I copy what its plate says').check()
    await guide.host.getByLabel('What the plate says').fill('220-240V~ 50/60Hz 1000W')
    await guide.host.getByRole('button', { name: 'Done' }).click()
    await guide.on()
    await guide.host.getByRole('button', { name: 'Some take turns' }).click()
    await guide.host.getByLabel('Hair dryer takes turns').check()
    await guide.host.getByLabel('Laptop takes turns').check()
    await guide.host.getByRole('button', { name: 'These take turns' }).click()
    // Of two that take turns the larger counts.
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 1,000 W')
    await guide.on()
    await guide.host.getByLabel('12 V').check()
    await guide.on()
    await guide.host.locator('[part=unit]').waitFor()
    const text = await textOf(guide.host.locator('.base'))
    // 1,000 W with a fifth kept free.
    expect(text).toContain('1,250 W')
    await guide.host.getByRole('button', { name: 'Put in the cart' }).click()
    const lines = (await page.evaluate(() => Reflect.get(window, 'cart'))) as { sku: string }[]
    expect(lines.length).toBeGreaterThan(1)
    expect(lines.every(({ sku }) => sku.startsWith('KC-'))).toBe(true)
    await closed(opened)
  })

  it('by touch, on a phone', async () => {
    const opened = await open('shop="bentcreek"', {
      hasTouch: true,
      isMobile: true,
      viewport: { width: 360, height: 640 },
    })
    const { guide } = opened
    await guide.ready()
    await guide.host.getByRole('button', { name: 'Add Television' }).tap()
    await guide.on(1, 'tap')
    await guide.on(1, 'tap')
    await guide.host.getByText('Vehicle socket').tap()
    await guide.on(1, 'tap')
    await guide.host.locator('[part=verdict]').waitFor()
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await closed(opened)
  })

  it('by the keyboard alone, to a what-if and back', async () => {
    const opened = await open('shop="kingcup"')
    const { page, guide } = opened
    await guide.ready()
    const tabTo = async (selector: string) => {
      for (let presses = 0; presses < 80; presses += 1) {
        if (await guide.focused(selector)) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`Tab never came to ${selector}`)
    }
    await tabTo('#search')
    for (const word of ['microwave', 'laptop']) {
      await page.keyboard.type(word)
      await page.keyboard.press('Enter')
    }
    await guide.host.locator('.thing').nth(1).waitFor()
    for (let screen = 0; screen < 3; screen += 1) {
      const before = await textOf(guide.heading)
      await tabTo('[part=next]')
      await page.keyboard.press('Enter')
      await expect.poll(() => textOf(guide.heading)).not.toBe(before)
    }
    await guide.host.locator('[part=unit]').waitFor()
    const unit = await textOf(guide.heading)
    await tabTo('[part=what-ifs] button')
    await page.keyboard.press('Enter')
    await guide.host.getByRole('button', { name: 'Undo the change' }).waitFor()
    await expect.poll(() => textOf(guide.heading)).not.toBe(unit)
    for (let presses = 0; presses < 80; presses += 1) {
      const focused = await guide.host.evaluate((host) => host.shadowRoot?.activeElement?.textContent?.trim())
      if (focused === 'Undo the change') break
      await page.keyboard.press('Tab')
    }
    await page.keyboard.press('Enter')
    await expect.poll(() => textOf(guide.heading)).toBe(unit)
    await closed(opened)
  })
})

describe('what-ifs', () => {
  it('show what they promised, and the answer before once taken back', async () => {
    const opened = await open()
    const { guide } = opened
    await guide.ready()
    await guide.pick('Microwave oven', 'Electric kettle', 'Laptop')
    await guide.toAnswer()
    const before = await textOf(guide.host.locator('[part=answers]'))
    const offer = guide.host.locator('[part=what-ifs] li').filter({ has: guide.page.getByRole('button') })
    const promised = await textOf(offer.first())
    await offer.first().getByRole('button').click()
    await guide.host.getByText('Shown with your change.').waitFor()
    const unit = await textOf(guide.heading)
    // The promise names the unit that the change leads to.
    expect(promised).toContain(unit)
    expect(await textOf(guide.host.locator('[part=answers]'))).not.toBe(before)
    await guide.host.getByRole('button', { name: 'Undo the change' }).click()
    await expect.poll(() => textOf(guide.host.locator('[part=answers]'))).toBe(before)
    await closed(opened)
  })
})

describe('a what-if of another unit', () => {
  it('shows the answer for that unit, holds it in the link, and goes back', async () => {
    const opened = await open()
    const { page, guide } = opened
    await guide.ready()
    await find(guide, 'spin dryer')
    await guide.toAnswer()
    const smallest = await textOf(guide.heading)
    const offer = guide.host.locator('[part=what-ifs] li').filter({ hasText: 'With a pure sine wave' })
    const promised = await textOf(offer)
    await offer.getByRole('button').click()
    await guide.host.getByText('Shown with your change.').waitFor()
    const unit = await textOf(guide.heading)
    expect(unit).not.toBe(smallest)
    expect(promised).toContain(unit)
    const base = guide.host.locator('.base')
    await expect.poll(() => textOf(base)).toContain('The one you chose')
    expect(await textOf(base)).not.toContain('the smallest of ours')
    await page.evaluate(() => {
      const write = (text: string) => Promise.resolve(Reflect.set(window, 'copied', text))
      Object.defineProperty(navigator, 'clipboard', { value: { writeText: write } })
    })
    await guide.host.locator('[part=copy-link]').click()
    const link = await page.evaluate(() => String(Reflect.get(window, 'copied')))
    await guide.host.getByRole('button', { name: 'Undo the change' }).click()
    await expect.poll(() => textOf(guide.heading)).toBe(smallest)
    await page.goto('about:blank')
    await page.goto(link)
    await guide.host.locator('[part=unit]').waitFor()
    await expect.poll(() => textOf(guide.heading)).toBe(unit)
    await closed(opened)
  })
})

describe('a what-if of two units', () => {
  it('shows each with its own things, says what they share, and goes back', async () => {
    const opened = await open()
    const { guide } = opened
    await guide.ready()
    await guide.pick('Laptop')
    await find(guide, 'travel kettle')
    await guide.toAnswer()
    const together = await textOf(guide.heading)
    const offer = guide.host.locator('[part=what-ifs] li').filter({ hasText: 'Two units' })
    const promised = await textOf(offer)
    await offer.getByRole('button').click()
    await guide.host.getByText('Each counts the battery as its own').waitFor()
    const answers = guide.host.locator('[part=answers]')
    const units: string[] = []
    for (const [thing, other] of [
      ['Travel kettle', 'Laptop'],
      ['Laptop', 'Travel kettle'],
    ] as const) {
      const button = guide.host.locator('.notice').getByRole('button', { name: thing, exact: true })
      await button.click()
      await expect.poll(() => button.getAttribute('aria-pressed')).toBe('true')
      await expect.poll(() => textOf(answers)).toContain(thing)
      expect(await textOf(answers)).not.toContain(other)
      const isNew = (unit: string) => promised.includes(unit) && !units.includes(unit)
      await expect.poll(async () => isNew(await textOf(guide.heading))).toBe(true)
      units.push(await textOf(guide.heading))
    }
    await guide.host.getByRole('button', { name: 'Undo the change' }).click()
    await expect.poll(() => textOf(guide.heading)).toBe(together)
    await expect.poll(() => textOf(answers)).toContain('Laptop')
    await closed(opened)
  })
})

describe('print and link', () => {
  it('prints an A4 page of its own, in ink on white even where the reader has it dark', async () => {
    const opened = await open('shop="kingcup"', { colorScheme: 'dark' })
    const { page, guide } = opened
    // The print dialogue of a browser without a screen would close the sheet again.
    await page.evaluate(() => {
      new MutationObserver(() => {
        for (const frame of document.querySelectorAll('iframe')) {
          if (frame.contentWindow !== null) frame.contentWindow.print = () => undefined
        }
      }).observe(document.body, { childList: true })
      Object.defineProperty(HTMLIFrameElement.prototype, 'hidden', { set: () => undefined })
    })
    await guide.ready()
    await guide.pick('Microwave oven', 'Laptop')
    await guide.toAnswer()
    const unit = await textOf(guide.heading)
    await guide.host.getByRole('button', { name: 'Print', exact: true }).click()
    await expect.poll(() => page.frames().length).toBe(2)
    const sheet = page.frames()[1]
    if (sheet === undefined) throw new Error('no sheet to print')
    await sheet.locator('h2').waitFor()
    const written = {
      head: await sheet.evaluate(() => document.title),
      body: await sheet.evaluate(() => document.body.innerHTML),
      styles: await sheet.evaluate(() =>
        document.adoptedStyleSheets.map((one) => [...one.cssRules].map(({ cssText }) => cssText).join('\n')),
      ),
    }
    expect(written.head).toContain(unit)
    const paper = await opened.page.context().newPage()
    await paper.setContent(
      `<!doctype html><meta charset="utf-8"><style>${written.styles.join('\n')}</style><body>${written.body}`,
    )
    await paper.emulateMedia({ media: 'print' })
    const colours = await paper.locator('.base').evaluate((base) => {
      const { backgroundColor, color } = getComputedStyle(base)
      return { backgroundColor, color }
    })
    expect(colours).toEqual({ backgroundColor: 'rgb(255, 255, 255)', color: 'rgb(0, 0, 0)' })
    const pdf = (await paper.pdf({ format: 'A4', preferCSSPageSize: false })).toString('latin1')
    const pages = pdf.match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0
    expect(pages).toBeGreaterThanOrEqual(1)
    expect(pages).toBeLessThanOrEqual(2)
    const text = await textOf(paper.locator('.base'))
    for (const part of [unit, 'Cable and fuse', 'What you need', 'Take care', 'Kingcup Boatyard Stores']) {
      expect(text).toContain(part)
    }
    expect(await paper.locator('button:visible').count()).toBe(0)
    await closed(opened)
  })

  it('opens the same answer from the copied link, in another browser', async () => {
    const opened = await open('shop="kingcup"', { permissions: ['clipboard-read', 'clipboard-write'] })
    const { page, guide } = opened
    await guide.ready()
    await guide.pick('Microwave oven', 'Laptop')
    await guide.host.getByRole('button', { name: 'One more Laptop' }).click()
    await guide.toAnswer()
    const answer = await textOf(guide.host.locator('[part=answers]'))
    const unit = await textOf(guide.heading)
    await guide.host.getByRole('button', { name: 'Copy a link' }).click()
    await expect.poll(() => textOf(guide.status)).toContain('Link copied')
    const link = await page.evaluate(() => navigator.clipboard.readText())
    const other = await live.visit(link)
    const again = new GuidePage(other.page)
    await again.host.locator('[part=unit]').waitFor()
    await expect.poll(() => textOf(again.heading)).toBe(unit)
    await expect.poll(() => textOf(again.host.locator('[part=answers]'))).toBe(answer)
    expect(other.faults).toEqual([])
    await other.close()
    await closed(opened)
  })
})

describe('failures of a real service', () => {
  /** A service that does nothing but what it is made for. */
  async function standIn(answer: Parameters<typeof createServer>[1]): Promise<[string, Server]> {
    const server = createServer(answer)
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
    return [`http://127.0.0.1:${(server.address() as AddressInfo).port}`, server]
  }

  const told = async ({ guide }: Opened) => {
    await guide.host.locator('[part=failure]').waitFor()
    return textOf(guide.host.locator('[part=failure]'))
  }

  it('an origin that the shop does not list gets calm words and the page’s own fallback', async () => {
    const opened = await open()
    await opened.close()
    const address = live.serve({
      body: '<tallywatt-guide shop="kingcup"><a href="/contact">Write to us</a></tallywatt-guide>',
    })
    // The same page under another name is another origin.
    const visit = await live.visit(address.replace('localhost', '127.0.0.1'))
    const stranger = { ...visit, guide: new GuidePage(visit.page) }
    expect(await told(stranger)).toContain('can’t reach the service')
    expect(await visit.page.getByText('Write to us').isVisible()).toBe(true)
    expect(await violations(visit.page)).toEqual([])
    await closed(stranger)
  })

  it('a shop that the service does not know gets calm words and the page’s own fallback', async () => {
    const opened = await open('shop="no-such-shop"')
    expect(await told(opened)).toBe('This guide is not set up for this shop yet.')
    expect(await opened.page.getByText('Write to us').isVisible()).toBe(true)
    await closed(opened)
  })

  it('a service that has stopped is told, and asked again once it is back', async () => {
    let service = await serviceFor(live.shop)
    const api = await service.listen({ port: 0, host: '127.0.0.1' })
    const opened = await open(`shop="kingcup" api="${api}"`)
    const { guide } = opened
    await guide.ready()
    await guide.pick('Laptop')
    await service.close()
    await guide.on(3)
    expect(await told(opened)).toContain('Your answers are kept')
    expect(await violations(opened.page)).toEqual([])
    service = await serviceFor(live.shop)
    await service.listen({ port: Number(new URL(api).port), host: '127.0.0.1' })
    await guide.host.getByRole('button', { name: 'Try again' }).click()
    await guide.host.locator('[part=unit]').waitFor()
    await service.close()
    await closed(opened)
  })

  it('a service that has had enough names the wait, and nothing is lost', async () => {
    // One call a minute is what is left for this address after the set-up.
    const service = await serviceFor(live.shop, { addressQuota: 1 })
    const api = await service.listen({ port: 0, host: '127.0.0.1' })
    const opened = await open(`shop="kingcup" api="${api}"`)
    const { guide } = opened
    await guide.ready()
    await guide.pick('Laptop')
    await guide.on(3)
    const words = await told(opened)
    expect(words).toContain('Many people are asking just now')
    expect(words).toMatch(/try again in \d+ seconds/)
    await guide.host.getByRole('button', { name: 'Back' }).click()
    await guide.host.getByRole('button', { name: 'Back' }).click()
    await expect.poll(() => textOf(guide.host.locator('.base'))).toContain('Laptop')
    await service.close()
    await closed(opened)
  })

  it('a service that answers with a page of its proxy is told to have a problem', async () => {
    const [api, server] = await standIn((_request, response) => {
      response.writeHead(502, { 'content-type': 'text/html', 'access-control-allow-origin': '*' })
      response.end('<h1>Bad gateway</h1>')
    })
    const opened = await open(`shop="kingcup" api="${api}"`)
    expect(await told(opened)).toContain('has a problem')
    server.closeAllConnections()
    server.close()
    await closed(opened)
  })

  it('a service that never answers is given up after eight seconds', { timeout: 60_000 }, async () => {
    const [api, server] = await standIn(() => undefined)
    const opened = await open(`shop="kingcup" api="${api}"`)
    await opened.guide.host.getByText('One moment').waitFor()
    expect(await told(opened)).toContain('This takes too long')
    await expect
      .poll(() => opened.guide.host.getByRole('button', { name: 'Try again' }).isVisible())
      .toBe(true)
    server.closeAllConnections()
    server.close()
    await closed(opened)
  })
})

describe('states that axe has not seen elsewhere', () => {
  it.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ] as const)(
    'are sound: a tried what-if, none that fits, one not advised, %s',
    { timeout: 60_000 },
    async (_name, context) => {
      const opened = await open('shop="kingcup"', context)
      const { page, guide } = opened
      const found: string[] = []
      const look = async (state: string) => {
        for (const one of await violations(page)) found.push(`${state}: ${one}`)
      }
      await guide.ready()
      await guide.pick('Microwave oven', 'Laptop')
      await guide.toAnswer()
      await guide.host.locator('[part=what-ifs] button').first().click()
      await guide.host.getByRole('button', { name: 'Undo the change' }).waitFor()
      await guide.host.locator('[part=verdict]').waitFor()
      await look('what-if')
      await guide.host.getByRole('button', { name: 'Start again' }).click()
      await guide.pick('Electric kettle')
      for (let more = 0; more < 3; more += 1) {
        await guide.host.getByRole('button', { name: 'One more Electric kettle' }).click()
      }
      await guide.toAnswer()
      await expect.poll(() => textOf(guide.host.locator('[part=verdict]'))).toContain('None of ours fits')
      await look('none fits')
      await guide.host.getByRole('button', { name: 'Start again' }).click()
      await guide.host.getByLabel('Search for a thing').fill('air conditioner')
      await guide.host.getByLabel('Search for a thing').press('Enter')
      await guide.toAnswer()
      await expect.poll(() => textOf(guide.host.locator('[part=verdict]'))).toContain('Not from a battery')
      await look('not advised')
      expect(found).toEqual([])
      await closed(opened)
    },
  )
})
