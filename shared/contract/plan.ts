import { z } from 'zod/v3'
import { KIT_ROLES } from '../../core/advice/vocabulary.ts'
import {
  chemistrySchema,
  connectionKindSchema,
  idSchema,
  inverterFeatureSchema,
  LIMITS,
  localeSchema,
  moneySchema,
  nameSchema,
  nominalVSchema,
  skuSchema,
  wattsSchema,
} from './primitives.ts'
import { text } from './text.ts'

const powerFactorSchema = z.number().min(0.1).max(1).describe('Power factor (cos phi), 0.1 to 1.')

/** What is known of a load's power. */
export const ratingSchema = z
  .discriminatedUnion('basis', [
    z.object({ basis: z.literal('input-watts'), watts: wattsSchema }).strict(),
    z.object({ basis: z.literal('measured-watts'), watts: wattsSchema }).strict(),
    z.object({ basis: z.literal('cooking-watts'), watts: wattsSchema }).strict(),
    z
      .object({
        basis: z.literal('volts-amps'),
        volts: z.number().positive().max(LIMITS.volts),
        amps: z.number().positive().max(LIMITS.amps),
        powerFactor: powerFactorSchema.optional(),
      })
      .strict(),
    z
      .object({
        basis: z.literal('volt-amperes'),
        voltAmperes: z.number().positive().max(LIMITS.watts),
        powerFactor: powerFactorSchema.optional(),
      })
      .strict(),
    z
      .object({
        basis: z.literal('motor-output'),
        watts: wattsSchema.optional(),
        horsepower: z.number().positive().max(100).optional(),
      })
      .strict(),
    z
      .object({
        basis: z.literal('cooling-capacity'),
        btuPerHour: z.number().min(100).max(200_000),
        eer: z.number().min(2).max(30).optional().describe('Energy efficiency ratio in Btu/h per watt.'),
      })
      .strict(),
    z
      .object({
        basis: z.literal('label-text'),
        text: text().min(1).max(LIMITS.labelCharacters).describe('Text of the rating plate, as printed.'),
      })
      .strict(),
  ])
  .describe('What is known of the power: one of eight bases.')

/** One load as somebody wants to run it. */
export const loadSchema = z
  .object({
    id: idSchema,
    appliance: text().min(1).max(64).optional().describe('Id of an entry of the appliance list.'),
    name: nameSchema.optional(),
    quantity: z
      .number()
      .int()
      .min(1)
      .max(LIMITS.quantity)
      .optional()
      .describe('Identical items, each with this rating. Left out: 1.'),
    minutesPerDay: z.number().min(0).max(1440).optional(),
    rating: ratingSchema.optional(),
    start: z
      .object({
        startingW: z
          .number()
          .positive()
          .max(LIMITS.watts * 10),
        durationS: z.number().positive().max(60).optional(),
      })
      .strict()
      .optional()
      .describe(
        "Starting power of one item where its maker states it; takes the place of the list's figure.",
      ),
  })
  .strict()

/** The loads of a request. */
export const loadsSchema = z.array(loadSchema).min(1).max(LIMITS.loads)

/** Groups of load ids of which only one load runs at a time. */
export const takeTurnsSchema = z
  .array(z.array(idSchema).min(2).max(LIMITS.loads))
  .max(LIMITS.takeTurnsGroups)
  .describe('Groups of load ids; of each group only one load runs at a time. An id stands in at most one.')

/** A battery or bank as the buyer has it. */
export const batterySchema = z
  .object({
    chemistry: chemistrySchema,
    capacityAh: z.number().min(1).max(10_000),
    hourRateH: z.number().min(0.5).max(120).default(20),
    minSocFraction: z.number().min(0).max(0.95).optional(),
    otherRates: z
      .array(
        z
          .object({ hourRateH: z.number().min(0.1).max(120), capacityAh: z.number().min(0.1).max(100_000) })
          .strict(),
      )
      .max(6)
      .optional(),
    startSocFraction: z.number().min(0.01).max(1).default(1),
    temperatureC: z.number().min(-20).max(60).default(25),
    healthFraction: z.number().min(0.3).max(1).default(1),
    maxDischargeA: z.number().positive().max(100_000).optional(),
    internalResistanceOhm: z.number().min(0.000001).max(1).optional(),
  })
  .strict()

/** What feeds the inverter. */
export const supplySchema = z
  .object({
    nominalV: nominalVSchema,
    battery: batterySchema.optional(),
    connection: z
      .object({ kind: connectionKindSchema, limitA: z.number().positive().max(2000).optional() })
      .strict()
      .optional(),
    oneWayLengthM: z
      .number()
      .min(0.1)
      .max(50)
      .optional()
      .describe('From the battery to the inverter, one way. [m] Left out: 2 m is taken and said so.'),
    replaceLeads: z
      .boolean()
      .optional()
      .describe("True: the cable that the answer names is laid instead of the leads in the unit's box."),
    autonomyDays: z
      .number()
      .min(0.5)
      .max(30)
      .optional()
      .describe('Days that the battery is to last without recharge, for its size. Left out: 1.'),
  })
  .strict()

/** What the buyer wants beside power. */
export const preferencesSchema = z
  .object({
    inStockOnly: z.boolean().default(true),
    maxPrice: moneySchema.optional(),
    features: z.array(inverterFeatureSchema).max(10).optional(),
    sku: skuSchema
      .optional()
      .describe(
        'A unit to recommend in place of the smallest; passed over where it does not fit or is not in the range.',
      ),
  })
  .strict()

/** Parts that the buyer has. */
export const ownedPartsSchema = z
  .array(
    z
      .object({
        role: z.enum(KIT_ROLES),
        sku: skuSchema
          .optional()
          .describe('Of this shop. Left out, or no longer in the range: the part is trusted, not checked.'),
        quantity: z.number().int().min(1).max(16).default(1).describe('Pairs of cable, blocks of a battery.'),
      })
      .strict(),
  )
  .max(20)

/** What the buyer says about the kit. */
export const kitWishSchema = z
  .object({
    owned: ownedPartsSchema.optional().describe('Parts that need not be bought.'),
    buyBattery: z
      .boolean()
      .optional()
      .describe(
        'true: the battery of `supply` is what is wanted, not what is there; the kit holds one of that chemistry with at least that capacity.',
      ),
  })
  .strict()
  .describe('What the kit need not hold, and whether a battery is wanted.')

/** Parts of an answer that a caller in a hurry can leave out. */
export const EXTRAS = ['kit', 'what-ifs', 'label-limits'] as const

const planShape = {
  loads: loadsSchema,
  takeTurns: takeTurnsSchema.optional(),
  supply: supplySchema.optional(),
  preferences: preferencesSchema.optional(),
  kit: kitWishSchema.optional(),
  detail: z
    .enum(['brief', 'full'])
    .default('brief')
    .describe('full adds the working and every unit of the range.'),
  locale: localeSchema.optional(),
}

/** Body of POST sizing. */
export const sizingRequestSchema = z
  .object({
    ...planShape,
    include: z
      .array(z.enum(EXTRAS))
      .max(EXTRAS.length)
      .optional()
      .describe('What to answer beside unit, circuit and run time. Left out: all; the others come empty.'),
  })
  .strict()
export type SizingRequest = z.output<typeof sizingRequestSchema>

/** Body of POST fit. */
export const fitRequestSchema = z.object({ ...planShape, sku: skuSchema }).strict()
export type FitRequest = z.output<typeof fitRequestSchema>

const runtimeWattsSchema = z.number().min(0).max(50_000).describe('Watts, 0 to 50,000.')

/** Body of POST runtime. */
export const runtimeRequestSchema = z
  .object({
    power: z
      .discriminatedUnion('basis', [
        z.object({ basis: z.literal('mains'), watts: runtimeWattsSchema }).strict(),
        z.object({ basis: z.literal('battery'), watts: runtimeWattsSchema }).strict(),
        z
          .object({ basis: z.literal('loads'), loads: loadsSchema, takeTurns: takeTurnsSchema.optional() })
          .strict(),
      ])
      .describe('mains: at the outlets; battery: at the battery, no inverter; loads: as for sizing.'),
    sku: skuSchema.optional(),
    inverter: z
      .object({
        continuousW: z.number().min(10).max(20_000),
        efficiencyFullFraction: z.number().min(0.5).max(0.99).optional(),
        idleW: z.number().min(0).max(500).optional(),
        cutOffV: z.number().min(8).max(60).optional(),
      })
      .strict()
      .optional(),
    supply: supplySchema.required({ battery: true }).strict(),
    locale: localeSchema.optional(),
  })
  .strict()
export type RuntimeRequest = z.output<typeof runtimeRequestSchema>
