import { z } from 'zod/v3'
import { FINDING_CODES } from '../../core/advice/finding-codes.ts'
import { WAVEFORM_NEEDS } from '../../core/loads/vocabulary.ts'
import { UNMET_CAUSES } from '../../core/range/advice/unmet.ts'
import { INVERTER_WAVEFORMS } from '../../core/range/vocabulary.ts'
import { outcomeSchema } from './answers.ts'

/** Calls that are counted. */
export const DEMAND_CALLS = ['sizing', 'fit'] as const
export type DemandCall = (typeof DEMAND_CALLS)[number]

/** Days that one answer may cover. */
export const DEMAND_DAYS_MAX = 800

/** New sizes that may be asked for. */
export const NEW_SIZES_MAX = 5

const daySchema = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a day such as "2026-03-31"')

export const demandQuerySchema = z
  .object({
    from: daySchema.optional().describe('First day, in UTC. Left out: 29 days before `to`.'),
    to: daySchema.optional().describe('Last day, in UTC. Left out: today.'),
    newSizes: z
      .string()
      .regex(/^[1-5]$/, `a whole number from 1 to ${NEW_SIZES_MAX}`)
      .optional()
      .describe(`How many new sizes to look for, 1 to ${NEW_SIZES_MAX}; 3 where left out.`),
  })
  .strict()

const othersSchema = z
  .number()
  .describe('What was counted fewer than five times each, or stands past the 500th place, together.')

function countsSchema<T extends z.ZodRawShape>(shape: T) {
  return z
    .object({
      entries: z.array(z.object({ ...shape, count: z.number().int().min(5) }).strict()),
      others: othersSchema,
    })
    .strict()
}

/** Told exactly from five up, and where it is 0. */
const fewSchema = z.number().nullable().describe('Null for one to four.')

const methodSchema = z
  .object({
    name: z.enum(['exact', 'greedy']),
    guaranteeFraction: z
      .number()
      .nullable()
      .describe('Share of the best choice that is certain; null where no bound is known.'),
    source: z.string(),
    sourceDocument: z.string(),
  })
  .strict()

const adviceSchema = z
  .object({
    surgeMultiple: z
      .number()
      .describe("Surge over continuous power that a new unit is taken to have: the most of the range's own."),
    newSizes: z
      .array(
        z
          .object({
            most: z.number().describe('New sizes at most.'),
            sizes: z.array(
              z
                .object({
                  nominalV: z.number(),
                  continuousW: z.number(),
                  surgeW: z.number(),
                  waveform: z.enum(INVERTER_WAVEFORMS),
                  served: z.number().describe('Requests that it would serve beside the others.'),
                })
                .strict(),
            ),
            served: z.number(),
            method: methodSchema,
          })
          .strict(),
      )
      .describe('The sizes that would serve most, one at most, two at most, and so on.'),
    unmetBySize: fewSchema.describe('Requests that a new size could serve. Null for one to four.'),
    drop: z
      .array(
        z
          .object({
            skus: z.array(z.string()),
            lost: fewSchema,
            moved: fewSchema,
            method: methodSchema,
          })
          .strict(),
      )
      .describe(
        'The unit, the two and the three whose going costs least: requests lost, then requests moved to another unit. Only units in stock; one that came during the period has had less time to be asked for.',
      ),
  })
  .strict()

/** Reply of GET demand. */
export const demandReplySchema = z
  .object({
    from: z.string(),
    to: z.string(),
    counting: z.boolean().describe('False where the shop has switched counting off.'),
    requests: fewSchema.describe('Sizing and fit calls that were answered. Null for one to four.'),
    days: z
      .array(
        z
          .object({
            day: z.string(),
            requests: fewSchema,
            outcomes: z.array(z.object({ outcome: outcomeSchema, count: z.number().int().min(5) }).strict()),
          })
          .strict(),
      )
      .describe('Days with a request.'),
    outcomes: countsSchema({ call: z.enum(DEMAND_CALLS), outcome: outcomeSchema }),
    appliances: countsSchema({
      appliance: z.string().nullable().describe('Null: something that is not in the list.'),
      name: z.string().nullable(),
    }).describe('Requests that each appliance stands in.'),
    combinations: countsSchema({
      appliances: z.array(z.string()).describe('Sorted, without quantities.'),
      withUnlisted: z.boolean().describe('Whether something that is not in the list is among them.'),
    }).describe('Of two appliances up to eight. Rare ones of days and months that are over are kept merged.'),
    units: countsSchema({ sku: z.string(), name: z.string().nullable() }).describe(
      'How often each unit was named as the smallest that fits.',
    ),
    codes: countsSchema({ code: z.enum(FINDING_CODES) }).describe(
      'Why the unit that was asked about, or else the one that came nearest, does not do.',
    ),
    voltages: countsSchema({ nominalV: z.number().nullable().describe('Null: not stated.') }),
    unmet: countsSchema({
      nominalV: z.number(),
      continuousW: z.number().describe('Upper end of a bucket, headroom included. [W]'),
      surgeW: z.number().describe('Upper end of a bucket. [W]'),
      waveform: z.enum(WAVEFORM_NEEDS),
      cause: z.enum(UNMET_CAUSES).describe('Whether size, stock, wishes or the connection is in the way.'),
    }).describe('What nothing in the range fits. Buckets are the R10 series of ISO 3.'),
    advice: adviceSchema,
  })
  .strict()
export type DemandReply = z.output<typeof demandReplySchema>
