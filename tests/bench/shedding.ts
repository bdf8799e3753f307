import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import autocannon from 'autocannon'

const SECONDS = 5

/**
 * Prints what is left of the answers a second, and how long they take, when far more is asked than the processor can
 * answer: with load shedding as released, and without.
 */
export async function benchShedding(): Promise<void> {
  for (const shedAfterMs of [150, 1e9]) {
    const child = fork(
      fileURLToPath(new URL('./shedding-server.ts', import.meta.url)),
      [String(shedAfterMs)],
      {
        execArgv: ['--import', 'tsx'],
      },
    )
    const url = await new Promise<string>((resolve) => child.once('message', (text) => resolve(String(text))))
    const load = (connections: number) => autocannon({ url: `${url}/busy`, connections, duration: SECONDS })
    await load(8)
    const usual = await load(8)
    const flooded = await load(200)
    const good = ({ '2xx': answered }: autocannon.Result) => answered / SECONDS
    console.log(
      `shedding after ${shedAfterMs} ms: 8 clients ${good(usual).toFixed(0)}/s, 200 clients ` +
        `${good(flooded).toFixed(0)}/s answered (${(good(flooded) / good(usual)).toFixed(2)}), ` +
        `${(flooded.non2xx / SECONDS).toFixed(0)}/s turned away, slowest in a hundred ${flooded.latency.p99} ms, ` +
        `longest ${flooded.latency.max} ms, time-outs ${flooded.timeouts}`,
    )
    child.kill()
  }
}
