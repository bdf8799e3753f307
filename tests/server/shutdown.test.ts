import { connect } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { Agent, request } from 'undici'
import { describe, expect, it } from 'vitest'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { type OwnProcess, startProcess } from '../support/own-process.ts'

const CLIENTS = 32
const body = JSON.stringify(sizingRequestExample)
/** Processes start slowly where other tests run beside this one. [ms] */
const PATIENCE = { timeout: 120_000 }

interface Tally {
  answered: number
  readonly failed: string[]
}

/** Sends one call after the other over a kept connection to whichever service is said to be ready, until told. */
async function keepAsking(target: () => string, until: () => boolean, tally: Tally): Promise<void> {
  const agent = new Agent({ connections: 1, pipelining: 1 })
  while (!until()) {
    const url = target()
    try {
      const reply = await request(`${url}/v1/shops/kingcup/sizing`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body,
        dispatcher: agent,
      })
      await reply.body.dump()
      if (reply.statusCode === 200) tally.answered += 1
      else tally.failed.push(`${url}: ${reply.statusCode}`)
      await pause(5)
    } catch (error) {
      tally.failed.push(`${url}: ${String(error)}`)
    }
  }
  await agent.close()
}

/** Looks each 50 ms which of the services is ready, as a balancer does. */
function balancer(services: readonly OwnProcess[]) {
  let ready: readonly string[] = services.map(({ url }) => url)
  let turn = 0
  const timer = setInterval(async () => {
    const states = await Promise.all(
      services.map(async ({ url }) => {
        const status = await fetch(`${url}/readyz`).then(
          (reply) => reply.status,
          () => 0,
        )
        return { url, status }
      }),
    )
    ready = states.filter(({ status }) => status === 200).map(({ url }) => url)
  }, 50)
  return {
    target: () => {
      turn += 1
      return ready[turn % ready.length] ?? ''
    },
    stop: () => clearInterval(timer),
  }
}

describe('SIGTERM under 32 clients on kept connections, one instance of two', PATIENCE, () => {
  it('breaks off nothing, answers nothing with 5xx, and exits with 0 within 10 s', async () => {
    const services = [await startProcess({ DRAIN_SECONDS: '3' }), await startProcess()] as const
    const [going, staying] = services
    const balance = balancer(services)
    const tally: Tally = { answered: 0, failed: [] }
    let stop = false
    const clients = Array.from({ length: CLIENTS }, () => keepAsking(balance.target, () => stop, tally))
    await pause(800)
    const before = tally.answered
    const started = performance.now()
    going.child.kill('SIGTERM')
    const code = await going.exited
    const took = performance.now() - started
    await pause(300)
    stop = true
    await Promise.all(clients)
    balance.stop()
    staying.child.kill('SIGTERM')
    expect(await staying.exited).toBe(0)
    expect(tally.failed).toEqual([])
    expect(before).toBeGreaterThan(0)
    expect(tally.answered).toBeGreaterThan(before)
    expect(code).toBe(0)
    expect(took).toBeLessThan(10_000)
  })
})

describe('a service told to stop', PATIENCE, () => {
  it('says that it is not ready, goes on answering, and closes each connection with the reply', async () => {
    const { url, child, exited } = await startProcess({ DRAIN_SECONDS: '1.5' })
    expect((await fetch(`${url}/readyz`)).status).toBe(200)
    child.kill('SIGTERM')
    await pause(200)
    const ready = await fetch(`${url}/readyz`)
    expect([ready.status, (await ready.json()).code]).toEqual([503, 'not-ready'])
    expect(ready.headers.get('retry-after')).toMatch(/^\d+$/)
    const setup = await fetch(`${url}/v1/shops/kingcup/setup`)
    expect([setup.status, setup.headers.get('connection')]).toEqual([200, 'close'])
    expect((await fetch(`${url}/healthz`)).status, 'alive until the end').toBe(200)
    expect(await exited).toBe(0)
  })

  it('finishes a request whose body is still on its way', async () => {
    const { url, child, exited } = await startProcess({ DRAIN_SECONDS: '0' })
    const socket = connect(Number(new URL(url).port), '127.0.0.1')
    const head = `POST /v1/shops/kingcup/sizing HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n`
    socket.write(head + body.slice(0, 100))
    await pause(300)
    child.kill('SIGTERM')
    await pause(300)
    let reply = ''
    const ended = new Promise<void>((resolve, reject) => {
      socket.on('data', (data) => {
        reply += data.toString('utf8')
      })
      socket.on('end', resolve)
      socket.on('error', reject)
    })
    socket.write(body.slice(100))
    await ended
    expect(reply).toMatch(/^HTTP\/1\.1 200 /)
    expect(await exited).toBe(0)
  })

  it('exits at once when told again', async () => {
    const { child, exited } = await startProcess({ DRAIN_SECONDS: '30' })
    child.kill('SIGTERM')
    await pause(200)
    child.kill('SIGTERM')
    expect(await exited).toBe(1)
  })
})

describe('faulty settings', PATIENCE, () => {
  it('stop the service at the start, every fault named', async () => {
    const start = startProcess({
      PORT: '99999',
      LOG_LEVEL: 'loud',
      PUBLIC_URL: 'shop.example/path',
      TRUSTED_PROXIES: '10.0.0.0/8 everybody 0.0.0.0/0',
      CALLS_PER_ADDRESS: '-1',
      METRICS_PASSWORD: 'short',
      DRAIN_SECONDS: 'long',
      MAX_IN_FLIGHT: '0',
      SHED_AFTER_MILLISECONDS: '1',
    })
    const message = await start.then(
      () => 'it started',
      (error: Error) => error.message,
    )
    for (const name of [
      'PORT',
      'LOG_LEVEL',
      'PUBLIC_URL',
      'CALLS_PER_ADDRESS',
      'METRICS_PASSWORD',
      'DRAIN_SECONDS',
      'MAX_IN_FLIGHT',
      'SHED_AFTER_MILLISECONDS',
    ]) {
      expect(message).toContain(`${name}: `)
    }
    expect(message).toContain('"everybody"')
    expect(message).toContain('"0.0.0.0/0"')
    expect(message).not.toContain('"10.0.0.0/8"')
    expect(message).not.toContain('short')
  })
})
