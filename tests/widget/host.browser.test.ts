import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from './support/guide-page.ts'
import { type PageOptions, type Rig, startRig } from './support/rig.ts'

let rig: Rig
beforeAll(async () => {
  rig = await startRig()
})
afterAll(() => rig.close())

/** What a page heard that it should not have heard. */
interface Heard {
  readonly errors: string[]
  readonly warnings: string[]
  readonly violations: string[]
}

async function open(
  body: string,
  options: PageOptions = {},
  viewport = { width: 900, height: 800 },
): Promise<{ page: Page; heard: Heard }> {
  const page = await (await rig.browser.newContext({ viewport })).newPage()
  const heard: Heard = { errors: [], warnings: [], violations: [] }
  page.on('pageerror', (error) => heard.errors.push(error.message))
  page.on('console', (message) => {
    if (message.type() === 'warning') heard.warnings.push(message.text())
    if (/Content Security Policy|TrustedHTML/i.test(message.text())) heard.violations.push(message.text())
  })
  await page.goto(rig.page(body, options))
  return { page, heard }
}

const guide = (attributes = '') =>
  `<tallywatt-guide shop="kingcup" api="${rig.api}" ${attributes}></tallywatt-guide>`

describe('a strict page', () => {
  const strict = () => `default-src 'none'; script-src 'self'; connect-src ${rig.api}`

  it.each([
    ['without anything added', ''],
    ['with trusted types required', "; require-trusted-types-for 'script'"],
    [
      'with the one policy named',
      "; require-trusted-types-for 'script'; trusted-types lit-html 'allow-duplicates'",
    ],
  ])('shows the whole guide, %s', async (_name, more) => {
    const { page, heard } = await open(guide(), { csp: strict() + more })
    const shown = new GuidePage(page)
    await shown.ready()
    await shown.pick('Laptop')
    await shown.toAnswer()
    await shown.host.locator('[part=unit]').waitFor()
    await expect.poll(() => shown.host.locator('.bar').first().isVisible()).toBe(true)
    expect(heard).toEqual({ errors: [], warnings: [], violations: [] })
    await page.context().close()
  })

  it('hears one warning and no error where the policy is left out, and keeps its fallback', async () => {
    const csp = `${strict()}; require-trusted-types-for 'script'; trusted-types other`
    const body = `<tallywatt-guide shop="kingcup" api="${rig.api}"><a href="/contact">Write to us</a></tallywatt-guide>`
    const { page, heard } = await open(body, { csp })
    await expect.poll(() => heard.warnings.join()).toContain('trusted-types lit-html')
    expect(heard.errors).toEqual([])
    expect(await page.getByText('Write to us').isVisible()).toBe(true)
    await page.context().close()
  })
})

describe('the page around', () => {
  it('finds nothing left behind: no storage, no cookie, no global but Lit’s own mark', async () => {
    const { page } = await open(guide())
    const shown = new GuidePage(page)
    await shown.ready()
    await shown.pick('Laptop')
    await shown.toAnswer()
    const left = await page.evaluate(() => {
      const frame = document.body.appendChild(document.createElement('iframe'))
      const usual = new Set(Object.getOwnPropertyNames(frame.contentWindow))
      const globals = Object.getOwnPropertyNames(window).filter((name) => !usual.has(name))
      return { globals, cookie: document.cookie, local: localStorage.length, session: sessionStorage.length }
    })
    const known = left.globals.filter(
      (name) => name !== 'litHtmlVersions' && !name.startsWith('__playwright') && name !== '0',
    )
    expect({ ...left, globals: known }).toEqual({ globals: [], cookie: '', local: 0, session: 0 })
    await page.context().close()
  })

  it('can’t break the guide by hostile rules', async () => {
    const hostile = `<style>
      html { font-size: 5px } * { color: red !important; font: 700 40px cursive !important; letter-spacing: 1em !important;
      text-transform: uppercase !important; line-height: 4 !important; text-align: right !important }
      button, input, svg, p { display: none !important }</style>`
    const { page } = await open(guide(), { head: hostile })
    const shown = new GuidePage(page)
    await shown.ready()
    const style = await shown.heading.evaluate((heading) => {
      const { color, fontSize, letterSpacing, textTransform, textAlign } = getComputedStyle(heading)
      return { color, fontSize, letterSpacing, textTransform, textAlign }
    })
    expect(style).toEqual({
      color: 'rgb(28, 33, 38)',
      fontSize: '27.2px',
      letterSpacing: 'normal',
      textTransform: 'none',
      textAlign: 'start',
    })
    await shown.pick('Laptop')
    await page.context().close()
  })

  it('may load the script twice and hold twenty guides that know nothing of each other', async () => {
    const twice = '<script type="module" src="/widget/tallywatt.js?again"></script>'
    const { page, heard } = await open(guide().repeat(20), { head: twice })
    const second = new GuidePage(page, 'tallywatt-guide >> nth=1')
    const third = new GuidePage(page, 'tallywatt-guide >> nth=2')
    await second.ready()
    await third.ready()
    await second.pick('Laptop')
    expect(await third.host.locator('.thing').count()).toBe(0)
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it('may make a guide by script, set properties first, move it, take it away and put it back', async () => {
    const { page, heard } = await open('<div id="one"></div><div id="two"></div>')
    await page.evaluate((api) => {
      const made = document.createElement('tallywatt-guide')
      Object.assign(made, { shop: 'kingcup', api })
      document.querySelector('#one')?.append(made)
    }, rig.api)
    const shown = new GuidePage(page)
    await shown.ready()
    await shown.pick('Laptop')
    await page.evaluate(() => {
      const made = document.querySelector('tallywatt-guide')
      if (made === null) return
      document.querySelector('#two')?.append(made)
      made.remove()
      document.querySelector('#one')?.append(made)
    })
    await shown.ready()
    await expect.poll(() => shown.host.locator('.thing').count()).toBe(1)
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it('sees the shop, the language and the service change', async () => {
    const { page } = await open(guide())
    const shown = new GuidePage(page)
    await shown.ready()
    await page.evaluate(() => document.querySelector('tallywatt-guide')?.setAttribute('lang', 'en-XA'))
    await expect.poll(() => textOf(shown.heading)).toContain('Whát')
    await page.evaluate(() => {
      const element = document.querySelector('tallywatt-guide')
      element?.setAttribute('lang', 'en')
      element?.setAttribute('shop', 'bentcreek')
    })
    await shown.pick('Laptop')
    await shown.on(2)
    await expect.poll(() => textOf(shown.host.locator('.ask').first())).toContain('48 V')
    await expect.poll(() => textOf(shown.host.locator('.ask').last())).toContain('10 ft')
    await page.context().close()
  })

  it('may draw something in its place beforehand, in a shadow root of its own markup', async () => {
    const first = '<template shadowrootmode="open"><p>The guide is on its way</p></template>'
    const { page, heard } = await open(guide().replace('></', `>${first}</`))
    const shown = new GuidePage(page)
    await shown.ready()
    expect(
      await page.evaluate(() => document.querySelector('tallywatt-guide')?.shadowRoot?.textContent),
    ).not.toContain('on its way')
    expect(heard).toEqual({ errors: [], warnings: [], violations: [] })
    await page.context().close()
  })

  it('may send the answer along with a form of its own, as the guide for embedders has it', async () => {
    const body = `<form><input type="hidden" name="inverter">${guide()}</form><script type="module">
      document.querySelector('tallywatt-guide').addEventListener('tallywatt-answer', ({ detail, currentTarget }) => {
        currentTarget.closest('form').elements.inverter.value = detail.answer.recommended?.sku ?? ''
      })</script>`
    const { page } = await open(body)
    const shown = new GuidePage(page)
    await shown.ready()
    await shown.pick('Laptop')
    await shown.toAnswer()
    const fields = await page.evaluate(() => [...new FormData(document.forms[0])])
    expect(fields).toEqual([['inverter', expect.stringMatching(/^KC-/)]])
    await page.context().close()
  })

  it('may theme it by custom properties and parts', async () => {
    const theme = `<style>tallywatt-guide { --tallywatt-accent: rgb(120, 20, 60); --tallywatt-radius: 9px }
      tallywatt-guide::part(next) { text-transform: uppercase }</style>`
    const { page } = await open(guide(), { head: theme })
    const shown = new GuidePage(page)
    await shown.ready()
    const style = await shown.next.evaluate((button) => {
      const { backgroundColor, borderRadius, textTransform } = getComputedStyle(button)
      return { backgroundColor, borderRadius, textTransform }
    })
    expect(style).toEqual({
      backgroundColor: 'rgb(120, 20, 60)',
      borderRadius: '9px',
      textTransform: 'uppercase',
    })
    await page.context().close()
  })

  it('works in a dialog', async () => {
    const { page, heard } = await open(`<button id="open">Open</button><dialog>${guide()}</dialog>`)
    await page.evaluate(() => document.querySelector('dialog')?.showModal())
    const shown = new GuidePage(page)
    await shown.ready()
    await shown.pick('Laptop')
    await shown.toAnswer()
    await shown.host.locator('[part=unit]').waitFor()
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it.each([280, 320, 390, 768, 1280])(
    'is not moved by the guide with the documented snippet, at %i px',
    async (width) => {
      const reserve = `<style>body { margin: 0 } tallywatt-guide:not(:defined) { display: block; min-block-size: 42em }
      @media (max-width: 40em) { tallywatt-guide:not(:defined) { min-block-size: 54em } }
      @media (max-width: 19em) { tallywatt-guide:not(:defined) { min-block-size: 66em } }</style>`
      const watch = `<script>let shift = 0; new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) shift += entry.value }).observe({ type: 'layout-shift', buffered: true })</script>`
      const { page } = await open(
        `${guide()}<p>The rest of the page</p>`,
        { head: reserve + watch },
        { width, height: 1600 },
      )
      await new GuidePage(page).ready()
      await page.waitForTimeout(300)
      expect(await page.evaluate('shift')).toBe(0)
      await page.context().close()
    },
  )
})

describe('the fit element', () => {
  const unitPage = (sku: string) =>
    `<tallywatt-fit shop="kingcup" sku="${sku}" api="${rig.api}"></tallywatt-fit>`

  it('says no with why and the smallest that would, and changes its mind with the list', async () => {
    const { page, heard } = await open(unitPage('KC-ST12-1060'))
    const shown = new GuidePage(page, 'tallywatt-fit')
    await shown.ready()
    await shown.pick('Microwave oven')
    await shown.host.locator('[part=check]').click()
    await shown.host.locator('[part=result]').waitFor()
    const verdict = shown.host.locator('[part=verdict]')
    await expect.poll(() => textOf(verdict)).toBe('No: Staithe 1060 pure sine inverter, 12 V')
    await expect.poll(() => textOf(shown.host.locator('[part=smallest]'))).toContain('Staithe 2350')
    await shown.host.getByRole('button', { name: 'Remove Microwave oven' }).click()
    await shown.pick('Laptop')
    await shown.host.locator('[part=check]').click()
    await expect.poll(() => textOf(verdict)).toMatch(/^Yes/)
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it('asks again by itself when the list changes under a verdict', async () => {
    const { page } = await open(unitPage('KC-ST12-295'))
    const shown = new GuidePage(page, 'tallywatt-fit')
    await shown.ready()
    await shown.pick('Laptop')
    await shown.host.locator('[part=check]').click()
    await expect.poll(() => textOf(shown.host.locator('[part=verdict]'))).toMatch(/^Yes/)
    await shown.pick('Electric kettle')
    await expect.poll(() => textOf(shown.host.locator('[part=verdict]'))).toMatch(/^No/)
    await page.context().close()
  })

  it('tells of a unit that the range does not hold', async () => {
    const { page, heard } = await open(unitPage('NO-SUCH'))
    const shown = new GuidePage(page, 'tallywatt-fit')
    await shown.ready()
    await shown.pick('Laptop')
    await shown.host.locator('[part=check]').click()
    await shown.host.locator('[part=failure]').waitFor()
    await expect.poll(() => textOf(shown.host.locator('[part=failure]'))).toContain('not in the shop’s range')
    expect(heard.errors).toEqual([])
    await page.context().close()
  })

  it('tells the page of its answer', async () => {
    const { page } = await open(unitPage('KC-ST12-1060'))
    await page.evaluate(() => {
      addEventListener('tallywatt-answer', (event) =>
        Reflect.set(window, 'told', (event as CustomEvent).detail),
      )
    })
    const shown = new GuidePage(page, 'tallywatt-fit')
    await shown.ready()
    await shown.pick('Laptop')
    await shown.host.locator('[part=check]').click()
    await shown.host.locator('[part=result]').waitFor()
    const told = (await page.evaluate(() => Reflect.get(window, 'told'))) as Record<
      string,
      Record<string, unknown>
    >
    expect(told.request?.sku).toBe('KC-ST12-1060')
    expect(told.answer?.outcome).toMatch(/^fits/)
    await page.context().close()
  })
})
