import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { FastifyInstance, FastifyReply, FastifyServerOptions } from 'fastify'
import type { Settings } from '../settings.ts'
import type { Ranges } from '../store/ranges.ts'
import { headersForOrigin } from './cors.ts'
import { securityHeaders } from './headers.ts'
import { UNLIMITED_PATHS } from './limits.ts'
import { PROBLEM_TYPE, problemOf, sendProblem } from './problems.ts'
import { turnWatch } from './turn-watch.ts'

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Answered however busy the service is and whatever the caller has used up: health and the like. */
    unlimited?: boolean
  }
}

type ServerFactory = NonNullable<FastifyServerOptions['serverFactory']>

/** A guard against more requests than can be answered. */
export interface Shedding {
  /** Makes the server behind the guard; undefined where nobody is ever turned away for the processor. */
  readonly serverFactory: ServerFactory | undefined
  /** Adds what looks at a request only once its body is there, and tells the log. */
  register(app: FastifyInstance): void
  /** Requests turned away since the start. */
  count(): number
}

/** What {@link loadShedding} works with. */
export interface SheddingOptions {
  readonly settings: Settings
  readonly ranges: Ranges
  /** Makes the id of a request. */
  readonly nextId: (request: IncomingMessage) => string
}

/** How often the log tells of requests turned away: a line for each would cost as much as turning it away. [ms] */
const TOLD_EVERY_MS = 1000

/**
 * Turns requests away before the process drowns. Two signs: requests have waited too long for the processor in
 * this turn of the event loop and in the one before (a single long turn, such as a large import, is no
 * overload), or too many are being worked on. Those whose body is still to come are not being worked on: slow
 * senders must not shut others out.
 *
 * The first sign is looked at before the framework sees the request: what turning away costs is lost to those who
 * are answered.
 *
 * @param options - The bounds, and what a refusal says
 * @returns The guard
 */
export function loadShedding(options: SheddingOptions): Shedding {
  const { settings } = options
  const turns = turnWatch(settings.shedAfterMs)
  let working = 0
  let shed = 0
  let told = 0
  let isTelling = false
  let isDraining = (): boolean => false
  let tell = (_count: number): void => {}

  function note(): void {
    shed += 1
    if (isTelling) return
    isTelling = true
    setTimeout(() => {
      isTelling = false
      tell(shed - told)
      told = shed
    }, TOLD_EVERY_MS).unref()
  }

  function turnAway(request: IncomingMessage, response: ServerResponse): boolean {
    if (!turns.isLate() || isExempt(request)) return false
    note()
    if (isDraining()) response.setHeader('connection', 'close')
    sendRaw(request, response, options)
    return true
  }

  const serverFactory: ServerFactory = (handler, { http, keepAliveTimeout = 0, requestTimeout = 0 }) => {
    const server: Server = createServer(http ?? {}, (request, response) => {
      if (!turnAway(request, response)) handler(request, response)
    })
    return Object.assign(server, { keepAliveTimeout, requestTimeout })
  }

  return {
    serverFactory: settings.shedAfterMs === Number.POSITIVE_INFINITY ? undefined : serverFactory,
    register(app) {
      isDraining = app.draining.isOn
      tell = (count) => app.log.warn({ event: 'overloaded', count }, 'turned away')
      app.addHook('preHandler', (request, reply, done) => {
        if (working >= settings.maxInFlight && request.routeOptions.config.unlimited !== true) {
          note()
          return sendAway(reply)
        }
        working += 1
        reply.raw.once('close', () => {
          working -= 1
        })
        done()
      })
    },
    count: () => shed,
  }
}

/** Health and metrics; and preflights, which cost less than the retry of one that a browser takes for a refusal. */
function isExempt({ method, url = '' }: IncomingMessage): boolean {
  return method === 'OPTIONS' || UNLIMITED_PATHS.has(url.split('?', 1)[0] ?? '')
}

function sendAway(reply: FastifyReply): void {
  sendProblem(reply.header('retry-after', retryAfter()), 'overloaded')
}

function sendRaw(request: IncomingMessage, response: ServerResponse, options: SheddingOptions): void {
  const { settings, ranges, nextId } = options
  const id = nextId(request)
  const { origin } = request.headers
  const body = JSON.stringify(problemOf({ code: 'overloaded', id, publicUrl: settings.publicUrl }))
  response.writeHead(503, {
    ...securityHeaders(settings.publicUrl),
    ...(origin === undefined ? {} : headersForOrigin(ranges, origin, request.url ?? '')),
    vary: 'Origin',
    'x-request-id': id,
    'retry-after': retryAfter(),
    'cache-control': 'no-store',
    'content-type': PROBLEM_TYPE,
    'content-length': Buffer.byteLength(body),
  })
  response.end(body)
}

/** Spread, so that those who were turned away together don't come back together. [s] */
function retryAfter(): string {
  return String(1 + Math.floor(Math.random() * 3))
}
