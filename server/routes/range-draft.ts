import type { FastifyInstance, FastifyReply } from 'fastify'
import type { PartList } from '../../shared/contract/range-admin.ts'
import { sendProblem } from '../plugins/problems.ts'
import type { Draft, DraftBody, ReadRange } from '../range-files/draft.ts'
import { RangeReaderError } from '../range-files/range-reader.ts'
import type { FileFault } from '../range-files/read-csv-list.ts'
import type { Live } from '../store/live.ts'
import { sendFaults } from './range-writing.ts'

/**
 * Lets routes of a scope take range files: CSV or JSON, as bytes, for they are read where they keep nobody waiting.
 *
 * @param scope - A part of the service of its own
 */
export function registerDraftBodies(scope: FastifyInstance): void {
  scope.removeContentTypeParser('application/json')
  for (const [type, kind] of [
    ['application/json', 'json'],
    ['text/csv', 'csv'],
  ] as const) {
    scope.addContentTypeParser<Buffer>(type, { parseAs: 'buffer' }, (request, bytes, done) => {
      const contentType = request.headers['content-type'] ?? ''
      done(null, { kind, bytes, contentType } satisfies DraftBody)
    })
  }
}

/** What a caller wants read. */
export interface DraftCall extends Draft {
  readonly shopId: string
  readonly part: PartList | undefined
}

/**
 * Reads the range that a body makes of the one in force, or answers with what is wrong with it.
 *
 * @param live - Whose reader reads
 * @param reply - Receives the problem where there is one
 * @param call - The body, the range in force and the shop in the address
 * @returns The range, or undefined where the problem has been sent
 */
export async function readDraftOr(
  { reader }: Pick<Live, 'reader'>,
  reply: FastifyReply,
  { shopId, ...draft }: DraftCall,
): Promise<ReadRange | undefined> {
  const reading = await reader.readDraft(draft).catch((error: unknown) => {
    if (!(error instanceof RangeReaderError)) throw error
    return { kind: 'unread', error } as const
  })
  switch (reading.kind) {
    case 'part-missing':
      sendPartMissing(reply)
      return undefined
    case 'faults':
      sendFaults(reply, reading)
      return undefined
    case 'refused':
      throw Object.assign(new Error(reading.message), { code: reading.code, statusCode: reading.statusCode })
    case 'unread':
      sendUnread(reply, reading.error)
      return undefined
    case 'range':
      if (reading.shopId === shopId) return reading
      sendFaults(reply, { faults: [otherShop(shopId)], count: 1 })
      return undefined
  }
}

function sendUnread(reply: FastifyReply, error: RangeReaderError): FastifyReply {
  reply.request.log.error({ err: error }, 'a range was not read')
  const detail = `${error.message} The range in force is unchanged.`
  switch (error.reason) {
    case 'busy':
      return sendProblem(reply.header('retry-after', String(retryS())), 'overloaded', { detail })
    case 'slow':
      return sendProblem(reply.header('retry-after', String(retryS())), 'timed-out', { detail })
    case 'ended':
      return sendProblem(reply, 'internal-error', { detail })
  }
}

/** When to come back; spread, so that callers do not come back together. [s] */
function retryS(): number {
  return 2 + Math.floor(Math.random() * 4)
}

function sendPartMissing(reply: FastifyReply): FastifyReply {
  const message = 'A CSV file holds one list of parts: name it in the address, such as ?part=cables.'
  return sendProblem(reply, 'bad-request', { detail: message, errors: [{ pointer: '', message }] })
}

function otherShop(shopId: string): FileFault {
  return { pointer: '/shop/id', message: `This must be "${shopId}", as in the address.` }
}
