import type { AssumableFigure } from '../../core/advice/findings.ts'
import type { AssumedFigure } from '../../core/battery/bank.ts'
import type { ApplianceCategory } from '../../core/loads/vocabulary.ts'
import type { BatteryChemistry, ConnectionKind, InverterFeature } from '../../core/range/vocabulary.ts'

/** Names of the contract's enumerations in one language. */
export interface Words {
  readonly connections: Readonly<Record<ConnectionKind, string>>
  readonly chemistries: Readonly<Record<BatteryChemistry, string>>
  readonly features: Readonly<Record<InverterFeature, string>>
  readonly categories: Readonly<Record<ApplianceCategory, string>>
  readonly batteryFigures: Readonly<Record<AssumedFigure['field'], string>>
  readonly figures: Readonly<Record<AssumableFigure, string>>
}

/** English names. */
export const en: Words = {
  connections: {
    'vehicle-socket': 'A vehicle socket',
    'quick-connector': 'The quick connector',
    'battery-terminals': 'The connection at the battery terminals',
  },
  chemistries: {
    flooded: 'flooded lead-acid',
    agm: 'AGM lead-acid',
    gel: 'gel lead-acid',
    lifepo4: 'lithium iron phosphate (LiFePO4)',
    nmc: 'lithium NMC',
  },
  features: {
    'usb-outlet': 'USB outlet',
    'remote-switch': 'remote switch',
    display: 'display',
    'mains-transfer': 'switch-over to mains',
    'built-in-charger': 'built-in battery charger',
    'hardwire-terminals': 'terminals for fixed wiring',
    'residual-current-protection': 'residual-current (RCD or GFCI) protection',
    'low-idle-mode': 'low idle draw mode',
    'quiet-fan': 'quiet fan',
    'moisture-sealed': 'sealed against moisture',
  },
  categories: {
    'hot-drinks': 'hot drinks',
    cooking: 'cooking',
    kitchen: 'kitchen helpers',
    refrigeration: 'fridges and freezers',
    'air-conditioning': 'air conditioning',
    'space-heating': 'heating',
    ventilation: 'fans and air',
    'personal-care': 'personal care',
    washing: 'washing and drying',
    cleaning: 'cleaning',
    computing: 'computers',
    communication: 'phones and internet',
    entertainment: 'television, music and games',
    lighting: 'lights',
    charging: 'chargers',
    'power-tools': 'power tools',
    pumps: 'pumps',
    trade: 'stall and trade',
    medical: 'medical devices',
  },
  batteryFigures: {
    minSocFraction: 'The lowest charge, as a share,',
    internalResistanceOhm: 'The internal resistance in ohms',
    maxDischargeA: 'The largest discharge current in amps',
    shortRateCapacity: 'The capacity at a short discharge in amp-hours',
    cellsInSeries: 'The number of cells in series',
  },
  figures: {
    continuousVA: 'The continuous VA',
    efficiencyFullFraction: 'The efficiency at full load',
    idleW: 'The idle draw in watts',
    cutOffV: 'The low-voltage cut-off in volts',
    connectionLimitA: 'The connection limit in amps',
  },
}
