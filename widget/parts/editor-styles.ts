import { css } from '../sheet.ts'

/** The editor of a load's power. */
export const editorStyles = css`
  .editor { display: grid; gap: .9em; padding: 1em; margin-block: .7em; border: 1px solid var(--edge); border-radius: var(--radius) }
  .where { display: flex; flex-wrap: wrap; gap: .6em 1.2em; align-items: center }
  .where figcaption { flex: 1 1 14em }
  .where ol { list-style: decimal; padding-inline-start: 1.3em }
  .plates text { fill: currentColor; stroke: none; font-size: 11px; font-weight: 600 }
  .plates .number { fill: var(--on-accent); font-size: 10px } .plates .spot { fill: var(--accent); stroke: none } .plates .sheet { fill: var(--paper); stroke: none }
  .field { display: grid; gap: .25em }
  .pair { display: grid; gap: .8em; grid-template-columns: repeat(auto-fit, minmax(min(100%, 8em), 1fr)) }
  .read { font-weight: 600 }
`
