import type { Locator, Page } from 'playwright-core'

/** The guide as a shopper meets it: what can be tapped and read, by its names. */
export class GuidePage {
  readonly page: Page
  readonly host: Locator

  constructor(page: Page, selector = 'tallywatt-guide') {
    this.page = page
    this.host = page.locator(selector)
  }

  get heading(): Locator {
    return this.host.locator('h2')
  }

  get status(): Locator {
    return this.host.getByRole('status')
  }

  get next(): Locator {
    return this.host.locator('[part=next]')
  }

  async ready(): Promise<void> {
    await this.host.locator('.tile').first().waitFor()
  }

  async pick(...names: readonly string[]): Promise<void> {
    for (const name of names)
      await this.host.getByRole('button', { name: `Add ${name}`, exact: true }).click()
    await this.host
      .locator('.thing')
      .nth(names.length - 1)
      .waitFor()
  }

  async toAnswer(): Promise<void> {
    for (let step = 0; step < 3; step += 1) await this.next.click()
    await this.host.locator('[part=verdict]').waitFor()
  }

  /** Whether focus is on this element of the guide. */
  async focused(selector: string): Promise<boolean> {
    return this.host.evaluate(
      (host, wanted) => host.shadowRoot?.activeElement?.matches(wanted) ?? false,
      selector,
    )
  }
}

/** What an element says, its white space made plain. */
export async function textOf(locator: Locator): Promise<string> {
  return ((await locator.textContent()) ?? '').replace(/\s+/g, ' ').trim()
}
