import { fileURLToPath } from 'node:url'
import type { BuildOptions, Plugin } from 'esbuild'
import { minifyTemplates, TARGET } from './minify-templates.ts'
import { privateNames } from './private-names.ts'

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
  /widget\/(screens|plan-link-reader|parts\/editor|parts\/colour-note|fit\/register|i18n\/(pseudo|[a-z]+-later))\.ts$|loads\/rate-load\.ts$/

/**
 * Every module that is fetched later imports the elements first. They are there by then; it tells the bundler to
 * keep all that the first question brings along in one file instead of a dozen small ones.
 */
function earlierModules(path: string): string {
  return FETCHED_LATER.test(path) ? `import ${JSON.stringify(`${here}elements.ts`)}\n` : ''
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
    charset: 'utf8',
    mangleProps: new RegExp(`^(${privateNames(root).join('|')})$`),
    metafile: true,
    plugins: [convertRatingsLater, minifyTemplates(earlierModules)],
  }
}
