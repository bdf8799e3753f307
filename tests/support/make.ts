import { needOf, type Preferences, type Supply } from '../../core/inverters/need.ts'
import { type Demand, demandOf } from '../../core/loads/demand.ts'
import type { Load } from '../../core/loads/load.ts'
import { DEFAULT_POLICY, type FullPolicy } from '../../core/range/policy.ts'
import { type PreparedRange, prepareRange } from '../../core/range/prepare-range.ts'
import type { Inverter, RangeDocument, Shop } from '../../core/range/range-document.ts'
import { BUILT_IN_APPLIANCES } from '../../core/tables/appliances/index.ts'

/** A resolved load of 100 W without a start, changed as the test needs. */
export function makeLoad(changes: Partial<Load> & Pick<Load, 'id'>): Load {
  const runningW = changes.runningW ?? 100
  return {
    quantity: 1,
    runningW,
    typicalW: runningW,
    runningVA: runningW,
    startingW: runningW,
    startingS: 0,
    startKind: 'none',
    minutesPerDay: 60,
    dutyFraction: 1,
    energyWhPerDay: runningW,
    waveform: 'either',
    waveformReason: 'resistive-heat',
    thermal: 'neither',
    medical: false,
    estimated: false,
    working: [],
    ...changes,
  }
}

/** A 12 V pure sine unit for 230 V, changed as the test needs. */
export function makeInverter(changes: Partial<Inverter> & Pick<Inverter, 'sku'>): Inverter {
  const continuousW = changes.continuousW ?? 1000
  return {
    name: `Unit ${changes.sku}`,
    price: '100.00',
    inStock: true,
    continuousW,
    surgeW: 2 * continuousW,
    surgeS: 3,
    waveform: 'pure-sine',
    inputNominalV: 12,
    outputV: 230,
    outputHz: 50,
    efficiencyFullFraction: 0.9,
    idleW: 8,
    cutOffV: 10.5,
    outlets: 4,
    features: [],
    connection: { kind: 'battery-terminals' },
    ...changes,
  }
}

/** A British shop, 230 V 50 Hz. */
export const TEST_SHOP: Shop = {
  id: 'test-shop',
  name: 'Test shop',
  locale: 'en-GB',
  currency: 'GBP',
  mains: { nominalV: 230, frequencyHz: 50 },
  wireSizes: 'metric',
  allowedOrigins: [],
}

/** A prepared range of these inverters and nothing else, unless the changes say so. */
export function makeRange(
  inverters: readonly Inverter[],
  changes: Partial<RangeDocument> = {},
): PreparedRange {
  const document: RangeDocument = {
    shop: TEST_SHOP,
    inverters,
    batteries: [],
    cables: [],
    fuses: [],
    connectors: [],
    ...changes,
  }
  return prepareRange(document, BUILT_IN_APPLIANCES, 1)
}

/** A need of these loads at 12 V in the test shop. */
export function makeNeed(
  loads: readonly Load[],
  changes: {
    readonly takeTurns?: readonly (readonly string[])[]
    readonly supply?: Supply
    readonly preferences?: Preferences
    readonly policy?: Partial<FullPolicy>
    readonly demand?: Demand
  } = {},
) {
  return needOf(changes.demand ?? demandOf(loads, changes.takeTurns), {
    mains: TEST_SHOP.mains,
    currency: 'GBP',
    supply: changes.supply ?? { nominalV: 12 },
    preferences: changes.preferences ?? { inStockOnly: true },
    policy: { ...DEFAULT_POLICY, ...changes.policy },
  })
}
