import type { BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from './support/guide-page.ts'
import { type PageOptions, type Rig, startRig } from './support/rig.ts'

let rig: Rig
beforeAll(async () => {
  rig = await startRig()
})
afterAll(() => rig.close())

/** Errors that reached the page around the elements; every test ends with none. */
const faults: string[] = []

async function open(
  { attributes = '', head = '', ...options }: PageOptions & { attributes?: string } = {},
  context: BrowserContextOptions = {},
  before: (page: Page) => Promise<unknown> = async () => undefined,
): Promise<GuidePage> {
  const page = await (await rig.browser.newContext(context)).newPage()
  page.on('pageerror', (error) => faults.push(error.message))
  await before(page)
  await page.goto(
    rig.page(`<tallywatt-guide shop="kingcup" api="${rig.api}" ${attributes}></tallywatt-guide>`, {
      head,
      ...options,
    }),
  )
  return new GuidePage(page)
}

async function closed(guide: GuidePage): Promise<void> {
  expect(faults.splice(0)).toEqual([])
  await guide.page.context().close()
}

describe('the path to the answer', () => {
  it('takes five taps for a microwave and a laptop, and one call to the service', async () => {
    const calls: string[] = []
    const guide = await open({}, { hasTouch: true, viewport: { width: 360, height: 640 } }, async (page) => {
      page.on('request', (request) => {
        if (request.url().startsWith(rig.api))
          calls.push(`${request.method()} ${new URL(request.url()).pathname}`)
      })
    })
    await guide.ready()
    await guide.host.getByRole('button', { name: 'Add Microwave oven' }).tap()
    await guide.host.getByRole('button', { name: 'Add Laptop' }).tap()
    expect(calls).toEqual(['GET /v1/shops/kingcup/setup'])
    await guide.on(3, 'tap')
    await guide.host.locator('[part=unit]').waitFor()
    expect(calls.filter((call) => call.startsWith('POST'))).toEqual(['POST /v1/shops/kingcup/sizing'])
    await closed(guide)
  })

  it('moves the running total with each tap', async () => {
    const guide = await open()
    await guide.ready()
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Nothing picked yet')
    await guide.pick('Microwave oven', 'Laptop')
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 1,710 W')
    await guide.host.getByRole('button', { name: 'One more Laptop' }).click()
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 1,860 W')
    await expect.poll(() => textOf(guide.status)).toContain('Together 1,860 W')
    await closed(guide)
  })

  it('keeps every answer on the way back and forth, with focus on the heading', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Microwave oven', 'Laptop')
    await guide.on()
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await expect.poll(() => textOf(guide.host.locator('.head'))).toContain('Question 2 of 3')
    await guide.host.getByLabel('Laptop: on for, a day').selectOption('120')
    await guide.on()
    await guide.host.getByLabel('24 V').check()
    await guide.host.locator('[part=back]').click()
    await expect.poll(() => guide.host.getByLabel('Laptop: on for, a day').inputValue()).toBe('120')
    await guide.host.locator('[part=back]').click()
    await expect.poll(() => guide.host.locator('.thing').count()).toBe(2)
    await expect.poll(() => guide.focused('h2')).toBe(true)
    await guide.toAnswer()
    await guide.host.getByRole('button', { name: 'Change the battery' }).click()
    await guide.host.locator('.ask').first().waitFor()
    await expect.poll(() => guide.host.getByLabel('24 V').isChecked()).toBe(true)
    await closed(guide)
  })

  it('does not go on with nothing picked, and says why', async () => {
    const guide = await open()
    await guide.ready()
    await guide.next.click({ force: true })
    await expect.poll(() => textOf(guide.heading)).toBe('What will you run?')
    await expect.poll(() => textOf(guide.status)).toContain('Pick at least one thing first')
    await expect.poll(() => guide.focused('#search')).toBe(true)
    await closed(guide)
  })

  it('lets things take turns and lowers the total', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Microwave oven', 'Electric kettle', 'Laptop')
    await guide.on()
    await guide.host.getByRole('button', { name: 'Some take turns' }).click()
    await guide.host.getByRole('button', { name: 'These take turns' }).click()
    await expect.poll(() => textOf(guide.status)).toContain('Tick two things or more')
    await guide.host.getByLabel('Microwave oven takes turns').check()
    await guide.host.getByLabel('Electric kettle takes turns').check()
    await guide.host.getByRole('button', { name: 'These take turns' }).click()
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 3,150 W')
    await guide.host.getByRole('button', { name: 'Let them run together' }).click()
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 4,710 W')
    await closed(guide)
  })

  it('reads a plate, tells a microwave’s two kinds of watts apart, and names a faulty number', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Microwave oven')
    await guide.host.getByRole('button', { name: 'Power of Microwave oven' }).click()
    await guide.host.getByLabel('I know its cooking watts').check()
    await guide.host.getByLabel('Watts that it cooks with').fill('800')
    await guide.host.getByText('Read as 1,600 W.').waitFor()
    await guide.host.getByLabel('I copy what its plate says').check()
    await guide.host.getByLabel('What the plate says').fill('220-240V~ 50Hz INPUT 1250W')
    await guide.host.getByText('Read as 1,250 W.').waitFor()
    await guide.host.getByLabel('I know its watts').check()
    const watts = guide.host.getByLabel('Watts that it takes')
    await watts.fill('lots')
    expect(await watts.getAttribute('aria-invalid')).toBe('true')
    await expect
      .poll(() => textOf(guide.host.locator('#watts-fault')))
      .toBe('Watts that it takes: type a number from 1 to 100,000.')
    await expect.poll(() => textOf(guide.host.locator('.foot'))).toContain('Together 1,250 W')
    await guide.host.getByRole('button', { name: 'Done' }).click()
    await expect.poll(() => guide.focused('[data-edit]')).toBe(true)
    await closed(guide)
  })

  it('takes a thing of the shopper’s own by its plate alone', async () => {
    const guide = await open()
    await guide.ready()
    await guide.host.getByRole('button', { name: 'Something else' }).click()
    await guide.host.getByLabel('What is it?').fill('Bench radio')
    await guide.host.getByRole('button', { name: 'Add to my list' }).click()
    const power = guide.host.getByLabel('What the plate says')
    await expect.poll(() => power.getAttribute('aria-invalid')).toBe('true')
    expect(await power.getAttribute('aria-describedby')).toBe('plate-fault')
    await expect
      .poll(() => textOf(guide.host.locator('#plate-fault')))
      .toBe('Please fill in “What the plate says”.')
    await expect.poll(() => guide.focused('[name=plate]')).toBe(true)
    await expect.poll(() => guide.host.getByLabel('What is it?').inputValue()).toBe('Bench radio')
    await guide.host.getByLabel('What the plate says').fill('230V~ 0.2A')
    await guide.host.getByRole('button', { name: 'Add to my list' }).click()
    await expect.poll(() => textOf(guide.host.locator('.thing'))).toContain('46 W, as you said')
    await closed(guide)
  })
})

describe('the answer', () => {
  it('goes to the cart as a cancelable event that leaves the shadow root', async () => {
    const guide = await open()
    await guide.page.evaluate(() => {
      addEventListener('tallywatt-add-to-cart', (event) => {
        const { detail, cancelable, bubbles, composed } = event as CustomEvent
        Reflect.set(window, 'cart', { detail, cancelable, bubbles, composed })
        event.preventDefault()
      })
    })
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    await guide.host.getByRole('button', { name: 'Put in the cart' }).click()
    const cart = (await guide.page.evaluate(() => Reflect.get(window, 'cart'))) as Record<string, unknown>
    expect(cart).toMatchObject({ cancelable: true, bubbles: true, composed: true })
    const { lines } = cart.detail as { lines: { sku: string; quantity: number }[] }
    expect(lines[0]?.sku).toMatch(/^KC-/)
    expect(lines.every(({ quantity }) => quantity >= 1)).toBe(true)
    expect(await textOf(guide.status)).not.toContain('Handed')
    await closed(guide)
  })

  it('says what became of the parts where no page cancels', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    await guide.host.getByRole('button', { name: 'Put in the cart' }).click()
    await expect.poll(() => textOf(guide.status)).toContain('Handed to the shop’s cart')
    await closed(guide)
  })

  it('has no cart button where the shop wants none', async () => {
    const guide = await open({ attributes: 'without-cart' })
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    await expect.poll(() => guide.host.getByRole('button', { name: 'Put in the cart' }).count()).toBe(0)
    await closed(guide)
  })

  it('travels in a link, in the fragment alone', async () => {
    const guide = await open({}, { permissions: ['clipboard-read', 'clipboard-write'] })
    await guide.ready()
    await guide.pick('Laptop', 'Television')
    await guide.toAnswer()
    const unit = await textOf(guide.heading)
    await guide.host.getByRole('button', { name: 'Copy a link' }).click()
    await expect.poll(() => textOf(guide.status)).toContain('Link copied')
    const link = await guide.page.evaluate(() => navigator.clipboard.readText())
    expect(new URL(link).search).toBe('')
    expect(guide.page.url()).not.toContain('#')
    const other = await (await rig.browser.newContext()).newPage()
    await other.goto(link)
    const restored = new GuidePage(other)
    await restored.host.locator('[part=unit]').waitFor()
    await expect.poll(() => textOf(restored.heading)).toBe(unit)
    await expect
      .poll(() => textOf(restored.host.locator('[part=answers]')))
      .toContain('Laptop and Television')
    await other.context().close()
    await closed(guide)
  })

  it('survives a reload where the shop keeps answers in the address', async () => {
    const guide = await open({ attributes: 'keep' })
    await guide.ready()
    await guide.pick('Laptop')
    await expect.poll(() => guide.page.url()).toContain('#tallywatt-kingcup=')
    await guide.page.reload()
    await guide.host.locator('[part=unit]').waitFor()
    await closed(guide)
  })

  it('prints alone on a page of its own', async () => {
    const guide = await open({}, {}, (page) =>
      page.addInitScript(() => {
        Object.defineProperty(window, 'print', { value: () => undefined })
      }),
    )
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    const unit = await textOf(guide.heading)
    await guide.host.getByRole('button', { name: 'Print', exact: true }).click()
    await expect.poll(() => guide.page.frames().length).toBe(2)
    const sheet = guide.page.frames()[1]
    expect(await sheet?.locator('h2').textContent()).toBe(unit)
    expect(await sheet?.locator('body').textContent()).toContain('From the range of Kingcup Boatyard Stores')
    await closed(guide)
  })

  it('fetches the working only when it is unfolded', async () => {
    const bodies: string[] = []
    const guide = await open({}, {}, async (page) => {
      page.on('request', (request) => {
        if (request.method() === 'POST') bodies.push(request.postData() ?? '')
      })
    })
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    expect(bodies.map((body) => JSON.parse(body).detail)).toEqual(['brief'])
    await guide.host.getByText('The working').click()
    await guide.host.locator('table').waitFor()
    const table = await textOf(guide.host.locator('table'))
    expect(table).toMatch(/Continuous power needed = [\d,.]+ W/)
    expect(table).not.toMatch(/requiredContinuousW|shop-stated/)
    expect(bodies.map((body) => JSON.parse(body).detail)).toEqual(['brief', 'full'])
    await closed(guide)
  })

  it('says why none fits, what helps and whom to ask', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Electric kettle')
    for (let count = 0; count < 4; count += 1)
      await guide.host.getByRole('button', { name: 'One more Electric kettle' }).click()
    await guide.toAnswer()
    const text = await textOf(guide.host.locator('.base'))
    expect(text).toContain('None of ours fits')
    expect(text).toContain('need a unit of 18,750 W or more')
    await expect
      .poll(() => guide.host.locator('.contact').getAttribute('href'))
      .toBe('https://kingcup.example/contact')
    await closed(guide)
  })
})

describe('failures', () => {
  const plainly: readonly (readonly [string, (page: Page) => Promise<unknown>, string])[] = [
    [
      'is down',
      (page) => page.route('**/sizing', (route) => route.fulfill({ status: 503, json: {} })),
      'has a problem',
    ],
    [
      'breaks',
      (page) => page.route('**/sizing', (route) => route.fulfill({ status: 500, body: 'oops' })),
      'has a problem',
    ],
    ['is out of reach', (page) => page.route('**/sizing', (route) => route.abort()), 'can’t reach'],
    [
      'refuses',
      (page) =>
        page.route('**/sizing', (route) =>
          route.fulfill({
            status: 422,
            json: { code: 'contract-broken', errors: [{ pointer: '', message: 'Too odd.' }] },
            headers: { 'access-control-allow-origin': '*' },
          }),
        ),
      'Too odd.',
    ],
  ]

  it.each(plainly)(
    'are told plainly where the service %s, and the answers stay',
    async (_name, breaks, message) => {
      const guide = await open()
      await guide.ready()
      await guide.pick('Laptop')
      await breaks(guide.page)
      await guide.on(3)
      await guide.host.locator('[part=failure]').waitFor()
      await expect.poll(() => textOf(guide.host.locator('[part=failure]'))).toContain(message)
      await guide.page.unroute('**/sizing')
      await guide.host.getByRole('button', { name: 'Try again' }).click()
      await guide.host.locator('[part=unit]').waitFor()
      await expect.poll(() => guide.host.locator('[part=failure]').count()).toBe(0)
      await closed(guide)
    },
  )

  it('tell how long to wait where the service is busy', async () => {
    const guide = await open({}, {}, (page) =>
      page.route('**/setup*', (route) =>
        route.fulfill({
          status: 429,
          headers: {
            'retry-after': '7',
            'access-control-allow-origin': '*',
            'access-control-expose-headers': 'retry-after',
          },
          json: {},
        }),
      ),
    )
    await guide.host.getByText('Please try again in 7 seconds').waitFor()
    await expect.poll(() => textOf(guide.status)).toContain('Many people are asking')
    await closed(guide)
  })

  it('give up after eight seconds', async () => {
    const guide = await open({}, {}, async (page) => {
      await page.clock.install()
      await page.route('**/setup*', () => undefined)
    })
    await guide.host.getByText('One moment').waitFor()
    await guide.page.clock.fastForward(8100)
    await guide.host.locator('[part=failure]').waitFor()
    await expect.poll(() => textOf(guide.host.locator('[part=failure]'))).toContain('This takes too long')
    await closed(guide)
  })

  it('say when the shopper is offline', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Laptop')
    await guide.on()
    await guide.host.locator('select').first().waitFor()
    await guide.on()
    await guide.host.getByLabel('24 V').waitFor()
    await guide.page.waitForLoadState('networkidle')
    await guide.page.context().setOffline(true)
    await guide.on()
    await guide.host.locator('[part=failure]').waitFor()
    await expect.poll(() => textOf(guide.host.locator('[part=failure]'))).toContain('You seem to be offline')
    await guide.page.context().setOffline(false)
    await guide.host.getByRole('button', { name: 'Try again' }).click()
    await guide.host.locator('[part=unit]').waitFor()
    await closed(guide)
  })

  it('show the page’s own fallback where the shop is unknown', async () => {
    const page = await rig.browser.newPage()
    page.on('pageerror', (error) => faults.push(error.message))
    await page.route('**/setup*', (route) =>
      route.fulfill({
        status: 404,
        json: { code: 'unknown-shop' },
        headers: { 'access-control-allow-origin': '*' },
      }),
    )
    await page.goto(
      rig.page(
        `<tallywatt-guide shop="nobody" api="${rig.api}"><a href="/contact">Write to us</a></tallywatt-guide>`,
      ),
    )
    const guide = new GuidePage(page)
    await guide.host.locator('[part=failure]').waitFor()
    expect(await page.getByText('Write to us').isVisible()).toBe(true)
    await closed(guide)
  })

  it('never come from an answer that the shopper no longer waits for', async () => {
    const guide = await open()
    await guide.ready()
    await guide.pick('Laptop')
    let release: () => void = () => undefined
    await guide.page.route('**/sizing', async (route) => {
      await new Promise<void>((resolve) => {
        release = resolve
      })
      await route.fulfill({ status: 500, json: {} }).catch(() => undefined)
    })
    await guide.on(3)
    await guide.host.getByText('Working it out').waitFor()
    await guide.host.getByRole('button', { name: 'Back' }).click()
    release()
    await guide.host.getByText('What feeds it?').waitFor()
    await expect.poll(() => guide.host.locator('[part=failure]').count()).toBe(0)
    await guide.page.unrouteAll({ behavior: 'ignoreErrors' })
    await closed(guide)
  })
})
