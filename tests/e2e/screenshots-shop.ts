import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { GuidePage } from '../widget/support/guide-page.ts'
import { type Live, startLive } from './support/live.ts'

/**
 * Pictures of the service's own pages into screenshots/, for people to look at, in three widths, light and dark.
 * Run "npx tsx tests/e2e/screenshots-shop.ts", with words to choose pages by.
 */
const folder = fileURLToPath(new URL('../../screenshots/shop/', import.meta.url))
const wanted = process.argv.slice(2)

interface Shot {
  readonly name: string
  readonly path: string
  readonly before?: (page: Page) => Promise<void>
}

const SHOTS: readonly Shot[] = [
  { name: 'home', path: '/' },
  { name: 'kingcup', path: '/shops/kingcup', before: shown('tallywatt-guide') },
  { name: 'kingcup-answer', path: '/shops/kingcup', before: answered },
  { name: 'kingcup-basket', path: '/shops/kingcup', before: basketOpen },
  {
    name: 'kingcup-product',
    path: '/shops/kingcup/products/KC-ST12-1060',
    before: shown('tallywatt-fit'),
  },
  { name: 'bentcreek', path: '/shops/bentcreek', before: shown('tallywatt-guide') },
  { name: 'bentcreek-answer', path: '/shops/bentcreek', before: answered },
  { name: 'bentcreek-product', path: '/shops/bentcreek/products/BC-21120', before: shown('tallywatt-fit') },
  { name: 'bentcreek-battery', path: '/shops/bentcreek/products/BC-9112F' },
  { name: 'playground', path: '/playground', before: shown('tallywatt-guide') },
  { name: 'playground-themed', path: '/playground', before: themed },
  { name: 'strict', path: '/strict', before: shown('tallywatt-guide') },
]

function shown(element: string): (page: Page) => Promise<void> {
  return (page) => new GuidePage(page, element).ready()
}

async function answered(page: Page): Promise<void> {
  const guide = new GuidePage(page)
  await guide.ready()
  await guide.pick('Microwave oven', 'Laptop')
  await guide.toAnswer()
}

async function basketOpen(page: Page): Promise<void> {
  await answered(page)
  await page.locator('tallywatt-guide [part=add-to-cart]').click()
  await page.locator('#basket summary').click()
  await page.locator('[data-check] p').waitFor()
  await page.evaluate(() => scrollTo(0, 0))
}

async function themed(page: Page): Promise<void> {
  await new GuidePage(page).ready()
  await page.getByLabel('Own theme').check()
  await page.getByLabel('Language').selectOption('fr')
}

async function shoot(live: Live, shot: Shot): Promise<void> {
  for (const width of [320, 768, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      const { page, faults, close } = await live.visit(`${live.service}${shot.path}`, {
        colorScheme,
        viewport: { width, height: 900 },
      })
      await shot.before?.(page)
      await page.waitForTimeout(200)
      const height = Math.min(2200, await page.evaluate(() => document.documentElement.scrollHeight))
      const path = `${folder}${shot.name}-${width}-${colorScheme}.png`
      await page.screenshot({ path, fullPage: true, clip: { x: 0, y: 0, width, height } })
      if (faults.length > 0) console.log(shot.name, width, colorScheme, faults)
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
      if (over > 0) console.log(`${shot.name} ${width}: ${over} px too wide`)
      await close()
    }
  }
}

mkdirSync(folder, { recursive: true })
const live = await startLive()
for (const shot of SHOTS) {
  if (wanted.length === 0 || wanted.some((word) => shot.name.includes(word))) await shoot(live, shot)
}
await live.close()
