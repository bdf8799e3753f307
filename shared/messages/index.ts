import type { Caution } from '../../core/advice/cautions.ts'
import type { Finding, FindingCode, FindingOf } from '../../core/advice/findings.ts'
import type { WhatIfKind } from '../../core/advice/vocabulary.ts'
import type { LabelLimit } from '../../core/inverters/label-limits.ts'
import type { ProposalOf, WhatIf } from '../../core/inverters/what-ifs/what-if.ts'
import type {
  KitNote,
  KitNoteCode,
  KitNoteValues,
  KitReason,
  KitReasonCode,
  KitReasonValues,
  KitSpecification,
} from '../../core/range/kit/kit-types.ts'
import type { WireSizes } from '../../core/range/vocabulary.ts'
import type { RuntimeFault } from '../../core/runtime.ts'
import { type DescribedSourceId, SOURCES, type SourceId } from '../../core/tables/sources.ts'
import type { StepCode, WorkingValues } from '../../core/working.ts'
import type { Catalogue, LoadName } from './catalogue.ts'
import { de } from './de.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { type Formats, formatsFor } from './formats.ts'
import { fr } from './fr.ts'
import { type Language, writtenIn } from './languages.ts'
import { type ShownValue, shownValues } from './working-values.ts'

const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en, de, fr, es }

/** Writes everything that people read in one language and one locale's numbers. */
export interface Writer {
  readonly locale: string
  finding(found: Finding): string
  caution(caution: Caution): string
  fault(fault: RuntimeFault): string
  step(code: StepCode): string
  /** The values of a step under names of the language, with their units. */
  stepValues(values: WorkingValues): readonly ShownValue[]
  /** A source by its title, or what it is where it has none. */
  source(id: SourceId): string
  kitReason(reason: KitReason): string
  /** Why a line is of another size than the circuit names; undefined where there is no such reason. */
  kitNote(note: KitNote | undefined): string | undefined
  kitSpecification(specification: KitSpecification): string
  useInstead(sku: string): string
  whatIf(whatIf: WhatIf, loads: readonly LoadName[], currency: string): string
  labelLimit(limit: LabelLimit, load: LoadName): string
}

const writers = new Map<string, Writer>()

/**
 * The writer of a locale, as {@link writtenIn} has it.
 *
 * @param locale - BCP 47 tag
 * @param wireSizes - System of sizes of the shop that is written for: lengths are in feet beside AWG
 * @returns The writer, made once a locale and system
 */
export function writerFor(locale: string, wireSizes: WireSizes = 'metric'): Writer {
  const name = `${locale} ${wireSizes}`
  const kept = writers.get(name)
  if (kept !== undefined) return kept
  if (writers.size >= 50) writers.clear()
  const made = makeWriter(locale, wireSizes)
  writers.set(name, made)
  return made
}

function makeWriter(locale: string, wireSizes: WireSizes): Writer {
  const written = writtenIn(locale)
  const words = CATALOGUES[written.language]
  const formats = formatsFor(written.locale, wireSizes === 'awg')
  return {
    locale: formats.locale,
    finding: (found) => writeFinding(words, found, formats),
    caution: ({ code }) => words.cautions[code],
    step: (code) => words.steps[code],
    stepValues: (values) => shownValues(values, words.working, formats),
    source: (id) => (isDescribed(id, words) ? words.working.sources[id] : SOURCES[id].document),
    kitReason: (reason) => writeKitReason(words, reason, formats),
    kitNote: (note) => (note === undefined ? undefined : writeKitNote(words, note, formats)),
    kitSpecification: (specification) => writeKitSpecification(words, specification, formats),
    useInstead: (sku) => words.useInstead(sku),
    whatIf: (whatIf, loads, currency) => {
      const care = whatIf.outcome === 'fits-with-care'
      return words.whatIfGain(
        writeWhatIf(words, whatIf, loads, formats),
        { ...whatIf, currency, care },
        formats,
      )
    },
    labelLimit: ({ limitW, cookingW }, load) => words.labelLimit({ load, limitW, cookingW }, formats),
    fault: (fault) => writeFault(words, fault, formats),
  }
}

function isDescribed(id: SourceId, { working }: Catalogue): id is DescribedSourceId {
  return Object.hasOwn(working.sources, id)
}

function writeFinding<C extends FindingCode>(words: Catalogue, found: Finding, formats: Formats): string {
  const { code, values, severity } = found as unknown as FindingOf<C>
  return words.findings[code](values, formats, severity)
}

function writeWhatIf<K extends WhatIfKind>(
  words: Catalogue,
  whatIf: WhatIf,
  loads: readonly LoadName[],
  formats: Formats,
): string {
  const { kind, values } = whatIf as unknown as ProposalOf<K>
  const units = whatIf.units.map(({ unit }) => unit.name)
  return words.whatIfs[kind]({ loads: inSteps(whatIf, loads), units, values }, formats)
}

/** Of two changes at once: the loads of the first, then those of the second. */
function inSteps(whatIf: WhatIf, loads: readonly LoadName[]): readonly LoadName[] {
  if (whatIf.kind !== 'combined') return loads
  return whatIf.values.steps.flatMap(({ loadIds }) =>
    loadIds.flatMap((id) => loads[whatIf.loadIds.indexOf(id)] ?? []),
  )
}

function writeKitReason<C extends KitReasonCode>(
  words: Catalogue,
  reason: KitReason,
  formats: Formats,
): string {
  const { code, values } = reason as unknown as { readonly code: C; readonly values: KitReasonValues[C] }
  return words.kitReasons[code](values, formats)
}

function writeKitNote<C extends KitNoteCode>(words: Catalogue, note: KitNote, formats: Formats): string {
  const { code, values } = note as unknown as { readonly code: C; readonly values: KitNoteValues[C] }
  return words.kitNotes[code](values, formats)
}

function writeKitSpecification(words: Catalogue, specification: KitSpecification, formats: Formats): string {
  const { kitSpecifications: write } = words
  switch (specification.role) {
    case 'inverter':
      return write.inverter(specification, formats)
    case 'cable':
      return write.cable(specification, formats)
    case 'fuse':
      return write.fuse(specification, formats)
    case 'connector':
      return write.connector(specification, formats)
    case 'battery':
      return write.battery(specification, formats)
  }
}

function writeFault(words: Catalogue, fault: RuntimeFault, formats: Formats): string {
  if (fault.code === 'inverter-needed') return words.inverterNeeded
  if (fault.code === 'inverter-too-small') {
    return words.inverterTooSmall(fault.runningW, fault.continuousW, formats)
  }
  if (fault.code === 'unknown-unit') return words.unknownUnit(fault.sku)
  const { refusal } = fault
  if (refusal === undefined) return words.faults[fault.code](fault)
  const seen = (refusal.seen ?? [])
    .filter((figure) => figure.quantity !== 'number')
    .map((figure) => `${figure.values.map(formats.number).join(' / ')} ${figure.unit}`.trim())
  const sentence = words.refusals[refusal.refusal]
  return seen.length === 0 ? sentence : `${sentence} ${words.seen(seen.slice(0, 8).join(', '))}`
}
