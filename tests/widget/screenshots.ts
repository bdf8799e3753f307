import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import { filledAnswer } from './support/fixtures.ts'
import { GuidePage } from './support/guide-page.ts'
import { type Rig, startRig } from './support/rig.ts'

/**
 * Pictures of every screen of both elements into screenshots/, for people to look at:
 * three widths in light and dark, and long words, right to left, forced colours once each.
 * Run "npx tsx tests/widget/screenshots.ts".
 */
const folder = fileURLToPath(new URL('../../screenshots/', import.meta.url))

interface Setting {
  readonly name: string
  readonly width: number
  readonly lang: string
  readonly context: BrowserContextOptions
}

const SETTINGS: readonly Setting[] = [
  ...[320, 768, 1280].flatMap((width) =>
    (['light', 'dark'] as const).map((colorScheme) => ({
      name: `${width}-${colorScheme}`,
      width,
      lang: 'en',
      context: { colorScheme },
    })),
  ),
  { name: '320-long-words', width: 320, lang: 'en-XA', context: {} },
  { name: '768-right-to-left', width: 768, lang: 'ar-XB', context: {} },
  { name: '768-forced-colours', width: 768, lang: 'en', context: { forcedColors: 'active' } },
]

mkdirSync(folder, { recursive: true })
const rig = await startRig()
for (const setting of SETTINGS) await picture(rig, setting)
await rig.close()

async function picture(
  { browser, page: served, api }: Rig,
  { name, width, lang, context }: Setting,
): Promise<void> {
  const page = await (await browser.newContext({ ...context, viewport: { width, height: 900 } })).newPage()
  await page.route('**/sizing', async (route) => {
    const response = await route.fetch()
    await route.fulfill({ response, json: filledAnswer(await response.json()) })
  })
  const body = `<tallywatt-guide shop="kingcup" api="${api}"></tallywatt-guide>
    <tallywatt-fit shop="kingcup" sku="KC-ST12-1060" api="${api}"></tallywatt-fit>`
  await page.goto(served(body, { lang, head: '<style>body{margin:0}</style>' }))
  const { host, ready, on } = bound(new GuidePage(page))
  const shoot = (screen: string, element: Locator = host) =>
    shot(page, element, `${folder}${screen}-${name}.png`, width)
  await ready()
  await shoot('1-first')
  for (const place of [0, 2, 5]) await host.locator('.tiles .tile').nth(place).click()
  await host.locator('.thing').nth(2).waitFor()
  await shoot('1-picked')
  await host.locator('#search').fill('hair')
  await shoot('1-search')
  await host.locator('#search').fill('')
  await host.locator('.also button').first().click()
  await host.locator('.kinds .tile').nth(8).click()
  await shoot('1-kinds')
  await host.locator('.also button').first().click()
  await host.locator('[data-edit]').first().click()
  await host.locator('.editor .pick').nth(1).click()
  await host.locator('.editor input[type=text]').fill('800')
  await shoot('1-power')
  await on()
  await host.locator('.turns button').click()
  for (const place of [0, 1]) await host.locator('.tick input').nth(place).click()
  await shoot('2-choosing-turns')
  await host.locator('.turns .go').click()
  await shoot('2-when')
  await on()
  await host.locator('.ask').nth(1).locator('input').first().click()
  await shoot('3-supply')
  await on()
  await host.locator('[part=working]').waitFor()
  await shoot('4-answer')
  await page.route('**/sizing', (route) => route.abort())
  await host.locator('[part=answers] button').first().click()
  await on(3)
  await host.locator('[part=failure]').waitFor()
  await shoot('5-failure')
  const fit = page.locator('tallywatt-fit')
  await fit.locator('.tiles .tile').first().click()
  await fit.locator('[part=check]').click()
  await fit.locator('[part=result]').waitFor()
  await shoot('6-fit', fit)
  await page.context().close()
}

function bound(guide: GuidePage) {
  return { host: guide.host, on: (screens = 1) => guide.on(screens), ready: () => guide.ready() }
}

/** The whole element at once: the window is made as high, so that the foot stands where it belongs. */
async function shot(page: Page, element: Locator, path: string, width: number): Promise<void> {
  await page.waitForTimeout(350)
  const height = await element.evaluate((shown) => shown.scrollHeight)
  await page.setViewportSize({ width, height: Math.max(600, Math.min(height + 40, 6000)) })
  await page.evaluate(() => scrollTo(0, 0))
  await element.screenshot({ path })
  await page.setViewportSize({ width, height: 900 })
}
