import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { BuildOptions } from 'esbuild'

const SCRIPT_BUILD = { bundle: true, format: 'esm', minify: true, target: 'es2022' } as const

/** Where the build puts the script, beside the server's own file. */
const BUILT = new URL('./assets/docs-try-it.js', import.meta.url)

/**
 * The page's script: as built, or, when the server runs from its sources, compiled now.
 *
 * @returns JavaScript
 */
export async function docsScript(): Promise<string> {
  if (existsSync(BUILT)) return readFileSync(BUILT, 'utf8')
  const { build } = await import('esbuild')
  const { outputFiles = [] } = await build({
    ...SCRIPT_BUILD,
    entryPoints: [fileURLToPath(new URL('./try-it.ts', import.meta.url))],
    write: false,
  })
  return outputFiles[0]?.text ?? ''
}

/**
 * How a release builds the script.
 *
 * @param root - The project's folder
 * @returns Options of esbuild
 */
export function docsScriptBuild(root: string): BuildOptions {
  return {
    ...SCRIPT_BUILD,
    absWorkingDir: root,
    entryPoints: { 'docs-try-it': 'server/pages/docs/try-it.ts' },
    outdir: 'dist/server/assets',
  }
}
