import { z } from 'zod/v3'

/** Codes of problems: part of the contract. `title` and status are fixed by the code. */
export const PROBLEMS = {
  'unreadable-json': { status: 400, title: 'The body is not readable JSON' },
  'bad-request': { status: 400, title: 'The request is not readable' },
  'key-in-address': { status: 400, title: 'A secret key does not belong in an address' },
  unauthorised: { status: 401, title: 'This needs a valid secret key' },
  'key-in-browser': { status: 403, title: 'A secret key does not belong in a browser' },
  'scope-too-small': { status: 403, title: 'The key may not do this' },
  'not-found': { status: 404, title: 'There is nothing at this address' },
  'unknown-shop': { status: 404, title: 'There is no such shop' },
  'unknown-version': { status: 404, title: 'There is no such version of the range' },
  'unknown-sku': { status: 404, title: 'The range has no such unit' },
  'method-not-allowed': { status: 405, title: 'This address does not take that method' },
  'precondition-failed': { status: 412, title: 'Somebody else has changed the range in the meantime' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'unsupported-media-type': { status: 415, title: 'Send the body as application/json' },
  'contract-broken': { status: 422, title: 'The body does not keep the contract' },
  'precondition-required': { status: 428, title: 'Say which version you have changed' },
  'internal-error': { status: 500, title: 'Something went wrong on our side' },
  'store-unavailable': { status: 503, title: 'Nothing can be stored at the moment' },
  'not-ready': { status: 503, title: 'The service has no range to answer from' },
} as const satisfies Readonly<Record<string, { status: number; title: string }>>
export type ProblemCode = keyof typeof PROBLEMS

/** A problem as RFC 9457 has it, with our code and, for a bad body, every fault by JSON Pointer (RFC 6901). */
export const problemSchema = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.number(),
    code: z.enum(Object.keys(PROBLEMS) as [ProblemCode, ...ProblemCode[]]),
    detail: z.string().optional(),
    instance: z.string().optional(),
    errors: z
      .array(
        z
          .object({
            pointer: z.string(),
            message: z.string(),
            line: z.number().int().optional().describe('Line of a CSV file, from 1.'),
            column: z.number().int().optional().describe('Column of a CSV file, from 1.'),
            header: z.string().optional().describe('The header over that column.'),
          })
          .strict(),
      )
      .optional(),
  })
  .strict()
export type Problem = z.output<typeof problemSchema>
