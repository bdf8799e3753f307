import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { filledAnswer } from './support/fixtures.ts'
import { GuidePage, textOf } from './support/guide-page.ts'
import { type Rig, startRig } from './support/rig.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']

let rig: Rig
beforeAll(async () => {
  rig = await startRig()
})
afterAll(() => rig.close())

async function open(context: BrowserContextOptions, lang = 'en', body = guideTag()): Promise<Page> {
  const page = await (await rig.browser.newContext(context)).newPage()
  await page.route('**/sizing', async (route) => {
    const response = await route.fetch()
    await route.fulfill({ response, json: filledAnswer(await response.json()) })
  })
  await page.goto(rig.page(body, { lang, head: '<style>body{margin:0}</style>' }))
  await page.evaluate(axe)
  return page
}

function guideTag(): string {
  return `<main><h1>A shop</h1><tallywatt-guide shop="kingcup" api="${rig.api}"></tallywatt-guide></main>`
}

/**
 * What axe finds wrong, and what it could not decide. One kind of the latter is left out: axe can't reckon the
 * contrast of words inside a drawing, of single letters, or of words that lie under the foot that sticks to the
 * window's edge. Those words use the pairs of colours that "pairs of colours" below proves.
 */
async function findings(page: Page): Promise<readonly string[]> {
  const results = (await page.evaluate(
    (tags) => Reflect.get(window, 'axe').run({ runOnly: { type: 'tag', values: tags } }),
    TAGS,
  )) as AxeResults
  const told = (list: AxeResults['violations']) =>
    list.flatMap(({ id, nodes }) =>
      nodes.map(({ target, any }) => `${id}: ${target} ${any[0]?.message ?? ''}`),
    )
  return told([...results.violations, ...results.incomplete.filter(({ id }) => id !== 'color-contrast')])
}

/** Walks through every screen and state of the guide, and stops at each. */
async function walk(page: Page, stop: (screen: string) => Promise<void>): Promise<void> {
  const guide = new GuidePage(page)
  const { host } = guide
  await guide.ready()
  await stop('nothing picked')
  for (const place of [0, 2, 5]) await host.locator('.tiles .tile').nth(place).click()
  await host.locator('.thing').nth(2).waitFor()
  await stop('three picked')
  await host.locator('#search').fill('hair')
  await host.locator('.hits li').first().waitFor()
  await page.keyboard.press('ArrowDown')
  await stop('search open')
  await page.keyboard.press('Escape')
  await host.locator('.also button').first().click()
  await host.locator('.kinds .tile').nth(8).click()
  await stop('kinds open')
  await host.locator('.also button').first().click()
  await host.locator('[data-edit]').first().click()
  await host.locator('.editor .pick').nth(1).click()
  await host.locator('.editor input[type=text]').fill('no number')
  await host.locator('.fault').waitFor()
  await stop('faulty power')
  await host.locator('.editor input[type=text]').fill('800')
  await stop('power typed')
  await guide.on()
  await host.locator('.turns button').click()
  await stop('choosing turns')
  for (const place of [0, 1]) await host.locator('.tick input').nth(place).click()
  await host.locator('.turns .go').click()
  await stop('taking turns')
  await guide.on()
  await host.locator('.ask').nth(1).locator('input').first().click()
  await host.locator('#capacity').fill('none')
  await stop('supply with a fault')
  await host.locator('#capacity').fill('120')
  await guide.on()
  await host.locator('[part=working]').waitFor()
  for (const summary of await host.locator('summary').all()) await summary.click()
  await host.locator('table').waitFor()
  await stop('the answer, unfolded')
}

const settings: readonly (readonly [string, BrowserContextOptions, string])[] = [
  ['light', { colorScheme: 'light' }, 'en'],
  ['dark', { colorScheme: 'dark' }, 'en'],
  ['forced colours', { forcedColors: 'active' }, 'en'],
  ['from right to left, narrow', { viewport: { width: 320, height: 700 } }, 'ar-XB'],
]

describe('accessibility of the guide', () => {
  it.each(settings)(
    'axe finds nothing on any screen, %s',
    { timeout: 90_000 },
    async (_name, context, lang) => {
      const page = await open({ reducedMotion: 'reduce', ...context }, lang)
      const found: string[] = []
      await walk(page, async (screen) => {
        for (const finding of await findings(page)) found.push(`${screen}: ${finding}`)
      })
      expect(found).toEqual([])
      await page.context().close()
    },
  )

  it('axe finds nothing while the service is down', async () => {
    const page = await open({})
    const guide = new GuidePage(page)
    await guide.ready()
    await guide.pick('Laptop')
    await page.unroute('**/sizing')
    await page.route('**/sizing', (route) => route.abort())
    await guide.on(3)
    await guide.host.locator('[part=failure]').waitFor()
    expect(await findings(page)).toEqual([])
    await page.context().close()
  })

  it('every target is 44 px high, and wide where it stands alone', { timeout: 60_000 }, async () => {
    const page = await open({ viewport: { width: 320, height: 700 } })
    const small: string[] = []
    await walk(page, async (screen) => {
      const found = await page.locator('tallywatt-guide').evaluate((host) =>
        [
          ...(host.shadowRoot?.querySelectorAll(
            'button, summary, select, input[type=text], .pick, .tick, .hits li',
          ) ?? []),
        ]
          .map((target) => ({ target, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 43.9 || box.width < 43.9))
          .map(({ target, box }) => `${target.tagName}.${target.className} ${box.width} x ${box.height}`),
      )
      for (const one of found) small.push(`${screen}: ${one}`)
    })
    expect(small).toEqual([])
    await page.context().close()
  })

  it.each([
    [320, 16, 'en'],
    [280, 16, 'en'],
    [320, 32, 'en'],
    [320, 16, 'en-XA'],
    [320, 32, 'en-XA'],
    [320, 16, 'ar-XB'],
  ])(
    'nothing scrolls sideways at %i px with text of %i px in %s',
    { timeout: 60_000 },
    async (width, size, lang) => {
      const context = await rig.browser.newContext({ viewport: { width, height: 800 } })
      const page = await context.newPage()
      const session = await context.newCDPSession(page)
      await session.send('Page.setFontSizes', { fontSizes: { standard: size, fixed: size } })
      await page.route('**/sizing', async (route) => {
        const response = await route.fetch()
        await route.fulfill({ response, json: filledAnswer(await response.json()) })
      })
      const spaced = 'tallywatt-guide::part(base){letter-spacing:.12em;word-spacing:.16em;line-height:1.5}'
      await page.goto(rig.page(guideTag(), { lang, head: `<style>body{margin:0}${spaced}</style>` }))
      const wide: string[] = []
      await walk(page, async (screen) => {
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        if (over > 0) wide.push(`${screen}: ${over} px too wide`)
      })
      expect(wide).toEqual([])
      await context.close()
    },
  )
})

/** Contrast of two colours as WCAG 2.2 defines it (relative luminance, contrast ratio). */
function contrast(one: readonly number[], other: readonly number[]): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (light + 0.05) / (dark + 0.05)
}

function luminance(rgb: readonly number[]): number {
  const [red = 0, green = 0, blue = 0] = rgb.map((value) => {
    const share = value / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  })
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

describe('pairs of colours', () => {
  const pairs: readonly (readonly [string, string, number])[] = [
    ['ink', 'paper', 7],
    ['quiet', 'paper', 4.5],
    ['quiet', 'wash', 4.5],
    ['ink', 'wash', 4.5],
    ['ink', 'tint', 4.5],
    ['on-accent', 'accent', 4.5],
    ['accent', 'wash', 4.5],
    ['accent', 'paper', 3],
    ['edge', 'paper', 3],
  ]

  it.each(['light', 'dark'] as const)('read well when it is %s', async (scheme) => {
    const page = await open({ colorScheme: scheme })
    await new GuidePage(page).ready()
    const colours = await page.locator('tallywatt-guide').evaluate(
      (host, names) => {
        const base = host.shadowRoot?.querySelector('.base')
        const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true })
        if (base == null || canvas == null) return []
        return names.map((name) => {
          const probe = base.appendChild(document.createElement('i'))
          probe.style.color = `var(--${name})`
          canvas.fillStyle = getComputedStyle(probe).color
          canvas.fillRect(0, 0, 1, 1)
          probe.remove()
          return [...canvas.getImageData(0, 0, 1, 1).data.slice(0, 3)]
        })
      },
      pairs.flatMap((pair) => pair.slice(0, 2) as string[]),
    )
    for (const [index, [fore, back, least]] of pairs.entries()) {
      const ratio = contrast(colours[2 * index] ?? [], colours[2 * index + 1] ?? [])
      expect(ratio, `${fore} on ${back}`).toBeGreaterThanOrEqual(least)
    }
    await page.context().close()
  })
})

describe('the keyboard', () => {
  it('finishes the whole guide alone', { timeout: 60_000 }, async () => {
    const page = await open({})
    const guide = new GuidePage(page)
    await guide.ready()
    const tabTo = async (selector: string) => {
      for (let presses = 0; presses < 60; presses += 1) {
        if (await guide.focused(selector)) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`Tab never came to ${selector}`)
    }
    await tabTo('#search')
    await page.keyboard.type('microwav')
    await guide.host.locator('.hits li').first().waitFor()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => guide.host.locator('#search').getAttribute('aria-activedescendant')).toBe('hit-0')
    await page.keyboard.press('Enter')
    await page.keyboard.type('laptop')
    await page.keyboard.press('Enter')
    await guide.host.locator('.thing').nth(1).waitFor()
    await tabTo('[part=next]')
    await page.keyboard.press('Enter')
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await tabTo('[data-turns]')
    await page.keyboard.press('Space')
    await tabTo('.tick input')
    await page.keyboard.press('Space')
    await page.keyboard.press('Tab')
    await tabTo('.tick input')
    await page.keyboard.press('Space')
    await tabTo('.turns .go')
    await page.keyboard.press('Enter')
    await guide.host.locator('.group').waitFor()
    await tabTo('[part=next]')
    await page.keyboard.press('Enter')
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await tabTo('[name=nominalV]')
    await page.keyboard.press('ArrowLeft')
    await expect.poll(() => guide.host.getByLabel('24 V').isChecked()).toBe(true)
    await tabTo('[part=next]')
    await page.keyboard.press('Enter')
    await guide.host.locator('[part=unit]').waitFor()
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await tabTo('[part=add-to-cart]')
    await page.context().close()
  })

  it('leaves the guide at both ends, and Enter sends no form of the page', async () => {
    const body = `<form action="/sent"><input id="before"><tallywatt-guide shop="kingcup" api="${rig.api}"></tallywatt-guide><input id="after"></form>`
    const page = await open({}, 'en', body)
    const guide = new GuidePage(page)
    await guide.ready()
    await page.focus('#before')
    await page.keyboard.press('Tab')
    await expect.poll(() => guide.focused('#search')).toBe(true)
    await page.keyboard.type('kettle')
    await guide.host.locator('.hits li').first().waitFor()
    await page.keyboard.press('Enter')
    await page.keyboard.press('Enter')
    expect(page.url()).not.toContain('/sent')
    for (let presses = 0; presses < 40; presses += 1) {
      await page.keyboard.press('Tab')
      if ((await page.evaluate(() => document.activeElement?.id)) === 'after') break
    }
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('after')
    await page.keyboard.press('Shift+Tab')
    expect(await page.evaluate(() => document.activeElement?.localName)).toBe('tallywatt-guide')
    await page.context().close()
  })

  it('moves through the found things and closes them with Escape', async () => {
    const page = await open({})
    const guide = new GuidePage(page)
    await guide.ready()
    const search = guide.host.locator('#search')
    await search.fill('coffee')
    await expect.poll(() => textOf(guide.status)).toMatch(/\d+ things found/)
    await search.press('ArrowUp')
    const last = (await guide.host.locator('.hits li').count()) - 1
    await expect.poll(() => search.getAttribute('aria-activedescendant')).toBe(`hit-${last}`)
    await search.press('ArrowDown')
    await expect.poll(() => search.getAttribute('aria-activedescendant')).toBe('hit-0')
    await search.press('Escape')
    await expect.poll(() => search.getAttribute('aria-expanded')).toBe('false')
    await page.context().close()
  })
})

describe('accessibility of the fit element', () => {
  it.each(settings.slice(0, 3))(
    'axe finds nothing, %s',
    { timeout: 60_000 },
    async (_name, context, lang) => {
      const body = `<main><h1>A unit</h1><tallywatt-fit shop="kingcup" sku="KC-ST12-1060" api="${rig.api}"></tallywatt-fit></main>`
      const page = await open({ reducedMotion: 'reduce', ...context }, lang, body)
      const fit = new GuidePage(page, 'tallywatt-fit')
      await fit.ready()
      expect(await findings(page)).toEqual([])
      await fit.pick('Microwave oven')
      await fit.host.locator('[part=check]').click()
      await fit.host.locator('[part=result]').waitFor()
      expect(await findings(page)).toEqual([])
      await page.context().close()
    },
  )
})
