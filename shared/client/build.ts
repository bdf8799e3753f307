import type { BuildOptions } from 'esbuild'

/**
 * How the client is built: one file that needs undici and nothing else.
 *
 * @param root - The project's folder
 * @returns Options of esbuild
 */
export function clientBuild(root: string): BuildOptions {
  return {
    absWorkingDir: root,
    entryPoints: { 'client/index': 'shared/client/index.ts' },
    outdir: 'dist',
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20.19',
    external: ['undici'],
    sourcemap: true,
  }
}
