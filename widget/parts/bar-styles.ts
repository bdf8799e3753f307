import { css } from '../sheet.ts'

/** The load bar. */
export const barStyles = css`
  .bar { display: block; inline-size: 100%; stroke: none; font-size: .875em }
  .bar .a { fill: var(--accent); stroke: var(--paper) } .bar .b { fill: var(--tint); stroke: var(--accent) }
  .bar text { fill: var(--ink) } .bar .on { fill: var(--on-accent) } .bar text { font-weight: 600 }
  .bar .tell { font-weight: 400; fill: var(--ink); paint-order: stroke; stroke: var(--paper); stroke-width: 5px }
  .bar .line { stroke: var(--edge); stroke-width: 1 } .bar .mark { stroke: var(--ink); stroke-width: 1.25 }
  .bar .limit { stroke: var(--ink); stroke-width: 2.5 }
  .bar .need { stroke: var(--ink); stroke-width: 1.5; stroke-dasharray: 3 3 }
  .bar .hatch { stroke: var(--quiet); stroke-width: 1 }
  .bar rect { stroke-linejoin: miter }
  @media (prefers-reduced-motion: no-preference) { .bar rect, .bar line { transition: x .25s, width .25s } }
  @media (forced-colors: active) {
    .bar text { fill: CanvasText } .bar .line, .bar .mark, .bar .limit, .bar .need, .bar .hatch { stroke: CanvasText }
    .bar .a { fill: Highlight; stroke: Canvas } .bar .on { fill: HighlightText } .bar .b { fill: Canvas; stroke: CanvasText }
  }
`
