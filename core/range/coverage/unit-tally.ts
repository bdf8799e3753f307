import type { FindingCode } from '../../advice/findings.ts'
import type { Verdict } from '../../inverters/choose.ts'
import type { PreparedInverter } from '../prepare-range.ts'
import type { UnitCoverage } from './coverage-types.ts'
import { failingCodes } from './nearest.ts'

interface Tally {
  fits: number
  recommended: number
  readonly shadows: Map<string, number>
  /** What has failed with every plan so far; undefined before the first. */
  failing: readonly FindingCode[] | undefined
}

/** Counts for each unit how often it fits and is recommended, and what is recommended in its place. */
export class UnitTally {
  readonly #tallies = new Map<PreparedInverter, Tally>()

  constructor(inverters: readonly PreparedInverter[]) {
    for (const inverter of inverters) {
      this.#tallies.set(inverter, { fits: 0, recommended: 0, shadows: new Map(), failing: undefined })
    }
  }

  /**
   * Counts one plan at one supply voltage.
   *
   * @param verdicts - Verdicts of every unit of that voltage
   * @param chosen - The one that is recommended
   */
  count(verdicts: readonly Verdict[], chosen: Verdict | undefined): void {
    for (const verdict of verdicts) {
      const tally = this.#tallies.get(verdict.inverter)
      if (tally === undefined) continue
      const failing = failingCodes(verdict)
      tally.failing = tally.failing?.filter((code) => failing.includes(code)) ?? failing
      if (!verdict.fits || chosen === undefined) continue
      tally.fits += 1
      const { sku } = chosen.inverter.unit
      if (verdict === chosen) tally.recommended += 1
      else tally.shadows.set(sku, (tally.shadows.get(sku) ?? 0) + 1)
    }
  }

  /** Every unit in the order of choice. */
  result(): readonly UnitCoverage[] {
    return [...this.#tallies].map(([{ unit }, { fits, recommended, shadows, failing }]) => ({
      sku: unit.sku,
      nominalV: unit.inputNominalV,
      fits,
      recommended,
      shadowedBy: recommended > 0 ? [] : ranked(shadows),
      codes: fits > 0 ? [] : (failing ?? []),
    }))
  }
}

function ranked(shadows: ReadonlyMap<string, number>): UnitCoverage['shadowedBy'] {
  return [...shadows]
    .map(([sku, plans]) => ({ sku, plans }))
    .sort((a, b) => b.plans - a.plans || (a.sku < b.sku ? -1 : 1))
}
