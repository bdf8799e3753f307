/** What the page of figures adds to the style sheet of the reference. */
export const FIGURES_STYLE = `
.tally { display: flex; flex-wrap: wrap; gap: .5rem 2rem; margin: 1rem 0 }
.tally > div { display: flex; flex-direction: column-reverse }
.tally dt { color: var(--faint); font-size: .9rem }
.tally dd { margin: 0; font-size: 1.8rem; line-height: 1.2; font-variant-numeric: lining-nums }
.lead { font-size: 1.2rem; margin-block-end: 0 }
.figures { margin-block: 1.75rem 2.25rem }
.figures table { inline-size: 100%; border-collapse: collapse; font-size: .9rem; line-height: 1.35; font-variant-numeric: tabular-nums lining-nums }
.figures caption { text-align: start; padding-block-end: .35rem; font-size: 1rem; overflow-wrap: anywhere }
.figures th, .figures td { padding: .2rem .35rem; vertical-align: baseline; border-block-end: 1px solid var(--rule); text-align: end; font-weight: normal }
.figures thead th { border-block: 1px solid var(--ink); color: var(--faint); font-style: italic; vertical-align: bottom }
.figures tbody tr:last-child > * { border-block-end-color: var(--ink) }
.figures th:first-child { text-align: start; padding-inline-start: 0; inline-size: 46%; overflow-wrap: anywhere }
.figures th:last-child, .figures td:last-child { padding-inline-end: 0 }
.figures .share { color: var(--faint); white-space: nowrap; display: block }
.about { margin: .35rem 0 0; color: var(--faint); font-size: .85rem; line-height: 1.45 }
.misprints, .sources { padding-inline-start: 1.1rem }
.misprints li, .sources li { margin-block: .5rem; overflow-wrap: anywhere }
@media (min-width: 40rem) {
  .figures th, .figures td { padding-inline: .75rem }
  .figures .share { display: inline-block; min-inline-size: 4.5rem }
}
@media (max-width: 24rem) { .figures table { font-size: .8rem } .figures th:first-child { inline-size: 34% } }
`
