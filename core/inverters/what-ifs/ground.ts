import type { Finding, FindingCode } from '../../advice/findings.ts'
import { type CircuitAnswer, circuitAnswer } from '../../circuit-side.ts'
import type { PreparedInverter, PreparedRange } from '../../range/prepare-range.ts'
import { type Outcome, outcomeOf, type Plan, type Sizing } from '../../sizing.ts'
import { outlookOf } from '../../supply-side.ts'
import { type Capability, capabilityOf } from '../capability.ts'
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
  /** What each of them can be asked for at the supply as it is. */
  readonly capabilities: readonly Capability[]
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

/** Room for the last bits of a limit worked out another way; the checks decide there. [W] */
const SLACK_W = 1e-6

/** Findings that say that the battery does not bear the loads at all. */
const UNBEARABLE_CODES: readonly FindingCode[] = [
  'discharge-limit-running',
  'discharge-limit-starting',
  'cut-off-while-running',
  'cut-off-while-starting',
  'nothing-usable',
]

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
  const hopefulUnits = hopefuls.map(({ inverter }) => inverter)
  return {
    range,
    plan,
    sizing,
    now: { outcome: sizing.outcome, cares: caresOf([...(recommended?.findings ?? []), ...beside]) },
    unit: recommended?.inverter,
    hopefuls,
    hopefulUnits,
    capabilities: hopefulUnits.map((inverter) => capabilityOf(inverter, plan.need)),
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

/** A unit that its connection holds below this share of what it could give is too large for it. Our own bound. */
const LEAST_GIVEN_SHARE = 0.5

/**
 * Whether a unit is far too large for the connection that it would hang on: nobody plugs the largest unit into a
 * vehicle's socket.
 *
 * @param plan - Supply and policy
 * @param inverter - The unit
 * @returns True where less than half of what it could give comes through
 */
export function isHeldBack({ need }: ChangedPlan, inverter: PreparedInverter): boolean {
  const givenW = inverter.unit.continuousW * (1 - need.policy.headroomFraction)
  return capabilityOf(inverter, need).runningW < LEAST_GIVEN_SHARE * givenW
}

/**
 * The what-if that a proposal makes, where it betters the answer.
 *
 * @param ground - The ground
 * @param proposal - A change of loads, groups or supply, or another unit
 * @param isWanted - Asked with codes of what has to be minded, to which more may come: false ends the work
 * @returns What it buys, or undefined where it changes nothing for the better
 */
export function tried(
  ground: Ground,
  proposal: Proposal,
  isWanted: (cares: ReadonlySet<FindingCode>) => boolean = () => true,
): WhatIf | undefined {
  const { change } = proposal
  const changed = changedPlan(ground.range, ground.plan, change)
  const verdict =
    change.sku === undefined ? smallestThatFits(ground, changed) : namedUnit(ground, changed, change.sku)
  if (verdict === undefined || !verdict.fits) return undefined
  const { inverter } = verdict
  if (change.supply === undefined && ground.unit === inverter) return undefined
  if (ground.unit !== inverter && isHeldBack(changed, inverter)) return undefined
  const known = change.supply === undefined ? circuitOf(ground, inverter) : undefined
  const circuit = known ?? circuitAnswer(ground.range, inverter, changed.need.supply)
  const standing = standingOf(changed, verdict, circuit.findings)
  // A battery's findings only add to these: where these do not better the answer, it need not be asked.
  if (!betters(ground, standing, inverter)) return undefined
  if (changed.need.supply.battery === undefined)
    return { ...proposal, ...gainOf(ground, standing, [inverter]) }
  const withBattery = (cares: ReadonlySet<FindingCode>) => mindingAlso(standing, cares)
  const isOfUse = (cares: ReadonlySet<FindingCode>) =>
    isWanted(cares) && betters(ground, withBattery(cares), inverter)
  const outlook = outlookOf(changed, inverter, circuit, isOfUse)
  if (outlook === undefined || !isOfUse(outlook.cares)) return undefined
  return { ...proposal, ...gainOf(ground, withBattery(outlook.cares), [inverter], outlook.hours) }
}

/**
 * What an answer is worth with more to mind.
 *
 * @param standing - What it is worth
 * @param cares - Codes of what has to be minded beside
 * @returns The same where there are none
 */
export function mindingAlso(standing: Standing, cares: ReadonlySet<FindingCode>): Standing {
  if (cares.size === 0) return standing
  const outcome = standing.outcome === 'fits' ? 'fits-with-care' : standing.outcome
  return { outcome, cares: new Set([...standing.cares, ...cares]) }
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
  runtimeHours?: number,
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
 * Whether a changed answer is better: a better outcome, with a battery that bears it; or as good a one, nothing new to mind, and less to
 * mind, a lower price or a smaller unit at the same price.
 *
 * @param ground - The ground
 * @param standing - What the changed answer is worth
 * @param inverter - The unit that it recommends
 * @returns True where it is worth telling
 */
export function betters({ now, unit }: Ground, standing: Standing, inverter: PreparedInverter): boolean {
  if (isUnbearable(now, standing)) return false
  const worse = RANK[standing.outcome] - RANK[now.outcome]
  if (worse !== 0) return worse < 0
  if (unit === undefined) return false
  for (const care of standing.cares) if (!now.cares.has(care)) return false
  return standing.cares.size < now.cares.size || costsLess(inverter, unit)
}

/**
 * Whether a changed answer would only move the trouble to the battery, which would not bear the loads at all.
 *
 * @param now - The present answer
 * @param standing - What the changed answer is worth
 * @returns True where the battery fails by what it does not fail by now
 */
export function isUnbearable(now: Standing, standing: Standing): boolean {
  return UNBEARABLE_CODES.some((code) => standing.cares.has(code) && !now.cares.has(code))
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

/**
 * What an answer is worth by its unit and what lies beside it.
 *
 * @param changed - The plan
 * @param verdict - Of its unit
 * @param beside - Findings about its circuit
 * @returns Outcome and codes of what has to be minded
 */
export function standingOf(changed: ChangedPlan, verdict: Verdict, beside: readonly Finding[]): Standing {
  return {
    outcome: outcomeOf(changed, verdict, beside),
    cares: caresOf([...verdict.findings, ...beside]),
  }
}

/**
 * The smallest unit of the range that fits a changed plan. Where voltage and connection stay, units
 * that no load can help need no second look.
 *
 * @param ground - The ground
 * @param changed - The changed plan
 * @returns Its verdict, or undefined where none fits
 */
export function smallestThatFits(
  { range, plan, hopefulUnits, capabilities }: Ground,
  { need }: ChangedPlan,
): Verdict | undefined {
  const { supply } = plan.need
  // Nothing else of a supply decides whether a unit fits.
  const isFedAlike = need.supply.nominalV === supply.nominalV && need.supply.connection === supply.connection
  const inverters = isFedAlike ? hopefulUnits : range.inverters
  for (const [index, inverter] of inverters.entries()) {
    const capability = isFedAlike ? capabilities[index] : undefined
    if (capability !== undefined && need.demand.runningW > capability.runningW + SLACK_W) continue
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
