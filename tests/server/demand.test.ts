import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import * as fc from 'fast-check'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { PreparedRange } from '../../core/range/prepare-range.ts'
import { planFor, sizeFor } from '../../core/sizing.ts'
import type { AnsweredRequest } from '../../server/demand/count.ts'
import { addDays, dayOf, daysIn, monthOf, type Period, partsOf } from '../../server/demand/period.ts'
import { type DemandRecorder, demandRecorder } from '../../server/demand/recorder.ts'
import { DEMAND_DAYS_KEPT, type DemandBatch, type DemandRow } from '../../server/store/demand.ts'
import { openStore } from '../../server/store/open.ts'
import { type Store, StoreUnavailableError } from '../../server/store/store.ts'
import { makeInverter, makeRange, TEST_SHOP } from '../support/make.ts'
import { startPostgres, type TestPostgres } from '../support/postgres.ts'

let postgres: TestPostgres
const folder = mkdtempSync(join(tmpdir(), 'tallywatt-demand-'))
let files = 0

beforeAll(async () => {
  postgres = await startPostgres()
}, 60_000)

afterAll(async () => {
  await postgres.close()
  rmSync(folder, { recursive: true, force: true })
})

function newFile(): string {
  files += 1
  return `sqlite:${join(folder, `demand-${files}.db`)}`
}

let ids = 0
function batch(rows: readonly Partial<DemandRow>[], id = `batch-${++ids}`): DemandBatch {
  return {
    id,
    rows: rows.map((row) => ({
      shopId: 'shop',
      day: '2026-03-10',
      kind: 'appliance',
      key: 'laptop',
      count: 1,
      ...row,
    })),
  }
}

const MARCH: Period = { from: '2026-03-01', to: '2026-03-31' }

describe('periods', () => {
  const dayArb = fc.integer({ min: 0, max: 1200 }).map((days) => addDays('2024-01-01', days))

  it('come apart into months and days that hold each day once', () => {
    fc.assert(
      fc.property(dayArb, fc.integer({ min: 0, max: 500 }), (from, length) => {
        const to = addDays(from, length)
        const { months, days } = partsOf({ from, to })
        const all: string[] = []
        for (const part of days) {
          for (let day = part.from; day <= part.to; day = addDays(day, 1)) all.push(day)
        }
        if (months !== undefined) {
          const end = `${months.to}-31`
          for (
            let day = `${months.from}-01`;
            day <= end && monthOf(day) <= months.to;
            day = addDays(day, 1)
          ) {
            all.push(day)
          }
        }
        expect(all).toHaveLength(length + 1)
        expect(new Set(all).size).toBe(length + 1)
        expect(all.every((day) => day >= from && day <= to)).toBe(true)
        expect(daysIn({ from, to })).toBe(length + 1)
      }),
    )
  })

  it('read a whole year as twelve months', () => {
    expect(partsOf({ from: '2025-01-01', to: '2025-12-31' })).toEqual({
      months: { from: '2025-01', to: '2025-12' },
      days: [],
    })
  })

  it('tell the day of a moment in UTC, in any order of asking', () => {
    expect(dayOf(Date.parse('2026-03-10T23:59:59.999Z'))).toBe('2026-03-10')
    expect(dayOf(Date.parse('2026-03-11T00:00:00Z'))).toBe('2026-03-11')
    expect(dayOf(Date.parse('2026-03-10T00:00:00Z'))).toBe('2026-03-10')
  })
})

describe.each(['sqlite', 'postgres'] as const)('demand in %s', (kind) => {
  let url: string
  let store: Store

  beforeEach(async () => {
    url = kind === 'sqlite' ? newFile() : await postgres.newDatabase()
    store = await openStore(url, 5)
  })
  afterEach(() => store.close())

  it('adds up what several instances send', async () => {
    const other = await openStore(url, 5)
    const rows = ['laptop', 'kettle', 'fridge'].map((key) => ({ key, count: 2 }))
    // Each instance has the rows in an order of its own.
    const send = (index: number) =>
      (index % 2 === 0 ? store : other).addDemand(batch(index % 3 === 0 ? rows : rows.toReversed()))
    const turns = [...Array(20).keys()]
    if (kind === 'postgres') await Promise.all(turns.map(send))
    // Two connections of one process to a SQLite file would wait for each other: here they take turns.
    else for (const turn of turns) await send(turn)
    await other.close()
    const { totals } = await store.demand('shop', MARCH)
    expect(new Map(totals.map(({ key, count }) => [key, count]))).toEqual(
      new Map([
        ['laptop', 40],
        ['kettle', 40],
        ['fridge', 40],
      ]),
    )
  })

  it('takes a batch that is sent again once', async () => {
    const sent = batch([{ count: 7 }])
    await store.addDemand(sent)
    await store.addDemand(sent)
    expect((await store.demand('shop', MARCH)).totals).toEqual([
      { kind: 'appliance', key: 'laptop', count: 7 },
    ])
  })

  it('keeps shops, kinds and days apart', async () => {
    await store.addDemand(
      batch([
        { count: 5 },
        { shopId: 'other', count: 50 },
        { kind: 'code', count: 6 },
        { day: '2026-04-01', count: 500 },
        { day: '2026-02-28', count: 500 },
      ]),
    )
    const { totals } = await store.demand('shop', MARCH)
    expect(totals.map(({ kind: each, count }) => [each, count]).sort()).toEqual([
      ['appliance', 5],
      ['code', 6],
    ])
    expect((await store.demand('shop', { from: '2026-02-28', to: '2026-03-30' })).totals).toHaveLength(2)
  })

  it('equals brute force for any period', async () => {
    const rowArb = fc.record({
      day: fc.integer({ min: 0, max: 100 }).map((days) => addDays('2026-01-20', days)),
      kind: fc.constantFrom('appliance' as const, 'combination' as const, 'outcome' as const),
      key: fc.constantFrom('a', 'b', 'c d'),
      count: fc.integer({ min: 1, max: 9 }),
    })
    const sent: DemandRow[] = []
    await fc.assert(
      fc.asyncProperty(
        fc.array(rowArb, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        async (rows, first, length) => {
          const added = batch(rows)
          const unique = new Map(added.rows.map((row) => [`${row.day} ${row.kind} ${row.key}`, row]))
          await store.addDemand({ ...added, rows: [...unique.values()] })
          sent.push(...unique.values())
          const from = addDays('2026-01-20', first)
          const period = { from, to: addDays(from, length) }
          const expected = new Map<string, number>()
          for (const row of sent) {
            if (row.day < period.from || row.day > period.to) continue
            const name = `${row.kind} ${row.key}`
            expected.set(name, (expected.get(name) ?? 0) + row.count)
          }
          const found = await store.demand('shop', period)
          const combinations = [...expected].filter(([name]) => name.startsWith('combination'))
          const told = combinations.filter(([, count]) => count >= 5)
          expect(
            new Map(found.totals.map(({ kind: each, key, count }) => [`${each} ${key}`, count])),
          ).toEqual(new Map([...expected].filter(([name]) => !name.startsWith('combination'))))
          expect(new Map(found.combinations.map(({ key, count }) => [`combination ${key}`, count]))).toEqual(
            new Map(told),
          )
          const sum = (entries: readonly (readonly [string, number])[]) =>
            entries.reduce((total, [, count]) => total + count, 0)
          expect(found.otherCombinations).toBe(sum(combinations) - sum(told))
          expect(found.outcomes.reduce((total, { count }) => total + count, 0)).toBe(
            sum([...expected].filter(([name]) => name.startsWith('outcome'))),
          )
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)

  it('merges rare combinations of days and months that are over, and loses none of them', async () => {
    const combination = (key: string, day: string, count: number) =>
      ({ kind: 'combination', key, day, count }) as const
    await store.addDemand(
      batch([
        combination('a b', '2026-03-10', 3),
        combination('a b', '2026-03-11', 3),
        combination('a c', '2026-03-10', 4),
        combination('a d', '2026-03-10', 9),
        combination('a e', '2026-04-09', 2),
      ]),
    )
    await store.tidyDemand('2026-04-10')
    await store.tidyDemand('2026-04-10')
    const month = await store.demand('shop', MARCH)
    expect(month.combinations).toEqual([
      { key: 'a d', count: 9 },
      { key: 'a b', count: 6 },
    ])
    expect(month.otherCombinations).toBe(4)
    const days = await store.demand('shop', { from: '2026-03-09', to: '2026-03-12' })
    expect(days.combinations).toEqual([{ key: 'a d', count: 9 }])
    expect(days.otherCombinations).toBe(10)
    // What is not settled yet is left to grow.
    await store.addDemand(batch([combination('a e', '2026-04-09', 3)]))
    expect((await store.demand('shop', { from: '2026-04-09', to: '2026-04-09' })).combinations).toEqual([
      { key: 'a e', count: 5 },
    ])
  })

  it('deletes what is older than is kept', async () => {
    await store.addDemand(batch([{ day: '2023-01-15', count: 5 }, { count: 5 }]))
    await store.tidyDemand(addDays('2023-01-15', DEMAND_DAYS_KEPT + 40))
    expect((await store.demand('shop', { from: '2023-01-01', to: '2023-01-31' })).totals).toEqual([])
    expect((await store.demand('shop', MARCH)).totals).toHaveLength(1)
  })
})

describe('the recorder', () => {
  const range = makeRange([makeInverter({ sku: 'A', continuousW: 1000 })])
  const NOON = Date.parse('2026-03-10T12:00:00Z')

  function answered(appliances: readonly string[], on: PreparedRange = range): AnsweredRequest {
    const planned = planFor(on, {
      loads: appliances.map((appliance, index) => ({ id: `${index}`, appliance })),
      supply: { nominalV: 12 },
      preferences: { inStockOnly: true },
    })
    if (!planned.ok) throw new Error('the plan is faulty')
    const { choice, outcome } = sizeFor(on, planned.plan)
    return { call: 'sizing', plan: planned.plan, choice, outcome }
  }

  /** A store that fails as long as it is told to, and keeps what it has taken by batch. */
  function fakeStore() {
    const taken = new Map<string, DemandBatch>()
    const state = { failing: false, losesReply: false, calls: 0 }
    return {
      state,
      tidied: [] as string[],
      async addDemand(sent: DemandBatch) {
        state.calls += 1
        if (state.failing) throw new StoreUnavailableError(new Error('gone'))
        taken.set(sent.id, sent)
        if (state.losesReply) throw new StoreUnavailableError(new Error('reply lost'))
      },
      async tidyDemand(today: string) {
        this.tidied.push(today)
      },
      counts() {
        const counts = new Map<string, number>()
        for (const { rows } of taken.values()) {
          for (const { kind, key, count } of rows) {
            counts.set(`${kind} ${key}`, (counts.get(`${kind} ${key}`) ?? 0) + count)
          }
        }
        return counts
      },
    }
  }

  let recorder: DemandRecorder | undefined
  afterEach(() => recorder?.close())

  function recorderOn(store: ReturnType<typeof fakeStore>, logged: string[] = []): DemandRecorder {
    recorder = demandRecorder({
      store,
      now: () => NOON,
      everyMs: 1e9,
      log: (level, message) => logged.push(`${level} ${message}`),
    })
    return recorder
  }

  it('writes nothing until it is flushed, and then everything', async () => {
    const store = fakeStore()
    const counting = recorderOn(store)
    counting.record(range, answered(['laptop', 'monitor']))
    counting.record(range, answered(['monitor', 'laptop']))
    expect(store.state.calls).toBe(0)
    await counting.flush()
    expect(Object.fromEntries(store.counts())).toEqual({
      'outcome sizing fits': 2,
      'voltage 12': 2,
      'appliance laptop': 2,
      'appliance monitor': 2,
      'combination laptop monitor': 2,
      'choice ["A"]': 2,
    })
  })

  it('equals brute force on random small ranges and requests', async () => {
    const unitArb = fc.record({
      continuousW: fc.integer({ min: 100, max: 3000 }),
      waveform: fc.constantFrom('pure-sine' as const, 'modified-sine' as const),
      inputNominalV: fc.constantFrom(12 as const, 24 as const),
      inStock: fc.boolean(),
    })
    const requestArb = fc.record({
      appliances: fc.array(
        fc.constantFrom('laptop', 'fridge', 'toaster', 'electric-kettle', 'angle-grinder', undefined),
        { minLength: 1, maxLength: 4 },
      ),
      nominalV: fc.constantFrom(undefined, 12 as const, 24 as const, 48 as const),
    })
    // ISO 3:1973, basic series R10, from memory.
    const r10 = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8]
    const edges = [10, 100, 1000, 10_000].flatMap((decade) => r10.map((step) => Math.round(step * decade)))
    const bucket = (watts: number) => edges.find((edge) => edge >= watts)
    await fc.assert(
      fc.asyncProperty(
        fc.array(unitArb, { minLength: 1, maxLength: 5 }),
        fc.array(requestArb, { minLength: 1, maxLength: 12 }),
        async (units, requests) => {
          const random = makeRange(
            units.map((unit, index) =>
              makeInverter({ sku: `U${index}`, ...unit, cutOffV: 0.875 * unit.inputNominalV }),
            ),
          )
          const store = fakeStore()
          const counting = recorderOn(store)
          const expected: string[] = []
          for (const { appliances, nominalV } of requests) {
            const planned = planFor(random, {
              loads: appliances.map((appliance, index) =>
                appliance === undefined
                  ? { id: `${index}`, rating: { basis: 'input-watts', watts: 2500 } }
                  : { id: `${index}`, appliance },
              ),
              supply: nominalV === undefined ? undefined : { nominalV },
              preferences: { inStockOnly: true },
            })
            if (!planned.ok) throw new Error('the plan is faulty')
            const { plan } = planned
            const { choice, outcome } = sizeFor(random, plan)
            counting.record(random, { call: 'sizing', plan, choice, outcome })
            expected.push(`outcome sizing ${outcome}`, `voltage ${nominalV ?? 'not-stated'}`)
            const names = [...new Set(appliances.map((appliance) => appliance ?? '*'))].sort()
            expected.push(...names.map((name) => `appliance ${name}`))
            if (names.length > 1) expected.push(`combination ${names.join(' ')}`)
            const fitting = choice.verdicts.filter(({ fits }) => fits)
            if (fitting.length > 0) {
              const skus = fitting.slice(0, 4).map(({ inverter }) => inverter.unit.sku)
              expected.push(`choice ${JSON.stringify(skus)}`)
              continue
            }
            const { supply, requiredContinuousW } = plan.need
            const judged = choice.verdicts
              .filter(({ inverter }) => inverter.unit.inputNominalV === supply.nominalV)
              .map(({ findings }) => findings.filter(({ severity }) => severity === 'fail'))
            const fewest = Math.min(...judged.map((failing) => failing.length))
            const nearest = judged.filter((failing) => failing.length === fewest).at(-1)
            const codes = nearest?.map(({ code }) => code) ?? ['input-voltage-mismatch']
            expected.push(...codes.map((code) => `code ${code}`))
            const onlyStock = judged.some((failing) => failing.every(({ code }) => code === 'out-of-stock'))
            const { runningVA, startingW, waveform } = plan.demand
            const watts = bucket(Math.max(requiredContinuousW, runningVA))
            expected.push(
              `unmet ${supply.nominalV} ${watts} ${bucket(startingW)} ${waveform} ${onlyStock ? 'stock' : 'size'}`,
            )
          }
          await counting.close()
          const tally = new Map<string, number>()
          for (const name of expected) tally.set(name, (tally.get(name) ?? 0) + 1)
          expect(store.counts()).toEqual(tally)
        },
      ),
      { numRuns: 60 },
    )
  }, 60_000)

  it('keeps what could not be written, counts on, and says so once', async () => {
    const store = fakeStore()
    const logged: string[] = []
    const counting = recorderOn(store, logged)
    store.state.failing = true
    for (let turn = 0; turn < 3; turn += 1) {
      counting.record(range, answered(['laptop']))
      await counting.flush()
    }
    store.state.failing = false
    await counting.flush()
    await counting.flush()
    expect(store.counts().get('appliance laptop')).toBe(3)
    expect(logged).toEqual([
      'error Demand is kept in memory: The store is unavailable: gone',
      'info Demand is written again.',
    ])
  })

  it('counts once what was written although the answer was lost', async () => {
    const store = fakeStore()
    const counting = recorderOn(store)
    store.state.losesReply = true
    counting.record(range, answered(['laptop']))
    await counting.flush()
    store.state.losesReply = false
    counting.record(range, answered(['laptop']))
    await counting.flush()
    await counting.flush()
    expect(store.counts().get('appliance laptop')).toBe(2)
  })

  it('writes the last of it when it is closed, though the store fails at first', async () => {
    const store = fakeStore()
    const counting = recorderOn(store)
    counting.record(range, answered(['laptop']))
    store.state.failing = true
    setTimeout(() => {
      store.state.failing = false
    }, 400)
    await counting.close()
    expect(store.counts().get('appliance laptop')).toBe(1)
  })

  it('says what is lost where the store stays away', async () => {
    const store = fakeStore()
    const logged: string[] = []
    const counting = recorderOn(store, logged)
    counting.record(range, answered(['laptop']))
    store.state.failing = true
    await counting.close()
    expect(logged.at(-1)).toBe('error 4 counts of demand could not be written and are lost.')
    recorder = undefined
  })

  it('counts between requests once many wait', async () => {
    const store = fakeStore()
    const counting = recorderOn(store)
    const request = answered(['laptop'])
    for (let sent = 0; sent < 1000; sent += 1) {
      counting.record(range, request)
      if (sent % 300 === 0) await new Promise((resolve) => setImmediate(resolve))
    }
    await counting.flush()
    expect(store.counts().get('appliance laptop')).toBe(1000)
  })

  it('counts nothing for a shop that has switched it off', async () => {
    const store = fakeStore()
    const quiet = makeRange([makeInverter({ sku: 'A' })], { shop: { ...TEST_SHOP, countDemand: false } })
    const counting = recorderOn(store)
    counting.record(quiet, answered(['laptop'], quiet))
    await counting.flush()
    expect(store.counts().size).toBe(0)
  })

  it('never keeps what a shopper calls a thing, nor its figures', async () => {
    const store = fakeStore()
    const planned = planFor(range, {
      loads: [
        {
          id: 'my-secret-id',
          name: 'Anna’s lamp, 12 High Street',
          quantity: 3,
          rating: { basis: 'label-text', text: 'ACME 230V 50Hz 137W anna@example.org' },
        },
        { id: 'second', appliance: 'laptop', name: 'Anna’s laptop', minutesPerDay: 77 },
      ],
      supply: { nominalV: 12 },
      preferences: { inStockOnly: true },
    })
    if (!planned.ok) throw new Error('the plan is faulty')
    const { choice, outcome } = sizeFor(range, planned.plan)
    const counting = recorderOn(store)
    counting.record(range, { call: 'sizing', plan: planned.plan, choice, outcome })
    await counting.flush()
    const text = JSON.stringify([...store.counts().keys()])
    expect(text).not.toMatch(/anna|secret|lamp|street|acme|137|77/i)
    expect(store.counts().get('combination * laptop')).toBe(1)
  })

  it('tidies up once a day', async () => {
    const store = fakeStore()
    const counting = recorderOn(store)
    await counting.flush()
    await counting.flush()
    expect(store.tidied).toEqual(['2026-03-10'])
  })
})
