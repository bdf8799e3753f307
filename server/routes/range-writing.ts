import type { FastifyReply } from 'fastify'
import type { RangeDocument } from '../../core/range/range-document.ts'
import type { RangeWriteAnswer } from '../../shared/contract/range-admin.ts'
import { sendProblem } from '../plugins/problems.ts'
import { isUnchanged, rangeChanges } from '../range-files/diff.ts'
import type { FileFault } from '../range-files/read-csv-list.ts'
import type { Live } from '../store/live.ts'
import type { Store, StoredVersion } from '../store/store.ts'
import { etagOf, type Making, newVersion } from '../store/versions.ts'
import { sendStale } from './conditional.ts'

/** What the routes of the range work with. */
export interface RangeServices {
  readonly store: Store
  readonly live: Live
}

/** Faults listed in one answer; more are counted. */
const FAULTS_LISTED = 500

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
    readonly range: RangeDocument
    readonly making: Making
    readonly dryRun: boolean
  },
): Promise<FastifyReply> {
  const { inForce, range, dryRun } = write
  const changes = rangeChanges(JSON.parse(inForce.text), range)
  const answer: RangeWriteAnswer = {
    version: inForce.version,
    previousVersion: inForce.version,
    written: false,
    dryRun,
    changes,
  }
  if (dryRun || isUnchanged(changes)) return reply.header('etag', etagOf(inForce)).send(answer)
  const outcome = await store.writeRange(newVersion(range, write.making), inForce.version)
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
 * @param faults - At least one
 * @returns The reply, sent
 */
export function sendFaults(reply: FastifyReply, faults: readonly FileFault[]): FastifyReply {
  const listed = faults.slice(0, FAULTS_LISTED)
  const count = faults.length === 1 ? '1 fault' : `${faults.length} faults`
  const rest = faults.length > listed.length ? `; the first ${listed.length} are listed` : ''
  return sendProblem(reply, 'contract-broken', {
    detail: `${count}${rest}. The range in force is unchanged.`,
    errors: [...listed],
  })
}
