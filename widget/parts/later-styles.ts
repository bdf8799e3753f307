import { css } from '../sheet.ts'

/** The second and the third question, and what the editor's fields share with them. */
export const laterStyles = css`
  .pick { display: flex; gap: .7em; align-items: center; min-block-size: 44px; padding: .35em .2em; cursor: pointer }
  .pick > span { min-inline-size: 0 }
  .pick input, .tick input { inline-size: 1.35em; block-size: 1.35em; margin: 0; flex: none; accent-color: var(--accent) }
  legend, .ask b { font-weight: 600; padding: 0; margin-block-end: .2em }
  .plates { inline-size: 100%; max-inline-size: 16em; stroke-width: 1.5 }
  .fault { border-inline-start: 4px solid var(--ink); padding-inline-start: .7em; font-weight: 600 }
  [aria-invalid='true'] { border-width: 2px; border-style: dashed }
  .timed .tools select { inline-size: auto; max-inline-size: 100% }
  select { max-inline-size: 100%; text-overflow: ellipsis }
  .tick { display: grid; place-items: center; inline-size: 44px; min-block-size: 44px; cursor: pointer }
  .group { border: 1px solid var(--accent); border-inline-start-width: 4px; padding: .3em .9em 0; margin-block: .9em }
  .group .row { justify-content: space-between }
  .group .things { border: 0 }
  .turns { margin-block-start: 1em }
  .ask { border-block-start: 1px solid var(--line); padding-block: 1em .6em }
  .ask:first-of-type { border-block-start: 1px solid var(--ink) }
  .ask legend { float: inline-start; inline-size: 100%; font-family: var(--serif); font-size: 1.15em }
  .ask legend + * { clear: both }
  .options { display: flex; flex-wrap: wrap; gap: .5em; padding-block-start: .5em; align-items: center }
  .options .pick {
    border: 1px solid var(--edge); border-radius: var(--radius); padding: .35em .9em .35em .7em; flex-direction: row;
  }
  .options .pick:has(:checked) { border-color: var(--accent); background: var(--wash); box-shadow: inset 0 0 0 1px var(--accent) }
  .options .pick:has(:focus-visible) { outline: 3px solid var(--ink); outline-offset: 2px }
  .options .pick input:focus-visible { outline: none }
  .drawn .options { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17em), 1fr)) }
  .connection { inline-size: 4em; block-size: 2.5em; flex: none }
  .pick small { display: block; font-size: .8125em; line-height: 1.3 }
  .unit-field { display: inline-flex; max-inline-size: 100%; gap: .5em; align-items: center }
  .unit-field input { inline-size: 6em }
  .ask .plates { display: block; margin-block: .4em }
  .ask label > select { display: block; inline-size: auto; max-inline-size: 100% }
  @container (max-width: 26em) { .options { display: grid; grid-template-columns: minmax(0, 1fr) } .options .unit-field { padding-inline-start: 2.6em } }
  @container (max-width: 15em) { .options .pick, .unit-field { flex-wrap: wrap } .unit-field input { inline-size: 4em } }
  @media (forced-colors: active) { .options .pick:has(:checked) { outline: 2px solid Highlight } }
`
