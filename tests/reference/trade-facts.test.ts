import { describe, expect, it } from 'vitest'
import type { LoadRequest } from '../../core/loads/load.ts'
import type { Inverter, Shop } from '../../core/range/range-document.ts'
import { planFor, type SizingInput, sizeFor } from '../../core/sizing.ts'
import { makeInverter, makeRange, TEST_SHOP } from '../support/make.ts'

// Every figure of this file: common practice, no published source.

const ladder = [150, 300, 600, 1000, 1500, 2000, 3000].map((continuousW) =>
  makeInverter({ sku: `P${continuousW}`, continuousW }),
)

function answer(
  loads: readonly (Omit<LoadRequest, 'quantity'> & { readonly quantity?: number })[],
  changes: {
    readonly units?: readonly Inverter[]
    readonly shop?: Shop
    readonly input?: Partial<SizingInput>
  } = {},
) {
  const range = makeRange(changes.units ?? ladder, { shop: changes.shop ?? TEST_SHOP })
  const planned = planFor(range, {
    loads: loads.map((load) => ({ quantity: 1, ...load })),
    preferences: { inStockOnly: true },
    supply: { nominalV: 12 },
    ...changes.input,
  })
  if (!planned.ok) throw new Error(JSON.stringify(planned.faults))
  return sizeFor(range, planned.plan)
}

const watts = (value: number) => ({ basis: 'input-watts', watts: value }) as const
const cooking = (value: number) => ({ basis: 'cooking-watts', watts: value }) as const

describe('common practice, no published source', () => {
  it('one 800 W load with a fifth free: a 1000 W unit is enough, and just enough', () => {
    expect(answer([{ id: 'a', rating: watts(800) }]).recommended?.inverter.unit.continuousW).toBe(1000)
    expect(answer([{ id: 'a', rating: watts(801) }]).recommended?.inverter.unit.continuousW).toBe(1500)
  })

  it('a 90 W drill charger and a 100 W laptop supply make 190 W, and a 300 W unit is enough', () => {
    const sizing = answer([
      { id: 'charger', appliance: 'tool-battery-charger', rating: watts(90) },
      { id: 'laptop', appliance: 'laptop', rating: watts(100) },
    ])
    expect(sizing.plan.demand.runningW).toBe(190)
    expect(sizing.recommended?.inverter.unit.continuousW).toBe(300)
  })

  it.each([
    { cookingW: 600, plateW: 1200 },
    { cookingW: 650, plateW: 1100 },
    { cookingW: 700, plateW: 1150 },
  ])(
    'a microwave sold as $cookingW W is sized for at least the $plateW W it takes',
    ({ cookingW, plateW }) => {
      const sizing = answer([{ id: 'm', appliance: 'microwave-oven', rating: cooking(cookingW) }])
      expect(sizing.plan.demand.runningW).toBeGreaterThanOrEqual(plateW)
    },
  )

  it('a microwave of 1200 W input is right for a 2000 W unit', () => {
    const sizing = answer([{ id: 'm', appliance: 'microwave-oven', rating: watts(1200) }], {
      units: ladder.filter((unit) => unit.continuousW !== 1500),
    })
    expect(sizing.recommended?.inverter.unit.continuousW).toBe(2000)
    expect(sizing.outcome).toBe('fits')
  })

  it.each([850, 830])('a toaster of %i W needs more than a 1000 W unit', (toasterW) => {
    const sizing = answer([{ id: 't', appliance: 'toaster', rating: watts(toasterW) }])
    expect(sizing.recommended?.inverter.unit.continuousW).toBeGreaterThan(1000)
  })

  it('a laptop supply without a plate takes 150 W at most, and a 300 W unit runs it', () => {
    const sizing = answer([{ id: 'l', appliance: 'laptop' }])
    expect(sizing.plan.demand.runningW).toBe(150)
    expect(sizing.recommended?.inverter.unit.continuousW).toBe(300)
    expect(sizing.plan.assumptions.map((found) => found.code)).toContain('rating-estimated')
  })

  it('a unit with a surge of twice its rating starts a motor that draws twice its power for a few seconds', () => {
    const motor = { id: 'm', rating: watts(800), start: { startingW: 1600, durationS: 3 } }
    expect(answer([motor]).recommended?.inverter.unit.continuousW).toBe(1000)
    const weak = ladder.map((unit) => ({ ...unit, surgeW: 1.5 * unit.continuousW }))
    expect(answer([motor], { units: weak }).recommended?.inverter.unit.continuousW).toBe(1500)
  })

  it('600 W is too much for a vehicle socket, and so is 1000 W for a quick connector', () => {
    const at = (kind: 'vehicle-socket' | 'quick-connector', load: number) =>
      answer([{ id: 'a', rating: watts(load) }], {
        input: { supply: { nominalV: 12, connection: { kind } } },
      })
    const socket = at('vehicle-socket', 600)
    expect(socket.outcome).toBe('none-fits')
    const codes = socket.choice.verdicts.map(({ findings }) => findings.map((found) => found.code))
    expect(codes.every((found) => found.includes('connection-limit'))).toBe(true)
    expect(at('vehicle-socket', 80).recommended).toBeDefined()
    expect(at('quick-connector', 1000).outcome).toBe('none-fits')
    expect(at('quick-connector', 400).recommended).toBeDefined()
  })

  it.each(['laptop', 'tool-battery-charger', 'phone-charger'])(
    'a modified sine wave is fine for a %s',
    (appliance) => {
      const units = ladder.map((unit) => ({ ...unit, waveform: 'modified-sine' as const }))
      const sizing = answer([{ id: 'a', appliance }], { units })
      expect(sizing.outcome).toBe('fits')
    },
  )

  it('a breathing machine needs a pure sine wave, care and its maker', () => {
    const units = ladder.map((unit) => ({ ...unit, waveform: 'modified-sine' as const }))
    expect(answer([{ id: 'c', appliance: 'cpap' }], { units }).outcome).toBe('none-fits')
    const pure = answer([{ id: 'c', appliance: 'cpap' }])
    expect(pure.outcome).toBe('fits-with-care')
    expect(pure.cautions[0]?.code).toBe('medical-device')
  })

  it("a breathing machine's humidifier is what draws most", () => {
    const drawn = (appliance: string) => answer([{ id: 'c', appliance }]).plan.demand.energyWhPerDay
    expect(drawn('cpap-with-humidifier')).toBeGreaterThan(1.25 * drawn('cpap'))
  })

  it('what heats or cools draws more than any supply or charger for a pocket or a desk', () => {
    const drawn = (appliance: string) => answer([{ id: 'a', appliance }]).plan.demand.startingW
    const small = ['laptop', 'phone-charger', 'tool-battery-charger', 'led-lamp', 'router'].map(drawn)
    for (const hot of [
      'electric-kettle',
      'toaster',
      'hair-dryer',
      'fan-heater',
      'window-air-conditioner',
      'fridge',
    ]) {
      expect(drawn(hot)).toBeGreaterThan(Math.max(...small))
    }
  })

  it('air conditioners are not advised where the shop says so, and sized where it does not', () => {
    const units = [...ladder, makeInverter({ sku: 'P9000', continuousW: 9000 })]
    const shop = { ...TEST_SHOP, policy: { notAdvised: ['air-conditioning'] as const } }
    const load = { id: 'ac', appliance: 'window-air-conditioner' }
    const refused = answer([load], { units, shop })
    expect(refused.outcome).toBe('not-advised')
    expect(refused.cautions.map((caution) => caution.code)).toContain('generator-exhaust')
    expect(answer([load], { units }).recommended).toBeDefined()
  })
})
