import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { curlOf } from '../../server/pages/docs/curl.ts'
import { type Operation, operations } from '../../shared/contract/operations.ts'
import { PROBLEMS } from '../../shared/contract/problem.ts'
import { remarks } from '../e2e/support/axe.ts'
import { faultOf } from '../support/checked-replies.ts'
import { launchChromium } from '../support/chromium.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

const run = promisify(execFile)
let service: StaffService
let url: string
let page: string
let browser: Browser
beforeAll(async () => {
  service = await openStaffService()
  url = await service.app.listen({ port: 0, host: '127.0.0.1' })
  page = await (await fetch(`${url}/docs`)).text()
  browser = await launchChromium()
})
afterAll(async () => {
  await browser?.close()
  await service.close()
})

const everyOperation = Object.values<Operation>(operations)
const ids = () => new Set([...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id))
const text = (html: string) =>
  html
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')

describe('the reference', () => {
  it('has a place for every operation and every problem, and a target for every link', () => {
    const places = ids()
    for (const { id } of everyOperation) expect(places).toContain(`op-${id}`)
    for (const code of Object.keys(PROBLEMS)) expect(places).toContain(`problem-${code}`)
    const links = [...page.matchAll(/href="#([^"]+)"/g)].map(([, target]) => target)
    expect(links.length).toBeGreaterThan(100)
    expect(links.filter((target) => !places.has(target))).toEqual([])
    expect([...page.matchAll(/ id="([^"]+)"/g)]).toHaveLength(places.size)
  })

  it('is where the type of a problem leads', async () => {
    const problem = await (await fetch(`${url}/v1/shops/nobody/setup`)).json()
    const target = new URL(problem.type, url)
    expect((await fetch(target)).status).toBe(200)
    expect(ids()).toContain(target.hash.slice(1))
  })

  it('loads nothing from elsewhere and has no script or style of its own within', () => {
    const loads = [...page.matchAll(/(?:src|href)="([^"#]+)"/g)].map(([, target]) => target)
    expect(loads.filter((target) => !target?.startsWith('/'))).toEqual([])
    expect(page).not.toMatch(/<style|<script>|style="|javascript:| on\w+="/)
  })

  it('shows what it is asked by as text, whatever that is', async () => {
    const reply = await service.app.inject({
      url: '/docs',
      headers: { host: 'x"><script>alert(1)</script>' },
    })
    expect(reply.body).not.toContain('<script>alert')
  })
})

describe('each command to copy', () => {
  it.each(everyOperation)('$id runs as it stands and gets the answer of the contract', async (operation) => {
    const command = curlOf(operation, url)
    expect(text(page)).toContain(command)
    const key = operation.scope === undefined ? '' : await service.issue('kingcup', [operation.scope])
    const { stdout } = await run('sh', ['-c', `${command} -w '\\n%{http_code} %{content_type}'`], {
      env: { PATH: process.env.PATH, TALLYWATT_KEY: key },
      maxBuffer: 10_000_000,
    })
    const [, body = '', status = '', type = ''] = /^([\s\S]*)\n(\d+) (.*)$/.exec(stdout) ?? []
    expect(status).toBe('200')
    const reply = { statusCode: 200, headers: { 'content-type': type }, body }
    const path = operation.path.replace('{shopId}', 'kingcup').replace('{version}', '1')
    expect(faultOf(operation.method, path, reply)).toBeUndefined()
  })
})

describe('in a browser, under its own content policy', () => {
  const open = async (width: number, colorScheme: 'light' | 'dark', javaScriptEnabled = true) => {
    const context = await browser.newContext({
      viewport: { width, height: 900 },
      colorScheme,
      javaScriptEnabled,
    })
    const tab = await context.newPage()
    const complaints: string[] = []
    tab.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
    })
    tab.on('pageerror', (error) => complaints.push(error.message))
    const foreign: string[] = []
    tab.on('request', (request) => {
      if (!request.url().startsWith(url)) foreign.push(request.url())
    })
    await tab.goto(`${url}/docs`)
    return { tab, complaints, foreign, context }
  }

  it('tries a call and shows the reply, asking nobody else and breaking no rule', async () => {
    const { tab, complaints, foreign, context } = await open(1280, 'light')
    await tab.click('#op-fitUnit .try > summary')
    await tab.click('#op-fitUnit .try button[type=submit]')
    await tab.waitForSelector('#op-fitUnit .reply:not([hidden])')
    expect(await tab.textContent('#op-fitUnit .outcome')).toMatch(/^200 after \d+ ms/)
    expect(await tab.textContent('#op-fitUnit .reply')).toContain('"outcome"')
    await tab.fill('#op-fitUnit input[name=shopId]', '../x y')
    await tab.click('#op-fitUnit .try button[type=submit]')
    await tab.waitForFunction(() =>
      document.querySelector('#op-fitUnit .outcome')?.textContent?.startsWith('404'),
    )
    expect(foreign).toEqual([])
    expect(complaints.filter((line) => !line.includes('404'))).toEqual([])
    await context.close()
  })

  it('offers no form for what needs a key: a page must not hold one', async () => {
    const { tab, context } = await open(1280, 'light')
    for (const { id, scope } of everyOperation) {
      expect(await tab.locator(`#op-${id} form`).count(), id).toBe(scope === undefined ? 1 : 0)
    }
    await context.close()
  })

  it('reads well without a script: everything is there, and no button that does nothing', async () => {
    const { tab, context } = await open(768, 'light', false)
    expect(await tab.locator('#op-sizeShop').isVisible()).toBe(true)
    expect(await tab.locator('button:visible').count()).toBe(0)
    await context.close()
  })

  it.each([
    [320, 'light'],
    [768, 'dark'],
    [1280, 'light'],
  ] as const)(
    'fits %d px in %s and has no fault that axe finds, with everything unfolded',
    async (width, scheme) => {
      const { tab, context } = await open(width, scheme)
      await tab.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true
      })
      expect(await tab.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      expect(await remarks(tab)).toEqual([])
      await context.close()
    },
    120_000,
  )
})
