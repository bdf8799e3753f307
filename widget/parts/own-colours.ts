/** The tokens that colour-note.ts pairs. */
const NAMES = ['ink', 'paper', 'quiet', 'on-accent', 'accent', 'edge']

/**
 * Where the shop has set colours of its own, fetches the check of what can be read on what; ours need none.
 *
 * @param root - Shadow root of an element that is drawn
 */
export async function noteOwnColours(root: ShadowRoot): Promise<void> {
  const style = getComputedStyle(root.host)
  if (!NAMES.some((name) => style.getPropertyValue(`--tallywatt-${name}`) !== '')) return
  const module = await import('./colour-note.ts').catch(() => undefined)
  module?.noteColours(root)
}
