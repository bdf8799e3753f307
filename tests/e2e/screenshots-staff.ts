import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { BrowserContextOptions, Page } from 'playwright-core'
import { madeUpDemand, type StaffPage, type StaffRig, startStaffRig } from './staff-rig.ts'

/**
 * Pictures of every section of the staff page into screenshots/, for people to look at: three widths in light and
 * dark, and forced colours and large text once each. Run "npx tsx tests/e2e/screenshots-staff.ts".
 */
const folder = fileURLToPath(new URL('../../screenshots/', import.meta.url))

interface Setting {
  readonly name: string
  readonly width: number
  readonly textPx?: number
  readonly context: BrowserContextOptions
}

const SETTINGS: readonly Setting[] = [
  ...[320, 768, 1280].flatMap((width) =>
    (['light', 'dark'] as const).map((colorScheme) => ({
      name: `${width}-${colorScheme}`,
      width,
      context: { colorScheme },
    })),
  ),
  { name: '768-forced-colours', width: 768, context: { forcedColors: 'active' } },
  { name: '768-large-text', width: 768, textPx: 32, context: {} },
]

mkdirSync(folder, { recursive: true })
const only = process.argv[2]
const rig = await startStaffRig()
const today = new Date().toISOString().slice(0, 10)
await rig.service.store.addDemand({ id: 'pictures', rows: madeUpDemand(today) })
for (const setting of SETTINGS) {
  if (only === undefined || setting.name.startsWith(only)) await pictures(rig, setting)
}
await rig.close()

async function pictures({ open }: StaffRig, { name, width, textPx, context }: Setting): Promise<void> {
  const staff = await open({ ...context, viewport: { width, height: 900 } })
  const { page } = staff
  if (textPx !== undefined) {
    const session = await page.context().newCDPSession(page)
    await session.send('Page.setFontSizes', { fontSizes: { standard: textPx, fixed: textPx } })
  }
  const shoot = (what: string) => shot(page, `${folder}staff-${what}-${name}.png`, width)
  await shoot('range')
  const csv = await faultyCsv(staff)
  await staff.upload('inverters.csv', csv)
  await shoot('range-faults')
  await page.locator('[data-list=inverters]').click()
  await staff.cell('Surge, W', 'KC-ST12-295').fill('420')
  await staff.cell('Wave form', 'KC-ST12-465').selectOption('pure sine')
  await staff.cell('Battery, V', 'KC-ST12-740').fill('12')
  await staff.cell('Battery, V', 'KC-ST12-740').press('Tab')
  await staff.cell('Continuous, W', 'KC-ST12-2350').fill('1900')
  await staff.check()
  await shoot('range-preview')
  await page.getByRole('button', { name: 'Drop all edits' }).click()
  await staff.go('History')
  await shoot('history')
  await staff.go('Coverage')
  await shoot('coverage')
  await staff.go('Demand')
  await shoot('demand')
  await staff.go('Phone desk')
  await page.locator('#desk-search').fill('hair')
  await shoot('desk-search')
  await page.locator('#desk-search').fill('microwave 800w')
  await page.keyboard.press('Enter')
  for (const line of ['laptop', '4 led lamp', 'fridge']) {
    await page.locator('#desk-search').fill(line)
    await page.keyboard.press('Enter')
  }
  await page.locator('#supply-battery').selectOption('has one')
  await page.locator('#aloud').waitFor()
  await page.waitForTimeout(600)
  await shoot('desk')
  await page.evaluate(() =>
    window.addEventListener('beforeunload', (event) => event.stopImmediatePropagation(), true),
  )
  await page.locator('#sign-out').click()
  await page.locator('#shop').waitFor()
  await shoot('sign-in')
  await page.context().close()
}

/** The inverters of the range in force, with three faults and one honest change. */
async function faultyCsv({ page }: StaffPage): Promise<string> {
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Download as CSV' }).click()
  const stream = await (await download).createReadStream()
  const chunks: Buffer[] = []
  for await (const chunk of stream) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks)
    .toString('utf8')
    .replace(/^(KC-ST12-295,.*),650,/m, '$1,lots,')
    .replace(/^(KC-ST12-465,.*)pure-sine/m, '$1sinus')
    .replace(/^(KC-ST12-740,.*?pure-sine,)12/m, '$113')
}

/** The whole page: the window is made as high, so that what sticks stands where it belongs. */
async function shot(page: Page, path: string, width: number): Promise<void> {
  await page.waitForTimeout(150)
  const height = await page.evaluate(() => document.documentElement.scrollHeight)
  await page.setViewportSize({ width, height: Math.max(600, Math.min(height, 4000)) })
  await page.screenshot({ path })
  await page.setViewportSize({ width, height: 900 })
}
