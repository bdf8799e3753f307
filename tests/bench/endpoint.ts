import { type ChildProcess, fork } from 'node:child_process'
import { join } from 'node:path'
import autocannon from 'autocannon'
import { Agent, request } from 'undici'
import { BENCH_BODIES, type BenchBody } from './bodies.ts'
import { buildAsReleased, quantile } from './release.ts'
import { steadily } from './steadily.ts'

const ROUNDS = 3
const SECONDS = 4
const CONNECTIONS = 32
/** Callers of a busy day, who ask for half of what the service can answer. */
const BUSY_CONNECTIONS = 64

interface Measured {
  readonly perSecond: number
  readonly p99: number
}

/** Prints the endpoint's requests a second as a ratio of a bare route's, rounds taken in turns. */
export async function benchEndpoint(): Promise<void> {
  const folder = await buildAsReleased('endpoint', { server: './endpoint-server.ts' })
  for (const name of Object.keys(BENCH_BODIES) as readonly BenchBody[])
    await benchBody(join(folder, 'server.js'), name)
}

async function benchBody(server: string, name: BenchBody): Promise<void> {
  const bare = await start(server, 'bare', name)
  const real = await start(server, 'service', name)
  const rounds: { readonly ratio: number; readonly own: number; readonly line: string }[] = []
  for (let round = 0; round < ROUNDS; round += 1) {
    const base = await load(bare.url, name)
    const own = await load(real.url, name)
    const ratio = own.perSecond / base.perSecond
    const line =
      `bare ${base.perSecond.toFixed(0)}/s p99 ${base.p99} ms, service ${own.perSecond.toFixed(0)}/s ` +
      `p99 ${own.p99} ms`
    rounds.push({ ratio, own: own.perSecond, line })
  }
  rounds.sort((a, b) => a.ratio - b.ratio)
  const median = rounds[Math.floor(ROUNDS / 2)]
  console.log(`sizing endpoint, ${name.padEnd(8)} median ratio ${median?.ratio.toFixed(2)} (${median?.line})`)
  const capacity = quantile(
    rounds.map(({ own }) => own),
    0.5,
  )
  const took = await busyDay(real.url, name, capacity / 2)
  console.log(
    `  ${BUSY_CONNECTIONS} connections, ${(capacity / 2).toFixed(0)}/s, half of what it can: p50 ${quantile(took, 0.5).toFixed(1)} ms, p99 ${quantile(took, 0.99).toFixed(1)} ms [10]`,
  )
  bare.child.kill()
  real.child.kill()
}

/** Milliseconds that each answer takes when the service is asked steadily. */
async function busyDay(url: string, name: BenchBody, perSecond: number): Promise<readonly number[]> {
  const agent = new Agent({ connections: BUSY_CONNECTIONS })
  const body = JSON.stringify(BENCH_BODIES[name])
  const ask = async () => {
    const start = performance.now()
    const reply = await request(`${url}/v1/shops/kingcup/sizing`, {
      dispatcher: agent,
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body,
    })
    await reply.body.dump()
    if (reply.statusCode !== 200) throw new Error(`a sizing was answered with ${reply.statusCode}`)
    return performance.now() - start
  }
  await steadily(ask, perSecond, SECONDS)
  const took = await steadily(ask, perSecond, SECONDS)
  await agent.close()
  return took
}

function start(
  server: string,
  mode: 'bare' | 'service',
  name: BenchBody,
): Promise<{ url: string; child: ChildProcess }> {
  const child = fork(server, [mode, name], { execArgv: [] })
  return new Promise((resolve, reject) => {
    child.once('message', (url) => resolve({ url: String(url), child }))
    child.once('exit', (code) => reject(new Error(`the ${mode} server ended with ${code}`)))
  })
}

async function load(url: string, name: BenchBody): Promise<Measured> {
  const options = {
    url: `${url}/v1/shops/kingcup/sizing`,
    method: 'POST' as const,
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(BENCH_BODIES[name]),
    connections: CONNECTIONS,
  }
  await autocannon({ ...options, duration: 2 })
  const result = await autocannon({ ...options, duration: SECONDS })
  const failed = result.non2xx + result.errors
  if (failed > 0) throw new Error(`${failed} requests to ${url} were not answered with 200`)
  return { perSecond: result.requests.average, p99: result.latency.p99 }
}
