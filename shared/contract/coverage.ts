import { z } from 'zod/v3'
import { FINDING_CODES } from '../../core/advice/finding-codes.ts'
import { KIT_ROLES } from '../../core/advice/vocabulary.ts'
import { outcomeSchema } from './answers.ts'
import { PART_LISTS } from './range-admin.ts'

const codesSchema = z.array(z.enum(FINDING_CODES))

export const coverageQuerySchema = z
  .object({
    stock: z
      .enum(['in-stock', 'all'])
      .optional()
      .describe('`all` counts parts that are out of stock too. Left out: `in-stock`, as shoppers see it.'),
  })
  .strict()

export const coveragePreviewQuerySchema = coverageQuerySchema
  .extend({
    part: z
      .enum(PART_LISTS)
      .optional()
      .describe('The body is this list of parts, as CSV or as a JSON array; the rest is as in force.'),
  })
  .strict()

const planShape = {
  id: z.string(),
  kind: z.enum(['appliance', 'combination']),
  name: z.string().describe('In plain words, in English; an appliance by its name in the list.'),
}

/** What a range answers to a plan at one supply voltage. */
export const coverageReplyAnswerSchema = z
  .object({
    nominalV: z.number(),
    outcome: outcomeSchema,
    requiredContinuousW: z.number(),
    sku: z.string().nullable().describe('The unit that is recommended; null where none fits.'),
    continuousW: z.number().nullable(),
    overTwice: z.boolean().describe('True where that unit is over twice the need.'),
    codes: codesSchema.describe('Why none fits: what fails at the unit that comes nearest.'),
    nearestSku: z.string().nullable(),
  })
  .strict()

/** Reply of GET coverage. */
export const coverageReplySchema = z
  .object({
    range: z.object({ shopId: z.string(), version: z.number() }).strict(),
    stock: z.enum(['in-stock', 'all']),
    voltages: z.array(z.number()).describe('Supply voltages that the range serves. [V]'),
    plans: z
      .array(
        z
          .object({
            ...planShape,
            loads: z.array(z.object({ appliance: z.string(), quantity: z.number() }).strict()),
            takeTurns: z.array(z.array(z.string())),
            answers: z.array(coverageReplyAnswerSchema),
          })
          .strict(),
      )
      .describe('Combinations first, then each appliance by itself.'),
    units: z.array(
      z
        .object({
          sku: z.string(),
          nominalV: z.number(),
          fits: z.number().describe('Plans that it fits.'),
          recommended: z.number().describe('Plans that it is recommended for.'),
          shadowedBy: z
            .array(z.object({ sku: z.string(), plans: z.number() }).strict())
            .describe('Of a unit that is never recommended: what is, where it would fit.'),
          codes: codesSchema.describe('Of a unit that fits no plan: what fails with every one.'),
        })
        .strict(),
    ),
    gaps: z
      .array(
        z
          .object({
            nominalV: z.number(),
            sku: z.string(),
            continuousW: z.number(),
            lowestNeedW: z.number(),
            highestNeedW: z.number(),
            planIds: z.array(z.string()),
            codes: codesSchema.describe('What rules out the units in between; empty where there are none.'),
          })
          .strict(),
      )
      .describe('Plans whose recommended unit is over twice the need, by unit.'),
    kits: z
      .array(
        z
          .object({
            sku: z.string(),
            missing: z.array(z.enum(KIT_ROLES)),
            batterySkus: z
              .array(z.string())
              .describe('Batteries on which they are missing; empty where the range has none that fits.'),
          })
          .strict(),
      )
      .describe('Units for whose battery circuit the range has no fitting part.'),
    batteries: z
      .array(
        z
          .object({
            sku: z.string(),
            nominalV: z.number(),
            inSeries: z.number(),
            plans: z.number().describe('Plans that it was tried with.'),
            shortPlanIds: z
              .array(z.string())
              .describe('Plans that one string, full and new, does not carry for their time in a day.'),
          })
          .strict(),
      )
      .describe('What one string of each battery carries.'),
  })
  .strict()
export type CoverageReply = z.output<typeof coverageReplySchema>

const totalSchema = z.object({ plans: z.number(), changed: z.number() }).strict()

/** Reply of POST coverage/preview. */
export const coveragePreviewSchema = z
  .object({
    range: z.object({ shopId: z.string(), version: z.number().describe('The version in force.') }).strict(),
    stock: z.enum(['in-stock', 'all']),
    totals: z.object({ combination: totalSchema, appliance: totalSchema }).strict(),
    changed: z
      .array(
        z
          .object({
            ...planShape,
            answers: z.array(
              z
                .object({
                  nominalV: z.number(),
                  before: coverageReplyAnswerSchema.nullable(),
                  after: coverageReplyAnswerSchema.nullable(),
                })
                .strict(),
            ),
          })
          .strict(),
      )
      .describe(
        'Plans whose unit, outcome or reasons change; null where a range does not serve the voltage.',
      ),
    nowNeverRecommended: z.array(z.string()),
    nowRecommended: z.array(z.string()),
  })
  .strict()
export type CoveragePreview = z.output<typeof coveragePreviewSchema>
