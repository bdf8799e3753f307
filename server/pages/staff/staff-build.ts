import type { BuildOptions } from 'esbuild'

/**
 * How the staff page's script and style are built, now or for a release.
 *
 * @param root - Folder of the project
 * @returns Options for esbuild
 */
export function staffBuild(root: string): BuildOptions {
  return {
    absWorkingDir: root,
    entryPoints: [
      { in: 'server/pages/staff/client/main.ts', out: 'staff' },
      { in: 'server/pages/staff/client/staff.css', out: 'staff' },
    ],
    outdir: 'dist/staff',
    bundle: true,
    format: 'esm',
    platform: 'browser',
    target: ['es2022', 'chrome123', 'firefox120', 'safari17.5'],
    minify: true,
    legalComments: 'none',
  }
}
