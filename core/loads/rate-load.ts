import { requireInRange } from '../errors.ts'
import {
  COOKING_EFFICIENCY_LOW,
  COOKING_EFFICIENCY_TYPICAL,
  COOLING_EER_LOW,
  COOLING_EER_TYPICAL,
} from '../tables/rating-figures.ts'
import { horsepowerToWatts } from '../units.ts'
import { isNearMains } from './label/supply.ts'
import { motorInputFor } from './motors.ts'
import { type Converted, completeRating, statedWatts, withinBounds } from './rate-watts.ts'
import type {
  RatedAppliance,
  RatedPower,
  RatingNote,
  RatingRefusal,
  RatingRefusalCode,
} from './rated-power.ts'
import type { Rating } from './rating.ts'
import { readLabel } from './read-label.ts'

export type {
  RatedAppliance,
  RatedPower,
  RatingNote,
  RatingNoteCode,
  RatingRefusal,
  RatingRefusalCode,
} from './rated-power.ts'
export { RATING_NOTES, RATING_REFUSALS } from './rated-power.ts'

/** A rating with what it belongs to. */
export interface RatedLoad {
  readonly rating: Rating
  readonly appliance?: RatedAppliance | undefined
  /** Nominal mains voltage. [V] 100..240 */
  readonly mainsV: number
}

type Of<Basis extends Rating['basis']> = Extract<Rating, { basis: Basis }>

/**
 * Input power of a load from its rating, whatever the rating states.
 *
 * @param load.rating - What is stated of the load's power.
 * @param load.appliance - Its entry in the appliance list: power factor, start kind, whether it cooks.
 * @param load.mainsV - Nominal mains voltage. [V] 100..240
 * @returns Input [W] and apparent [VA] power, 0.1 W to 100 kW, with the working; or a typed refusal
 * @throws CoreError `out_of_range` for a mainsV outside its bounds
 * @remarks Volts x amperes without a power factor are sized at W = VA. Cooking power is sized by the lowest
 * efficiency known and its energy reckoned by the usual one; cooling capacity likewise.
 * @source common-practice, mackay-chapter-7 (cooking), motor-textbook and nec-430-248 (shaft), usc-42-6295
 * and cfr-10-430-32 (cooling), iec-61000-3-2 (corrected supplies)
 * @example rateLoad({ rating: { basis: 'cooking-watts', watts: 700 }, appliance: microwave, mainsV: 230 })
 * //=> { ok: true, inputW: 1400, typicalW: 1093.75, ... }
 */
export function rateLoad(load: RatedLoad): RatedPower | RatingRefusal {
  requireInRange('mainsV', load.mainsV, 100, 240)
  const converted = convert(load)
  return 'refusal' in converted ? converted : completeRating(converted, load.appliance)
}

function convert({ rating, appliance, mainsV }: RatedLoad): Converted | RatingRefusal {
  switch (rating.basis) {
    case 'input-watts':
    case 'measured-watts':
      return statedWatts(rating.watts, rating.basis)
    case 'cooking-watts':
      if (appliance?.ratedByCookingPower !== true) return refuse('cooking-watts-needs-microwave')
      return fromCooking(rating.watts)
    case 'volts-amps':
      return fromVoltsAmps(rating, appliance, mainsV)
    case 'volt-amperes':
      return fromVoltAmperes(rating.voltAmperes, rating.powerFactor, appliance)
    case 'motor-output':
      return fromShaft(rating, mainsV)
    case 'cooling-capacity':
      return fromCooling(rating)
    case 'label-text':
      return fromLabel(rating.text, appliance, mainsV)
  }
}

function refuse(refusal: RatingRefusalCode): RatingRefusal {
  return { ok: false, refusal }
}

function fromCooking(cookingW: number): Converted {
  const inputW = cookingW / COOKING_EFFICIENCY_LOW.value
  const typicalW = cookingW / COOKING_EFFICIENCY_TYPICAL.value
  return {
    inputW,
    typicalW,
    notes: [{ code: 'cooking-power-converted', values: { cookingW, inputW } }],
    working: [
      {
        step: 'rating-cooking-power-sizing',
        values: { cookingW, efficiencyFraction: COOKING_EFFICIENCY_LOW.value, inputW },
        source: 'common-practice',
      },
      {
        step: 'rating-cooking-power-energy',
        values: { cookingW, efficiencyFraction: COOKING_EFFICIENCY_TYPICAL.value, typicalW },
        source: 'mackay-chapter-7',
      },
    ],
  }
}

function fromVoltsAmps(
  { volts, amps, powerFactor }: Of<'volts-amps'>,
  appliance: RatedAppliance | undefined,
  mainsV: number,
): Converted {
  const apparentVA = volts * amps
  const converted = fromVoltAmperes(apparentVA, powerFactor, appliance)
  const differs = !isNearMains({ lowV: volts, highV: volts }, mainsV)
  const note: RatingNote = { code: 'volts-differ-from-mains', values: { volts, mainsV } }
  return {
    ...converted,
    notes: differs ? [note, ...converted.notes] : converted.notes,
    working: [{ step: 'rating-volts-amps', values: { volts, amps, apparentVA } }, ...converted.working],
  }
}

function fromVoltAmperes(
  apparentVA: number,
  powerFactor: number | undefined,
  appliance: RatedAppliance | undefined,
): Converted {
  const factor = powerFactor ?? 1
  const inputW = apparentVA * factor
  const typicalW = apparentVA * (powerFactor ?? appliance?.powerFactor ?? 1)
  const notes: readonly RatingNote[] =
    powerFactor === undefined ? [{ code: 'power-factor-assumed-one', values: { apparentVA } }] : []
  return {
    inputW,
    typicalW,
    apparentVA,
    powerFactor: factor,
    notes,
    working: [{ step: 'rating-volt-amperes', values: { apparentVA, powerFactor: factor, inputW, typicalW } }],
  }
}

/** Shaft power; the larger where both watts and horsepower are given. */
function fromShaft({ watts, horsepower }: Of<'motor-output'>, mainsV: number): Converted | RatingRefusal {
  if (watts === undefined && horsepower === undefined) return refuse('nothing-stated')
  const shaftW = Math.max(watts ?? 0, horsepowerToWatts(horsepower ?? 0))
  if (!withinBounds(shaftW)) return refuse('out-of-bounds')
  const { inputW, apparentVA, efficiencyFraction, powerFactor } = motorInputFor({ shaftW, mainsV })
  return {
    inputW,
    typicalW: inputW,
    apparentVA,
    powerFactor,
    notes: [{ code: 'shaft-power-converted', values: { shaftW, inputW } }],
    working: [
      ...(horsepower === undefined
        ? []
        : [{ step: 'rating-horsepower', values: { horsepower, shaftW }, source: 'nist-sp811' } as const]),
      {
        step: 'rating-motor-output',
        values: { shaftW, efficiencyFraction, inputW, apparentVA },
        source: 'motor-textbook',
      },
    ],
  }
}

function fromCooling({ btuPerHour, eer }: Of<'cooling-capacity'>): Converted {
  const sizingEer = eer ?? COOLING_EER_LOW.value
  const energyEer = eer ?? COOLING_EER_TYPICAL.value
  const inputW = btuPerHour / sizingEer
  const typicalW = btuPerHour / energyEer
  const converted: RatingNote = {
    code: 'cooling-capacity-converted',
    values: { btuPerHour, eer: sizingEer, inputW },
  }
  return {
    inputW,
    typicalW,
    notes:
      eer === undefined
        ? [converted, { code: 'efficiency-assumed', values: { eer: sizingEer } }]
        : [converted],
    working: [
      {
        step: 'rating-cooling-sizing',
        values: { btuPerHour, eer: sizingEer, inputW },
        ...(eer === undefined ? { source: 'usc-42-6295' as const } : {}),
      },
      {
        step: 'rating-cooling-energy',
        values: { btuPerHour, eer: energyEer, typicalW },
        ...(eer === undefined ? { source: 'cfr-10-430-32' as const } : {}),
      },
    ],
  }
}

function fromLabel(
  text: string,
  appliance: RatedAppliance | undefined,
  mainsV: number,
): Converted | RatingRefusal {
  const reading = readLabel(text, { mainsV, ratedByCookingPower: appliance?.ratedByCookingPower })
  if (!reading.ok) return reading
  const { basis, inputW, typicalW, powerFactor, notes } = reading
  const apparent = basis === 'volts-amps' || basis === 'volt-amperes'
  // Watts alone leave the power factor to the appliance list; everything else brings its volt-amperes.
  const statesVA = apparent || powerFactor !== undefined
  return {
    inputW,
    typicalW,
    ...(statesVA ? { apparentVA: reading.apparentVA, powerFactor: powerFactor ?? 1 } : {}),
    notes,
    working: [
      {
        step: 'rating-label-text',
        values: { basis, inputW, typicalW, ...(statesVA ? { apparentVA: reading.apparentVA } : {}) },
      },
    ],
  }
}
