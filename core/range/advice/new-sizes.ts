import { requireInRange } from '../../errors.ts'
import type { WaveformNeed } from '../../loads/vocabulary.ts'
import type { PreparedRange } from '../prepare-range.ts'
import type { InverterWaveform, SupplyVoltage } from '../vocabulary.ts'
import { type ChoiceMethod, maximumCoverage } from './maximum-coverage.ts'

/** Something that shoppers asked for and no unit's size serves, with how often. */
export interface UnmetNeed {
  readonly nominalV: SupplyVoltage
  /** Continuous power that it takes, headroom included. [W] above 0 */
  readonly continuousW: number
  /** Power in its hardest moment of starting. [W] */
  readonly surgeW: number
  readonly waveform: WaveformNeed
  readonly count: number
}

/** A size that the range lacks. */
export interface NewSize {
  readonly nominalV: SupplyVoltage
  readonly continuousW: number
  readonly surgeW: number
  readonly waveform: InverterWaveform
  /** Requests that it would serve beside the other sizes of the advice, each counted once. */
  readonly served: number
}

/** Which new sizes would serve most. */
export interface NewSizes {
  /** Largest gain first. */
  readonly sizes: readonly NewSize[]
  readonly served: number
  /** Requests that some size or other could serve. */
  readonly unmet: number
  readonly method: ChoiceMethod
}

/** A new unit serves a need down to this share of its size: more is over twice the need. */
const LEAST_USE_FRACTION = 0.5

/** Surge over continuous power where a range has no unit to tell it by. Source: common-practice */
const USUAL_SURGE_MULTIPLE = 2

/**
 * Chooses new sizes that would serve most of what nobody could be sold a unit for.
 *
 * Candidates: at each supply voltage every size that some need calls for, with the surge that the range's
 * units have at most. A candidate serves a need of its voltage that it is large enough for and not over twice as
 * large as the smallest unit that would do. The surge and the wave form of a chosen size are then the least that
 * serves the same needs. It is taken that surge lasts as long as the starts do.
 *
 * @param needs - Unmet needs with their counts
 * @param question.most - New sizes at most. 1..10
 * @param question.surgeMultiple - Surge over continuous power that new units have. 1..10
 * @returns The sizes, what they serve, and how they were chosen
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @source maximum-coverage-greedy, maximum-coverage-exact
 */
export function newSizes(
  needs: readonly UnmetNeed[],
  { most, surgeMultiple }: { readonly most: number; readonly surgeMultiple: number },
): NewSizes {
  requireInRange('most', most, 1, 10)
  requireInRange('surgeMultiple', surgeMultiple, 1, 10)
  const candidates = candidatesOf(needs, surgeMultiple)
  const covers = candidates.map((size) =>
    [...candidates.keys()].filter((index) => serves(size, candidates[index])),
  )
  const weights = candidates.map(({ calledForBy }) => sum(calledForBy))
  const { chosen, covered, method } = maximumCoverage(covers, weights, { most })
  return { sizes: shared(chosen, candidates, covers), served: covered, unmet: sum(needs), method }
}

/**
 * Surge over continuous power that the units of a range have at most: what a buyer can expect of a new one.
 *
 * @param range - The range
 * @returns The largest multiple, 1..10
 */
export function surgeMultipleOf({ inverters }: PreparedRange): number {
  const multiples = inverters.map(({ unit }) => unit.surgeW / unit.continuousW)
  if (multiples.length === 0) return USUAL_SURGE_MULTIPLE
  return Math.min(10, Math.max(1, ...multiples))
}

/**
 * Smallest continuous power of a unit that serves a need.
 *
 * @param need - The need
 * @param surgeMultiple - Surge over continuous power
 * @returns Its own power, or more where its start calls for it. [W]
 */
export function leastSizeW(
  { continuousW, surgeW }: Pick<UnmetNeed, 'continuousW' | 'surgeW'>,
  surgeMultiple: number,
): number {
  return Math.max(continuousW, Math.ceil(surgeW / surgeMultiple))
}

/** A size with the needs whose smallest unit it is: they are served together or not at all. */
interface Candidate extends Pick<NewSize, 'nominalV' | 'continuousW'> {
  readonly calledForBy: UnmetNeed[]
}

/** By voltage, smallest first. */
function candidatesOf(needs: readonly UnmetNeed[], surgeMultiple: number): readonly Candidate[] {
  const known = new Map<string, Candidate>()
  for (const need of needs) {
    const { nominalV } = need
    const continuousW = leastSizeW(need, surgeMultiple)
    const name = `${nominalV} ${continuousW}`
    const candidate = known.get(name) ?? { nominalV, continuousW, calledForBy: [] }
    candidate.calledForBy.push(need)
    known.set(name, candidate)
  }
  return [...known.values()].sort((a, b) => a.nominalV - b.nominalV || a.continuousW - b.continuousW)
}

function serves(size: Candidate, least: Candidate | undefined): boolean {
  if (least === undefined || least.nominalV !== size.nominalV) return false
  return least.continuousW <= size.continuousW && size.continuousW * LEAST_USE_FRACTION <= least.continuousW
}

/** Each need goes to the smallest chosen size that serves it, as a shopper's answer would. */
function shared(
  chosen: readonly number[],
  candidates: readonly Candidate[],
  covers: readonly (readonly number[])[],
): readonly NewSize[] {
  const taken = new Set<number>()
  const sizes: NewSize[] = []
  for (const index of chosen) {
    const size = candidates[index]
    const served = (covers[index] ?? []).filter((least) => !taken.has(least))
    for (const least of served) taken.add(least)
    if (size === undefined) continue
    sizes.push(
      sizeOf(
        size,
        served.flatMap((least) => candidates[least]?.calledForBy ?? []),
      ),
    )
  }
  return sizes.sort((a, b) => b.served - a.served || a.nominalV - b.nominalV || a.continuousW - b.continuousW)
}

function sizeOf({ nominalV, continuousW }: Candidate, served: readonly UnmetNeed[]): NewSize {
  const surgeW = served.reduce((most, need) => Math.max(most, need.surgeW), continuousW)
  return {
    nominalV,
    continuousW,
    surgeW,
    waveform: served.some(({ waveform }) => waveform !== 'either') ? 'pure-sine' : 'modified-sine',
    served: sum(served),
  }
}

function sum(needs: readonly UnmetNeed[]): number {
  return needs.reduce((total, { count }) => total + count, 0)
}
