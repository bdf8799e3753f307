import { type Finding, finding } from './advice/findings.ts'
import { connectionLimit } from './inverters/connection.ts'
import type { Supply } from './inverters/need.ts'
import type { PreparedInverter, PreparedRange } from './range/prepare-range.ts'
import type { RangeCable } from './range/range-document.ts'
import { circuit } from './wiring/circuit.ts'
import type { CircuitDesign, CircuitFailure, CircuitProblem, OwnLeads } from './wiring/circuit-types.ts'

/** The way from battery to unit, with what was found about it. */
export interface CircuitAnswer {
  readonly design: CircuitDesign | CircuitFailure
  /** One way. [m] */
  readonly oneWayLengthM: number
  readonly findings: readonly Finding[]
}

/** One-way cable length where the buyer states none. [m] Common practice, no published source. */
export const ASSUMED_LENGTH_M = 2

/** A cable of the range comes in pairs, so its length is the way it reaches. */
function includedCable(range: PreparedRange, { unit }: PreparedInverter): RangeCable | undefined {
  const included = new Set(unit.includes ?? [])
  return range.document.cables.find(({ sku }) => included.has(sku))
}

/** Circuits kept for one range; past that they start anew. */
const KEPT_CIRCUITS = 2000

/** A unit's circuit depends on nothing but the range and the supply, and most buyers have the same few. */
const circuitsByRange = new WeakMap<PreparedRange, Map<string, CircuitAnswer>>()

/**
 * Cable and fuse between a supply and a unit; leads that come with the unit are checked instead.
 *
 * Kept by range, unit and supply: working one out costs as much as judging a hundred units.
 *
 * @param range - The shop's range, for its wire sizes, drop limit and what units include
 * @param inverter - The unit
 * @param supply - What feeds it
 * @returns The circuit and findings about it
 * @source nec-125-percent
 */
export function circuitAnswer(
  range: PreparedRange,
  inverter: PreparedInverter,
  supply: Supply,
): CircuitAnswer {
  const kept = circuitsByRange.get(range) ?? new Map<string, CircuitAnswer>()
  circuitsByRange.set(range, kept)
  const key = keyOf(inverter, supply)
  const known = kept.get(key)
  if (known !== undefined) return known
  if (kept.size >= KEPT_CIRCUITS) kept.clear()
  const made = madeCircuit(range, inverter, supply)
  kept.set(key, made)
  return made
}

/** All that a circuit reads of unit and supply. */
function keyOf({ unit: { sku } }: PreparedInverter, supply: Supply): string {
  const { connection, oneWayLengthM, battery, replaceLeads } = supply
  const { kind, limitA } = connection ?? {}
  const { chemistry, capacityAh } = battery ?? {}
  return `${sku}|${kind}|${limitA}|${oneWayLengthM}|${chemistry}|${capacityAh}|${replaceLeads}`
}

function madeCircuit(range: PreparedRange, inverter: PreparedInverter, supply: Supply): CircuitAnswer {
  const { unit, figures } = inverter
  const cable = includedCable(range, inverter)
  const leads: OwnLeads | undefined = cable && {
    areaMm2: cable.areaMm2,
    awg: cable.awg,
    lengthM: cable.lengthM,
  }
  const oneWayLengthM = supply.oneWayLengthM ?? leads?.lengthM ?? ASSUMED_LENGTH_M
  const limit = connectionLimit(unit.connection, supply.connection, range.policy)
  const design = circuit({
    continuousW: unit.continuousW,
    efficiencyFullFraction: figures.efficiencyFullFraction,
    nominalV: unit.inputNominalV,
    cutOffV: figures.cutOffV,
    lengthM: oneWayLengthM,
    wireSizes: range.document.shop.wireSizes,
    dropLimitFraction: range.policy.dropLimitFraction,
    chemistry: supply.battery?.chemistry,
    bankCapacityAh: supply.battery?.capacityAh,
    connection: limit ?? { kind: supply.connection?.kind ?? unit.connection.kind },
    ...(supply.replaceLeads !== true && { ownLeads: leads, insulationC: cable?.insulationC }),
  })
  const assumed =
    supply.oneWayLengthM === undefined && leads === undefined
      ? [finding('cable-length-assumed', 'note', { lengthM: oneWayLengthM })]
      : []
  return { design, oneWayLengthM, findings: [...findingsOf(design), ...assumed] }
}

function findingsOf(design: CircuitDesign | CircuitFailure): readonly Finding[] {
  if (!design.ok) {
    const code = design.reason === 'no-standard-fuse' ? 'no-standard-fuse' : 'no-standard-conductor'
    return [finding(code, 'care', { worstCaseA: design.worstCaseA })]
  }
  const found = design.problems.flatMap(problemFinding)
  if (design.noFuse === undefined) return found
  if (design.noFuse === 'socket-circuit-has-its-own')
    return [...found, finding('socket-fuse-stays', 'note', {})]
  const values = {
    minA: design.worstCaseA * 1.25,
    maxA: design.conductor.ampacityA,
    reason: design.noFuse,
  }
  return [...found, finding('no-safe-fuse', 'care', values)]
}

/** What the unit's own check tells about its connection is left to it. */
function problemFinding(problem: CircuitProblem): readonly Finding[] {
  switch (problem.problem) {
    case 'connection-below-full-power':
      return []
    case 'own-leads-too-thin': {
      const { ampacityA, neededA, needed } = problem
      const label =
        needed && (needed.parallelPairs > 1 ? `${needed.parallelPairs} × ${needed.label}` : needed.label)
      return [
        finding('own-leads-too-thin', 'care', {
          ampacityA,
          neededA,
          ...(label === undefined ? {} : { needed: label }),
        }),
      ]
    }
    case 'own-leads-drop': {
      const { dropFraction, limitFraction } = problem
      return [finding('own-leads-drop', 'care', { dropFraction, limitFraction })]
    }
    case 'own-leads-too-short': {
      const { leadsM, routeM } = problem
      return [finding('own-leads-too-short', 'care', { leadsM, routeM })]
    }
  }
}
