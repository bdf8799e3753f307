import { css } from '../sheet.ts'

/** The answer of both elements. */
export const answerStyles = css`
  .verdict { display: flex; gap: .5em; align-items: center; font-weight: 600; font-size: 1.1em }
  .verdict .sign { inline-size: 1.5em; block-size: 1.5em }
  .unit { display: grid; gap: .9em 1.3em; grid-template-columns: minmax(0, 1fr); padding-block: 1em; border-block: 1px solid var(--ink); margin-block: .9em }
  .unit-picture { inline-size: 9em; max-inline-size: 100%; aspect-ratio: 4 / 3; object-fit: contain; background: var(--wash); padding: .6em }
  .unit-drawing { inline-size: 9em; max-inline-size: 100%; background: var(--wash); padding: .8em; stroke-width: 1.5 }
  .unit h2 { font-size: 1.5em }
  .unit .price { font-size: 1.3em; font-weight: 600 }
  .unit dl, .facts { display: grid; grid-template-columns: fit-content(45%) minmax(0, 1fr); gap: .15em 1em }
  .unit dt, .facts dt { color: var(--quiet) }
  .unit dd, .facts dd { font-weight: 600 }
  .why { font-size: 1.1em; max-inline-size: 38em }
  section { margin-block-start: 2em }
  section > h3 { padding-block-end: .35em; border-block-end: 1px solid var(--ink); margin-block-end: .8em; font-size: 1.25em }
  .care { display: grid; gap: .5em; margin-block: .9em }
  .care li { display: grid; grid-template-columns: auto 1fr; gap: .6em }
  .care .sign { margin-block-start: .2em }
  .doing { margin-block: 1.2em }
  .link { margin-block: .6em }
  .mine li { display: flex; flex-wrap: wrap; gap: .2em 1em; justify-content: space-between; align-items: center; border-block-end: 1px solid var(--line); padding-block: .2em }
  .mine li > span { flex: 1 1 12em }
  .curve { display: block; stroke: none; font-size: .875em; margin-block: .8em }
  .curve text { fill: var(--ink) } .curve .named { font-weight: 700; font-size: 1.15em }
  .curve text { paint-order: stroke; stroke: var(--paper); stroke-width: 4px }
  .curve .grid { stroke: var(--line); stroke-width: 1 } .curve .line { stroke: var(--edge); stroke-width: 1 }
  .curve .trace { stroke: var(--accent); stroke-width: 3; fill: none } .curve .mark { stroke: var(--ink); stroke-width: 1.5 }
  .curve .end { fill: var(--paper); stroke: var(--ink); stroke-width: 3 } .curve .hatch { stroke: var(--tint); stroke-width: 2.5 }
  .kit { border-block-start: 0 }
  .kit li { display: grid; grid-template-columns: auto minmax(0, 1fr) auto; gap: .1em .8em; align-items: start; border-block-end: 1px solid var(--line); padding-block: .55em }
  .kit .tick { display: grid; place-items: center; inline-size: 44px; min-block-size: 44px; margin-block-start: -.4em; cursor: pointer }
  .kit .tick input { inline-size: 1.35em; block-size: 1.35em; margin: 0; accent-color: var(--accent) }
  .kit .none { inline-size: 44px }
  .kit .cost { font-weight: 600; white-space: nowrap; text-align: end }
  .kit .total { font-size: 1.15em; border-block-end: 3px double var(--ink); grid-template-columns: 1fr auto; font-weight: 600 }
  .ifs li { display: flex; flex-wrap: wrap; gap: .4em 1em; justify-content: space-between; align-items: center; border-block-end: 1px solid var(--line); padding-block: .5em }
  .ifs li > span { flex: 1 1 16em }
  .plain li { padding-block: .3em; border-block-end: 1px solid var(--line) }
  .cautions li { padding-block: .5em; display: grid; grid-template-columns: auto 1fr; gap: .6em; border-block-end: 1px solid var(--line) }
  details { margin-block-start: 1em }
  summary { font-weight: 600; display: flex; gap: .5em; align-items: center; justify-content: space-between }
  summary::-webkit-details-marker { display: none }
  details[open] > summary .sign { rotate: 180deg }
  details > :not(summary) { margin-block: .6em }
  .working { overflow-x: auto }
  table { border-collapse: collapse; font-size: .875em; inline-size: 100% }
  th, td { text-align: start; vertical-align: top; padding: .4em .8em .4em 0; border-block-end: 1px solid var(--line); overflow-wrap: anywhere }
  @container (max-width: 20em) { .kit li { grid-template-columns: auto minmax(0, 1fr) } .kit .cost, .kit li > .small { grid-column: 2; text-align: start } .kit .total { grid-template-columns: minmax(0, 1fr) } }
  @container (min-width: 34em) { .unit { grid-template-columns: auto minmax(0, 1fr) } }
  @media (forced-colors: active) {
    .curve .trace, .curve .mark, .curve .end, .curve .hatch, .curve .line, .curve .grid { stroke: CanvasText }
    .curve .trace { stroke: Highlight } .curve text { fill: CanvasText; stroke: Canvas } .curve .end { fill: Canvas }
  }
`
