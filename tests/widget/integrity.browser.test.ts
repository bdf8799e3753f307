import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { integrityOf } from '../../widget/integrity.ts'
import { GuidePage } from './support/guide-page.ts'
import { builtWidget, type Rig, startRig } from './support/rig.ts'

let rig: Rig
beforeAll(async () => {
  rig = await startRig()
})
afterAll(() => rig.close())

const folder = await builtWidget()
const bytes = new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name))]))

/** The import map of the guide for embedders, with some hashes changed. */
function importMap(changed: Readonly<Record<string, string>> = {}): string {
  const { files } = integrityOf('0.1.0', bytes)
  const entries = Object.entries({ ...files, ...changed }).map(([name, hash]) => [`/widget/${name}`, hash])
  return `<script type="importmap">${JSON.stringify({ integrity: Object.fromEntries(entries) })}</script>`
}

async function open(head: string) {
  const page = await (await rig.browser.newContext()).newPage()
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  const body = `<tallywatt-guide shop="kingcup" api="${rig.api}"><a href="/contact">Write to us</a></tallywatt-guide>`
  await page.goto(rig.page(body, { head }))
  return { page, errors, guide: new GuidePage(page) }
}

describe('a page that checks every file by the published list', () => {
  it('shows the guide to the end', async () => {
    const { page, errors, guide } = await open(importMap())
    await guide.ready()
    await guide.pick('Laptop')
    await guide.toAnswer()
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('runs no file that differs from it', async () => {
    const other = `sha384-${createHash('sha384').update('other bytes').digest('base64')}`
    const later = [...bytes.keys()].find((name) => name.startsWith('tallywatt-screens')) ?? ''
    const { page, errors, guide } = await open(importMap({ [later]: other }))
    await guide.ready()
    await guide.host.locator('.tile').first().click()
    await guide.next.click()
    await guide.host.locator('[part=failure]').waitFor()
    expect(errors).toEqual([])
    await page.context().close()
  })
})
