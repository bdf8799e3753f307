/** Pairs of the shop's colours and the contrast that each needs (WCAG 2.2, 1.4.3 and 1.4.11). */
const PAIRS = [
  ['ink', 'paper', 4.5],
  ['quiet', 'paper', 4.5],
  ['on-accent', 'accent', 4.5],
  ['accent', 'paper', 3],
  ['edge', 'paper', 3],
] as const

/**
 * Notes on the console which of a shop's colours can't be read on each other. The shopper sees nothing of it.
 *
 * @param root - Shadow root of an element that is drawn
 */
export function noteColours(root: ShadowRoot): void {
  const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true })
  const base = root.querySelector('.base')
  if (canvas === null || base === null) return
  const probe = base.appendChild(document.createElement('i'))
  const luminance = (name: string) => {
    probe.style.color = `var(--${name})`
    canvas.fillStyle = getComputedStyle(probe).color
    canvas.fillRect(0, 0, 1, 1)
    const [red = 0, green = 0, blue = 0] = [...canvas.getImageData(0, 0, 1, 1).data].map(linear)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
  }
  const weak = PAIRS.flatMap(([fore, back, least]) => {
    const ratio = contrast(luminance(fore), luminance(back))
    return ratio < least
      ? `--tallywatt-${fore} on --tallywatt-${back}: ${ratio.toFixed(1)}, at least ${least}`
      : []
  })
  probe.remove()
  if (weak.length > 0) console.warn(`tallywatt: colours of too little contrast. ${weak.join('; ')}`)
}

/** Relative luminance's linear share of one channel of 0..255 (WCAG 2.2). */
function linear(value: number): number {
  const share = value / 255
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

function contrast(one: number, other: number): number {
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05)
}
