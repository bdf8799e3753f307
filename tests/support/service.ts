import type { FastifyInstance } from 'fastify'
import { buildApp } from '../../server/app.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'

/** The service with both demo shops, never listening. */
export async function demoService(): Promise<FastifyInstance> {
  return buildApp({ ranges: fixedRanges({ kingcup, bentcreek }) })
}
