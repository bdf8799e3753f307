import type { AddressInfo } from 'node:net'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PROBLEM_HELP } from '../../server/pages/docs/problem-help.ts'
import { PROBLEMS, problemSchema } from '../../shared/contract/problem.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { type RawReply, sendRaw } from '../support/raw-http.ts'
import { demoService } from '../support/service.ts'

const PUBLIC_URL = 'https://sizing.shop.example'
const SIZING = '/v1/shops/kingcup/sizing'

let app: FastifyInstance
let port: number
beforeAll(async () => {
  app = await demoService({
    settings: {
      publicUrl: PUBLIC_URL,
      headersTimeoutMs: 400,
      bodyTimeoutMs: 600,
      requestTimeoutMs: 3000,
      timeoutCheckMs: 50,
    },
  })
  app.get('/test/breaks', () => {
    throw new Error('select * from secrets where path = "/srv/private/db"')
  })
  await app.listen({ port: 0, host: '127.0.0.1' })
  port = (app.server.address() as AddressInfo).port
})
afterAll(() => app.close())

function expectProblem(reply: Pick<RawReply, 'status' | 'headers' | 'body'>, code: keyof typeof PROBLEMS) {
  expect(reply.headers['content-type']).toBe('application/problem+json; charset=utf-8')
  const problem = problemSchema.parse(JSON.parse(reply.body))
  expect(problem).toMatchObject({
    code,
    status: PROBLEMS[code].status,
    title: PROBLEMS[code].title,
    type: `${PUBLIC_URL}/docs#problem-${code}`,
  })
  expect(reply.status).toBe(PROBLEMS[code].status)
  expect(problem.instance).toBe(reply.headers['x-request-id'])
  expect(problem.instance.length).toBeGreaterThan(7)
  expect(reply.headers['x-content-type-options']).toBe('nosniff')
  expect(reply.headers['content-security-policy']).toContain("default-src 'none'")
  expect(reply.headers.vary).toContain('Origin')
}

const raw = async (text: string) => sendRaw(port, [text])
const host = 'Host: x\r\nConnection: close\r\n'

describe('whatever goes wrong', () => {
  it.each([
    ['not HTTP at all', 'good day\r\n\r\n', 'malformed-request'],
    ['HTTP without a host', 'GET /healthz HTTP/1.1\r\n\r\n', 'malformed-request'],
    ['an unknown method', `BREW / HTTP/1.1\r\n${host}\r\n`, 'malformed-request'],
    ['a header with a control character', `GET / HTTP/1.1\r\n${host}X: a\0b\r\n\r\n`, 'malformed-request'],
    [
      'two lengths',
      `POST ${SIZING} HTTP/1.1\r\n${host}Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}`,
      'malformed-request',
    ],
    [
      'a length and chunks, as smugglers send',
      `POST ${SIZING} HTTP/1.1\r\n${host}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
      'malformed-request',
    ],
    ['headers over 16 KiB', `GET / HTTP/1.1\r\n${host}X: ${'x'.repeat(17_000)}\r\n\r\n`, 'headers-too-large'],
    ['an address that cannot be decoded', `GET /v1/%zz HTTP/1.1\r\n${host}\r\n`, 'bad-request'],
    ['an address that is not there', `GET /v2/shops HTTP/1.1\r\n${host}\r\n`, 'not-found'],
    ['an old version', `GET /v0/appliances HTTP/1.1\r\n${host}\r\n`, 'not-found'],
    [
      'a part of a path that is too long',
      `GET /v1/shops/${'x'.repeat(300)}/setup HTTP/1.1\r\n${host}\r\n`,
      'not-found',
    ],
    ['a shop that is not there', `GET /v1/shops/nobody/setup HTTP/1.1\r\n${host}\r\n`, 'unknown-shop'],
    ['the wrong method', `DELETE ${SIZING} HTTP/1.1\r\n${host}\r\n`, 'method-not-allowed'],
    ['TRACE', `TRACE /healthz HTTP/1.1\r\n${host}\r\n`, 'method-not-allowed'],
    [
      'a body that is too large',
      `POST ${SIZING} HTTP/1.1\r\n${host}Content-Type: application/json\r\nContent-Length: 40000\r\n\r\n`,
      'body-too-large',
    ],
    [
      'a body of another type',
      `POST ${SIZING} HTTP/1.1\r\n${host}Content-Type: text/plain\r\nContent-Length: 2\r\n\r\n{}`,
      'unsupported-media-type',
    ],
    [
      'a body that breaks the contract',
      `POST ${SIZING} HTTP/1.1\r\n${host}Content-Type: application/json\r\nContent-Length: 2\r\n\r\n{}`,
      'contract-broken',
    ],
  ] as const)('%s is answered with a problem', async (_what, text, code) => {
    expectProblem(await raw(text), code)
  })

  it('names the methods that an address has', async () => {
    const reply = await raw(`PUT ${SIZING} HTTP/1.1\r\n${host}Content-Length: 0\r\n\r\n`)
    expect(reply.headers.allow).toBe('POST')
  })

  it('of our own tells nothing of the inside', async () => {
    const reply = await raw(`GET /test/breaks HTTP/1.1\r\n${host}\r\n`)
    expectProblem(reply, 'internal-error')
    expect(reply.body).not.toMatch(/select|secrets|srv|\.ts|at /)
  })

  it('keeps to one body a reply: HEAD has none', async () => {
    const reply = await raw(`HEAD /v1/appliances HTTP/1.1\r\n${host}\r\n`)
    expect([reply.status, reply.body]).toEqual([200, ''])
    expect(Number(reply.headers['content-length'])).toBeGreaterThan(1000)
  })
})

describe('slow senders', () => {
  it('of headers are cut with 408', async () => {
    const trickle = [...`GET /healthz HTTP/1.1\r\nX: ${'x'.repeat(500)}`]
    const reply = await sendRaw(port, trickle, 20)
    expectProblem(reply, 'request-timeout')
    expect(reply.headers.connection).toBe('close')
  })

  it('of a body are cut with 408', async () => {
    const head = `POST ${SIZING} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n`
    const reply = await sendRaw(port, [head, ...' '.repeat(400)], 20)
    expectProblem(reply, 'request-timeout')
  })

  it('do not keep others waiting, however many there are', async () => {
    const head = `POST ${SIZING} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n`
    const slow = Array.from({ length: 300 }, () => sendRaw(port, [head, ...' '.repeat(60)], 30))
    await new Promise((resolve) => setTimeout(resolve, 200))
    for (let call = 0; call < 20; call += 1) {
      const response = await fetch(`http://127.0.0.1:${port}${SIZING}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(sizingRequestExample),
      })
      expect(response.status).toBe(200)
      await response.arrayBuffer()
    }
    const replies = await Promise.all(slow)
    expect(new Set(replies.map(({ status }) => status))).toEqual(new Set([408]))
  })

  it('who send nothing at all are cut too', async () => {
    const { closedAfterMs } = await sendRaw(port, [], 0)
    expect(closedAfterMs).toBeGreaterThan(0)
  })
})

describe('every code', () => {
  it('is explained: why it is sent and what to do', () => {
    for (const code of Object.keys(PROBLEMS) as (keyof typeof PROBLEMS)[]) {
      expect(PROBLEM_HELP[code].cause.length, code).toBeGreaterThan(30)
      expect(PROBLEM_HELP[code].fix.length, code).toBeGreaterThan(30)
    }
  })
})
