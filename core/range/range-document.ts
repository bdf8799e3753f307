import type { Appliance } from '../loads/appliance.ts'
import type { ApplianceCategory } from '../loads/vocabulary.ts'
import type {
  BatteryChemistry,
  ConnectionKind,
  FuseStyle,
  InverterFeature,
  InverterWaveform,
  SupplyVoltage,
  WireSizes,
} from './vocabulary.ts'

/** A shop's own rules; each one left out takes the default of {@link DEFAULT_POLICY}. */
export interface ShopPolicy {
  /** Share of an inverter's continuous power kept free. 0..0.5 */
  readonly headroomFraction?: number | undefined
  /** Largest voltage drop in the battery cable as a share of the nominal voltage. 0.005..0.1 */
  readonly dropLimitFraction?: number | undefined
  /** Kinds of appliance that the shop does not sell an inverter for. */
  readonly notAdvised?: readonly ApplianceCategory[] | undefined
  /** Current that a vehicle socket may carry for long. [A] */
  readonly socketLimitA?: number | undefined
  /** Current that a two-pole quick connector may carry for long. [A] */
  readonly quickConnectorLimitA?: number | undefined
}

/** The shop's part of a range document. */
export interface Shop {
  readonly id: string
  readonly name: string
  readonly locale: string
  /** ISO 4217 */
  readonly currency: string
  readonly mains: { readonly nominalV: number; readonly frequencyHz: 50 | 60 }
  readonly wireSizes: WireSizes
  readonly allowedOrigins: readonly string[]
  readonly policy?: ShopPolicy | undefined
  readonly contactUrl?: string | undefined
  readonly appliances?: readonly Appliance[] | undefined
  /** Whether what shoppers ask for is counted. Left out: yes. */
  readonly countDemand?: boolean | undefined
}

/** What every part of a range has. `price` is a decimal string in the shop's currency. */
export interface PartBase {
  readonly sku: string
  readonly name: string
  readonly price: string
  readonly inStock: boolean
  readonly url?: string | undefined
  readonly imageUrl?: string | undefined
}

/** How an inverter is connected to its battery. */
export interface InverterConnection {
  readonly kind: ConnectionKind
  readonly limitA?: number | undefined
}

/** An inverter of a range: from battery to mains. */
export interface Inverter extends PartBase {
  readonly continuousW: number
  readonly continuousVA?: number | undefined
  readonly surgeW: number
  readonly surgeS: number
  readonly waveform: InverterWaveform
  readonly inputNominalV: SupplyVoltage
  readonly outputV: number
  readonly outputHz: 50 | 60
  readonly efficiencyFullFraction?: number | undefined
  readonly efficiencyPeakFraction?: number | undefined
  readonly idleW?: number | undefined
  readonly cutOffV?: number | undefined
  readonly restartV?: number | undefined
  readonly outlets: number
  readonly features: readonly InverterFeature[]
  readonly connection: InverterConnection
  /** SKUs of parts of the same range that come in the box. */
  readonly includes?: readonly string[] | undefined
}

/** Capacity at another hour rate than the rated one. */
export interface OtherRate {
  readonly hourRateH: number
  readonly capacityAh: number
}

/** A battery of a range. */
export interface RangeBattery extends PartBase {
  readonly chemistry: BatteryChemistry
  readonly nominalV: SupplyVoltage
  readonly capacityAh: number
  readonly hourRateH: number
  readonly otherRates?: readonly OtherRate[] | undefined
  readonly maxDischargeA?: number | undefined
  readonly internalResistanceOhm?: number | undefined
}

/** A pair of battery cables, or one by the metre cut to length: two conductors of `lengthM`. */
export interface RangeCable extends PartBase {
  /** Cross-section; either this or `awg`. [mm2] */
  readonly areaMm2?: number | undefined
  /** American wire gauge as written: '4', '2/0'; either this or `areaMm2`. */
  readonly awg?: string | undefined
  readonly lengthM: number
  readonly insulationC?: number | undefined
}

/** A fuse of a range, with its holder. */
export interface RangeFuse extends PartBase {
  readonly ratingA: number
  readonly style: FuseStyle
  readonly breakingCapacityA?: number | undefined
  readonly voltageV?: number | undefined
}

/** A connector or a lead that ends in one. */
export interface RangeConnector extends PartBase {
  readonly kind: ConnectionKind
  readonly limitA: number
}

/** A shop's range: what it sells and by which rules. */
export interface RangeDocument {
  readonly shop: Shop
  readonly inverters: readonly Inverter[]
  readonly batteries: readonly RangeBattery[]
  readonly cables: readonly RangeCable[]
  readonly fuses: readonly RangeFuse[]
  readonly connectors: readonly RangeConnector[]
}
