import type { SizingAnswer } from '../../shared/contract/answers.ts'
import type { PlanState } from '../plan.ts'
import type { PlannedRequest } from '../plan-request.ts'
import type { Step } from './guide-host.ts'

/** What the answer screen reads and does beside a view. */
export interface AnswerHost {
  readonly planned: PlannedRequest
  readonly answer: SizingAnswer
  /** The arithmetic, once that has been fetched. */
  readonly working: SizingAnswer['working'] | 'asked'
  /** Parts of the kit that are ticked, by their place. */
  readonly taken: ReadonlySet<number>
  readonly link: string | undefined
  readonly changed: boolean
  /** False while an answer's first screenful is drawn alone. */
  readonly whole: boolean
  readonly withoutCart: boolean
  go(step: Step): void
  fetchWorking(): void
  take(place: number): void
  addToCart(lines: readonly { readonly sku: string; readonly quantity: number }[]): void
  copyLink(): void
  print(): void
  /** Plans that a change made of one, while one of them is shown; empty for a single one. */
  readonly parts: readonly PlanState[]
  /** Shows the answer of a changed plan, of several the first where none is named. */
  tryOut(plans: readonly PlanState[], shown?: PlanState): void
  undo(): void
  startAgain(): void
}
