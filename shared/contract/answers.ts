import { z } from 'zod/v3'
import { CAUTION_CODES, CAUTION_SEVERITIES } from '../../core/advice/cautions.ts'
import { FINDING_CODES } from '../../core/advice/finding-codes.ts'
import { SEVERITIES } from '../../core/advice/findings.ts'
import {
  CIRCUIT_LIMITS,
  KIT_ROLES,
  KIT_STATES,
  RUNTIME_LIMITS,
  WHAT_IF_KINDS,
} from '../../core/advice/vocabulary.ts'
import { START_KINDS, WAVEFORM_NEEDS } from '../../core/loads/vocabulary.ts'
import { KIT_NOTES, KIT_REASONS } from '../../core/range/kit/kit-types.ts'
import { FUSE_STYLES } from '../../core/range/vocabulary.ts'
import { OUTCOMES } from '../../core/sizing.ts'
import { STEP_CODES } from '../../core/working.ts'
import { supplySchema } from './plan.ts'
import { chemistrySchema, connectionKindSchema } from './primitives.ts'

/** Something a check found, with its sentence. */
export const findingSchema = z
  .object({
    code: z.enum(FINDING_CODES),
    severity: z.enum(SEVERITIES),
    loadIds: z.array(z.string()).optional(),
    values: z.record(z.unknown()),
    message: z.string(),
  })
  .strict()
export type FindingAnswer = z.output<typeof findingSchema>

export const outcomeSchema = z.enum(OUTCOMES)

/** What one load asks for, figures of one item. */
const demandLoadSchema = z
  .object({
    id: z.string(),
    name: z.string().optional(),
    appliance: z.string().optional(),
    quantity: z.number(),
    runningW: z.number(),
    runningVA: z.number(),
    startingW: z.number(),
    startingS: z.number(),
    startKind: z.enum(START_KINDS),
    minutesPerDay: z.number(),
    energyWhPerDay: z.number(),
    waveform: z.enum(WAVEFORM_NEEDS),
    medical: z.boolean(),
    estimated: z.boolean(),
  })
  .strict()

/** What the loads ask of an inverter together. */
export const demandSchema = z
  .object({
    runningW: z.number(),
    runningVA: z.number(),
    startingW: z.number(),
    startingS: z.number(),
    requiredContinuousW: z.number(),
    energyWhPerDay: z.number(),
    waveform: z.enum(WAVEFORM_NEEDS),
    loads: z.array(demandLoadSchema),
  })
  .strict()
export type DemandAnswer = z.output<typeof demandSchema>

/** The unit that is recommended. */
export const recommendedSchema = z
  .object({
    sku: z.string(),
    name: z.string(),
    continuousW: z.number(),
    surgeW: z.number(),
    loadFraction: z.number(),
    price: z.string(),
    currency: z.string(),
    url: z.string().optional(),
    imageUrl: z.string().optional(),
    findings: z.array(findingSchema),
  })
  .strict()

/** A unit that was considered. */
export const consideredSchema = z
  .object({
    sku: z.string(),
    name: z.string(),
    continuousW: z.number(),
    fits: z.boolean(),
    findings: z.array(findingSchema),
  })
  .strict()

export const cautionSchema = z
  .object({ code: z.enum(CAUTION_CODES), severity: z.enum(CAUTION_SEVERITIES), message: z.string() })
  .strict()

/** One step of the arithmetic behind the answer. */
export const workingStepSchema = z
  .object({
    step: z.enum(STEP_CODES),
    title: z.string(),
    loadId: z.string().optional(),
    values: z.record(z.unknown()).describe('Numbers, words or yes/no; units in the names.'),
    shown: z
      .array(z.object({ key: z.string(), name: z.string(), text: z.string() }).strict())
      .describe(
        'The same values for people: each under a name in the language of the answer, with its unit.',
      ),
    source: z.string().optional(),
    sourceDocument: z
      .string()
      .optional()
      .describe(
        'Title of the document, in its own language; what has none is described in the language of the answer.',
      ),
  })
  .strict()

/** An amount of money. */
export const moneyAnswerSchema = z.object({ amount: z.string(), currency: z.string() }).strict()

export const rangeStampSchema = z.object({ shopId: z.string(), version: z.number() }).strict()

/** The battery side of the answer: cable and fuse. */
export const circuitSchema = z
  .object({
    worstCaseA: z.number().describe('Battery current at full power and the lowest working voltage. [A]'),
    oneWayLengthM: z.number(),
    conductor: z
      .object({
        areaMm2: z.number(),
        awg: z.string().optional(),
        label: z.string().describe('As the shop’s wire sizes have it, such as "50 mm²" or "1/0 AWG".'),
        parallelPairs: z.number(),
        insulationC: z
          .number()
          .describe(
            'Rated temperature of the insulation that the ampacity is for. [°C] 75 unless the unit’s own leads state another.',
          ),
        ampacityA: z.number(),
        dropV: z.number(),
        dropFraction: z.number(),
      })
      .strict(),
    governedBy: z.enum(CIRCUIT_LIMITS).describe('What made the conductor this size.'),
    fuse: z
      .object({
        ratingA: z.number(),
        style: z.enum(FUSE_STYLES),
        minA: z.number().describe('1.25 times the worst-case current. [A]'),
        maxA: z.number().describe('What the conductor may carry. [A]'),
        breakingCapacityA: z.number(),
        voltageV: z.number(),
      })
      .strict()
      .nullable(),
    connection: z
      .object({ kind: connectionKindSchema, limitA: z.number().optional(), limitW: z.number().optional() })
      .strict(),
    findings: z.array(findingSchema),
  })
  .strict()
export type CircuitAnswer = z.output<typeof circuitSchema>

/** How a day's energy is put back. */
export const rechargeSchema = z
  .object({
    energyWh: z.number().describe('What the source must give, losses included. [Wh]'),
    chargeAh: z.number(),
    solarW: z.number().describe('Panel rating that puts it back in one day of `sunHours`. [W]'),
    sunHours: z.number(),
    chargerA: z.number(),
    chargerHours: z.number().describe('Hours behind an alternator or mains charger of `chargerA`.'),
    absorptionHours: z.number(),
  })
  .strict()

/** How long the battery lasts. */
export const runtimeAnswerSchema = z
  .object({
    hours: z.number(),
    hoursLow: z.number(),
    hoursHigh: z.number(),
    limitedBy: z.enum(RUNTIME_LIMITS),
    usableWh: z.number(),
    averageA: z.number(),
    daysOfAutonomy: z.number().optional(),
    curve: z.array(
      z
        .object({ hours: z.number(), socFraction: z.number(), terminalV: z.number(), currentA: z.number() })
        .strict(),
    ),
    day: z
      .object({
        energyWh: z.number().describe('Energy that the day asks of the battery. [Wh]'),
        fits: z.boolean(),
        remainingSocFraction: z.number(),
      })
      .strict()
      .optional()
      .describe('The plan of one day: each load its minutes, idle draw between, heavy loads first.'),
    recharge: rechargeSchema.optional(),
    findings: z.array(findingSchema),
  })
  .strict()
export type RuntimeAnswer = z.output<typeof runtimeAnswerSchema>

/** The battery that the plan takes, whatever battery there is. */
export const bankSchema = z
  .object({
    chemistry: chemistrySchema,
    nominalV: z.number(),
    days: z.number(),
    energyWhPerDay: z.number(),
    neededCapacityAh: z.number(),
    boundBy: z.enum(['energy', 'current']),
  })
  .strict()

/** One part of the kit. */
export const kitLineSchema = z
  .object({
    role: z.enum(KIT_ROLES),
    sku: z.string().optional(),
    name: z.string().optional(),
    quantity: z.number(),
    specification: z.string().describe('What the part must be, also where the range holds none.'),
    reason: z.enum(KIT_REASONS),
    values: z.record(z.unknown()).describe('What the reason rests on.'),
    why: z.string().describe('The reason as a sentence, and that of `note` behind it.'),
    note: z
      .object({ code: z.enum(KIT_NOTES), values: z.record(z.unknown()) })
      .strict()
      .optional()
      .describe('Why a cable is of another size than `circuit.conductor` of the same answer.'),
    price: z.string().optional().describe('Of one.'),
    url: z.string().optional(),
    state: z.enum(KIT_STATES),
  })
  .strict()
export type KitLine = z.output<typeof kitLineSchema>

/** A change of a request as data. */
export const planChangeSchema = z
  .object({
    takeTurns: z.array(z.array(z.string())).optional().describe('All groups of the changed request.'),
    without: z.string().optional().describe('Id of the load to leave out, of its group too.'),
    rating: z
      .object({ loadId: z.string(), watts: z.number() })
      .strict()
      .optional()
      .describe('Rating of one load, basis input-watts.'),
    start: z.object({ loadId: z.string(), startingW: z.number(), durationS: z.number() }).strict().optional(),
    supply: supplySchema.optional().describe('The whole supply of the changed request.'),
    sku: z
      .string()
      .optional()
      .describe(
        'Another unit: `preferences.sku` of the changed request, or POST fit; the rest stays as it is.',
      ),
    split: z
      .array(z.object({ loadIds: z.array(z.string()), sku: z.string() }).strict())
      .optional()
      .describe('Two requests in place of one, with the unit that each leads to.'),
  })
  .strict()
  .describe(
    "Each property stands in place of the request's own; the rest of the request stays, but for a `preferences.sku` that `sku` here does not name.",
  )

/** A change of the plan and what it would buy. */
export const whatIfSchema = z
  .object({
    kind: z.enum(WHAT_IF_KINDS),
    loadIds: z.array(z.string()),
    outcome: outcomeSchema,
    sku: z.string().optional().describe('The unit that it leads to; left out where there are two.'),
    continuousW: z.number().optional(),
    price: z.string().describe('Of the unit, or of both.'),
    priceDifference: z
      .string()
      .optional()
      .describe('Over the unit recommended now; "-120.00" is 120.00 less. Left out where none is.'),
    currency: z.string(),
    runtimeHours: z.number().optional().describe('With everything on, where a battery is stated.'),
    change: planChangeSchema,
    message: z.string(),
    values: z
      .record(z.unknown())
      .describe(
        'Of kind combined: `steps`, the two changes with kind, loadIds and values; `change` makes both.',
      ),
  })
  .strict()
export type WhatIfAnswer = z.output<typeof whatIfSchema>

/** The largest label rating of a load at which the chosen unit still fits everything. */
export const labelLimitSchema = z
  .object({
    loadId: z.string(),
    limitW: z.number().describe('Input power of one item. [W]'),
    cookingW: z.number().optional().describe('For a microwave: the cooking power that it roughly means. [W]'),
    message: z.string(),
  })
  .strict()
export type LabelLimitAnswer = z.output<typeof labelLimitSchema>

/** Reply of POST sizing. */
export const sizingAnswerSchema = z
  .object({
    outcome: outcomeSchema,
    demand: demandSchema,
    recommended: recommendedSchema.nullable(),
    considered: z.array(consideredSchema),
    consideredTotal: z.number(),
    whatIfs: z.array(whatIfSchema),
    labelLimits: z.array(labelLimitSchema),
    circuit: circuitSchema.nullable(),
    runtime: runtimeAnswerSchema.nullable().describe('Null where no battery is stated.'),
    bank: bankSchema.nullable(),
    kit: z.array(kitLineSchema),
    kitTotal: moneyAnswerSchema
      .nullable()
      .describe('Of the parts of the kit that the range holds and the buyer lacks.'),
    assumptions: z.array(findingSchema),
    cautions: z.array(cautionSchema),
    working: z.array(workingStepSchema).optional(),
    range: rangeStampSchema,
  })
  .strict()
export type SizingAnswer = z.output<typeof sizingAnswerSchema>

/** Reply of POST fit. */
export const fitAnswerSchema = z
  .object({
    outcome: outcomeSchema,
    demand: demandSchema,
    unit: consideredSchema.extend({ surgeW: z.number(), loadFraction: z.number() }).strict(),
    circuit: circuitSchema.nullable(),
    runtime: runtimeAnswerSchema.nullable(),
    smallest: recommendedSchema.nullable().describe('The smallest unit of the range that fits.'),
    assumptions: z.array(findingSchema),
    cautions: z.array(cautionSchema),
    range: rangeStampSchema,
  })
  .strict()
export type FitAnswer = z.output<typeof fitAnswerSchema>
