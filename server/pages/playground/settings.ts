/** Languages to try; the last two are no languages but show long words and right to left. */
export const LANGUAGES: readonly (readonly [string, string])[] = [
  ['', 'the page’s (English)'],
  ['de', 'German'],
  ['fr', 'French'],
  ['es', 'Spanish'],
  ['en-XA', 'long words, for tests'],
  ['ar-XB', 'right to left, for tests'],
]

/** Colours of the theme: property, label, value to start with (the elements' own in light). */
export const COLOURS: readonly (readonly [string, string, string])[] = [
  ['--tallywatt-accent', 'Accent', '#0f5c5c'],
  ['--tallywatt-on-accent', 'On the accent', '#ffffff'],
  ['--tallywatt-paper', 'Paper', '#fcfbf8'],
  ['--tallywatt-ink', 'Ink', '#1c2126'],
  ['--tallywatt-quiet', 'Quiet words', '#565b61'],
  ['--tallywatt-line', 'Hairlines', '#dcd7cc'],
  ['--tallywatt-edge', 'Edges', '#7d786e'],
]

/** Typefaces that most machines have. */
export const FONTS: readonly (readonly [string, string])[] = [
  ['', 'the element’s own'],
  ['Georgia, serif', 'Georgia'],
  ['system-ui, sans-serif', 'the system’s'],
  ["'Trebuchet MS', sans-serif", 'Trebuchet'],
  ['ui-monospace, Consolas, monospace', 'typewriter'],
]
