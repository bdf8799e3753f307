import type { TallywattElement } from '../element.ts'
import type { PlanState } from '../plan.ts'

/** Screens of the guide, in order. */
export type Step = 'pick' | 'when' | 'supply' | 'answer'

/** The guide as its screens and its answer desk use it. */
export interface GuideHost extends TallywattElement {
  /** Whether the cart button is left out. */
  readonly withoutCart: boolean
  /** Name of this guide's part of the address's fragment. */
  readonly fragmentName: string
  /** Shows a screen; moves focus to its heading unless told not to. */
  go(step: Step, focused?: boolean): void
  /** The plan in place of the one before; used by links and what-ifs. */
  replacePlan(plan: PlanState): void
}
