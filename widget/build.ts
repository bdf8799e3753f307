import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { BuildOptions, Plugin } from 'esbuild'

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
  /widget\/(parts\/(list|later|print-sheet)|guide\/answer-desk|fit\/verdict|plan-link|i18n\/pseudo)\.ts$|loads\/rate-load\.ts$/

/**
 * Lets every module that is fetched later import the elements first. They are there by then; it tells the bundler
 * to keep all that the first question brings along in one file instead of a dozen small ones.
 */
const oneFirstModule: Plugin = {
  name: 'one-first-module',
  setup(build) {
    build.onLoad({ filter: FETCHED_LATER }, async ({ path }) => ({
      contents: `import ${JSON.stringify(`${here}elements.ts`)}\n${shortened(await readFile(path, 'utf8'))}`,
      loader: 'ts',
    }))
  },
}

/** Takes line breaks and indents out of style sheets, which esbuild leaves alone inside template literals. */
const shortenSheets: Plugin = {
  name: 'shorten-sheets',
  setup(build) {
    build.onLoad({ filter: /widget\/.*(theme|styles)\.ts$/ }, async ({ path }) => ({
      contents: shortened(await readFile(path, 'utf8')),
      loader: 'ts',
    }))
  },
}

function shortened(text: string): string {
  return text.replace(/\bcss`[^`]*`/g, (sheet) =>
    sheet
      .replace(/\s+/g, ' ')
      .replace(/ ?([{};]) ?/g, '$1')
      .replace(/;}/g, '}')
      .replace(/: /g, ':'),
  )
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
    target: ['es2022', 'chrome123', 'firefox120', 'safari17.5'],
    minify: true,
    legalComments: 'none',
    metafile: true,
    plugins: [convertRatingsLater, oneFirstModule, shortenSheets],
  }
}
