import type { CautionCode } from '../../core/advice/cautions.ts'
import type { FindingCode, FindingValues, Severity } from '../../core/advice/findings.ts'
import type { WhatIfKind } from '../../core/advice/vocabulary.ts'
import type { WhatIfValues } from '../../core/inverters/what-ifs/what-if.ts'
import type { RatingNoteCode, RatingRefusalCode } from '../../core/loads/rate-load.ts'
import type {
  KitNoteCode,
  KitNoteValues,
  KitReasonCode,
  KitReasonValues,
  KitSpecification,
} from '../../core/range/kit/kit-types.ts'
import type { PlanFault } from '../../core/sizing.ts'
import type { StepCode } from '../../core/working.ts'
import type { Formats } from './formats.ts'
import type { WorkingCatalogue } from './working-values.ts'

/** Writes a finding of one code; may word it by its severity. */
export type FindingWriter<C extends FindingCode> = (
  values: FindingValues[C],
  formats: Formats,
  severity: Severity,
) => string

/** Values of a note on how a rating was read; which ones stand in it goes by its code. */
export type RatingNoteValues = Readonly<Record<string, string | number>>

/** A load's name: the appliance list's, or of the shopper's own choosing. */
export interface LoadName {
  readonly name: string
  readonly own: boolean
}

/** What a what-if's clause tells of: the loads that it changes and the names of its units. */
export interface WhatIfTold<K extends WhatIfKind> {
  readonly loads: readonly LoadName[]
  readonly units: readonly string[]
  readonly values: WhatIfValues[K]
}

/** What a what-if buys. `care`: something is left to mind. */
export interface WhatIfGain {
  readonly price: string
  readonly priceDifference?: string | undefined
  readonly currency: string
  readonly runtimeHours?: number | undefined
  readonly care: boolean
}

/** Every sentence of one language. */
export interface Catalogue {
  readonly findings: { readonly [C in FindingCode]: FindingWriter<C> }
  readonly cautions: { readonly [C in CautionCode]: string }
  readonly ratingNotes: {
    readonly [C in RatingNoteCode]: (values: RatingNoteValues, formats: Formats) => string
  }
  /** Why a rating gives no power, and what to send instead. */
  readonly refusals: { readonly [C in RatingRefusalCode]: string }
  /** Introduces what was seen on a plate that could not be used. */
  readonly seen: (figures: string) => string
  /** Why a line is in a kit, and what the part must be. */
  readonly kitReasons: {
    readonly [C in KitReasonCode]: (values: KitReasonValues[C], formats: Formats) => string
  }
  /** Why a cable of the kit is of another size than the circuit names. */
  readonly kitNotes: {
    readonly [C in KitNoteCode]: (values: KitNoteValues[C], formats: Formats) => string
  }
  readonly kitSpecifications: {
    readonly [R in KitSpecification['role']]: (
      specification: Extract<KitSpecification, { readonly role: R }>,
      formats: Formats,
    ) => string
  }
  /** Names the part of the range that is right. */
  readonly useInstead: (sku: string) => string
  /** What a what-if comes to, as a clause that a price can follow. */
  readonly whatIfs: { readonly [K in WhatIfKind]: (told: WhatIfTold<K>, formats: Formats) => string }
  /** The clause with price, run time and whether anything is left to mind. */
  readonly whatIfGain: (clause: string, gain: WhatIfGain, formats: Formats) => string
  readonly labelLimit: (
    limit: { readonly load: LoadName; readonly limitW: number; readonly cookingW?: number | undefined },
    formats: Formats,
  ) => string
  readonly faults: { readonly [C in PlanFault['code']]: (fault: PlanFault) => string }
  readonly steps: { readonly [C in StepCode]: string }
  readonly working: WorkingCatalogue
  readonly inverterNeeded: string
  readonly inverterTooSmall: (runningW: number, continuousW: number, formats: Formats) => string
  readonly unknownUnit: (sku: string) => string
}
