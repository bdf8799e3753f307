import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'
import { sizingRequestExample } from '../../shared/examples/plans.ts'

const ROUNDS = 3
const SECONDS = 4
const CONNECTIONS = 32

interface Measured {
  readonly perSecond: number
  readonly p99: number
  readonly failed: number
}

/** Prints the endpoint's requests a second as a ratio of a bare route's, rounds taken in turns. */
export async function benchEndpoint(): Promise<void> {
  const bare = await start('bare')
  const real = await start('service')
  const ratios: number[] = []
  for (let round = 0; round < ROUNDS; round += 1) {
    const base = await load(bare.url)
    const own = await load(real.url)
    const ratio = own.perSecond / base.perSecond
    ratios.push(ratio)
    console.log(
      `sizing endpoint, round ${round + 1}: bare ${base.perSecond.toFixed(0)}/s p99 ${base.p99} ms, ` +
        `service ${own.perSecond.toFixed(0)}/s p99 ${own.p99} ms, ratio ${ratio.toFixed(2)}, failed ${own.failed}`,
    )
  }
  ratios.sort((a, b) => a - b)
  console.log(`sizing endpoint, median ratio to bare Fastify: ${ratios[Math.floor(ROUNDS / 2)]?.toFixed(2)}`)
  bare.child.kill()
  real.child.kill()
}

function start(mode: 'bare' | 'service'): Promise<{ url: string; child: ChildProcess }> {
  const child = fork(fileURLToPath(new URL('./endpoint-server.ts', import.meta.url)), [mode], {
    execArgv: ['--import', 'tsx'],
  })
  return new Promise((resolve, reject) => {
    child.once('message', (url) => resolve({ url: String(url), child }))
    child.once('exit', (code) => reject(new Error(`the ${mode} server ended with ${code}`)))
  })
}

async function load(url: string): Promise<Measured> {
  const options = {
    url: `${url}/v1/shops/kingcup/sizing`,
    method: 'POST' as const,
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(sizingRequestExample),
    connections: CONNECTIONS,
  }
  await autocannon({ ...options, duration: 2 })
  const result = await autocannon({ ...options, duration: SECONDS })
  return {
    perSecond: result.requests.average,
    p99: result.latency.p99,
    failed: result.non2xx + result.errors,
  }
}
