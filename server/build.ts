import { rmSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { clientBuild } from '../shared/client/build.ts'
import { widgetBuild } from '../widget/build.ts'
import { serverBuild } from './bundle.ts'
import { docsScriptBuild } from './pages/docs/script.ts'
import { pageFilesBuild } from './pages/page-files.ts'
import { staffBuild } from './pages/staff/staff-build.ts'

const root = fileURLToPath(new URL('..', import.meta.url))

rmSync(`${root}dist`, { recursive: true, force: true })
await build({
  ...serverBuild(
    {
      main: `${root}server/main.ts`,
      cli: `${root}server/cli/main.ts`,
      'range-worker': `${root}server/range-files/range-worker.ts`,
      'sqlite-thread': `${root}server/store/sqlite-thread.ts`,
    },
    `${root}dist/server`,
  ),
  sourcemap: true,
})
await build(clientBuild(root))
await build(docsScriptBuild(root))
await build(pageFilesBuild(root))
await build(widgetBuild(root))
await build(staffBuild(root))
