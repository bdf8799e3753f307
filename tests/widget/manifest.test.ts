import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import manifest from '../../widget/custom-elements.json' with { type: 'json' }

const folder = fileURLToPath(new URL('../../widget/', import.meta.url))
const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => readFileSync(`${folder}${path}`, 'utf8'))
  .join('\n')
const declarations = manifest.modules.flatMap(({ declarations: all }) => all)
const named = (lists: readonly (readonly { readonly name: string }[] | undefined)[]) =>
  [...new Set(lists.flatMap((list) => list ?? []).map(({ name }) => name))].sort()
const found = (pattern: RegExp) =>
  [...new Set([...source.matchAll(pattern)].map(([, name = '']) => name))].sort()

describe('custom-elements.json', () => {
  it('names every part of the templates, and no other', () => {
    expect(named(declarations.map(({ cssParts }) => cssParts))).toEqual(found(/\bpart="([a-z-]+)"/g))
  })

  it('names every custom property of the sheets, and no other', () => {
    expect(named(declarations.map(({ cssProperties }) => cssProperties))).toEqual(
      found(/var\((--tallywatt-[a-z-]+)/g),
    )
  })

  it('names every event of the typed list, and no other', () => {
    expect(named(declarations.map(({ events }) => events))).toEqual(
      found(/^ {2}'(tallywatt-[a-z-]+)': CustomEvent/gm),
    )
  })

  it('names every slot, and no other', () => {
    const slots = [
      ...new Set([...source.matchAll(/<slot(?: name="([a-z]+)")?>/g)].map(([, name]) => name ?? '')),
    ]
    expect(named(declarations.map(({ slots: all }) => all))).toEqual(slots.sort())
  })

  it('names every attribute that the classes document, and no other', () => {
    for (const { tagName, attributes } of declarations) {
      const text = source.slice(source.indexOf(`@element ${tagName}`))
      const block = text.slice(0, text.indexOf('*/'))
      const documented = [...block.matchAll(/@attr \{.*?\} ([a-z-]+)/g)].map(([, name = '']) => name)
      expect(attributes.map(({ name }) => name).sort()).toEqual(documented.sort())
    }
  })
})
