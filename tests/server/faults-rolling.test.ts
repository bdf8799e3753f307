import { setTimeout as pause } from 'node:timers/promises'
import { Agent, request } from 'undici'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { makeKeyId, makeSecret } from '../../server/store/key-secret.ts'
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { type OwnProcess, startProcess } from '../support/own-process.ts'
import { freePort, startPostgres, type TestPostgres } from '../support/postgres.ts'
import { startProxy } from '../support/proxy.ts'
import { storedKey } from '../support/staff-service.ts'

const SHOPPERS = 8

let postgres: TestPostgres
beforeAll(async () => {
  postgres = await startPostgres()
}, 60_000)
afterAll(() => postgres.close())

describe('two instances behind a proxy, each replaced twice under load', () => {
  it('fail no shopper and no import, and lose none', async () => {
    const storeUrl = await postgres.newDatabase()
    const secret = makeSecret()
    const store = await openStore(storeUrl, 10)
    await seedDemoShops(store)
    await store.addKey(storedKey(secret, { id: makeKeyId(), scopes: ['read', 'range'] }))
    const ports = [await freePort(), await freePort()] as const
    const start = (port: number) =>
      startProcess({ STORE_URL: storeUrl, PORT: String(port), DRAIN_SECONDS: '1' })
    const instances: OwnProcess[] = await Promise.all(ports.map(start))
    const proxy = await startProxy(instances.map(({ url }) => url))
    const agent = new Agent({ connections: SHOPPERS + 1 })

    const answers = new Map<string, number>()
    let going = true
    const shoppers = Array.from({ length: SHOPPERS }, async () => {
      while (going) {
        const status = await request(`${proxy.url}/v1/shops/kingcup/sizing`, {
          dispatcher: agent,
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify(sizingRequestExample),
        }).then(
          async ({ statusCode, body }) => {
            await body.dump()
            return String(statusCode)
          },
          (error: Error) => error.message,
        )
        answers.set(status, (answers.get(status) ?? 0) + 1)
        await pause(5)
      }
    })
    let imports = 0
    const desk = (async () => {
      const statuses: number[] = []
      while (going) {
        const { statusCode, body } = await request(`${proxy.url}/v1/shops/kingcup/range`, {
          dispatcher: agent,
          method: 'PUT',
          headers: {
            'content-type': 'application/json',
            authorization: `Bearer ${secret}`,
            'if-match': '*',
          },
          body: JSON.stringify({ ...kingcup, shop: { ...kingcup.shop, name: `import ${imports + 1}` } }),
        })
        await body.dump()
        statuses.push(statusCode)
        imports += 1
        await pause(50)
      }
      return statuses
    })()

    for (let round = 0; round < 2; round += 1) {
      for (const [index, port] of ports.entries()) {
        instances[index]?.child.kill('SIGTERM')
        expect(await instances[index]?.exited).toBe(0)
        instances[index] = await start(port)
        await pause(300)
      }
    }
    going = false
    await Promise.all(shoppers)
    const statuses = await desk
    expect([...answers.keys()]).toEqual(['200'])
    expect(answers.get('200')).toBeGreaterThan(SHOPPERS)
    expect(new Set(statuses)).toEqual(new Set([200]))
    const inForce = await store.version('kingcup')
    expect(inForce?.version).toBe(1 + imports)
    expect(JSON.parse(inForce?.text ?? '{}').shop.name).toBe(`import ${imports}`)

    await agent.close()
    await proxy.close()
    for (const { child } of instances) child.kill('SIGTERM')
    expect(await Promise.all(instances.map(({ exited }) => exited))).toEqual([0, 0])
    await store.close()
  }, 180_000)
})
