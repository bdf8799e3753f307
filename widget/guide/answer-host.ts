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
  readonly withoutCart: boolean
  go(step: Step): void
  fetchWorking(): void
  take(place: number): void
  addToCart(lines: readonly { readonly sku: string; readonly quantity: number }[]): void
  copyLink(): void
  print(): void
  tryOut(plan: PlanState): void
  undo(): void
  startAgain(): void
}
