import type { OtherRate } from '../range/range-document.ts'
import { type LeadAcidFigures, type LithiumFigures, ONE_FIGURE_RATE_EXPONENT } from '../tables/chemistries.ts'
import { lowestThatHolds } from './table-lookup.ts'

/** How many short-rate capacities of the battery's own sheet shaped the law. */
export type RateBasis = 'typical-shape' | 'one-short-rate' | 'two-short-rates'

/**
 * Charge that a battery gives at a steady current.
 * Lead-acid: `Q(I) = chargeAh / (1 + (I / halfA)^exponent)`.
 * Lithium: `Q(I) = chargeAh x max(1, I / ratedA)^-exponent`.
 */
export interface RateCapacity {
  readonly law: 'generalised-peukert' | 'peukert'
  readonly chargeAh: number
  readonly scaleA: number
  readonly exponent: number
  readonly basis: RateBasis
}

/**
 * Charge available at a steady current, at 25 C from a battery as new.
 *
 * @param rate - The battery's law
 * @param currentA - Steady current. [A] 0 or more
 * @returns Available charge. [Ah]
 * @remarks Falls, or stays, as the current rises.
 * @source galushkin-2021
 */
export function capacityAtCurrentAh(rate: RateCapacity, currentA: number): number {
  const share = currentA / rate.scaleA
  // The innermost step of a run: written so, the power costs half of what the operator's last digit does.
  if (rate.law === 'generalised-peukert') {
    return rate.chargeAh / (1 + Math.exp(rate.exponent * Math.log(share)))
  }
  return share <= 1 ? rate.chargeAh : rate.chargeAh * Math.exp(-rate.exponent * Math.log(share))
}

/**
 * The generalised Peukert law of a lead-acid battery.
 *
 * @param figures - Typical shape of the chemistry
 * @param rated - Stated capacity [Ah] and its hour rate [h]
 * @param others - Capacities at other hour rates; those at a third of the rated time or less shape the law
 * @returns The law, exact at the rated point and, where a fit exists, at one or two short-rate points
 * @remarks One figure: exponent 0.9, half-rate solved. Two: both solved. A rated 10 h and a 20 h figure lie
 * too close together to tell anything of the short rates, so they never shape it.
 * @source battery-model-fit
 */
export function leadAcidRate(
  figures: LeadAcidFigures,
  rated: OtherRate,
  others: readonly OtherRate[],
): RateCapacity {
  const base = nearestTwentyHours([rated, ...others])
  const shorts = [rated, ...others]
    .filter((figure) => figure.hourRateH <= base.hourRateH / 3 && figure.capacityAh < base.capacityAh)
    .sort((left, right) => left.hourRateH - right.hourRateH)
  const fit = fitTwo(base, shorts) ?? fitOne(base, shorts)
  const halfRatePerH = fit?.halfRatePerH ?? figures.halfRatePerH
  const exponent = fit?.exponent ?? figures.rateExponent
  return {
    law: 'generalised-peukert',
    chargeAh: base.capacityAh * (1 + (1 / (base.hourRateH * halfRatePerH)) ** exponent),
    scaleA: base.capacityAh * halfRatePerH,
    exponent,
    basis: fit?.basis ?? 'typical-shape',
  }
}

/**
 * Peukert's law of a lithium battery, flat below the rated current.
 *
 * @param figures - Figures of the chemistry
 * @param rated - Stated capacity [Ah] and its hour rate [h]
 * @param others - Capacities at other hour rates; the shortest one sets the exponent, within 1 and 1.15
 * @returns The law; printed charts show the same capacity at a 10 h and a 5 h rate, so it is flat above 5 h
 * @source lfp-block-sheets
 */
export function lithiumRate(
  figures: LithiumFigures,
  rated: OtherRate,
  others: readonly OtherRate[],
): RateCapacity {
  const hours = Math.min(rated.hourRateH, figures.slowestHourRateH)
  const short = [...others].sort((left, right) => left.hourRateH - right.hourRateH)[0]
  const stated = short !== undefined && short.hourRateH <= hours / 2
  const peukert = stated
    ? 1 +
      Math.log(rated.capacityAh / short.capacityAh) /
        Math.log((hours * short.capacityAh) / (short.hourRateH * rated.capacityAh))
    : figures.peukertExponent
  return {
    law: 'peukert',
    chargeAh: rated.capacityAh,
    scaleA: rated.capacityAh / hours,
    exponent: Number.isFinite(peukert) ? Math.min(Math.max(peukert - 1, 0), 0.15) : 0.15,
    basis: stated ? 'one-short-rate' : 'typical-shape',
  }
}

interface Fit {
  readonly halfRatePerH: number
  readonly exponent: number
  readonly basis: RateBasis
}

function nearestTwentyHours(figures: readonly [OtherRate, ...OtherRate[]]): OtherRate {
  const distance = (figure: OtherRate) => Math.abs(Math.log(figure.hourRateH / 20))
  return figures.reduce((best, figure) => (distance(figure) < distance(best) ? figure : best))
}

/**
 * `w = halfRate^-m` from one point: r (1 + (r/h)^m w) = 1 + (1/H)^m w, with r the capacity over the rated one.
 * Undefined where no law of exponent m goes through the point.
 */
function halfRatePower(base: OtherRate, short: OtherRate, exponent: number): number | undefined {
  const ratio = short.capacityAh / base.capacityAh
  const slope = ratio * (ratio / short.hourRateH) ** exponent - (1 / base.hourRateH) ** exponent
  const power = (1 - ratio) / slope
  return slope > 0 && power > 0 && Number.isFinite(power) ? power : undefined
}

function asFit(power: number | undefined, exponent: number, basis: RateBasis): Fit | undefined {
  if (power === undefined) return undefined
  const halfRatePerH = power ** (-1 / exponent)
  // Outside these bounds the stated capacities contradict each other.
  return halfRatePerH >= 0.05 && halfRatePerH <= 20 ? { halfRatePerH, exponent, basis } : undefined
}

function fitOne(base: OtherRate, shorts: readonly OtherRate[]): Fit | undefined {
  const short = shorts[0]
  if (short === undefined) return undefined
  return asFit(
    halfRatePower(base, short, ONE_FIGURE_RATE_EXPONENT),
    ONE_FIGURE_RATE_EXPONENT,
    'one-short-rate',
  )
}

/** Exponents searched; the published tables give 0.77 to 1.2. */
const EXPONENT_BOUNDS = [0.5, 1.6] as const

function fitTwo(base: OtherRate, shorts: readonly OtherRate[]): Fit | undefined {
  const short = shorts[0]
  const middle = shorts.at(-1)
  if (short === undefined || middle === undefined || middle.hourRateH < 2 * short.hourRateH) return undefined
  const [low, high] = EXPONENT_BOUNDS
  const shortNeedsMore = (exponent: number): boolean => {
    const atShort = halfRatePower(base, short, exponent)
    const atMiddle = halfRatePower(base, middle, exponent)
    return atShort !== undefined && (atMiddle === undefined || atShort <= atMiddle)
  }
  if (shortNeedsMore(low) || !shortNeedsMore(high)) return undefined
  const exponent = lowestThatHolds(low, high, shortNeedsMore)
  const atShort = halfRatePower(base, short, exponent)
  const atMiddle = halfRatePower(base, middle, exponent)
  if (atShort === undefined || atMiddle === undefined) return undefined
  if (Math.abs(atShort - atMiddle) > 1e-6 * atMiddle) return undefined
  return asFit(atShort, exponent, 'two-short-rates')
}
