import { requireInRange } from '../errors.ts'
import type { BatteryChemistry, SupplyVoltage } from '../range/vocabulary.ts'
import { CHEMISTRIES } from '../tables/chemistries.ts'

/** A question to {@link rechargeFor}. */
export interface RechargeQuestion {
  readonly bank: {
    readonly chemistry: BatteryChemistry
    readonly nominalV: SupplyVoltage
    readonly capacityAh: number
    readonly temperatureC?: number | undefined
  }
  /** Energy taken from the battery that is to be put back. [Wh] 0..1e9 */
  readonly energyWh: number
  /** Hours of full sun a day. 0.5..12 */
  readonly sunHours?: number | undefined
  /** Current of an alternator or mains charger. [A] 0.1..2000 */
  readonly chargerA?: number | undefined
}

/** What to tell beside a recharge. */
export type RechargeWarning =
  | 'lithium-charge-below-freezing'
  | 'charge-temperature-outside-range'
  | 'charge-current-above-limit'
  | 'more-than-the-battery-holds'

/** How energy is put back. */
export interface Recharge {
  /** Charge to put back, losses included. [Ah] */
  readonly chargeAh: number
  /** Energy that the charging source gives, losses included. [Wh] */
  readonly energyFromSourceWh: number
  /** Panel rating that puts it back in one day of those sun hours. [W] */
  readonly solarW: number | undefined
  /** Time at the charger's current. [h] */
  readonly chargerHours: number | undefined
  /** Tapering time that a full lead-acid charge takes beside it. [h] 0 for lithium */
  readonly absorptionHours: number
  readonly warnings: readonly RechargeWarning[]
}

/** What a panel gives in service over its rating: heat, dirt, controller. Common practice, no published source. */
export const PANEL_SERVICE_FRACTION = 0.75

/** A lead-acid battery takes the last fifth of its charge at a falling current. Common practice. [h] */
const LEAD_ACID_ABSORPTION_HOURS = 3

/**
 * What it takes to put a day's energy back.
 *
 * @param question - Bank, energy taken, sun hours, charger's current
 * @returns Charge and energy with the chemistry's losses, panel rating, charging time, warnings
 * @throws CoreError `out_of_range`, naming the field and its bounds
 * @remarks Charge = energy / nominal voltage x charge factor; charger time = charge / current, the current held
 * to what the chemistry takes; source energy = energy / round-trip efficiency; panel = source energy / (sun
 * hours x 0.75). A lithium battery below 0 C must not be charged at all.
 * @source battery-handbooks
 */
export function rechargeFor(question: RechargeQuestion): Recharge {
  const { bank, energyWh, sunHours, chargerA } = question
  const figures = CHEMISTRIES[bank.chemistry]
  const temperatureC = bank.temperatureC ?? 25
  requireInRange('energyWh', energyWh, 0, 1e9)
  requireInRange('capacityAh', bank.capacityAh, 0.5, 100_000)
  requireInRange('temperatureC', temperatureC, -40, 80)
  if (sunHours !== undefined) requireInRange('sunHours', sunHours, 0.5, 12)
  if (chargerA !== undefined) requireInRange('chargerA', chargerA, 0.1, 2000)
  const chargeAh = (energyWh / bank.nominalV) * figures.chargeFactor
  const energyFromSourceWh = energyWh / figures.roundTripFraction
  const limitA = figures.chargeLimitPerH * bank.capacityAh
  const [coldestC, warmestC] = figures.chargeTemperatureC
  const lithium = figures.kind.family === 'lithium'
  const warnings: readonly (readonly [RechargeWarning, boolean])[] = [
    ['lithium-charge-below-freezing', lithium && temperatureC < coldestC],
    ['charge-temperature-outside-range', temperatureC < coldestC || temperatureC > warmestC],
    ['charge-current-above-limit', (chargerA ?? 0) > limitA],
    ['more-than-the-battery-holds', energyWh > bank.capacityAh * bank.nominalV * 1.2],
  ]
  return {
    chargeAh,
    energyFromSourceWh,
    solarW: sunHours === undefined ? undefined : energyFromSourceWh / (sunHours * PANEL_SERVICE_FRACTION),
    chargerHours: chargerA === undefined ? undefined : chargeAh / Math.min(chargerA, limitA),
    absorptionHours: lithium ? 0 : LEAD_ACID_ABSORPTION_HOURS,
    warnings: warnings.filter(([, applies]) => applies).map(([code]) => code),
  }
}
