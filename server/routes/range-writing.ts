import type { FastifyReply } from 'fastify'
import type { RangeWriteAnswer } from '../../shared/contract/range-admin.ts'
import { FAULTS_LISTED, sendProblem } from '../plugins/problems.ts'
import { isUnchanged } from '../range-files/diff.ts'
import type { ReadRange } from '../range-files/draft.ts'
import type { FileFault } from '../range-files/read-csv-list.ts'
import type { Live } from '../store/live.ts'
import type { Store, StoredVersion } from '../store/store.ts'
import { etagOf, type Making, versionOf } from '../store/versions.ts'
import { sendStale } from './conditional.ts'

/** What the routes of the range work with. */
export interface RangeServices {
  readonly store: Store
  readonly live: Live
}

/**
 * Puts a range in force, or only compares it with the one that is, and answers with the changes.
 *
 * @param services - The store and the memory
 * @param reply - Receives the answer
 * @param write - The version in force, the new range, who writes it, and whether to write at all
 * @returns The reply, sent
 */
export async function putInForce(
  { store, live }: RangeServices,
  reply: FastifyReply,
  write: {
    readonly inForce: StoredVersion
    readonly range: ReadRange
    readonly making: Making
    readonly dryRun: boolean
  },
): Promise<FastifyReply> {
  const { inForce, range, dryRun } = write
  const { changes } = range
  const answer: RangeWriteAnswer = {
    version: inForce.version,
    previousVersion: inForce.version,
    written: false,
    dryRun,
    changes,
  }
  if (dryRun || isUnchanged(changes)) return reply.header('etag', etagOf(inForce)).send(answer)
  const outcome = await store.writeRange(versionOf(range, write.making), inForce.version)
  if (!outcome.ok) {
    const now = await store.version(inForce.shopId)
    return now === undefined ? sendProblem(reply, 'unknown-shop') : sendStale(reply, now, inForce)
  }
  live.take(outcome.stored)
  return reply
    .header('etag', etagOf(outcome.stored))
    .send({ ...answer, version: outcome.stored.version, written: true })
}

/**
 * Answers with every fault of a range file.
 *
 * @param reply - The reply to send on
 * @param told.faults - At least one
 * @param told.count - How many there are, listed or not
 * @returns The reply, sent
 */
export function sendFaults(
  reply: FastifyReply,
  { faults, count }: { readonly faults: readonly FileFault[]; readonly count: number },
): FastifyReply {
  const rest = count > FAULTS_LISTED ? `; the first ${FAULTS_LISTED} are listed` : ''
  return sendProblem(reply, 'contract-broken', {
    detail: `${count === 1 ? '1 fault' : `${count} faults`}${rest}. The range in force is unchanged.`,
    errors: faults,
  })
}
