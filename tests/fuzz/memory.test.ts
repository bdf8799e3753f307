import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import * as fc from 'fast-check'
import type { LightMyRequestResponse } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openApiDocument } from '../../server/openapi/document.ts'
import { operationsOf } from './operations.ts'
import { type FuzzRequest, requestsTo } from './requests.ts'
import { schemasOf } from './schema.ts'
import { send } from './send.ts'
import { type FuzzService, openFuzzService } from './service.ts'

setFlagsFromString('--expose-gc')
const collectGarbage = runInNewContext('gc') as () => void

const BATCHES = 8
const PER_BATCH = 300
/** Batches in which code is compiled and caches fill. */
const WARM_UP = 3
/**
 * Growth that counts as a trend. [bytes a request] A request or reply that is kept, by a closure, a set or a map,
 * is several times as much; compiled code and the test's own runner come to less.
 */
const TREND_BYTES = 1500

/**
 * The trend of a row of figures: the median of the slopes of all pairs (Theil and Sen), which a few outliers, such
 * as code compiled late, don't move.
 *
 * @param figures - One for each batch
 * @returns Growth from one to the next
 */
function trendOf(figures: readonly number[]): number {
  const slopes = figures
    .flatMap((figure, at) => figures.slice(at + 1).map((later, gap) => (later - figure) / (gap + 1)))
    .sort((a, b) => a - b)
  return slopes[Math.floor(slopes.length / 2)] ?? 0
}

async function heapAfter(batches: readonly (() => Promise<void>)[]): Promise<readonly number[]> {
  const heaps: number[] = []
  for (const batch of batches) {
    await batch()
    // What is let go in one turn may hold what is let go in the next.
    for (let turn = 0; turn < 3; turn += 1) {
      await new Promise((resolve) => setImmediate(resolve))
      collectGarbage()
    }
    heaps.push(process.memoryUsage().heapUsed)
  }
  return heaps
}

let service: FuzzService
beforeAll(async () => {
  service = await openFuzzService()
})
afterAll(() => service.close())

/** Batches of the same make-up and never the same request; none of them writes, for versions are kept for good. */
function drawnBatches(): readonly string[] {
  const document = openApiDocument()
  const schemas = schemasOf(document)
  const operations = operationsOf(document).filter(
    ({ id }) => !['writeRange', 'restoreRangeVersion', 'previewCoverage'].includes(id),
  )
  const grades = ['valid', 'near-valid', 'broken'] as const
  const share = Math.ceil(PER_BATCH / operations.length / grades.length)
  return Array.from({ length: BATCHES + WARM_UP }, (_, batch) => {
    const requests = operations.flatMap((operation) =>
      grades.flatMap((grade) =>
        fc.sample(requestsTo(schemas, operation, grade), { numRuns: share, seed: 1000 + batch }),
      ),
    )
    // As text, so that nothing of a request outlives its batch but by the service's doing.
    return JSON.stringify(
      requests.map((request) => ({ ...request, payload: request.payload?.toString('latin1' as 'utf8') })),
    )
  })
}

/** Runs the batches and measures the heap after each, those for warming up left out. */
async function heapsOf(
  batches: readonly string[],
  keep: (reply: LightMyRequestResponse) => void,
): Promise<readonly number[]> {
  const heaps = await heapAfter(
    batches.map((text) => async () => {
      for (const request of JSON.parse(text) as readonly FuzzRequest[]) {
        keep(await send(service, request))
      }
    }),
  )
  return heaps.slice(WARM_UP)
}

describe('the memory of a service', () => {
  it('shows no trend from one batch of hostile requests to the next, and would show a leak', async () => {
    const batches = drawnBatches()
    const size = (JSON.parse(batches[0] ?? '[]') as readonly FuzzRequest[]).length
    const heaps = await heapsOf(batches, () => {})
    expect(trendOf(heaps) / size, heaps.join(' ')).toBeLessThan(TREND_BYTES)

    // The same measure notices a service that keeps its replies.
    const kept: unknown[] = []
    const leaking = await heapsOf(batches, (reply) => kept.push(reply))
    expect(trendOf(leaking) / size, leaking.join(' ')).toBeGreaterThan(TREND_BYTES)
    expect(kept.length).toBe(batches.length * size)
  }, 240_000)
})
