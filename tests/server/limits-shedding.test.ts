import type { FastifyInstance } from 'fastify'
import { Agent, request } from 'undici'
import { afterEach, describe, expect, it } from 'vitest'
import { problemSchema } from '../../shared/contract/problem.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
let agent: Agent
let url: string
afterEach(async () => {
  await agent.close()
  await app.close()
})

/** A service with a route that keeps the processor busy for as long as it is told. */
async function listen(shedAfterMs: number): Promise<void> {
  app = await demoService({ settings: { shedAfterMs } })
  app.get<{ Params: { milliseconds: string } }>('/test/busy/:milliseconds', (call) => {
    const until = performance.now() + Number(call.params.milliseconds)
    while (performance.now() < until);
    return { done: true }
  })
  url = await app.listen({ port: 0, host: '127.0.0.1' })
  agent = new Agent({ connections: 200 })
}

async function ask(path: string) {
  const { statusCode, headers, body } = await request(url + path, { dispatcher: agent })
  return { statusCode, retryAfter: headers['retry-after'], text: await body.text() }
}

/** All at once, over a connection each. */
const together = (count: number, path: string) => Promise.all(Array.from({ length: count }, () => ask(path)))

describe('more calls than the processor can answer', () => {
  it('are partly turned away at once with a problem and a time to come back; health never is', async () => {
    await listen(40)
    const replies: Awaited<ReturnType<typeof ask>>[] = []
    const health: number[] = []
    for (let round = 0; round < 4; round += 1) {
      const [busy, watched] = await Promise.all([together(60, '/test/busy/4'), together(10, '/healthz')])
      replies.push(...busy)
      health.push(...watched.map(({ statusCode }) => statusCode))
    }
    const shed = replies.filter(({ statusCode }) => statusCode === 503)
    const answered = replies.filter(({ statusCode }) => statusCode === 200)
    expect(shed.length).toBeGreaterThan(0)
    expect(answered.length).toBeGreaterThan(0)
    expect(shed.length + answered.length).toBe(replies.length)
    for (const { text, retryAfter } of shed) {
      expect(problemSchema.parse(JSON.parse(text)).code).toBe('overloaded')
      expect(retryAfter).toMatch(/^[123]$/)
    }
    expect(new Set(shed.map(({ retryAfter }) => retryAfter)).size).toBeGreaterThan(1)
    expect(new Set(health)).toEqual(new Set([200]))

    await new Promise((resolve) => setTimeout(resolve, 1100))
    expect((await ask('/v1/shops/kingcup/setup')).statusCode, 'when it is over').toBe(200)
    expect((await ask('/metrics')).text).toContain(`tallywatt_shed_total ${shed.length}\n`)
  })

  it('are all answered after one long piece of work, which is no overload', async () => {
    await listen(500)
    const long = ask('/test/busy/1200')
    const behind = await together(40, '/v1/shops/kingcup/setup')
    expect((await long).statusCode).toBe(200)
    expect(new Set(behind.map(({ statusCode }) => statusCode))).toEqual(new Set([200]))
  })
})
