import type { Caution } from '../../core/advice/cautions.ts'
import type { Finding, FindingCode, FindingOf } from '../../core/advice/findings.ts'
import type { RuntimeFault } from '../../core/runtime.ts'
import type { StepCode } from '../../core/working.ts'
import type { Catalogue } from './catalogue.ts'
import { en } from './en.ts'
import { type Formats, formatsFor } from './formats.ts'

/** Catalogues by language subtag. */
const CATALOGUES: ReadonlyMap<string, Catalogue> = new Map([['en', en]])

/** Writes everything that people read in one language and one locale's numbers. */
export interface Writer {
  readonly locale: string
  finding(found: Finding): string
  caution(caution: Caution): string
  fault(fault: RuntimeFault): string
  step(code: StepCode): string
}

const writers = new Map<string, Writer>()

/**
 * The writer of a locale. A language without a catalogue is written in English, numbers included.
 *
 * @param locale - BCP 47 tag
 * @returns The writer, made once a locale
 */
export function writerFor(locale: string): Writer {
  const kept = writers.get(locale)
  if (kept !== undefined) return kept
  if (writers.size >= 50) writers.clear()
  const made = makeWriter(locale)
  writers.set(locale, made)
  return made
}

function makeWriter(locale: string): Writer {
  const catalogue = CATALOGUES.get(languageOf(locale))
  const words = catalogue ?? en
  const formats = formatsFor(catalogue === undefined ? 'en' : locale)
  return {
    locale: formats.locale,
    finding: (found) => writeFinding(words, found, formats),
    caution: ({ code }) => words.cautions[code],
    step: (code) => words.steps[code],
    fault: (fault) => writeFault(words, fault, formats),
  }
}

function writeFinding<C extends FindingCode>(words: Catalogue, found: Finding, formats: Formats): string {
  const { code, values, severity } = found as unknown as FindingOf<C>
  return words.findings[code](values, formats, severity)
}

function writeFault(words: Catalogue, fault: RuntimeFault, formats: Formats): string {
  if (fault.code === 'inverter-needed') return words.inverterNeeded
  if (fault.code === 'unknown-unit') return words.unknownUnit(fault.sku)
  const { refusal } = fault
  if (refusal === undefined) return words.faults[fault.code](fault)
  const seen = (refusal.seen ?? [])
    .filter((figure) => figure.quantity !== 'number')
    .map((figure) => `${figure.values.map(formats.number).join(' / ')} ${figure.unit}`.trim())
  const sentence = words.refusals[refusal.refusal]
  return seen.length === 0 ? sentence : `${sentence} ${words.seen(seen.slice(0, 8).join(', '))}`
}

function languageOf(locale: string): string {
  return locale.split('-', 1)[0]?.toLowerCase() ?? 'en'
}
