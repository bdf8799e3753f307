import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'
import { VARIANTS, type VariantName } from './guards-variants.ts'

const ROUNDS = 5
const SECONDS = 2
const CONNECTIONS = 32

interface Server {
  readonly url: string
  readonly child: ChildProcess
}

/**
 * Prints what each guard costs a call that does almost nothing else: processor time of the server a call, which
 * other work on the machine leaves nearly alone. Rounds are taken in turns.
 */
export async function benchGuards(): Promise<void> {
  const servers = new Map<VariantName, Server>()
  for (const name of Object.keys(VARIANTS) as VariantName[]) servers.set(name, await start(name))
  const costs = new Map<VariantName, number[]>([...servers.keys()].map((name) => [name, []]))
  for (let round = 0; round <= ROUNDS; round += 1) {
    for (const [name, server] of servers) {
      const cost = await costOf(server)
      if (round > 0) costs.get(name)?.push(cost)
    }
  }
  const plain = median(costs.get('plain') ?? [])
  for (const [name, own] of costs) {
    const cost = median(own)
    const more = (cost - plain).toFixed(1).padStart(5)
    console.log(
      `guards, ${name.padEnd(8)} ${cost.toFixed(1)} µs of processor a call, ${more} more than plain`,
    )
  }
  for (const { child } of servers.values()) child.kill()
}

async function costOf({ url, child }: Server): Promise<number> {
  const before = await cpuOf(child)
  const result = await autocannon({
    url: `${url}/v1/shops/nobody/setup`,
    connections: CONNECTIONS,
    duration: SECONDS,
  })
  return ((await cpuOf(child)) - before) / result.requests.total
}

function cpuOf(child: ChildProcess): Promise<number> {
  return new Promise((resolve) => {
    child.once('message', (microseconds) => resolve(Number(microseconds)))
    child.send('cpu')
  })
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN
}

function start(name: VariantName): Promise<Server> {
  const child = fork(fileURLToPath(new URL('./guards-server.ts', import.meta.url)), [name], {
    execArgv: ['--import', 'tsx'],
  })
  return new Promise((resolve, reject) => {
    child.once('message', (url) => resolve({ url: String(url), child }))
    child.once('exit', (code) => reject(new Error(`the ${name} server ended with ${code}`)))
  })
}
