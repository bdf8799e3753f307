import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bankModel } from '../../core/battery/bank.ts'
import { connectionLimitW } from '../../core/wiring/battery-current.ts'
import kingcup from '../../server/demo/kingcup.json' with { type: 'json' }
import { sizingRequestExample } from '../../shared/examples/plans.ts'
import { openStaffService, type StaffService } from '../support/staff-service.ts'

let service: StaffService
let key: string
beforeAll(async () => {
  service = await openStaffService()
  key = await service.issue('kingcup', ['read', 'range'])
})
afterAll(() => service.close())

const post = (path: string, payload: object) =>
  service.app.inject({
    method: 'POST',
    url: `/v1/shops/kingcup/${path}`,
    payload,
    headers: path.startsWith('coverage') ? { authorization: `Bearer ${key}` } : {},
  })

const BATTERY = { chemistry: 'agm', capacityAh: 100 }
const [unit] = kingcup.inverters

describe('figures at the ends of what the contract allows', () => {
  it('such as a battery that gives next to no current are answered', async () => {
    const supply = { nominalV: 12, battery: { ...BATTERY, maxDischargeA: 5e-324 } }
    const power = { basis: 'battery', watts: 100 }
    const reply = await post('runtime', { power, supply })
    expect([reply.statusCode, reply.json().limitedBy]).toEqual([200, 'discharge-limit'])
    const cart = await post('cart-check', { lines: [{ sku: unit?.sku, quantity: 1 }], supply })
    expect(cart.statusCode).toBe(200)
  })

  it('such as loads of a thousand times the unit in the cart are answered', async () => {
    const rating = { basis: 'input-watts', watts: 100_000 }
    const reply = await post('cart-check', {
      lines: [{ sku: unit?.sku, quantity: 1 }],
      loads: [{ id: 'furnace', quantity: 100, minutesPerDay: 1440, rating, start: { startingW: 1_000_000 } }],
      supply: { nominalV: 12, battery: BATTERY },
    })
    expect([reply.statusCode, reply.json().ok]).toEqual([200, false])
  })

  it('such as a battery’s largest current and rates, scaled to the bank that would do, are answered', () => {
    const rates = { maxDischargeA: 1e12, otherRates: [{ hourRateH: 1, capacityAh: 1e10 }] }
    const model = bankModel({ nominalV: 12, chemistry: 'agm', capacityAh: 100_000, hourRateH: 0.1, ...rates })
    expect(model.limitA).toBe(1e12)
    expect(model.resistanceOhm).toBeGreaterThan(0)
  })

  it('such as a connection of the range for 50,000 A are answered', async () => {
    expect(connectionLimitW({ limitA: 50_000, lowestV: 10, efficiencyFullFraction: 0.9 })).toBe(450_000)
    const [first, ...rest] = kingcup.inverters
    const inverters = [{ ...first, connection: { kind: 'quick-connector', limitA: 50_000 } }, ...rest]
    const batteries = kingcup.batteries.map((part) => ({ ...part, hourRateH: 0.1, maxDischargeA: 1e-300 }))
    const reply = await post('coverage/preview', { ...kingcup, inverters, batteries })
    expect(reply.statusCode, reply.body.slice(0, 300)).toBe(200)
  })
})

describe('a refusal', () => {
  it('of a CSV file without the name of its list points at the request', async () => {
    const reply = await service.app.inject({
      method: 'PUT',
      url: '/v1/shops/kingcup/range?dryRun=true',
      headers: { authorization: `Bearer ${key}`, 'content-type': 'text/csv' },
      payload: 'sku\nx',
    })
    expect(reply.statusCode).toBe(400)
    expect(reply.json().errors).toEqual([{ pointer: '', message: expect.stringContaining('?part=') }])
  })

  it('of a body where none belongs is one that the document lists', async () => {
    const reply = await service.app.inject({
      method: 'POST',
      url: '/v1/shops/kingcup/range/versions/1/restore',
      headers: { authorization: `Bearer ${key}`, 'if-match': '*', 'content-type': 'text/plain' },
      payload: 'please',
    })
    expect([reply.statusCode, reply.json().code]).toEqual([415, 'unsupported-media-type'])
  })

  it('of thousands of unknown fields tells the first of them, not all', async () => {
    const unknown = Object.fromEntries(Array.from({ length: 80 }, (_, at) => [`x${at}`, 0]))
    const loads = Array.from({ length: 36 }, (_, at) => ({ id: `a${at}`, appliance: 'laptop', ...unknown }))
    const reply = await post('sizing', { ...sizingRequestExample, loads })
    expect([reply.statusCode, reply.json().errors.length]).toEqual([422, 500])
  })

  it('of more fields than any object has tells just that', async () => {
    const unknown = Object.fromEntries(Array.from({ length: 3000 }, (_, at) => [`x${at}`, 0]))
    const reply = await post('sizing', { ...sizingRequestExample, ...unknown })
    expect([reply.statusCode, reply.json().code]).toEqual([400, 'unreadable-json'])
    expect(reply.json().errors[0].message).toMatch(/more than 100 keys/)
  })
})
