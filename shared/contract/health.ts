import { z } from 'zod/v3'

/** Reply of GET /healthz. */
export const healthSchema = z.object({ status: z.literal('ok') }).strict()

/** Reply of GET /readyz. */
export const readinessSchema = z
  .object({
    status: z.enum(['ready', 'degraded']),
    store: z.enum(['available', 'unavailable']),
    storeAgeS: z.number().int().describe('Seconds since the store last answered.'),
    shops: z.number().int().describe('Shops with a range in memory.'),
    faultyShops: z.array(z.string()).describe('Shops whose newest version in the store cannot be used.'),
  })
  .strict()
export type Readiness = z.output<typeof readinessSchema>
