import { rmSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { clientBuild } from '../shared/client/build.ts'
import { widgetBuild } from '../widget/build.ts'
import { docsScriptBuild } from './pages/docs/script.ts'
import { pageFilesBuild } from './pages/page-files.ts'
import { staffBuild } from './pages/staff/staff-build.ts'

const root = fileURLToPath(new URL('..', import.meta.url))

rmSync(`${root}dist`, { recursive: true, force: true })
await build({
  absWorkingDir: root,
  entryPoints: {
    'server/main': 'server/main.ts',
    'server/cli': 'server/cli/main.ts',
    'server/range-worker': 'server/range-files/range-worker.ts',
  },
  outdir: 'dist',
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20.19',
  packages: 'external',
  sourcemap: true,
})
await build(clientBuild(root))
await build(docsScriptBuild(root))
await build(pageFilesBuild(root))
await build(widgetBuild(root))
await build(staffBuild(root))
