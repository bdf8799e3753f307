import { z } from 'zod/v3'

/** What a key may do: read a range and its versions, change a range, read what shoppers asked for. */
export const KEY_SCOPES = ['read', 'range', 'demand'] as const
export type KeyScope = (typeof KEY_SCOPES)[number]

/** The lists of parts of a range document: each can be sent and fetched as a CSV file of its own. */
export const PART_LISTS = ['inverters', 'batteries', 'cables', 'fuses', 'connectors'] as const
export type PartList = (typeof PART_LISTS)[number]

/** Largest body of a range. [bytes] */
export const RANGE_BODY_LIMIT_BYTES = 5 * 1024 * 1024

/** Versions listed in one answer, at most. */
export const VERSIONS_PER_PAGE = 200

const partSchema = z
  .enum(PART_LISTS)
  .optional()
  .describe('One list of parts, as CSV. Left out: the whole document, as JSON.')

export const rangeQuerySchema = z.object({ part: partSchema }).strict()

export const rangeWriteQuerySchema = z
  .object({
    part: partSchema,
    dryRun: z.enum(['true', 'false']).optional().describe('`true` checks and compares, and writes nothing.'),
  })
  .strict()

export const versionsQuerySchema = z
  .object({
    limit: z
      .string()
      .regex(/^([1-9]\d?|1\d\d|200)$/, `a whole number from 1 to ${VERSIONS_PER_PAGE}`)
      .optional()
      .describe(`How many versions, 1 to ${VERSIONS_PER_PAGE}; 50 where left out.`),
    before: z
      .string()
      .regex(/^[1-9]\d{0,8}$/, 'a whole number from 1')
      .optional()
      .describe('Only versions below this number: the last number of the page before.'),
  })
  .strict()

const partRefShape = { list: z.enum(PART_LISTS), sku: z.string(), name: z.string() }

/** What differs between two versions of a range. Parts are told apart by list and SKU. */
export const rangeChangesSchema = z
  .object({
    added: z.array(z.object(partRefShape).strict()),
    removed: z.array(z.object(partRefShape).strict()),
    changed: z.array(
      z
        .object({
          ...partRefShape,
          fields: z.array(
            z
              .object({
                field: z.string(),
                from: z.string().nullable().describe('The old value as text; null where there was none.'),
                to: z.string().nullable().describe('The new value as text; null where there is none.'),
              })
              .strict(),
          ),
        })
        .strict(),
    ),
    reordered: z.array(z.enum(PART_LISTS)).describe('Lists whose parts only stand in another order.'),
    shop: z.array(z.string()).describe("Properties of the shop's own part that differ."),
  })
  .strict()
export type RangeChanges = z.output<typeof rangeChangesSchema>

/** Reply to a write of a range, and to a dry run. */
export const rangeWriteAnswerSchema = z
  .object({
    version: z.number().int().describe('The version in force after this call.'),
    previousVersion: z.number().int().describe('The version that the changes are counted from.'),
    written: z.boolean().describe('False for a dry run, and where nothing differs.'),
    dryRun: z.boolean(),
    changes: rangeChangesSchema,
  })
  .strict()
export type RangeWriteAnswer = z.output<typeof rangeWriteAnswerSchema>

/** Reply of GET range/versions. */
export const rangeVersionsSchema = z
  .object({
    versions: z.array(
      z
        .object({
          version: z.number().int(),
          author: z.string().describe('Name of the key or command that made it.'),
          createdAt: z.string(),
          origin: z.enum(['seed', 'written', 'restored', 'imported', 'pulled']),
          restoredFrom: z.number().int().nullable(),
          inForce: z.boolean(),
        })
        .strict(),
    ),
    nextBefore: z.number().int().nullable().describe('Send as `before` for the next page; null at the end.'),
  })
  .strict()
export type RangeVersions = z.output<typeof rangeVersionsSchema>
