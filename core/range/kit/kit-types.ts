import type { KitRole, KitState } from '../../advice/vocabulary.ts'
import type { BatteryChemistry, ConnectionKind, InverterWaveform } from '../vocabulary.ts'

/** A part that the buyer has. */
export interface OwnedPart {
  readonly role: KitRole
  /** Of this shop; left out, or not of its range any more: the part can't be looked up and is trusted. */
  readonly sku?: string | undefined
  /** Pairs of cable, blocks of a battery. 1..16 */
  readonly quantity: number
}

/** What the buyer says about the kit. */
export interface KitWish {
  readonly owned?: readonly OwnedPart[] | undefined
  /** A battery is wanted too: the one that the supply states is a wish, not there yet. */
  readonly buyBattery?: boolean | undefined
}

/** Values of each reason for a line. */
export interface KitReasonValues {
  /** The unit that the answer recommends. */
  'smallest-that-fits': { readonly requiredContinuousW: number; readonly continuousW: number }
  /** The unit that the buyer asks for in its place. */
  'unit-asked-for': { readonly requiredContinuousW: number; readonly continuousW: number }
  /** A cable that carries the unit's full power that far. */
  'carries-full-power': {
    readonly worstCaseA: number
    readonly ampacityA: number
    readonly dropFraction: number
    readonly lengthM: number
  }
  /** A fuse that carries the unit and protects the cable. */
  'protects-cable': { readonly minA: number; readonly maxA: number }
  'joins-unit': { readonly connectorA: number }
  /** A bank that bears the plan and lasts its days. */
  'lasts-plan': { readonly neededCapacityAh: number; readonly capacityAh: number; readonly days: number }
  /** It comes with the unit. */
  'in-the-box': Record<string, never>
  /** The buyer's own does. */
  'yours-does': Record<string, never>
  /** The buyer's own can't be looked up: compare it with the specification. */
  'yours-unchecked': Record<string, never>
  /** The one in the box, or the buyer's own, does not suit; this one does. */
  'box-unsuitable': Record<string, never>
  'yours-unsuitable': Record<string, never>
  /** The buyer's battery does not carry the plan; this bank does, in its place. */
  'your-battery-too-small': { readonly neededCapacityAh: number; readonly capacityAh: number }
  /** The range holds nothing that suits. */
  'none-in-range': Record<string, never>
  /** The vehicle's own battery feeds its socket, and it is too small. */
  'vehicle-battery-too-small': Record<string, never>
}
export type KitReasonCode = keyof KitReasonValues

/** Every reason, for the contract. */
export const KIT_REASONS = [
  'smallest-that-fits',
  'unit-asked-for',
  'carries-full-power',
  'protects-cable',
  'joins-unit',
  'lasts-plan',
  'in-the-box',
  'yours-does',
  'yours-unchecked',
  'box-unsuitable',
  'yours-unsuitable',
  'your-battery-too-small',
  'none-in-range',
  'vehicle-battery-too-small',
] as const satisfies readonly KitReasonCode[]

/** Why a line is in the kit. */
export type KitReason = {
  [C in KitReasonCode]: { readonly code: C; readonly values: KitReasonValues[C] }
}[KitReasonCode]

/** Both sizes, and what sets them apart: the line's own first. */
interface Sizes {
  /** As '35 mm²' or '2 × 2/0 AWG' */
  readonly size: string
  readonly otherSize: string
}
interface Insulations extends Sizes {
  /** [degC] */
  readonly insulationC: number
  readonly otherInsulationC: number
}

/** Why a cable of the kit is of another size than the circuit of the same answer names. */
export interface KitNoteValues {
  /** Its insulation stands more heat, so that less copper does. */
  'hotter-insulation': Insulations
  /** Its insulation stands less heat, so that more copper is needed. */
  'cooler-insulation': Insulations
  /** It is thicker than it has to be: the range holds none between that suits better. */
  'next-size-we-have': Sizes
  /** It does what the named one does: of several pairs the circuit names more copper than need be. */
  'does-too': Sizes
  /** The kit's fuse is smaller than the one that the circuit names. [A] */
  'smaller-fuse': Sizes & { readonly ratingA: number; readonly otherRatingA: number }
  /** The kit's battery takes another fuse than the one that the circuit reckons with. */
  'for-this-kit': Sizes
}
export type KitNoteCode = keyof KitNoteValues

/** Every such reason, for the contract. */
export const KIT_NOTES = [
  'hotter-insulation',
  'cooler-insulation',
  'next-size-we-have',
  'does-too',
  'smaller-fuse',
  'for-this-kit',
] as const satisfies readonly KitNoteCode[]

/** What sets a line of the kit apart from the rest of the answer. */
export type KitNote = {
  [C in KitNoteCode]: { readonly code: C; readonly values: KitNoteValues[C] }
}[KitNoteCode]

/** What a part must be, whoever sells it. */
export type KitSpecification =
  | {
      readonly role: 'inverter'
      readonly continuousW: number
      readonly inputNominalV: number
      readonly waveform: InverterWaveform
    }
  | {
      readonly role: 'cable'
      /** [A] */
      readonly carriesA: number
      /** One way. [m] */
      readonly lengthM: number
      readonly dropLimitFraction: number
      /** A standard size that does, with ordinary insulation; told where the part comes from elsewhere. */
      readonly standard?: string
      readonly pairs: number
    }
  | {
      readonly role: 'fuse'
      /** The rating lies between these. [A] */
      readonly minA: number
      readonly maxA: number
      readonly voltageV: number
      readonly breakingCapacityA: number
    }
  | { readonly role: 'connector'; readonly kind: ConnectionKind; readonly limitA: number }
  | {
      readonly role: 'battery'
      readonly chemistry: BatteryChemistry
      readonly nominalV: number
      /** Of the whole bank. [Ah] */
      readonly capacityAh: number
      /** Blocks of the named part; left out where there is none. */
      readonly inSeries?: number
      readonly inParallel?: number
    }

/** One part of a kit. */
export interface KitLine {
  readonly role: KitRole
  readonly state: KitState
  readonly quantity: number
  /** Left out where the range does not hold the part. */
  readonly sku?: string | undefined
  readonly name?: string | undefined
  /** Of one: a decimal string. */
  readonly price?: string | undefined
  readonly url?: string | undefined
  readonly specification: KitSpecification
  readonly reason: KitReason
  readonly note?: KitNote | undefined
}

/** Everything that a plan takes. */
export interface Kit {
  readonly lines: readonly KitLine[]
  /** Of what is to be bought here: a decimal string. */
  readonly total: string
  /** Whether the range and the buyer together have every part. */
  readonly complete: boolean
}
