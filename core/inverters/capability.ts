import type { PreparedInverter } from '../range/prepare-range.ts'
import { connectionLimitW } from '../wiring/battery-current.ts'
import { ROUNDING } from './checks.ts'
import { connectionLimit } from './connection.ts'
import type { Need } from './need.ts'

/** The most that a unit lets loads ask for: the checks of one inverter, turned round. */
export interface Capability {
  /** Running power, headroom and connection counted. [W] */
  readonly runningW: number
  /** [VA] */
  readonly runningVA: number
  /** A start that stays within this needs no surge. [W] */
  readonly continuousW: number
  /** [W] */
  readonly surgeW: number
  /** [s] */
  readonly surgeS: number
}

/**
 * What a unit can be asked for under a need's supply and policy; the loads of the need don't count.
 *
 * @param inverter - The unit
 * @param need - Supply and policy
 * @returns Its limits
 */
export function capabilityOf({ unit, figures }: PreparedInverter, need: Need): Capability {
  const { continuousW, surgeW, surgeS, connection } = unit
  const limit = connectionLimit(connection, need.supply.connection, need.policy)
  const { efficiencyFullFraction, cutOffV: lowestV } = figures
  const connectionW =
    limit === undefined
      ? Number.POSITIVE_INFINITY
      : connectionLimitW({ limitA: limit.limitA, lowestV, efficiencyFullFraction })
  return {
    runningW: Math.min(connectionW, continuousW * ROUNDING * (1 - need.policy.headroomFraction)),
    runningVA: figures.continuousVA * ROUNDING,
    continuousW,
    surgeW: surgeW * ROUNDING,
    surgeS,
  }
}

/**
 * The most that a start may ask of a unit.
 *
 * @param capability - The unit's limits
 * @param startingS - How long the start lasts. [s] 0 or more
 * @returns Power at that moment. [W]
 */
export function startLimitW(capability: Capability, startingS: number): number {
  const { continuousW, surgeW, surgeS } = capability
  return startingS > surgeS ? continuousW : Math.max(continuousW, surgeW)
}
