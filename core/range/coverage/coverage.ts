import { type CircuitAnswer, circuitAnswer } from '../../circuit-side.ts'
import { judge, type Verdict } from '../../inverters/choose.ts'
import { type Outcome, outcomeOf, type Plan, planFor } from '../../sizing.ts'
import type { PreparedInverter, PreparedRange } from '../prepare-range.ts'
import { SUPPLY_VOLTAGES, type SupplyVoltage } from '../vocabulary.ts'
import { type TriedPlan, triedBatteries } from './batteries.ts'
import type { Coverage, CoverageAnswer, CoverageOptions, PlanCoverage } from './coverage-types.ts'
import { type EverydayPlan, everydayPlans, inputOf } from './everyday-plans.ts'
import { GapList } from './gaps.ts'
import { missingParts } from './kits.ts'
import { failingCodes, nearMissOf } from './nearest.ts'
import { UnitTally } from './unit-tally.ts'

/**
 * What a range can and can't serve: the answer to every everyday plan at every supply voltage that it serves.
 *
 * @param range - The range, prepared
 * @param options - Whether only what is in stock counts
 * @returns Answers, units that are never recommended, gaps, missing parts and batteries that do not last
 */
export function coverageOf(range: PreparedRange, options: CoverageOptions): Coverage {
  const steps = coverageSteps(range, options)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

/**
 * The same in small steps, so that a service can answer shoppers in between.
 *
 * @param range - The range, prepared
 * @param options - Whether only what is in stock counts
 * @returns A generator that yields after each step, some milliseconds at most, and returns the coverage
 */
export function* coverageSteps(
  range: PreparedRange,
  options: CoverageOptions,
): Generator<undefined, Coverage, undefined> {
  const ladders = laddersOf(range)
  const units = new UnitTally(range.inverters)
  const gaps = new GapList()
  const plans: PlanCoverage[] = []
  const tried: TriedPlan[] = []
  const circuitOf = circuitsOf(range)
  for (const plan of everydayPlans(range)) {
    const result = planFor(range, inputOf(plan, options.inStockOnly))
    // A shop may list an appliance whose figures make no load.
    if (!result.ok) continue
    const answers: CoverageAnswer[] = []
    for (const [nominalV, ladder] of ladders) {
      const at = atVoltage(result.plan, nominalV)
      const verdicts = ladder.map((inverter) => judge(inverter, at.need))
      const chosen = verdicts.find(({ fits }) => fits)
      const answer = answerOf({ at, nominalV, verdicts, chosen }, circuitOf)
      answers.push(answer)
      units.count(verdicts, chosen)
      if (chosen === undefined) continue
      if (answer.overTwice) gaps.add(plan.id, answer, verdicts)
      tried.push(triedWith(plan, at, chosen.inverter, circuitOf))
    }
    plans.push({ plan, answers })
    yield
  }
  const kits = yield* missingParts(range, options)
  const batteries = yield* triedBatteries(range, options, tried)
  return {
    voltages: [...ladders.keys()],
    plans,
    units: units.result(),
    gaps: gaps.result(),
    kits,
    batteries,
  }
}

/** The units of each supply voltage, in the order of choice: those of another can't be recommended. */
function laddersOf({ inverters }: PreparedRange): ReadonlyMap<SupplyVoltage, readonly PreparedInverter[]> {
  const ladders = new Map<SupplyVoltage, readonly PreparedInverter[]>()
  for (const nominalV of SUPPLY_VOLTAGES) {
    const ladder = inverters.filter(({ unit }) => unit.inputNominalV === nominalV)
    if (ladder.length > 0) ladders.set(nominalV, ladder)
  }
  return ladders
}

function atVoltage({ input, need, ...plan }: Plan, nominalV: SupplyVoltage): Plan {
  const supply = { nominalV }
  return { ...plan, input: { ...input, supply }, need: { ...need, supply } }
}

/** A unit's circuit goes by the unit alone as long as nothing but the voltage is known of the supply. */
function circuitsOf(range: PreparedRange): (inverter: PreparedInverter) => CircuitAnswer {
  const known = new Map<PreparedInverter, CircuitAnswer>()
  return (inverter) => {
    const made =
      known.get(inverter) ?? circuitAnswer(range, inverter, { nominalV: inverter.unit.inputNominalV })
    known.set(inverter, made)
    return made
  }
}

interface Judged {
  readonly at: Plan
  readonly nominalV: SupplyVoltage
  readonly verdicts: readonly Verdict[]
  readonly chosen: Verdict | undefined
}

function answerOf(
  { at, nominalV, verdicts, chosen }: Judged,
  circuitOf: (inverter: PreparedInverter) => CircuitAnswer,
): CoverageAnswer {
  const { requiredContinuousW } = at.need
  const outcome: Outcome = outcomeOf(at, chosen, chosen ? circuitOf(chosen.inverter).findings : [])
  if (chosen === undefined) {
    const miss = nearMissOf(verdicts)
    return {
      nominalV,
      outcome,
      requiredContinuousW,
      overTwice: false,
      codes: miss?.codes ?? [],
      ...(miss === undefined ? {} : { nearestSku: miss.verdict.inverter.unit.sku }),
    }
  }
  const { sku, continuousW } = chosen.inverter.unit
  return {
    nominalV,
    outcome,
    requiredContinuousW,
    recommended: { sku, continuousW },
    overTwice: continuousW > 2 * requiredContinuousW,
    codes: failingCodes(chosen),
  }
}

function triedWith(
  { id, kind }: EverydayPlan,
  { demand, need }: Plan,
  inverter: PreparedInverter,
  circuitOf: (inverter: PreparedInverter) => CircuitAnswer,
): TriedPlan {
  const { design } = circuitOf(inverter)
  const cableResistanceOhm = design.ok ? design.conductor.resistanceOhm : 0
  return { id, kind, demand, nominalV: need.supply.nominalV, inverter, cableResistanceOhm }
}
