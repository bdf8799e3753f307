import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runtimeAnswerSchema } from '../../shared/contract/answers.ts'
import { runtimeRequestExample } from '../../shared/examples/plans.ts'
import { demoService } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await demoService()
})
afterAll(() => app.close())

const post = (payload: object) => app.inject({ method: 'POST', url: '/v1/shops/kingcup/runtime', payload })
const { supply } = runtimeRequestExample

describe('POST /v1/shops/{shopId}/runtime', () => {
  it('answers the example with hours between a low and a high, and a curve of at most 60 points', async () => {
    const reply = await post(runtimeRequestExample)
    expect(reply.statusCode).toBe(200)
    const answer = runtimeAnswerSchema.parse(reply.json())
    expect(answer.hoursLow).toBeLessThan(answer.hours)
    expect(answer.hours).toBeLessThan(answer.hoursHigh)
    expect(answer.curve.length).toBeLessThanOrEqual(60)
    expect(answer.curve.at(-1)?.hours).toBeCloseTo(answer.hours, 1)
  })

  it('lasts longer on watts at the battery than on the same watts through an inverter', async () => {
    const direct = (await post({ power: { basis: 'battery', watts: 300 }, supply })).json()
    const through = (
      await post({ power: { basis: 'mains', watts: 300 }, inverter: { continuousW: 500 }, supply })
    ).json()
    expect(direct.hours).toBeGreaterThan(through.hours)
  })

  it('plans the day of loads and tells how to put it back', async () => {
    const power = { basis: 'loads', loads: [{ id: 'tv', appliance: 'television', minutesPerDay: 120 }] }
    const answer = (await post({ power, sku: 'KC-ST12-295', supply })).json()
    expect(answer.day).toMatchObject({ fits: true })
    expect(answer.recharge.solarW).toBeGreaterThan(0)
    expect(answer.daysOfAutonomy).toBeGreaterThan(1)
  })

  it.each([
    ['no battery', { power: { basis: 'mains', watts: 10 }, supply: { nominalV: 12 } }, '/supply/battery'],
    ['no inverter', { power: { basis: 'mains', watts: 10 }, supply }, '/inverter'],
    ['an unknown unit', { power: { basis: 'mains', watts: 10 }, sku: 'NONE', supply }, '/sku'],
    [
      'an unknown appliance',
      { power: { basis: 'loads', loads: [{ id: 'a', appliance: 'flux' }] }, sku: 'KC-ST12-295', supply },
      '/power/loads/0/appliance',
    ],
    ['an unknown basis', { power: { basis: 'steam', watts: 10 }, supply }, '/power/basis'],
    [
      'a battery of 0 Ah',
      {
        power: { basis: 'battery', watts: 9 },
        supply: { nominalV: 12, battery: { chemistry: 'agm', capacityAh: 0 } },
      },
      '/supply/battery/capacityAh',
    ],
  ])('refuses %s with a pointer', async (_what, body, pointer) => {
    const reply = await post(body)
    expect(reply.statusCode).toBe(422)
    expect(reply.json().errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer)
  })
})
