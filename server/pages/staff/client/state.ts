import type { SizingAnswer } from '../../../../shared/contract/answers.ts'
import type { CoveragePreview, CoverageReply } from '../../../../shared/contract/coverage.ts'
import type { DemandReply } from '../../../../shared/contract/demand.ts'
import type { RangeChanges, RangeVersions } from '../../../../shared/contract/range-admin.ts'
import type { Setup } from '../../../../shared/contract/setup.ts'
import type { Reply, StaffApi, Stock } from './api.ts'
import { EMPTY_PLAN, type Formats, type PlanState } from './from-widget.ts'
import type { Draft, PartList } from './range/draft.ts'
import type { Fault } from './range/faults.ts'
import type { Collision } from './range/rebase.ts'
import type { Words } from './words.ts'

/** The sections of the page; each has its address as a fragment. */
export const SECTIONS = ['range', 'history', 'coverage', 'demand', 'desk'] as const
export type Section = (typeof SECTIONS)[number]

/** What a check found to be in order. */
export interface Checked {
  /** The draft that was checked: after any edit it has to be checked again. */
  readonly draft: Draft
  readonly changes: RangeChanges
  readonly effect: CoveragePreview | undefined
}

/** Somebody else has put a range in force in the meantime. */
export interface Conflict {
  readonly detail: string
  readonly changes: RangeChanges | undefined
}

export interface RangeState {
  /** The range in force as it was read. */
  readonly base: Draft | undefined
  readonly etag: string
  readonly draft: Draft | undefined
  readonly before: readonly Draft[]
  /** The cell that is being typed in: its letters are taken back together. */
  readonly typing: string | undefined
  readonly list: PartList
  readonly page: number
  readonly only: 'all' | 'faults' | 'changes'
  readonly faults: readonly Fault[]
  readonly checked: Checked | undefined
  readonly conflict: Conflict | undefined
  readonly collisions: readonly Collision[]
}

/** An old version that somebody looks at. */
export interface Look {
  readonly version: number
  readonly changes: RangeChanges
  readonly effect: CoveragePreview | undefined
}

export interface HistoryState {
  readonly versions: RangeVersions['versions'] | undefined
  readonly nextBefore: number | null
  readonly look: Look | undefined
}

export interface CoverageState {
  readonly stock: Stock
  readonly reply: CoverageReply | undefined
  readonly only: 'all' | 'gaps'
}

export interface DemandState {
  readonly from: string
  readonly to: string
  readonly reply: DemandReply | undefined
}

export interface DeskState {
  readonly plan: PlanState
  /** Number of the group of things that take turns, by load; a group of one is still being made. */
  readonly turns: Readonly<Record<string, number>>
  readonly typed: string
  /** Place of the marked hit. */
  readonly hit: number
  readonly answer: SizingAnswer | undefined
  readonly asking: boolean
}

/** Everything that the page shows. The key is not part of it. */
export interface State {
  readonly shopId: string
  readonly signedIn: boolean
  readonly setup: Setup | undefined
  readonly section: Section
  readonly notice: { readonly kind: 'failure' | 'done'; readonly text: string } | undefined
  /** What the page is waiting for. */
  readonly busy: boolean
  readonly range: RangeState
  readonly history: HistoryState
  readonly coverage: CoverageState
  readonly demand: DemandState
  readonly desk: DeskState
}

/** What every section works with. */
export interface Page {
  readonly state: State
  readonly api: StaffApi
  readonly words: Words
  readonly formats: Formats
  set(change: Partial<State>): void
  /** Tells people who listen. */
  say(text: string): void
  /** Shows why the service gave no answer; asks for the key again where it is no longer valid. */
  failed(reply: Extract<Reply<unknown>, { readonly ok: false }>): void
  /** Waits for the service with the page marked as busy. */
  during<T>(work: Promise<T>): Promise<T>
  /** Moves focus once the page is drawn. */
  focus(selector: string): void
}

/** A page before anybody has signed in. */
export function startState(today: string): State {
  return {
    shopId: '',
    signedIn: false,
    setup: undefined,
    section: 'range',
    notice: undefined,
    busy: false,
    range: {
      base: undefined,
      etag: '',
      draft: undefined,
      before: [],
      typing: undefined,
      list: 'inverters',
      page: 0,
      only: 'all',
      faults: [],
      checked: undefined,
      conflict: undefined,
      collisions: [],
    },
    history: { versions: undefined, nextBefore: null, look: undefined },
    coverage: { stock: 'in-stock', reply: undefined, only: 'all' },
    demand: { from: dayBefore(today, 29), to: today, reply: undefined },
    desk: { plan: EMPTY_PLAN, turns: {}, typed: '', hit: 0, answer: undefined, asking: false },
  }
}

/** The day so many days earlier, as `YYYY-MM-DD`. */
export function dayBefore(day: string, days: number): string {
  return new Date(Date.parse(day) - days * 86_400_000).toISOString().slice(0, 10)
}
