import { ERROR_BANDS, UNTESTED_WIDENING } from '../tables/chemistries.ts'
import type { BankModel } from './bank.ts'

/** By how much a prediction may lie under and over the truth. */
export interface ErrorBand {
  readonly underFraction: number
  readonly overFraction: number
}

/**
 * Error band of a predicted run time.
 *
 * @param model - The bank
 * @param hours - Predicted run time. [h] above 0
 * @returns Shares by which the prediction may lie under and over the true run time. 0..1
 * @remarks The true time lies between hours / (1 + over) and hours / (1 - under). Narrower with short-rate
 * capacities from the battery's own sheet, wider in the cold, above 40 C, with age and for gel, where nothing
 * was tested.
 * @source battery-model-fit
 */
export function errorBand(model: BankModel, hours: number): ErrorBand {
  const rows = ERROR_BANDS[bandName(model)]
  const widening = untestedWidening(model)
  let [lowHours, under, over]: readonly [number, number, number] = rows[0]
  for (const [highHours, highUnder, highOver] of rows) {
    if (hours <= lowHours) break
    if (highHours === lowHours) continue
    const share = Math.min(1, Math.log(hours / lowHours) / Math.log(highHours / lowHours))
    under += (highUnder - under) * share
    over += (highOver - over) * share
    lowHours = highHours
  }
  return { underFraction: under + widening, overFraction: over + widening }
}

function bandName(model: BankModel): keyof typeof ERROR_BANDS {
  if (model.figures.kind.family === 'lithium') return 'lithium'
  if (model.rate.basis === 'two-short-rates') return 'lead-acid-two-figures'
  return model.rate.basis === 'one-short-rate' ? 'lead-acid-one-figure' : 'lead-acid-default'
}

function untestedWidening(model: BankModel): number {
  const extremes = model.temperatureC < 10 || model.temperatureC > 40
  return (
    (extremes ? UNTESTED_WIDENING.coldFraction : 0) +
    (model.healthFraction < 1 ? UNTESTED_WIDENING.agedFraction : 0) +
    (model.bank.chemistry === 'gel' ? UNTESTED_WIDENING.gelFraction : 0)
  )
}
