import { type AddressInfo, connect, type Socket } from 'node:net'
import { gzipSync } from 'node:zlib'
import * as fc from 'fast-check'
import type { FastifyInstance } from 'fastify'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { problemSchema } from '../../shared/contract/problem.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { sendRaw } from '../support/raw-http.ts'
import { demoService } from '../support/service.ts'

const SIZING = '/v1/shops/kingcup/sizing'
const BODY = JSON.stringify(sizingRequestExample)
const HEAD = `POST ${SIZING} HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n`
const SOUND = `${HEAD}Connection: close\r\nContent-Length: ${Buffer.byteLength(BODY)}\r\n\r\n${BODY}`

let app: FastifyInstance
let port: number
beforeAll(async () => {
  app = await demoService({
    settings: { headersTimeoutMs: 6000, bodyTimeoutMs: 6000, requestTimeoutMs: 8000, timeoutCheckMs: 200 },
  })
  await app.listen({ port: 0, host: '127.0.0.1', backlog: 4096 })
  port = (app.server.address() as AddressInfo).port
})
afterAll(() => app.close())

const open = new Set<Socket>()
afterEach(() => {
  for (const socket of open) socket.destroy()
  open.clear()
})

/** What comes back over a connection before it is closed. */
interface Exchange {
  readonly socket: Socket
  readonly closed: Promise<string>
}

function start(text: string | Buffer): Promise<Exchange> {
  return new Promise((resolve, reject) => {
    let reply = ''
    const socket = connect(port, '127.0.0.1')
    open.add(socket)
    const closed = new Promise<string>((done) => {
      socket.on('data', (data) => {
        reply += data.toString('latin1')
      })
      socket.on('error', () => {})
      socket.on('close', () => done(reply))
    })
    socket.once('error', reject)
    socket.once('connect', () => {
      if (text.length > 0) socket.write(text)
      resolve({ socket, closed })
    })
  })
}

/** Opens connections in groups, so that no queue of the system overflows. */
async function startMany(count: number, text: string): Promise<readonly Exchange[]> {
  const started: Exchange[] = []
  while (started.length < count) {
    const group = Math.min(200, count - started.length)
    started.push(...(await Promise.all(Array.from({ length: group }, () => start(text)))))
  }
  return started
}

/** Sends bytes, then says that no more will come, and reads what there is. */
async function exchange(bytes: string | Buffer): Promise<string> {
  const { socket, closed } = await start(bytes)
  socket.end()
  return closed
}

const statusesIn = (text: string) =>
  [...text.matchAll(/HTTP\/1\.1 (\d{3}) /g)].map(([, status]) => Number(status))

async function expectAnswered(times: number): Promise<void> {
  for (let call = 0; call < times; call += 1) {
    const reply = await sendRaw(port, [SOUND])
    expect(reply.status).toBe(200)
    expect(JSON.parse(reply.body).recommended).not.toBeUndefined()
  }
}

describe('a thousand senders who dawdle over headers, another thousand over bodies and three thousand who say nothing', () => {
  it('keep nobody waiting; the slow ones are cut with 408, the idle ones are let be until they ask', async () => {
    const idle = await startMany(3000, `GET /healthz HTTP/1.1\r\nHost: x\r\n\r\n`)
    const slowHeads = await startMany(1000, 'GET /healthz HTTP/1.1\r\nX: ')
    const slowBodies = await startMany(1000, `${HEAD}Content-Length: 500\r\n\r\n{`)
    await expectAnswered(20)
    // A byte now and then buys no more time.
    for (const { socket } of [...slowHeads, ...slowBodies]) socket.write(' ')
    await expectAnswered(5)
    for (const { closed } of [...slowHeads, ...slowBodies]) expect(statusesIn(await closed)).toEqual([408])
    for (const { socket } of idle) {
      expect(socket.destroyed).toBe(false)
      socket.end('GET /healthz HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n')
    }
    for (const { closed } of idle) expect(statusesIn(await closed)).toEqual([200, 200])
    await expectAnswered(5)
  }, 90_000)
})

describe('half a request', () => {
  it('wherever it breaks off, gets nothing or a problem, and costs the next caller nothing', async () => {
    for (let cut = 0; cut < SOUND.length; cut += 7) {
      const reply = await exchange(SOUND.slice(0, cut))
      for (const status of statusesIn(reply)) expect([400, 408]).toContain(status)
    }
    await expectAnswered(3)
  })
})

describe('a request whose end readers would not agree on', () => {
  const smuggled = 'GET /healthz HTTP/1.1\r\nHost: x\r\n\r\n'
  it.each([
    ['two lengths', `Content-Length: 5\r\nContent-Length: 40\r\n\r\n`],
    ['two equal lengths', `Content-Length: 5\r\nContent-Length: 5\r\n\r\n`],
    ['a list of lengths', `Content-Length: 5, 40\r\n\r\n`],
    ['a length and chunks', `Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`],
    ['chunks and a length', `Transfer-Encoding: chunked\r\nContent-Length: 5\r\n\r\n0\r\n\r\n`],
    ['two codings', `Transfer-Encoding: chunked\r\nTransfer-Encoding: identity\r\n\r\n0\r\n\r\n`],
    ['a coding that is none', `Transfer-Encoding: xchunked\r\n\r\n0\r\n\r\n`],
    ['a coding with a control character', `Transfer-Encoding: \x0bchunked\r\n\r\n0\r\n\r\n`],
    ['a blank before the colon', `Transfer-Encoding : chunked\r\n\r\n0\r\n\r\n`],
    ['a folded line', `X: a\r\n Transfer-Encoding: chunked\r\n\r\n0\r\n\r\n`],
    ['a negative length', `Content-Length: -1\r\n\r\n`],
    ['a length with a sign', `Content-Length: +5\r\n\r\n`],
    ['a hexadecimal length', `Content-Length: 0x5\r\n\r\n`],
    ['a chunk that is too large to count', `Transfer-Encoding: chunked\r\n\r\nfffffffffffffffff\r\n`],
    ['a chunk with a blank for its length', `Transfer-Encoding: chunked\r\n\r\n \r\n\r\n`],
    ['line feeds alone', `Content-Length: 5\n\n`],
  ])('%s, gets one problem and no answer to what is hidden in it', async (_what, rest) => {
    const reply = await exchange(`${HEAD}${rest}${smuggled}`)
    expect(statusesIn(reply)).toEqual([400])
    const body = reply.slice(reply.indexOf('\r\n\r\n') + 4)
    expect(problemSchema.parse(JSON.parse(body)).status).toBe(400)
    expect(reply).toMatch(/\r\nconnection: close\r\n/i)
  })
})

describe('headers beyond measure', () => {
  it.each([
    ['one line', `X: ${'x'.repeat(70_000)}\r\n`],
    ['many lines', Array.from({ length: 4000 }, (_, at) => `X-${at}: y\r\n`).join('')],
    ['many cookies', `Cookie: ${'a=b; '.repeat(6000)}\r\n`],
  ])('in %s are refused with 431', async (_what, lines) => {
    const reply = await exchange(`GET /healthz HTTP/1.1\r\nHost: x\r\n${lines}\r\n`)
    expect(statusesIn(reply)).toEqual([431])
  })

  it('in the address are refused with 431', async () => {
    expect(statusesIn(await exchange(`GET /${'x'.repeat(40_000)} HTTP/1.1\r\nHost: x\r\n\r\n`))).toEqual([
      431,
    ])
  })

  it('after the body do nobody harm', async () => {
    const trailers = Array.from({ length: 4000 }, (_, at) => `X-${at}: y\r\n`).join('')
    const reply = await exchange(
      `${HEAD}Connection: close\r\nTransfer-Encoding: chunked\r\n\r\n2\r\n{}\r\n0\r\n${trailers}\r\n`,
    )
    for (const status of statusesIn(reply)) expect([422, 431]).toContain(status)
    await expectAnswered(1)
  })
})

describe('a small body that unpacks to a large one', () => {
  const bomb = gzipSync(Buffer.alloc(30 * 1024 * 1024, ' '))

  it.each(['gzip', 'x-gzip', 'deflate', 'br', 'gzip, gzip'])('as %s is not unpacked', async (coding) => {
    const head = `${HEAD}Connection: close\r\nContent-Encoding: ${coding}\r\nContent-Length: ${bomb.length}\r\n\r\n`
    const reply = await exchange(Buffer.concat([Buffer.from(head), bomb]))
    expect(bomb.length).toBeLessThan(32 * 1024)
    expect(statusesIn(reply)).toEqual([400])
    expect(reply).toContain('unreadable-json')
  })

  it('as a coding of the transfer is refused', async () => {
    const head = `${HEAD}Transfer-Encoding: gzip, chunked\r\n\r\n${bomb.length.toString(16)}\r\n`
    const reply = await exchange(Buffer.concat([Buffer.from(head), bomb, Buffer.from('\r\n0\r\n\r\n')]))
    for (const status of statusesIn(reply)) expect([400, 501]).toContain(status)
    await expectAnswered(1)
  })

  it('in chunks without end is cut off at the limit', async () => {
    const chunk = `4000\r\n${' '.repeat(0x4000)}\r\n`
    const reply = await exchange(`${HEAD}Transfer-Encoding: chunked\r\n\r\n${chunk.repeat(50)}0\r\n\r\n`)
    expect(statusesIn(reply)).toEqual([413])
  })
})

describe('bytes that are a request only in part', () => {
  it('never get an answer of the 5xx kind, and leave the service as it was', async () => {
    const pieces = fc.constantFrom(
      ...[
        '\r\n',
        '\r',
        '\n',
        '\0',
        ' ',
        ':',
        '\t',
        'HTTP/1.1',
        'HTTP/2.0',
        'HTTP/0.9',
        'GET',
        'CONNECT',
        'x',
      ],
      ...[
        'Content-Length: 99999999999999999999\r\n',
        'Upgrade: h2c\r\n',
        'Expect: 100-continue\r\n',
        '\x16\x03\x01',
      ],
      ...['PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n', 'Host: a\r\n', '//', 'http://x/', '*', '\u00ff', '%', '?'],
    )
    const meddled = fc
      .tuple(fc.array(fc.tuple(fc.nat(SOUND.length), pieces), { minLength: 1, maxLength: 4 }), fc.boolean())
      .map(([changes, whole]) => {
        const text = changes.reduce((made, [at, piece]) => made.slice(0, at) + piece + made.slice(at), SOUND)
        return whole ? text : text.slice(0, text.length / 2)
      })
    const bytes = fc.uint8Array({ maxLength: 200 }).map((array) => Buffer.from(array).toString('latin1'))
    await fc.assert(
      fc.asyncProperty(
        fc.oneof({ weight: 4, arbitrary: meddled }, { weight: 1, arbitrary: bytes }),
        async (text) => {
          const reply = await exchange(Buffer.from(text, 'latin1'))
          for (const status of statusesIn(reply)) expect(status, reply).toBeLessThan(500)
        },
      ),
      { numRuns: 300 },
    )
    await expectAnswered(3)
  })
})
