import Fastify, { type FastifyInstance, type FastifyServerOptions, LogController } from 'fastify'
import { type DemandRecorder, demandRecorder } from './demand/recorder.ts'
import { registerDocs } from './pages/docs/index.ts'
import { registerHome } from './pages/home.ts'
import { registerPageFiles } from './pages/page-files.ts'
import { registerPlayground } from './pages/playground/index.ts'
import { registerShopPages } from './pages/shop/index.ts'
import { registerStaff } from './pages/staff/index.ts'
import { registerStrict } from './pages/strict/index.ts'
import { registerWidgetFiles } from './pages/widget-files.ts'
import { registerCors } from './plugins/cors.ts'
import { type Draining, registerDraining } from './plugins/draining.ts'
import { loadGauges, storeGauges } from './plugins/gauges.ts'
import { registerHeaders } from './plugins/headers.ts'
import { registerInFlight } from './plugins/in-flight.ts'
import { registerJsonBody } from './plugins/json-body.ts'
import { registerKeys } from './plugins/keys.ts'
import {
  registerHandlerTimeout,
  registerHostCheck,
  registerUnlimitedPaths,
  serverLimits,
} from './plugins/limits.ts'
import { malformedHandler } from './plugins/malformed.ts'
import { registerMetrics } from './plugins/metrics.ts'
import { answerFrameworkError, registerProblems } from './plugins/problems.ts'
import { registerRateLimits } from './plugins/rate-limits.ts'
import { requestIds } from './plugins/request-id.ts'
import { registerRequestLog, sharedLogger } from './plugins/request-log.ts'
import { loadShedding } from './plugins/shedding.ts'
import { registerSlowBodies } from './plugins/slow-bodies.ts'
import { lazyValidators } from './plugins/validators.ts'
import { registerCartCheck } from './routes/cart-check.ts'
import { registerCoverage } from './routes/coverage.ts'
import { registerDemand } from './routes/demand.ts'
import { registerOpenApi } from './routes/openapi.ts'
import { registerRange } from './routes/range.ts'
import type { RangeServices } from './routes/range-writing.ts'
import { registerReadiness } from './routes/readiness.ts'
import { registerReading } from './routes/reading.ts'
import { registerRuntime } from './routes/runtime.ts'
import { registerSizing } from './routes/sizing.ts'
import { registerVersions } from './routes/versions.ts'
import { DEFAULT_SETTINGS, type Settings } from './settings.ts'
import type { Ranges } from './store/ranges.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Sends callers elsewhere before the service is closed. */
    draining: Draining
  }
}

/** What a service is built from. */
export interface AppOptions {
  readonly ranges: Ranges
  /** The store behind the ranges and its memory; without it, keys and the range's own addresses are missing. */
  readonly services?: RangeServices
  readonly logger?: FastifyServerOptions['logger']
  /** What differs from {@link DEFAULT_SETTINGS}. */
  readonly settings?: Partial<Settings>
}

/**
 * Builds the service; it does not listen.
 *
 * @param options - Where its ranges come from, how it logs and how it guards itself
 * @returns The service, ready to inject requests into or to listen
 */
export async function buildApp({
  ranges,
  services,
  logger = false,
  settings: changes = {},
}: AppOptions): Promise<FastifyInstance> {
  const settings = { ...DEFAULT_SETTINGS, ...changes }
  const nextId = requestIds()
  const shedding = loadShedding({ settings, ranges, nextId })
  const { serverFactory } = shedding
  const validators = lazyValidators()
  const app = Fastify({
    ...serverLimits(settings),
    ...(serverFactory && { serverFactory }),
    logger,
    childLoggerFactory: sharedLogger,
    genReqId: nextId,
    trustProxy: settings.trustedProxies.length > 0 ? [...settings.trustedProxies] : false,
    // Requests under way on kept connections are answered while the service closes.
    return503OnClosing: false,
    clientErrorHandler: malformedHandler(() => nextId({ headers: {} }), settings.publicUrl),
    frameworkErrors: answerFrameworkError,
    schemaController: validators.schemaController,
    logController: new LogController({ disableRequestLogging: true }),
  })
  validators.register(app)
  const inFlight = registerInFlight(app)
  registerHeaders(app, settings.publicUrl)
  registerProblems(app, settings.publicUrl)
  registerRequestLog(app)
  // Before all that may refuse: a page must be able to read why, and when to come back.
  await registerCors(app, ranges)
  app.decorate('draining', registerDraining(app))
  shedding.register(app)
  registerSlowBodies(app, inFlight, settings)
  registerHandlerTimeout(app, settings)
  registerUnlimitedPaths(app)
  registerHostCheck(app)
  registerJsonBody(app)
  if (services === undefined) app.decorateRequest('secretKey', undefined)
  else registerKeys(app, services.live)
  registerRateLimits(app, ranges, settings)
  registerMetrics(app, {
    password: settings.metricsPassword,
    gauges: [
      ...loadGauges(inFlight, shedding),
      ...(services === undefined ? [] : storeGauges(services.live)),
    ],
  })
  const recorder = services && recorderOf(app, services)
  if (services !== undefined && recorder !== undefined) {
    registerReadiness(app, services.live)
    registerVersions(app, services)
    await registerRange(app, services)
    await registerCoverage(app, services.live)
    registerDemand(app, { ...services, recorder })
    registerStaff(app)
  }
  registerReading(app, ranges)
  registerSizing(app, ranges, recorder)
  registerCartCheck(app, ranges)
  registerRuntime(app, ranges)
  registerOpenApi(app)
  registerDocs(app)
  registerHome(app, ranges)
  registerShopPages(app, ranges)
  registerPlayground(app, ranges)
  registerStrict(app, ranges)
  registerPageFiles(app)
  registerWidgetFiles(app)
  return app
}

/** Counts what is asked for as long as the service runs, and writes the last of it when no request is left. */
function recorderOf(app: FastifyInstance, { store }: RangeServices): DemandRecorder {
  const recorder = demandRecorder({ store, log: (level, message) => app.log[level](message) })
  app.addHook('onClose', () => recorder.close())
  return recorder
}
