import type { RatingFigure } from './power-figures.ts'

export {
  CORRECTED_POWER_FACTOR,
  CORRECTED_SUPPLY_W,
  DEFAULT_POWER_FACTOR,
  INPUT_POWER_BOUNDS_W,
  type RatingFigure,
} from './power-figures.ts'

/**
 * Cooking power over mains input to size for: the lowest pair known, 600 W of 1200 W. It lies below the
 * worst grade that the Chinese limits still allow (52 %), as a cautious figure should. 0..1
 */
export const COOKING_EFFICIENCY_LOW: RatingFigure = {
  value: 0.5,
  sourceIds: ['common-practice', 'gb-24849-2017'],
}

/** Cooking power over mains input to expect: the two published pairs at 64 %. 0..1 */
export const COOKING_EFFICIENCY_TYPICAL: RatingFigure = {
  value: 0.64,
  sourceIds: ['mackay-chapter-7', 'microwave-encyclopaedia'],
}

/** Cooking power over mains input that no known oven exceeds, the best pair and a little. 0..1 */
export const COOKING_EFFICIENCY_HIGH: RatingFigure = {
  value: 0.75,
  sourceIds: ['giancoli-microwave-problem', 'rating-judgement'],
}

/**
 * Unlabelled watts below this are a microwave oven's cooking power. [W] Ovens of 650-700 W cooking power
 * state inputs of 1100-1150 W, so an input below 1050 W would belong to an oven smaller than is sold.
 */
export const SMALLEST_MICROWAVE_INPUT_W: RatingFigure = { value: 1050, sourceIds: ['common-practice'] }

/** Btu/h of cooling for each watt, to size for: the lowest limit of the US law of 1990 for room units. */
export const COOLING_EER_LOW: RatingFigure = { value: 8, sourceIds: ['usc-42-6295'] }

/** Btu/h of cooling for each watt, to expect: US limit for 8000-13 999 Btu/h until May 2026. */
export const COOLING_EER_TYPICAL: RatingFigure = { value: 10.9, sourceIds: ['cfr-10-430-32'] }

/** Shaft watts of one metric horsepower (PS, CV): 75 kgf m/s. NIST SP 811 (2008) B.8: 735.4988 W. */
export const WATTS_PER_METRIC_HORSEPOWER = 735.4988
