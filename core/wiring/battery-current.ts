import { requireInRange } from '../errors.ts'
import { LOWEST_V_PER_12V } from '../tables/supply-voltages.ts'

/**
 * The lowest voltage at which an inverter still works, where its current is largest.
 *
 * @param side.nominalV - Nominal voltage of the battery side. [V] 6..120
 * @param side.cutOffV - Low-voltage cut-off of the inverter, where stated. [V] half to 1.2 x nominalV
 * @returns The cut-off, or 10.5 V for each 12 V of nominal: 1.75 V a lead-acid cell. [V]
 * @throws CoreError `out_of_range`
 * @source lead-acid-end-voltage
 * @example lowestWorkingV({ nominalV: 24 }) //=> 21
 */
export function lowestWorkingV(side: {
  readonly nominalV: number
  readonly cutOffV?: number | undefined
}): number {
  requireInRange('nominalV', side.nominalV, 6, 120)
  if (side.cutOffV === undefined) return (side.nominalV / 12) * LOWEST_V_PER_12V
  requireInRange('cutOffV', side.cutOffV, side.nominalV / 2, side.nominalV * 1.2)
  return side.cutOffV
}

/**
 * Largest steady battery current of an inverter: at full power and at the lowest working voltage.
 *
 * @param unit.continuousW - Continuous power on the mains side. [W] 0..1e9
 * @param unit.efficiencyFullFraction - Efficiency at full load. 0.1..1
 * @param unit.lowestV - Lowest working voltage of the battery side. [V] 3..150
 * @returns Battery current. [A]
 * @throws CoreError `out_of_range`
 * @example worstCaseCurrentA({ continuousW: 2500, efficiencyFullFraction: 0.85, lowestV: 22 }) //=> 133.7
 */
export function worstCaseCurrentA(unit: {
  readonly continuousW: number
  readonly efficiencyFullFraction: number
  readonly lowestV: number
}): number {
  requireInRange('continuousW', unit.continuousW, 0, 1e9)
  requireInRange('efficiencyFullFraction', unit.efficiencyFullFraction, 0.1, 1)
  requireInRange('lowestV', unit.lowestV, 3, 150)
  return unit.continuousW / unit.efficiencyFullFraction / unit.lowestV
}

/**
 * Mains power that a vehicle socket or a connector can pass.
 *
 * @param connection.limitA - Current that it may carry for long. [A] 0..100,000
 * @param connection.lowestV - Lowest working voltage of the battery side. [V] 3..150
 * @param connection.efficiencyFullFraction - Efficiency of the inverter at full load. 0.1..1
 * @returns Power on the mains side. [W]
 * @throws CoreError `out_of_range`
 * @example connectionLimitW({ limitA: 10, lowestV: 10.5, efficiencyFullFraction: 0.85 }) //=> 89.25
 */
export function connectionLimitW(connection: {
  readonly limitA: number
  readonly lowestV: number
  readonly efficiencyFullFraction: number
}): number {
  requireInRange('limitA', connection.limitA, 0, 100_000)
  requireInRange('lowestV', connection.lowestV, 3, 150)
  requireInRange('efficiencyFullFraction', connection.efficiencyFullFraction, 0.1, 1)
  return connection.limitA * connection.lowestV * connection.efficiencyFullFraction
}
