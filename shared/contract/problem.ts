import { z } from 'zod/v3'
import { rangeChangesSchema } from './range-admin.ts'

/** Codes of problems: part of the contract. `title` and status are fixed by the code. */
export const PROBLEMS = {
  'unreadable-json': { status: 400, title: 'The body is not readable JSON' },
  'bad-request': { status: 400, title: 'The request is not readable' },
  'malformed-request': { status: 400, title: 'This is not a request by HTTP' },
  'key-in-address': { status: 400, title: 'A secret key does not belong in an address' },
  unauthorised: { status: 401, title: 'This needs a valid secret key' },
  'key-in-browser': { status: 403, title: 'A secret key does not belong in a page of another origin' },
  'scope-too-small': { status: 403, title: 'The key may not do this' },
  'origin-not-allowed': { status: 403, title: 'The shop does not list the origin of this page' },
  'not-found': { status: 404, title: 'There is nothing at this address' },
  'unknown-shop': { status: 404, title: 'There is no such shop' },
  'unknown-version': { status: 404, title: 'There is no such version of the range' },
  'unknown-sku': { status: 404, title: 'The range has no such unit' },
  'method-not-allowed': { status: 405, title: 'This address does not take that method' },
  'request-timeout': { status: 408, title: 'The request took too long to arrive' },
  'precondition-failed': { status: 412, title: 'Somebody else has changed the range in the meantime' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'unsupported-media-type': { status: 415, title: 'Send the body as application/json' },
  'contract-broken': { status: 422, title: 'The body does not keep the contract' },
  'precondition-required': { status: 428, title: 'Say which version you have changed' },
  'rate-limited': { status: 429, title: 'Too many calls for now' },
  'headers-too-large': { status: 431, title: 'The headers are too large' },
  'internal-error': { status: 500, title: 'Something went wrong on our side' },
  'store-unavailable': { status: 503, title: 'Nothing can be stored at the moment' },
  overloaded: { status: 503, title: 'The service is too busy for now' },
  'timed-out': { status: 503, title: 'The answer took too long' },
  'not-ready': { status: 503, title: 'The service has no range to answer from' },
} as const satisfies Readonly<Record<string, { status: number; title: string }>>
export type ProblemCode = keyof typeof PROBLEMS

/** A problem as RFC 9457 has it, with our code and, for a bad body, every fault by JSON Pointer (RFC 6901). */
export const problemSchema = z
  .object({
    type: z
      .string()
      .describe('Address of what there is to know of it: our own reference, or the registered quota type.'),
    title: z.string(),
    status: z.number().int(),
    code: z.enum(Object.keys(PROBLEMS) as [ProblemCode, ...ProblemCode[]]),
    detail: z.string().optional(),
    instance: z.string().describe('Id of the request, as in X-Request-Id.'),
    'violated-policies': z
      .array(z.string())
      .optional()
      .describe('Names of the quotas that are used up, as in RateLimit-Policy.'),
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
    changes: rangeChangesSchema
      .optional()
      .describe('What others have changed since the version that you named in If-Match.'),
  })
  .strict()
export type Problem = z.output<typeof problemSchema>
