import type { BrowserContextOptions } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from '../widget/support/guide-page.ts'
import { violations } from './support/axe.ts'
import { type Live, serviceFor, startLive } from './support/live.ts'

let live: Live
beforeAll(async () => {
  live = await startLive()
})
afterAll(() => live.close())

async function open(attributes: string, context: BrowserContextOptions = {}) {
  const body = `<main><h1>A unit</h1><tallywatt-fit ${attributes}><a href="/contact">Write to us</a></tallywatt-fit></main>`
  const visit = await live.visit(live.serve({ body }), context)
  return { ...visit, fit: new GuidePage(visit.page, 'tallywatt-fit') }
}

const verdict = (fit: GuidePage) => textOf(fit.host.locator('[part=verdict]'))

describe('the fit element on a page of another origin', () => {
  it('says yes, with care and no, each with why', async () => {
    const { page, faults, close, fit } = await open('shop="bentcreek" sku="BC-1830"')
    await fit.ready()
    await fit.pick('Electric kettle')
    await fit.host.getByRole('button', { name: 'Power of Electric kettle' }).click()
    await fit.host.getByLabel('I know its watts').check()
    await fit.host.getByLabel('Watts that it takes').fill('600')
    await fit.host.getByRole('button', { name: 'Done' }).click()
    await fit.host.locator('[part=check]').click()
    // 600 W of heating on 0.8 x 830 W: nothing to mind.
    await expect.poll(() => verdict(fit)).toMatch(/^Yes: /)
    await fit.host.getByRole('button', { name: 'Remove Electric kettle' }).click()
    await fit.host.getByRole('button', { name: 'Add Television' }).click()
    await fit.host.locator('[part=check]').click()
    // A television on a modified sine wave.
    await expect.poll(() => verdict(fit)).toMatch(/^Yes, with care: /)
    await expect.poll(() => textOf(fit.host.locator('[part=result]'))).toContain('modified sine wave')
    await fit.host.getByRole('button', { name: 'Add Microwave oven' }).click()
    await expect.poll(() => verdict(fit)).toMatch(/^No: /)
    await expect.poll(() => fit.host.locator('[part=smallest]').isVisible()).toBe(true)
    expect(await page.locator('tallywatt-fit').evaluate((host) => host.isConnected)).toBe(true)
    expect(faults).toEqual([])
    await close()
  })

  it('is worked by the keyboard alone, and its verdict is announced', async () => {
    const { page, faults, close, fit } = await open('shop="kingcup" sku="KC-ST12-465"')
    await fit.ready()
    await page.keyboard.press('Tab')
    await page.keyboard.type('laptop')
    await page.keyboard.press('Enter')
    await fit.host.locator('.thing').waitFor()
    for (let presses = 0; presses < 80 && !(await fit.focused('[part=check]')); presses += 1) {
      await page.keyboard.press('Tab')
    }
    await page.keyboard.press('Enter')
    await fit.host.locator('[part=result]').waitFor()
    await expect.poll(() => textOf(fit.status)).toMatch(/^Yes/)
    expect(faults).toEqual([])
    await close()
  })

  it('tells of a service that stopped, and asks again', async () => {
    let service = await serviceFor(live.shop)
    const api = await service.listen({ port: 0, host: '127.0.0.1' })
    const { page, faults, close, fit } = await open(`shop="kingcup" sku="KC-ST12-465" api="${api}"`)
    await fit.ready()
    await fit.pick('Laptop')
    await service.close()
    await fit.host.locator('[part=check]').click()
    await fit.host.locator('[part=failure]').waitFor()
    expect(await violations(page)).toEqual([])
    service = await serviceFor(live.shop)
    await service.listen({ port: Number(new URL(api).port), host: '127.0.0.1' })
    await fit.host.getByRole('button', { name: 'Try again' }).click()
    await expect.poll(() => verdict(fit)).toMatch(/^Yes/)
    await service.close()
    expect(faults).toEqual([])
    await close()
  })

  it('tells of a unit that the shop does not have', async () => {
    const { faults, close, fit } = await open('shop="kingcup" sku="NO-SUCH"')
    await fit.ready()
    await fit.pick('Laptop')
    await fit.host.locator('[part=check]').click()
    await fit.host.locator('[part=failure]').waitFor()
    await expect.poll(() => textOf(fit.host.locator('[part=failure]'))).toContain('not in the shop’s range')
    expect(faults).toEqual([])
    await close()
  })

  it.each([
    ['light', { colorScheme: 'light' }],
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
  ] as const)('has nothing that axe objects to with any verdict, %s', async (_name, context) => {
    const { page, close, fit } = await open('shop="bentcreek" sku="BC-1830"', context)
    await fit.ready()
    await fit.pick('Television')
    await fit.host.locator('[part=check]').click()
    await expect.poll(() => verdict(fit)).toMatch(/^Yes, with care/)
    const found = [...(await violations(page))]
    await fit.host.getByRole('button', { name: 'Add Hair dryer' }).click()
    await expect.poll(() => verdict(fit)).toMatch(/^No/)
    found.push(...(await violations(page)))
    expect(found).toEqual([])
    await close()
  })

  it.each([
    [320, 16],
    [320, 32],
    [280, 16],
  ])('never scrolls sideways, at %i px with text of %i px', async (width, size) => {
    const { page, close } = await live.visit('about:blank', { viewport: { width, height: 800 } })
    const session = await page.context().newCDPSession(page)
    await session.send('Page.setFontSizes', { fontSizes: { standard: size, fixed: size } })
    await page.goto(
      live.serve({
        body: '<tallywatt-fit shop="kingcup" sku="KC-ST12-465"></tallywatt-fit>',
        head: '<style>body { margin: 0 }</style>',
      }),
    )
    const fit = new GuidePage(page, 'tallywatt-fit')
    await fit.ready()
    await fit.pick('Microwave oven')
    await fit.host.locator('[part=check]').click()
    await fit.host.locator('[part=smallest]').waitFor()
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    await close()
  })
})
