import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']

/**
 * What axe finds wrong on a page, shadow roots included.
 *
 * @param page - The page
 * @returns A line for each violation
 */
export async function violations(page: Page): Promise<readonly string[]> {
  // A page whose policy lets no foreign script in is looked at from the browser's own side.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe)
  const results = (await page.evaluate(
    (tags) => Reflect.get(window, 'axe').run({ runOnly: { type: 'tag', values: tags } }),
    TAGS,
  )) as AxeResults
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, any }) => `${id}: ${String(target)} ${any[0]?.message ?? ''}`),
  )
}

/**
 * What axe finds wrong on a page or can't decide, advice beyond the guidelines included.
 *
 * @param page - The page
 * @returns A line for each kind of finding
 */
export async function remarks(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe)
  const { violations, incomplete } = (await page.evaluate(
    (tags) => Reflect.get(window, 'axe').run(document, { runOnly: tags }),
    [...TAGS, 'wcag21a', 'best-practice'],
  )) as AxeResults
  return [...violations, ...incomplete].map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)
}
