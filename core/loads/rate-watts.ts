import {
  CORRECTED_POWER_FACTOR,
  CORRECTED_SUPPLY_W,
  DEFAULT_POWER_FACTOR,
  INPUT_POWER_BOUNDS_W,
} from '../tables/power-figures.ts'
import type { WorkingStep } from '../working.ts'
import type { RatedAppliance, RatedPower, RatingNote, RatingRefusal } from './rated-power.ts'

/** A conversion before its bounds are checked and its power factor is filled in. */
export interface Converted {
  readonly inputW: number
  readonly typicalW: number
  readonly apparentVA?: number
  readonly powerFactor?: number | undefined
  readonly notes: readonly RatingNote[]
  readonly working: readonly WorkingStep[]
}

/**
 * Input power where the watts that a load takes are known: the list's, a plate's or a meter's.
 *
 * @param watts - Input power. [W] Outside 0.1..100000 it is refused
 * @param basis - Stated or measured
 * @param appliance - Its entry in the appliance list, for the power factor
 * @returns Input [W] and apparent [VA] power, or a typed refusal
 * @example rateWatts(850, 'input-watts', kettle) //=> { ok: true, inputW: 850, apparentVA: 850, ... }
 */
export function rateWatts(
  watts: number,
  basis: 'input-watts' | 'measured-watts',
  appliance: RatedAppliance | undefined,
): RatedPower | RatingRefusal {
  return completeRating(statedWatts(watts, basis), appliance)
}

/**
 * The conversion of watts that need none.
 *
 * @param watts - Input power. [W]
 * @param basis - Stated or measured
 * @returns The same watts, with their working
 */
export function statedWatts(watts: number, basis: 'input-watts' | 'measured-watts'): Converted {
  const step = basis === 'input-watts' ? 'rating-input-watts' : 'rating-measured-watts'
  return { inputW: watts, typicalW: watts, notes: [], working: [{ step, values: { inputW: watts } }] }
}

/**
 * Checks the bounds of a conversion, and works out the volt-amperes where only watts are known.
 *
 * @param converted - Input power with what else is known. [W], [VA]
 * @param appliance - Its entry in the appliance list, for the power factor
 * @returns Input [W] and apparent [VA] power, or the refusal `out-of-bounds`
 * @source iec-61000-3-2 (corrected supplies), rating-judgement (power factor of an unlisted load)
 */
export function completeRating(
  converted: Converted,
  appliance: RatedAppliance | undefined,
): RatedPower | RatingRefusal {
  const { inputW, typicalW, notes, working } = converted
  if (!withinBounds(inputW) || !withinBounds(typicalW)) return { ok: false, refusal: 'out-of-bounds' }
  const assumed = converted.powerFactor === undefined && converted.apparentVA === undefined
  const powerFactor = converted.powerFactor ?? powerFactorFor(appliance, inputW)
  const apparentVA = Math.max(inputW, converted.apparentVA ?? inputW / powerFactor)
  return {
    ok: true,
    inputW,
    typicalW,
    apparentVA,
    powerFactor: inputW / apparentVA,
    notes: assumed ? [...notes, { code: 'power-factor-assumed', values: { powerFactor } }] : notes,
    working: assumed
      ? [...working, { step: 'rating-apparent-power', values: { inputW, powerFactor, apparentVA } }]
      : working,
  }
}

/**
 * Whether a power is one that a load can have.
 *
 * @param watts - [W]
 * @returns True from 0.1 W to 100 kW
 */
export function withinBounds(watts: number): boolean {
  return watts >= INPUT_POWER_BOUNDS_W.low && watts <= INPUT_POWER_BOUNDS_W.high
}

/** Power factor of an appliance whose rating states none: its usual one, corrected above 75 W. */
function powerFactorFor(appliance: RatedAppliance | undefined, inputW: number): number {
  if (appliance === undefined) return DEFAULT_POWER_FACTOR.value
  const usual = appliance.powerFactor
  const corrected = appliance.startKind === 'electronic-inrush' && inputW > CORRECTED_SUPPLY_W.value
  return corrected ? Math.max(usual, CORRECTED_POWER_FACTOR.value) : usual
}
