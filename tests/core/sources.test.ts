import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { SOURCES } from '../../core/tables/sources.ts'

const core = fileURLToPath(new URL('../../core', import.meta.url))
const files = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'))

/** Ids after `@source`, which may run on over the next comment lines. */
function namedSources(text: string): readonly string[] {
  return [...text.matchAll(/@source ([^@]*?)(?=\n\s*\*\s*@|\n\s*\*\/)/g)].flatMap(([, list = '']) =>
    list
      .replaceAll(/\([^)]*\)/g, '')
      .replaceAll(/\n\s*\*\s*/g, ' ')
      .split(/,| and /)
      .map((id) => id.trim().replace(/\.$/, ''))
      .filter((id) => id !== ''),
  )
}

describe('sources', () => {
  it('name a document each, and say how well it is known', () => {
    for (const [id, source] of Object.entries(SOURCES)) {
      expect(source.document.length, id).toBeGreaterThan(10)
      expect(['read', 'memory', 'derived', 'common-practice', 'shop'], id).toContain(source.standing)
    }
  })

  it('exist for every @source that core names', () => {
    const named = files.flatMap((name) =>
      namedSources(readFileSync(join(core, name), 'utf8')).map((id) => ({ name, id })),
    )
    expect(named.length).toBeGreaterThan(40)
    expect(named.filter(({ id }) => !Object.hasOwn(SOURCES, id))).toEqual([])
  })
})
