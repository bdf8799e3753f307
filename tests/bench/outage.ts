import { type ChildProcess, spawn } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { Agent, request } from 'undici'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { freePort, startPostgres } from '../support/postgres.ts'
import { addBenchKey } from './bench-key.ts'

/**
 * Two instances on one PostgreSQL under load, and the database stopped for 30 s: counts the sizings that failed,
 * and measures how soon a range is seen by the other instance, before and after.
 *
 * `npx tsx tests/bench/outage.ts [seconds]`; exit status 1 where a sizing failed or something did not heal.
 */
const OUTAGE_S = Number(process.argv[2] ?? 30)
const CALLERS = 4
const PUSHES = 20

const postgres = await startPostgres()
const url = await postgres.newDatabase()
const store = await openStore(url, 10)
await seedDemoShops(store)
const secret = await addBenchKey(store, 'kingcup')
await store.close()
const agent = new Agent({ connections: CALLERS * 2 })
const [one, two] = await Promise.all([startInstance(), startInstance()])
let failed = false
let going = true
try {
  console.log(`seen by the other instance after ${await describePushes('before')}`)
  const statuses = new Map<string, number>()
  const callers = Array.from({ length: CALLERS }, async (_, index) => {
    while (going) {
      const status = await size(index % 2 === 0 ? one.origin : two.origin)
      statuses.set(status, (statuses.get(status) ?? 0) + 1)
    }
  })
  await pause(2000)
  await postgres.stop()
  const stoppedAt = performance.now()
  console.log(`write during the outage: ${await push(one.origin, 'during')}; ${await readiness(one.origin)}`)
  await pause(OUTAGE_S * 1000 - (performance.now() - stoppedAt))
  console.log(`still: ${await push(two.origin, 'during')}; ${await readiness(two.origin)}`)
  await postgres.start()
  const startedAt = performance.now()
  while ((await push(one.origin, 'healed')) !== 200 || (await nameAt(two.origin)) !== 'healed')
    await pause(20)
  console.log(
    `healed, and the other instance too, ${Math.round(performance.now() - startedAt)} ms after the return`,
  )
  going = false
  await Promise.all(callers)
  console.log('sizings by status:', Object.fromEntries(statuses))
  failed = statuses.size !== 1 || !statuses.has('200')
  console.log(`seen by the other instance after ${await describePushes('after')}`)
} finally {
  going = false
  one.child.kill('SIGTERM')
  two.child.kill('SIGTERM')
  await agent.destroy()
  await postgres.close()
}
process.exit(failed ? 1 : 0)

async function startInstance(): Promise<{ child: ChildProcess; origin: string }> {
  const port = await freePort()
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', fileURLToPath(new URL('../../server/main.ts', import.meta.url))],
    {
      env: {
        ...process.env,
        STORE_URL: url,
        PORT: String(port),
        LOG_LEVEL: 'silent',
        // All the load comes from one address, which the service would soon answer with 429.
        CALLS_PER_ADDRESS: '1000000',
        CALLS_PER_KEY: '1000000',
      },
      stdio: ['ignore', 'ignore', 'inherit'],
    },
  )
  const origin = `http://127.0.0.1:${port}`
  for (;;) {
    if ((await readiness(origin).catch(() => '')) === 'ready') return { child, origin }
    await pause(100)
  }
}

async function size(origin: string): Promise<string> {
  try {
    const { statusCode, body } = await request(`${origin}/v1/shops/kingcup/sizing`, {
      dispatcher: agent,
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(sizingRequestExample),
    })
    await body.dump()
    return String(statusCode)
  } catch (error) {
    return error instanceof Error ? error.message : 'failed'
  }
}

async function push(origin: string, name: string): Promise<number> {
  const { statusCode, body } = await request(`${origin}/v1/shops/kingcup/range`, {
    dispatcher: agent,
    method: 'PUT',
    headers: { 'content-type': 'application/json', authorization: `Bearer ${secret}`, 'if-match': '*' },
    body: JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, name } }),
  })
  await body.dump()
  return statusCode
}

async function nameAt(origin: string): Promise<string> {
  const { body } = await request(`${origin}/v1/shops/kingcup/setup`, { dispatcher: agent })
  const setup = (await body.json()) as { readonly shop: { readonly name: string } }
  return setup.shop.name
}

async function readiness(origin: string): Promise<string> {
  const { body } = await request(`${origin}/readyz`, { dispatcher: agent })
  return ((await body.json()) as { readonly status: string }).status
}

async function describePushes(word: string): Promise<string> {
  const delays: number[] = []
  for (let index = 0; index < PUSHES; index += 1) {
    const name = `${word} ${index}`
    await push(one.origin, name)
    const from = performance.now()
    while ((await nameAt(two.origin)) !== name) await pause(2)
    delays.push(performance.now() - from)
  }
  delays.sort((a, b) => a - b)
  return `${Math.round(delays[PUSHES / 2] ?? 0)} ms (median), ${Math.round(delays.at(-1) ?? 0)} ms (longest) of ${PUSHES}`
}
