import { fileURLToPath } from 'node:url'
import type { BuildOptions, Plugin } from 'esbuild'
import { minifyTemplates, TARGET } from './minify-templates.ts'

const here = fileURLToPath(new URL('.', import.meta.url))

/**
 * Puts the page's stand-in where the load arithmetic converts ratings: reading plates is the largest piece, and
 * comes as a module of its own once a power is stated.
 */
const convertRatingsLater: Plugin = {
  name: 'convert-ratings-later',
  setup(build) {
    build.onResolve({ filter: /\/rate-load\.ts$/ }, ({ importer }) =>
      importer.endsWith('rate-later.ts') ? undefined : { path: `${here}rate-later.ts` },
    )
  },
}

/** Modules that are fetched later: every target of an `import()`. */
const FETCHED_LATER =
  /widget\/(parts\/(list|later)|guide\/answer-desk|fit\/register|i18n\/(pseudo|[a-z]+-later))\.ts$|loads\/rate-load\.ts$/

/** Those of them that are never fetched before the list. */
const AFTER_LIST = /(parts\/later|guide\/answer-desk)\.ts$/

/**
 * Every module that is fetched later imports the elements first, and the list where that came before. They are there
 * by then; it tells the bundler to keep all that the first question brings along in one file, and all that the list
 * brings along in another, instead of a dozen small ones.
 */
function earlierModules(path: string): string {
  const earlier = [
    ...(FETCHED_LATER.test(path) ? ['elements.ts'] : []),
    ...(AFTER_LIST.test(path) ? ['parts/list.ts'] : []),
  ]
  return earlier.map((name) => `import ${JSON.stringify(here + name)}\n`).join('')
}

/**
 * How the widget is bundled: one entry, and modules that load when they are needed.
 *
 * @param root - Folder of the project
 * @returns Options for esbuild
 */
export function widgetBuild(root: string): BuildOptions {
  return {
    absWorkingDir: root,
    entryPoints: { tallywatt: 'widget/tallywatt.ts' },
    outdir: 'dist/widget',
    chunkNames: 'tallywatt-[name]-[hash]',
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'browser',
    target: TARGET,
    minify: true,
    legalComments: 'none',
    metafile: true,
    plugins: [convertRatingsLater, minifyTemplates(earlierModules)],
  }
}
