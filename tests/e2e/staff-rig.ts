import type { AddressInfo } from 'node:net'
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core'
import { choiceKey, combinationKey, unmetKey } from '../../server/demand/keys.ts'
import type { DemandRow } from '../../server/store/demand.ts'
import { KEY_SCOPES } from '../../shared/contract/range-admin.ts'
import { launchChromium } from '../support/chromium.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

/** The service as it runs for shops, on a store of its own, and a browser. */
export interface StaffRig {
  readonly service: StaffService
  readonly browser: Browser
  /** Address of the service. */
  readonly origin: string
  /** A key of `kingcup` that may do everything. */
  readonly key: string
  /** A page of its own, signed in; its window is gone with its context. */
  open(options?: BrowserContextOptions, section?: string): Promise<StaffPage>
  close(): Promise<void>
}

/** Starts everything that a test of the staff page stands on; nothing is mocked. */
export async function startStaffRig(): Promise<StaffRig> {
  const service = await openStaffService()
  await service.app.listen({ port: 0, host: '127.0.0.1' })
  const origin = `http://127.0.0.1:${(service.app.server.address() as AddressInfo).port}`
  const key = await service.issue('kingcup', KEY_SCOPES, { name: 'Anna at the desk' })
  const browser = await launchChromium()
  return {
    service,
    browser,
    origin,
    key,
    open: async (options = {}, section = 'range') => {
      const context = await browser.newContext(options)
      const page = await context.newPage()
      await page.goto(`${origin}/staff#${section}`)
      const staff = new StaffPage(page)
      await staff.signIn('kingcup', key)
      return staff
    },
    close: async () => {
      await browser.close()
      await service.close()
    },
  }
}

/** The staff page as staff meet it. */
export class StaffPage {
  readonly page: Page

  constructor(page: Page) {
    this.page = page
  }

  get heading(): Locator {
    return this.page.locator('main h1')
  }

  get notice(): Locator {
    return this.page.locator('#notice')
  }

  async signIn(shopId: string, key: string): Promise<void> {
    await this.page.getByLabel('Shop id').fill(shopId)
    await this.page.getByLabel('Secret key').fill(key)
    await this.page.getByRole('button', { name: 'Sign in' }).click()
    await this.page.locator('#sign-out').waitFor()
    await this.idle()
  }

  async go(name: string): Promise<void> {
    await this.page.getByRole('link', { name, exact: true }).click()
    await this.page.getByRole('heading', { name, exact: true }).first().waitFor()
    await this.idle()
  }

  /** Until the page waits for nothing. */
  async idle(): Promise<void> {
    await this.page.locator('main[aria-busy=false]').waitFor()
  }

  /** The field of a cell. */
  cell(column: string, sku: string): Locator {
    return this.page.getByLabel(`${column}, ${sku}`, { exact: true })
  }

  async upload(name: string, text: string): Promise<void> {
    const mimeType = name.endsWith('.json') ? 'application/json' : 'text/csv'
    await this.page.locator('#upload').setInputFiles({ name, mimeType, buffer: Buffer.from(text) })
    await this.page.locator('#faults-heading, #changes-heading, #notice').first().waitFor()
    await this.idle()
  }

  async check(): Promise<void> {
    await this.page.locator('[data-check]').click()
    await this.idle()
  }
}

/**
 * Demand of the last sixty days, made up but always the same.
 *
 * @param today - `YYYY-MM-DD`
 * @returns Rows of a batch
 */
export function madeUpDemand(today: string): readonly DemandRow[] {
  const rows: DemandRow[] = []
  for (let back = 59; back >= 0; back -= 1) {
    const day = new Date(Date.parse(today) - back * 86_400_000).toISOString().slice(0, 10)
    const busy = 6 + ((back * 7) % 11) + (back % 7 < 2 ? 12 : 0)
    const add = (kind: DemandRow['kind'], key: string, count: number) => {
      if (count > 0) rows.push({ shopId: 'kingcup', day, kind, key, count })
    }
    add('outcome', 'sizing fits', busy)
    add('outcome', 'sizing fits-with-care', Math.round(busy / 2))
    add('outcome', 'sizing none-fits', back % 3 === 0 ? 7 : 3)
    add('outcome', 'fit fits', 4)
    add('outcome', 'sizing not-advised', back % 9 === 0 ? 5 : 0)
    add('appliance', 'microwave-oven', busy)
    add('appliance', 'laptop', busy - 2)
    add('appliance', 'electric-kettle', 6)
    add('appliance', 'fridge', 4)
    add('combination', combinationKey(['microwave-oven', 'laptop']), 5)
    add('combination', combinationKey(['fridge', 'laptop', 'led-lamp']), 3)
    add('choice', choiceKey(['KC-ST12-2350', 'KC-ST12-3180']), busy)
    add('choice', choiceKey(['KC-ST12-295', 'KC-ST12-465', 'KC-ST12-740']), 5)
    add('choice', choiceKey(['KC-ST24-1540', 'KC-ST24-2620']), 3)
    add('code', 'continuous-power-short', 4)
    add('code', 'starting-power-short', 2)
    add('voltage', '12', busy)
    add('voltage', 'not-stated', 8)
    add(
      'unmet',
      unmetKey({ nominalV: 12, continuousW: 4000, surgeW: 5000, waveform: 'either', cause: 'size' }),
      3,
    )
    add(
      'unmet',
      unmetKey({
        nominalV: 24,
        continuousW: 6300,
        surgeW: 8000,
        waveform: 'pure-sine-required',
        cause: 'size',
      }),
      2,
    )
  }
  return rows
}
