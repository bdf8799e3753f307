/** Prices have at most three decimals. */
const PER_UNIT = 1000

/**
 * The sum of prices, exact.
 *
 * @param prices - Decimal strings in one currency, up to three decimals
 * @returns A decimal string with two decimals, or three where they count
 */
export function sumOfPrices(prices: readonly string[]): string {
  return written(prices.reduce((sum, price) => sum + thousandths(price), 0))
}

/**
 * How much one price is over another, exact.
 *
 * @param price - A decimal string
 * @param over - What it is held against
 * @returns A decimal string, with `-` where it is less
 */
export function priceDifference(price: string, over: string): string {
  return written(thousandths(price) - thousandths(over))
}

function thousandths(price: string): number {
  return Math.round(Number(price) * PER_UNIT)
}

function written(amount: number): string {
  return (amount / PER_UNIT).toFixed(amount % 10 === 0 ? 2 : 3)
}
