import { rmSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('..', import.meta.url))

rmSync(`${root}dist`, { recursive: true, force: true })
await build({
  absWorkingDir: root,
  entryPoints: { 'server/main': 'server/main.ts', 'server/cli': 'server/cli/main.ts' },
  outdir: 'dist',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20.19',
  packages: 'external',
  sourcemap: true,
})
