import { hashOf, makeKeyId, makeSecret } from '../../server/store/key-secret.ts'
import type { Store } from '../../server/store/store.ts'

/**
 * A key that may read and write a shop's range.
 *
 * @param store - Where it is kept
 * @param shopId - The shop
 * @returns The key itself
 */
export async function addBenchKey(store: Store, shopId: string): Promise<string> {
  const secret = makeSecret()
  await store.addKey({
    id: makeKeyId(),
    shopId,
    name: 'bench',
    secretHash: hashOf(secret),
    scopes: ['read', 'range'],
    createdAt: new Date().toISOString(),
    expiresAt: null,
    revokedAt: null,
    lastUsedAt: null,
  })
  return secret
}
