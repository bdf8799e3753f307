import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type PreparedRange, prepareRange } from '../../core/range/prepare-range.ts'
import { SUPPLY_VOLTAGES } from '../../core/range/vocabulary.ts'
import { planFor, sizeFor } from '../../core/sizing.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'
import { demandReply } from '../../server/demand/answer.ts'
import { type AnsweredRequest, countRequest } from '../../server/demand/count.ts'
import type { Period } from '../../server/demand/period.ts'
import { demandRecorder } from '../../server/demand/recorder.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { openStore } from '../../server/store/open.ts'
import type { Store } from '../../server/store/store.ts'
import { readRange } from '../../shared/range-reading.ts'
import { startPostgres } from '../support/postgres.ts'
import { timeCall, timingLine } from './timing.ts'

const REQUESTS = 1_000_000
const DAYS = 365
const FIRST_DAY_MS = Date.UTC(2025, 0, 1)
const DAY_MS = 86_400_000
/** Different requests; of their combinations, most are asked for once in a while. */
const DIFFERENT = 40_000
const QUERIES = 15

/** Prints what a demand query takes after a year of a million requests, on SQLite and on PostgreSQL. */
export async function benchDemand(): Promise<void> {
  const reading = readRange(kingcup)
  if (!reading.ok) throw new Error('the demo range is faulty')
  const range = prepareRange(reading.range, BUILT_IN_APPLIANCES, 1)
  const requests = answeredRequests(range)
  benchRecording(range, requests)
  const folder = mkdtempSync(join(tmpdir(), 'tallywatt-bench-'))
  const sqlite = await openStore(`sqlite:${join(folder, 'demand.db')}`, 5)
  await benchStore(sqlite, range, requests)
  await sqlite.close()
  rmSync(folder, { recursive: true, force: true })
  const server = await startPostgres()
  const postgres = await openStore(await server.newDatabase(), 5)
  await benchStore(postgres, range, requests)
  await postgres.close()
  await server.close()
}

/** Numbers that look random and are the same at each run. */
function randomFrom(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}

function answeredRequests(range: PreparedRange): readonly AnsweredRequest[] {
  const random = randomFrom(1)
  const ids = [...range.appliances.keys()]
  // A few appliances are asked for often, most seldom.
  const pick = () => ids[Math.floor(ids.length * random() ** 2.5)] ?? 'laptop'
  return Array.from({ length: DIFFERENT }, () => {
    const count = 1 + Math.floor(5 * random() ** 1.5)
    const nominalV = random() < 0.7 ? 12 : (SUPPLY_VOLTAGES[Math.floor(4 * random())] ?? 12)
    const planned = planFor(range, {
      loads: Array.from({ length: count }, (_, index) => ({ id: `${index}`, appliance: pick() })),
      supply: random() < 0.2 ? undefined : { nominalV },
      preferences: { inStockOnly: true },
    })
    if (!planned.ok) throw new Error('a request of the bench is faulty')
    const { choice, outcome } = sizeFor(range, planned.plan)
    return { call: 'sizing', plan: planned.plan, choice, outcome }
  })
}

function benchRecording(range: PreparedRange, requests: readonly AnsweredRequest[]): void {
  const written: unknown[] = []
  const recorder = demandRecorder({
    store: { addDemand: async (batch) => void written.push(batch), tidyDemand: async () => {} },
    everyMs: 1e9,
  })
  let next = 0
  // The queue is counted in a turn of its own, which never comes within this loop.
  const timing = timeCall(() => {
    recorder.record(range, requests[next++ % requests.length] as AnsweredRequest)
    return next
  })
  console.log(timingLine('demand, noting one request', timing))
  let counted = 0
  const counting = timeCall(() => {
    const request = requests[next++ % requests.length]
    if (request !== undefined) countRequest(request, () => (counted += 1))
    return counted
  })
  console.log(timingLine('demand, counting one request between requests', counting))
}

async function benchStore(
  store: Store,
  range: PreparedRange,
  requests: readonly AnsweredRequest[],
): Promise<void> {
  const started = performance.now()
  await recordYear(store, range, requests)
  const seconds = (performance.now() - started) / 1000
  console.log(`demand on ${store.kind}: ${REQUESTS} requests recorded in ${seconds.toFixed(0)} s`)
  for (const [what, period] of PERIODS) {
    const times: number[] = []
    let told = 0
    for (let query = 0; query < QUERIES; query += 1) {
      const start = performance.now()
      const totals = await store.demand('kingcup', period)
      const reply = demandReply({ range, period, totals, sizes: 3 })
      times.push(performance.now() - start)
      told = reply.requests ?? 0
    }
    times.sort((a, b) => a - b)
    const at = (share: number) => times[Math.floor(share * (times.length - 1))]?.toFixed(1)
    console.log(
      `demand on ${store.kind}, ${what}: fastest ${at(0)} ms, p50 ${at(0.5)} ms, slowest ${at(1)} ms for ${told} requests`,
    )
  }
}

const PERIODS: readonly (readonly [string, Period])[] = [
  ['a whole year', { from: '2025-01-01', to: '2025-12-31' }],
  ['a year but for its first and last day', { from: '2025-01-02', to: '2025-12-30' }],
  ['thirty days', { from: '2025-11-17', to: '2025-12-16' }],
]

async function recordYear(
  store: Store,
  range: PreparedRange,
  requests: readonly AnsweredRequest[],
): Promise<void> {
  const random = randomFrom(2)
  let now = FIRST_DAY_MS
  const recorder = demandRecorder({
    store,
    now: () => now,
    everyMs: 1e9,
    log: (_, message) => {
      throw new Error(message)
    },
  })
  for (let noted = 0; noted < REQUESTS; noted += 1) {
    const day = FIRST_DAY_MS + Math.floor((noted / REQUESTS) * DAYS) * DAY_MS
    if (day !== now) {
      await recorder.flush()
      now = day
    }
    const request = requests[Math.floor(requests.length * random() ** 2)]
    if (request !== undefined) recorder.record(range, request)
  }
  await recorder.close()
}
