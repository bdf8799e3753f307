import type { Finding, FindingCode } from '../../advice/findings.ts'
import { type CircuitAnswer, circuitAnswer } from '../../circuit-side.ts'
import type { PreparedInverter, PreparedRange } from '../../range/prepare-range.ts'
import { type Outcome, outcomeOf, type Plan, type Sizing, supplySideOf } from '../../sizing.ts'
import { judge, type Verdict } from '../choose.ts'
import { priceDifference, sumOfPrices } from './money.ts'
import { type ChangedPlan, changedPlan } from './plan-change.ts'
import type { Gain, Proposal, WhatIf } from './what-if.ts'

/** What an answer is worth: which outcome, and what the buyer has to mind. */
export interface Standing {
  readonly outcome: Outcome
  /** Codes of findings of severity `fail` or `care` about unit, circuit and battery. */
  readonly cares: ReadonlySet<FindingCode>
}

/** The answer that what-ifs start from. */
export interface Ground {
  readonly range: PreparedRange
  readonly plan: Plan
  readonly sizing: Sizing
  readonly now: Standing
  /** The unit recommended now. */
  readonly unit: PreparedInverter | undefined
  /** Units that other loads could make fit, in the order of choice, the recommended one among them. */
  readonly hopefuls: readonly Verdict[]
  readonly hopefulUnits: readonly PreparedInverter[]
  /** Circuits at the supply as it is, by unit. */
  readonly circuits: Map<PreparedInverter, CircuitAnswer>
}

/** Findings that go away when the loads ask for less. */
export const POWER_CODES: ReadonlySet<FindingCode> = new Set([
  'continuous-power-short',
  'apparent-power-short',
  'starting-power-short',
  'surge-time-short',
  'connection-limit',
])

/** Findings that can go away when a load goes. */
const LOAD_CODES: ReadonlySet<FindingCode> = new Set([...POWER_CODES, 'wave-form-unsuitable', 'not-advised'])

/** Outcomes, best first. */
const RANK: Readonly<Record<Outcome, number>> = {
  fits: 0,
  'fits-with-care': 1,
  'none-fits': 2,
  'not-advised': 3,
}

/**
 * What the what-ifs of an answer start from.
 *
 * @param range - The range that was sized from
 * @param sizing - The engine's answer
 * @returns The ground
 */
export function groundOf(range: PreparedRange, sizing: Sizing): Ground {
  const { plan, recommended, circuit, battery, choice } = sizing
  const circuits = new Map<PreparedInverter, CircuitAnswer>()
  if (recommended !== undefined && circuit !== undefined) circuits.set(recommended.inverter, circuit)
  const beside = [...(circuit?.findings ?? []), ...(battery?.findings ?? [])]
  const hopefuls = choice.verdicts.filter((verdict) => verdict.fits || failsOnlyBy(verdict, LOAD_CODES))
  return {
    range,
    plan,
    sizing,
    now: { outcome: sizing.outcome, cares: caresOf([...(recommended?.findings ?? []), ...beside]) },
    unit: recommended?.inverter,
    hopefuls,
    hopefulUnits: hopefuls.map(({ inverter }) => inverter),
    circuits,
  }
}

/**
 * Whether a unit is ruled out by nothing but these.
 *
 * @param verdict - The unit's verdict
 * @param codes - Codes of findings
 * @returns False where another finding fails it too
 */
export function failsOnlyBy(verdict: Verdict, codes: ReadonlySet<FindingCode>): boolean {
  return verdict.findings.every(({ severity, code }) => severity !== 'fail' || codes.has(code))
}

/**
 * Whether a unit would be worth having in place of the one recommended now, by its price alone.
 *
 * @param ground - The ground
 * @param inverter - Another unit
 * @returns True where there is none now, where it costs less or is smaller at the same price, or where the
 * present answer has something to mind that another unit might not have
 */
export function isWorthwhile({ unit, now }: Ground, inverter: PreparedInverter): boolean {
  if (unit === undefined || now.cares.size > 0) return inverter !== unit
  return costsLess(inverter, unit)
}

/**
 * The what-if that a proposal makes, where it betters the answer.
 *
 * @param ground - The ground
 * @param proposal - A change of loads, groups or supply, or another unit
 * @returns What it buys, or undefined where it changes nothing for the better
 */
export function tried(ground: Ground, proposal: Proposal): WhatIf | undefined {
  const { change } = proposal
  const changed = changedPlan(ground.range, ground.plan, change)
  const verdict =
    change.sku === undefined ? smallestFor(ground, changed) : namedUnit(ground, changed, change.sku)
  if (verdict === undefined || !verdict.fits) return undefined
  const { inverter } = verdict
  if (change.supply === undefined && ground.unit === inverter) return undefined
  const known = change.supply === undefined ? circuitOf(ground, inverter) : undefined
  const circuit = known ?? circuitAnswer(ground.range, inverter, changed.need.supply)
  // A battery's findings only add to these: where these do not better the answer, it need not be asked.
  if (!betters(ground, standingOf(changed, verdict, circuit.findings), inverter)) return undefined
  const side = supplySideOf(ground.range, changed, inverter, { circuit, outlookOnly: true })
  const standing = standingOf(changed, verdict, [...circuit.findings, ...(side.battery?.findings ?? [])])
  if (side.battery !== undefined && !betters(ground, standing, inverter)) return undefined
  return { ...proposal, ...gainOf(ground, standing, [inverter], side.battery?.runtime.hours) }
}

/**
 * What a change buys.
 *
 * @param ground - The ground
 * @param standing - What the changed answer is worth
 * @param units - Its unit or units
 * @param runtimeHours - Its run time. [h]
 * @returns The gain
 */
export function gainOf(
  { unit }: Ground,
  { outcome, cares }: Standing,
  units: readonly PreparedInverter[],
  runtimeHours: number | undefined,
): Gain {
  const price = sumOfPrices(units.map((inverter) => inverter.unit.price))
  return {
    outcome,
    cares,
    units,
    price,
    ...(unit && { priceDifference: priceDifference(price, unit.unit.price) }),
    ...(runtimeHours !== undefined && { runtimeHours }),
  }
}

/**
 * Whether a changed answer is better: a better outcome; or as good a one, nothing new to mind, and less to
 * mind, a lower price or a smaller unit at the same price.
 *
 * @param ground - The ground
 * @param standing - What the changed answer is worth
 * @param inverter - The unit that it recommends
 * @returns True where it is worth telling
 */
export function betters({ now, unit }: Ground, standing: Standing, inverter: PreparedInverter): boolean {
  const worse = RANK[standing.outcome] - RANK[now.outcome]
  if (worse !== 0) return worse < 0
  if (unit === undefined) return false
  for (const care of standing.cares) if (!now.cares.has(care)) return false
  return standing.cares.size < now.cares.size || costsLess(inverter, unit)
}

/**
 * Whether one outcome comes before another.
 *
 * @param a - One outcome
 * @param b - Another
 * @returns Negative where `a` is the better
 */
export function compareOutcomes(a: Outcome, b: Outcome): number {
  return RANK[a] - RANK[b]
}

/**
 * Codes of what the buyer has to mind.
 *
 * @param findings - About unit, circuit and battery
 * @returns Those of severity `fail` or `care`
 */
export function caresOf(findings: readonly Finding[]): ReadonlySet<FindingCode> {
  return new Set(findings.flatMap(({ severity, code }) => (severity === 'note' ? [] : [code])))
}

/**
 * The circuit of a unit at the supply as it is, worked out once.
 *
 * @param ground - The ground
 * @param inverter - A unit of the range
 * @returns Its circuit
 */
export function circuitOf({ range, plan, circuits }: Ground, inverter: PreparedInverter): CircuitAnswer {
  const known = circuits.get(inverter)
  if (known !== undefined) return known
  const made = circuitAnswer(range, inverter, plan.need.supply)
  circuits.set(inverter, made)
  return made
}

function standingOf(changed: ChangedPlan, verdict: Verdict, beside: readonly Finding[]): Standing {
  return {
    outcome: outcomeOf(changed, verdict, beside),
    cares: caresOf([...verdict.findings, ...beside]),
  }
}

/** Where the supply stays, units that no load can help need no second look. */
function smallestFor({ range, plan, hopefulUnits }: Ground, { need }: ChangedPlan): Verdict | undefined {
  const inverters = need.supply === plan.need.supply ? hopefulUnits : range.inverters
  for (const inverter of inverters) {
    const verdict = judge(inverter, need)
    if (verdict.fits) return verdict
  }
  return undefined
}

function namedUnit({ range }: Ground, { need }: ChangedPlan, sku: string): Verdict | undefined {
  const inverter = range.inverters.find(({ unit }) => unit.sku === sku)
  return inverter && judge(inverter, need)
}

function costsLess(inverter: PreparedInverter, than: PreparedInverter): boolean {
  const difference = inverter.priceNumber - than.priceNumber
  return difference < 0 || (difference === 0 && inverter.unit.continuousW < than.unit.continuousW)
}
