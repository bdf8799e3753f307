import type { Mutant } from './places.ts'

/** A change after which core answers as before, so that no test can notice. */
interface Equivalent {
  readonly file: string
  /** The changed line as it stands, without its indentation; it stays found when lines move. */
  readonly code: string
  readonly after: string
  readonly why: string
}

/** Changes known to change no answer, each with the reason. */
export const EQUIVALENTS: readonly Equivalent[] = [
  {
    file: 'core/wiring/choose-conductor.ts',
    code: 'const isMore = conductor.areaMm2 * parallelPairs > thickestMm2 * (parallelPairs - 1)',
    after: '>=',
    why: 'no standard size is a half or two thirds of the thickest: 75 and 100 mm2, or 53.6 and 71.5 mm2 of AWG',
  },
]

/**
 * Whether a change is known to change no answer.
 *
 * @param mutant - The change
 * @param text - The source that it is made in
 * @returns True where it stands in {@link EQUIVALENTS}
 */
export function isEquivalent({ file, start, after }: Mutant, text: string): boolean {
  const from = text.lastIndexOf('\n', start) + 1
  const to = text.indexOf('\n', start)
  const code = text.slice(from, to === -1 ? text.length : to).trim()
  return EQUIVALENTS.some((known) => known.file === file && known.code === code && known.after === after)
}
