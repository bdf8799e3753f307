/** Thousandths in one unit of a currency: prices have at most three decimals. */
const THOUSANDTHS = 1000

/**
 * A price as a whole number of thousandths, so that sums and products of prices are exact.
 *
 * @param price - A decimal string with at most nine digits before the point and three after it
 * @returns Thousandths of the currency's unit; exact as long as sums stay below 9,000 of the dearest parts
 * @example thousandthsOf('74.95') //=> 74950
 */
export function thousandthsOf(price: string): number {
  const [whole = '0', decimals = ''] = price.split('.')
  return Number(whole) * THOUSANDTHS + Number(decimals.padEnd(3, '0'))
}

/**
 * Thousandths as a decimal string, with as many decimals as the prices that went into the sum.
 *
 * @param thousandths - A sum of prices
 * @param prices - Prices that set the number of decimals
 * @returns Amount of money
 * @example moneyText(149900, ['74.95']) //=> '149.90'
 */
export function moneyText(thousandths: number, prices: readonly string[]): string {
  let decimals = 0
  for (const price of prices) decimals = Math.max(decimals, price.split('.')[1]?.length ?? 0)
  const whole = Math.floor(thousandths / THOUSANDTHS)
  const rest = String(thousandths % THOUSANDTHS).padStart(3, '0')
  return decimals === 0 ? String(whole) : `${whole}.${rest.slice(0, decimals)}`
}
