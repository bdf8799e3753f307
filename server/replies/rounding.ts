/**
 * A figure as it goes over the wire: to the hundredth, so that sums read cleanly.
 *
 * @param value - Any finite figure
 * @returns The figure to two decimals
 */
export function hundredth(value: number): number {
  return Math.round(value * 100) / 100
}

/**
 * A fraction as it goes over the wire.
 *
 * @param value - Usually 0..1
 * @returns The fraction to four decimals
 */
export function tenThousandth(value: number): number {
  return Math.round(value * 10_000) / 10_000
}

/**
 * A figure of any kind as it goes over the wire: to the hundredth, those below 1 to four significant figures or
 * 15 decimals.
 *
 * @param value - Any finite figure
 * @returns The figure, rounded
 */
export function hundredthOrFiner(value: number): number {
  if (Number.isInteger(value)) return value
  if (Math.abs(value) >= 1) return hundredth(value)
  const scale = 10 ** Math.min(FINEST_DECIMALS, 3 - Math.floor(Math.log10(Math.abs(value))))
  return Math.round(value * scale) / scale
}

/** What is smaller is left over from arithmetic. */
const FINEST_DECIMALS = 15
