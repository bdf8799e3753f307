import type { FuseStyle } from '../range/vocabulary.ts'
import type { SourceId } from './sources.ts'

/** Fuse rating over the steady current that it must carry for hours. Source: nec-125-percent */
export const FUSE_OVER_CURRENT_FACTOR = 1.25

/** What the body of a fuse does where its maker's figures are not stated. */
export interface FuseStyleFigures {
  /** Direct-current rated voltage. [V] */
  readonly voltageV: number
  /** Direct-current breaking capacity. [A] */
  readonly breakingCapacityA: number
  readonly source: SourceId
}

/**
 * Figures by style. Blade: ISO 8820-3, the lower of its two voltages. Bolted strip: ISO 8820-5. Terminal
 * post: ISO 8820-6, the single-bolt link. Class T: 20 000 A (battery-fuse-dc-rating, ul248-15), the lowest
 * d.c. voltage offered.
 */
export const FUSE_STYLE_FIGURES: Readonly<Record<FuseStyle, FuseStyleFigures>> = {
  blade: { voltageV: 32, breakingCapacityA: 1000, source: 'iso8820-scopes' },
  'bolted-strip': { voltageV: 32, breakingCapacityA: 2000, source: 'iso8820-scopes' },
  'terminal-post': { voltageV: 58, breakingCapacityA: 2000, source: 'iso8820-scopes' },
  'class-t': { voltageV: 125, breakingCapacityA: 20_000, source: 'battery-fuse-dc-rating' },
}

/**
 * Standard ampere ratings up to the largest class T fuse, with the fuse-only sizes but for 601 A, which
 * only tells one body size from the next. Source: nec-240-6
 */
export const GENERAL_FUSE_RATINGS_A = [
  1, 3, 6, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300,
  350, 400, 450, 500, 600, 700, 800, 1000, 1200,
] as const

/**
 * Standard ratings by style, smallest first. [A] Blade: types C, E and F together; bolted strip: SF 30 and
 * SF 51 together. Source: iso8820-ratings (memory), class T: nec-240-6 up to the 1200 A of ul248-15
 */
export const FUSE_RATINGS_A: Readonly<Record<FuseStyle, readonly number[]>> = {
  blade: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100],
  'bolted-strip': [30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500],
  'terminal-post': [30, 40, 50, 60, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300],
  'class-t': GENERAL_FUSE_RATINGS_A,
}

/**
 * Breaking capacity wanted by the bank's cold cranking amperes, lead-acid, 12 to 24 V; `main` is the first
 * device after the battery, `branch` one behind it. [A] Source: abyc-e11-interrupting
 */
export const BREAKING_CAPACITY_BANDS = [
  { upToCrankingA: 650, mainA: 1500, branchA: 750 },
  { upToCrankingA: 1100, mainA: 3000, branchA: 1500 },
  { upToCrankingA: Number.POSITIVE_INFINITY, mainA: 5000, branchA: 2500 },
] as const

/** Highest nominal voltage of the bands. [V] Source: abyc-e11-interrupting */
export const BREAKING_BANDS_UP_TO_V = 24

/**
 * Cold cranking amperes taken per ampere-hour of a lead-acid bank, on the high side.
 * Source: common-practice
 */
export const CRANKING_A_PER_AH = 10

/**
 * Breaking capacity wanted on a lithium bank, or one of unknown chemistry. [A] The bands leave lithium out,
 * and its short-circuit current is several times that of lead-acid of the same size; the trade fits class
 * T, so the figure is that of class T. Branch: half of it, as in the bands. Source: common-practice
 */
export const LITHIUM_BREAKING_CAPACITY = { mainA: 20_000, branchA: 10_000 } as const
