import type { FastifyInstance, FastifyReply } from 'fastify'
import manifest from '../../package.json' with { type: 'json' }
import { widgetBuild } from '../../widget/build.ts'
import { INTEGRITY_FILE, integrityOf } from '../../widget/integrity.ts'
import { sendProblem } from '../plugins/problems.ts'
import { builtFiles, sendFile } from './built-files.ts'

/** Release of the widget that this service serves. */
const RELEASE = manifest.version
/** Its first number: an address that goes on to the newest release which breaks nothing. */
const MAJOR = RELEASE.split('.', 1)[0] ?? '0'
/** The address that a page should load. */
export const WIDGET_PATH = `/w/${MAJOR}/tallywatt.js`

const FOREVER = 'public, max-age=31536000, immutable'
const SHORTLY = 'public, max-age=300'

/** Modules whose name changes with their content. */
const NAMED_BY_CONTENT = /-[A-Z0-9]{8}\.js$/

/**
 * Serves the widget at /w/{release}/, to pages of any origin: whole releases may be kept for ever, the entry of the
 * major number for five minutes. The list of hashes stands beside them.
 *
 * @param app - The service
 */
export function registerWidgetFiles(app: FastifyInstance): void {
  const files = builtFiles('../widget/', widgetBuild)
  app.get<{ Params: { release: string; file: string } }>(
    '/w/:release/:file',
    { config: { unlimited: true } },
    async (request, reply) => {
      const { release, file: name } = request.params
      if (release !== RELEASE && release !== MAJOR) return sendProblem(reply, 'not-found')
      const all = await files()
      if (name === INTEGRITY_FILE) {
        const bytes = new Map([...all].map(([one, { bytes }]) => [one, bytes]))
        return forEveryPage(reply).header('cache-control', SHORTLY).send(integrityOf(RELEASE, bytes))
      }
      const file = all.get(name)
      if (file === undefined) return sendProblem(reply, 'not-found')
      const keep = release === RELEASE || NAMED_BY_CONTENT.test(name) ? FOREVER : SHORTLY
      return sendFile(request, forEveryPage(reply), { file, keep })
    },
  )
}

function forEveryPage(reply: FastifyReply): FastifyReply {
  return reply.headers({
    'access-control-allow-origin': '*',
    'cross-origin-resource-policy': 'cross-origin',
  })
}
