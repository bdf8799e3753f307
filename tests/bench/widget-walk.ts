import type { CDPSession } from 'playwright-core'

/** A part of the walk: what is done, and how. */
export interface WalkStep {
  readonly name: string
  readonly act: () => Promise<unknown>
}

/** How long a page is left alone after an act, so that two interactions are not one. [ms] */
const SETTLE_MS = 400

/** Finds an element of the guide, from inside the page. */
const find = (selector: string, place: number) =>
  `document.querySelector('tallywatt-guide')?.shadowRoot.querySelectorAll(${JSON.stringify(selector)})[${place}]`

/**
 * The way to the answer by touch and keys, told to the browser itself: the helpers of a test driver would run code of
 * their own in the page, and that would be measured too.
 *
 * @param session - To the page
 * @returns Its steps, in order
 */
export function walkOf(session: CDPSession): readonly WalkStep[] {
  const page = pageOf(session)
  const tile = (place: number) => ({
    name: `tap tile ${place + 1}`,
    act: () => page.tap('.tiles .tile', place),
  })
  const next = (name: string, seen: string) => ({
    name,
    act: async () => {
      await page.tap('[part=next]')
      await page.seen(seen)
    },
  })
  return [
    { name: 'load', act: () => page.seen('.tile') },
    tile(0),
    tile(2),
    tile(5),
    {
      name: 'search',
      act: async () => {
        await page.tap('#search')
        for (const key of 'coff') await page.key(key)
        await page.key('Escape')
      },
    },
    next('to the second question', '.timed'),
    next('to the third question', 'fieldset'),
    next('to the answer', '[part=verdict]'),
  ]
}

function pageOf(session: CDPSession) {
  const value = async (expression: string): Promise<unknown> =>
    (await session.send('Runtime.evaluate', { expression, returnByValue: true })).result.value
  const settle = () => new Promise((resolve) => setTimeout(resolve, SETTLE_MS))
  const seen = async (selector: string): Promise<void> => {
    for (let turn = 0; turn < 200; turn += 1) {
      if ((await value(`${find(selector, 0)} !== undefined`)) === true) return settle().then(() => undefined)
      await new Promise((resolve) => setTimeout(resolve, 50))
    }
    throw new Error(`the guide never showed ${selector}`)
  }
  return {
    seen,
    async tap(selector: string, place = 0): Promise<void> {
      const [x, y] = (await value(`(() => {
        const one = ${find(selector, place)}; one.scrollIntoView({ block: 'nearest' })
        const { x, y, width, height } = one.getBoundingClientRect(); return [x + width / 2, y + height / 2] })()`)) as number[]
      await session.send('Input.dispatchTouchEvent', {
        type: 'touchStart',
        touchPoints: [{ x: x ?? 0, y: y ?? 0 }],
      })
      await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
      await settle()
    },
    async key(key: string): Promise<void> {
      const text = key.length === 1 ? key : ''
      await session.send('Input.dispatchKeyEvent', { type: 'keyDown', key, text })
      await session.send('Input.dispatchKeyEvent', { type: 'keyUp', key })
      await settle()
    },
  }
}
