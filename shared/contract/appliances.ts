import { z } from 'zod/v3'
import {
  APPLIANCE_CATEGORIES,
  START_KINDS,
  THERMAL_KINDS,
  WAVEFORM_NEEDS,
  WAVEFORM_REASONS,
} from '../../core/loads/vocabulary.ts'
import type { SourceId } from '../../core/tables/sources.ts'
import { LIMITS, localeSchema, nameSchema } from './primitives.ts'
import { text } from './text.ts'

/** Ids of sources; that each exists is checked with the rest of a range, so that the contract stays short. */
const sourceIdsSchema = z
  .array(text().max(64) as unknown as z.ZodType<SourceId>)
  .min(1)
  .max(10)
  .describe('Ids of the sources of a figure; a shop’s own figures have "shop-stated".')

function bandSchema(max: number, min = 0) {
  const figure = z.number().min(min).max(max)
  return z
    .object({
      low: figure,
      typical: figure,
      high: figure,
      sourceIds: sourceIdsSchema,
    })
    .strict()
}

const mainsWattsSchema = z
  .object({ at120V: bandSchema(LIMITS.watts), at230V: bandSchema(LIMITS.watts) })
  .strict()

/** An entry of an appliance list. */
export const applianceSchema = z
  .object({
    id: z
      .string()
      .max(64)
      .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'lower-case words joined by hyphens'),
    name: nameSchema,
    synonyms: z.array(nameSchema).max(40),
    category: z.enum(APPLIANCE_CATEGORIES),
    inputW: mainsWattsSchema,
    powerFactor: bandSchema(1, 0.1),
    start: z
      .object({
        kind: z.enum(START_KINDS),
        durationS: z.number().min(0).max(60),
        multiple: bandSchema(30, 1),
        startingW: mainsWattsSchema.optional(),
      })
      .strict(),
    standbyW: bandSchema(1000),
    use: z.object({ minutesPerDay: bandSchema(1440), dutyFraction: bandSchema(1) }).strict(),
    waveform: z
      .object({
        need: z.enum(WAVEFORM_NEEDS),
        reason: z.enum(WAVEFORM_REASONS),
        sourceIds: sourceIdsSchema,
      })
      .strict(),
    thermal: z.enum(THERMAL_KINDS),
    medical: z.boolean(),
    ratedByCookingPower: z.boolean().optional(),
    note: text().max(500).optional(),
  })
  .strict()

/** Query of the addresses that name appliances. */
export const localeQuerySchema = z
  .object({
    locale: localeSchema
      .optional()
      .describe(
        'BCP 47 language tag, such as "de-CH". English where the language is not one of en, de, fr, es.',
      ),
  })
  .strict()

/** Body of GET /v1/appliances. */
export const applianceListSchema = z
  .object({
    appliances: z.array(applianceSchema),
    sources: z.record(
      z
        .object({
          document: z.string(),
          table: z.string().optional(),
          standing: z.enum(['read', 'memory', 'derived', 'common-practice', 'shop']),
          note: z.string().optional(),
        })
        .strict(),
    ),
  })
  .strict()
export type ApplianceList = z.output<typeof applianceListSchema>
