import type { AddressInfo } from 'node:net'
import { createServer, type Server, type Socket } from 'node:net'
import { gzipSync } from 'node:zlib'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { type RangeFetcher, rangeFetcher } from '../../server/store/fetch-range.ts'
import { startPulling } from '../../server/store/pull.ts'
import { RANGE_BODY_LIMIT_BYTES } from '../../shared/contract/range-admin.ts'
import { openStaffService } from '../support/staff-service.ts'

/** A source of ranges that answers whatever bytes a test wants, also such as no HTTP server sends. */
let server: Server
let base: string
let asked: string[]
let talk: (socket: Socket, path: string) => void
const sockets = new Set<Socket>()
const fetchers: RangeFetcher[] = []

beforeEach(async () => {
  asked = []
  server = createServer((socket) => {
    sockets.add(socket)
    socket.on('error', () => {})
    socket.on('data', (data) => {
      const path = /^GET (\S+)/.exec(data.toString('latin1'))?.[1]
      if (path === undefined) return
      asked.push(path)
      talk(socket, path)
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
})
afterEach(async () => {
  for (const fetcher of fetchers.splice(0)) await fetcher.close()
  for (const socket of sockets) socket.destroy()
  sockets.clear()
  await new Promise((resolve) => server.close(resolve))
})

function fetcherWith(limits: { answerMs?: number; wholeMs?: number } = {}): RangeFetcher {
  const fetcher = rangeFetcher({ allowPrivate: true, retryMs: 1, ...limits })
  fetchers.push(fetcher)
  return fetcher
}

const bytesOf = (text: string) => Buffer.byteLength(text)
const document = JSON.stringify(kingcup)
const head = (fields: string, status = '200 OK') => `HTTP/1.1 ${status}\r\n${fields}\r\n\r\n`
const json = 'content-type: application/json'

describe('a source of ranges', () => {
  it('that accepts and never answers is given up, three times', async () => {
    talk = () => {}
    const fetcher = fetcherWith({ answerMs: 200 })
    await expect(fetcher.fetch(base, undefined)).rejects.toMatchObject({ passing: true })
    expect(asked).toHaveLength(3)
  })

  it('that stops in the middle of its answer is given up', async () => {
    talk = (socket) => socket.write(`${head(`${json}\r\ncontent-length: 1000`)}{"shop":`)
    const fetcher = fetcherWith({ answerMs: 200 })
    await expect(fetcher.fetch(base, undefined)).rejects.toMatchObject({ passing: true })
    expect(asked).toHaveLength(3)
  })

  it('that drips a byte at a time is given up after the time for the whole answer', async () => {
    talk = (socket) => {
      socket.write(head(`${json}\r\ncontent-length: 1000000`))
      const timer = setInterval(() => socket.write(' '), 20)
      socket.on('close', () => clearInterval(timer))
    }
    const fetcher = fetcherWith({ answerMs: 5000, wholeMs: 300 })
    await expect(fetcher.fetch(base, undefined)).rejects.toMatchObject({ passing: true })
    expect(asked).toHaveLength(3)
  })

  it('that tells a length longer than what it sends gives nothing', async () => {
    talk = (socket) => socket.end(`${head(`${json}\r\ncontent-length: ${bytesOf(document) + 5}`)}${document}`)
    await expect(fetcherWith().fetch(base, undefined)).rejects.toMatchObject({ passing: true })
  })

  it('that tells a length shorter than what it sends gives what it told, and nothing to the next question', async () => {
    talk = (socket) => socket.write(`${head(`${json}\r\ncontent-length: 100`)}${document}`)
    const fetcher = fetcherWith()
    const first = await fetcher.fetch(base, undefined).catch(() => undefined)
    if (first !== undefined) {
      expect(first).toEqual({
        kind: 'document',
        bytes: new TextEncoder().encode(document.slice(0, 100)),
        etag: undefined,
      })
    }
    talk = (socket) => socket.end(`${head(`${json}\r\ncontent-length: ${bytesOf(document)}`)}${document}`)
    expect(await fetcher.fetch(base, undefined)).toMatchObject({
      bytes: new TextEncoder().encode(document),
    })
  })

  it.each([
    ['to an address inside', 'http://169.254.169.254/latest/meta-data/'],
    ['to this machine', 'http://127.0.0.1:1/'],
    ['to itself for ever', '/again'],
  ])('that redirects %s is not followed', async (_, location) => {
    talk = (socket) =>
      socket.end(head(`location: ${location}\r\ncontent-length: 0\r\nconnection: close`, '302 Found'))
    await expect(fetcherWith().fetch(base, undefined)).rejects.toMatchObject({ passing: false })
    expect(asked).toEqual(['/'])
  })

  it('that sends a compressed bomb is not decompressed', async () => {
    const bomb = gzipSync(Buffer.alloc(200 * 1024 * 1024, 32), { level: 1 })
    expect(bomb.length).toBeLessThan(RANGE_BODY_LIMIT_BYTES)
    talk = (socket) => {
      socket.write(head(`${json}\r\ncontent-encoding: gzip\r\ncontent-length: ${bomb.length}`))
      socket.end(bomb)
    }
    const fetched = await fetcherWith().fetch(base, undefined)
    expect(fetched).toMatchObject({ kind: 'document' })
    if (fetched.kind === 'document') expect(fetched.bytes).toHaveLength(bomb.length)
  })

  it('that sends without end is cut off at the limit', async () => {
    let sent = 0
    talk = (socket) => {
      socket.write(head(`${json}\r\ntransfer-encoding: chunked`))
      const chunk = `10000\r\n${' '.repeat(0x10000)}\r\n`
      const more = () => {
        while (!socket.destroyed) {
          sent += 0x10000
          if (!socket.write(chunk)) break
        }
      }
      socket.on('drain', more)
      more()
    }
    await expect(fetcherWith().fetch(base, undefined)).rejects.toMatchObject({ passing: false })
    expect(asked).toHaveLength(1)
    expect(sent).toBeLessThan(5 * RANGE_BODY_LIMIT_BYTES)
  })
})

describe('a service that pulls', () => {
  it('keeps every last good range, and one bad source keeps no other waiting', async () => {
    const service = await openStaffService()
    const lines: string[] = []
    const bomb = gzipSync(Buffer.alloc(50 * 1024 * 1024, 32))
    const other = JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, id: 'good' } })
    talk = (socket, path) => {
      if (path === '/bomb') socket.end(Buffer.concat([Buffer.from(head(json)), bomb]))
      if (path === '/good') socket.end(`${head(`${json}\r\ncontent-length: ${bytesOf(other)}`)}${other}`)
    }
    const pull = startPulling({
      sources: [
        { shopId: 'kingcup', url: `${base}silent` },
        { shopId: 'bentcreek', url: `${base}bomb` },
        { shopId: 'good', url: `${base}good` },
      ],
      everyS: 3600,
      fetcher: fetcherWith({ answerMs: 20_000 }),
      store: service.store,
      live: service.live,
      log: (level, message) => lines.push(`${level} ${message}`),
    })
    const all = pull.pullAll()
    await expect.poll(() => service.live.ranges.current('good')?.version, { timeout: 10_000 }).toBe(1)
    await expect.poll(() => lines.length, { timeout: 10_000 }).toBe(2)
    expect(lines.find((line) => line.startsWith('error'))).toContain('"bentcreek" not pulled')
    expect(service.live.ranges.current('kingcup')?.version).toBe(1)
    expect(service.live.ranges.current('bentcreek')?.version).toBe(1)
    await pull.stop()
    await all
    await service.close()
  })
})
