/** What a rating states. The wire contract and the core share these words. */
export const RATING_BASES = [
  'input-watts',
  'measured-watts',
  'cooking-watts',
  'volts-amps',
  'volt-amperes',
  'motor-output',
  'cooling-capacity',
  'label-text',
] as const
export type RatingBasis = (typeof RATING_BASES)[number]

/** Kinds of appliance, for browsing and for a shop's policy. */
export const APPLIANCE_CATEGORIES = [
  'hot-drinks',
  'cooking',
  'kitchen',
  'refrigeration',
  'air-conditioning',
  'space-heating',
  'ventilation',
  'personal-care',
  'washing',
  'cleaning',
  'computing',
  'communication',
  'entertainment',
  'lighting',
  'charging',
  'power-tools',
  'pumps',
  'trade',
  'medical',
] as const
export type ApplianceCategory = (typeof APPLIANCE_CATEGORIES)[number]

/**
 * How an appliance starts: `none` (at most a tenth over its running power), `electronic-inrush` (charging
 * of capacitors, a transformer's or a filament's inrush), `motor`, `compressor`.
 */
export const START_KINDS = ['none', 'electronic-inrush', 'motor', 'compressor'] as const
export type StartKind = (typeof START_KINDS)[number]

/** What wave form an appliance takes, mildest first. */
export const WAVEFORM_NEEDS = ['either', 'pure-sine-advised', 'pure-sine-required'] as const
export type WaveformNeed = (typeof WAVEFORM_NEEDS)[number]

/** Why an appliance has its wave-form need; the sentence stands in the message catalogue. */
export const WAVEFORM_REASONS = [
  'resistive-heat',
  'switch-mode-supply',
  'corrected-supply',
  'brushed-motor',
  'induction-motor',
  'compressor-motor',
  'microwave-transformer',
  'electronic-control',
  'induction-cooking',
  'dimming-or-ballast',
  'sensitive-electronics',
  'medical-device',
  'welding',
  'unknown-load',
] as const
export type WaveformReason = (typeof WAVEFORM_REASONS)[number]

/** Whether an appliance makes heat or cold, the two costliest jobs for a battery. */
export const THERMAL_KINDS = ['heats', 'cools', 'neither'] as const
export type ThermalKind = (typeof THERMAL_KINDS)[number]

/** The two families of mains voltage the appliance list distinguishes. */
export const MAINS_FAMILIES = ['at120V', 'at230V'] as const
export type MainsFamily = (typeof MAINS_FAMILIES)[number]

/**
 * The family of figures that belongs to a shop's mains voltage.
 *
 * @param mainsV - Nominal mains voltage. [V] 100..240
 * @returns `at120V` below 160 V, else `at230V`
 */
export function mainsFamilyFor(mainsV: number): MainsFamily {
  return mainsV < 160 ? 'at120V' : 'at230V'
}
