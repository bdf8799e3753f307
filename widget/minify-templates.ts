import { readFile } from 'node:fs/promises'
import { type Plugin, transform } from 'esbuild'

/** Browsers that the widget is written for, as esbuild names them. */
export const TARGET = ['es2022', 'chrome123', 'firefox120', 'safari17.5']

/**
 * Shortens what the bundler leaves alone: markup and sheets inside tagged templates.
 *
 * White space that holds a line break counts as layout of the source: between tags it goes, inside a tag or a text
 * it becomes one space. A space that is meant to show stands on one line with what it parts.
 *
 * @param preface - Code that a file is given as its first line, by the file's path
 * @returns A plugin for the widget's own sources
 */
export function minifyTemplates(preface: (path: string) => string): Plugin {
  return {
    name: 'minify-templates',
    setup(build) {
      build.onLoad({ filter: /\/widget\/.*\.ts$|\/core\/loads\/rate-load\.ts$/ }, async ({ path }) => ({
        contents: preface(path) + (await minified(await readFile(path, 'utf8'))),
        loader: 'ts',
      }))
    },
  }
}

/**
 * A source with its `html`, `svg` and `css` templates shortened.
 *
 * @param source - TypeScript
 * @returns The same program
 */
export async function minified(source: string): Promise<string> {
  let shortened = ''
  let from = 0
  for (const { index, 0: opening, 1: tag } of source.matchAll(/\b(html|svg|css)`/g)) {
    // A template inside one that is done already went with that one.
    if (index < from) continue
    const start = index + opening.length
    const { text, end } = tag === 'css' ? await sheet(source, start) : markup(source, start)
    shortened += source.slice(from, start) + text
    from = end
  }
  return shortened + source.slice(from)
}

/** A part of a source, shortened, and where it ends: at the closing sign. */
interface Part {
  readonly text: string
  readonly end: number
}

async function sheet(source: string, start: number): Promise<Part> {
  const end = source.indexOf('`', start)
  const { code } = await transform(source.slice(start, end), { loader: 'css', minify: true, target: TARGET })
  return { text: code.trim().replaceAll('\\', '\\\\'), end }
}

function markup(source: string, start: number): Part {
  let text = ''
  let inTag = false
  let at = start
  while (source[at] !== '`') {
    if (source.startsWith('${', at)) {
      const { text: inner, end } = expression(source, at + 2)
      text += `\${${inner}}`
      at = end + 1
      continue
    }
    const space = /^\s+/.exec(source.slice(at, at + 400))?.[0]
    if (space !== undefined) {
      at += space.length
      text += space.includes('\n') && !inTag && besideTag(text, source.slice(at, at + 2)) ? '' : ' '
      continue
    }
    const sign = source[at] ?? ''
    if (sign === '<') inTag = true
    if (sign === '>') inTag = false
    text += sign
    at += 1
  }
  return { text: shortTags(text), end: at }
}

/** Values without quotes where nothing needs those (HTML standard, 13.1.2.3). */
function shortTags(text: string): string {
  return text.replaceAll(' />', '/>').replace(/( [\w-]+=)"([\w#.-]+)"(?!\/)/g, '$1$2')
}

/** Whether white space touches a tag, an expression or an end of the template. */
function besideTag(before: string, after: string): boolean {
  return /(^|[>}])$/.test(before) || /^(<|\$\{|`)/.test(after)
}

function expression(source: string, start: number): Part {
  let depth = 0
  let from = start
  let text = ''
  for (let at = start; at < source.length; at += 1) {
    const sign = source[at]
    if (sign === "'" || sign === '"') at = source.indexOf(sign, at + 1)
    else if (sign === '{') depth += 1
    else if (sign === '}') {
      if (depth === 0) return { text: text + source.slice(from, at), end: at }
      depth -= 1
    } else if (sign === '`') {
      const ours = /\b(html|svg)$/.test(source.slice(Math.max(0, at - 5), at))
      const inner = markup(source, at + 1)
      text += source.slice(from, at + 1) + (ours ? inner.text : source.slice(at + 1, inner.end))
      from = inner.end
      at = inner.end
    }
  }
  throw new SyntaxError('a template has no end')
}
