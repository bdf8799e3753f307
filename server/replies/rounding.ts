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
 * A figure of any kind as it goes over the wire: to the hundredth, small ones to four significant figures.
 *
 * @param value - Any finite figure
 * @returns The figure, rounded
 */
export function hundredthOrFiner(value: number): number {
  if (Number.isInteger(value)) return value
  return Math.abs(value) >= 1 ? hundredth(value) : Number(value.toPrecision(4))
}
