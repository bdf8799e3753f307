import { z } from 'zod/v3'
import { demandSchema, findingSchema, outcomeSchema, rangeStampSchema } from './answers.ts'
import { loadsSchema, ownedPartsSchema, supplySchema, takeTurnsSchema } from './plan.ts'
import { LIMITS, localeSchema, skuSchema } from './primitives.ts'

/** Most lines of a cart. */
export const CART_LINES = 60

/** Body of POST cart-check. */
export const cartRequestSchema = z
  .object({
    lines: z
      .array(z.object({ sku: skuSchema, quantity: z.number().int().min(1).max(LIMITS.quantity) }).strict())
      .min(1)
      .max(CART_LINES)
      .describe('What lies in the cart. Lines of one SKU are added up.'),
    loads: loadsSchema.optional().describe('What it is to run. Left out: only the parts are checked.'),
    takeTurns: takeTurnsSchema.optional(),
    supply: supplySchema
      .optional()
      .describe('What the buyer has. Batteries in the cart take the place of its battery.'),
    owned: ownedPartsSchema.optional().describe('Parts that the buyer has and that are not in the cart.'),
    locale: localeSchema.optional(),
  })
  .strict()
export type CartRequest = z.output<typeof cartRequestSchema>

/** A finding about a cart. */
export const cartFindingSchema = findingSchema
  .extend({
    skus: z.array(z.string()).describe('Parts that it is about.'),
    useSku: z.string().optional().describe('Part of the range that is right, where there is one.'),
  })
  .strict()

/** Reply of POST cart-check. */
export const cartAnswerSchema = z
  .object({
    ok: z.boolean().describe('True where nothing of severity `fail` was found.'),
    findings: z.array(cartFindingSchema).describe('Gravest first.'),
    unknownSkus: z.array(z.string()).describe('Lines that the range does not have; they are not checked.'),
    outcome: outcomeSchema
      .optional()
      .describe('How the largest unit of the cart runs the loads; only with loads and a unit.'),
    demand: demandSchema.optional().describe('Only with loads.'),
    range: rangeStampSchema,
  })
  .strict()
export type CartCheckAnswer = z.output<typeof cartAnswerSchema>
