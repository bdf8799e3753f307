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
  /** What most shoppers fetch in one language: from the first question to the answer, its curve and its print. */
  readonly usualPath: number
  /** All there is of one language but the conversion of ratings: the usual path and everything below. */
  readonly oneLanguage: number
  /** The editor of a load's power with its drawings, fetched once somebody opens it. */
  readonly editor: number
  /** The conversion of ratings, fetched with the editor. */
  readonly ratings: number
  /** The reader of links, fetched where the address holds one. */
  readonly links: number
  /** The check of a shop's own colours, fetched where it has some. */
  readonly colours: number
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
  const all = (...beginnings: readonly string[]) =>
    new Set(
      ['tallywatt.js', ...['tallywatt-elements', ...beginnings].map((one) => find(graph, one))].flatMap(
        (one) => [...reach(graph, one)],
      ),
    )
  const first = all()
  const later = all('tallywatt-screens', 'tallywatt-en-later')
  const beside = (...beginnings: readonly string[]) =>
    size([...all(...beginnings)].filter((name) => !later.has(name)))
  const files = [...bytes].map(([name, length]) => [stemOf(name, graph), length] as const)
  return {
    files: Object.fromEntries(files.sort(([a], [b]) => a.localeCompare(b))),
    firstQuestion: size(first),
    usualPath: size(later),
    oneLanguage: size(
      all(
        'tallywatt-screens',
        'tallywatt-en-later',
        'tallywatt-editor',
        'tallywatt-plan-link-reader',
        'tallywatt-colour-note',
        'tallywatt-register',
      ),
    ),
    editor: beside('tallywatt-editor'),
    ratings: beside('tallywatt-rate-load'),
    links: beside('tallywatt-plan-link-reader'),
    colours: beside('tallywatt-colour-note'),
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
