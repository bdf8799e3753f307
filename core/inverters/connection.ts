import { type Finding, finding } from '../advice/findings.ts'
import type { FullPolicy } from '../range/policy.ts'
import type { PreparedInverter } from '../range/prepare-range.ts'
import type { ConnectionKind } from '../range/vocabulary.ts'
import { connectionLimitW, worstCaseCurrentA } from '../wiring/battery-current.ts'
import type { Need } from './need.ts'

/** The weakest part of the way from battery to inverter. */
export interface ConnectionLimit {
  readonly kind: ConnectionKind
  /** Current it may carry for long. [A] */
  readonly limitA: number
}

/**
 * The connection that limits an inverter: the weaker of its own and the one the buyer means to use.
 *
 * @param own - How the unit is connected, with its stated limit
 * @param wanted - Where the buyer means to connect, with its stated limit
 * @param policy - Limits of the shop for sockets and connectors that state none
 * @returns The weaker limit, or undefined where neither limits the current
 */
export function connectionLimit(
  own: { readonly kind: ConnectionKind; readonly limitA?: number | undefined },
  wanted: { readonly kind: ConnectionKind; readonly limitA?: number | undefined } | undefined,
  policy: FullPolicy,
): ConnectionLimit | undefined {
  const ownLimitA = own.limitA ?? usualLimitA(own.kind, policy)
  const wantedLimitA = wanted === undefined ? undefined : (wanted.limitA ?? usualLimitA(wanted.kind, policy))
  if (wanted !== undefined && wantedLimitA !== undefined && wantedLimitA < (ownLimitA ?? Infinity)) {
    return { kind: wanted.kind, limitA: wantedLimitA }
  }
  return ownLimitA === undefined ? undefined : { kind: own.kind, limitA: ownLimitA }
}

/**
 * Checks the connection's current at this need (fails) and at the unit's full power (a care: the fuse
 * behind a socket blows once more is plugged in).
 *
 * @param inverter - The inverter to judge
 * @param need - What is asked of it
 * @param findings - Receives what is found
 */
export function connectionFindings(inverter: PreparedInverter, need: Need, findings: Finding[]): void {
  const { unit, figures } = inverter
  const limit = connectionLimit(unit.connection, need.supply.connection, need.policy)
  if (limit === undefined) return
  const { efficiencyFullFraction, cutOffV: lowestV } = figures
  const limitW = connectionLimitW({ limitA: limit.limitA, lowestV, efficiencyFullFraction })
  const { runningW } = need.demand
  if (runningW > limitW) {
    const currentA = worstCaseCurrentA({ continuousW: runningW, efficiencyFullFraction, lowestV })
    const { kind, limitA } = limit
    findings.push(finding('connection-limit', 'fail', { kind, limitA, currentA, limitW, runningW }))
  } else if (unit.continuousW > limitW) {
    const { kind, limitA } = limit
    const values = { kind, limitA, limitW, continuousW: unit.continuousW }
    findings.push(finding('connection-below-full-power', 'care', values))
  }
}

function usualLimitA(kind: ConnectionKind, policy: FullPolicy): number | undefined {
  if (kind === 'vehicle-socket') return policy.socketLimitA
  if (kind === 'quick-connector') return policy.quickConnectorLimitA
  return undefined
}
