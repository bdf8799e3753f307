import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { pageData, pageText } from './page-data.ts'
import { DOCUMENTS } from './values/documents.ts'
import { TOPICS } from './values/index.ts'

const data = pageData()
const tables = TOPICS.flatMap((topic) => topic.tables)

describe('the published values', () => {
  it('are more than a thousand, of more than fifty documents', () => {
    expect(tables.flatMap(({ rows }) => rows).length).toBeGreaterThan(1000)
    expect(new Set(tables.map(({ document }) => document)).size).toBeGreaterThan(50)
  })

  it('use every document of the list', () => {
    const used = new Set<string>([
      ...tables.map(({ document }) => document),
      ...TOPICS.flatMap(({ traps }) => traps.map(({ document }) => document)),
    ])
    expect(Object.keys(DOCUMENTS).filter((id) => !used.has(id))).toEqual([])
  })

  it('are not typed twice: within a table each row has a name of its own', () => {
    for (const { document, table, quantity, rows } of tables) {
      expect(new Set(rows.map(([what]) => what)).size, `${document}, ${table}, ${quantity}`).toBe(rows.length)
    }
  })
})

describe('the file that the page of figures reads', () => {
  it('is what npm run figures writes now', () => {
    const file = new URL('../../server/pages/docs/figures/figures.json', import.meta.url)
    expect(readFileSync(file, 'utf8'), 'run npm run figures').toBe(pageText(data))
  })

  it('quotes no more than thirteen rows of a table that is not free to copy', () => {
    for (const { source, rows } of data.topics.flatMap((topic) => topic.tables)) {
      if (data.sources[source]?.shown === 'some') expect(rows.length, source).toBeLessThanOrEqual(13)
    }
  })

  it('shows the figure that lies farthest off of every table', () => {
    for (const [at, { tables: shown }] of data.topics.entries()) {
      for (const [index, { rows, source }] of shown.entries()) {
        const all = TOPICS[at]?.tables[index]?.rows ?? []
        const farthest = Math.max(
          ...all.map(([, printed, compute]) => {
            const computed = compute()
            const isCompared = typeof computed === 'number' && printed !== 0
            return isCompared ? Math.abs(computed / printed - 1) : 0
          }),
        )
        const most = Math.max(...rows.map(([, , , , share]) => Math.abs(share)))
        expect(Math.abs(most - farthest), source).toBeLessThan(0.001)
      }
    }
  })
})
