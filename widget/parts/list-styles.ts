import { css } from '../sheet.ts'

/** The list of what has been picked, and the kinds to browse. */
export const listStyles = css`
  h3 { font-size: 1.15em }
  h3.label { font: inherit; font-size: .875em }
  .bare { border-color: transparent; background: none; padding-inline: .25em; text-decoration: underline; text-underline-offset: .2em }
  .kinds-list button {
    display: flex; flex-wrap: wrap; gap: .8em; align-items: center; min-block-size: 48px; padding: .3em .8em;
    border: 0; border-block-start: 1px solid var(--line); border-radius: 0; inline-size: 100%; background: none;
  }
  .kinds-list button:hover { background: var(--wash); box-shadow: inset 4px 0 var(--accent) }
  .kinds-list .name { flex: 1; min-inline-size: 0 }
  .kinds { margin-block-start: .7em }
  .kinds .tile { min-block-size: 5.2em }
  .kinds-list { border-block-end: 1px solid var(--line); margin-block: .7em }
  .things { border-block-end: 1px solid var(--line) }
  .thing { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: .2em .8em; align-items: center; border-block-start: 1px solid var(--line); padding-block: .6em }
  .thing .name b { font-weight: 600 }
  .key { display: inline-block; min-inline-size: 1.6em; padding-inline: .3em; text-align: center; font-size: .8em; font-weight: 700; border: 1px solid var(--accent); background: var(--tint); margin-inline-end: .4em }
  .key.strong { background: var(--accent); color: var(--on-accent) }
  .thing .tools { min-inline-size: 0; grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: .3em; align-items: center }
  .thing .edit { grid-column: 1 / -1 }
  .stepper { display: inline-flex; align-items: center }
  .stepper button { inline-size: 44px; padding: 0; display: grid; place-items: center }
  .stepper .many { min-inline-size: 1.9em; text-align: center; font-weight: 600 }
  @container (min-width: 36em) {
    .thing { grid-template-columns: auto minmax(0, 1fr) auto }
    .thing .tools { min-inline-size: 0; grid-column: auto }
  }
`
