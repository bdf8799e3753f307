import type { FindingCode } from '../../advice/findings.ts'
import type { Verdict } from '../../inverters/choose.ts'

/** Unit that comes nearest to a need, with what rules it out. */
export interface NearMiss {
  readonly verdict: Verdict
  readonly codes: readonly FindingCode[]
}

/**
 * The unit that comes nearest to a need that none fits: fewest failed checks, then the largest.
 *
 * @param verdicts - Verdicts in the order of choice
 * @returns It and what fails; undefined where there is no unit at all
 */
export function nearMissOf(verdicts: readonly Verdict[]): NearMiss | undefined {
  let nearest: NearMiss | undefined
  for (const verdict of verdicts) {
    const codes = failingCodes(verdict)
    // In the order of choice, the later one is at least as large.
    if (nearest === undefined || codes.length <= nearest.codes.length) nearest = { verdict, codes }
  }
  return nearest
}

/**
 * Codes of the checks that a unit fails.
 *
 * @param verdict - Its verdict
 * @returns Codes of severity `fail`; empty where it fits
 */
export function failingCodes({ findings }: Pick<Verdict, 'findings'>): readonly FindingCode[] {
  return findings.filter(({ severity }) => severity === 'fail').map(({ code }) => code)
}
