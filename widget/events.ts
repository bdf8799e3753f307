import type { FitAnswer, SizingAnswer } from '../shared/contract/answers.ts'
import type { FitRequest, SizingRequest } from '../shared/contract/plan.ts'

/** What the elements tell the page; all bubble and cross shadow roots. */
export interface TallywattEvents {
  /** An answer has come, after the shopper asked or changed something. */
  'tallywatt-answer': CustomEvent<
    | { readonly request: SizingRequest; readonly answer: SizingAnswer }
    | { readonly request: FitRequest; readonly answer: FitAnswer }
  >
  /** The shopper wants these parts. Cancelable: a page that cancels says itself what became of them. */
  'tallywatt-add-to-cart': CustomEvent<{
    readonly lines: readonly { readonly sku: string; readonly quantity: number }[]
  }>
  /** The guide shows another screen. */
  'tallywatt-step': CustomEvent<{ readonly step: 'pick' | 'when' | 'supply' | 'answer' }>
  /** The service gave no answer. */
  'tallywatt-failure': CustomEvent<{ readonly kind: string }>
}

declare global {
  interface HTMLElementEventMap extends TallywattEvents {}
}
