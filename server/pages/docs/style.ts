import { FIGURES_STYLE } from './figures/figures-style.ts'

/** Style sheet of the reference: one column on a phone, contents beside it on a desk, ink on paper. */
export const STYLE = `
:root {
  color-scheme: light dark;
  --paper: #fbfaf7; --ink: #1d1f21; --faint: #5c5a54; --rule: #d8d3c6; --wash: #f1eee5; --link: #1c4e89; --mark: #7a3b00;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #17181a; --ink: #ece9e2; --faint: #a9a59a; --rule: #3a3b3d; --wash: #212326; --link: #9ec3ff; --mark: #f0b26b }
}
* { box-sizing: border-box }
html { scroll-padding-block-start: 1rem }
body { margin: 0; font: 1rem/1.6 Georgia, 'Times New Roman', serif; color: var(--ink); background: var(--paper) }
a { color: var(--link) }
a:focus-visible, button:focus-visible, summary:focus-visible, pre:focus-visible, input:focus-visible, textarea:focus-visible {
  outline: 3px solid var(--link); outline-offset: 2px
}
code, pre, textarea, input { font-family: ui-monospace, Consolas, 'DejaVu Sans Mono', monospace; font-size: .875em }
code { overflow-wrap: anywhere }
.skip { position: absolute; inset-inline-start: -200vw }
.skip:focus { position: static; display: block; padding: .75rem 1rem }
header { padding: 2rem 1rem 1rem; border-block-end: 3px double var(--rule); max-inline-size: 76rem; margin: 0 auto }
header p { margin: 0 }
.brand a { color: inherit; text-decoration: none; font-variant: small-caps; letter-spacing: .08em }
h1 { margin: 0; font-size: 2.25rem; line-height: 1.2; font-weight: normal }
h2 { margin: 3rem 0 .5rem; padding-block-end: .25rem; border-block-end: 1px solid var(--rule); font-size: 1.6rem; font-weight: normal }
section[id^='tag-'] > h2::first-letter { text-transform: uppercase }
h3 { margin: 2.5rem 0 .25rem; font-size: 1.2rem; line-height: 1.35 }
h4 { margin: 1rem 0 .25rem; font-size: 1rem }
.columns { max-inline-size: 76rem; margin: 0 auto; padding: 0 1rem 4rem }
main { min-inline-size: 0; max-inline-size: 48rem }
nav { margin-block-start: 1rem }
nav ul { margin: 0; padding-inline-start: 1rem; list-style: none }
nav > details > ul { padding-inline-start: 0 }
nav li { margin-block: .125rem }
nav a { display: inline-block; padding-block: .125rem; text-decoration: none }
nav a:hover { text-decoration: underline }
nav li > a[href^='#tag-'] { margin-block-start: .5rem; font-variant: small-caps; letter-spacing: .04em }
@media (min-width: 62rem) {
  .columns { display: grid; grid-template-columns: 17rem minmax(0, 1fr); gap: 3rem }
  nav { position: sticky; inset-block-start: 0; align-self: start; max-block-size: 100vh; overflow: auto; padding-block: 1.5rem; margin: 0; font-size: .9rem }
}
.call { margin: .25rem 0 .5rem }
.method { display: inline-block; min-inline-size: 3.25rem; padding: .05rem .4rem; border: 1px solid var(--mark); color: var(--mark); font: .8rem/1.4 ui-monospace, Consolas, monospace; text-align: center }
.copyable { position: relative; margin: .75rem 0 }
pre { margin: 0; padding: .75rem 1rem; max-block-size: 26rem; overflow: auto; border: 1px solid var(--rule); border-inline-start-width: 4px; background: var(--wash); white-space: pre-wrap; overflow-wrap: anywhere; line-height: 1.45 }
button { min-block-size: 2rem; padding: .25rem .9rem; border: 1px solid var(--ink); background: var(--paper); color: var(--ink); font: inherit; font-size: .9rem; cursor: pointer }
button:hover { background: var(--wash) }
.copyable > button { margin-block-start: -1px }
@media (min-width: 40rem) {
  .copyable > pre { padding-inline-end: 6rem }
  .copyable > button { position: absolute; inset-block-start: .35rem; inset-inline-end: 1.2rem; margin: 0 }
}
details { margin-block: .5rem }
summary { cursor: pointer; padding-block: .25rem }
.try, .problem details, .operation > details { border-inline-start: 4px solid var(--rule); padding-inline-start: .75rem }
form label { display: block; margin-block: .5rem; color: var(--faint) }
input, textarea { display: block; inline-size: 100%; padding: .4rem .6rem; border: 1px solid var(--faint); background: var(--paper); color: var(--ink) }
.outcome { min-block-size: 1.6rem; margin-block: .5rem; font-weight: bold }
.shape { margin: .5rem 0; padding-inline-start: 0; border-block-start: 1px solid var(--rule) }
.shape dt { margin: 0; padding-block-start: .4rem }
.shape dd { margin: 0; padding-block-end: .4rem; padding-inline-start: 1rem; border-block-end: 1px solid var(--rule) }
.shape dd p { margin: .1rem 0 }
.kind, .place { color: var(--faint); font-size: .9rem; overflow-wrap: anywhere }
.need { color: var(--mark); font-size: .85rem; font-style: italic }
.rules dt, .problem dt { font-weight: bold }
.rules dd, .problem dd { margin: 0 0 .75rem }
.problem { margin-block-end: 1.5rem; padding-block-end: .5rem; border-block-end: 1px solid var(--rule) }
.problem h3 { margin-block-start: 1.5rem }
.problem:target, .operation:target > h3, .named:target > summary { background: var(--wash); box-shadow: -.5rem 0 var(--wash), .5rem 0 var(--wash) }
.status { color: var(--mark); font-weight: normal }
.title { margin: 0 0 .5rem; font-style: italic }
.problems { columns: 14rem; padding-inline-start: 1rem }
.problems li { break-inside: avoid }
@media print { nav, .try, button { display: none } pre { max-block-size: none } }
${FIGURES_STYLE}`
