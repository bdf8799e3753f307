import data from './figures.json' with { type: 'json' }

/** How well a printed figure is known: its document was read, is known from memory, or was worked out of it. */
export type Standing = 'read' | 'memory' | 'derived'

/** What the service makes of a printed figure: one figure, or the two that it must lie between. */
export type Computed = number | readonly [low: number, high: number]

/** A printed figure: what it is of, as printed, as computed, the difference, and that over the printed one (0 of 0). */
export type FigureRow = readonly [
  what: string,
  printed: number,
  computed: Computed,
  difference: number,
  share: number,
]

/** Figures of one table of one document. */
export interface FigureTable {
  readonly source: string
  readonly table: string
  readonly quantity: string
  readonly unit: string
  readonly how: 'held' | 'computed'
  readonly standing: Standing
  readonly tolerance: string
  readonly because: string
  /** How many figures were compared; the rows are as many of them as the page quotes. */
  readonly count: number
  readonly within: number
  readonly rows: readonly FigureRow[]
}

/** A figure that is printed wrong. */
export interface Misprint {
  readonly source: string
  readonly table: string
  readonly what: string
  readonly unit: string
  readonly printed: number
  readonly computed: Computed
  readonly why: string
}

/** A topic of the page. */
export interface FigureTopic {
  readonly id: string
  readonly title: string
  readonly about: string
  readonly tables: readonly FigureTable[]
  readonly misprints: readonly Misprint[]
}

/** A document, with how many figures were taken from it. */
export interface FigureSource {
  readonly name: string
  readonly standing: Standing
  readonly copy?: string
  readonly shown: 'all' | 'some'
  readonly count: number
}

/** Everything that the page shows. */
export interface Figures {
  readonly sources: Readonly<Record<string, FigureSource>>
  readonly topics: readonly FigureTopic[]
}

/** The figures as `npm run figures` has written them down; a test holds them to what core computes. */
export const FIGURES = data as unknown as Figures
