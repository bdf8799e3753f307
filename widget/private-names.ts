import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Names of ours that something in a browser bears too, so that they can't be shortened. A test compares what is
 * shortened with the names that the language and the browsers' interfaces have.
 */
const BROWSER_NAMES = 'constructor done duration hint loading messages observedAttributes retry startsWith y'

/** Files whose strings are words for people: no string of theirs is the name of a property. */
const CATALOGUES = /^widget\/i18n\/(?!index|pseudo)/

/**
 * Names of properties that only the widget's own code knows, which the bundle may shorten. Every name that the
 * service's replies, the page or an event may bear stays as it is, and so does any that stands in quotes or is the
 * name of an export: such a one may be reached by a text.
 *
 * @param root - Folder of the project
 * @returns The names, sorted
 */
export function privateNames(root: string): readonly string[] {
  const own = sources(root, 'widget').filter(
    ([path]) => !/widget\/(build|integrity|minify-templates|private-names)/.test(path),
  )
  const core = sources(root, 'core')
  const contract = sources(root, 'shared/contract')
  const declared = own.flatMap(([path, text]) =>
    CATALOGUES.test(path) ? found(text, /^ {2}(\w+)[:(]/gm) : membersOf(text),
  )
  const kept = new Set([
    ...BROWSER_NAMES.split(' '),
    ...contract.flatMap(([, text]) => found(text, /(\w+)/g)),
    ...found(read(root, 'widget/custom-elements.json') + read(root, 'widget/events.ts'), /(\w+)/g),
    ...[...own, ...core].flatMap(([path, text]) => [
      ...(CATALOGUES.test(path) ? found(text, /^ {4,}(\w+):/gm) : found(text, /'(\w+)'/g)),
      ...found(text, /^export (?:abstract |async )?(?:const|function|class|interface|type) (\w+)/gm),
      ...found(text, /^export \{([^}]+)\}/gm).flatMap((names) => found(names, /(\w+)/g)),
    ]),
  ])
  return [...new Set(declared)].filter((name) => !kept.has(name) && !/Callback$/.test(name)).sort()
}

/** Members of the interfaces and classes of a source. */
function membersOf(text: string): readonly string[] {
  const bodies = found(text, /^(?:export )?(?:abstract )?(?:interface|class) [^{]*\{\n(.*?)^\}/gms).join('\n')
  return [
    ...found(
      bodies,
      /^ {2}(?:(?:protected|override|abstract|readonly|static|async|get|set) )*(\w+)\??[:(<=]/gm,
    ),
    ...found(bodies, /^ {2}(?:(?:readonly|static) )*(\w+) = /gm),
    ...found(text, /\breadonly (\w+)\??:/g),
  ]
}

function found(text: string, pattern: RegExp): readonly string[] {
  return [...text.matchAll(pattern)].map(([, name = '']) => name)
}

function sources(root: string, folder: string): readonly (readonly [path: string, text: string])[] {
  const paths = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
  return paths
    .filter((path) => path.endsWith('.ts') && !path.endsWith('.d.ts'))
    .sort()
    .map((path) => [`${folder}/${path}`, read(root, `${folder}/${path}`)])
}

function read(root: string, path: string): string {
  return readFileSync(join(root, path), 'utf8')
}
