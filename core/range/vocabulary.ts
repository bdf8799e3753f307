/** Nominal battery voltages that the range may hold. [V] */
export const SUPPLY_VOLTAGES = [12, 24, 36, 48] as const
export type SupplyVoltage = (typeof SUPPLY_VOLTAGES)[number]

/** Chemistries: flooded, absorbed glass mat and gel lead-acid; lithium iron phosphate; lithium NMC. */
export const BATTERY_CHEMISTRIES = ['flooded', 'agm', 'gel', 'lifepo4', 'nmc'] as const
export type BatteryChemistry = (typeof BATTERY_CHEMISTRIES)[number]

/** Wave forms that inverters give. */
export const INVERTER_WAVEFORMS = ['pure-sine', 'modified-sine'] as const
export type InverterWaveform = (typeof INVERTER_WAVEFORMS)[number]

/** How an inverter is connected to the battery, weakest first. */
export const CONNECTION_KINDS = ['vehicle-socket', 'quick-connector', 'battery-terminals'] as const
export type ConnectionKind = (typeof CONNECTION_KINDS)[number]

/** What an inverter may have beside its power. */
export const INVERTER_FEATURES = [
  'usb-outlet',
  'remote-switch',
  'display',
  'mains-transfer',
  'built-in-charger',
  'hardwire-terminals',
  'residual-current-protection',
  'low-idle-mode',
  'quiet-fan',
  'moisture-sealed',
] as const
export type InverterFeature = (typeof INVERTER_FEATURES)[number]

/** Fuse styles by their bodies: ISO 8820 blade (-3), strip (-5) links; terminal-post blocks; class T. */
export const FUSE_STYLES = ['blade', 'bolted-strip', 'terminal-post', 'class-t'] as const
export type FuseStyle = (typeof FUSE_STYLES)[number]

/** The two systems of conductor sizes. */
export const WIRE_SIZES = ['metric', 'awg'] as const
export type WireSizes = (typeof WIRE_SIZES)[number]
