import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { en } from '../../widget/i18n/en.ts'
import { later } from '../../widget/i18n/en-later.ts'
import { LANGUAGES as CATALOGUES } from '../../widget/i18n/index.ts'
import { GuidePage, textOf } from '../widget/support/guide-page.ts'
import { violations } from './support/axe.ts'
import { type Live, startLive } from './support/live.ts'

let live: Live
beforeAll(async () => {
  live = await startLive()
})
afterAll(() => live.close())

/** Every sentence of a catalogue that takes no values and is longer than a word. */
function sentences(catalogue: unknown): readonly string[] {
  if (typeof catalogue === 'string') return catalogue.includes(' ') ? [catalogue] : []
  if (typeof catalogue !== 'object' || catalogue === null) return []
  return Object.values(catalogue).flatMap(sentences)
}

const ENGLISH = [...sentences(en), ...sentences(later)]

/** Which of its values each sentence of a catalogue shows, by the sentence's path. */
function shownValues(catalogue: unknown, path = ''): Readonly<Record<string, readonly number[]>> {
  if (typeof catalogue === 'function') {
    const values = Array.from({ length: catalogue.length }, (_, place) => 7001 + place)
    const text = String(Reflect.apply(catalogue, undefined, values))
    return { [path]: values.filter((value) => text.includes(String(value))) }
  }
  if (typeof catalogue !== 'object' || catalogue === null) return {}
  const parts = Object.entries(catalogue).map(([key, inner]) => shownValues(inner, `${path}/${key}`))
  return Object.assign({}, ...parts)
}

interface Told {
  readonly lang: string
  readonly heading: string
  readonly microwave: string
  readonly laptop: string
  readonly steps: readonly [string, string]
  readonly undo: string
  /** A word that only this language has for the fuse. */
  readonly fuse: string
  /** 2,350 W as the language writes it. */
  readonly watts: RegExp
}

const LANGUAGES: readonly Told[] = [
  {
    lang: 'de',
    heading: 'Was möchten Sie betreiben?',
    microwave: 'Mikrowelle',
    laptop: 'Laptop',
    steps: ['Wann läuft was?', 'Woher kommt der Strom?'],
    undo: 'Änderung zurücknehmen',
    fuse: 'Sicherung',
    watts: /2\.350\sW/,
  },
  {
    lang: 'fr',
    heading: 'Que voulez-vous alimenter ?',
    microwave: 'micro-ondes',
    laptop: 'portable',
    steps: ['Quand chacun marche-t-il ?', 'Qu’est-ce qui les alimente ?'],
    undo: 'Annuler le changement',
    fuse: 'Fusible',
    watts: /2\s350\sW/,
  },
  {
    lang: 'es',
    heading: '¿Qué quiere usar?',
    microwave: 'icroondas',
    laptop: 'portátil',
    steps: ['¿Cuándo funciona cada uno?', '¿Qué los alimenta?'],
    undo: 'Deshacer el cambio',
    fuse: 'Fusible',
    watts: /2\.?350\sW/,
  },
]

const everything = (guide: GuidePage) =>
  guide.host.evaluate((host) =>
    (host.shadowRoot?.querySelector('.base')?.textContent ?? '').replace(/\s+/g, ' '),
  )

describe('a page that changes its language', () => {
  it('gets words and names of things in the new one, and keeps what was picked', async () => {
    const address = live.serve({ body: '<tallywatt-guide shop="kingcup"></tallywatt-guide>', lang: 'en' })
    const { page, faults, close } = await live.visit(address)
    const guide = new GuidePage(page)
    await guide.ready()
    await guide.host.locator('.tiles .tile').filter({ hasText: 'Microwave' }).first().click()
    await guide.host.locator('.thing').first().waitFor()
    await guide.host.evaluate((host) => host.setAttribute('lang', 'de'))
    await expect.poll(() => textOf(guide.heading)).toBe('Was möchten Sie betreiben?')
    await expect.poll(() => textOf(guide.host.locator('.thing').first())).toContain('Mikrowelle')
    expect(faults).toEqual([])
    await close()
  })
})

describe.each(LANGUAGES)('in the language $lang', (told) => {
  it('the whole path has no English sentence, from the first question to the tried what-if', async () => {
    const address = live.serve({
      body: '<tallywatt-guide shop="kingcup"></tallywatt-guide>',
      lang: told.lang,
    })
    const { page, faults, close } = await live.visit(address)
    const guide = new GuidePage(page)
    const seen: string[] = []
    const look = async () => seen.push(await everything(guide))
    await guide.ready()
    await expect.poll(() => textOf(guide.heading)).toBe(told.heading)
    await expect.poll(() => guide.host.locator('.base').getAttribute('lang')).toBe(told.lang)
    for (const name of [told.microwave, told.laptop]) {
      await guide.host.locator('.tiles .tile').filter({ hasText: name }).first().click()
    }
    await guide.host.locator('.thing').nth(1).waitFor()
    await look()
    for (const heading of told.steps) {
      await guide.on()
      await expect.poll(() => textOf(guide.heading)).toBe(heading)
      await look()
    }
    await guide.on()
    // The last part of the answer, drawn once its first screenful is seen.
    await guide.host.locator('[part=working]').waitFor()
    for (const summary of await guide.host.locator('summary').all()) await summary.click()
    await guide.host.locator('table').waitFor()
    await look()
    const answer = seen.at(-1) ?? ''
    expect(answer).toContain(told.fuse)
    expect(answer).toMatch(told.watts)
    await guide.host.locator('[part=what-ifs] button').first().click()
    await guide.host.getByRole('button', { name: told.undo }).waitFor()
    await look()
    const left = ENGLISH.filter((sentence) => seen.some((text) => text.includes(sentence)))
    expect(left).toEqual([])
    expect(await violations(page)).toEqual([])
    expect(faults).toEqual([])
    await close()
  })

  it('every sentence shows the values that it shows in English', async () => {
    const language = await CATALOGUES[told.lang]?.()
    const rest = shownValues(await language?.later())
    expect(Object.keys(rest).length).toBeGreaterThan(30)
    expect(shownValues(language?.words)).toEqual(shownValues(en))
    expect(rest).toEqual(shownValues(later))
  })

  it('things are found by the words of the language', async () => {
    const address = live.serve({
      body: '<tallywatt-guide shop="kingcup"></tallywatt-guide>',
      lang: told.lang,
    })
    const { page, close } = await live.visit(address)
    const guide = new GuidePage(page)
    await guide.ready()
    await guide.host.locator('#search').fill(told.microwave.slice(0, 6))
    await expect.poll(() => textOf(guide.host.locator('.hits'))).toContain(told.microwave)
    await close()
  })
})

describe('from right to left', () => {
  it('the whole path mirrors: tiles and load bar begin at the right', async () => {
    const address = live.serve({ body: '<tallywatt-guide shop="kingcup"></tallywatt-guide>', lang: 'ar-XB' })
    const { page, faults, close } = await live.visit(address, { viewport: { width: 390, height: 844 } })
    const guide = new GuidePage(page)
    await guide.ready()
    await expect.poll(() => guide.host.locator('.base').getAttribute('dir')).toBe('rtl')
    const places = await guide.host
      .locator('.tiles .tile')
      .evaluateAll((tiles) => tiles.slice(0, 2).map((tile) => tile.getBoundingClientRect().x))
    expect(places[0]).toBeGreaterThan(places[1] ?? Number.POSITIVE_INFINITY)
    for (const place of [0, 2]) await guide.host.locator('.tiles .tile').nth(place).click()
    await guide.host.locator('.thing').nth(1).waitFor()
    await guide.on()
    await guide.on()
    await guide.host.locator('[name=battery]').first().click()
    await guide.host.locator('#capacity').fill('120')
    await guide.on()
    await guide.host.locator('[part=unit]').waitFor()
    const bar = await guide.host
      .locator('.bar rect.a')
      .first()
      .evaluate((load) => {
        const drawing = load.closest('svg')?.getBoundingClientRect()
        const box = load.getBoundingClientRect()
        return drawing === undefined ? 0 : drawing.right - box.right
      })
    // The first load stands at the right end of the bar.
    expect(Math.abs(bar)).toBeLessThan(3)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    expect(await violations(page)).toEqual([])
    expect(faults).toEqual([])
    await close()
  })
})
