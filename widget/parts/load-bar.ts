import { html, nothing, svg, type TemplateResult } from 'lit/html.js'
import type { LaterView, View } from '../view.ts'
import { type BarGeometry, type BarSegment, barGeometry, letterOf, widestPiece } from './bar-geometry.ts'

/** A unit whose limit the bar shows. */
export interface BarLimit {
  /** [W] */
  readonly watts: number
  readonly label: string
}

/** Widths of one letter and of a segment's margins, as shares of the text size: rough, on the wide side. */
const LETTER_EM = 0.56
const MARGIN_EM = 1.2

const percent = (fraction: number) => `${Math.round(fraction * 1e5) / 1e3}%`

/**
 * The load bar: each load a lettered stretch, what is kept free hatched, the limit a line, the starting moment a
 * thin mark above. Sizes are SVG attributes, since a strict page allows no style attribute.
 *
 * @param view - What is drawn from
 * @param full - With names, the starting moment and the limit written out
 * @param limit - The unit's limit, where there is a unit
 * @returns One picture with its text
 */
export function loadBar(view: LaterView, full: boolean, limit?: BarLimit): TemplateResult {
  const { demand, requiredW } = view.totals
  const bar = barGeometry({ demand, takeTurns: view.plan.takeTurns, requiredW, limitW: limit?.watts })
  const frame = full ? FULL : COMPACT
  const id = full ? 'hatch-full' : 'hatch-foot'
  const watts = (value: number) => view.watts(value)
  const starting = bar.startingX === null ? undefined : watts(demand.startingW)
  const edgeX = bar.limitX ?? requiredW / bar.scaleW
  const lines = [bar.startingX, full ? edgeX : null]
  const text = view.later.barText(watts(demand.runningW), watts(requiredW), starting)
  return html`<svg class="bar" part="load-bar" width="100%" height=${frame.height} role="img" aria-label=${text}>
    <defs>
      <pattern id=${id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line class="hatch" x1="0" y1="0" x2="0" y2="6" />
      </pattern>
    </defs>
    ${headroom(view, bar, lines, frame, id)} ${bar.segments.map((segment) => stretch(view, segment, lines, frame, full))}
    ${startMark(view, bar, frame, full)} ${full ? edge(view, edgeX, frame, limit) : nothing}
    <line class="line" x1="0" x2="100%" y1=${frame.foot} y2=${frame.foot} />
  </svg>`
}

interface Frame {
  readonly height: string
  readonly mark: string
  readonly top: string
  readonly bar: string
  readonly middle: string
  readonly foot: string
}

const FULL: Frame = {
  height: '7.4em',
  mark: '1.75em',
  top: '2.4em',
  bar: '2.6em',
  middle: '3.7em',
  foot: '5em',
}
const COMPACT: Frame = {
  height: '2em',
  mark: '.2em',
  top: '.5em',
  bar: '1.4em',
  middle: '1.2em',
  foot: '1.9em',
}

/** Left end of a stretch, whichever side reading starts at. */
function left(view: View, x: number, width = 0): string {
  return percent(view.rtl ? 1 - x - width : x)
}

function stretch(
  view: LaterView,
  { ids, x, width }: BarSegment,
  lines: readonly (number | null)[],
  frame: Frame,
  full: boolean,
): TemplateResult {
  const places = ids.map((id) => view.plan.loads.findIndex((load) => load.id === id))
  const letters = places.map(letterOf).join('/')
  const strong = (places[0] ?? 0) % 2 === 0
  const piece = widestPiece({ x, width }, lines)
  const room = piece.width * view.widthEm - MARGIN_EM
  const named = full && ids.length === 1 ? `${letters} ${nameOf(view, ids[0] ?? '')}` : letters
  const text = fits(named, room) ? named : fits(letters, room + MARGIN_EM / 2) ? letters : ''
  return svg`<rect class=${strong ? 'a' : 'b'} x=${left(view, x, width)} y=${frame.top} width=${percent(width)} height=${frame.bar} />
    <text class=${strong ? 'on' : ''} x=${left(view, piece.x + piece.width / 2)} y=${frame.middle} dy=".35em" text-anchor="middle">${text}</text>`
}

function fits(text: string, roomEm: number): boolean {
  return text.length * LETTER_EM <= roomEm
}

/**
 * What a load is called.
 *
 * @param view - What is drawn from
 * @param id - The load
 * @returns Its own name or its appliance's
 */
export function nameOf(view: Pick<View, 'plan' | 'setup'>, id: string): string {
  const load = view.plan.loads.find((one) => one.id === id)
  const listed = view.setup.appliances.find((one) => one.id === load?.appliance)
  return load?.name ?? listed?.name ?? ''
}

function headroom(
  view: LaterView,
  { headroom: free }: BarGeometry,
  lines: readonly (number | null)[],
  frame: Frame,
  id: string,
) {
  if (free === null) return nothing
  const { x, width } = free
  const piece = widestPiece(free, lines)
  const label =
    frame === FULL && fits(view.later.keptFree, piece.width * view.widthEm) ? view.later.keptFree : ''
  return svg`<rect x=${left(view, x, width)} y=${frame.top} width=${percent(width)} height=${frame.bar} fill="url(#${id})" />
    <text class="tell" x=${left(view, piece.x + piece.width / 2)} y=${frame.middle} dy=".35em" text-anchor="middle">${label}</text>`
}

function startMark(view: LaterView, { startingX, runningX }: BarGeometry, frame: Frame, full: boolean) {
  if (startingX === null) return nothing
  const end = left(view, startingX)
  const label = view.later.startingShort(view.watts(view.totals.demand.startingW))
  return svg`<line class="mark" x1=${left(view, runningX)} x2=${end} y1=${frame.mark} y2=${frame.mark} />
    <line class="mark" x1=${end} x2=${end} y1=${frame.mark} y2=${frame.foot} />
    ${full ? tell(view, startingX, '1.2em', label) : nothing}`
}

/** Where the limit or the need is: a line through the bar with its words below. */
function edge(view: LaterView, x: number, frame: Frame, limit: BarLimit | undefined) {
  if (view.plan.loads.length === 0) return nothing
  const label = limit?.label ?? view.words.needed(view.watts(view.totals.requiredW))
  const at = left(view, x)
  return svg`<line class=${limit === undefined ? 'need' : 'limit'} x1=${at} x2=${at} y1=${frame.top} y2="5.5em" />
    ${tell(view, x, '6.8em', label)}`
}

/** Words at a mark, on the side of it that has the room; from the edge where neither has. */
function tell(view: View, x: number, y: string, label: string) {
  const needed = (label.length * LETTER_EM) / view.widthEm
  const before = needed <= x
  const at = before || needed <= 1 - x ? x : 0
  return svg`<text class="tell" x=${left(view, at)} y=${y} text-anchor=${before ? 'end' : 'start'}>${label}</text>`
}
