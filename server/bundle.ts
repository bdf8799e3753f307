import type { BuildOptions } from 'esbuild'

/** What stays in node_modules: code of the machine's own, and what most services never load. */
const OUTSIDE = ['better-sqlite3', 'esbuild', 'pg-native', 'undici']

/** Modules of the older kind ask for these, which a module of today's kind has not. */
const OLDER_NAMES = [
  "import { createRequire as requireFrom } from 'node:module'",
  "import { dirname as folderOf } from 'node:path'",
  "import { fileURLToPath as pathOf } from 'node:url'",
  'const require = requireFrom(import.meta.url)',
  'const __filename = pathOf(import.meta.url)',
  'const __dirname = folderOf(__filename)',
].join(';')

/**
 * How the service is built: with most of its packages in one file, which halves the time to the first answer over
 * finding and reading a thousand.
 *
 * @param entryPoints - Files by name
 * @param outdir - Where they and the parts they share go, side by side: some find files by their own place
 * @returns Options of esbuild
 */
export function serverBuild(entryPoints: Readonly<Record<string, string>>, outdir: string): BuildOptions {
  return {
    entryPoints: { ...entryPoints },
    outdir,
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20.19',
    external: [...OUTSIDE],
    banner: { js: OLDER_NAMES },
  }
}
