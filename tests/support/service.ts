import type { FastifyInstance } from 'fastify'
import { type AppOptions, buildApp } from '../../server/app.ts'
import bentcreek from '../../server/demo/bentcreek.json' with { type: 'json' }
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { fixedRanges } from '../../server/store/ranges.ts'
import { checkedReplies } from './checked-replies.ts'

/**
 * The service with both demo shops, never listening; every reply is held to the OpenAPI document.
 *
 * @param options - What differs from a service without a store, quotas and log
 */
export async function demoService(options: Partial<AppOptions> = {}): Promise<FastifyInstance> {
  return checkedReplies(await buildApp({ ranges: fixedRanges({ kingcup, bentcreek }), ...options }))
}
