import type { BankModel } from './bank.ts'
import type { RunLimit, SteadyLoad } from './discharge.ts'
import { loadCurrentA } from './operating-point.ts'

/** What to tell beside a run time. */
export type RuntimeWarning =
  | 'under-20-minutes'
  | 'voltage-collapse'
  | 'cut-off-at-once'
  | 'discharge-limit-exceeded'
  | 'nothing-usable'
  | 'longer-than-a-year'
  | 'self-discharge-not-counted'
  | 'heavier-than-advised'
  | 'gel-figures-unverified'
  | 'cold-lithium-charge'

/** Below this no firm time is told: the published tables err by up to three quarters. [h] battery-model-fit */
export const FIRM_HOURS = 1 / 3

/** A run this long loses charge at rest too: 3 to 15 % a month (flooded-block-sheet, agm-block-sheets). [h] */
const SELF_DISCHARGE_HOURS = 720

/** A run as far as the warnings need it. */
export interface WarnedRun {
  readonly load: SteadyLoad
  readonly hours: number
  readonly limitedBy: RunLimit
}

/**
 * Warnings that go with a predicted run time.
 *
 * @param model - The bank
 * @param run - Load, predicted hours before any cap, what ends it
 * @returns Codes, in a fixed order
 */
export function runtimeWarnings(model: BankModel, run: WarnedRun): readonly RuntimeWarning[] {
  const { load, hours, limitedBy } = run
  const startA = loadCurrentA(model, model.startSocFraction, load.powerW, load.cableOhm)
  const stopped = hours === 0
  const lithium = model.figures.kind.family === 'lithium'
  const warnings: RuntimeWarning[] = []
  const tell = (code: RuntimeWarning, applies: boolean) => {
    if (applies) warnings.push(code)
  }
  tell('under-20-minutes', hours < FIRM_HOURS)
  tell('voltage-collapse', !Number.isFinite(startA))
  tell('cut-off-at-once', stopped && limitedBy === 'cut-off-voltage')
  tell('discharge-limit-exceeded', limitedBy === 'discharge-limit')
  tell('nothing-usable', stopped && limitedBy === 'state-of-charge')
  tell('longer-than-a-year', hours > 8760)
  tell('self-discharge-not-counted', hours > SELF_DISCHARGE_HOURS)
  tell('heavier-than-advised', startA > model.figures.advisedLimitPerH * model.bank.capacityAh)
  tell('gel-figures-unverified', model.bank.chemistry === 'gel')
  tell('cold-lithium-charge', lithium && model.temperatureC < model.figures.chargeTemperatureC[0])
  return warnings
}
