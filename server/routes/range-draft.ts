import type { FastifyReply } from 'fastify'
import type { RangeDocument } from '../../core/range/range-document.ts'
import type { PartList } from '../../shared/contract/range-admin.ts'
import { readRange } from '../../shared/range-reading.ts'
import { sendProblem } from '../plugins/problems.ts'
import { type FileFault, type FileReading, readCsvList } from '../range-files/read-csv-list.ts'

/**
 * Reads the range that a body makes of the one in force.
 *
 * @param body - Parsed JSON, or the bytes of a CSV file
 * @param draft.part - The list that the body holds; left out: it is the whole document
 * @param draft.base - The range in force, for all other lists
 * @returns The range, its faults, or that a CSV file came without naming its list
 */
export function readDraft(
  body: unknown,
  { part, base }: { readonly part: PartList | undefined; readonly base: RangeDocument },
): FileReading | 'part-missing' {
  if (Buffer.isBuffer(body)) {
    return part === undefined ? 'part-missing' : readCsvList({ bytes: body, list: part, base })
  }
  return readRange(part === undefined ? body : { ...base, [part]: body })
}

/**
 * Answers that a CSV file came without naming its list.
 *
 * @param reply - The reply to send on
 * @returns The reply, sent
 */
export function sendPartMissing(reply: FastifyReply): FastifyReply {
  return sendProblem(reply, 'bad-request', {
    detail: 'A CSV file holds one list of parts: name it in the address, such as ?part=cables.',
  })
}

/**
 * The fault of a range that is another shop's.
 *
 * @param shopId - The shop in the address
 * @returns The fault
 */
export function otherShop(shopId: string): FileFault {
  return { pointer: '/shop/id', message: `This must be "${shopId}", as in the address.` }
}
