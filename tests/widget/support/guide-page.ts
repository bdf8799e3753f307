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

  /** Goes on by some screens, each drawn before the next tap: two taps at once are one to the guide. */
  async on(screens = 1, by: 'click' | 'tap' = 'click'): Promise<void> {
    for (let screen = 0; screen < screens; screen += 1) {
      const before = await textOf(this.heading)
      await this.next[by]()
      while ((await textOf(this.heading)) === before) await this.page.waitForTimeout(10)
    }
  }

  async toAnswer(): Promise<void> {
    await this.on(3)
    // Drawn last, once the answer's first screenful is seen.
    await this.host.locator('[part=working]').waitFor()
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
