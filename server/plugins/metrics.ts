import { createHash, timingSafeEqual } from 'node:crypto'
import { monitorEventLoopDelay } from 'node:perf_hooks'
import type { FastifyInstance, FastifyRequest } from 'fastify'
import { operations } from '../../shared/contract/operations.ts'
import { routeOf } from './contract.ts'
import { DURATION_BOUNDS_S, type Histogram, histogram } from './histogram.ts'
import { sendProblem } from './problems.ts'

/** One figure that is read when the metrics are. */
export interface Gauge {
  readonly name: string
  readonly help: string
  readonly type: 'gauge' | 'counter'
  read(): number
}

/** What {@link registerMetrics} needs. */
export interface MetricsOptions {
  readonly password: string | undefined
  readonly gauges: readonly Gauge[]
}

/** One series of durations. */
interface Series {
  readonly labels: string
  readonly durations: Histogram
}

/** How often a route has answered so. */
interface Outcomes {
  readonly route: string
  readonly outcome: string
  count: number
}

/** Methods that get a label of their own; callers may send any word. */
const KNOWN_METHODS = new Set(['GET', 'HEAD', 'POST', 'PUT', 'OPTIONS', 'DELETE', 'PATCH'])
const METRICS_TYPE = 'text/plain; version=0.0.4; charset=utf-8'

/**
 * Counts and times requests by route, and adds GET /metrics in the Prometheus text format, with the names of the
 * OpenTelemetry semantic conventions. Routes are labelled by their templates, so callers can't make series.
 *
 * @param app - The service
 * @param options - Who may read them, and what else there is to read
 */
export function registerMetrics(app: FastifyInstance, { password, gauges }: MetricsOptions): void {
  const series = new Map<string, Series>()
  const outcomes = new Map<string, Outcomes>()
  const loopDelay = monitorEventLoopDelay({ resolution: 20 })
  loopDelay.enable()
  app.addHook('onClose', async () => loopDelay.disable())

  app.addHook('onResponse', (request, reply, done) => {
    const { url: route = '' } = request.routeOptions
    const { statusCode } = reply
    // Labels are written once a series: with every request they would cost more than the counting.
    const method = KNOWN_METHODS.has(request.method) ? request.method : '_OTHER'
    const key = `${statusCode} ${method} ${route}`
    let counted = series.get(key)
    if (counted === undefined) {
      counted = { labels: labelsOf(method, route, statusCode), durations: histogram() }
      series.set(key, counted)
    }
    counted.durations.observe(reply.elapsedTime / 1000)
    done()
  })

  app.addHook('preSerialization', (request, _reply, payload, done) => {
    const outcome = (payload as { readonly outcome?: unknown } | null)?.outcome
    if (typeof outcome === 'string') {
      const { url: route = '' } = request.routeOptions
      const key = `${outcome} ${route}`
      const counted = outcomes.get(key)
      if (counted === undefined) outcomes.set(key, { route, outcome, count: 1 })
      else counted.count += 1
    }
    done(null, payload)
  })

  app.route({
    ...routeOf(operations.readMetrics),
    handler: (request, reply) => {
      if (!mayRead(request, password)) return sendProblem(reply, 'not-found')
      const figures = [...gauges, ...processGauges(loopDelay)]
      return reply
        .header('cache-control', 'no-store')
        .type(METRICS_TYPE)
        .send(
          [...figures.map(gaugeText), durationsText(series.values()), outcomesText(outcomes.values())].join(
            '',
          ),
        )
    },
  })
}

function labelsOf(method: string, route: string, status: number): string {
  return `http_request_method="${method}",http_route="${route}",http_response_status_code="${status}"`
}

/** With a password set, by HTTP Basic; without one, from the same machine and past no proxy. */
function mayRead(request: FastifyRequest, password: string | undefined): boolean {
  const { headers, socket } = request.raw
  if (password !== undefined) {
    const [scheme, credentials = ''] = (headers.authorization ?? '').split(' ')
    const given = Buffer.from(credentials, 'base64').toString('utf8').split(':').slice(1).join(':')
    return /^basic$/i.test(scheme ?? '') && timingSafeEqual(digest(given), digest(password))
  }
  const cameByProxy = ['x-forwarded-for', 'forwarded', 'via'].some((name) => headers[name] !== undefined)
  return !cameByProxy && LOOPBACK.test(socket.remoteAddress ?? '')
}

const LOOPBACK = /^(127\.|::1$|::ffff:127\.)/

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest()
}

function processGauges(loopDelay: { percentile(percentile: number): number }): readonly Gauge[] {
  return [
    {
      name: 'nodejs_eventloop_delay_p99_seconds',
      help: 'Delay of the event loop that one in a hundred exceeds, since the start.',
      type: 'gauge',
      read: () => loopDelay.percentile(99) / 1e9,
    },
    {
      name: 'process_resident_memory_bytes',
      help: 'Memory of the process.',
      type: 'gauge',
      read: () => process.memoryUsage.rss(),
    },
    {
      name: 'process_uptime_seconds',
      help: 'Time since the start of the process.',
      type: 'gauge',
      read: () => process.uptime(),
    },
  ]
}

function gaugeText({ name, help, type, read }: Gauge): string {
  return `${head(name, help, type)}${name} ${read()}\n`
}

function durationsText(series: Iterable<Series>): string {
  const name = 'http_server_request_duration_seconds'
  const lines = [...series].flatMap(({ labels, durations }) => {
    const counts = durations.cumulative()
    const bounds = [...DURATION_BOUNDS_S, '+Inf']
    return [
      ...bounds.map((bound, index) => `${name}_bucket{${labels},le="${bound}"} ${counts[index]}`),
      `${name}_sum{${labels}} ${durations.sum()}`,
      `${name}_count{${labels}} ${counts.at(-1)}`,
    ].map((line) => `${line}\n`)
  })
  return head(name, 'Duration of requests.', 'histogram') + lines.join('')
}

function outcomesText(outcomes: Iterable<Outcomes>): string {
  const name = 'tallywatt_outcomes_total'
  const lines = [...outcomes].map(
    ({ route, outcome, count }) =>
      `${name}{http_route=${quoted(route)},outcome=${quoted(outcome)}} ${count}\n`,
  )
  return head(name, 'Answers by what they say.', 'counter') + lines.join('')
}

function head(name: string, help: string, type: string): string {
  return `# HELP ${name} ${help}\n# TYPE ${name} ${type}\n`
}

function quoted(text: string): string {
  return `"${text.replaceAll(/[\\"]/g, '\\$&').replaceAll('\n', '\\n')}"`
}
