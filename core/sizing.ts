import { type Caution, cautionsFor } from './advice/cautions.ts'
import { type Finding, finding } from './advice/findings.ts'
import { type BatteryAnswer, batteryAnswer, carriesPlan } from './battery-side/battery-answer.ts'
import { fedBy } from './battery-side/fed-inverter.ts'
import { type NeededBank, neededBank } from './battery-side/needed-bank.ts'
import { type CircuitAnswer, circuitAnswer } from './circuit-side.ts'
import { type Choice, chooseInverter, judge, type Verdict } from './inverters/choose.ts'
import { type Need, needOf, type Preferences, type Supply } from './inverters/need.ts'
import { type Demand, demandOf } from './loads/demand.ts'
import type { LoadRequest } from './loads/load.ts'
import { type LoadFault, resolveLoads } from './loads/resolve.ts'
import { kitFor } from './range/kit/kit.ts'
import type { Kit, KitWish } from './range/kit/kit-types.ts'
import type { PreparedInverter, PreparedRange } from './range/prepare-range.ts'
import { SUPPLY_VOLTAGES, type SupplyVoltage } from './range/vocabulary.ts'
import { bankOf, wireOhm } from './supply-side.ts'

/** What an answer comes to. */
export const OUTCOMES = ['fits', 'fits-with-care', 'none-fits', 'not-advised'] as const
export type Outcome = (typeof OUTCOMES)[number]

/** What somebody wants to run, from what. */
export interface SizingInput {
  readonly loads: readonly LoadRequest[]
  readonly takeTurns?: readonly (readonly string[])[] | undefined
  readonly supply?: Supply | undefined
  readonly preferences: Preferences
  /** What the buyer has already, for the kit. */
  readonly kit?: KitWish | undefined
}

/** Why a plan can't be answered, each with the path to the faulty part of the request. */
export interface PlanFault {
  readonly path: readonly (string | number)[]
  readonly code: LoadFault['code'] | 'unknown-load-in-group' | 'load-in-two-groups'
  readonly loadId: string
  readonly refusal?: LoadFault['refusal']
}

/** Loads read, added up and turned into a need. */
export interface Plan {
  /** The request as it was asked. */
  readonly input: SizingInput
  readonly need: Need
  readonly demand: Demand
  /** Everything that was assumed or estimated. Severity `note`. */
  readonly assumptions: readonly Finding[]
}

/** A plan, or every fault of the request. */
export type PlanResult =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly faults: readonly PlanFault[] }

/** The answer of the engine to a plan. */
export interface Sizing {
  readonly plan: Plan
  readonly outcome: Outcome
  readonly choice: Choice
  readonly recommended: Verdict | undefined
  /** Of the recommended unit. */
  readonly circuit: CircuitAnswer | undefined
  /** Of the recommended unit with the buyer's battery, where that is known. */
  readonly battery: BatteryAnswer | undefined
  /** Whatever battery there is: the one that the plan takes. */
  readonly neededBank: NeededBank | undefined
  readonly cautions: readonly Caution[]
}

/** What lies between a unit and the energy that it gives. */
interface SupplySide {
  readonly circuit: CircuitAnswer
  readonly battery: BatteryAnswer | undefined
}

/** One named unit judged, beside the smallest that would do. */
export interface UnitFit {
  readonly verdict: Verdict
  /** The answer as if this unit were recommended; without a unit where it does not fit. */
  readonly own: Sizing
  readonly smallest: Verdict | undefined
}

/**
 * Reads a request into a plan: loads resolved, demand added up, supply assumed where it is left out.
 *
 * @param range - The shop's range, prepared
 * @param input - The request
 * @returns The plan, or all faults at once
 */
export function planFor(range: PreparedRange, input: SizingInput): PlanResult {
  const { shop } = range.document
  const resolution = resolveLoads(input.loads, { appliances: range.appliances, mains: shop.mains })
  const faults: PlanFault[] = resolution.ok ? [] : [...resolution.faults]
  faults.push(...groupFaults(input))
  if (!resolution.ok || faults.length > 0) return { ok: false, faults }
  const demand = demandOf(resolution.loads, input.takeTurns)
  const assumptions: Finding[] = [...resolution.notes, ...demand.notes]
  const supply = input.supply ?? assumeSupply(range, assumptions)
  const need = needOf(demand, {
    mains: shop.mains,
    currency: shop.currency,
    policy: range.policy,
    preferences: input.preferences,
    supply,
  })
  return { ok: true, plan: { input, need, demand, assumptions } }
}

/**
 * Chooses the smallest suitable inverter of a range for a plan, or the suitable one that the buyer asks for.
 *
 * @param range - The shop's range, prepared
 * @param plan - What {@link planFor} made of the request
 * @returns The choice, its outcome and the cautions that it calls for
 */
export function sizeFor(range: PreparedRange, plan: Plan): Sizing {
  const choice = preferring(plan.input.preferences.sku, chooseInverter(range.inverters, plan.need))
  return completed(range, plan, choice, choice.verdicts[choice.chosen])
}

/** The choice with the unit that the buyer asks for, where the range has it and it fits. */
function preferring(sku: string | undefined, choice: Choice): Choice {
  if (sku === undefined) return choice
  const asked = choice.verdicts.findIndex(({ inverter, fits }) => fits && inverter.unit.sku === sku)
  return asked === -1 ? choice : { ...choice, chosen: asked }
}

/**
 * Everything that a plan takes beside the recommended unit, from the shop's range.
 *
 * @param range - The shop's range, prepared
 * @param sizing - What {@link sizeFor} made of the plan
 * @returns The kit; undefined where no unit is recommended
 */
export function kitOf(range: PreparedRange, sizing: Sizing): Kit | undefined {
  const { plan, recommended, circuit } = sizing
  if (recommended === undefined) return undefined
  const { demand, need, input } = plan
  const { supply, preferences, requiredContinuousW } = need
  const asked = {
    demand,
    supply,
    preferences,
    requiredContinuousW,
    wish: input.kit,
    circuit: circuit?.design,
  }
  return kitFor({ range, inverter: recommended.inverter, ...asked, known: knownOf(sizing) })
}

/**
 * Judges one named inverter for a plan, beside the smallest that would do.
 *
 * @param range - The shop's range, prepared
 * @param plan - What {@link planFor} made of the request
 * @param sku - The unit in question
 * @returns Its verdict with outcome, or undefined where the range has no such SKU
 */
export function fitFor(range: PreparedRange, plan: Plan, sku: string): UnitFit | undefined {
  const inverter = range.inverters.find((prepared) => prepared.unit.sku === sku)
  if (inverter === undefined) return undefined
  const verdict = judge(inverter, plan.need)
  const choice = chooseInverter(range.inverters, plan.need)
  return {
    verdict,
    own: completed(range, plan, choice, verdict.fits ? verdict : undefined),
    smallest: choice.verdicts[choice.chosen],
  }
}

/** Whether the stated battery carries the plan over the circuit's cable: worked out already. */
function knownOf({ battery, circuit }: Sizing) {
  if (battery === undefined || circuit === undefined || !circuit.design.ok) return undefined
  return { carries: carriesPlan(battery), cableResistanceOhm: circuit.design.conductor.resistanceOhm }
}

/** Everything that follows from the unit: cable, fuse, run time, outcome, cautions. */
function completed(range: PreparedRange, plan: Plan, choice: Choice, unit: Verdict | undefined): Sizing {
  const { demand, need } = plan
  const { supply } = need
  if (unit === undefined) {
    const none = { circuit: undefined, battery: undefined, neededBank: undefined }
    return {
      plan,
      choice,
      recommended: unit,
      ...none,
      outcome: outcomeOf(plan, unit, []),
      cautions: cautions(plan, unit),
    }
  }
  const { inverter } = unit
  const { circuit, battery } = supplySideOf(range, plan, inverter)
  return {
    plan,
    choice,
    recommended: unit,
    circuit,
    battery,
    neededBank: neededBank({ demand, supply, inverter: fedBy(inverter) }),
    outcome: outcomeOf(plan, unit, [...circuit.findings, ...(battery?.findings ?? [])]),
    cautions: cautions(plan, unit),
  }
}

/** Cable and fuse to one unit, and what its battery goes through. */
function supplySideOf(range: PreparedRange, { demand, need }: Plan, inverter: PreparedInverter): SupplySide {
  const { supply } = need
  const circuit = circuitAnswer(range, inverter, supply)
  const bank = bankOf(supply)
  if (bank === undefined) return { circuit, battery: undefined }
  const question = { demand, supply, inverter: fedBy(inverter), cableResistanceOhm: wireOhm(circuit) }
  return { circuit, battery: batteryAnswer(question, bank) }
}

/**
 * What an answer comes to.
 *
 * @param plan - Loads, supply, the shop's policy
 * @param verdict - Of the unit; undefined where none fits
 * @param beside - Findings about its circuit and its battery
 * @returns The outcome
 */
export function outcomeOf(
  plan: Pick<Plan, 'demand' | 'need'>,
  verdict: Verdict | undefined,
  beside: readonly Finding[],
): Outcome {
  if (plan.need.notAdvised.length > 0) return 'not-advised'
  if (verdict === undefined) return 'none-fits'
  const medical = plan.demand.loads.some((load) => load.medical)
  const care = [...verdict.findings, ...beside].some((found) => found.severity !== 'note')
  return medical || care ? 'fits-with-care' : 'fits'
}

function cautions(plan: Plan, recommended: Verdict | undefined): readonly Caution[] {
  const unit = recommended?.inverter.unit
  return cautionsFor({
    demand: plan.demand,
    hasUnit: unit !== undefined,
    chemistry: plan.need.supply.battery?.chemistry,
    temperatureC: plan.need.supply.battery?.temperatureC,
    connectionKind: plan.need.supply.connection?.kind ?? unit?.connection.kind,
    features: unit?.features ?? [],
    sentElsewhere: plan.need.notAdvised.length > 0,
  })
}

function groupFaults({ loads, takeTurns }: SizingInput): readonly PlanFault[] {
  const faults: PlanFault[] = []
  const known = new Set(loads.map((load) => load.id))
  const grouped = new Set<string>()
  for (const [groupIndex, group] of (takeTurns ?? []).entries()) {
    for (const [index, loadId] of group.entries()) {
      const path = ['takeTurns', groupIndex, index]
      if (!known.has(loadId)) faults.push({ path, code: 'unknown-load-in-group', loadId })
      else if (grouped.has(loadId)) faults.push({ path, code: 'load-in-two-groups', loadId })
      grouped.add(loadId)
    }
  }
  return faults
}

/** The lowest supply voltage that the range serves: most shoppers have that one. */
function assumeSupply(range: PreparedRange, assumptions: Finding[]): Supply {
  const served = new Set<SupplyVoltage>(range.inverters.map(({ unit }) => unit.inputNominalV))
  const nominalV = SUPPLY_VOLTAGES.find((voltage) => served.has(voltage)) ?? SUPPLY_VOLTAGES[0]
  assumptions.push(finding('supply-voltage-assumed', 'note', { nominalV }))
  return { nominalV }
}
