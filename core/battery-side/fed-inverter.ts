import { inverterInputW } from '../battery/inverter-input.ts'
import type { PreparedInverter } from '../range/prepare-range.ts'

/** An inverter as its battery sees it. */
export interface FedInverter {
  /** [W] */
  readonly continuousW: number
  readonly efficiencyFullFraction: number
  /** [W] */
  readonly idleW: number
  /** [V] */
  readonly cutOffV: number
}

/**
 * An inverter of a range as its battery sees it.
 *
 * @param inverter - The unit, its left-out figures filled in
 * @returns Power, losses and cut-off; the same object each time
 */
export function fedBy(inverter: PreparedInverter): FedInverter {
  const known = fed.get(inverter)
  if (known !== undefined) return known
  const { unit, figures } = inverter
  const { efficiencyFullFraction, idleW, cutOffV } = figures
  const made = { continuousW: unit.continuousW, efficiencyFullFraction, idleW, cutOffV }
  fed.set(inverter, made)
  return made
}

const fed = new WeakMap<PreparedInverter, FedInverter>()

/**
 * Power that a unit takes from its battery.
 *
 * @param inverter - The unit
 * @param outputW - Power on the mains side; more than ten times its size is taken as that. [W] 0 or more
 * @returns Power at its input. [W]
 * @source cec-inverter-tests
 */
export function dcPower(inverter: FedInverter, outputW: number): number {
  const { continuousW, efficiencyFullFraction, idleW } = lossesOf(inverter)
  const givenW = Math.min(outputW, 10 * continuousW)
  return inverterInputW({ continuousW, efficiencyFullFraction, idleW, outputW: givenW })
}

/**
 * A unit's losses as the battery arithmetic takes them.
 *
 * @param inverter - The unit
 * @returns Continuous power, efficiency and an idle draw that the model allows
 */
export function lossesOf({ continuousW, efficiencyFullFraction, idleW }: FedInverter) {
  // A unit can't idle on more than the model allows; a range that says so is held to it.
  return { continuousW, efficiencyFullFraction, idleW: Math.min(idleW, continuousW / 2) }
}
