import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { madeUpDemand, StaffPage, type StaffRig, startStaffRig } from './staff-rig.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

let rig: StaffRig
beforeAll(async () => {
  rig = await startStaffRig()
  await rig.service.store.addDemand({
    id: 'access',
    rows: madeUpDemand(new Date().toISOString().slice(0, 10)),
  })
})
afterAll(() => rig.close())

/** Walks through every section and state of the page, and stops at each. */
async function walk(page: Page, stop: (screen: string) => Promise<void>): Promise<void> {
  const staff = new StaffPage(page)
  await page.goto(`${rig.origin}/staff`)
  await page.getByLabel('Shop id').waitFor()
  await stop('sign in')
  await staff.signIn('kingcup', rig.key)
  await stop('range')
  await staff.cell('Surge, W', 'KC-ST12-145').fill('much')
  await staff.cell('Price', 'KC-ST12-295').fill('')
  await page.locator('[data-add]').click()
  await staff.check()
  await page.locator('#faults-heading').waitFor()
  await stop('range with faults')
  await staff.cell('Price', 'KC-ST12-295').fill('99')
  await stop('range, one fault edited')
  await page.getByRole('button', { name: 'Drop all edits' }).click()
  await staff.cell('Continuous, W', 'KC-ST12-2350').fill('1900')
  await staff.check()
  await page.locator('#changes-heading').waitFor()
  await stop('preview')
  await page.getByRole('button', { name: 'Drop all edits' }).click()
  await staff.go('History')
  await stop('history')
  await staff.go('Coverage')
  for (const summary of (await page.locator('summary').all()).slice(0, 3)) await summary.click()
  await stop('coverage')
  await staff.go('Demand')
  for (const summary of await page.locator('summary').all()) await summary.click()
  await stop('demand')
  await staff.go('Phone desk')
  await page.locator('#desk-search').fill('coffee')
  await stop('desk, searching')
  await page.keyboard.press('Enter')
  await page.locator('#desk-search').fill('laptop')
  await page.keyboard.press('Enter')
  await page.locator('#aloud').waitFor()
  await stop('desk with an answer')
}

async function findings(page: Page): Promise<readonly string[]> {
  const loaded = await page.evaluate(() => 'axe' in window)
  if (!loaded) await page.evaluate(axe)
  const results = (await page.evaluate(
    (tags) => Reflect.get(window, 'axe').run({ runOnly: { type: 'tag', values: tags } }),
    TAGS,
  )) as AxeResults
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, any, all }) => `${id}: ${target} ${any[0]?.message ?? all[0]?.message ?? ''}`),
  )
}

const SETTINGS: readonly (readonly [string, BrowserContextOptions])[] = [
  ['light', { colorScheme: 'light' }],
  ['dark', { colorScheme: 'dark' }],
  ['forced colours', { forcedColors: 'active' }],
  ['narrow', { viewport: { width: 320, height: 700 } }],
]

describe('accessibility of the staff page', () => {
  it.each(SETTINGS)('axe finds nothing in any section, %s', { timeout: 180_000 }, async (_name, options) => {
    const page = await (await rig.browser.newContext(options)).newPage()
    const found: string[] = []
    await walk(page, async (screen) => {
      for (const finding of await findings(page)) found.push(`${screen}: ${finding}`)
    })
    expect(found).toEqual([])
    await page.context().close()
  })

  it.each([
    [320, 16],
    [320, 32],
    [1280, 32],
  ])(
    'nothing scrolls sideways at %i px with text of %i px, but tables in their own regions',
    { timeout: 120_000 },
    async (width, textPx) => {
      const context = await rig.browser.newContext({ viewport: { width, height: 800 } })
      const page = await context.newPage()
      const session = await context.newCDPSession(page)
      await session.send('Page.setFontSizes', { fontSizes: { standard: textPx, fixed: textPx } })
      const wide: string[] = []
      await walk(page, async (screen) => {
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
        if (over > 0) wide.push(`${screen}: ${over} px too wide`)
        const nameless = await page
          .locator('.scroll')
          .evaluateAll(
            (all) =>
              all.filter(
                (one) =>
                  one.getAttribute('tabindex') !== '0' ||
                  (one.getAttribute('aria-label') ?? one.getAttribute('aria-labelledby') ?? '') === '',
              ).length,
          )
        if (nameless > 0) wide.push(`${screen}: ${nameless} scrolling regions without a name or focus`)
      })
      expect(wide).toEqual([])
      await context.close()
    },
  )

  it('every target outside the table is 44 px high, and 24 px within it', { timeout: 120_000 }, async () => {
    const page = await (await rig.browser.newContext({ viewport: { width: 320, height: 700 } })).newPage()
    const small: string[] = []
    await walk(page, async (screen) => {
      const found = await page
        .locator('button, summary, select, input:not([type=file]), nav a, .hits li')
        .evaluateAll((all) =>
          all
            .map((target) => ({ target, box: target.getBoundingClientRect() }))
            .filter(
              ({ target, box }) => box.height > 0 && box.height < (target.closest('.parts') ? 24 : 43.9),
            )
            .map(({ target, box }) => `${target.tagName}#${target.id}.${target.className} ${box.height} px`),
        )
      for (const one of found) small.push(`${screen}: ${one}`)
    })
    expect(small).toEqual([])
    await page.context().close()
  })

  it('what has focus is never hidden by what sticks to an edge', { timeout: 60_000 }, async () => {
    const staff = await rig.open({ viewport: { width: 1000, height: 700 } })
    const hidden: string[] = []
    for (let presses = 0; presses < 260; presses += 1) {
      await staff.page.keyboard.press('Tab')
      const found = await staff.page.evaluate(() => {
        const target = document.activeElement
        if (target === null || target === document.body) return ''
        const box = target.getBoundingClientRect()
        const top = document.elementFromPoint(
          box.left + Math.min(box.width, 40) / 2,
          box.top + box.height / 2,
        )
        const seen = top !== null && (target.contains(top) || top.contains(target))
        return seen ? '' : `${target.id || target.className}`
      })
      if (found !== '') hidden.push(found)
    }
    expect(hidden).toEqual([])
    await staff.page.context().close()
  })
})
