import type { Demand } from '../loads/demand.ts'
import type { BatteryChemistry, ConnectionKind, InverterFeature } from '../range/vocabulary.ts'

/** Signal words of ANSI Z535.4 (2011), gravest first. */
export const CAUTION_SEVERITIES = ['danger', 'warning', 'caution'] as const
export type CautionSeverity = (typeof CAUTION_SEVERITIES)[number]

/** Every caution, in the order in which equally grave ones are read. */
export const CAUTION_CODES = [
  'medical-device',
  'mains-voltage',
  'no-back-feed',
  'battery-short-circuit',
  'fuse-near-battery',
  'hydrogen-gas',
  'lithium-cold-charge',
  'generator-exhaust',
  'wet-places',
  'heat-and-air',
  'vehicle-socket-heat',
  'local-rules',
] as const
export type CautionCode = (typeof CAUTION_CODES)[number]

/** A caution without words: the message catalogues have those. */
export interface Caution {
  readonly code: CautionCode
  readonly severity: CautionSeverity
}

/** What an answer contains, as far as cautions go by it. */
export interface CautionContext {
  readonly demand: Demand
  readonly hasUnit: boolean
  readonly chemistry?: BatteryChemistry | undefined
  readonly temperatureC?: number | undefined
  readonly connectionKind?: ConnectionKind | undefined
  readonly features: readonly InverterFeature[]
  /** True where the answer sends the buyer elsewhere, to a generator for example. */
  readonly sentElsewhere: boolean
}

const GRAVITY: Readonly<Record<CautionCode, CautionSeverity>> = {
  'medical-device': 'danger',
  'mains-voltage': 'danger',
  'no-back-feed': 'danger',
  'battery-short-circuit': 'warning',
  'fuse-near-battery': 'warning',
  'hydrogen-gas': 'warning',
  'lithium-cold-charge': 'warning',
  'generator-exhaust': 'danger',
  'wet-places': 'warning',
  'heat-and-air': 'caution',
  'vehicle-socket-heat': 'warning',
  'local-rules': 'caution',
}

const WET_PLACE_CATEGORIES: readonly string[] = ['pumps', 'washing']

/**
 * The cautions that an answer calls for, gravest first.
 *
 * @param context - What the answer contains
 * @returns Cautions, each code once
 */
export function cautionsFor(context: CautionContext): readonly Caution[] {
  const called = CAUTION_CODES.filter((code) => TRIGGERS[code](context))
  const rank = (code: CautionCode) => CAUTION_SEVERITIES.indexOf(GRAVITY[code])
  return called
    .sort((a, b) => rank(a) - rank(b) || CAUTION_CODES.indexOf(a) - CAUTION_CODES.indexOf(b))
    .map((code) => ({ code, severity: GRAVITY[code] }))
}

const TRIGGERS: Readonly<Record<CautionCode, (context: CautionContext) => boolean>> = {
  'medical-device': ({ demand }) => demand.loads.some((load) => load.medical),
  'mains-voltage': ({ hasUnit }) => hasUnit,
  'no-back-feed': ({ features, demand }) =>
    features.includes('hardwire-terminals') ||
    features.includes('mains-transfer') ||
    demand.loads.some((load) => load.applianceId === 'furnace-fan' || load.applianceId === 'well-pump'),
  'battery-short-circuit': ({ hasUnit, connectionKind }) => hasUnit && connectionKind !== 'vehicle-socket',
  'fuse-near-battery': ({ hasUnit, connectionKind }) => hasUnit && connectionKind !== 'vehicle-socket',
  'hydrogen-gas': ({ chemistry }) => chemistry === 'flooded',
  'lithium-cold-charge': ({ chemistry, temperatureC }) =>
    (chemistry === 'lifepo4' || chemistry === 'nmc') && (temperatureC ?? 25) < 5,
  'generator-exhaust': ({ sentElsewhere }) => sentElsewhere,
  'wet-places': ({ demand }) =>
    demand.loads.some((load) => load.category !== undefined && WET_PLACE_CATEGORIES.includes(load.category)),
  'heat-and-air': ({ hasUnit }) => hasUnit,
  'vehicle-socket-heat': ({ hasUnit, connectionKind }) => hasUnit && connectionKind === 'vehicle-socket',
  'local-rules': ({ hasUnit }) => hasUnit,
}
