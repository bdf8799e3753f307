import type { WhatIfStep } from '../../core/inverters/what-ifs/what-if.ts'
import type { WhatIfTold } from './catalogue.ts'
import type { Formats } from './formats.ts'

type StepKind = WhatIfStep['kind']

/** One a kind of change: what has to be done, without what it buys. */
type StepConditions = {
  readonly [K in StepKind]: (told: Pick<WhatIfTold<K>, 'loads' | 'values'>, formats: Formats) => string
}

/** Conditions of a language. */
export type Conditions = StepConditions & {
  /** A higher voltage and a larger battery at once: one battery, not two. */
  readonly 'other-battery': (
    values: { readonly nominalV: number; readonly capacityAh: number },
    formats: Formats,
  ) => string
}

/**
 * The conditions of a combined what-if.
 *
 * @param told - Its steps, and the loads of the first step followed by those of the second
 * @param conditions - Of the language
 * @param formats - Of the locale
 * @returns One condition a step, the second without its capital; one where both speak of the battery
 */
export function conditionsOf(
  { loads, values }: Pick<WhatIfTold<'combined'>, 'loads' | 'values'>,
  conditions: Conditions,
  formats: Formats,
): readonly string[] {
  const [first, second] = values.steps
  if (first?.kind === 'higher-voltage' && second?.kind === 'larger-battery') {
    const battery = { nominalV: first.values.nominalV, capacityAh: second.values.capacityAh }
    return [conditions['other-battery'](battery, formats)]
  }
  let from = 0
  return values.steps.map((step, index) => {
    const own = loads.slice(from, from + step.loadIds.length)
    from += step.loadIds.length
    const condition = written(step, own, conditions, formats)
    return index === 0 ? condition : condition.charAt(0).toLowerCase() + condition.slice(1)
  })
}

function written<K extends StepKind>(
  step: WhatIfStep,
  loads: WhatIfTold<K>['loads'],
  conditions: StepConditions,
  formats: Formats,
): string {
  const { kind, values } = step as unknown as { readonly kind: K; readonly values: WhatIfTold<K>['values'] }
  return conditions[kind]({ loads, values }, formats)
}
