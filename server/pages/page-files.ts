import type { BuildOptions } from 'esbuild'
import type { FastifyInstance } from 'fastify'
import { sendProblem } from '../plugins/problems.ts'
import { builtFiles, sendFile } from './built-files.ts'

/**
 * How the styles and scripts of the demo pages are made.
 *
 * @param root - The project's folder
 * @returns Options of esbuild
 */
export function pageFilesBuild(root: string): BuildOptions {
  return {
    absWorkingDir: root,
    entryPoints: {
      home: 'server/pages/home.css',
      kingcup: 'server/pages/shop/kingcup.css',
      bentcreek: 'server/pages/shop/bentcreek.css',
      shop: 'server/pages/shop/client/shop.ts',
      playground: 'server/pages/playground/client.ts',
      mark: 'server/pages/mark.svg',
    },
    outdir: 'dist/server/pages',
    loader: { '.svg': 'copy' },
    bundle: true,
    minify: true,
    format: 'esm',
    target: ['es2022', 'chrome123', 'firefox120', 'safari17.5'],
  }
}

/**
 * Serves the styles and scripts of the demo pages at /pages/.
 *
 * @param app - The service
 */
export function registerPageFiles(app: FastifyInstance): void {
  const files = builtFiles('./pages/', pageFilesBuild)
  app.get<{ Params: { file: string } }>('/pages/:file', async (request, reply) => {
    const file = (await files()).get(request.params.file)
    if (file === undefined) return sendProblem(reply, 'not-found')
    return sendFile(request, reply, { file, keep: 'no-cache' })
  })
}
