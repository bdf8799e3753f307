import type { CautionCode } from '../../core/advice/cautions.ts'
import type { FindingCode, FindingValues, Severity } from '../../core/advice/findings.ts'
import type { RatingNoteCode, RatingRefusalCode } from '../../core/loads/rate-load.ts'
import type { PlanFault } from '../../core/sizing.ts'
import type { StepCode } from '../../core/working.ts'
import type { Formats } from './formats.ts'

/** Writes a finding of one code; may word it by its severity. */
export type FindingWriter<C extends FindingCode> = (
  values: FindingValues[C],
  formats: Formats,
  severity: Severity,
) => string

/** Values of a note on how a rating was read; which ones stand in it goes by its code. */
export type RatingNoteValues = Readonly<Record<string, string | number>>

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
  readonly faults: { readonly [C in PlanFault['code']]: (fault: PlanFault) => string }
  readonly steps: { readonly [C in StepCode]: string }
  readonly inverterNeeded: string
  readonly unknownUnit: (sku: string) => string
}
