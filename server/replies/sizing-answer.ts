import {
  type Choice,
  kitOf,
  labelLimitsFor,
  type Plan,
  type PreparedRange,
  type Sizing,
  sizingWorking,
  type UnitFit,
  type Verdict,
  whatIfsFor,
} from '../../core/index.ts'
import type { FitAnswer, SizingAnswer } from '../../shared/contract/answers.ts'
import type { EXTRAS, SizingRequest } from '../../shared/contract/plan.ts'
import type { Writer } from '../../shared/messages/index.ts'
import { bankAnswer, circuitAnswer, runtimeAnswer } from './battery-parts.ts'
import { kitAnswer } from './kit-answer.ts'
import { consideredAnswer, demandAnswer, findingAnswer, recommendedAnswer, workingAnswer } from './parts.ts'
import { tenThousandth } from './rounding.ts'
import { labelLimitAnswer, whatIfAnswer } from './what-if-answer.ts'

/** Units shown around the choice unless the caller asks for all. */
const BRIEF_UNITS = 8

/** Of those, units above the choice: the next ones up, so that the buyer sees what more would cost. */
const BRIEF_UNITS_ABOVE = 2

/**
 * The reply of POST sizing.
 *
 * @param range - The range that was sized from
 * @param sizing - The engine's answer
 * @param asked - `full` detail shows every unit and the working; `include` names the parts that cost most
 * @param writer - Whose language it is written in
 * @returns The body
 */
export function sizingAnswer(
  range: PreparedRange,
  sizing: Sizing,
  { detail, include }: Pick<SizingRequest, 'detail' | 'include'>,
  writer: Writer,
): SizingAnswer {
  const { plan, choice, recommended } = sizing
  const asked = (extra: (typeof EXTRAS)[number]) => include === undefined || include.includes(extra)
  const whatIfs = asked('what-ifs') ? whatIfsFor(range, sizing) : []
  const labelLimits = asked('label-limits') ? labelLimitsFor(range, sizing) : []
  const kit = asked('kit') ? kitOf(range, sizing) : undefined
  const shown = detail === 'full' ? choice.verdicts : aroundChoice(choice, plan)
  return {
    outcome: sizing.outcome,
    demand: demandAnswer(plan),
    recommended: recommended === undefined ? null : recommendedAnswer(recommended, plan, range, writer),
    considered: shown.map((verdict) => consideredAnswer(verdict, writer)),
    consideredTotal: choice.verdicts.length,
    whatIfs: whatIfs.map((whatIf) => whatIfAnswer(whatIf, plan, range, writer)),
    labelLimits: labelLimits.map((limit) => labelLimitAnswer(limit, plan, writer)),
    circuit: circuitAnswer(sizing.circuit, writer),
    runtime: sizing.battery === undefined ? null : runtimeAnswer(sizing.battery, writer),
    bank: bankAnswer(sizing.neededBank),
    ...kitAnswer(kit, range, writer),
    assumptions: plan.assumptions.map((found) => findingAnswer(found, writer)),
    cautions: sizing.cautions.map((caution) => ({ ...caution, message: writer.caution(caution) })),
    ...(detail === 'full'
      ? { working: sizingWorking(sizing).map((step) => workingAnswer(step, writer)) }
      : {}),
    range: { shopId: range.document.shop.id, version: range.version },
  }
}

/**
 * The reply of POST fit.
 *
 * @param range - The range that the unit is from
 * @param fit - The engine's verdict
 * @param writer - Whose language it is written in
 * @returns The body
 */
export function fitAnswer(range: PreparedRange, fit: UnitFit, writer: Writer): FitAnswer {
  const { verdict, own, smallest } = fit
  const { plan } = own
  const { unit } = verdict.inverter
  return {
    outcome: own.outcome,
    demand: demandAnswer(plan),
    unit: {
      ...consideredAnswer(verdict, writer),
      surgeW: unit.surgeW,
      loadFraction: tenThousandth(plan.demand.runningW / unit.continuousW),
    },
    circuit: circuitAnswer(own.circuit, writer),
    runtime: own.battery === undefined ? null : runtimeAnswer(own.battery, writer),
    smallest: smallest === undefined ? null : recommendedAnswer(smallest, plan, range, writer),
    assumptions: plan.assumptions.map((found) => findingAnswer(found, writer)),
    cautions: own.cautions.map((caution) => ({ ...caution, message: writer.caution(caution) })),
    range: { shopId: range.document.shop.id, version: range.version },
  }
}

/** The units nearest to the choice, or to the need where none fits, of the buyer's voltage where there are enough. */
function aroundChoice({ verdicts, chosen }: Choice, plan: Plan): readonly Verdict[] {
  if (verdicts.length <= BRIEF_UNITS) return verdicts
  const related = verdicts.filter(
    ({ inverter }, index) => index === chosen || inverter.unit.inputNominalV === plan.need.supply.nominalV,
  )
  const pool = related.length >= BRIEF_UNITS ? related : verdicts
  const chosenVerdict = verdicts[chosen]
  const centre =
    chosenVerdict === undefined
      ? pool.findIndex(({ inverter }) => inverter.unit.continuousW >= plan.need.requiredContinuousW)
      : pool.indexOf(chosenVerdict)
  const last = Math.min(pool.length, (centre < 0 ? pool.length - 1 : centre) + BRIEF_UNITS_ABOVE + 1)
  const first = Math.max(0, last - BRIEF_UNITS)
  return pool.slice(first, first + BRIEF_UNITS)
}
