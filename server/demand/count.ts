import {
  type Choice,
  failingCodes,
  nearMissOf,
  type Outcome,
  type Plan,
  unmetRequestOf,
  type Verdict,
} from '../../core/index.ts'
import type { DemandCall } from '../../shared/contract/demand.ts'
import { choiceKey, combinationKey, type DemandKind, UNLISTED, unmetKey, VOLTAGE_NOT_STATED } from './keys.ts'

/** A request that has been answered, as far as it is counted: references only, nothing is worked out yet. */
export interface AnsweredRequest {
  readonly call: DemandCall
  readonly plan: Plan
  readonly choice: Choice
  readonly outcome: Outcome
  /** For fit: the unit that was asked about. */
  readonly asked?: Verdict
}

/**
 * Everything that one request counts for: no name, text, quantity or rating that somebody typed.
 *
 * @param request - The request with its answer
 * @param add - Called once for each count
 */
export function countRequest(request: AnsweredRequest, add: (kind: DemandKind, key: string) => void): void {
  const { call, plan, choice, outcome } = request
  const { demand, need, input } = plan
  add('outcome', `${call} ${outcome}`)
  add('voltage', input.supply === undefined ? VOLTAGE_NOT_STATED : String(need.supply.nominalV))
  const appliances = new Set(demand.loads.map(({ applianceId }) => applianceId ?? UNLISTED))
  for (const id of appliances) add('appliance', id)
  if (appliances.size > 1) add('combination', combinationKey([...appliances]))
  const fitting = choice.verdicts.filter(({ fits }) => fits).map(({ inverter }) => inverter.unit.sku)
  if (fitting.length > 0) add('choice', choiceKey(fitting))
  for (const code of codesOf(request)) add('code', code)
  if (fitting.length === 0 && need.notAdvised.length === 0) {
    add('unmet', unmetKey(unmetRequestOf(need, choice.verdicts)))
  }
}

/** Why the unit that was asked about, or else the one that comes nearest, does not do. */
function codesOf({ plan, choice, asked }: AnsweredRequest): readonly string[] {
  const { notAdvised, supply } = plan.need
  if (notAdvised.length > 0) return ['not-advised']
  if (asked !== undefined) return failingCodes(asked)
  if (choice.chosen >= 0) return []
  const near = nearMissOf(
    choice.verdicts.filter(({ inverter }) => inverter.unit.inputNominalV === supply.nominalV),
  )
  return near?.codes ?? ['input-voltage-mismatch']
}
