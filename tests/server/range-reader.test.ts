import { Worker } from 'node:worker_threads'
import { afterEach, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { type Draft, readDraft } from '../../server/range-files/draft.ts'
import { type RangeReader, rangeReader } from '../../server/range-files/range-reader.ts'
import { writeCsvList } from '../../server/range-files/write-csv-list.ts'
import { largeRange } from '../support/large-range.ts'
import { openStaffService } from '../support/staff-service.ts'

const base = JSON.stringify(kingcup)
const json = (value: unknown): Draft => ({
  body: { kind: 'json', bytes: Buffer.from(JSON.stringify(value)), contentType: 'application/json' },
  base,
})
const large = json(largeRange(2000))
const built = new URL('../../dist/server/range-worker.js', import.meta.url)

/** A thread that does with each message what the code says. */
const thread = (onMessage: string) => async () =>
  new Worker(`require('node:worker_threads').parentPort.on('message', (task) => { ${onMessage} })`, {
    eval: true,
  })

const readers: RangeReader[] = []
afterEach(async () => {
  for (const reader of readers.splice(0)) await reader.close()
})
function made(options: Parameters<typeof rangeReader>[0]): RangeReader {
  const reader = rangeReader(options)
  readers.push(reader)
  return reader
}

describe('a reader of ranges', () => {
  it('starts no thread for a range of everyday size', async () => {
    const reader = made({
      start: async () => {
        throw new Error('a thread was started')
      },
    })
    expect(await reader.readDraft(json(kingcup))).toEqual(readDraft(json(kingcup)))
    expect(await reader.checkStored(base)).toEqual({ ok: true, text: base })
  })

  it.each([
    ['its sources', {}],
    ['a release', { start: async () => new Worker(built) }],
  ] as const)(
    'reads a large one in a thread made from %s, to the same result',
    async (_, options) => {
      const reader = made({ ...options, deadlineMs: 60_000 })
      const range = largeRange(2000)
      const csv = {
        kind: 'csv',
        bytes: Buffer.from(writeCsvList(range, 'inverters')),
        contentType: 'text/csv',
      }
      const faulty = { ...range, inverters: range.inverters.map((unit) => ({ ...unit, continuousW: -1 })) }
      const drafts = [
        large,
        { body: csv, part: 'inverters', base } as Draft,
        { body: csv, base } as Draft,
        json(faulty),
        { ...large, body: { ...json(range).body, contentType: 'application/json; charset=utf-16' } } as Draft,
      ]
      const readings = await Promise.all(drafts.map((draft) => reader.readDraft(draft)))
      expect(readings.map(({ kind }) => kind)).toEqual([
        'range',
        'range',
        'part-missing',
        'faults',
        'refused',
      ])
      expect(readings).toEqual(drafts.map(readDraft))
      expect(await reader.checkStored(JSON.stringify(range))).toMatchObject({ ok: true })
      expect(await reader.checkStored(JSON.stringify(faulty))).toMatchObject({ ok: false })
    },
    90_000,
  )

  it('fails the one range that ends its thread, and reads those that waited in a new one', async () => {
    let started = 0
    const reader = made({
      start: () => {
        started += 1
        const answers = `require('node:worker_threads').parentPort.postMessage({ ok: true, text: 'read' })`
        return thread(started === 1 ? 'process.exit(3)' : answers)()
      },
    })
    const text = ' '.repeat(1_000_000)
    const first = reader.checkStored(text).then(String, (error) => error.reason)
    const second = reader.checkStored(text)
    expect(await first).toBe('ended')
    expect(await second).toEqual({ ok: true, text: 'read' })
    expect(started).toBe(2)
  })

  it('tells of a thread that throws, and of one that can not be started', async () => {
    const text = ' '.repeat(1_000_000)
    const throwing = made({ start: thread(`throw new Error('torn')`) })
    await expect(throwing.checkStored(text)).rejects.toMatchObject({
      reason: 'ended',
      cause: { message: 'torn' },
    })
    const missing = made({ start: async () => new Worker(new URL('./none.js', import.meta.url)) })
    await expect(missing.checkStored(text)).rejects.toMatchObject({ reason: 'ended' })
  })

  it('gives up a thread that never answers, and goes on with another', async () => {
    let started = 0
    const reader = made({
      deadlineMs: 1500,
      start: () => {
        started += 1
        const answers = `require('node:worker_threads').parentPort.postMessage({ ok: true, text: 'read' })`
        return thread(started === 1 ? 'for (;;);' : answers)()
      },
    })
    const text = ' '.repeat(1_000_000)
    await expect(reader.checkStored(text)).rejects.toMatchObject({ reason: 'slow' })
    expect(await reader.checkStored(text)).toEqual({ ok: true, text: 'read' })
  })

  it('lets eight wait and turns the next away at once', async () => {
    const reader = made({ start: thread('') })
    const text = ' '.repeat(1_000_000)
    const asked = Array.from({ length: 9 }, () =>
      reader.checkStored(text).catch((error: Error & { reason: string }) => error.reason),
    )
    expect(await asked[8]).toBe('busy')
    await reader.close()
    expect(new Set(await Promise.all(asked.slice(0, 8)))).toEqual(new Set(['ended']))
  })
})

describe('a service whose reading thread fails', () => {
  it.each([
    ['ends', 'process.exit(1)', 500, 'internal-error'],
    ['hangs', '', 503, 'timed-out'],
  ] as const)(
    'answers a large import with a problem where it %s; the range stays',
    async (_, code, ...told) => {
      const service = await openStaffService(
        undefined,
        {},
        rangeReader({ start: thread(code), deadlineMs: 500 }),
      )
      const secret = await service.issue('kingcup', ['read', 'range'])
      const put = (body: string) =>
        service.app.inject({
          method: 'PUT',
          url: '/v1/shops/kingcup/range',
          headers: {
            authorization: `Bearer ${secret}`,
            'if-match': '*',
            'content-type': 'application/json',
          },
          payload: body,
        })
      const reply = await put(JSON.stringify(largeRange(2000)))
      expect([reply.statusCode, reply.json().code]).toEqual(told)
      expect(reply.json().detail).toContain('The range in force is unchanged.')
      expect(service.live.ranges.current('kingcup')?.version).toBe(1)
      const small = await put(JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, name: 'small' } }))
      expect(small.statusCode).toBe(200)
      await service.close()
    },
  )
})
