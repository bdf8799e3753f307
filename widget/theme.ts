import { css } from './sheet.ts'

/** Colours, type and reset: what every screen of both elements stands on. */
export const base = css`
  :host { display: block; min-block-size: var(--tallywatt-min-height, 42em); color-scheme: light dark }
  @media (max-width: 40em) { :host { min-block-size: var(--tallywatt-min-height, 54em) } }
  @media (max-width: 19em) { :host { min-block-size: var(--tallywatt-min-height, 66em) } }
  :host([hidden]) { display: none }
  :host([scheme='light']) { color-scheme: light }
  :host([scheme='dark']) { color-scheme: dark }
  .base {
    all: initial; display: flow-root; container-type: inline-size; contain-intrinsic-inline-size: min(17em, 80vw); box-sizing: border-box;
    max-inline-size: var(--tallywatt-max-width, 44em); margin-inline: auto; padding: 1.25em 1.25em 0;
    color-scheme: inherit;
    --paper: var(--tallywatt-paper, light-dark(#fcfbf8, #191b1d)); --ink: var(--tallywatt-ink, light-dark(#1c2126, #ece8df));
    --quiet: var(--tallywatt-quiet, light-dark(#565b61, #b5b0a6)); --line: var(--tallywatt-line, light-dark(#dcd7cc, #3b3d40));
    --edge: var(--tallywatt-edge, light-dark(#7d786e, #8d8981)); --accent: var(--tallywatt-accent, light-dark(#0f5c5c, #7fd0c4));
    --on-accent: var(--tallywatt-on-accent, light-dark(#fff, #0c2422)); --radius: var(--tallywatt-radius, 3px);
    --wash: color-mix(in srgb, var(--accent) 9%, var(--paper));
    --tint: color-mix(in srgb, var(--accent) 24%, var(--paper));
    --serif: var(--tallywatt-heading-font, Charter, 'Iowan Old Style', Palatino, Georgia, serif);
    background: var(--paper); color: var(--ink);
    font: var(--tallywatt-font-size, medium)/1.5 var(--tallywatt-font, system-ui, sans-serif);
    font-variant-numeric: lining-nums tabular-nums; overflow-wrap: anywhere; text-align: start;
  }
  .base[dir='rtl'] { direction: rtl }
  @media (prefers-contrast: more) { .base { --quiet: var(--ink); --edge: var(--ink); --line: var(--edge) } }
  *, ::before, ::after { box-sizing: border-box }
  h2, h3, p, ul, ol, dl, dd, fieldset, figure { margin: 0; padding: 0; border: 0; min-inline-size: 0 }
  ul, ol { list-style: none }
  h2, h3 { font-family: var(--serif); text-wrap: balance; line-height: 1.2; font-weight: 600 }
  h2 { font-size: 1.7em }
  a { color: inherit; text-underline-offset: .2em }
  button, input, select, textarea { font: inherit; color: inherit; letter-spacing: inherit; word-spacing: inherit }
  button, summary, select, input[type='text'], textarea {
    min-block-size: 44px; border: 1px solid var(--edge); border-radius: var(--radius);
    background: var(--paper); padding: .45em .8em; margin: 0;
  }
  button, summary { cursor: pointer; text-align: inherit; touch-action: manipulation }
  input[type='text'], textarea, select { inline-size: 100%; min-inline-size: 0 }
  ::placeholder { color: var(--quiet); opacity: 1 }
  .go {
    background: var(--accent); border-color: var(--accent); color: var(--on-accent);
    font-weight: 600; padding-inline: 1.2em;
  }
  button:hover, summary:hover { border-color: var(--ink) }
  button[aria-disabled='true'] { opacity: .55; cursor: default }
  :host, :focus { scroll-margin-block: var(--tallywatt-sticky-header, 5em) 12em }
  :focus-visible { outline: 3px solid var(--ink); outline-offset: 2px }
  h2:focus { outline: none }
  svg { fill: none; stroke: currentColor; stroke-width: 1.75; stroke-linecap: round; stroke-linejoin: round; overflow: visible }
  .drawing { inline-size: 2.25em; flex: none }
  .sign { inline-size: 1.2em; flex: none; stroke-width: 2.4; vertical-align: -.2em }
  .quiet { color: var(--quiet) }
  .small { font-size: .875em }
  .row { display: flex; flex-wrap: wrap; gap: .6em; align-items: center }
  .said { position: absolute; inline-size: 1px; block-size: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap }
  .head { margin-block-end: 1.1em }
  .head p:first-child { color: var(--quiet); font-size: .875em; letter-spacing: .02em; margin-block-end: .2em }
  .head h2 + p { margin-block-start: .3em; color: var(--quiet) }
  .notice { border: 1px solid var(--edge); border-inline-start-width: 4px; padding: .9em 1em; margin-block: 1em; display: grid; gap: .6em; justify-items: start }
  .help { padding-block: .8em 1.2em; font-size: .875em }
  .help a { display: inline-block; padding-block: .7em }
  @media (forced-colors: active) {
    .go { border: 2px solid ButtonText }
    button[aria-disabled='true'] { color: GrayText; opacity: 1 }
  }
`

/** The first question: search, tiles, the list, the foot with the running total. */
export const picking = css`
  .search { position: relative }
  .search label { display: block; font-weight: 600; margin-block-end: .3em }
  .search input { padding-inline-start: 2.6em }
  .search .sign { position: absolute; inset-inline-start: .8em; inset-block-end: calc(22px - .6em); color: var(--quiet); pointer-events: none }
  .hits { border: 1px solid var(--edge); border-block-start: 0; max-block-size: 27em; overflow: auto }
  .hits:empty { display: none }
  .hits li { display: flex; flex-wrap: wrap; gap: .8em; align-items: center; min-block-size: 48px; padding: .3em .8em; cursor: pointer; border-block-start: 1px solid var(--line) }
  .hits li[aria-selected='true'], .hits li:hover { background: var(--wash); box-shadow: inset 4px 0 var(--accent) }
  .hits .name { flex: 1; min-inline-size: 0 }
  .hits .quiet { white-space: nowrap }
  .label { font-size: .875em; color: var(--quiet); margin-block: 1.3em .5em }
  .tiles { display: grid; gap: .5em; grid-template-columns: repeat(3, minmax(0, 1fr)) }
  .tile {
    display: grid; justify-items: center; align-content: start; gap: .25em; inline-size: 100%; block-size: 100%; min-block-size: 6em;
    padding: .7em .25em .5em; border-color: var(--line); text-align: center; font-size: .875em; line-height: 1.25; position: relative; hyphens: auto;
  }
  .tile .drawing { font-size: 1.15em }
  .tile.on { border-color: var(--accent); background: var(--wash); box-shadow: inset 0 0 0 1px var(--accent) }
  .count { position: absolute; inset-block-start: .3em; inset-inline-end: .45em; font-weight: 600; color: var(--accent) }
  .also { margin-block-start: .7em }
  .foot {
    position: sticky; inset-block-end: 0; z-index: 1; background: var(--paper); border-block-start: 1px solid var(--ink);
    margin: 1.6em -1.25em 0; padding: .7em 1.25em .9em; display: grid; gap: .5em;
  }
  .foot .row { justify-content: space-between; row-gap: 0 }
  .foot .sum b { font-size: 1.15em }
  @container (min-width: 34em) {
    .tile { grid-template-columns: auto 1fr auto; justify-items: start; align-items: center; align-content: center; gap: .7em; min-block-size: 3.7em; padding: .4em .8em; text-align: start }
    .count { position: static }
  }
  @container (max-width: 17em) { .tiles { grid-template-columns: repeat(2, minmax(0, 1fr)) } }
  .foot .go { margin-inline-start: auto }
  @container (max-width: 24em) { .foot .go { flex: 1 1 auto; text-align: center } }
  @media (max-height: 32em) { .foot { position: static } }
  @media (forced-colors: active) {
    .tile.on { outline: 3px solid Highlight; outline-offset: -3px }
    .hits li[aria-selected='true'] { background: Highlight; color: HighlightText; forced-color-adjust: none }
    .hits li[aria-selected='true'] .quiet { color: inherit }
  }
`
