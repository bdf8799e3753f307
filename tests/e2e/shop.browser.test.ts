import { createHash } from 'node:crypto'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from '../widget/support/guide-page.ts'
import { violations } from './support/axe.ts'
import { type Live, startLive, type Visit } from './support/live.ts'

let live: Live
beforeAll(async () => {
  live = await startLive()
})
afterAll(() => live.close())

const SHOPS = [
  {
    shop: 'kingcup',
    name: 'Kingcup Boatyard Stores',
    basket: 'Basket',
    unit: 'KC-ST12-1060',
    battery: 'KC-BAT12-F105',
  },
  {
    shop: 'bentcreek',
    name: 'Bent Creek Fleet Supply',
    basket: 'Cart',
    unit: 'BC-21120',
    battery: 'BC-9112F',
  },
] as const

const open = (path: string, context = {}): Promise<Visit> => live.visit(`${live.service}${path}`, context)

/** Waits until every element of the page shows what it shows first. */
async function settled(page: Page): Promise<void> {
  for (const element of ['tallywatt-guide', 'tallywatt-fit']) {
    if ((await page.locator(element).count()) > 0) await new GuidePage(page, element).ready()
  }
}

const basketOf = (page: Page) => page.locator('#basket')

describe('the front door', () => {
  it('leads to both shops, the documents, the playground and the staff page', async () => {
    const { page, faults, close } = await open('/')
    const targets = await page
      .locator('main a')
      .evaluateAll((links) => links.map((link) => link.getAttribute('href')))
    expect(targets).toEqual(
      expect.arrayContaining([
        '/shops/kingcup',
        '/shops/bentcreek',
        '/docs',
        '/staff',
        '/playground',
        '/openapi.json',
      ]),
    )
    for (const path of targets.filter((target) => target !== '/staff')) {
      expect((await live.app.inject(String(path))).statusCode, String(path)).toBe(200)
    }
    expect(faults).toEqual([])
    await close()
  })
})

describe.each(SHOPS)('the pages of $name', ({ shop, basket, unit, battery }) => {
  it('let the guide’s kit into the basket, which says whether it goes together', async () => {
    const { page, faults, close } = await open(`/shops/${shop}`)
    const guide = new GuidePage(page)
    await guide.ready()
    await guide.pick('Laptop')
    await guide.on()
    await guide.on()
    await guide.host.getByLabel('I need a battery too').check()
    await guide.on()
    await guide.host.locator('[part=unit]').waitFor()
    await guide.host.locator('[part=add-to-cart]').click()
    const parts = await guide.host.locator('.kit input:checked').count()
    await expect.poll(() => textOf(page.locator('[data-said]'))).toMatch(/parts? put in/)
    expect(await basketOf(page).locator('li').count()).toBeGreaterThanOrEqual(parts)
    await basketOf(page).getByText(basket).first().click()
    await expect.poll(() => textOf(page.locator('[data-check]'))).toContain('These parts go together.')
    expect(faults).toEqual([])
    await close()
  })

  it('keep the basket from page to page, and take out what is removed', async () => {
    const { page, close } = await open(`/shops/${shop}/products/${unit}`)
    await page.locator('.buy').click()
    await page.goto(`${live.service}/shops/${shop}/products/${battery}`)
    await page.locator('.buy').click()
    await page.goto(`${live.service}/shops/${shop}`)
    await expect.poll(() => textOf(page.locator('[data-count]'))).toBe('2')
    await basketOf(page).locator('summary').click()
    await basketOf(page)
      .getByRole('button', { name: /^Remove / })
      .first()
      .click()
    await expect.poll(() => textOf(page.locator('[data-count]'))).toBe('1')
    await close()
  })

  it('answer on a product’s page, and lead from there to the unit that does it', async () => {
    const { page, faults, close } = await open(`/shops/${shop}/products/${unit}`)
    const fit = new GuidePage(page, 'tallywatt-fit')
    await fit.ready()
    await fit.pick('Microwave oven')
    await fit.host.locator('[part=check]').click()
    await expect.poll(() => textOf(fit.host.locator('[part=verdict]'))).toMatch(/^No/)
    const better = fit.host.locator('[part=smallest] a')
    const title = await textOf(better)
    await better.click()
    await page.waitForURL(`${live.service}/shops/${shop}/products/*`)
    expect(title).toContain(await textOf(page.locator('h1')))
    expect(faults).toEqual([])
    await close()
  })

  it('show a snippet that works as it stands on a page of another origin', async () => {
    for (const path of [`/shops/${shop}`, `/shops/${shop}/products/${unit}`]) {
      const shown = await open(path)
      const snippet = (await shown.page.locator('#snippet').textContent()) ?? ''
      await shown.close()
      expect(snippet).toContain(live.service)
      const page = live.serve({ body: snippet })
      const pasted = await live.visit(page)
      const element = new GuidePage(pasted.page, path.includes('products') ? 'tallywatt-fit' : undefined)
      await element.ready()
      await element.pick('Laptop')
      const accent = await element.host.evaluate((host) =>
        getComputedStyle(host).getPropertyValue('--tallywatt-accent'),
      )
      expect(snippet).toContain(accent.trim())
      expect(pasted.faults).toEqual([])
      await pasted.close()
    }
  })

  it('sell without scripts and without the service too', async () => {
    const plain = await open(`/shops/${shop}`, { javaScriptEnabled: false })
    expect(await plain.page.locator('tallywatt-guide a').isVisible()).toBe(true)
    expect(await plain.page.locator('.units .open').count()).toBeGreaterThan(10)
    await plain.close()
    const { page, faults, close } = await open(`/shops/${shop}/products/${unit}`)
    const fit = new GuidePage(page, 'tallywatt-fit')
    await fit.ready()
    await fit.pick('Laptop')
    await page.context().setOffline(true)
    await fit.host.locator('[part=check]').click()
    await fit.host.locator('[part=failure]').waitFor()
    await page.locator('.buy').click()
    await expect.poll(() => textOf(page.locator('[data-count]'))).toBe('1')
    expect(faults).toEqual([])
    await close()
  })

  it('wear a theme of their own', async () => {
    const { page, close } = await open(`/shops/${shop}`)
    await settled(page)
    const accent = await page.locator('tallywatt-guide').evaluate((host) => {
      const button = host.shadowRoot?.querySelector('[part=next]')
      return button == null ? '' : getComputedStyle(button).backgroundColor
    })
    expect(accent).toBe(shop === 'kingcup' ? 'rgb(31, 77, 54)' : 'rgb(168, 58, 0)')
    await close()
  })

  it('do not move when the script comes', async () => {
    const { page, close } = await live.visit('about:blank', { viewport: { width: 390, height: 844 } })
    await page.addInitScript(() => {
      Reflect.set(window, 'shift', 0)
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) {
          Reflect.set(window, 'shift', Reflect.get(window, 'shift') + Reflect.get(entry, 'value'))
        }
      }).observe({ type: 'layout-shift', buffered: true })
    })
    await page.goto(`${live.service}/shops/${shop}`)
    await settled(page)
    expect(await page.evaluate(() => Reflect.get(window, 'shift'))).toBe(0)
    await close()
  })
})

const PAGES = [
  '/',
  '/playground',
  '/strict',
  ...SHOPS.flatMap(({ shop, unit }) => [`/shops/${shop}`, `/shops/${shop}/products/${unit}`]),
]

describe.each(PAGES)('the page %s', (path) => {
  it.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ])('has nothing that axe objects to, %s', async (_name, context) => {
    const { page, faults, close } = await open(path, context)
    await settled(page)
    expect(await violations(page)).toEqual([])
    expect(faults).toEqual([])
    await close()
  })

  it.each([
    [320, 16],
    [320, 32],
    [1280, 16],
  ])('never scrolls sideways, at %i px with text of %i px', async (width, size) => {
    const { page, close } = await live.visit('about:blank', { viewport: { width, height: 800 } })
    const session = await page.context().newCDPSession(page)
    await session.send('Page.setFontSizes', { fontSizes: { standard: size, fixed: size } })
    await page.goto(`${live.service}${path}`)
    await settled(page)
    await page.locator('main details').evaluateAll((folded) => {
      for (const one of folded) one.toggleAttribute('open', true)
    })
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await close()
  })
})

describe('the playground', () => {
  it('rewrites the snippet with each setting, and the element follows', async () => {
    const { page, faults, close } = await open('/playground')
    await settled(page)
    const snippet = () => textOf(page.locator('#snippet'))
    expect(await snippet()).toContain('<tallywatt-guide shop="kingcup">')
    await page.getByLabel('Shop', { exact: true }).selectOption('bentcreek')
    await page.getByLabel('Language').selectOption('de')
    await page.getByLabel('Light or dark').selectOption('dark')
    await page.getByLabel('Without cart').check()
    expect(await snippet()).toContain(
      '<tallywatt-guide shop="bentcreek" lang="de" scheme="dark" without-cart>',
    )
    const guide = new GuidePage(page)
    await expect.poll(() => textOf(guide.heading)).toBe('Was möchten Sie betreiben?')
    await page.getByLabel('Own theme').check()
    await page.getByLabel('Accent', { exact: true }).fill('#7a0044')
    expect(await snippet()).toContain('--tallywatt-accent: #7a0044;')
    const painted = () => guide.next.evaluate((button) => getComputedStyle(button).backgroundColor)
    await expect.poll(painted).toBe('rgb(122, 0, 68)')
    await page.getByLabel('Width').fill('280')
    await expect.poll(async () => (await page.locator('#stage').boundingBox())?.width).toBe(280)
    expect(faults).toEqual([])
    await close()
  })

  it('offers units of the chosen shop only, and tells what a page would hear', async () => {
    const { page, faults, close } = await open('/playground')
    await settled(page)
    await page.getByLabel('Element', { exact: true }).selectOption('tallywatt-fit')
    await page.getByLabel('Shop', { exact: true }).selectOption('bentcreek')
    await expect
      .poll(() => textOf(page.locator('#snippet')))
      .toMatch(/<tallywatt-fit shop="bentcreek" sku="BC-/)
    const fit = new GuidePage(page, 'tallywatt-fit')
    await fit.ready()
    await fit.pick('Laptop')
    await fit.host.locator('[part=check]').click()
    await fit.host.locator('[part=result]').waitFor()
    await expect.poll(() => textOf(page.locator('#events'))).toContain('tallywatt-answer')
    expect(faults).toEqual([])
    await close()
  })
})

describe('files of the widget', () => {
  it('may be loaded by any page, and be kept for ever under a release’s own number', async () => {
    const release = await live.app.inject('/w/0.1.0/tallywatt.js')
    expect(release.headers['cache-control']).toBe('public, max-age=31536000, immutable')
    expect(release.headers['access-control-allow-origin']).toBe('*')
    expect(release.headers['cross-origin-resource-policy']).toBe('cross-origin')
    const newest = await live.app.inject('/w/0/tallywatt.js')
    expect(newest.headers['cache-control']).toBe('public, max-age=300')
    expect(newest.body).toBe(release.body)
  })

  it('are sent squeezed to those who read that, and not again to those who hold them', async () => {
    const plain = await live.app.inject('/w/0/tallywatt.js')
    for (const encoding of ['br', 'gzip']) {
      const first = await live.app.inject({
        url: '/w/0/tallywatt.js',
        headers: { 'accept-encoding': encoding },
      })
      expect(first.headers['content-encoding']).toBe(encoding)
      expect(first.headers.vary).toContain('Accept-Encoding')
      expect(first.rawPayload.length).toBeLessThan(plain.rawPayload.length)
      const again = await live.app.inject({
        url: '/w/0/tallywatt.js',
        headers: { 'accept-encoding': encoding, 'if-none-match': String(first.headers.etag) },
      })
      expect([again.statusCode, again.body]).toEqual([304, ''])
    }
    const refused = await live.app.inject({
      url: '/w/0/tallywatt.js',
      headers: { 'accept-encoding': 'br;q=0, gzip;q=0.0' },
    })
    expect(refused.headers['content-encoding']).toBeUndefined()
  })

  it('are listed with what they must hash to, each and no other', async () => {
    const reply = await live.app.inject('/w/0.1.0/integrity.json')
    expect(reply.headers['access-control-allow-origin']).toBe('*')
    const { release, files } = reply.json<{ release: string; files: Record<string, string> }>()
    expect(release).toBe('0.1.0')
    expect(Object.keys(files)).toContain('tallywatt.js')
    for (const [name, hash] of Object.entries(files)) {
      const { rawPayload } = await live.app.inject(`/w/0.1.0/${name}`)
      expect(`sha384-${createHash('sha384').update(rawPayload).digest('base64')}`, name).toBe(hash)
    }
  })

  it('are none but those of this release', async () => {
    for (const path of ['/w/7/tallywatt.js', '/w/0/nothing.js', '/w/0/..%2Fserver%2Fmain.js']) {
      expect((await live.app.inject(path)).statusCode, path).toBe(404)
    }
  })
})

describe('shops without pages', () => {
  it.each([
    '/shops/nobody',
    '/shops/__proto__',
    '/shops/kingcup/products/NO-SUCH',
    '/shops/nobody/theme.css',
    '/pages/nothing.css',
  ])('%s is a 404', async (path) => {
    expect((await live.app.inject(path)).statusCode).toBe(404)
  })
})
