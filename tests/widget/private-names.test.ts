import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import manifest from '../../widget/custom-elements.json' with { type: 'json' }
import { privateNames } from '../../widget/private-names.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const names = privateNames(root)

/** Every member that the language and the browsers' interfaces and option bags have, as the compiler declares them. */
function declaredByTheCompiler(): ReadonlySet<string> {
  const packages = join(root, 'node_modules/@typescript')
  const folder = readdirSync(packages)
    .map((name) => join(packages, name, 'lib'))
    .find((lib) => readdirSync(lib).includes('lib.dom.d.ts'))
  if (folder === undefined) throw new Error('the compiler’s declarations are not where they were')
  const member = /^\s+(?:readonly |static |get |set )*"?(\w+)"?\??\s*[:(<]/gm
  const texts = readdirSync(folder)
    .filter((name) => /^lib\.(es|dom|decorators).*\.d\.ts$/.test(name))
    .map((name) => readFileSync(join(folder, name), 'utf8'))
  return new Set(texts.flatMap((text) => [...text.matchAll(member)].map(([, name = '']) => name)))
}

describe('names that the bundle shortens', () => {
  it('are the words of the catalogues and the members of our own interfaces', () => {
    expect(names.length).toBeGreaterThan(150)
    expect(names).toEqual(expect.arrayContaining(['addAnother', 'whenHeading', 'widthEm', 'startAgain']))
  })

  it('are none that a browser knows', () => {
    const known = declaredByTheCompiler()
    expect(known.size).toBeGreaterThan(5000)
    expect(names.filter((name) => known.has(name))).toEqual([])
  })

  it('are none of a reply, of an event or of what an element offers', () => {
    const api = JSON.parse(readFileSync(join(root, 'openapi/openapi.json'), 'utf8')) as unknown
    const said = new Set<string>()
    JSON.stringify([api, manifest], (key, value: unknown) => {
      said.add(key)
      if (typeof value === 'string') said.add(value)
      return value
    })
    expect(said.has('recommended') && said.has('withoutCart')).toBe(true)
    expect(names.filter((name) => said.has(name))).toEqual([])
  })

  it('are none by which something is looked up in quotes', () => {
    const quoted = [
      'search',
      'plus',
      'fits',
      'screens',
      'setup',
      'rating',
      'name',
      'watts',
      'shop',
      'sku',
      'keep',
    ]
    expect(names.filter((name) => quoted.includes(name))).toEqual([])
  })
})
