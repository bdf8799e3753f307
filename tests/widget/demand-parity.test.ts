import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SizingAnswer } from '../../shared/contract/answers.ts'
import { sizingRequestSchema } from '../../shared/contract/plan.ts'
import type { Setup } from '../../shared/contract/setup.ts'
import { requestFor } from '../../widget/plan-request.ts'
import { totalsOf } from '../../widget/totals.ts'
import { demoService } from '../support/service.ts'
import { plans } from './support/plans.ts'

const service = await demoService()
const setup = (await service.inject('/v1/shops/kingcup/setup')).json<Setup>()

describe('the page beside the service', () => {
  it('sends what the contract takes, whatever the shopper answers', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { request } = requestFor(plan, setup, 'en-GB')
        expect(sizingRequestSchema.safeParse(request).error).toBeUndefined()
      }),
    )
  })

  it('shows the same totals as the service answers with', async () => {
    await fc.assert(
      fc.asyncProperty(plans, async (plan) => {
        const { request } = requestFor(plan, setup, 'en-GB')
        const reply = await service.inject({
          method: 'POST',
          url: '/v1/shops/kingcup/sizing',
          payload: request,
        })
        expect(reply.statusCode).toBe(200)
        const { demand } = reply.json<SizingAnswer>()
        const { demand: shown, requiredW, unread } = totalsOf(plan, setup)
        expect(unread).toEqual([])
        const pairs: readonly (readonly [number, number])[] = [
          [shown.runningW, demand.runningW],
          [shown.runningVA, demand.runningVA],
          [shown.startingW, demand.startingW],
          [shown.startingS, demand.startingS],
          [requiredW, demand.requiredContinuousW],
          [shown.energyWhPerDay, demand.energyWhPerDay],
        ]
        // The service writes hundredths.
        for (const [here, there] of pairs) expect(Math.abs(here - there)).toBeLessThanOrEqual(0.005 + 1e-6)
      }),
      { numRuns: 60 },
    )
  })

  it('leaves a load out of the totals whose appliance the shop no longer lists, and says so', () => {
    const plan = {
      loads: [
        { id: 'load-1', appliance: 'laptop', quantity: 1 },
        { id: 'load-2', appliance: 'gone', quantity: 1 },
      ],
      takeTurns: [['load-1', 'load-2']],
      supply: {
        nominalV: null,
        battery: null,
        chemistry: null,
        capacityAh: null,
        connection: null,
        oneWayLengthM: null,
      },
    }
    const totals = totalsOf(plan, setup)
    expect(totals.unread).toEqual(['load-2'])
    expect(totals.demand.loads.map(({ id }) => id)).toEqual(['load-1'])
  })
})

describe('requestFor', () => {
  const one = { loads: [{ id: 'load-1', appliance: 'laptop', quantity: 1 }], takeTurns: [] }
  const unsure = {
    nominalV: null,
    battery: null,
    chemistry: null,
    capacityAh: null,
    connection: null,
    oneWayLengthM: null,
  }

  it('leaves the supply to the service where the shopper is sure of nothing', () => {
    const { request, assumed } = requestFor({ ...one, supply: unsure }, setup, 'en')
    expect(request.supply).toBeUndefined()
    expect(assumed).toEqual({})
  })

  it('says what it took where the shopper has a battery and knows no more', () => {
    const { request, assumed } = requestFor({ ...one, supply: { ...unsure, battery: 'have' } }, setup, 'en')
    expect(request.supply).toMatchObject({ nominalV: 12, battery: { chemistry: 'flooded', capacityAh: 100 } })
    expect(assumed).toEqual({ nominalV: 12, chemistry: 'flooded', capacityAh: 100 })
  })

  it('sends no battery where the shopper needs one', () => {
    const supply = { ...unsure, battery: 'need', nominalV: 24 } as const
    expect(requestFor({ ...one, supply }, setup, 'en').request.supply).toEqual({ nominalV: 24 })
  })
})
