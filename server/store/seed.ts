import { readRange } from '../../shared/range-reading.ts'
import bentcreek from '../demo/bentcreek.json' with { type: 'json' }
import kingcup from '../demo/kingcup.json' with { type: 'json' }
import { FaultyRangeError } from './ranges.ts'
import type { Store } from './store.ts'
import { newVersion } from './versions.ts'

const DEMO_DOCUMENTS: Readonly<Record<string, unknown>> = {
  'kingcup.json': kingcup,
  'bentcreek.json': bentcreek,
}

/**
 * Fills an empty store with the demo shops. In a store that has them, a demo range that nobody has changed
 * follows the one that this release ships.
 *
 * @param store - The store
 * @throws FaultyRangeError where a shipped document breaks the contract
 * @throws StoreUnavailableError where the store can't be read or written
 */
export async function seedDemoShops(store: Store): Promise<void> {
  const heads = await store.heads()
  const onlyDemo = heads.every(({ origin }) => origin === 'seed')
  for (const [file, document] of Object.entries(DEMO_DOCUMENTS)) {
    const reading = readRange(document)
    if (!reading.ok) {
      throw new FaultyRangeError(
        reading.faults.map(({ pointer, message }) => `${file}${pointer}: ${message}`),
      )
    }
    const version = newVersion(reading.range, { author: 'demo', origin: 'seed' })
    const head = heads.find(({ shopId }) => shopId === version.shopId)
    if (head === undefined) {
      if (onlyDemo) await store.createShop(version)
    } else if (head.origin === 'seed' && head.digest !== version.digest) {
      await store.writeRange(version, head.version)
    }
  }
}
