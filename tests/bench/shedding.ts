import { type ChildProcess, fork } from 'node:child_process'
import { join } from 'node:path'
import autocannon from 'autocannon'
import { Agent, request } from 'undici'
import { readConfig } from '../../server/config.ts'
import { buildAsReleased, quantile } from './release.ts'
import { steadily } from './steadily.ts'

const ROUNDS = 2
const SECONDS = 4

/**
 * Prints what is left of the answers a second, and how long they take, when more is asked than the processor can
 * answer: three times as much, by callers at a steady rate, and as much as 200 callers can ask who never wait. With load
 * shedding as released, and without. The bars: 0.90 of capacity at three times of it, served within 250 ms at p99, and
 * nobody turned away one second after it is over.
 */
export async function benchShedding(): Promise<void> {
  const folder = await buildAsReleased('shedding', { server: './shedding-server.ts' })
  const released = readConfig({})
  if (!released.ok) throw new Error('the defaults are faulty')
  for (const shedAfterMs of [released.config.settings.shedAfterMs, 1e9]) {
    const child = fork(join(folder, 'server.js'), [String(shedAfterMs)], { execArgv: [] })
    const url = await new Promise<string>((resolve) => child.once('message', (text) => resolve(String(text))))
    const load = (connections: number, overallRate?: number) =>
      flood({ url, child }, connections, overallRate)
    await load(8)
    const rounds: { readonly ratio: number; readonly line: string }[] = []
    for (let round = 0; round < ROUNDS; round += 1) {
      const usual = await load(8)
      const capacity = goodOf(usual)
      for (const [what, flooded] of [
        ['three times capacity', await load(200, Math.round(3 * capacity))],
        ['200 restless callers', await load(200)],
      ] as const) {
        const refusedAfter = await refusedOnceOver(url)
        const ratio = flooded.perCpuS / usual.perCpuS
        const line =
          `by the clock ${(goodOf(flooded) / capacity).toFixed(2)}, capacity ${capacity.toFixed(0)}/s: ` +
          `${goodOf(flooded).toFixed(0)}/s answered, ` +
          `${(flooded.turnedAway / SECONDS).toFixed(0)}/s turned away, p99 of those answered ` +
          `${quantile(flooded.servedMs, 0.99).toFixed(0)} ms, ` +
          `turned away a second later ${refusedAfter} of 20`
        rounds.push({ ratio, line: `${what} ${ratio.toFixed(2)} (${line})` })
      }
    }
    rounds.sort((a, b) => a.ratio - b.ratio)
    console.log(
      `shedding after ${shedAfterMs} ms, answers a second of the server's processor, ratio to capacity:`,
    )
    for (const { line } of rounds) console.log(`  ${line}`)
    child.kill()
  }
}

interface Server {
  readonly url: string
  readonly child: ChildProcess
}

interface Flood {
  readonly answered: number
  readonly turnedAway: number
  /** How long each answer took that was none of being turned away. [ms] */
  readonly servedMs: readonly number[]
  /** Answers for each second of the server's own processor time, which other work on the machine leaves alone. */
  readonly perCpuS: number
}

async function flood({ url, child }: Server, connections: number, rate?: number): Promise<Flood> {
  const before = await cpuOf(child)
  const seen = await (rate === undefined
    ? askRestlessly(url, connections)
    : askSteadily(url, connections, rate))
  return { ...seen, perCpuS: (1e6 * seen.answered) / ((await cpuOf(child)) - before) }
}

function cpuOf(child: ChildProcess): Promise<number> {
  return new Promise((resolve) => {
    child.once('message', (microseconds) => resolve(Number(microseconds)))
    child.send('cpu')
  })
}

async function askRestlessly(url: string, connections: number): Promise<Omit<Flood, 'perCpuS'>> {
  const servedMs: number[] = []
  const options = { url: `${url}/busy`, connections, duration: SECONDS }
  const result = await new Promise<autocannon.Result>((resolve, reject) => {
    const running = autocannon(options, (error, ended) => (error ? reject(error) : resolve(ended)))
    running.on('response', (_client, status, _bytes, tookMs) => {
      if (status === 200) servedMs.push(tookMs)
    })
  })
  return { answered: result['2xx'], turnedAway: result.non2xx, servedMs }
}

/**
 * Asks at a steady rate, whatever comes back, over connections that are open already, as a proxy in front keeps them:
 * libuv accepts one new connection a turn of the event loop, so that new ones wait long where turns are.
 */
async function askSteadily(url: string, connections: number, rate: number): Promise<Omit<Flood, 'perCpuS'>> {
  const agent = new Agent({ connections })
  const servedMs: number[] = []
  let turnedAway = 0
  const askOne = async () => {
    const start = performance.now()
    const { statusCode, body } = await request(`${url}/busy`, { dispatcher: agent })
    await body.dump()
    if (statusCode === 200) servedMs.push(performance.now() - start)
    else turnedAway += 1
  }
  await Promise.all(
    Array.from({ length: connections }, async () => {
      const { body } = await request(`${url}/healthz`, { dispatcher: agent })
      await body.dump()
    }),
  )
  await steadily(askOne, rate, SECONDS)
  await agent.close()
  return { answered: servedMs.length, turnedAway, servedMs }
}

function goodOf({ answered }: Flood): number {
  return answered / SECONDS
}

/** How many of 20 calls, a second after the flood, are turned away. */
async function refusedOnceOver(url: string): Promise<number> {
  await new Promise((resolve) => setTimeout(resolve, 1000))
  let refused = 0
  for (let call = 0; call < 20; call += 1) {
    const { statusCode, body } = await request(`${url}/busy`)
    await body.dump()
    if (statusCode !== 200) refused += 1
  }
  return refused
}
