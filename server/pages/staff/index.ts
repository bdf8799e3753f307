import type { FastifyInstance } from 'fastify'
import { asPage } from '../../plugins/headers.ts'
import { builtFiles, sendFile } from '../built-files.ts'
import { staffPage } from './page.ts'
import { staffBuild } from './staff-build.ts'

/** Script, style and calls of this service alone; nothing inline. */
const POLICY = "script-src 'self'; style-src 'self'; connect-src 'self'"

/**
 * Adds the page for a shop's staff at /staff. It is the same for everybody: what it shows, its script fetches with
 * the key that somebody has typed.
 *
 * @param app - The service
 */
export function registerStaff(app: FastifyInstance): void {
  app.get('/staff', (_request, reply) =>
    asPage(reply, POLICY).header('cache-control', 'no-store').send(staffPage()),
  )
  const files = builtFiles('../staff/', staffBuild)
  for (const name of ['staff.js', 'staff.css']) {
    app.get(`/staff/${name}`, async (request, reply) => {
      const file = (await files()).get(name)
      return file === undefined ? reply.callNotFound() : sendFile(request, reply, { file, keep: 'no-cache' })
    })
  }
}
