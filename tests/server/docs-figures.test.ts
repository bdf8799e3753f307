import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { FIGURES } from '../../server/pages/docs/figures/figures-data.ts'
import { remarks } from '../e2e/support/axe.ts'
import { launchChromium } from '../support/chromium.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let url: string
let page: string
let browser: Browser
beforeAll(async () => {
  service = await openStaffService()
  url = await service.app.listen({ port: 0, host: '127.0.0.1' })
  page = await (await fetch(`${url}/docs/figures`)).text()
  browser = await launchChromium()
})
afterAll(async () => {
  await browser?.close()
  await service.close()
})

const tables = FIGURES.topics.flatMap((topic) => topic.tables)
const textOf = (html: string) =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ')

describe('the page of published figures', () => {
  it('tells how many figures were compared, how many agree, and how many are from memory', () => {
    const sum = (counts: readonly number[]) => counts.reduce((total, count) => total + count, 0)
    const compared = sum(tables.map(({ count }) => count))
    const fromMemory = sum(tables.filter(({ standing }) => standing === 'memory').map(({ count }) => count))
    expect(compared).toBeGreaterThan(200)
    const shown = [...page.matchAll(/<dt>([^<]+)<\/dt><dd>(\d+)<\/dd>/g)].map(([, name, count]) => [
      name,
      Number(count),
    ])
    expect(Object.fromEntries(shown)).toMatchObject({
      'figures compared': compared,
      'within their tolerance': sum(tables.map(({ within }) => within)),
      'from memory': fromMemory,
    })
  })

  it('names source, table, tolerance and every quoted row with what is printed and computed', () => {
    const text = textOf(page)
    for (const { source, table, tolerance, because, rows } of tables) {
      expect(text).toContain(`${FIGURES.sources[source]?.name} ${table}`)
      expect(text).toContain(`tolerance ${tolerance} (${because})`)
      for (const [what] of rows) expect(text).toContain(what)
    }
    const drop = 'Electrical worker training lesson'
    expect(text).toMatch(new RegExp(`${drop}.*16 AWG.*24 V circuit 4 3\\.992 −0\\.008 −0\\.2 %`))
  })

  it('lists what is printed wrong, with the reason', () => {
    const wrong = FIGURES.topics.flatMap(({ misprints }) => misprints)
    expect(wrong.length).toBeGreaterThan(4)
    for (const { why } of wrong) expect(textOf(page)).toContain(why)
  })

  it.each(Object.keys(FIGURES.sources))('shows %s alone where it is asked for alone', async (source) => {
    const reply = await service.app.inject(`/docs/figures?source=${source}`)
    expect(reply.statusCode).toBe(200)
    expect(page).toContain(`href="/docs/figures?source=${source}"`)
    const linked = [...reply.body.matchAll(/figures\?source=([^"]+)"/g)].map(([, id]) => id)
    expect(new Set(linked)).toEqual(new Set([source]))
  })

  it('answers 404 for a document that it does not have', async () => {
    for (const query of ['source=nobody', 'source=%3Cscript%3E', 'source=a&source=b', 'source=toString']) {
      const reply = await service.app.inject(`/docs/figures?${query}`)
      expect(reply.statusCode, query).toBe(404)
      expect(reply.json().code, query).toBe('not-found')
    }
  })

  it('has a target for every link within, loads nothing from elsewhere, and has no script', () => {
    const places = new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
    const links = [...page.matchAll(/href="#([^"]+)"/g)].map(([, target]) => target)
    expect(links.filter((target) => !places.has(target))).toEqual([])
    const loads = [...page.matchAll(/(?:src|href)="([^"#]+)"/g)].map(([, target]) => target)
    expect(loads.filter((target) => !target?.startsWith('/'))).toEqual([])
    expect(page).not.toMatch(/<script|<style|style="|javascript:| on\w+="/)
  })

  it('is linked from the reference and from the first page', async () => {
    for (const path of ['/docs', '/']) {
      expect((await service.app.inject(path)).body).toContain('href="/docs/figures"')
    }
  })
})

describe('in a browser, without a script', () => {
  it.each([
    [320, 'light', ''],
    [768, 'dark', ''],
    [1280, 'light', ''],
    [320, 'dark', '?source=tracebase'],
  ] as const)('fits %d px, %s%s', async (width, colorScheme, query) => {
    const context = await browser.newContext({
      viewport: { width, height: 900 },
      colorScheme,
      javaScriptEnabled: false,
    })
    const tab = await context.newPage()
    const complaints: string[] = []
    tab.on('console', (message) => complaints.push(message.text()))
    await tab.goto(`${url}/docs/figures${query}`)
    expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    expect(await tab.locator('.figures table').first().isVisible()).toBe(true)
    expect(complaints).toEqual([])
    await context.close()
  })

  it.each([
    [320, 'dark', '?source=tracebase'],
    [768, 'light', ''],
    [1280, 'dark', '?source=openstax-college-physics'],
  ] as const)(
    'has no fault that axe finds at %d px, %s%s',
    async (width, colorScheme, query) => {
      const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme })
      const tab = await context.newPage()
      await tab.goto(`${url}/docs/figures${query}`)
      expect(await remarks(tab)).toEqual([])
      await context.close()
    },
    120_000,
  )
})
