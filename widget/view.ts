import type { Setup } from '../shared/contract/setup.ts'
import type { Formats } from './formats.ts'
import type { Words } from './i18n/en.ts'
import type { LaterWords } from './i18n/en-later.ts'
import type { ModuleName, Modules } from './modules.ts'
import type { PlanState } from './plan.ts'
import type { Totals } from './totals.ts'

/** What a screen draws from and tells its element. Screens are functions; only the element holds state. */
export interface View {
  readonly words: Words
  readonly setup: Setup
  readonly plan: PlanState
  readonly totals: Totals
  readonly rtl: boolean
  /** Width of the element in ems of its own text. */
  readonly widthEm: number
  readonly ui: UiState
  /** Writes a power. [W] */
  watts(value: number): string
  /** Puts a plan in place of the one before; `said` is announced afterwards, worded with the new totals. */
  act(plan: PlanState, said?: (totals: Totals) => string): void
  say(text: string): void
  redraw(): void
  /** Puts focus on the element that a selector finds, once the next drawing is done. */
  focusOn(selector: string): void
  /** Resolves once what has changed is seen. */
  afterPaint(): Promise<void>
  /** A module that has been fetched. */
  have<K extends ModuleName>(name: K): Modules[K] | undefined
  /** Fetches a module; undefined where that failed, which the shopper is told. */
  load<K extends ModuleName>(name: K): Promise<Modules[K] | undefined>
  /** Fetches what the editor of a load's power needs. */
  loadEditor(): Promise<unknown>
  /** Words and formats of all but the first question, once those are here. */
  readonly later: LaterWords | undefined
  readonly formats: Formats | undefined
}

/** A view whose later words are here. */
export interface LaterView extends View {
  readonly later: LaterWords
  readonly formats: Formats
}

/**
 * Whether the later words are here.
 *
 * @param view - Any view
 * @returns True where a later screen can be drawn from it
 */
export function isLater(view: View): view is LaterView {
  return view.later !== undefined
}

/** What is open or half typed on a screen; no answer of the shopper stands here. */
export interface UiState {
  query: string
  hit: number
  browsing: boolean
  category: string | undefined
  /** Load whose power is being edited, or `own` for a new one. */
  editing: string | undefined
  /** Half-typed fields of the editor and the supply form, by name. */
  draft: Record<string, string>
  /** Loads ticked for taking turns; undefined while nobody is choosing. */
  turns: readonly string[] | undefined
}

/** Nothing open, nothing typed. */
export function freshUi(): UiState {
  return {
    query: '',
    hit: -1,
    browsing: false,
    category: undefined,
    editing: undefined,
    draft: {},
    turns: undefined,
  }
}
