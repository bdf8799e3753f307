import type { Kysely, Transaction } from 'kysely'
import type { Store } from './store.ts'
import type { Tables } from './tables.ts'

/** What differs between the two databases. */
export interface Backend {
  readonly kind: Store['kind']
  readonly db: Kysely<Tables>
  /** Whether an error means "not now" rather than a mistake of ours. */
  isUnavailable(error: unknown): boolean
  /** Tells other instances of a change, as part of the transaction that makes it. */
  announce(transaction: Transaction<Tables>): Promise<void>
  /** Calls `listener` when another instance, or this one, has announced. */
  listen(listener: () => void): void
  close(): Promise<void>
}
