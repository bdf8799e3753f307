import { z } from 'zod/v3'
import { APPLIANCE_CATEGORIES } from '../../core/loads/vocabulary.ts'
import { FUSE_STYLES, INVERTER_WAVEFORMS, WIRE_SIZES } from '../../core/range/vocabulary.ts'
import { applianceSchema } from './appliances.ts'
import {
  chemistrySchema,
  connectionKindSchema,
  inverterFeatureSchema,
  LIMITS,
  localeSchema,
  moneySchema,
  nameSchema,
  nominalVSchema,
  skuSchema,
} from './primitives.ts'
import { text } from './text.ts'

const urlSchema = text()
  .max(LIMITS.urlCharacters)
  .regex(/^https?:\/\/[^\s]+$/, 'an http or https address')

const originSchema = z
  .string()
  .max(300)
  .regex(/^https?:\/\/[a-z0-9.-]+(:\d{1,5})?$/, 'an origin such as "https://shop.example"')

const ampsSchema = z.number().positive().max(50_000)

/** American wire gauge sizes as they are written. */
export const awgSchema = z
  .enum(['16', '14', '12', '10', '8', '6', '4', '3', '2', '1', '1/0', '2/0', '3/0', '4/0'])
  .describe('American wire gauge.')

/** The shop's part of a range document. */
export const shopSchema = z
  .object({
    id: z
      .string()
      .max(64)
      .regex(/^[a-z0-9][a-z0-9-]*$/, 'lower-case letters, digits and hyphens'),
    name: nameSchema,
    locale: localeSchema,
    currency: z.string().regex(/^[A-Z]{3}$/, 'an ISO 4217 code such as "GBP"'),
    mains: z
      .object({
        nominalV: z.number().min(100).max(240),
        frequencyHz: z.union([z.literal(50), z.literal(60)]),
      })
      .strict(),
    wireSizes: z.enum(WIRE_SIZES),
    allowedOrigins: z.array(originSchema).max(50),
    policy: z
      .object({
        headroomFraction: z.number().min(0).max(0.5).optional(),
        dropLimitFraction: z.number().min(0.005).max(0.1).optional(),
        notAdvised: z.array(z.enum(APPLIANCE_CATEGORIES)).max(20).optional(),
        socketLimitA: z.number().min(1).max(30).optional(),
        quickConnectorLimitA: z.number().min(10).max(350).optional(),
      })
      .strict()
      .optional(),
    contactUrl: urlSchema.optional(),
    appliances: z.array(applianceSchema).max(200).optional(),
    countDemand: z
      .boolean()
      .optional()
      .describe('Whether what shoppers ask for is counted, without anything personal. Left out: yes.'),
  })
  .strict()

const partShape = {
  sku: skuSchema,
  name: nameSchema,
  price: moneySchema,
  inStock: z.boolean(),
  url: urlSchema.optional(),
  imageUrl: urlSchema.optional(),
}

export const inverterSchema = z
  .object({
    ...partShape,
    continuousW: z.number().min(10).max(20_000),
    continuousVA: z.number().min(10).max(40_000).optional(),
    surgeW: z.number().min(10).max(100_000),
    surgeS: z.number().min(0).max(3600),
    waveform: z.enum(INVERTER_WAVEFORMS),
    inputNominalV: nominalVSchema,
    outputV: z.number().min(90).max(260),
    outputHz: z.union([z.literal(50), z.literal(60)]),
    efficiencyFullFraction: z.number().min(0.5).max(0.99).optional(),
    efficiencyPeakFraction: z.number().min(0.5).max(0.99).optional(),
    idleW: z.number().min(0).max(500).optional(),
    cutOffV: z.number().min(8).max(60).optional(),
    restartV: z.number().min(8).max(60).optional(),
    outlets: z.number().int().min(0).max(20),
    features: z.array(inverterFeatureSchema).max(20),
    connection: z.object({ kind: connectionKindSchema, limitA: ampsSchema.optional() }).strict(),
    includes: z.array(skuSchema).max(20).optional(),
  })
  .strict()

export const rangeBatterySchema = z
  .object({
    ...partShape,
    chemistry: chemistrySchema,
    nominalV: nominalVSchema,
    capacityAh: z.number().min(1).max(5000),
    hourRateH: z.number().min(0.1).max(120),
    otherRates: z
      .array(
        z
          .object({ hourRateH: z.number().min(0.1).max(120), capacityAh: z.number().min(0.1).max(5000) })
          .strict(),
      )
      .max(6)
      .optional(),
    maxDischargeA: ampsSchema.optional(),
    internalResistanceOhm: z.number().min(0.00001).max(1).optional(),
  })
  .strict()

export const cableSchema = z
  .object({
    ...partShape,
    areaMm2: z.number().min(0.5).max(400).optional(),
    awg: awgSchema.optional(),
    lengthM: z.number().min(0.05).max(100),
    insulationC: z.number().min(60).max(200).optional(),
  })
  .strict()

export const fuseSchema = z
  .object({
    ...partShape,
    ratingA: z.number().positive().max(2000),
    style: z.enum(FUSE_STYLES),
    breakingCapacityA: z.number().min(100).max(500_000).optional(),
    voltageV: z.number().min(12).max(1500).optional(),
  })
  .strict()

export const connectorSchema = z
  .object({ ...partShape, kind: connectionKindSchema, limitA: ampsSchema })
  .strict()

/** A shop's range. */
export const rangeDocumentSchema = z
  .object({
    shop: shopSchema,
    inverters: z.array(inverterSchema).min(1).max(LIMITS.partsPerList),
    batteries: z.array(rangeBatterySchema).max(LIMITS.partsPerList),
    cables: z.array(cableSchema).max(LIMITS.partsPerList),
    fuses: z.array(fuseSchema).max(LIMITS.partsPerList),
    connectors: z.array(connectorSchema).max(LIMITS.partsPerList),
  })
  .strict()
