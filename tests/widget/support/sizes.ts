import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build, type Metafile } from 'esbuild'
import { widgetBuild } from '../../../widget/build.ts'
import { builtWidget } from './rig.ts'

/** Sizes of the widget. [bytes] after gzip -9 */
export interface Sizes {
  /** Each file by its name without hash. */
  readonly files: Readonly<Record<string, number>>
  /** What it takes to show the first question, search, pick and see the total: entry, elements and their imports. */
  readonly firstQuestion: number
  /** The same with the list, the load bar and the later words, which come once the shop is known. */
  readonly withList: number
  /** Every module of one language but the reader of ratings. */
  readonly oneLanguage: number
  /** The reader of ratings, fetched once somebody states a power. */
  readonly ratings: number
}

/** Measures a fresh bundle. */
export async function measureSizes(root: string): Promise<Sizes> {
  const outdir = await builtWidget()
  const { metafile } = await build({ ...widgetBuild(root), write: false })
  if (metafile === undefined) throw new TypeError('the bundler told nothing of its files')
  const bytes = new Map(
    readdirSync(outdir).map((name) => [
      name,
      gzipSync(readFileSync(join(outdir, name)), { level: 9 }).length,
    ]),
  )
  const graph = new Map(Object.entries(metafile.outputs).map(([path, output]) => [nameOf(path), output]))
  const size = (names: Iterable<string>) => [...names].reduce((sum, name) => sum + (bytes.get(name) ?? 0), 0)
  const elements = find(graph, 'tallywatt-elements')
  const list = find(graph, 'tallywatt-list')
  const words = find(graph, 'tallywatt-en-later')
  const ratings = find(graph, 'tallywatt-rate-load')
  const other = /^tallywatt-(pseudo|(?!en)[a-z]{2}(-later)?)-[A-Z0-9]{8}\.js$/
  const first = new Set(['tallywatt.js', ...reach(graph, elements)])
  const language = [...graph.keys()].filter((name) => name !== ratings && !other.test(name))
  const files = [...bytes].map(([name, length]) => [stemOf(name, graph), length] as const)
  return {
    files: Object.fromEntries(files.sort(([a], [b]) => a.localeCompare(b))),
    firstQuestion: size(first),
    withList: size(new Set([...first, ...reach(graph, list), words])),
    oneLanguage: size(language),
    ratings: bytes.get(ratings) ?? 0,
  }
}

type Graph = ReadonlyMap<string, Metafile['outputs'][string]>

function nameOf(path: string): string {
  return path.split('/').at(-1) ?? path
}

function find(graph: Graph, beginning: string): string {
  const name = [...graph.keys()].find((one) => one.startsWith(beginning))
  if (name === undefined) throw new TypeError(`no module begins with ${beginning}`)
  return name
}

function reach(graph: Graph, name: string, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(name)) return seen
  seen.add(name)
  for (const { path, kind } of graph.get(name)?.imports ?? []) {
    if (kind === 'import-statement') reach(graph, nameOf(path), seen)
  }
  return seen
}

/** A name that stays when the content changes: shared modules are named by the largest source in them. */
function stemOf(name: string, graph: Graph): string {
  if (!name.startsWith('tallywatt-chunk-')) return name.replace(/-[A-Z0-9]{8}\.js$/, '')
  const inputs = Object.entries(graph.get(name)?.inputs ?? {})
  const largest = inputs.sort(([, a], [, b]) => b.bytesInOutput - a.bytesInOutput)[0]?.[0]
  return `shared: ${largest?.replace(/^.*node_modules\//, '') ?? 'nothing'}`
}
