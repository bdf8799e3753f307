import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { GuidePage, textOf } from '../widget/support/guide-page.ts'
import { type Live, startLive, type Visit } from './support/live.ts'

let live: Live
beforeAll(async () => {
  live = await startLive()
})
afterAll(() => live.close())

/** Runs both elements of a page to their answers, with every part that loads later. */
async function runBoth(page: Page): Promise<void> {
  const guide = new GuidePage(page)
  await guide.ready()
  await guide.pick('Microwave oven', 'Laptop')
  await guide.host.getByRole('button', { name: 'Power of Microwave oven' }).click()
  await guide.host.getByLabel('I copy what its plate says').check()
  await guide.host.getByLabel('What the plate says').fill('230V~ 50Hz 1250W')
  await guide.host.getByText('Read as 1,250 W.').waitFor()
  await guide.toAnswer()
  await guide.host.getByText('The working').click()
  await guide.host.locator('table').waitFor()
  await guide.host.getByRole('button', { name: 'Copy a link' }).click()
  await expect.poll(() => textOf(guide.status)).toMatch(/link/i)
  const fit = new GuidePage(page, 'tallywatt-fit')
  await fit.pick('Laptop')
  await fit.host.locator('[part=check]').click()
  await fit.host.locator('[part=result]').waitFor()
}

async function open(address: string): Promise<Visit> {
  return live.visit(address, { permissions: ['clipboard-read', 'clipboard-write'] })
}

describe('a page with a strict content policy', () => {
  it('/strict requires trusted types, allows nothing else, and both elements work on it', async () => {
    const reply = await live.app.inject('/strict')
    const policy = String(reply.headers['content-security-policy'])
    expect(policy).toContain("default-src 'none'")
    expect(policy).toContain("require-trusted-types-for 'script'")
    expect(policy).not.toMatch(/unsafe|\*|data:|blob:/)
    const { page, faults, close } = await open(`${live.service}/strict`)
    await runBoth(page)
    expect(faults).toEqual([])
    await close()
  })

  it('of another origin needs to name the service for script and calls, and the one policy of trusted types', async () => {
    const csp = `default-src 'none'; script-src ${live.service}; connect-src ${live.service}; require-trusted-types-for 'script'; trusted-types lit-html`
    const body = `<tallywatt-guide shop="kingcup"></tallywatt-guide><tallywatt-fit shop="kingcup" sku="KC-ST12-465"></tallywatt-fit>`
    const { page, faults, close } = await open(live.serve({ body, csp }))
    await runBoth(page)
    expect(faults).toEqual([])
    await close()
  })

  it('that forgets the calls keeps its fallback and hears no error', async () => {
    const csp = `default-src 'none'; script-src ${live.service}`
    const body = '<tallywatt-guide shop="kingcup"><a href="/contact">Write to us</a></tallywatt-guide>'
    const { page, faults, close } = await open(live.serve({ body, csp }))
    await new GuidePage(page).host.locator('[part=failure]').waitFor()
    expect(await page.getByText('Write to us').isVisible()).toBe(true)
    // The browser reports what the policy refused; no script threw.
    expect(faults.filter((fault) => !/refused to connect|connect-src/i.test(fault))).toEqual([])
    await close()
  })

  it.each(['/', '/shops/kingcup', '/shops/bentcreek/products/BC-21120', '/playground', '/strict'])(
    '%s itself allows no inline script and no inline style',
    async (path) => {
      const reply = await live.app.inject(path)
      expect(String(reply.headers['content-security-policy'])).not.toMatch(/unsafe|sha256|nonce/)
      const scripts = reply.body.match(/<script(?![^>]*(src=|type="application\/json"))[^>]*>/g)
      expect(scripts).toBeNull()
      expect(reply.body.replace(/<code[\s\S]*?<\/code>/g, '')).not.toMatch(/<style|\sstyle=|\son[a-z]+=/)
    },
  )
})
