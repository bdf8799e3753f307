import type { FindingCode } from '../../advice/findings.ts'
import type { Verdict } from '../../inverters/choose.ts'
import type { CoverageAnswer, Gap } from './coverage-types.ts'
import { failingCodes } from './nearest.ts'

interface OpenGap {
  readonly nominalV: CoverageAnswer['nominalV']
  readonly sku: string
  readonly continuousW: number
  lowestNeedW: number
  highestNeedW: number
  readonly planIds: string[]
  readonly codes: Set<FindingCode>
}

/** Gathers plans whose recommended unit is over twice the need, by voltage and unit. */
export class GapList {
  readonly #gaps = new Map<string, OpenGap>()

  /**
   * Adds one plan at one supply voltage.
   *
   * @param planId - The plan
   * @param answer - Its answer, with a recommended unit
   * @param verdicts - Every unit of the voltage in the order of choice
   */
  add(planId: string, answer: CoverageAnswer, verdicts: readonly Verdict[]): void {
    const { nominalV, recommended, requiredContinuousW } = answer
    if (recommended === undefined) return
    const { sku, continuousW } = recommended
    const gap = this.#gaps.get(sku) ?? {
      nominalV,
      sku,
      continuousW,
      lowestNeedW: requiredContinuousW,
      highestNeedW: requiredContinuousW,
      planIds: [],
      codes: new Set<FindingCode>(),
    }
    this.#gaps.set(sku, gap)
    gap.lowestNeedW = Math.min(gap.lowestNeedW, requiredContinuousW)
    gap.highestNeedW = Math.max(gap.highestNeedW, requiredContinuousW)
    gap.planIds.push(planId)
    for (const verdict of verdicts) {
      const { unit } = verdict.inverter
      if (unit.sku === sku) break
      // What is smaller than the need is no alternative.
      if (unit.continuousW < requiredContinuousW) continue
      for (const code of failingCodes(verdict)) gap.codes.add(code)
    }
  }

  /** Every gap, by voltage and then smallest unit first. */
  result(): readonly Gap[] {
    return [...this.#gaps.values()]
      .sort((a, b) => a.nominalV - b.nominalV || a.continuousW - b.continuousW || (a.sku < b.sku ? -1 : 1))
      .map((gap) => ({ ...gap, codes: [...gap.codes].sort() }))
  }
}
