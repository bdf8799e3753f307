import { z } from 'zod/v3'
import { BATTERY_CHEMISTRIES, CONNECTION_KINDS, INVERTER_FEATURES } from '../../core/range/vocabulary.ts'
import { text } from './text.ts'

/** Upper bounds of what a request may carry, in one place. */
export const LIMITS = {
  loads: 40,
  takeTurnsGroups: 20,
  quantity: 100,
  watts: 100_000,
  volts: 1000,
  amps: 1000,
  labelCharacters: 2000,
  idCharacters: 64,
  nameCharacters: 120,
  urlCharacters: 2000,
  partsPerList: 2000,
} as const

/** An id of the caller's choosing. */
export const idSchema = text()
  .min(1)
  .max(LIMITS.idCharacters)
  .describe(`An id of your choosing, 1 to ${LIMITS.idCharacters} characters.`)

/** A stock-keeping unit of a shop. */
export const skuSchema = text().min(1).max(64).describe('Stock-keeping unit of the shop.')

/** A name for people. */
export const nameSchema = text().min(1).max(LIMITS.nameCharacters)

/** Money as a decimal string: no rounding on the way. */
export const moneySchema = z
  .string()
  .max(16)
  .regex(/^\d{1,9}(\.\d{1,3})?$/, 'a decimal number such as "74.95"')
  .describe('Amount of money as a decimal string, such as "74.95".')

/** BCP 47 language tag. */
export const localeSchema = z
  .string()
  .min(2)
  .max(35)
  .regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'a language tag such as "en-GB"')
  .describe('BCP 47 language tag, such as "en-GB".')

/** Input power. [W] */
export const wattsSchema = z
  .number()
  .positive()
  .max(LIMITS.watts)
  .describe(`Watts, over 0 and at most ${LIMITS.watts}.`)

export const chemistrySchema = z.enum(BATTERY_CHEMISTRIES)
export const connectionKindSchema = z.enum(CONNECTION_KINDS)
export const inverterFeatureSchema = z.enum(INVERTER_FEATURES)

/** Nominal battery voltages. [V] */
export const nominalVSchema = z
  .union([z.literal(12), z.literal(24), z.literal(36), z.literal(48)])
  .describe('Nominal battery voltage: 12, 24, 36 or 48 V.')
