import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import autocannon from 'autocannon'
import Database from 'better-sqlite3'
import { request } from 'undici'
import { planFor, sizeFor } from '../../core/sizing.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { openStore } from '../../server/store/open.ts'
import { rangeShelf } from '../../server/store/shelf.ts'
import { BENCH_BODIES } from './bodies.ts'
import { planOf, rangeOf } from './core.ts'
import { buildRelease, inFolder, quantile, type Release, startRelease } from './release.ts'
import { timeCall, timingLine } from './timing.ts'

const SHOPS = [1, 100, 10_000] as const
const ROUNDS = 3
const SECONDS = 3
const STARTS = 5

/** Prints how cost grows with loads, inverters and shops: time, memory, and how long the service takes to start. */
export async function benchGrowth(): Promise<void> {
  benchSizes()
  await benchMemory()
  await buildRelease()
  await inFolder(async (folder) => {
    const urls = new Map<number, string>()
    for (const count of [...SHOPS, 1000]) {
      const file = join(folder, `shops-${count}.db`)
      await fill(file, count)
      urls.set(count, `sqlite:${file}`)
    }
    for (const count of [1, 1000]) await benchStart(count, urls.get(count) ?? '')
    await benchShops(urls)
  })
}

function benchSizes(): void {
  const sized = (loads: number, units: number) => {
    const range = rangeOf(units)
    const input = planOf(loads)
    const timing = timeCall(
      () => {
        const planned = planFor(range, input)
        return planned.ok ? sizeFor(range, planned.plan) : undefined
      },
      50,
      20,
    )
    console.log(timingLine(`growth, core: ${loads} loads, ${units} inverters`, timing))
  }
  for (const loads of [1, 5, 10, 20, 40]) sized(loads, 20)
  for (const units of [10, 50, 100, 200, 500]) sized(5, units)
}

/** A demo range under ids of many shops; the first is `kingcup`. */
function shop(index: number): { readonly id: string; readonly text: string } {
  const id = index === 0 ? 'kingcup' : `shop-${index}`
  return { id, text: JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, id } }) }
}

/** Fills a store in one go: one write for each shop would wait for the disk each time. */
async function fill(file: string, count: number): Promise<void> {
  await (await openStore(`sqlite:${file}`, 5)).close()
  const database = new Database(file)
  const now = new Date().toISOString()
  const addShop = database.prepare('insert into shops (id, version, created_at) values (?, 1, ?)')
  const addVersion = database.prepare(
    `insert into range_versions (shop_id, version, document, digest, author, created_at, origin) values (?, 1, ?, ?, 'bench', ?, 'written')`,
  )
  database.transaction(() => {
    for (let index = 0; index < count; index += 1) {
      const { id, text } = shop(index)
      addShop.run(id, now)
      addVersion.run(id, text, `digest-${index}`, now)
    }
  })()
  database.close()
}

const settings = (url: string) => ({ STORE_URL: url, DEMO_SHOPS: 'false', SHED_AFTER_MILLISECONDS: '10000' })

async function benchStart(count: number, url: string): Promise<void> {
  const took: number[] = []
  for (let start = 0; start < STARTS; start += 1) {
    const from = performance.now()
    const service = await startRelease(settings(url))
    await size(service)
    took.push(performance.now() - from)
    await service.stop()
  }
  const ms = (share: number) => quantile(took, share).toFixed(0)
  console.log(
    `growth, start with ${count} shops: first answer after ${ms(0)} ms (fastest), ${ms(0.5)} ms (median) [500]`,
  )
}

async function size({ url }: Release): Promise<void> {
  const { statusCode, body } = await request(`${url}/v1/shops/kingcup/sizing`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(BENCH_BODIES.whole),
  })
  await body.dump()
  if (statusCode !== 200) throw new Error(`a sizing was answered with ${statusCode}`)
}

async function benchShops(urls: ReadonlyMap<number, string>): Promise<void> {
  const services = new Map<number, Release>()
  for (const count of SHOPS) {
    const service = await startRelease(settings(urls.get(count) ?? ''))
    await settled(service)
    services.set(count, service)
    const memoryBytes = await metric(service, 'process_resident_memory_bytes')
    console.log(
      `growth, ${count} shops: ${(memoryBytes / 1e6).toFixed(0)} MB of memory, all checked and packed`,
    )
  }
  for (const [what, idsOf] of [
    ['one shop asked', () => ['kingcup']],
    ['100 shops asked in turns', (count: number) => idsUpTo(Math.min(100, count))],
    ['all shops asked in turns', idsUpTo],
  ] as const) {
    const rates = new Map<number, number[]>(SHOPS.map((count) => [count, []]))
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const [count, service] of services) {
        rates.get(count)?.push(await rateOf(service, idsOf(count)))
      }
    }
    const best = (count: number) => Math.max(...(rates.get(count) ?? []))
    const told = SHOPS.map(
      (count) => `${count}: ${best(count).toFixed(0)}/s (${(best(count) / best(1)).toFixed(2)})`,
    )
    console.log(`growth, ${what}, best of ${ROUNDS}, ratio to one shop [0.90]: ${told.join(', ')}`)
  }
  for (const service of services.values()) await service.stop()
}

function idsUpTo(count: number): readonly string[] {
  return Array.from({ length: count }, (_, index) => shop(index).id)
}

async function rateOf({ url }: Release, ids: readonly string[]): Promise<number> {
  const result = await autocannon({
    url,
    connections: 16,
    duration: SECONDS,
    requests: ids.map((id) => ({
      method: 'POST' as const,
      path: `/v1/shops/${id}/sizing`,
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(BENCH_BODIES.whole),
    })),
  })
  if (result.non2xx > 0) throw new Error(`${result.non2xx} sizings were not answered with 200`)
  return result.requests.average
}

/** Waits until every range has been checked, and the last of them packed. */
async function settled(service: Release): Promise<void> {
  while ((await metric(service, 'tallywatt_unchecked_shops')) > 0) await pause(500)
  await pause(1000)
}

async function metric({ url }: Release, name: string): Promise<number> {
  const { body } = await request(`${url}/metrics`)
  return Number(new RegExp(`^${name} (\\d+)`, 'm').exec(await body.text())?.[1])
}

/** What a thousand shops take in memory, packed and made ready. */
async function benchMemory(): Promise<void> {
  setFlagsFromString('--expose-gc')
  const collect: () => void = runInNewContext('gc')
  const used = () => {
    collect()
    collect()
    const { heapUsed, external } = process.memoryUsage()
    return { heapUsed, external }
  }
  const shelf = rangeShelf({ readyBytes: Number.POSITIVE_INFINITY, onFault: () => {} })
  const before = used()
  for (let index = 0; index < 1000; index += 1) {
    const { id, text } = shop(index)
    const entry = { shopId: id, version: 1, digest: id, author: 'bench', createdAt: '', restoredFrom: null }
    shelf.put({ ...entry, origin: 'written', text }, 'checked')
  }
  await pause(3000)
  const packed = used()
  for (const id of shelf.ids()) shelf.get(id)
  const ready = used()
  const mb = (now: typeof before) =>
    `${((now.heapUsed - before.heapUsed) / 1e6).toFixed(1)} MB of heap and ${((now.external - before.external) / 1e6).toFixed(1)} MB beside it`
  console.log(`growth, memory for 1,000 shops: packed ${mb(packed)}, ready ${mb(ready)}`)
}
