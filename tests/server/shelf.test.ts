import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { rangeShelf, type Shelf } from '../../server/store/shelf.ts'
import type { StoredVersion } from '../../server/store/store.ts'

/** The range of a shop that says its version in its name. */
function stored(shopId: string, version: number, text?: string): StoredVersion {
  const document = { ...kingcup, shop: { ...kingcup.shop, id: shopId, name: `version ${version}` } }
  return {
    shopId,
    version,
    digest: `digest ${version}`,
    author: 'test',
    createdAt: '2026-01-15T12:00:00.000Z',
    origin: 'written',
    restoredFrom: null,
    text: text ?? JSON.stringify(document),
  }
}

const nameAt = (shelf: Shelf, shopId: string) => shelf.get(shopId)?.range.document.shop.name
/** Long enough for the threads that pack. */
const packed = () => new Promise((resolve) => setTimeout(resolve, 200))
const noFaults = { onFault: () => expect.unreachable('a sound range was refused') }

describe('a shelf of ranges', () => {
  it('gives back what was put in, packed or not, ready or put away', async () => {
    const bytes = stored('shop-0', 1).text.length
    const shelf = rangeShelf({ readyBytes: 3 * bytes, ...noFaults })
    const shopIds = Array.from({ length: 12 }, (_, index) => `shop-${index}`)
    for (const [index, shopId] of shopIds.entries()) {
      shelf.put(stored(shopId, 1), index % 2 === 0 ? 'checked' : 'unchecked')
    }
    for (let round = 0; round < 3; round += 1) {
      for (const shopId of shopIds) {
        expect(nameAt(shelf, shopId)).toBe('version 1')
        expect(shelf.get(shopId)?.range.document).toMatchObject(JSON.parse(stored(shopId, 1).text))
      }
      await packed()
    }
    expect([shelf.size(), shelf.ids()]).toEqual([12, shopIds])
    expect(shelf.get('shop-99')).toBeUndefined()
  })

  it('keeps ready what is asked for again and again, and puts away what is not', () => {
    const bytes = stored('often', 1).text.length
    const shelf = rangeShelf({ readyBytes: 3.5 * bytes, ...noFaults })
    for (const shopId of ['often', 'once', 'a', 'b', 'c', 'd']) shelf.put(stored(shopId, 1), 'checked')
    const often = shelf.get('often')?.range
    const once = shelf.get('once')?.range
    for (const shopId of ['a', 'b', 'c', 'd']) {
      shelf.get(shopId)
      expect(shelf.get('often')?.range).toBe(often)
    }
    expect(shelf.get('once')?.range).not.toBe(once)
  })

  it('keeps one range ready however large it is', () => {
    const shelf = rangeShelf({ readyBytes: 1, ...noFaults })
    shelf.put(stored('large', 1), 'checked')
    expect(shelf.get('large')).toBe(shelf.get('large'))
  })

  it('holds the last version that was put, whatever was asked for in between', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ shop: fc.nat(2), put: fc.boolean(), pause: fc.boolean() }), { maxLength: 20 }),
        async (steps) => {
          const shelf = rangeShelf({ readyBytes: stored('shop-0', 1).text.length, ...noFaults })
          const last = new Map<string, number>()
          for (const [index, { shop, put, pause }] of steps.entries()) {
            const shopId = `shop-${shop}`
            if (put) {
              shelf.put(stored(shopId, index), index % 2 === 0 ? 'checked' : 'unchecked')
              last.set(shopId, index)
            }
            const version = last.get(shopId)
            expect(nameAt(shelf, shopId)).toBe(version === undefined ? undefined : `version ${version}`)
            expect(shelf.entry(shopId)?.version).toBe(version)
            if (pause) await new Promise((resolve) => setTimeout(resolve, 2))
          }
        },
      ),
      { numRuns: 30 },
    )
  })

  it('tells of an unchecked range that breaks the contract when it is asked for, and holds it no longer', () => {
    const faults: string[] = []
    const shelf = rangeShelf({ onFault: ({ shopId }, reason) => faults.push(`${shopId} ${reason}`) })
    shelf.put(stored('broken', 1, '{"shop":'), 'unchecked')
    expect(shelf.get('broken')).toBeUndefined()
    expect(shelf.size()).toBe(0)
    expect(faults).toHaveLength(1)
  })

  it('lets a check that ends late change nothing of a version that came in the meantime', () => {
    const faults: string[] = []
    const shelf = rangeShelf({ onFault: ({ shopId }) => faults.push(shopId) })
    shelf.put(stored('kingcup', 1), 'unchecked')
    const first = shelf.nextUnchecked()
    if (first === undefined) throw new Error('nothing to check')
    shelf.put(stored('kingcup', 2), 'unchecked')
    shelf.settle(first, { ok: false, reason: 'late' })
    expect([faults, nameAt(shelf, 'kingcup')]).toEqual([[], 'version 2'])
    expect(shelf.nextUnchecked()).toBeUndefined()
  })
})
