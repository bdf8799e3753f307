import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from './support/guide-page.ts'
import { type PageOptions, type Rig, startRig } from './support/rig.ts'

let rig: Rig
beforeAll(async () => {
  rig = await startRig()
})
afterAll(() => rig.close())

interface Opened {
  readonly page: Page
  readonly guide: GuidePage
  readonly errors: readonly string[]
  readonly told: readonly string[]
}

async function open(
  body: string,
  options: PageOptions = {},
  context: BrowserContextOptions = {},
  before: (page: Page) => Promise<unknown> = async () => undefined,
): Promise<Opened> {
  const page = await (await rig.browser.newContext(context)).newPage()
  const errors: string[] = []
  const told: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  page.on('console', (message) => told.push(message.text()))
  await before(page)
  await page.goto(rig.page(body, options))
  return { page, guide: new GuidePage(page), errors, told }
}

const tag = (inner = '') => `<tallywatt-guide shop="kingcup" api="${rig.api}">${inner}</tallywatt-guide>`

describe('focus under a header that sticks to the top', () => {
  const sticky = `<style>body { margin: 0 } header { position: sticky; top: 0; block-size: 100px; background: gold; z-index: 9 }
    tallywatt-guide { --tallywatt-sticky-header: 110px }</style>`

  it('is never hidden, forwards, backwards and on a new screen', { timeout: 60_000 }, async () => {
    const { page, guide } = await open(
      `<header>A shop</header><div style="height:300px">Offers</div>${tag()}<div style="height:900px"></div>`,
      { head: sticky },
      { viewport: { width: 500, height: 560 } },
    )
    await guide.ready()
    await guide.pick('Microwave oven', 'Laptop', 'Television')
    const hidden: string[] = []
    const look = async () => {
      const found = await guide.host.evaluate((host) => {
        const active = host.shadowRoot?.activeElement
        if (active == null) return undefined
        const { top, bottom, left, width } = active.getBoundingClientRect()
        const foot = host.shadowRoot?.querySelector('.foot')
        const inFoot = foot?.contains(active) ?? false
        const end = inFoot || foot == null ? innerHeight : foot.getBoundingClientRect().top
        const seen = host.shadowRoot?.elementFromPoint(left + width / 2, Math.max(top, 101))
        const covered = top < 100 || bottom > end + 1
        return covered
          ? `${active.outerHTML.slice(0, 80)} from ${top} to ${bottom}, seen ${seen?.tagName}`
          : undefined
      })
      if (found !== undefined) hidden.push(found)
    }
    await guide.host.locator('#search').focus()
    for (let presses = 0; presses < 22; presses += 1) {
      await page.keyboard.press('Tab')
      await look()
    }
    for (let presses = 0; presses < 22; presses += 1) {
      await page.keyboard.press('Shift+Tab')
      await look()
    }
    await guide.on()
    await guide.host.getByText('Question 2 of 3').waitFor()
    await look()
    expect(hidden).toEqual([])
    await page.context().close()
  })
})

describe('the search', () => {
  it('reaches every found thing, also past the eighth', async () => {
    const { page, guide } = await open(tag())
    await guide.ready()
    const search = guide.host.locator('#search')
    await search.fill('c')
    await guide.host.locator('.hits li').nth(8).waitFor()
    const count = await guide.host.locator('.hits li').count()
    expect(count).toBeGreaterThan(8)
    await search.press('ArrowUp')
    const last = guide.host.locator(`#hit-${count - 1}`)
    await expect
      .poll(() =>
        last.evaluate((hit) => {
          const list = hit.parentElement?.getBoundingClientRect()
          const { top, bottom } = hit.getBoundingClientRect()
          return list !== undefined && top >= list.top - 1 && bottom <= list.bottom + 1
        }),
      )
      .toBe(true)
    const name = await textOf(last.locator('.name'))
    await search.press('Enter')
    await expect.poll(() => textOf(guide.status)).toContain(`${name} added`)
    await page.context().close()
  })
})

describe('what a reader asks the browser for', () => {
  const barStyle = (guide: GuidePage) =>
    guide.host
      .locator('.bar rect')
      .first()
      .evaluate((rect) => getComputedStyle(rect).transitionDuration)

  it('less motion: nothing moves', async () => {
    const still = await open(tag(), {}, { reducedMotion: 'reduce' })
    await still.guide.ready()
    await still.guide.pick('Laptop')
    expect(await barStyle(still.guide)).toBe('0s')
    const moving = await open(tag(), {}, { reducedMotion: 'no-preference' })
    await moving.guide.ready()
    await moving.guide.pick('Laptop')
    expect(await barStyle(moving.guide)).toContain('0.25s')
    await still.page.context().close()
    await moving.page.context().close()
  })

  it('more contrast: quiet words and edges are in full ink', async () => {
    const { page, guide } = await open(tag(), {}, { contrast: 'more' })
    await guide.ready()
    const colours = await guide.host.evaluate((host) => {
      const colour = (selector: string, name: 'color' | 'borderTopColor') => {
        const found = host.shadowRoot?.querySelector(selector)
        return found == null ? '' : getComputedStyle(found)[name]
      }
      return {
        ink: colour('h2', 'color'),
        quiet: colour('.label', 'color'),
        edge: colour('#search', 'borderTopColor'),
        tile: colour('.tile', 'borderTopColor'),
      }
    })
    expect(colours).toEqual({
      ink: colours.ink,
      quiet: colours.ink,
      edge: colours.ink,
      tile: colours.ink,
    })
    await page.context().close()
  })
})

describe('the colours of a shop', () => {
  it('are noted on the console where they can’t be read, and only there', async () => {
    const head = '<style>tallywatt-guide { --tallywatt-accent: #ffe680; --tallywatt-on-accent: #fff }</style>'
    const bad = await open(tag(), { head }, { colorScheme: 'light' })
    await bad.guide.ready()
    await expect
      .poll(() => bad.told.join('\n'))
      .toMatch(/--tallywatt-on-accent on --tallywatt-accent: 1\.2, at least 4\.5/)
    const good = await open(tag(), {}, { colorScheme: 'light' })
    await good.guide.ready()
    await good.guide.pick('Laptop')
    expect(good.told.filter((line) => line.includes('contrast'))).toEqual([])
    await bad.page.context().close()
    await good.page.context().close()
  })
})

describe('a page that', () => {
  it('clones a guide gets a fresh one', async () => {
    const { page, guide, errors } = await open(tag())
    await guide.ready()
    await guide.pick('Laptop')
    await page.evaluate(() => {
      const first = document.querySelector('tallywatt-guide')
      if (first !== null) document.body.append(first.cloneNode(true))
    })
    const second = new GuidePage(page, 'tallywatt-guide >> nth=1')
    await second.ready()
    expect(await second.host.locator('.thing').count()).toBe(0)
    await second.pick('Television')
    expect(await textOf(new GuidePage(page, 'tallywatt-guide >> nth=0').host.locator('.foot'))).toContain(
      '150 W',
    )
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('loads two versions of the script keeps the first and hears a note', async () => {
    const head = '<script type="module" src="/other-version/tallywatt.js"></script>'
    const { page, guide, errors, told } = await open(tag(), { head })
    await guide.ready()
    await guide.pick('Laptop')
    await expect.poll(() => told.join('\n')).toContain('<tallywatt-guide> is registered already')
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('takes a guide away stops its questions', async () => {
    const stopped: string[] = []
    const { page, errors } = await open(tag(), {}, {}, async (fresh) => {
      await fresh.route('**/setup*', () => undefined)
      fresh.on('requestfailed', (request) =>
        stopped.push(`${new URL(request.url()).pathname} ${request.failure()?.errorText}`),
      )
    })
    await page.getByText('One moment').waitFor()
    await page.evaluate(() => document.querySelector('tallywatt-guide')?.remove())
    await expect.poll(() => stopped).toEqual(['/v1/shops/kingcup/setup net::ERR_ABORTED'])
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('draws with Lit too, under trusted types, gets both', async () => {
    const csp = `default-src 'none'; script-src 'self'; connect-src ${rig.api}; require-trusted-types-for 'script'; trusted-types lit-html 'allow-duplicates'`
    const head = '<script type="module" src="/own-lit.js"></script>'
    const { page, guide, errors } = await open(tag(), { csp, head })
    await guide.ready()
    await page.getByText('drawn by the page').waitFor()
    await guide.pick('Laptop')
    await guide.toAnswer()
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('runs no scripts still shows the way that the shop put inside', async () => {
    const { page } = await open(
      tag('<a href="/contact">Ask us which one</a>'),
      {},
      { javaScriptEnabled: false },
    )
    const link = page.getByRole('link', { name: 'Ask us which one' })
    expect(await link.isVisible()).toBe(true)
    expect(await link.getAttribute('href')).toBe('/contact')
    await page.context().close()
  })
})

describe('a battery that is too small', () => {
  it('is what the answer speaks of first, with the battery that would do', async () => {
    const { page, guide } = await open(tag())
    await guide.ready()
    await guide.pick('Microwave oven', 'Laptop')
    await guide.on(2)
    await guide.host.getByLabel('I have one').check()
    await guide.host.getByLabel('Lead-acid with caps to top up').check()
    await guide.host.locator('#capacity').fill('40')
    await guide.on()
    const verdict = guide.host.locator('[part=verdict]')
    await verdict.waitFor()
    await expect.poll(() => textOf(verdict)).toBe('This unit fits. Your battery does not.')
    await expect.poll(() => textOf(guide.status)).toBe('This unit fits. Your battery does not.')
    const notice = await textOf(guide.host.locator('[part=battery]'))
    expect(notice).toMatch(/battery/i)
    expect(notice).toMatch(/a battery of about [\d,]+ Ah at 12 V/)
    expect(notice).toContain('A battery that does:')
    await page.context().close()
  })

  it('does not darken the answer of one that carries the plan', async () => {
    const { page, guide } = await open(tag())
    await guide.ready()
    await guide.pick('Phone charger')
    await guide.on(2)
    await guide.host.getByLabel('I have one').check()
    await guide.host.locator('#capacity').fill('200')
    await guide.on()
    await guide.host.locator('[part=unit]').waitFor()
    await expect.poll(() => textOf(guide.host.locator('[part=verdict]'))).toMatch(/^This one fits/)
    await expect.poll(() => guide.host.locator('[part=battery]').count()).toBe(0)
    await page.context().close()
  })
})

describe('a what-if', () => {
  it('is tried with a tap and undone with another', async () => {
    const { page, guide } = await open(tag())
    await guide.ready()
    await guide.pick('Microwave oven', 'Electric kettle', 'Laptop')
    await guide.toAnswer()
    const verdict = guide.host.locator('[part=verdict]')
    await expect.poll(() => textOf(verdict)).toBe('None of ours fits')
    await guide.host.locator('[part=what-ifs] button').first().click()
    await guide.host.getByText('Shown with your change.').waitFor()
    await expect.poll(() => textOf(verdict)).toMatch(/^This one fits/)
    await guide.host.getByRole('button', { name: 'Undo the change' }).click()
    await expect.poll(() => textOf(verdict)).toBe('None of ours fits')
    await expect.poll(() => textOf(guide.host.locator('[part=answers]'))).toContain('Electric kettle')
    await page.context().close()
  })
})
