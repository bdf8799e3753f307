import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { openStore } from '../../server/store/open.ts'
import { seedDemoShops } from '../../server/store/seed.ts'
import { newVersion } from '../../server/store/versions.ts'
import { readRange } from '../../shared/range-reading.ts'

/**
 * A process to be killed: `seed` fills a store and ends, `write` writes one range after the other and says the
 * number of each version once the store has acknowledged it.
 */
const [mode, url = ''] = process.argv.slice(2)
const store = await openStore(url, 10)
await seedDemoShops(store)
if (mode === 'seed') {
  await store.close()
  process.exit(0)
}
let current = (await store.version('kingcup'))?.version ?? 0
process.stdout.write('ready\n')
for (;;) {
  const next = current + 1
  const reading = readRange({ ...kingcup, shop: { ...kingcup.shop, name: `version ${next}` } })
  if (!reading.ok) throw new Error('the demo range is faulty')
  const outcome = await store.writeRange(
    newVersion(reading.range, { author: `writer ${next}`, origin: 'written' }),
    current,
  )
  if (!outcome.ok) throw new Error(outcome.reason)
  current = outcome.stored.version
  process.stdout.write(`${current}\n`)
}
