import cors from '@fastify/cors'
import Fastify, { type FastifyInstance, type FastifyServerOptions, LogController } from 'fastify'
import { registerHome } from './pages/home.ts'
import { registerKeys } from './plugins/keys.ts'
import { registerProblems } from './plugins/problems.ts'
import { registerOpenApi } from './routes/openapi.ts'
import { registerRange } from './routes/range.ts'
import type { RangeServices } from './routes/range-writing.ts'
import { registerReadiness } from './routes/readiness.ts'
import { registerReading } from './routes/reading.ts'
import { registerRuntime } from './routes/runtime.ts'
import { registerSizing } from './routes/sizing.ts'
import { registerVersions } from './routes/versions.ts'
import type { Ranges } from './store/ranges.ts'

/** What a service is built from. */
export interface AppOptions {
  readonly ranges: Ranges
  /** The store behind the ranges and its memory; without it, keys and the range's own addresses are missing. */
  readonly services?: RangeServices
  readonly logger?: FastifyServerOptions['logger']
}

/** Largest body of a request. [bytes] */
const BODY_LIMIT_BYTES = 32 * 1024

/**
 * Builds the service; it does not listen.
 *
 * @param options - Where its ranges come from and how it logs
 * @returns The service, ready to inject requests into or to listen
 */
export async function buildApp({ ranges, services, logger = false }: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({
    logger,
    bodyLimit: BODY_LIMIT_BYTES,
    requestTimeout: 5000,
    http: { headersTimeout: 3000, requestTimeout: 5000, connectionsCheckingInterval: 500 },
    ajv: { customOptions: { coerceTypes: false, removeAdditional: false, allErrors: false } },
    logController: new LogController({ disableRequestLogging: true }),
  })
  app.removeContentTypeParser('text/plain')
  registerProblems(app)
  await app.register(cors, {
    delegator: (request, callback) => callback(null, { origin: allowedOrigins(ranges, request.url ?? '') }),
  })
  app.addHook('onResponse', async (request, reply) => {
    request.log.info(
      {
        method: request.method,
        route: request.routeOptions.url,
        status: reply.statusCode,
        milliseconds: reply.elapsedTime,
      },
      'answered',
    )
  })
  if (services !== undefined) {
    registerKeys(app, services.live)
    registerReadiness(app, services.live)
    registerVersions(app, services)
    await registerRange(app, services)
  }
  registerReading(app, ranges)
  registerSizing(app, ranges)
  registerRuntime(app, ranges)
  registerOpenApi(app)
  registerHome(app, ranges)
  return app
}

/** Origins whose pages may read an answer: the shop's own; none where the path names no shop. */
function allowedOrigins(ranges: Ranges, url: string): string[] {
  const shopId = /^\/v1\/shops\/([^/?]+)/.exec(url)?.[1]
  const range = shopId === undefined ? undefined : ranges.current(decodeURIComponent(shopId))
  return [...(range?.document.shop.allowedOrigins ?? [])]
}
