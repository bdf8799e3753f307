import type { AddedUp } from '../../core/loads/added-up.ts'

/** One stretch of the load bar: a load, or a take-turns group as its largest load. Fractions of the width. */
export interface BarSegment {
  readonly ids: readonly string[]
  readonly watts: number
  readonly x: number
  readonly width: number
}

/** The load bar as fractions 0..1 of its width, read from the side that reading starts at. */
export interface BarGeometry {
  /** Power at the far end. [W] */
  readonly scaleW: number
  readonly segments: readonly BarSegment[]
  /** Where everything that may run together ends. */
  readonly runningX: number
  /** Power kept free: from the loads to the need, or to the unit's limit. */
  readonly headroom: { readonly x: number; readonly width: number } | null
  /** Where the starting moment reaches; null where nothing starts hard. */
  readonly startingX: number | null
  readonly limitX: number | null
}

/** Far ends that the bar steps through while loads are picked, so that it grows and seldom rescales. [W] */
const SCALE_STEPS_W = [
  250, 500, 1000, 1500, 2500, 4000, 6000, 10_000, 15_000, 25_000, 50_000, 100_000, 250_000,
]

/** Room beyond the furthest mark, so that its line does not touch the edge. */
const MARGIN = 1.06

/** What a bar shows. */
export interface BarInput {
  readonly demand: AddedUp
  readonly takeTurns: readonly (readonly string[])[]
  /** Continuous power that the loads need. [W] */
  readonly requiredW: number
  /** Continuous power of a unit, where one is shown. [W] */
  readonly limitW?: number | undefined
}

/**
 * Lays the load bar out.
 *
 * @param input - Demand with its groups, the need, and a unit's limit where there is a unit
 * @returns Fractions of the width
 */
export function barGeometry({ demand, takeTurns, requiredW, limitW }: BarInput): BarGeometry {
  const furthestW = Math.max(requiredW, demand.startingW, limitW ?? 0)
  const wantedW = furthestW * MARGIN
  const step = SCALE_STEPS_W.find((watts) => watts >= wantedW) ?? wantedW
  const scaleW = limitW === undefined ? step : Math.max(wantedW, 1)
  const at = (watts: number) => Math.min(1, Math.max(0, watts / scaleW))
  let x = 0
  const segments = stretchesOf(demand, takeTurns).map(({ ids, watts }) => {
    const segment = { ids, watts, x, width: at(watts) }
    x += segment.width
    return segment
  })
  const runningX = at(demand.runningW)
  const freeEnd = at(limitW ?? requiredW)
  const free = Math.max(0, freeEnd - runningX)
  return {
    scaleW,
    segments,
    runningX,
    headroom: free > 0 ? { x: runningX, width: free } : null,
    startingX: demand.startingW > demand.runningW ? at(demand.startingW) : null,
    limitX: limitW === undefined ? null : at(limitW),
  }
}

/** Each ungrouped load and each group once, in the order of the loads. */
function stretchesOf(
  { loads }: AddedUp,
  takeTurns: readonly (readonly string[])[],
): readonly { readonly ids: readonly string[]; readonly watts: number }[] {
  const drawn = new Set<readonly string[]>()
  const stretches: { ids: readonly string[]; watts: number }[] = []
  for (const load of loads) {
    const group = takeTurns.find((ids) => ids.includes(load.id))
    if (group === undefined) stretches.push({ ids: [load.id], watts: load.quantity * load.runningW })
    if (group === undefined || drawn.has(group)) continue
    drawn.add(group)
    const members = loads.filter(({ id }) => group.includes(id))
    stretches.push({
      ids: members.map(({ id }) => id),
      watts: Math.max(...members.map(({ quantity, runningW }) => quantity * runningW)),
    })
  }
  return stretches
}

/**
 * The widest piece of a stretch that no line crosses, for words to stand in.
 *
 * @param stretch - Fractions of the bar's width
 * @param lines - Where lines stand across the bar; null for one that is not drawn
 * @returns The piece; the stretch itself where no line crosses it
 */
export function widestPiece(
  { x, width }: { readonly x: number; readonly width: number },
  lines: readonly (number | null)[],
): { readonly x: number; readonly width: number } {
  const inside = lines.filter((line) => line !== null && line > x && line < x + width) as number[]
  const ends = [x, ...inside.sort((a, b) => a - b), x + width]
  const pieces = ends.slice(1).map((end, place) => ({ x: ends[place] ?? x, width: end - (ends[place] ?? x) }))
  return pieces.reduce((widest, piece) => (piece.width > widest.width ? piece : widest))
}

/**
 * The letter by which a load is found again in the bar: A, B, ... Z, AA, AB, ...
 *
 * @param place - Place of the load in the list, from 0
 * @returns Its letter
 */
export function letterOf(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26))
  return place < 26 ? letter : letterOf(Math.floor(place / 26) - 1) + letter
}
