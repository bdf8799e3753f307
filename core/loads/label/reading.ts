/** What a figure of a rating plate measures. `number` = a bare number, no unit beside it. */
export const LABEL_QUANTITIES = [
  'voltage',
  'current',
  'power',
  'apparent-power',
  'horsepower',
  'cooling-capacity',
  'frequency',
  'power-factor',
  'number',
] as const
export type LabelQuantity = (typeof LABEL_QUANTITIES)[number]

/**
 * What a figure of a rating plate belongs to: the mains side, the side the device gives out, the power
 * given to the food, a motor's shaft, the cold of an air conditioner, something that says nothing of
 * running power (standby, fuse, locked rotor), or the plate does not say.
 */
export const LABEL_ROLES = ['input', 'output', 'cooking', 'shaft', 'cooling', 'other', 'unknown'] as const
export type LabelRole = (typeof LABEL_ROLES)[number]

/** One figure read on a rating plate. */
export interface LabelFigure {
  readonly quantity: LabelQuantity
  /** In `unit`, in the order of the plate; two or more for a range or a list. */
  readonly values: readonly number[]
  /** The unit of `values`, already without prefix. */
  readonly unit: 'V' | 'A' | 'W' | 'VA' | 'hp' | 'Btu/h' | 'Hz' | ''
  readonly role: LabelRole
  /** The characters it was read from. */
  readonly text: string
}

/** What was assumed while a plate was read; the sentence stands in the message catalogue. */
export const LABEL_NOTES = [
  'range-high-used',
  'largest-of-several',
  'separator-read-as-thousands',
  'letters-read-as-digits',
  'count-multiplied',
  'wide-range-current',
  'mains-voltage-assumed',
  'power-factor-assumed-one',
  'volt-amperes-not-used',
  'watts-not-used',
  'cooking-power-converted',
  'cooking-power-assumed',
  'input-below-output',
  'shaft-power-converted',
  'shaft-power-assumed',
  'cooling-capacity-converted',
] as const
export type LabelNoteCode = (typeof LABEL_NOTES)[number]

export interface LabelNote {
  readonly code: LabelNoteCode
  readonly values: Readonly<Record<string, number | string>>
}

/** What the input power was worked out from. */
export const LABEL_BASES = [
  'watts',
  'volts-amps',
  'volt-amperes',
  'horsepower',
  'shaft-watts',
  'cooking-watts',
  'btu',
  'cooling-watts',
] as const
export type LabelBasis = (typeof LABEL_BASES)[number]

/** Why a plate gives no input power. */
export const LABEL_REFUSALS = [
  'nothing-read',
  'no-power-found',
  'output-only',
  'direct-current-only',
  'three-phase',
  'voltage-mismatch',
  'ambiguous',
  'out-of-bounds',
] as const
export type LabelRefusalCode = (typeof LABEL_REFUSALS)[number]

export interface LabelPower {
  readonly ok: true
  /** Input power to size for. [W] */
  readonly inputW: number
  /** Input power to expect on an ordinary day. [W] at most `inputW` */
  readonly typicalW: number
  readonly apparentVA: number
  /** Only where the plate states it or lets it be worked out. 0..1 */
  readonly powerFactor?: number
  readonly basis: LabelBasis
  readonly seen: readonly LabelFigure[]
  readonly notes: readonly LabelNote[]
}

export interface LabelRefusal {
  readonly ok: false
  readonly refusal: LabelRefusalCode
  readonly seen: readonly LabelFigure[]
}

export type LabelReading = LabelPower | LabelRefusal

/** What the reader knows besides the text. */
export interface LabelContext {
  /** Nominal mains voltage of the shop. [V] 100..240 */
  readonly mainsV: number
  /** True for a microwave oven: its advertised power is what it gives the food. */
  readonly ratedByCookingPower?: boolean | undefined
}
