import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { Agent, request } from 'undici'
import { writeCsvList } from '../../server/range-files/write-csv-list.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { largeRange } from '../support/large-range.ts'
import { addBenchKey } from './bench-key.ts'
import { BENCH_BODIES } from './bodies.ts'
import { buildRelease, inFolder, quantile, startRelease } from './release.ts'

const ROWS = 2000
const ROUNDS = 5
const ROUND_MS = 4000
/** Between two sizings, so that the service is asked steadily and not as fast as it can. [ms] */
const EVERY_MS = 10

/**
 * Prints how much longer sizings of one shop take while lists of 2,000 inverters are imported into another, one after
 * the other: quiet rounds and rounds with imports in turns.
 */
export async function benchImport(): Promise<void> {
  await buildRelease()
  await inFolder(async (folder) => {
    const url = `sqlite:${join(folder, 'shops.db')}`
    const secret = await prepareStore(url)
    const service = await startRelease({ STORE_URL: url, SHED_AFTER_MILLISECONDS: '10000' })
    const importOne = importer(service.url, secret)
    for (let warm = 0; warm < 2; warm += 1) await importOne()
    await sizings(service.url)
    const ratios: { readonly p50: number; readonly p99: number }[] = []
    const quiet: number[] = []
    const busy: number[] = []
    let imports = 0
    for (let round = 0; round < ROUNDS; round += 1) {
      const alone = await sizings(service.url)
      let going = true
      const importing = (async () => {
        for (; going; imports += 1) await importOne()
      })()
      const beside = await sizings(service.url)
      going = false
      await importing
      quiet.push(...alone)
      busy.push(...beside)
      const ratio = (share: number) => quantile(beside, share) / quantile(alone, share)
      ratios.push({ p50: ratio(0.5), p99: ratio(0.99) })
    }
    await service.stop()
    const ms = (values: readonly number[]) =>
      [0.5, 0.99, 1].map((share) => quantile(values, share).toFixed(1)).join(' / ')
    const median = (of: 'p50' | 'p99') =>
      quantile(
        ratios.map((ratio) => ratio[of]),
        0.5,
      ).toFixed(2)
    console.log(
      `import of ${ROWS} rows beside sizings, ${imports} in ${(ROUNDS * ROUND_MS) / 1000} s: median ratio ` +
        `p50 ${median('p50')}, p99 ${median('p99')} [2]; p50 / p99 / longest ${ms(quiet)} ms alone, ${ms(busy)} ms beside`,
    )
  })
}

async function prepareStore(url: string): Promise<string> {
  const store = await openStore(url, 5)
  await seedDemoShops(store)
  const secret = await addBenchKey(store, 'bentcreek')
  await store.close()
  return secret
}

/**
 * Imports the list with two sets of prices in turns, so that each one is written. Both are made beforehand: making one
 * would keep the sizings of this process waiting, not those of the service.
 */
function importer(url: string, secret: string): () => Promise<void> {
  const range = largeRange(ROWS)
  const lists = ['1000.00', '1001.00'].map((price) => {
    const inverters = range.inverters.map(({ includes: _, ...unit }) => ({ ...unit, price }))
    return Buffer.from(writeCsvList({ ...range, inverters }, 'inverters'))
  })
  const agent = new Agent({ connections: 1 })
  let times = 0
  return async () => {
    times += 1
    const { statusCode, body } = await request(`${url}/v1/shops/bentcreek/range?part=inverters`, {
      dispatcher: agent,
      method: 'PUT',
      headers: { 'content-type': 'text/csv', authorization: `Bearer ${secret}`, 'if-match': '*' },
      body: lists[times % lists.length] ?? '',
    })
    await body.dump()
    if (statusCode !== 200) throw new Error(`the import was answered with ${statusCode}`)
  }
}

/** Milliseconds that each sizing took. */
async function sizings(url: string): Promise<readonly number[]> {
  const agent = new Agent({ connections: 8 })
  const asked: Promise<number>[] = []
  const until = performance.now() + ROUND_MS
  while (performance.now() < until) {
    asked.push(sizing(url, agent))
    await pause(EVERY_MS)
  }
  const took = await Promise.all(asked)
  await agent.close()
  return took
}

async function sizing(url: string, agent: Agent): Promise<number> {
  const start = performance.now()
  const { statusCode, body } = await request(`${url}/v1/shops/kingcup/sizing`, {
    dispatcher: agent,
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(BENCH_BODIES.whole),
  })
  await body.dump()
  if (statusCode !== 200) throw new Error(`a sizing was answered with ${statusCode}`)
  return performance.now() - start
}
