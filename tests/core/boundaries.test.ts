import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../..', import.meta.url))
const rooms = ['core', 'shared', 'server', 'widget'] as const

function sourcesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name))
}

interface Import {
  readonly from: string
  readonly target: string
  readonly typeOnly: boolean
}

const IMPORT = /^\s*(import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/gm

function importsOf(file: string): readonly Import[] {
  const text = readFileSync(join(root, file), 'utf8')
  return [...text.matchAll(IMPORT)].map(([, , type, specifier = '']) => ({
    from: file,
    typeOnly: type !== undefined,
    target: specifier.startsWith('.')
      ? relative(root, resolve(root, dirname(file), specifier))
      : `package:${specifier}`,
  }))
}

/** Scripts that put bundles together: run by hand or by npm, part of no bundle. */
const BUILD_SCRIPTS = [
  'server/release/package.ts',
  'server/build.ts',
  'shared/client/build.ts',
  'widget/build.ts',
  'widget/integrity.ts',
  'widget/minify-templates.ts',
  'widget/private-names.ts',
]

const files = rooms.flatMap(sourcesIn)
const imports = files.flatMap(importsOf).filter(({ from }) => !BUILD_SCRIPTS.includes(from))
const describeImport = ({ from, target }: Import) => `${from} -> ${target}`

function fromRoom(room: string): readonly Import[] {
  return imports.filter(({ from }) => from.startsWith(`${room}/`))
}

describe('import arrows', () => {
  it('reads a house with files in it', () => {
    expect(files.length).toBeGreaterThan(50)
    expect(imports.length).toBeGreaterThan(100)
  })

  it('the service takes core by its public face, which core itself does not use', () => {
    const inside = fromRoom('server').filter(
      ({ from, target }) =>
        target.startsWith('core/') && target !== 'core/index.ts' && !from.includes('/client/'),
    )
    expect(inside.map(describeImport)).toEqual([])
    expect(fromRoom('core').filter(({ target }) => target === 'core/index.ts')).toEqual([])
  })

  it('core imports nothing outside core', () => {
    const leaks = fromRoom('core').filter(({ target }) => !target.startsWith('core/'))
    expect(leaks.map(describeImport)).toEqual([])
  })

  it('shared imports shared, core and its schema libraries only', () => {
    const leaks = fromRoom('shared').filter(
      ({ from, target }) =>
        !from.startsWith('shared/client/') &&
        !/^(core|shared)\//.test(target) &&
        !['package:zod/v3', 'package:zod-to-json-schema'].includes(target),
    )
    expect(leaks.map(describeImport)).toEqual([])
  })

  it('the client imports itself, its generated types, undici and Node, and nothing of zod', () => {
    const leaks = fromRoom('shared').filter(
      ({ from, target }) =>
        from.startsWith('shared/client/') &&
        !target.startsWith('shared/client/') &&
        !/^(openapi\/client-types\.ts|package:(undici|node:[a-z/]+))$/.test(target),
    )
    expect(leaks.map(describeImport)).toEqual([])
  })

  it('server never imports the widget, but for the browser code of its pages', () => {
    const leaks = fromRoom('server').filter(
      ({ from, target }) =>
        target.startsWith('widget/') &&
        !BUILD_SCRIPTS.includes(target) &&
        !/^server\/pages\/[a-z]+\/client\//.test(from),
    )
    expect(leaks.map(describeImport)).toEqual([])
  })

  it('widget imports types from shared, arithmetic from core/loads, and Lit', () => {
    const leaks = fromRoom('widget').filter(({ target, typeOnly }) => {
      if (target.startsWith('widget/') || target.startsWith('core/loads/')) return false
      if (/^package:lit(\/|$)/.test(target)) return false
      return !(typeOnly && /^(shared|core)\//.test(target))
    })
    expect(leaks.map(describeImport)).toEqual([])
  })

  it('has no circle', () => {
    const edges = new Map<string, readonly string[]>()
    for (const file of files) {
      edges.set(
        file,
        importsOf(file).flatMap(({ target }) => (files.includes(target) ? [target] : [])),
      )
    }
    const done = new Set<string>()
    const circles: string[] = []
    const walk = (file: string, way: readonly string[]) => {
      const at = way.indexOf(file)
      if (at >= 0) {
        circles.push([...way.slice(at), file].join(' -> '))
        return
      }
      if (done.has(file)) return
      for (const next of edges.get(file) ?? []) walk(next, [...way, file])
      done.add(file)
    }
    for (const file of files) walk(file, [])
    expect(circles).toEqual([])
  })
})
